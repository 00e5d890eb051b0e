import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Above every page while the invented squad is shown or made: what it is, and the way out.
Rectangle {
    id: root

    required property AppViewModel app

    visible: app.demoText !== ""
    implicitHeight: visible ? row.implicitHeight + 2 * Theme.smallGap : 0
    color: Theme.band

    GridLayout {
        id: row
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        anchors.leftMargin: Theme.margin
        anchors.rightMargin: Theme.margin
        columns: Theme.large ? 1 : 2
        columnSpacing: Theme.smallGap

        BodyText {
            objectName: "demoText"
            text: root.app.demoText
            font.pixelSize: Theme.scaled(15)
            font.weight: Font.DemiBold
            Layout.fillWidth: true
            Accessible.role: Accessible.StaticText
        }
        ActionButton {
            objectName: "endDemo"
            text: root.app.demoMaking ? qsTr("Cancel") : qsTr("Leave")
            Accessible.name: root.app.demoMaking ? qsTr("Cancel making the demo squad") : qsTr("Leave the demo squad and remove it")
            Layout.fillWidth: Theme.large
            onClicked: root.app.demoMaking ? root.app.cancelDemo() : root.app.leaveDemo()
        }
    }
}
