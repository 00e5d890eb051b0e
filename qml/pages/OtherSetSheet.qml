import QtQuick
import Fleetrung
import Fleetrung.Views

// A set of a lift outside the ladders: load and repetitions stand there already.
Sheet {
    id: root

    required property BenchViewModel viewModel
    property int index: -1
    property var problems: ({})

    onAboutToShow: {
        const form = viewModel.otherForm(index)
        problems = {}
        title = form.title ?? ""
        load.text = form.load ?? ""
        repetitions.text = form.repetitions ?? ""
        effort.current = -1
    }
    title: ""

    Field {
        id: load
        objectName: "load"
        label: qsTr("Load, %1 (0 for body mass)").arg(root.viewModel.massUnit)
        number: true
        problem: root.problems.load ?? ""
    }
    Field {
        id: repetitions
        objectName: "repetitions"
        label: qsTr("Repetitions")
        number: true
        problem: root.problems.repetitions ?? ""
    }
    Choices {
        id: effort
        objectName: "effort"
        label: qsTr("Effort, 1 easy to 10 all out (optional)")
        options: ["1", "2", "3", "4", "5", "6", "7", "8", "9", "10"]
        onChosen: index => current = index
    }

    actions: ActionButton {
        objectName: "saveOther"
        main: true
        text: qsTr("Save the set")
        onClicked: {
            root.problems = root.viewModel.typeOther(root.index, {
                load: load.text, repetitions: repetitions.text, effort: effort.current < 0 ? "" : effort.options[effort.current]
            })
            if (Object.keys(root.problems).length === 0)
                root.close()
        }
    }
}
