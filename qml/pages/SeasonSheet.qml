import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// A season as a coach says it: when the main competition is, which days, which lifts.
Sheet {
    id: root

    required property LadderViewModel viewModel
    property var problems: ({})

    title: qsTr("Plan a season")
    onAboutToShow: {
        problems = {}
        viewModel.beginSeason()
    }

    Field {
        id: race
        objectName: "race"
        label: qsTr("Main competition")
        hint: qsTr("club championship")
        problem: root.problems.race ?? ""
    }
    DayChooser {
        objectName: "raceDay"
        label: qsTr("Day of the main competition")
        picker: root.viewModel.raceDay
        problem: root.problems.raceDay ?? ""
    }
    DayChooser {
        objectName: "firstDay"
        label: qsTr("First day of the season")
        picker: root.viewModel.firstDay
    }
    ManyChoices {
        id: liftDays
        objectName: "liftDays"
        label: qsTr("Days with lifts")
        options: root.viewModel.weekdays
        chosen: [0, 2, 4]
        problem: root.problems.liftDays ?? ""
    }
    ManyChoices {
        id: sprintDays
        objectName: "sprintDays"
        label: qsTr("Days with sprints")
        options: root.viewModel.weekdays
        chosen: [0, 4]
    }
    ManyChoices {
        id: ladders
        objectName: "ladders"
        label: qsTr("Lifts you keep for the whole season, a few")
        options: root.viewModel.allLadders
        problem: root.problems.ladders ?? ""
    }
    ManyChoices {
        id: equipment
        objectName: "equipment"
        label: qsTr("What the weight room has")
        options: [qsTr("Bar"), qsTr("Rack"), qsTr("Pins"), qsTr("Blocks")]
        chosen: [0, 1]
    }
    Field {
        id: boxes
        objectName: "boxes"
        label: qsTr("Heights of boxes, %1, with spaces between").arg(root.viewModel.lengthUnit)
        hint: qsTr("20 30 45")
        problem: root.problems.boxes ?? ""
    }
    NoteText {
        objectName: "refusal"
        text: root.problems.all ?? ""
        visible: text !== ""
        color: Theme.stop
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
    }

    actions: ActionButton {
        objectName: "saveSeason"
        main: true
        text: qsTr("Lay out the season")
        onClicked: {
            root.problems = root.viewModel.planSeason({
                race: race.text, liftDays: liftDays.chosen,
                sprintDays: sprintDays.chosen, ladders: ladders.chosen, equipment: equipment.chosen, boxes: boxes.text
            })
            if (Object.keys(root.problems).length === 0)
                root.close()
        }
    }
}
