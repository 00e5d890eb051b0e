import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The evidence over the season: time to peak velocity by week against the target band, sprint times, and whether it
// worked.
PageFrame {
    id: root

    required property TrendsViewModel viewModel

    title: qsTr("Trends")
    lead: viewModel.athleteName
    leadNote: viewModel.seasonText

    Choices {
        objectName: "ladders"
        visible: options.length > 1
        options: root.viewModel.names
        current: root.viewModel.current
        onChosen: index => root.viewModel.choose(index)
    }
    Card {
        visible: root.viewModel.hasLifts
        padding: 12

        HeadingText {
            text: root.viewModel.liftTitle
            font.pixelSize: Theme.valueSize
            Layout.fillWidth: true
        }
        Picture {
            objectName: "tpvTrend"
            plot: root.viewModel.liftPlot
            textSize: Theme.scaled(12)
        }
        NoteText {
            objectName: "liftWords"
            text: root.viewModel.liftWords
            visible: text !== ""
            Layout.fillWidth: true
        }
    }
    Card {
        visible: root.viewModel.hasSprints
        padding: 12

        HeadingText {
            text: qsTr("Sprint times")
            font.pixelSize: Theme.valueSize
            Layout.fillWidth: true
        }
        Choices {
            objectName: "tests"
            visible: options.length > 1
            options: root.viewModel.tests
            current: root.viewModel.currentTest
            onChosen: index => root.viewModel.chooseTest(index)
        }
        Picture {
            objectName: "sprintTrend"
            plot: root.viewModel.sprintPlot
            textSize: Theme.scaled(12)
        }
        NoteText {
            text: root.viewModel.sprintWords
            visible: text !== ""
            Layout.fillWidth: true
        }
    }
    DidItWorkCard {
        objectName: "didItWork"
        visible: viewModel.hasSeason
        viewModel: root.viewModel.didItWork
    }
    EmptyState {
        objectName: "emptyTrends"
        visible: !root.viewModel.hasLifts && !root.viewModel.hasSprints
        sign: Glyph.Trends
        title: qsTr("Nothing measured yet")
        text: qsTr("Each session begins with a probe set: three repetitions with full intent at the same load. From the third session on, this page shows whether you reach peak velocity sooner.")
    }
}
