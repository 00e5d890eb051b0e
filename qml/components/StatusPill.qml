import QtQuick
import QtQuick.Layouts
import Fleetrung

// What the sensor is doing: a sign, words, and a detail.
Rectangle {
    id: pill

    required property int sign
    required property color tone
    required property string text
    property string detail
    property bool leads: false // a tap on it leads somewhere

    implicitHeight: Math.max(36, row.implicitHeight + 14)
    radius: Math.min(height / 2, 18)
    color: Theme.card
    Layout.fillWidth: true
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("%1. %2").arg(text).arg(detail)

    GridLayout {
        id: row
        anchors.verticalCenter: parent.verticalCenter
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.leftMargin: 14
        anchors.rightMargin: pill.leads ? 36 : 14
        columns: Theme.large ? 2 : 3
        columnSpacing: 10
        rowSpacing: 0

        Glyph {
            sign: pill.sign
            color: pill.tone
            thickness: 2.6
            Layout.preferredWidth: Theme.scaled(16)
            Layout.preferredHeight: Theme.scaled(16)
        }
        BodyText {
            text: pill.text
            font.pixelSize: Theme.noteSize
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        NoteText {
            text: pill.detail
            font.pixelSize: Theme.smallSize
            visible: pill.detail !== ""
            Layout.columnSpan: Theme.large ? 2 : 1
            Layout.fillWidth: Theme.large
            Accessible.ignored: true
        }
    }
    Glyph {
        anchors.verticalCenter: parent.verticalCenter
        anchors.right: parent.right
        anchors.rightMargin: 12
        visible: pill.leads
        sign: Glyph.Forward
        color: Theme.muted
        width: 18
        height: 18
    }
}
