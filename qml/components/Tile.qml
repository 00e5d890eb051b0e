import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// One number with its name and what it is measured against. A tap tells what it is.
AbstractButton {
    id: tile

    required property string value
    required property string name
    property string note
    property var topics: [] // of the help

    padding: 12
    implicitHeight: Math.max(Theme.touchTarget, contentItem.implicitHeight + 2 * padding)
    Layout.fillWidth: true
    Layout.fillHeight: true
    Layout.preferredWidth: 1
    Accessible.role: Accessible.Button
    Accessible.name: qsTr("%1: %2. %3").arg(name).arg(value).arg(note)
    Accessible.description: topics.length > 0 ? Help.questionOf(topics[0]) : ""
    onClicked: Help.ask(tile.topics)

    background: Rectangle {
        radius: Theme.cardRadius
        color: tile.down ? Theme.raised : Theme.card
        border.width: tile.visualFocus ? 3 : 0
        border.color: Theme.ink
    }
    contentItem: ColumnLayout {
        spacing: 3

        BodyText {
            text: tile.value
            font.pixelSize: Theme.valueSize
            font.weight: Font.DemiBold
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Theme.noteSize
            wrapMode: Text.NoWrap
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        NoteText {
            text: tile.name
            font.pixelSize: Theme.smallSize
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        NoteText {
            text: tile.note
            font.pixelSize: Theme.smallSize
            visible: tile.note !== ""
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        Item { Layout.fillHeight: true }
    }
}
