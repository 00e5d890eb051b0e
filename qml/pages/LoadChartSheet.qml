import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Loads for a number of repetitions from one maximum, by the published chart.
Sheet {
    id: root

    required property BenchViewModel viewModel
    readonly property var rows: viewModel.loadChart(maximum.text)

    title: qsTr("Loads by the chart")
    onAboutToShow: maximum.text = viewModel.knownMaximum

    Field {
        id: maximum
        objectName: "maximum"
        label: qsTr("1RM, %1").arg(root.viewModel.massUnit)
        number: true
    }
    NoteText {
        visible: root.rows.length === 0
        text: qsTr("Type what you can lift once. A set of up to ten repetitions typed in tells it roughly.")
        Layout.fillWidth: true
    }
    Card {
        visible: root.rows.length > 0

        Repeater {
            model: root.rows

            ListRow {
                required property var modelData
                title: modelData.title
                detail: modelData.detail
                value: modelData.value
            }
        }
    }
    NoteText {
        visible: root.rows.length > 0
        text: qsTr("Source: NSCA training load chart. At 80 % of 1RM people differ by many repetitions, so the plan goes by how fast the bar moves, not by this.")
        Layout.fillWidth: true
    }
}
