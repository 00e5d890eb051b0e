import QtQuick
import QtQuick.Layouts
import Fleetrung

// Nothing here yet: what belongs here, why, and the one thing to do.
ColumnLayout {
    id: empty

    required property int sign
    required property string title
    required property string text
    property string action

    signal asked()

    spacing: Theme.gap
    Layout.fillWidth: true
    Layout.topMargin: 32

    Glyph {
        sign: empty.sign
        color: Theme.accent
        thickness: 1.6
        Layout.preferredWidth: 72
        Layout.preferredHeight: 72
        Layout.alignment: Qt.AlignHCenter
    }
    HeadingText {
        text: empty.title
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }
    NoteText {
        text: empty.text
        font.pixelSize: Theme.bodySize
        lineHeight: 1.25
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
        Layout.maximumWidth: 460
        Layout.alignment: Qt.AlignHCenter
    }
    ActionButton {
        objectName: "emptyAction"
        main: true
        visible: empty.action !== ""
        text: empty.action
        onClicked: empty.asked()
    }
}
