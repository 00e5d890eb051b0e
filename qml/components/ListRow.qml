import QtQuick
import QtQuick.Layouts
import Fleetrung

// One row of a list: title, detail below it, a value at the right, and what can be done with it. In large text the
// detail takes the whole width.
GridLayout {
    id: row

    required property string title
    property string detail
    property string value
    default property alias extra: extras.data

    columns: 3
    columnSpacing: Theme.smallGap
    rowSpacing: 1
    Layout.fillWidth: true

    BodyText {
        text: row.title
        font.weight: Font.Medium
        Layout.fillWidth: true
        Layout.row: 0
        Layout.column: 0
        Layout.alignment: row.detail === "" || Theme.large ? Qt.AlignVCenter : Qt.AlignBottom
    }
    BodyText {
        text: row.value
        visible: text !== ""
        font.pixelSize: Theme.valueSize
        font.weight: Font.DemiBold
        Layout.row: 0
        Layout.column: 1
        Layout.rowSpan: Theme.large || row.detail === "" ? 1 : 2
    }
    RowLayout {
        id: extras
        spacing: 0
        Layout.column: 2
        Layout.row: 0
        Layout.rowSpan: Theme.large || row.detail === "" ? 1 : 2
    }
    NoteText {
        text: row.detail
        visible: text !== ""
        Layout.row: 1
        Layout.column: 0
        Layout.columnSpan: Theme.large ? 3 : 1
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignTop
    }
}
