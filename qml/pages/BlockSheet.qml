import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Days on which the season does not go its usual way, and what that does to the plan, before it is kept.
Sheet {
    id: root

    required property SeasonViewModel season

    title: season.isNew ? qsTr("Days away") : qsTr("Change the days away")

    Choices {
        objectName: "blockKind"
        label: qsTr("Why?")
        options: [qsTr("Travel"), qsTr("Exams"), qsTr("Illness"), qsTr("Injury")]
        current: root.season.blockKind
        onChosen: index => root.season.blockKind = index
    }
    NoteText {
        text: root.season.blockKindText
        Layout.fillWidth: true
    }
    Choices {
        objectName: "blockRegion"
        visible: root.season.blockKind === 3
        label: qsTr("Where?")
        options: root.season.regions
        current: root.season.blockRegion
        onChosen: index => root.season.blockRegion = index
    }
    DayChooser {
        objectName: "firstDay"
        label: qsTr("First day")
        picker: root.season.firstDay
    }
    DayChooser {
        objectName: "lastDay"
        label: qsTr("Last day")
        picker: root.season.lastDay
        problem: root.season.dayProblem
    }
    ConsequencesCard {
        season: root.season
    }
    ActionButton {
        objectName: "deleteBlock"
        visible: !root.season.isNew
        sign: Glyph.Bin
        text: qsTr("Take these days out of the plan")
        onClicked: {
            root.season.deleteBlock()
            if (root.season.canSave)
                root.close()
        }
    }

    actions: ActionButton {
        objectName: "saveBlock"
        main: true
        enabled: root.season.canSave
        text: qsTr("Save")
        onClicked: {
            root.season.saveBlock()
            root.close()
        }
    }
}
