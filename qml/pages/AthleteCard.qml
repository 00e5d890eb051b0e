import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// One athlete: a tap makes them the current one, the pencil opens their data.
AbstractButton {
    id: card

    required property string key
    required property string name
    required property string initials
    required property string detail
    required property bool here

    signal chosen()
    signal edit()

    objectName: "athlete"
    implicitHeight: Math.max(Theme.touchTarget, row.implicitHeight + 24)
    Layout.fillWidth: true
    Accessible.role: Accessible.RadioButton
    Accessible.name: qsTr("%1, %2").arg(name).arg(detail)
    Accessible.checked: here
    onClicked: chosen()

    background: Rectangle {
        radius: Theme.cardRadius
        color: card.down ? Theme.raised : Theme.card
        border.width: card.here || card.visualFocus ? 2 : 0
        border.color: card.visualFocus ? Theme.ink : Theme.accent
    }
    contentItem: Item {
        RowLayout {
            id: row
            anchors.verticalCenter: parent.verticalCenter
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.leftMargin: 14
            anchors.rightMargin: 6
            spacing: 12

            Rectangle {
                implicitWidth: 44
                implicitHeight: 44
                radius: 22
                color: card.here ? Theme.accent : Theme.raised

                BodyText {
                    anchors.centerIn: parent
                    text: card.initials
                    color: card.here ? Theme.wordOnAccent : Theme.ink
                    font.pixelSize: 16
                    font.weight: Font.DemiBold
                    Accessible.ignored: true
                }
            }
            ColumnLayout {
                spacing: 1

                BodyText {
                    text: card.name
                    font.weight: Font.DemiBold
                    Layout.fillWidth: true
                    Accessible.ignored: true
                }
                NoteText {
                    text: card.detail
                    visible: text !== ""
                    Layout.fillWidth: true
                    Accessible.ignored: true
                }
                RowLayout {
                    visible: card.here
                    spacing: 6

                    Glyph {
                        sign: Glyph.Check
                        color: Theme.accent
                        thickness: 3
                        Layout.preferredWidth: Theme.scaled(14)
                        Layout.preferredHeight: Theme.scaled(14)
                    }
                    NoteText {
                        text: qsTr("shown on all pages")
                        color: Theme.accent
                        Layout.fillWidth: true
                        Accessible.ignored: true
                    }
                }
            }
            IconButton {
                objectName: "editAthlete"
                label: qsTr("Edit %1").arg(card.name)
                sign: Glyph.Pencil
                onClicked: card.edit()
            }
        }
    }
}
