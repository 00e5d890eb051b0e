import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// A run typed in. It begins with what stayed the same since the last one; what is rare stands behind "More".
Sheet {
    id: root

    required property TrackViewModel viewModel
    property var problems: ({})
    property bool more: false
    readonly property bool flying: start.current === 4
    readonly property var rareFields: ["reaction", "beam", "temperature", "altitude", "contact", "stepLength", "note"]

    title: qsTr("Add a run")
    onAboutToShow: {
        const before = viewModel.beginRun()
        problems = {}
        more = false
        day.text = viewModel.today
        distance.text = before.distance
        start.current = before.start
        runIn.text = before.runIn
        timing.current = before.timing
        surface.current = before.surface
        shoes.current = before.shoes
        beam.text = before.beam
        altitude.text = before.altitude
        for (const field of [time, wind, reaction, temperature, contact, stepLength, note])
            field.text = ""
        kinds.chosen = []
    }

    Field {
        id: distance
        objectName: "distance"
        label: root.flying ? qsTr("Zone, m") : qsTr("Distance, m")
        number: true
        problem: root.problems.distance ?? ""
    }
    Choices {
        id: start
        objectName: "start"
        label: qsTr("Start")
        options: [qsTr("Blocks"), qsTr("Standing"), qsTr("Falling"), qsTr("Rolling"), qsTr("Flying")]
        onChosen: index => current = index
    }
    Field {
        id: runIn
        objectName: "runIn"
        visible: root.flying
        label: qsTr("Run-in before the zone, m")
        number: true
        problem: root.problems.runIn ?? ""
    }
    RowButton {
        objectName: "typeSplits"
        visible: !root.flying
        title: qsTr("Splits")
        detail: root.viewModel.splits.summary
        onClicked: {
            root.viewModel.splits.setRun(distance.text)
            splitSheet.open()
        }
    }
    Field {
        id: time
        objectName: "time"
        label: !root.flying && root.viewModel.splits.any ? qsTr("Time, s (if no split stands at the end)") : qsTr("Time, s")
        number: true
        problem: root.problems.time ?? ""
    }
    Field {
        id: wind
        objectName: "wind"
        label: qsTr("Wind, m/s, tail wind positive (optional)")
        hint: qsTr("+0,8 or -1.2")
        problem: root.problems.wind ?? ""
    }
    Choices {
        id: timing
        objectName: "timing"
        label: qsTr("Timed by")
        options: [qsTr("Hand"), qsTr("Gates"), qsTr("Video"), qsTr("Electronic")]
        onChosen: index => current = index
    }
    Choices {
        id: surface
        objectName: "surface"
        label: qsTr("Surface")
        options: [qsTr("Track"), qsTr("Indoor"), qsTr("Grass")]
        onChosen: index => current = index
    }
    ManyChoices {
        id: kinds
        objectName: "runKinds"
        label: qsTr("Is it one of these?")
        options: [qsTr("Trial of a test day"), qsTr("Competition")]
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
        detail: root.more ? "" : qsTr("Shoes, reaction, air, steps from video, note")
        trailing: root.more ? Glyph.Dash : Glyph.Plus
        onClicked: root.more = !root.more
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
        id: reaction
        objectName: "reaction"
        visible: root.more && start.current < 2
        label: qsTr("Reaction from the gun, s, where it was timed")
        number: true
        problem: root.problems.reaction ?? ""
    }
    Field {
        id: beam
        objectName: "beam"
        visible: root.more && start.current === 1 && (timing.current === 1 || timing.current === 2)
        label: qsTr("Start line to the beam that starts the clock, m; the splits count from the beam")
        number: true
        problem: root.problems.beam ?? ""
    }
    Field {
        id: temperature
        objectName: "temperature"
        visible: root.more
        label: qsTr("Air temperature, °C")
        problem: root.problems.temperature ?? ""
    }
    Field {
        id: altitude
        objectName: "altitude"
        visible: root.more
        label: qsTr("Height above the sea, m")
        problem: root.problems.altitude ?? ""
    }
    Field {
        id: contact
        objectName: "contact"
        visible: root.more
        label: qsTr("Ground contact near top speed, ms: from video at 240 pictures a second, ± 4 ms")
        number: true
        problem: root.problems.contact ?? ""
    }
    Field {
        id: stepLength
        objectName: "stepLength"
        visible: root.more
        label: qsTr("Step length near top speed, %1, from video").arg(root.viewModel.lengthUnit)
        number: true
        problem: root.problems.stepLength ?? ""
    }
    Field {
        id: note
        objectName: "note"
        visible: root.more
        label: qsTr("Note")
        problem: root.problems.note ?? ""
    }

    actions: ActionButton {
        objectName: "saveRun"
        main: true
        text: qsTr("Save the run")
        onClicked: {
            root.problems = root.viewModel.addRun({
                distance: distance.text, time: time.text, start: start.current, runIn: runIn.text,
                wind: wind.text, surface: surface.current, timing: timing.current, day: day.text,
                shoes: shoes.current, test: kinds.chosen.indexOf(0) >= 0, competition: kinds.chosen.indexOf(1) >= 0,
                reaction: reaction.text, beam: beam.text, temperature: temperature.text, altitude: altitude.text,
                contact: contact.text, stepLength: stepLength.text, note: note.text
            })
            if (Object.keys(root.problems).length === 0)
                root.close()
            else if (root.rareFields.some(field => root.problems[field] !== undefined))
                root.more = true
        }
    }

    SplitSheet {
        id: splitSheet
        objectName: "splitSheet"
        entry: root.viewModel.splits
    }
}
