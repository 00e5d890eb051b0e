import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The season that stands: competitions, days away, lifts, the week, the weight room. Each is changed by touch.
Sheet {
    id: root

    required property SeasonViewModel season
    required property SeasonLiftsViewModel lifts

    title: qsTr("Change the season")
    onAboutToShow: {
        minutes.text = season.sessionMinutes
        minutes.problem = ""
    }

    HeadingText {
        text: qsTr("Competitions")
        font.pixelSize: Theme.valueSize
        Layout.fillWidth: true
    }
    Repeater {
        model: root.season.competitions

        RowButton {
            required property int index
            required detail
            required property bool main

            objectName: "competition" + index
            strong: main
            trailing: Glyph.Pencil
            onClicked: {
                root.season.editCompetition(index) // qmllint disable unqualified
                competitionSheet.open()
            }
        }
    }
    ActionButton {
        objectName: "addCompetition"
        sign: Glyph.Plus
        text: qsTr("Add a competition")
        onClicked: {
            root.season.editCompetition(-1)
            competitionSheet.open()
        }
    }

    HeadingText {
        text: qsTr("Travel, exams, illness, injury")
        font.pixelSize: Theme.valueSize
        Layout.fillWidth: true
    }
    Repeater {
        model: root.season.blocks

        RowButton {
            required property int index
            required detail

            objectName: "block" + index
            trailing: Glyph.Pencil
            onClicked: {
                root.season.editBlock(index) // qmllint disable unqualified
                blockSheet.open()
            }
        }
    }
    ActionButton {
        objectName: "addBlock"
        sign: Glyph.Plus
        text: qsTr("Add days away")
        onClicked: {
            root.season.editBlock(-1)
            blockSheet.open()
        }
    }
    HeadingText {
        text: qsTr("Lifts")
        font.pixelSize: Theme.valueSize
        Layout.fillWidth: true
    }
    NoteText {
        text: root.lifts.chosenText
        Layout.fillWidth: true
    }
    ActionButton {
        objectName: "editLifts"
        sign: Glyph.Pencil
        text: qsTr("Ladders and other lifts")
        onClicked: liftsSheet.open()
    }
    HeadingText {
        text: qsTr("The week")
        font.pixelSize: Theme.valueSize
        Layout.fillWidth: true
    }
    ManyChoices {
        objectName: "liftDays"
        bound: true
        label: qsTr("Days with lifts")
        options: root.season.weekdays
        chosen: root.season.liftDays
        onToggled: index => root.season.toggleLiftDay(index)
    }
    ManyChoices {
        objectName: "sprintDays"
        bound: true
        label: qsTr("Days with sprints")
        options: root.season.weekdays
        chosen: root.season.sprintDays
        onToggled: index => root.season.toggleSprintDay(index)
    }
    Field {
        id: minutes
        objectName: "minutes"
        label: qsTr("Length of a session with lifts, minutes")
        number: true
        onAccepted: problem = root.season.setSessionMinutes(text)
    }
    ActionButton {
        objectName: "keepMinutes"
        visible: minutes.text !== root.season.sessionMinutes
        text: qsTr("Keep this length")
        onClicked: minutes.problem = root.season.setSessionMinutes(minutes.text)
    }
    HeadingText {
        text: qsTr("The weight room")
        font.pixelSize: Theme.valueSize
        Layout.fillWidth: true
    }
    ManyChoices {
        objectName: "equipment"
        bound: true
        label: qsTr("What it has")
        options: [qsTr("Bar"), qsTr("Rack"), qsTr("Pins"), qsTr("Blocks")]
        chosen: root.season.equipment
        onToggled: index => root.season.toggleEquipment(index)
    }
    NoteText {
        objectName: "refusal"
        text: root.season.problem
        visible: text !== ""
        color: Theme.stop
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
    }
    HeadingText {
        text: qsTr("Boxes")
        font.pixelSize: Theme.valueSize
        Layout.fillWidth: true
    }
    NoteText {
        text: qsTr("A height that you do not have is never planned. It stays as you type it.")
        Layout.fillWidth: true
    }
    Repeater {
        model: root.season.boxes

        RowButton {
            required property int index
            required property string modelData

            objectName: "box" + index
            title: modelData
            trailing: Glyph.Bin
            Accessible.name: qsTr("Remove the box of %1").arg(modelData)
            onClicked: root.season.removeBox(index) // qmllint disable unqualified
        }
    }
    Field {
        id: box
        objectName: "newBox"
        label: qsTr("Height of another box, %1").arg(root.season.lengthUnit)
        number: true
    }
    ActionButton {
        objectName: "addBox"
        sign: Glyph.Plus
        text: qsTr("Add this box")
        onClicked: {
            box.problem = root.season.addBox(box.text)
            if (box.problem === "")
                box.text = ""
        }
    }

    SeasonLiftsSheet {
        id: liftsSheet
        objectName: "seasonLiftsSheet"
        lifts: root.lifts
    }
    BlockSheet {
        id: blockSheet
        objectName: "blockSheet"
        season: root.season
    }
    CompetitionSheet {
        id: competitionSheet
        objectName: "competitionSheet"
        season: root.season
    }
}
