import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The best time of each test.
Sheet {
    id: root

    required property TrackViewModel viewModel

    title: qsTr("Personal bests")

    Repeater {
        model: root.viewModel.bests

        Card {
            id: best

            required property string title
            required property string value
            required property string detail

            objectName: "best"
            color: Theme.ground
            padding: 12

            ListRow {
                title: best.title
                detail: best.detail
                value: best.value
            }
        }
    }
    NoteText {
        text: qsTr("More than 2.0 m/s of wind behind a competition makes its time wind-aided: it is no best. A time by hand is one only where there is no other.")
        Layout.fillWidth: true
    }
}
