import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// One that was found: how strongly it is heard, its name, and what is known of it. The list may move while a finger is
// down; what was under it when it came down is meant.
AbstractButton {
    id: root

    required property string key
    required property string name
    required property string detail
    required property int bars

    signal chosen(string key)

    property string meant

    objectName: "found-" + key
    padding: 8
    implicitHeight: Math.max(64, words.height + 24)
    Layout.fillWidth: true
    Accessible.role: Accessible.Button
    Accessible.name: qsTr("%1, %2").arg(name).arg(detail)
    onPressed: meant = key
    onClicked: chosen(meant === "" ? key : meant)

    background: Rectangle {
        radius: 12
        color: root.down ? Theme.raised : Theme.ground
        border.width: root.visualFocus ? 3 : 0
        border.color: Theme.ink
    }
    contentItem: Item {
        implicitHeight: words.height

        SignalBars {
            id: signal
            anchors.verticalCenter: parent.verticalCenter
            x: 6
            bars: root.bars
        }
        Column {
            id: words
            anchors.verticalCenter: parent.verticalCenter
            anchors.left: signal.right
            anchors.right: trail.left
            anchors.leftMargin: 14
            anchors.rightMargin: 10
            spacing: 1

            BodyText {
                width: parent.width
                text: root.name
                font.weight: Font.DemiBold
                Accessible.ignored: true
            }
            NoteText {
                width: parent.width
                text: root.detail
                Accessible.ignored: true
            }
        }
        Glyph {
            id: trail
            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            sign: Glyph.Forward
            color: Theme.muted
            width: 20
            height: 20
        }
    }
}
