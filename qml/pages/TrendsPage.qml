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
        objectName: "periods"
        visible: !root.viewModel.isEmpty
        options: root.viewModel.periods
        current: root.viewModel.period
        onChosen: index => root.viewModel.choosePeriod(index)
    }
    NoteText {
        objectName: "periodNote"
        text: root.viewModel.periodNote
        visible: text !== ""
        Layout.fillWidth: true
    }
    Choices {
        objectName: "ladders"
        visible: options.length > 1
        options: root.viewModel.lift.names
        current: root.viewModel.lift.current
        onChosen: index => root.viewModel.lift.choose(index)
    }
    LiftTrendCard {
        objectName: "liftTrend"
        viewModel: root.viewModel.lift
        onCleared: root.viewModel.clearFilters()
    }
    EmptyState {
        objectName: "emptyTrends"
        visible: root.viewModel.isEmpty
        sign: Glyph.Trends
        title: qsTr("Nothing measured yet")
        text: qsTr("Each session begins with a probe set: three repetitions with full intent at the same load. From the third session on, this page shows whether you reach peak velocity sooner.")
    }

    hasSide: !viewModel.isEmpty
    side: [
        LoadVelocityCard {
            objectName: "loads"
            viewModel: root.viewModel.loads
        },
        SprintTrendCard {
            objectName: "sprintTrends"
            viewModel: root.viewModel.sprint
            onCleared: root.viewModel.clearFilters()
        },
        DidItWorkCard {
            objectName: "didItWork"
            visible: viewModel.hasSeason
            viewModel: root.viewModel.didItWork
        }
    ]
}
