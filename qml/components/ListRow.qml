import QtQuick
import QtQuick.Layouts
import Fleetrung

// One row of a list: title, detail below it, a value at the right, and what can be done with it.
RowLayout {
    id: row

    required property string title
    property string detail
    property string value
    default property alias extra: extras.data

    spacing: Theme.smallGap
    Layout.fillWidth: true

    ColumnLayout {
        spacing: 1
        Layout.fillWidth: true

        BodyText {
            text: row.title
            font.weight: Font.Medium
            Layout.fillWidth: true
        }
        NoteText {
            text: row.detail
            visible: text !== ""
            Layout.fillWidth: true
        }
    }
    BodyText {
        text: row.value
        visible: text !== ""
        font.pixelSize: Theme.valueSize
        font.weight: Font.DemiBold
    }
    RowLayout {
        id: extras
        spacing: 0
    }
}
