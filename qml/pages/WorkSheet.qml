import QtQuick
import Fleetrung
import Fleetrung.Views

// Work typed in: so many runs of so many metres. It begins with what stayed the same since the last time; what is rare
// stands behind "More".
Sheet {
    id: root

    required property TrackWorkViewModel viewModel
    property var problems: ({})
    property bool more: false
    readonly property var rareFields: ["wind", "note"]

    title: qsTr("Add work")
    onAboutToShow: {
        const before = viewModel.beginWork()
        problems = {}
        more = false
        kind.current = before.kind
        repetitions.text = before.repetitions
        distance.text = before.distance
        timing.current = before.timing
        rest.text = before.rest
        load.text = before.load
        slope.text = before.slope
        surface.current = before.surface
        shoes.current = before.shoes
        day.text = viewModel.today
        for (const field of [bestTime, effort, wind, note])
            field.text = ""
    }

    Choices {
        id: kind
        objectName: "workKind"
        label: qsTr("Kind of work")
        options: [qsTr("Sprints"), qsTr("Flying"), qsTr("Resisted"), qsTr("Hill"), qsTr("Easy")]
        onChosen: index => current = index
    }
    Field {
        id: repetitions
        objectName: "repetitions"
        label: qsTr("Runs")
        number: true
        problem: root.problems.repetitions ?? ""
    }
    Field {
        id: distance
        objectName: "workDistance"
        label: kind.current === 1 ? qsTr("Zone of each, m") : qsTr("Metres of each")
        number: true
        problem: root.problems.distance ?? ""
    }
    Field {
        id: load
        objectName: "load"
        visible: kind.current === 2
        label: qsTr("Load on the sled, %1 (optional)").arg(root.viewModel.massUnit)
        number: true
        problem: root.problems.load ?? ""
    }
    Field {
        id: slope
        objectName: "slope"
        visible: kind.current === 3
        label: qsTr("Slope, % (optional)")
        number: true
        problem: root.problems.slope ?? ""
    }
    Field {
        id: effort
        objectName: "effort"
        label: qsTr("Effort, 1 to 10. From 9 on untimed sprints count as fast metres")
        number: true
        problem: root.problems.effort ?? ""
    }
    Field {
        id: bestTime
        objectName: "bestTime"
        label: qsTr("Best time of one run, s (optional)")
        number: true
        problem: root.problems.bestTime ?? ""
    }
    Choices {
        id: timing
        objectName: "timing"
        visible: bestTime.text !== ""
        label: qsTr("Timed by")
        options: [qsTr("Hand"), qsTr("Gates"), qsTr("Video"), qsTr("Electronic")]
        onChosen: index => current = index
    }
    Field {
        id: rest
        objectName: "rest"
        label: qsTr("Rest between runs, minutes (optional)")
        number: true
        problem: root.problems.rest ?? ""
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
        detail: root.more ? "" : qsTr("Surface, shoes, wind, note")
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
        id: wind
        objectName: "wind"
        visible: root.more
        label: qsTr("Wind, m/s, tail wind positive (optional)")
        hint: qsTr("+0,8 or -1.2")
        problem: root.problems.wind ?? ""
    }
    Field {
        id: note
        objectName: "note"
        visible: root.more
        label: qsTr("Note")
        problem: root.problems.note ?? ""
    }

    actions: ActionButton {
        objectName: "saveWork"
        main: true
        text: qsTr("Save the work")
        onClicked: {
            root.problems = root.viewModel.addWork({
                kind: kind.current, repetitions: repetitions.text, distance: distance.text, load: load.text,
                slope: slope.text, effort: effort.text, bestTime: bestTime.text, timing: timing.current,
                rest: rest.text, day: day.text, surface: surface.current, shoes: shoes.current, wind: wind.text,
                note: note.text
            })
            if (Object.keys(root.problems).length === 0)
                root.close()
            else if (root.rareFields.some(field => root.problems[field] !== undefined))
                root.more = true
        }
    }
}
