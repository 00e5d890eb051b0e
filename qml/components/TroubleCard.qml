import QtQuick
import QtQuick.Layouts
import Fleetrung

// What is wrong and what to do about it, with the one thing that can be done here.
Card {
    id: root

    required property string text
    property string action

    signal asked()

    visible: text !== ""
    color: Theme.ground
    border.width: 1
    border.color: Theme.caution

    RowLayout {
        spacing: 10

        Glyph {
            sign: Glyph.Caution
            color: Theme.caution
            Layout.preferredWidth: Theme.scaled(20)
            Layout.preferredHeight: Theme.scaled(20)
            Layout.alignment: Qt.AlignTop
        }
        BodyText {
            objectName: "troubleText"
            text: root.text
            Layout.fillWidth: true
            Accessible.role: Accessible.AlertMessage
        }
    }
    ActionButton {
        objectName: "troubleAction"
        visible: root.action !== ""
        text: root.action
        onClicked: root.asked()
    }
}
