import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// A row of a list that opens something: title, detail below it, a sign before it where it has one.
AbstractButton {
    id: button

    required property string title
    property string detail
    property int sign: -1
    property color tone: Theme.muted
    property bool strong: false
    property color face: Theme.ground
    property int trailing: Glyph.Forward

    padding: 8
    implicitHeight: Math.max(Theme.touchTarget, words.height + 20)
    Layout.fillWidth: true
    Accessible.role: Accessible.Button
    Accessible.name: detail === "" ? title : qsTr("%1, %2").arg(title).arg(detail)

    background: Rectangle {
        radius: 12
        color: button.down ? Theme.raised : button.face
        border.width: button.visualFocus ? 3 : 0
        border.color: Theme.ink
    }
    // By anchors rather than a layout: wrapped words in a layout of unknown width take several rounds to settle.
    contentItem: Item {
        implicitHeight: words.height

        Glyph {
            id: mark
            anchors.verticalCenter: parent.verticalCenter
            x: 4
            visible: button.sign >= 0
            sign: button.sign >= 0 ? button.sign : Glyph.Dash
            color: button.tone
            thickness: 3
            width: Theme.scaled(18)
            height: Theme.scaled(18)
        }
        Column {
            id: words
            anchors.verticalCenter: parent.verticalCenter
            anchors.left: mark.visible ? mark.right : parent.left
            anchors.right: trail.left
            anchors.leftMargin: mark.visible ? 10 : 4
            anchors.rightMargin: 10
            spacing: 1

            BodyText {
                width: parent.width
                text: button.title
                font.weight: button.strong ? Font.DemiBold : Font.Medium
                Accessible.ignored: true
            }
            NoteText {
                width: parent.width
                text: button.detail
                visible: text !== ""
                Accessible.ignored: true
            }
        }
        Glyph {
            id: trail
            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            sign: button.trailing
            color: Theme.muted
            width: 20
            height: 20
        }
    }
}
