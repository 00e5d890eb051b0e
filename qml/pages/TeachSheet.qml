import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Teaching a sensor: one step a screen, then what was learned.
Sheet {
    id: root

    required property TeachViewModel viewModel

    readonly property bool stepping: viewModel.stage === TeachViewModel.Ready || viewModel.stage === TeachViewModel.Running
    readonly property bool running: viewModel.stage === TeachViewModel.Running
    readonly property bool learning: viewModel.stage === TeachViewModel.Learning
    readonly property bool learned: viewModel.stage === TeachViewModel.Learned
    readonly property bool failed: viewModel.stage === TeachViewModel.Failed

    title: stepping ? viewModel.stepText : qsTr("Teach %1").arg(viewModel.sensorName)
    tall: true
    onClosed: viewModel.cancel()

    // How far along
    Rectangle {
        objectName: "teachProgress"
        visible: root.stepping
        implicitHeight: 8
        radius: 4
        color: Theme.raised
        Layout.fillWidth: true
        Accessible.role: Accessible.ProgressBar
        Accessible.name: root.viewModel.stepText

        Row {
            anchors.fill: parent
            spacing: 3

            Repeater {
                model: root.viewModel.stepCount

                Rectangle {
                    required property int index
                    width: (parent ? parent.width - 3 * (root.viewModel.stepCount - 1) : 0) / root.viewModel.stepCount // qmllint disable unqualified
                    height: 8
                    radius: 4
                    color: index < root.viewModel.stepNumber ? Theme.accent : Theme.hairline // qmllint disable unqualified
                }
            }
        }
    }
    BodyText {
        objectName: "connecting"
        visible: root.viewModel.stage === TeachViewModel.Connecting
        text: root.viewModel.why === "" ? qsTr("Connecting. Keep it near.") : root.viewModel.why
        Layout.fillWidth: true
    }
    TroubleCard {
        objectName: "teachWhy"
        text: root.stepping ? root.viewModel.why : ""
    }
    Item {
        visible: root.stepping
        implicitHeight: Theme.large ? 200 : 280
        Layout.fillWidth: true

        ProgressRing {
            objectName: "countdownRing"
            anchors.centerIn: parent
            width: parent.height
            height: parent.height
            visible: root.running
            share: root.viewModel.share
            color: Theme.accent
            track: Theme.raised
        }
        PoseDrawing {
            id: drawing
            objectName: "poseDrawing"
            anchors.centerIn: parent
            width: parent.height - 34
            height: parent.height - 34
            pose: root.viewModel.step
            body: Theme.outline
            mark: Theme.accent
            dot: Theme.wordOnAccent
            line: Theme.ink
            table: Theme.raised
            Accessible.role: Accessible.Graphic
            Accessible.name: drawing.words
        }
        BodyText {
            objectName: "countdown"
            anchors.right: parent.right
            anchors.top: parent.top
            visible: root.running
            text: root.viewModel.countdown
            font.pixelSize: Theme.scaled(40)
            font.weight: Font.Bold
        }
    }
    HeadingText {
        objectName: "sentence"
        visible: root.stepping
        text: root.running ? root.viewModel.nowText : root.viewModel.sentence
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }
    NoteText {
        objectName: "hint"
        visible: root.viewModel.stage === TeachViewModel.Ready && !root.viewModel.asksHeight
        text: root.viewModel.hint
        font.pixelSize: Theme.bodySize
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }
    Field {
        id: height
        objectName: "raiseHeight"
        visible: root.viewModel.asksHeight
        number: true
        label: root.viewModel.heightLabel
        text: root.viewModel.height
    }

    // Learning
    Item {
        visible: root.learning
        implicitHeight: 230
        Layout.fillWidth: true

        ProgressRing {
            anchors.centerIn: parent
            width: 220
            height: 220
            share: root.viewModel.share
            color: Theme.accent
            track: Theme.raised
        }
        HeadingText {
            anchors.centerIn: parent
            width: 150
            text: qsTr("Learning")
            horizontalAlignment: Text.AlignHCenter
        }
    }

    // Learned
    HeadingText {
        objectName: "resultTitle"
        visible: root.learned || root.failed
        text: root.viewModel.resultTitle
        Layout.fillWidth: true
    }
    BodyText {
        objectName: "resultText"
        visible: root.learned || root.failed
        text: root.viewModel.resultText
        Layout.fillWidth: true
    }
    Repeater {
        model: root.learned || root.failed ? root.viewModel.sureness : null

        SureRow {
            objectName: "sureRow"
        }
    }
    Field {
        id: mapName
        objectName: "mapName"
        visible: root.learned
        label: qsTr("Keep what was learned as")
    }

    onLearnedChanged: {
        if (!root.learned)
            return
        mapName.text = root.viewModel.proposedName
        mapName.problem = ""
    }

    actions: [
        ActionButton {
            objectName: "keepHeight"
            visible: root.viewModel.asksHeight
            main: true
            text: qsTr("So high")
            onClicked: height.problem = root.viewModel.setHeight(height.text)
        },
        ActionButton {
            objectName: "startStep"
            visible: root.viewModel.stage === TeachViewModel.Ready && !root.viewModel.asksHeight
            main: true
            text: qsTr("Start")
            Layout.minimumHeight: 72
            onClicked: root.viewModel.start()
        },
        ActionButton {
            objectName: "stopStep"
            visible: root.running
            text: qsTr("Stop")
            Layout.minimumHeight: 72
            onClicked: root.viewModel.stopStep()
        },
        ActionButton {
            objectName: "repeatStep"
            visible: root.viewModel.canRepeat && !root.viewModel.asksHeight
            sign: Glyph.Undo
            text: qsTr("The step before again")
            onClicked: root.viewModel.repeatLast()
        },
        ActionButton {
            objectName: "cancelLearning"
            visible: root.learning
            text: qsTr("Cancel")
            onClicked: root.close()
        },
        ActionButton {
            objectName: "saveMap"
            visible: root.learned
            main: true
            text: qsTr("Save")
            onClicked: {
                mapName.problem = root.viewModel.save(mapName.text)
                if (mapName.problem === "")
                    root.close()
            }
        },
        ActionButton {
            objectName: "startOver"
            visible: root.learned || root.failed
            main: root.failed
            text: qsTr("Start over")
            onClicked: root.viewModel.startOver()
        }
    ]
}
