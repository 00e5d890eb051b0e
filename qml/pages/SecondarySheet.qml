import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// A lift beside the ladders: on which days, how much of it, and what it loads.
Sheet {
    id: root

    required property SeasonLiftsViewModel lifts
    property int index: -1
    property var problems: ({})

    function edit(lift: int) {
        const form = lifts.secondaryForm(lift)
        index = lift
        problems = {}
        for (const field of [name, sets, repetitions])
            field.text = form[field.objectName]
        days.chosen = form.days
        regions.chosen = form.regions
        motion.current = form.motion
        open()
    }

    title: index < 0 ? qsTr("A lift beside the ladders") : qsTr("Change the lift")

    Field {
        id: name
        objectName: "name"
        label: qsTr("Name")
        hint: qsTr("hip thrust")
        problem: root.problems.name ?? ""
    }
    ManyChoices {
        id: days
        objectName: "days"
        label: qsTr("Days")
        options: root.lifts.weekdays
        problem: root.problems.days ?? ""
    }
    GridLayout {
        columns: Theme.large ? 1 : 2
        columnSpacing: 12
        rowSpacing: Theme.gap

        Field {
            id: sets
            objectName: "sets"
            label: qsTr("Sets")
            number: true
            problem: root.problems.sets ?? ""
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
        }
        Field {
            id: repetitions
            objectName: "repetitions"
            label: qsTr("Repetitions")
            number: true
            problem: root.problems.repetitions ?? ""
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
        }
    }
    ManyChoices {
        id: regions
        objectName: "regions"
        label: qsTr("What it loads: pain there rests it")
        options: root.lifts.own.regionNames
    }
    Choices {
        id: motion
        objectName: "motion"
        label: qsTr("Moves like")
        options: root.lifts.motions
        onChosen: index => current = index
    }
    ActionButton {
        objectName: "deleteSecondary"
        visible: root.index >= 0
        sign: Glyph.Bin
        text: qsTr("Take it out of the plan")
        onClicked: {
            root.lifts.deleteSecondary(root.index)
            root.close()
        }
    }

    actions: [
        NoteText {
            objectName: "secondaryProblem"
            text: root.problems.all ?? ""
            visible: text !== ""
            color: Theme.stop
            Layout.fillWidth: true
            Accessible.role: Accessible.AlertMessage
        },
        ActionButton {
            objectName: "saveSecondary"
            main: true
            text: qsTr("Save")
            onClicked: {
                root.problems = root.lifts.saveSecondary(root.index, {
                    name: name.text, days: days.chosen, sets: sets.text, repetitions: repetitions.text,
                    regions: regions.chosen, motion: motion.current
                })
                if (Object.keys(root.problems).length === 0)
                    root.close()
            }
        }
    ]
}
