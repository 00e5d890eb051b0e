import QtQuick
import Fleetrung
import Fleetrung.Views

// Today's lifts; one of them opened is the live set.
Item {
    id: root

    required property BenchViewModel viewModel

    required property SquadDayViewModel squadDay
    required property DoneSetsViewModel doneSets

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
        doneText: root.doneSets.countText
        onSharingAsked: sharingSheet.open()
        onDoneAsked: doneSheets.open()
        onSensorsAsked: root.sensorsAsked()
    }
    SetView {
        objectName: "set"
        anchors.fill: parent
        visible: root.viewModel.liftOpen
        viewModel: root.viewModel
        doneText: root.doneSets.countText
        onDoneAsked: doneSheets.open()
        onWhyAsked: session.openWhy(root.viewModel.openKey)
        onSensorsAsked: root.sensorsAsked()
    }
    DoneSets {
        id: doneSheets
        objectName: "doneSets"
        viewModel: root.doneSets
    }
    SharingSheet {
        id: sharingSheet
        objectName: "sharingSheet"
        viewModel: root.squadDay
    }
}
