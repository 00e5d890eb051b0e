import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// One competition: its name, its day by touch, its priority; and what the change does to the plan, before it is kept.
Sheet {
    id: root

    required property SeasonViewModel season

    title: season.isNew ? qsTr("A new competition") : qsTr("Change the competition")
    onAboutToShow: name.text = season.draftName

    Field {
        id: name
        objectName: "competitionName"
        label: qsTr("Name")
        hint: qsTr("club championship")
        problem: root.season.nameProblem
        onTextChanged: root.season.draftName = name.text
    }
    DayChooser {
        objectName: "competitionDay"
        label: qsTr("Day")
        picker: root.season.day
        problem: root.season.dayProblem
    }
    Choices {
        objectName: "priority"
        label: qsTr("Priority")
        options: ["A", "B", "C"]
        current: root.season.draftPriority
        onChosen: index => root.season.draftPriority = index
    }
    NoteText {
        text: root.season.priorityText
        Layout.fillWidth: true
    }
    ManyChoices {
        objectName: "mainCompetition"
        label: qsTr("The season is counted back from it")
        options: [qsTr("Main competition")]
        bound: true
        chosen: root.season.draftMain ? [0] : []
        onToggled: root.season.draftMain = !root.season.draftMain
    }
    ConsequencesCard {
        season: root.season
    }
    ActionButton {
        objectName: "deleteCompetition"
        visible: !root.season.isNew
        sign: Glyph.Bin
        text: qsTr("Delete this competition")
        onClicked: {
            root.season.deleteCompetition()
            if (root.season.canSave)
                root.close()
        }
    }

    actions: ActionButton {
        objectName: "saveCompetition"
        main: true
        enabled: root.season.canSave
        text: qsTr("Save")
        onClicked: {
            root.season.saveCompetition()
            root.close()
        }
    }
}
