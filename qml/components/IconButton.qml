import QtQuick
import QtQuick.Controls.Basic
import Fleetrung

// A sign alone, where the words stand close by; the screen reader gets the words.
AbstractButton {
    id: button

    required property string label
    property int sign: Glyph.Check
    property real turn: 0 // degrees

    implicitWidth: Theme.touchTarget
    implicitHeight: Theme.touchTarget
    Accessible.role: Accessible.Button
    Accessible.name: label

    background: Rectangle {
        radius: width / 2
        color: button.down ? Theme.raised : "transparent"
        border.width: button.visualFocus ? 3 : 0
        border.color: Theme.ink
    }
    contentItem: Item {
        Glyph {
            anchors.centerIn: parent
            sign: button.sign
            rotation: button.turn
            color: Theme.ink
            width: 22
            height: 22
        }
    }
}
