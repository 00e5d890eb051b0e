import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The season's line of velocity against load on the rung of today, and the 1RM it points to.
Card {
    id: root

    required property LoadVelocityViewModel viewModel

    visible: viewModel.hasLift
    padding: 12

    AskedHeading {
        text: root.viewModel.title
        topics: ["load-velocity", "maximum"]
    }
    Choices {
        objectName: "loadSides"
        visible: options.length > 0
        options: root.viewModel.sides
        current: root.viewModel.side
        onChosen: index => root.viewModel.chooseSide(index)
    }
    BodyText {
        objectName: "maximum"
        text: root.viewModel.maximum
        visible: text !== ""
        color: Theme.accent
        font.weight: Font.DemiBold
        Layout.fillWidth: true
    }
    TouchPicture {
        objectName: "loadVelocity"
        visible: root.viewModel.hasPoints
        plot: root.viewModel.plot
        onTouched: place => root.viewModel.touch(place)
        onStepped: by => root.viewModel.step(by)
        onReleased: root.viewModel.letGo()
    }
    TouchedPoint {
        objectName: "loadPoint"
        visible: root.viewModel.hasPoints
        text: root.viewModel.chosenText
        onStepped: by => root.viewModel.step(by)
    }
    NoteText {
        objectName: "loadWords"
        text: root.viewModel.words
        visible: text !== ""
        Layout.fillWidth: true
    }
    BodyText {
        objectName: "loadMissing"
        text: root.viewModel.missing
        visible: text !== ""
        font.pixelSize: Theme.scaled(15)
        Layout.fillWidth: true
    }
}
