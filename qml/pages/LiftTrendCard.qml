import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Time to peak velocity of the ladder by week against the target band; a touched point shows its session.
Card {
    id: root

    required property LiftTrendViewModel viewModel

    signal cleared()

    visible: viewModel.hasLifts
    padding: 12

    AskedHeading {
        text: root.viewModel.title
        topics: ["time-to-peak", "trend", "typical-error"]
    }
    Choices {
        objectName: "sides"
        visible: options.length > 0
        options: root.viewModel.sides
        current: root.viewModel.side
        onChosen: index => root.viewModel.chooseSide(index)
    }
    TouchPicture {
        objectName: "tpvTrend"
        visible: root.viewModel.hidden === ""
        plot: root.viewModel.plot
        onTouched: place => root.viewModel.touch(place)
        onStepped: by => root.viewModel.step(by)
        onReleased: root.viewModel.letGo()
    }
    TouchedPoint {
        objectName: "liftPoint"
        visible: root.viewModel.hidden === ""
        text: root.viewModel.chosenText
        details: root.viewModel.chosenDetails
        onStepped: by => root.viewModel.step(by)
    }
    NoteText {
        objectName: "liftWords"
        text: root.viewModel.words
        visible: text !== ""
        Layout.fillWidth: true
    }
    NothingLeft {
        objectName: "noLifts"
        text: root.viewModel.hidden
        onCleared: root.cleared()
    }
}
