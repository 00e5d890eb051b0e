import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// One rung of a ladder of the user's own.
Sheet {
    id: root

    required property OwnLadderViewModel ladder
    property int index: -1
    property var problems: ({})

    function edit(rung: int) {
        const form = ladder.rungForm(rung)
        index = rung
        problems = {}
        for (const field of [name, rangeFrom, rangeTo, targetFrom, targetTo, sets, repetitions, rest, ratio, probe, box])
            field.text = form[field.objectName]
        motion.current = form.motion
        earliest.current = form.earliest
        latest.current = form.latest
        needs.chosen = form.needs
        open()
    }

    title: index < 0 ? qsTr("A new rung") : qsTr("Change the rung")

    Field {
        id: name
        objectName: "name"
        label: qsTr("Name")
        problem: root.problems.name ?? ""
    }
    GridLayout {
        columns: Theme.large ? 1 : 2
        columnSpacing: 12
        rowSpacing: Theme.gap

        Field {
            id: rangeFrom
            objectName: "rangeFrom"
            label: qsTr("Range from, %1").arg(root.ladder.lengthUnit)
            number: true
            problem: root.problems.rangeFrom ?? ""
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
        }
        Field {
            id: rangeTo
            objectName: "rangeTo"
            label: qsTr("to, %1").arg(root.ladder.lengthUnit)
            number: true
            problem: root.problems.rangeTo ?? ""
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
        }
        Field {
            id: targetFrom
            objectName: "targetFrom"
            label: qsTr("Should lead to, from ms")
            number: true
            problem: root.problems.targetFrom ?? ""
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
        }
        Field {
            id: targetTo
            objectName: "targetTo"
            label: qsTr("to, ms")
            number: true
            problem: root.problems.targetTo ?? ""
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
        }
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
        Field {
            id: rest
            objectName: "rest"
            label: qsTr("Rest, seconds")
            number: true
            problem: root.problems.rest ?? ""
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
        }
        Field {
            id: box
            objectName: "box"
            label: qsTr("Box, %1 (optional)").arg(root.ladder.lengthUnit)
            number: true
            problem: root.problems.box ?? ""
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
        }
    }
    Choices {
        id: earliest
        objectName: "earliest"
        label: qsTr("Begins, at the earliest, in")
        options: root.ladder.phases
        onChosen: index => current = index
    }
    Choices {
        id: latest
        objectName: "latest"
        label: qsTr("Is left, at the latest, at the end of")
        options: root.ladder.phases
        onChosen: index => current = index
    }
    NoteText {
        objectName: "latestProblem"
        text: root.problems.latest ?? ""
        visible: text !== ""
        color: Theme.stop
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
    }
    Field {
        id: ratio
        objectName: "ratio"
        label: qsTr("First load here, % of the last load on the rung before")
        number: true
        problem: root.problems.ratio ?? ""
    }
    Field {
        id: probe
        objectName: "probe"
        label: qsTr("Probe load, % of what the rung allows (0 for body mass)")
        number: true
        problem: root.problems.probe ?? ""
    }
    Choices {
        id: motion
        objectName: "motion"
        label: qsTr("How the bar moves: what the sensor looks for")
        options: root.ladder.motions
        onChosen: index => current = index
    }
    ManyChoices {
        id: needs
        objectName: "needs"
        label: qsTr("What it needs")
        options: [qsTr("Bar"), qsTr("Rack"), qsTr("Pins"), qsTr("Blocks")]
    }
    ActionButton {
        objectName: "removeRung"
        visible: root.index >= 0
        sign: Glyph.Bin
        text: qsTr("Take this rung out")
        onClicked: {
            const refusal = root.ladder.removeRung(root.index)
            root.problems = { all: refusal }
            if (refusal === "")
                root.close()
        }
    }

    actions: [
        NoteText {
            objectName: "rungProblem"
            text: root.problems.all ?? (Object.keys(root.problems).length > 0 ? qsTr("Some of it cannot be taken yet: look above.") : "")
            visible: text !== ""
            color: Theme.stop
            Layout.fillWidth: true
            Accessible.role: Accessible.AlertMessage
        },
        ActionButton {
            objectName: "saveRung"
            main: true
            text: qsTr("Keep the rung")
            onClicked: {
                root.problems = root.ladder.saveRung(root.index, {
                    name: name.text, rangeFrom: rangeFrom.text, rangeTo: rangeTo.text, targetFrom: targetFrom.text,
                    targetTo: targetTo.text, sets: sets.text, repetitions: repetitions.text, rest: rest.text, box: box.text,
                    earliest: earliest.current, latest: latest.current, ratio: ratio.text, probe: probe.text,
                    motion: motion.current, needs: needs.chosen
                })
                if (Object.keys(root.problems).length === 0)
                    root.close()
            }
        }
    ]
}
