import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Jumps of one kind typed in, one trial after the other. It begins with what stayed the same since the last one.
Sheet {
    id: root

    required property TrackViewModel viewModel
    readonly property JumpEntry entry: viewModel.jumpEntry
    property var problems: ({})
    property bool more: false
    readonly property bool drop: kind.current === 0
    readonly property bool along: kind.current >= 3

    function values(): var {
        return {
            kind: kind.current, box: box.text, bounds: bounds.current, contact: contact.text, flight: flight.text,
            height: height.text, distance: distance.text, day: day.text, surface: surface.current,
            shoes: shoes.current, test: kinds.chosen.length, note: note.text
        }
    }
    function emptyTrial() {
        for (const field of [contact, flight, height, distance])
            field.text = ""
    }

    title: qsTr("Add jumps")
    onAboutToShow: {
        const before = viewModel.beginJumps()
        problems = {}
        more = false
        kind.current = before.kind
        box.text = before.box
        bounds.current = before.bounds
        surface.current = before.surface
        shoes.current = before.shoes
        day.text = viewModel.today
        kinds.chosen = []
        note.text = ""
        emptyTrial()
    }

    Choices {
        id: kind
        objectName: "jumpKind"
        label: qsTr("Kind of jump")
        options: [qsTr("Drop jump"), qsTr("Counter-movement"), qsTr("Squat jump"), qsTr("Standing long"), qsTr("Bounds")]
        onChosen: index => {
            if (index === current) // trials typed so far stay
                return
            current = index
            root.entry.clear()
        }
    }
    MarkedLine {
        objectName: "jumpCaution"
        visible: root.drop && text !== ""
        caution: true
        text: root.entry.caution
    }
    Field {
        id: box
        objectName: "box"
        visible: root.drop
        label: qsTr("Box height, %1").arg(root.viewModel.lengthUnit)
        number: true
        problem: root.problems.box ?? ""
    }
    Choices {
        id: bounds
        objectName: "bounds"
        visible: kind.current === 4
        label: qsTr("How many in a row")
        options: ["3", "5", "10"]
        onChosen: index => {
            if (index === current) // trials typed so far stay
                return
            current = index
            root.entry.clear()
        }
    }
    Field {
        id: contact
        objectName: "contact"
        visible: root.drop
        label: qsTr("Contact time, ms")
        number: true
        problem: root.problems.contact ?? ""
    }
    Field {
        id: flight
        objectName: "flight"
        visible: !root.along
        label: qsTr("Flight time, ms (or the height below)")
        number: true
        problem: root.problems.flight ?? ""
    }
    Field {
        id: height
        objectName: "height"
        visible: !root.along
        label: qsTr("Height, %1").arg(root.viewModel.lengthUnit)
        number: true
        problem: root.problems.height ?? ""
    }
    Field {
        id: distance
        objectName: "jumpDistance"
        visible: root.along
        label: qsTr("Distance, m")
        number: true
        problem: root.problems.distance ?? ""
    }
    Card {
        objectName: "trials"
        visible: root.entry.any
        color: Theme.ground
        padding: 12

        RowLayout {
            spacing: Theme.smallGap

            BodyText {
                objectName: "trialSummary"
                text: root.entry.summary === "" ? qsTr("Trials") : root.entry.summary
                font.weight: Font.DemiBold
                Layout.fillWidth: true
            }
            IconButton {
                objectName: "takeOffTrial"
                label: qsTr("Take the last trial off")
                sign: Glyph.Undo
                onClicked: root.entry.takeOffLast()
            }
        }
        Repeater {
            model: root.entry.trials

            NoteText {
                required property string words
                objectName: "trial"
                text: words
                Layout.fillWidth: true
            }
        }
    }
    ActionButton {
        objectName: "addTrial"
        enabled: !root.entry.full
        sign: Glyph.Plus
        text: qsTr("Add another trial")
        onClicked: {
            root.problems = root.entry.addTrial(root.values())
            if (Object.keys(root.problems).length === 0)
                root.emptyTrial()
        }
    }
    ManyChoices {
        id: kinds
        objectName: "jumpTest"
        label: qsTr("Is it one of these?")
        options: [qsTr("Trial of a test day")]
    }
    Field {
        id: day
        objectName: "day"
        label: qsTr("Day, like %1").arg(root.viewModel.dayExample)
        problem: root.problems.day ?? ""
    }
    RowButton {
        objectName: "moreFields"
        title: root.more ? qsTr("Less") : qsTr("More")
        detail: root.more ? "" : qsTr("Surface, shoes, note")
        trailing: root.more ? Glyph.Dash : Glyph.Plus
        onClicked: root.more = !root.more
    }
    Choices {
        id: surface
        objectName: "surface"
        visible: root.more
        label: qsTr("Surface")
        options: [qsTr("Track"), qsTr("Indoor"), qsTr("Grass")]
        onChosen: index => current = index
    }
    Choices {
        id: shoes
        objectName: "shoes"
        visible: root.more
        label: qsTr("Shoes")
        options: [qsTr("Spikes"), qsTr("Flats"), qsTr("Not said")]
        onChosen: index => current = index
    }
    Field {
        id: note
        objectName: "note"
        visible: root.more
        label: qsTr("Note")
        problem: root.problems.note ?? ""
    }

    actions: ActionButton {
        objectName: "saveJump"
        main: true
        text: qsTr("Save")
        Accessible.name: qsTr("Save the jumps")
        onClicked: {
            root.problems = root.entry.save(root.values())
            if (Object.keys(root.problems).length === 0)
                root.close()
        }
    }
}
