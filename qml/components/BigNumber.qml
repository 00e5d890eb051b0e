import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The one number that matters, read from two metres: its digits are over a fifth of the page's width high. A tap tells
// what it is. By anchors rather than a layout: digits that fit themselves to a width take several rounds to settle.
AbstractButton {
    id: big

    required property string value
    required property string unit
    property var topics: [] // of the help

    implicitHeight: number.height + name.height
    Accessible.role: Accessible.Button
    Accessible.name: qsTr("%1 %2").arg(value).arg(unit)
    Accessible.description: topics.length > 0 ? Help.questionOf(topics[0]) : ""
    onClicked: Help.ask(big.topics)

    background: Rectangle {
        radius: Theme.cardRadius
        color: big.down ? Theme.card : "transparent"
        border.width: big.visualFocus ? 3 : 0
        border.color: Theme.ink
    }
    contentItem: Item {
        BodyText {
            id: number
            objectName: "bigNumber"
            width: parent.width
            height: Math.round(font.pixelSize * 0.98)
            text: big.value
            font.pixelSize: Math.max(1, Math.min(big.width * 0.38, 220))
            font.weight: Font.Bold
            font.letterSpacing: -4
            fontSizeMode: Text.HorizontalFit
            wrapMode: Text.NoWrap
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            Accessible.ignored: true
        }
        NoteText {
            id: name
            anchors.top: number.bottom
            width: parent.width
            text: big.unit
            font.pixelSize: Theme.bodySize
            horizontalAlignment: Text.AlignHCenter
            Accessible.ignored: true
        }
    }
}
