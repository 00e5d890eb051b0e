import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// A run of the list: a tap opens it, the bin deletes it.
Card {
    id: entry

    required property string key
    required property string title
    required property string value
    required property string detail

    signal opened()
    signal removed()

    objectName: "entry"
    padding: 4

    RowLayout {
        spacing: 0

        AbstractButton {
            id: button
            objectName: "openRun"
            padding: 8
            implicitHeight: Math.max(Theme.touchTarget, words.implicitHeight + 16)
            Layout.fillWidth: true
            Accessible.role: Accessible.Button
            Accessible.name: qsTr("%1, %2. %3").arg(entry.title).arg(entry.value).arg(entry.detail)
            onClicked: entry.opened()

            background: Rectangle {
                radius: 12
                color: button.down ? Theme.raised : "transparent"
                border.width: button.visualFocus ? 3 : 0
                border.color: Theme.ink
            }
            contentItem: ListRow {
                id: words
                title: entry.title
                detail: entry.detail
                value: entry.value
            }
        }
        IconButton {
            objectName: "remove"
            label: qsTr("Delete %1, %2").arg(entry.title).arg(entry.value)
            sign: Glyph.Bin
            onClicked: entry.removed()
        }
    }
}
