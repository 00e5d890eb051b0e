import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The season that stands: competitions, days away, boxes. Each is changed by touch.
Sheet {
    id: root

    required property SeasonViewModel season

    title: qsTr("Change the season")

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
