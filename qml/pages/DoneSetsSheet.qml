import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The sets of today that are done; one touched is opened.
Sheet {
    id: root

    required property DoneSetsViewModel viewModel

    signal chosen(string key)

    title: qsTr("Sets done today")

    Repeater {
        model: root.viewModel.sets

        RowButton {
            required property int index
            required property string key
            required detail

            objectName: "doneSet" + index
            face: Theme.raised
            onClicked: root.chosen(key) // qmllint disable unqualified
        }
    }
    NoteText {
        visible: root.viewModel.sets.count === 0
        text: qsTr("Nothing yet. Each set stands here once it is done, to be looked at and put right.")
        Layout.fillWidth: true
    }
}
