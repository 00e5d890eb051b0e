import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Times of one sprint test by week, those that the filters leave; a touched point shows its run.
Card {
    id: root

    required property SprintTrendViewModel viewModel

    signal cleared()

    visible: viewModel.hasSprints
    padding: 12

    AskedHeading {
        text: qsTr("Sprint times")
        topics: ["flying-speed", "wind", "trend"]
    }
    Choices {
        objectName: "tests"
        visible: options.length > 1
        options: root.viewModel.tests
        current: root.viewModel.current
        onChosen: index => root.viewModel.choose(index)
    }
    ManyChoices {
        objectName: "sprintFilters"
        visible: options.length > 0
        bound: true
        label: qsTr("Which runs count")
        options: root.viewModel.filters
        chosen: root.viewModel.chosenFilters
        onToggled: index => root.viewModel.toggleFilter(index)
    }
    TouchPicture {
        objectName: "sprintTrend"
        visible: root.viewModel.hidden === ""
        plot: root.viewModel.plot
        onTouched: place => root.viewModel.touch(place)
        onStepped: by => root.viewModel.step(by)
        onReleased: root.viewModel.letGo()
    }
    TouchedPoint {
        objectName: "sprintPoint"
        visible: root.viewModel.hidden === ""
        text: root.viewModel.chosenText
        onStepped: by => root.viewModel.step(by)
    }
    NoteText {
        objectName: "sprintWords"
        text: root.viewModel.words
        visible: text !== ""
        Layout.fillWidth: true
    }
    NoteText {
        objectName: "leftOut"
        text: root.viewModel.leftOut
        visible: text !== ""
        Layout.fillWidth: true
    }
    NothingLeft {
        objectName: "noSprints"
        text: root.viewModel.hidden
        onCleared: root.cleared()
    }
}
