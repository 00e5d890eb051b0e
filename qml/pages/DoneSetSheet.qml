import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// One set that is done: its load and kind put right, a repetition struck out, added, or said to be no evidence.
Sheet {
    id: root

    required property DoneSetsViewModel viewModel
    property var problems: ({})
    property bool adds: false

    title: viewModel.title
    tall: true
    onAboutToShow: {
        const form = viewModel.form()
        problems = {}
        adds = false
        kind.current = form.kind ?? 0
        load.text = form.load ?? ""
        repetitions.text = form.repetitions ?? ""
        effort.text = form.effort ?? ""
    }

    NoteText {
        objectName: "setWords"
        text: root.viewModel.text
        Layout.fillWidth: true
    }
    Field {
        id: load
        objectName: "load"
        label: qsTr("Load, %1").arg(root.viewModel.massUnit)
        number: true
        problem: root.problems.load ?? ""
    }
    Field {
        id: repetitions
        objectName: "repetitions"
        visible: root.viewModel.onlyCounted
        label: qsTr("Repetitions")
        number: true
        problem: root.problems.repetitions ?? ""
    }
    Choices {
        id: kind
        objectName: "kind"
        visible: root.viewModel.onLadder
        label: qsTr("Kind of set")
        options: [qsTr("Work"), qsTr("Probe"), qsTr("Warm-up"), qsTr("Maintenance")]
        onChosen: index => current = index
    }
    Field {
        id: effort
        objectName: "effort"
        label: qsTr("Effort, 1 easy to 10 all out (optional)")
        number: true
        problem: root.problems.effort ?? ""
    }
    Repeater {
        model: root.viewModel.repetitions

        Card {
            id: repetition
            required property int index
            required property string key
            required property string title
            required property string detail
            required property bool struck
            required property bool evidence
            required property bool onRight

            objectName: "repetition" + index
            color: Theme.ground

            BodyText {
                text: repetition.title
                font.weight: Font.Medium
                font.strikeout: repetition.struck
                Layout.fillWidth: true
            }
            NoteText {
                objectName: "detail"
                text: repetition.detail
                Layout.fillWidth: true
            }
            Flow {
                spacing: Theme.smallGap
                Layout.fillWidth: true

                ActionButton {
                    objectName: "strike"
                    text: repetition.struck ? qsTr("Take back") : qsTr("Strike out")
                    Accessible.name: qsTr("%1: %2").arg(text).arg(repetition.title)
                    onClicked: root.viewModel.strikeOut(repetition.key, !repetition.struck) // qmllint disable unqualified
                }
                ActionButton {
                    objectName: "evidence"
                    visible: !repetition.struck && root.viewModel.onLadder // qmllint disable unqualified
                    text: repetition.evidence ? qsTr("No evidence") : qsTr("Is evidence")
                    Accessible.name: qsTr("%1: %2").arg(text).arg(repetition.title)
                    onClicked: root.viewModel.countAsEvidence(repetition.key, !repetition.evidence) // qmllint disable unqualified
                }
                ActionButton {
                    objectName: "side"
                    visible: !repetition.struck && root.viewModel.oneSided // qmllint disable unqualified
                    text: repetition.onRight ? qsTr("Was left") : qsTr("Was right")
                    Accessible.name: qsTr("%1: %2").arg(text).arg(repetition.title)
                    onClicked: root.viewModel.setRight(repetition.key, !repetition.onRight) // qmllint disable unqualified
                }
            }
        }
    }
    ActionButton {
        objectName: "addRepetition"
        visible: !root.adds && !root.viewModel.onlyCounted
        sign: Glyph.Plus
        text: qsTr("One repetition is missing")
        onClicked: {
            velocity.text = ""
            time.text = ""
            root.adds = true
        }
    }
    Card {
        objectName: "addedRepetition"
        visible: root.adds
        color: Theme.ground

        NoteText {
            text: qsTr("It is counted as done. Velocity and time only if you measured them otherwise.")
            Layout.fillWidth: true
        }
        Field {
            id: velocity
            objectName: "velocity"
            label: qsTr("Velocity, m/s (if measured)")
            number: true
            problem: root.problems.velocity ?? ""
        }
        Field {
            id: time
            objectName: "time"
            label: qsTr("%1, ms (if measured)").arg(root.viewModel.timeName)
            number: true
            problem: root.problems.time ?? ""
        }
        ActionButton {
            objectName: "saveRepetition"
            text: qsTr("Add the repetition")
            onClicked: {
                root.problems = root.viewModel.add({ velocity: velocity.text, time: time.text })
                root.adds = Object.keys(root.problems).length > 0
            }
        }
    }
    ActionButton {
        objectName: "deleteSet"
        sign: Glyph.Bin
        text: qsTr("Delete this set")
        onClicked: {
            root.viewModel.remove()
            root.close()
        }
    }

    actions: ActionButton {
        objectName: "saveSet"
        main: true
        text: qsTr("Save")
        onClicked: {
            root.problems = root.viewModel.save({ kind: kind.current, load: load.text, repetitions: repetitions.text, effort: effort.text })
            if (Object.keys(root.problems).length === 0)
                root.close()
        }
    }
}
