import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// A ladder of the user's own: its name, what it loads, and its rungs, longest range first.
Sheet {
    id: root

    required property SeasonLiftsViewModel lifts
    readonly property OwnLadderViewModel ladder: lifts.own

    title: ladder.isNew ? qsTr("A ladder of your own") : qsTr("Change the ladder")
    tall: true
    onAboutToShow: name.text = ladder.name

    Connections {
        target: root.lifts

        function onOwnKept() {
            root.close()
        }
    }

    Field {
        id: name
        objectName: "ladderName"
        label: qsTr("Name")
        onTextChanged: {
            if (text !== root.ladder.name)
                root.ladder.name = text
        }
    }
    HeadingText {
        text: qsTr("Rungs, longest range first")
        font.pixelSize: Theme.valueSize
        Layout.fillWidth: true
    }
    Repeater {
        model: root.ladder.rungs

        RowButton {
            required property int index
            required detail

            objectName: "rung" + index
            trailing: Glyph.Pencil
            onClicked: rungSheet.edit(index) // qmllint disable unqualified
        }
    }
    ActionButton {
        objectName: "addRung"
        sign: Glyph.Plus
        text: qsTr("Add a rung")
        onClicked: rungSheet.edit(-1)
    }
    ManyChoices {
        objectName: "traits"
        bound: true
        label: qsTr("What kind of lift it is")
        options: [qsTr("Heavy: one such ladder steps in seven days"), qsTr("Left and right apart")]
        chosen: root.ladder.heavy ? (root.ladder.oneSided ? [0, 1] : [0]) : root.ladder.oneSided ? [1] : []
        onToggled: index => {
            if (index === 0)
                root.ladder.heavy = !root.ladder.heavy
            else
                root.ladder.oneSided = !root.ladder.oneSided
        }
    }
    ManyChoices {
        objectName: "regions"
        bound: true
        label: qsTr("What it loads: pain there rests this ladder")
        options: root.ladder.regionNames
        chosen: root.ladder.regions
        onToggled: index => root.ladder.toggleRegion(index)
    }
    MarkedLine {
        caution: true
        text: qsTr("Ranges and times of your own rest on no source. The rules of loads, age and pain hold for them all the same.")
    }
    ActionButton {
        objectName: "deleteOwn"
        visible: !root.ladder.isNew
        sign: Glyph.Bin
        text: qsTr("Delete this ladder")
        onClicked: root.lifts.deleteOwn()
    }

    RungSheet {
        id: rungSheet
        objectName: "rungSheet"
        ladder: root.ladder
    }

    actions: [
        NoteText {
            objectName: "ladderProblem"
            text: root.ladder.problem
            visible: text !== ""
            color: Theme.stop
            Layout.fillWidth: true
            Accessible.role: Accessible.AlertMessage
        },
        ActionButton {
            objectName: "saveLadder"
            main: true
            text: root.ladder.isNew ? qsTr("Put it into the season") : qsTr("Save")
            onClicked: root.ladder.save()
        }
    ]
}
