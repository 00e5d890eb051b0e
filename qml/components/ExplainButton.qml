import QtQuick
import QtQuick.Controls.Basic
import Fleetrung
import Fleetrung.Views

// A question mark beside numbers: what they are, by which formula, from where, how sure.
AbstractButton {
    id: button

    required property var topics // of the help, the first gives the name

    objectName: "explain"
    implicitWidth: Theme.touchTarget
    implicitHeight: Theme.touchTarget
    Accessible.role: Accessible.Button
    Accessible.name: Help.questionOf(button.topics[0])
    onClicked: Help.ask(button.topics)

    background: Rectangle {
        anchors.centerIn: parent
        width: 30
        height: 30
        radius: 15
        color: button.down ? Theme.raised : "transparent"
        border.width: button.visualFocus ? 3 : 1.5
        border.color: button.visualFocus ? Theme.ink : Theme.outline
    }
    contentItem: Text {
        text: "?"
        color: Theme.muted
        font.family: Theme.family
        font.pixelSize: 17
        font.weight: Font.DemiBold
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
}
