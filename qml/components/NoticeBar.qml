import QtQuick
import QtQuick.Layouts
import Fleetrung

// What has just happened, with the way back.
Rectangle {
    id: notice

    required property string text
    property string action
    property bool problem: false

    signal undone()
    signal closed()

    implicitHeight: row.implicitHeight + 12
    radius: Theme.cardRadius
    color: Theme.raised
    border.width: 1
    border.color: problem ? Theme.stop : Theme.outline
    visible: text !== ""
    Accessible.role: Accessible.AlertMessage
    Accessible.name: text

    RowLayout {
        id: row
        anchors.verticalCenter: parent.verticalCenter
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.leftMargin: 14
        anchors.rightMargin: 6
        spacing: Theme.smallGap

        Glyph {
            visible: notice.problem
            sign: Glyph.Caution
            color: Theme.stop
            Layout.preferredWidth: 20
            Layout.preferredHeight: 20
        }
        BodyText {
            text: notice.text
            font.pixelSize: Theme.noteSize
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        ActionButton {
            objectName: "noticeAction"
            visible: notice.action !== ""
            text: notice.action
            sign: Glyph.Undo
            Layout.fillWidth: false
            onClicked: notice.undone()
        }
        IconButton {
            label: qsTr("Close the message")
            sign: Glyph.Cross
            onClicked: notice.closed()
        }
    }
}
