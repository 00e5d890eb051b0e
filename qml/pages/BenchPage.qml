import QtQuick
import Fleetrung
import Fleetrung.Views

// Today's lifts; one of them opened is the live set, beside them where the window is wide.
Item {
    id: root

    required property BenchViewModel viewModel

    required property SquadDayViewModel squadDay
    required property DoneSetsViewModel doneSets
    readonly property bool twoPanes: viewModel.liftOpen && Theme.holdsTwo(width)

    signal ladderAsked()
    signal squadAsked()
    signal sensorsAsked()

    SessionView {
        id: session
        objectName: "session"
        anchors.left: parent.left
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        width: root.twoPanes ? Math.round(0.44 * parent.width) : parent.width
        visible: root.twoPanes || !root.viewModel.liftOpen
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
        anchors.left: root.twoPanes ? session.right : parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: parent.bottom
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
