import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// A set without a sensor, typed.
Sheet {
    id: root

    required property BenchViewModel viewModel
    property var problems: ({})

    title: qsTr("A set without a sensor")
    onAboutToShow: {
        problems = {}
        kind.current = viewModel.kind
        load.text = viewModel.plannedLoad
        repetitions.text = viewModel.plannedRepetitions
        velocity.text = ""
        time.text = ""
        effort.text = ""
    }

    NoteText {
        text: qsTr("Load and repetitions are enough. Velocity and time count only if you measured them.")
        Layout.fillWidth: true
    }
    Choices {
        id: kind
        objectName: "kind"
        label: qsTr("Kind of set")
        options: root.viewModel.hasMaintenance ? [qsTr("Work"), qsTr("Probe"), qsTr("Warm-up"), qsTr("Maintenance")]
                                               : [qsTr("Work"), qsTr("Probe"), qsTr("Warm-up")]
        onChosen: index => current = index
    }
    Field {
        id: load
        objectName: "load"
        label: qsTr("Load, %1").arg(root.viewModel.massUnit)
        number: true
        problem: root.problems.load ?? ""
    }
    RowButton {
        objectName: "typedByPlates"
        title: qsTr("By plates")
        onClicked: plates.open()
    }
    Field {
        id: repetitions
        objectName: "repetitions"
        label: qsTr("Repetitions")
        number: true
        problem: root.problems.repetitions ?? ""
    }
    Field {
        id: velocity
        objectName: "velocity"
        label: qsTr("%1, m/s (if measured)").arg(root.viewModel.velocityName)
        number: true
        problem: root.problems.velocity ?? ""
    }
    Field {
        id: time
        objectName: "time"
        label: qsTr("%1, ms (if measured)").arg(root.viewModel.timeName)
        number: true
        problem: root.problems.time ?? ""
    }
    Field {
        id: effort
        objectName: "effort"
        label: qsTr("Effort, 1 easy to 10 all out (tells 1RM)")
        number: true
        problem: root.problems.effort ?? ""
    }
    NoteText {
        objectName: "maximum"
        visible: text !== ""
        text: root.viewModel.maximumText({ load: load.text, repetitions: repetitions.text, effort: effort.text })
        Layout.fillWidth: true
    }

    PlatesSheet {
        id: plates
        objectName: "typedPlatesSheet"
        entry: root.viewModel.plates
        load: load.text
        onTaken: text => load.text = text
    }

    actions: ActionButton {
        objectName: "saveTyped"
        main: true
        text: qsTr("Save the set")
        onClicked: {
            root.problems = root.viewModel.typeSet({
                kind: kind.current, load: load.text, repetitions: repetitions.text,
                velocity: velocity.text, time: time.text, effort: effort.text
            })
            if (Object.keys(root.problems).length === 0)
                root.close()
        }
    }
}
