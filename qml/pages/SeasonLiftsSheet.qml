import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Which ladders the season has and in which order, those of the user's own, and the lifts beside them.
Sheet {
    id: root

    required property SeasonLiftsViewModel lifts

    title: qsTr("Lifts of the season")

    NoteText {
        text: root.lifts.turnsText
        Layout.fillWidth: true
    }
    Repeater {
        model: root.lifts.ladders

        LadderRow {
            required property int index
            required property bool first

            objectName: "ladder" + index
            canRise: chosen && !first
            onToggled: root.lifts.toggleLadder(index) // qmllint disable unqualified
            onRaised: root.lifts.raiseLadder(index) // qmllint disable unqualified
            onEdited: {
                root.lifts.editOwn(index) // qmllint disable unqualified
                ownSheet.open()
            }
        }
    }
    NoteText {
        objectName: "refusal"
        text: root.lifts.problem
        visible: text !== ""
        color: Theme.stop
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
    }
    ActionButton {
        objectName: "addOwn"
        sign: Glyph.Plus
        text: qsTr("A ladder of your own")
        onClicked: fromSheet.open()
    }

    HeadingText {
        text: qsTr("Beside the ladders")
        font.pixelSize: Theme.valueSize
        Layout.fillWidth: true
    }
    NoteText {
        text: qsTr("Hip thrusts, hamstring work, upper body, throws: logged and counted as load, never stepped.")
        Layout.fillWidth: true
    }
    Repeater {
        model: root.lifts.secondary

        RowButton {
            required property int index
            required detail

            objectName: "secondary" + index
            trailing: Glyph.Pencil
            onClicked: secondarySheet.edit(index) // qmllint disable unqualified
        }
    }
    ActionButton {
        objectName: "addSecondary"
        sign: Glyph.Plus
        text: qsTr("Add a lift beside the ladders")
        onClicked: secondarySheet.edit(-1)
    }

    Sheet {
        id: fromSheet
        objectName: "fromSheet"
        title: qsTr("Begin with a copy of")

        NoteText {
            text: qsTr("Everything in it can be changed: names, ranges, boxes, times, phases.")
            Layout.fillWidth: true
        }
        Repeater {
            model: root.lifts.ladders

            RowButton {
                required property int index
                required detail

                objectName: "from" + index
                onClicked: {
                    root.lifts.beginOwn(index) // qmllint disable unqualified
                    fromSheet.close() // qmllint disable unqualified
                    ownSheet.open() // qmllint disable unqualified
                }
            }
        }
    }
    OwnLadderSheet {
        id: ownSheet
        objectName: "ownSheet"
        lifts: root.lifts
    }
    SecondarySheet {
        id: secondarySheet
        objectName: "secondarySheet"
        lifts: root.lifts
    }
}
