import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The live set: one number to read from two metres, and what stands around it.
PageFrame {
    id: root

    required property BenchViewModel viewModel
    readonly property BenchViewModel set: viewModel

    title: set.liftName
    aside: set.setText
    lead: set.loadText
    leadNote: terse ? "" : set.planText
    property string doneText
    signal doneAsked()
    signal whyAsked()
    signal sensorsAsked()

    canGoBack: true
    onBack: set.goBack()

    // In large text, and where height is short, the number comes before what is as it should be.
    readonly property bool terse: (Theme.large || low) && set.repetitionCount > 0
    readonly property bool low: height < 480

    BodyText {
        objectName: "athleteName"
        text: root.set.athleteName
        visible: text !== "" && !(root.low && root.terse)
        color: Theme.accent
        font.weight: Font.DemiBold
        Layout.fillWidth: true
    }
    SharerStrip {
        objectName: "setSharers"
        viewModel: root.set
    }
    SensorPill {
        objectName: "sensor"
        visible: !root.terse || root.set.sensor === BenchViewModel.Lost
        viewModel: root.set
        onClicked: root.sensorsAsked()
    }

    StopSign {
        objectName: "stopSign"
        visible: root.set.stopNow
        text: root.set.stopText
    }
    Card {
        visible: root.set.lastSetText !== ""

        ListRow {
            objectName: "lastSet"
            title: qsTr("Last set")
            detail: root.set.lastSetText
            value: root.set.restText
        }
    }

    Choices {
        objectName: "kind"
        visible: root.set.repetitionCount === 0 && !root.set.running
        options: root.set.hasMaintenance ? [qsTr("Work"), qsTr("Probe"), qsTr("Warm-up"), qsTr("Maintenance")]
                                         : [qsTr("Work"), qsTr("Probe"), qsTr("Warm-up")]
        current: root.set.kind
        onChosen: index => root.set.kind = index
    }
    Choices {
        objectName: "side"
        visible: root.set.oneSided
        options: [qsTr("Left"), qsTr("Right")]
        current: root.set.rightSide ? 1 : 0
        onChosen: index => root.set.rightSide = index === 1
    }

    Choices {
        objectName: "large"
        visible: root.set.repetitionCount === 0 && !root.set.running && root.set.sensor !== BenchViewModel.NoSensor
        label: qsTr("Stands large")
        options: root.set.largeChoices
        current: root.set.velocityIsLarge ? 1 : 0
        onChosen: index => root.set.velocityIsLarge = index === 1
    }

    ColumnLayout {
        visible: root.set.repetitionCount > 0
        spacing: 6

        BigNumber {
            objectName: "timeToPeak"
            value: root.set.number
            unit: root.set.numberUnit
            topics: root.set.numberTopics
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
                Layout.maximumWidth: root.width - 2 * Theme.margin - Theme.scaled(18) - Theme.smallGap
            }
        }
    }

    CheckCard {
        objectName: "check"
        visible: root.set.checkState !== BenchViewModel.NoCheck && root.set.repetitionCount === 0 && !root.set.running
        viewModel: root.set
    }
    WaitingForSet {
        objectName: "waiting"
        visible: root.set.repetitionCount === 0
        viewModel: root.set
    }

    Card {
        visible: root.set.repetitionCount > 0
        padding: 10

        Picture {
            objectName: "strikeLine"
            plot: root.set.strikeLine
            textSize: Theme.scaled(12)
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
            value: root.set.beside
            name: root.set.besideName
            note: root.set.besideNote
            topics: root.set.besideTopics
        }
        Tile {
            objectName: "range"
            value: root.set.range
            name: root.set.rangeName
            note: root.set.rangeNote
            topics: ["range"]
        }
        Tile {
            objectName: "loss"
            value: root.set.loss
            name: qsTr("velocity loss")
            note: root.set.lossNote
            topics: ["velocity-loss", "left"]
        }
    }

    NoteText {
        objectName: "left"
        visible: root.set.repetitionCount > 0 && text !== ""
        text: root.set.leftText
        Layout.fillWidth: true
    }

    ActionButton {
        objectName: "typeSet"
        visible: root.set.repetitionCount === 0
        text: qsTr("Type a set in")
        sign: Glyph.Pencil
        onClicked: typed.open()
    }

    ActionButton {
        objectName: "done"
        visible: root.doneText !== "" && root.set.repetitionCount === 0 && !root.set.running
        sign: Glyph.Check
        text: root.doneText
        onClicked: root.doneAsked()
    }
    ActionButton {
        objectName: "whySet"
        visible: root.set.repetitionCount === 0 && !root.set.running
        text: qsTr("Why this today?")
        onClicked: root.whyAsked()
    }

    ActionButton {
        objectName: "loadChart"
        visible: root.set.repetitionCount === 0 && !root.set.running
        text: qsTr("Loads by the chart")
        onClicked: chart.open()
    }

    LoadChartSheet {
        id: chart
        objectName: "loadChartSheet"
        viewModel: root.set
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
