import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Who shares this sensor: those of one rack, or picked by hand.
Sheet {
    id: root

    required property SquadDayViewModel viewModel

    title: qsTr("Who shares this sensor?")
    onAboutToShow: viewModel.ask()

    NoteText {
        objectName: "sharingNote"
        text: root.viewModel.byHand ? qsTr("Picked by hand. They stand above the set; one tap changes who lifts next.")
                                    : qsTr("Those of the same rack and round, as Squad shares them out. Tap names to pick by hand.")
        Layout.fillWidth: true
    }
    ListView {
        objectName: "sharingList"
        implicitHeight: Math.min(contentHeight, 420)
        spacing: 4
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        reuseItems: true
        model: root.viewModel.sharing
        Layout.fillWidth: true

        delegate: RowButton {
            required property string key
            required property string name
            required property bool chosen

            objectName: "share-" + key
            width: ListView.view.width
            title: name
            sign: chosen ? Glyph.Check : Glyph.Plus
            tone: chosen ? Theme.good : Theme.muted
            trailing: Glyph.Squad
            Accessible.role: Accessible.CheckBox
            Accessible.checked: chosen
            onClicked: root.viewModel.toggleSharer(key) // qmllint disable unqualified
        }
    }
    ActionButton {
        objectName: "shareByRack"
        visible: root.viewModel.byHand
        text: qsTr("Back to those of the rack")
        onClicked: root.viewModel.shareByRack()
    }
}
