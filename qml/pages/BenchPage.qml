import QtQuick
import Fleetrung
import Fleetrung.Views

// Today's lifts; one of them opened is the live set.
Item {
    id: root

    required property BenchViewModel viewModel

    required property SquadDayViewModel squadDay

    signal ladderAsked()
    signal squadAsked()
    signal sensorsAsked()

    SessionView {
        id: session
        objectName: "session"
        anchors.fill: parent
        visible: !root.viewModel.liftOpen
        viewModel: root.viewModel
        onLadderAsked: root.ladderAsked()
        onSquadAsked: root.squadAsked()
        onSharingAsked: sharingSheet.open()
        onSensorsAsked: root.sensorsAsked()
    }
    SetView {
        objectName: "set"
        anchors.fill: parent
        visible: root.viewModel.liftOpen
        viewModel: root.viewModel
        onWhyAsked: session.openWhy(root.viewModel.openKey)
        onSensorsAsked: root.sensorsAsked()
    }
    SharingSheet {
        id: sharingSheet
        objectName: "sharingSheet"
        viewModel: root.squadDay
    }
}
