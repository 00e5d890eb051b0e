import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Drop jumps by the height of the box, and which box is best so far.
Card {
    id: root

    required property TrackViewModel viewModel

    objectName: "boxCard"
    visible: viewModel.boxes.count > 0

    AskedHeading {
        text: qsTr("Drop jumps by box")
        topics: ["rsi", "contact", "jump-height"]
    }
    Repeater {
        model: root.viewModel.boxes

        ColumnLayout {
            id: box

            required property string title
            required property string value
            required property string detail
            required property bool best
            required property bool slow

            objectName: "boxRow"
            spacing: 4

            ListRow {
                title: box.title
                detail: box.detail
                value: box.value
            }
            RowLayout {
                visible: box.best
                spacing: 6

                Glyph {
                    sign: Glyph.Check
                    color: Theme.good
                    thickness: 3
                    Layout.preferredWidth: Theme.scaled(14)
                    Layout.preferredHeight: Theme.scaled(14)
                }
                NoteText {
                    text: qsTr("best reactive strength within the contact limit")
                    color: Theme.good
                    Layout.fillWidth: true
                }
            }
            MarkedLine {
                visible: box.slow
                caution: true
                text: qsTr("Contact is longer than 250 ms: a lower box.")
            }
        }
    }
    NoteText {
        text: qsTr("Medians of the last day on each box. Go up 10 cm while contact stays short, no heel strikes the ground and RSI does not fall. Heels are not kept with a typed jump: watch them.")
        Layout.fillWidth: true
    }
    NoteText {
        text: root.viewModel.jumpEntry.caution
        visible: text !== ""
        Layout.fillWidth: true
    }
}
