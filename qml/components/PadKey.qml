import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// A large key of a number pad: found by a thumb that does not look.
AbstractButton {
    id: key

    property string label: text
    property int sign: -1

    implicitHeight: Math.max(56, word.implicitHeight + 16)
    Layout.fillWidth: true
    Layout.preferredWidth: 1
    Accessible.role: Accessible.Button
    Accessible.name: label

    background: Rectangle {
        radius: 14
        color: key.down ? Theme.band : Theme.raised
        border.width: key.visualFocus ? 3 : 0
        border.color: Theme.ink
    }
    contentItem: Item {
        BodyText {
            id: word
            anchors.centerIn: parent
            visible: key.sign < 0
            text: key.text
            font.pixelSize: Theme.scaled(24)
            font.weight: Font.DemiBold
            Accessible.ignored: true
        }
        Glyph {
            anchors.centerIn: parent
            visible: key.sign >= 0
            sign: key.sign >= 0 ? key.sign : Glyph.Back
            color: Theme.ink
            thickness: 3
            width: Theme.scaled(22)
            height: Theme.scaled(22)
        }
    }
}
