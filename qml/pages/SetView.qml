import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Plot
import Fleetrung.Views

// The live set: one number to read from two metres, and what stands around it.
PageFrame {
    id: root

    required property BenchViewModel viewModel
    readonly property BenchViewModel set: viewModel

    title: set.liftName
    aside: set.setText
    lead: set.loadText
    leadNote: set.planText
    canGoBack: true
    onBack: set.leaveLift()

    SensorPill {
        objectName: "sensor"
        viewModel: root.set
    }

    Rectangle {
        objectName: "stopSign"
        visible: root.set.stopNow
        color: Theme.stop
        radius: Theme.cardRadius
        implicitHeight: stopWords.implicitHeight + 24
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
        Accessible.name: stopHead.text + ". " + root.set.stopText

        RowLayout {
            id: stopWords
            anchors.verticalCenter: parent.verticalCenter
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.margins: Theme.cardPadding
            spacing: Theme.gap

            Glyph {
                sign: Glyph.Stop
                color: Theme.onStop
                thickness: 2.4
                Layout.preferredWidth: 40
                Layout.preferredHeight: 40
            }
            ColumnLayout {
                spacing: 0

                HeadingText {
                    id: stopHead
                    text: qsTr("Stop the set")
                    color: Theme.onStop
                    Layout.fillWidth: true
                    Accessible.ignored: true
                }
                BodyText {
                    text: root.set.stopText
                    color: Theme.onStop
                    font.pixelSize: Theme.noteSize
                    Layout.fillWidth: true
                    Accessible.ignored: true
                }
            }
        }
    }

    ColumnLayout {
        visible: root.set.repetitionCount > 0
        spacing: 6

        BigNumber {
            objectName: "timeToPeak"
            value: root.set.number
            unit: root.set.numberUnit
            Layout.fillWidth: true
        }
        RowLayout {
            visible: root.set.verdictText !== ""
            spacing: Theme.smallGap
            Layout.alignment: Qt.AlignHCenter

            Glyph {
                sign: root.set.verdict === BenchViewModel.Inside ? Glyph.Check : Glyph.Dash
                color: verdict.color
                thickness: 3.2
                Layout.preferredWidth: Theme.scaled(18)
                Layout.preferredHeight: Theme.scaled(18)
            }
            BodyText {
                id: verdict
                objectName: "verdict"
                text: root.set.verdictText
                color: root.set.verdict === BenchViewModel.Inside ? Theme.good : Theme.caution
                font.weight: Font.Medium
                Layout.fillWidth: true
            }
        }
    }

    EmptyState {
        objectName: "waiting"
        visible: root.set.repetitionCount === 0
        sign: root.set.sensor === BenchViewModel.NoSensor ? Glyph.Sensor : Glyph.Bench
        title: root.set.waitingTitle
        text: root.set.waitingText
        Layout.topMargin: 12
    }

    Card {
        visible: root.set.repetitionCount > 0
        padding: 10

        PlotItem {
            objectName: "strikeLine"
            plot: root.set.strikeLine
            dark: Theme.dark
            textSize: Theme.scaled(12)
            Layout.fillWidth: true
        }
    }

    GridLayout {
        visible: root.set.repetitionCount > 0
        columns: Theme.large ? 1 : 3
        columnSpacing: 8
        rowSpacing: 8
        Layout.fillWidth: true

        Tile {
            objectName: "meanVelocity"
            value: root.set.velocity
            name: root.set.velocityName
            note: root.set.velocityNote
        }
        Tile {
            objectName: "range"
            value: root.set.range
            name: qsTr("range")
            note: root.set.rangeNote
        }
        Tile {
            objectName: "loss"
            value: root.set.loss
            name: qsTr("velocity loss")
            note: root.set.lossNote
        }
    }

    Card {
        visible: root.set.lastSetText !== ""

        ListRow {
            objectName: "lastSet"
            title: qsTr("Last set")
            detail: root.set.lastSetText
        }
    }

    ActionButton {
        objectName: "typeSet"
        visible: root.set.repetitionCount === 0
        text: qsTr("Type a set in")
        sign: Glyph.Pencil
        onClicked: typed.open()
    }

    TypedSetSheet {
        id: typed
        objectName: "typedSheet"
        viewModel: root.set
    }

    actions: SetActions {
        viewModel: root.set
    }
}
