import QtQuick
import Fleetrung
import Fleetrung.Views

Sheet {
    id: root

    required property TrackViewModel viewModel
    property var problems: ({})

    title: qsTr("Add a run")
    onAboutToShow: {
        problems = {}
        day.text = viewModel.today
        time.text = ""
        wind.text = ""
    }

    Field {
        id: distance
        objectName: "distance"
        label: qsTr("Distance, m")
        number: true
        problem: root.problems.distance ?? ""
    }
    Field {
        id: time
        objectName: "time"
        label: qsTr("Time, s")
        number: true
        problem: root.problems.time ?? ""
    }
    Choices {
        id: start
        objectName: "start"
        label: qsTr("Start")
        options: [qsTr("Blocks"), qsTr("Standing"), qsTr("Flying")]
        onChosen: index => current = index
    }
    Field {
        id: runIn
        objectName: "runIn"
        visible: start.current === 2
        label: qsTr("Run-in before the zone, m")
        number: true
        problem: root.problems.runIn ?? ""
    }
    Field {
        id: wind
        objectName: "wind"
        label: qsTr("Wind, m/s, tail wind positive (optional)")
        hint: qsTr("+0,8 or -1.2")
        problem: root.problems.wind ?? ""
    }
    Choices {
        id: surface
        objectName: "surface"
        label: qsTr("Surface")
        options: [qsTr("Track"), qsTr("Indoor"), qsTr("Grass")]
        onChosen: index => current = index
    }
    Choices {
        id: timing
        objectName: "timing"
        label: qsTr("Timed by")
        options: [qsTr("Hand"), qsTr("Gates"), qsTr("Video"), qsTr("Electronic")]
        onChosen: index => current = index
    }
    Field {
        id: day
        objectName: "day"
        label: qsTr("Day (year-month-day)")
        problem: root.problems.day ?? ""
    }

    actions: ActionButton {
        objectName: "saveRun"
        main: true
        text: qsTr("Save the run")
        onClicked: {
            root.problems = root.viewModel.addRun({
                distance: distance.text, time: time.text, start: start.current, runIn: runIn.text,
                wind: wind.text, surface: surface.current, timing: timing.current, day: day.text
            })
            if (Object.keys(root.problems).length === 0)
                root.close()
        }
    }
}
