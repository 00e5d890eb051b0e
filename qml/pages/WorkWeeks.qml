import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The track by week: metres, how many of them fast, and whether a week grew too quickly.
Card {
    id: root

    required property TrackWorkViewModel viewModel

    objectName: "workWeeks"
    visible: viewModel.weeks.count > 0

    AskedHeading {
        text: qsTr("Metres by week")
        topics: ["fast-metres"]
    }
    Repeater {
        model: root.viewModel.weeks

        ColumnLayout {
            id: week

            required property string title
            required property string value
            required property string detail
            required property string flag

            objectName: "week"
            spacing: 4

            ListRow {
                title: week.title
                detail: week.detail
                value: week.value
            }
            MarkedLine {
                objectName: "flag"
                visible: week.flag !== ""
                caution: true
                text: week.flag
            }
        }
    }
    NoteText {
        text: qsTr("Fast: at 90 % of best speed or above. A week is marked above 1.3 times the mean of the four weeks before it: a starting value of this program; the worth of such ratios is disputed.")
        Layout.fillWidth: true
    }
}
