import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// One sensor: how well it streams, what it is called, where it is worn, and what else can be done with it.
Sheet {
    id: root

    required property SensorsViewModel viewModel

    signal mapsAsked()
    signal calibrationAsked()
    signal teachingAsked()

    title: viewModel.name
    tall: true
    onAboutToShow: {
        name.text = root.viewModel.name
        name.problem = ""
    }
    onClosed: viewModel.closeSensor()

    StatusPill {
        objectName: "sensorState"
        color: Theme.ground
        sign: root.viewModel.stateMark === SensorsViewModel.Good ? Glyph.Sensor
            : root.viewModel.stateMark === SensorsViewModel.Bad ? Glyph.Caution : Glyph.Dash
        tone: root.viewModel.stateMark === SensorsViewModel.Good ? Theme.good
            : root.viewModel.stateMark === SensorsViewModel.Bad ? Theme.caution : Theme.muted
        text: root.viewModel.stateText
        detail: root.viewModel.stateDetail
    }
    TroubleCard {
        objectName: "sensorTrouble"
        text: root.viewModel.trouble
        action: root.viewModel.troubleAction
        onAsked: root.viewModel.mend()
    }
    ActionButton {
        objectName: "tryNow"
        visible: !root.viewModel.streaming && root.viewModel.trouble === ""
        text: qsTr("Try now")
        onClicked: root.viewModel.tryNow()
    }
    Card {
        objectName: "healthCard"
        visible: root.viewModel.health.count > 0
        color: Theme.ground

        Repeater {
            model: root.viewModel.health

            EvidenceRow {
                objectName: "healthRow"
            }
        }
    }
    Choices {
        objectName: "place"
        label: qsTr("Where it is worn")
        options: root.viewModel.places
        current: root.viewModel.place
        onChosen: index => root.viewModel.setPlace(index)
    }
    Field {
        id: name
        objectName: "sensorName"
        label: qsTr("Name")
        onAccepted: saveName.clicked()
    }
    ActionButton {
        id: saveName
        objectName: "saveName"
        visible: name.text !== root.viewModel.name
        text: qsTr("Save the name")
        onClicked: name.problem = root.viewModel.rename(name.text)
    }
    RowButton {
        objectName: "calibrate"
        enabled: root.viewModel.streaming
        title: qsTr("Measure its six sides")
        detail: root.viewModel.streaming ? root.viewModel.sidesText : qsTr("As soon as it streams.")
        onClicked: {
            root.viewModel.calibrate()
            root.calibrationAsked()
        }
    }
    RowButton {
        objectName: "maps"
        title: qsTr("How it is read")
        detail: root.viewModel.mapName
        onClicked: root.mapsAsked()
    }
    RowButton {
        objectName: "teach"
        title: qsTr("Teach it anew")
        detail: qsTr("Three minutes, where its numbers look wrong.")
        onClicked: {
            root.viewModel.teach()
            root.teachingAsked()
        }
    }
    Repeater {
        model: root.viewModel.about

        NoteText {
            required property string name
            required property string value
            text: qsTr("%1: %2").arg(name).arg(value)
            Layout.fillWidth: true
        }
    }
    ActionButton {
        objectName: "forget"
        sign: Glyph.Bin
        text: qsTr("Forget this sensor")
        onClicked: {
            root.viewModel.forget()
            root.close()
        }
    }

    Connections {
        target: root.viewModel
        function onMapChoiceWanted() { root.mapsAsked() }
    }
}
