import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Work that is counted, timed or not: the weeks, then each piece of it.
ColumnLayout {
    id: root

    required property TrackWorkViewModel viewModel

    spacing: Theme.gap
    Layout.fillWidth: true

    WorkWeeks { viewModel: root.viewModel }
    Repeater {
        model: root.viewModel.rows

        Card {
            id: entry

            required property string key
            required property string title
            required property string value
            required property string detail

            objectName: "workEntry"
            padding: 12

            ListRow {
                title: entry.title
                detail: entry.detail
                value: entry.value

                IconButton {
                    objectName: "removeWork"
                    label: qsTr("Delete %1, %2").arg(entry.title).arg(entry.value)
                    sign: Glyph.Bin
                    onClicked: root.viewModel.remove(entry.key) // qmllint disable unqualified
                }
            }
        }
    }
    ActionButton {
        objectName: "moreWork"
        visible: root.viewModel.hasMore
        text: qsTr("Show earlier ones")
        onClicked: root.viewModel.showMore()
    }
    EmptyState {
        objectName: "emptyWork"
        visible: root.viewModel.rows.count === 0
        sign: Glyph.Track
        title: qsTr("No work counted yet")
        text: qsTr("Sprints without a clock, runs behind a sled, up a hill or easy: how many of how many metres. The weeks then tell how many metres were run, and how many of them fast.")
    }
}
