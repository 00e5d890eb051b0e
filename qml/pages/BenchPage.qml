import QtQuick
import Fleetrung
import Fleetrung.Views

// Today's lifts; one of them opened is the live set.
Item {
    id: root

    required property BenchViewModel viewModel

    signal ladderAsked()

    SessionView {
        objectName: "session"
        anchors.fill: parent
        visible: !root.viewModel.liftOpen
        viewModel: root.viewModel
        onLadderAsked: root.ladderAsked()
    }
    SetView {
        objectName: "set"
        anchors.fill: parent
        visible: root.viewModel.liftOpen
        viewModel: root.viewModel
    }
}
