import QtQuick
import QtQuick.Layouts
import Fleetrung

// The set is over, now: a form, words and a colour that stands nowhere else.
Rectangle {
    id: root

    required property string text

    implicitHeight: words.implicitHeight + 24
    color: Theme.stop
    radius: Theme.cardRadius
    Layout.fillWidth: true
    Accessible.role: Accessible.AlertMessage
    Accessible.name: head.text + ". " + text

    Glyph {
        id: sign
        x: Theme.cardPadding
        anchors.verticalCenter: parent.verticalCenter
        width: 40
        height: 40
        sign: Glyph.Stop
        color: Theme.wordOnStop
        thickness: 2.4
    }
    Column {
        id: words
        anchors.left: sign.right
        anchors.right: parent.right
        anchors.leftMargin: Theme.gap
        anchors.rightMargin: Theme.cardPadding
        anchors.verticalCenter: parent.verticalCenter

        HeadingText {
            id: head
            width: parent.width
            text: qsTr("Stop the set")
            color: Theme.wordOnStop
            Accessible.ignored: true
        }
        BodyText {
            width: parent.width
            text: root.text
            color: Theme.wordOnStop
            font.pixelSize: Theme.noteSize
            Accessible.ignored: true
        }
    }
}
