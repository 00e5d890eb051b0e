import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// A ladder of the season or one that could be: the row puts it in or takes it out; beside it what else can be done.
RowLayout {
    id: row

    required property string title
    required property string detail
    required property bool chosen
    required property bool own
    required property bool canRise

    signal toggled()
    signal raised()
    signal edited()

    spacing: 0
    Layout.fillWidth: true

    AbstractButton {
        id: button
        objectName: "toggle"
        padding: 8
        implicitHeight: Math.max(Theme.touchTarget, words.height + 20)
        Layout.fillWidth: true
        Accessible.role: Accessible.CheckBox
        Accessible.name: qsTr("%1, %2").arg(row.title).arg(row.detail)
        Accessible.checked: row.chosen
        onClicked: row.toggled()

        background: Rectangle {
            radius: 12
            color: button.down ? Theme.raised : Theme.ground
            border.width: button.visualFocus ? 3 : 0
            border.color: Theme.ink
        }
        contentItem: Item {
            implicitHeight: words.height

            Rectangle {
                id: box
                anchors.verticalCenter: parent.verticalCenter
                x: 4
                width: Theme.scaled(22)
                height: width
                radius: 6
                color: row.chosen ? Theme.accent : "transparent"
                border.width: row.chosen ? 0 : 2
                border.color: Theme.outline

                Glyph {
                    anchors.centerIn: parent
                    visible: row.chosen
                    sign: Glyph.Check
                    color: Theme.wordOnAccent
                    thickness: 3
                    width: parent.width * 0.7
                    height: width
                }
            }
            Column {
                id: words
                anchors.verticalCenter: parent.verticalCenter
                anchors.left: box.right
                anchors.right: parent.right
                anchors.leftMargin: 12
                anchors.rightMargin: 4
                spacing: 1

                BodyText {
                    width: parent.width
                    text: row.title
                    font.weight: row.chosen ? Font.DemiBold : Font.Medium
                    Accessible.ignored: true
                }
                NoteText {
                    width: parent.width
                    text: row.detail
                    Accessible.ignored: true
                }
            }
        }
    }
    IconButton {
        objectName: "edit"
        visible: row.own
        sign: Glyph.Pencil
        label: qsTr("Change %1").arg(row.title)
        onClicked: row.edited()
    }
    IconButton {
        objectName: "raise"
        visible: row.canRise
        sign: Glyph.Down
        turn: 180
        label: qsTr("%1 one place up").arg(row.title)
        onClicked: row.raised()
    }
}
