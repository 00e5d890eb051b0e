import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Who shares this sensor: one tap, and the next set is another athlete's. Shut while a set is under way.
ColumnLayout {
    id: root

    required property BenchViewModel viewModel

    visible: viewModel.sharers.count > 0
    spacing: 4
    Layout.fillWidth: true

    NoteText {
        text: root.viewModel.canSwitch ? qsTr("Who lifts next?") : qsTr("Who lifts next? End this set first.")
        Layout.fillWidth: true
    }
    ListView {
        id: strip
        orientation: ListView.Horizontal
        spacing: Theme.smallGap
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        implicitHeight: Math.max(Theme.touchTarget, Theme.scaled(32) + 8)
        model: root.viewModel.sharers
        Layout.fillWidth: true

        delegate: AbstractButton {
            id: chip

            required property string key
            required property string name
            required property string shortName
            required property bool here

            objectName: "sharer-" + key
            enabled: root.viewModel.canSwitch || here // qmllint disable unqualified
            implicitWidth: Math.max(Theme.touchTarget, row.implicitWidth + 28)
            height: strip.height // qmllint disable unqualified
            Accessible.role: Accessible.RadioButton
            Accessible.name: here ? qsTr("%1 lifts now").arg(name) : qsTr("%1 lifts next").arg(name)
            Accessible.checked: here
            onClicked: root.viewModel.switchTo(key) // qmllint disable unqualified

            background: Rectangle {
                radius: 16
                color: chip.here ? Theme.band : chip.down ? Theme.raised : "transparent"
                border.width: chip.here || chip.visualFocus ? 2 : 1
                border.color: chip.visualFocus ? Theme.ink : chip.here ? Theme.accent : Theme.outline
            }
            contentItem: Item {
                RowLayout {
                    id: row
                    anchors.centerIn: parent
                    spacing: 6

                    Glyph {
                        visible: chip.here
                        sign: Glyph.Check
                        color: Theme.accent
                        thickness: 3
                        Layout.preferredWidth: Theme.scaled(13)
                        Layout.preferredHeight: Theme.scaled(13)
                    }
                    BodyText {
                        text: chip.shortName
                        color: chip.enabled ? Theme.ink : Theme.muted
                        font.pixelSize: Theme.scaled(15)
                        font.weight: chip.here ? Font.DemiBold : Font.Normal
                        wrapMode: Text.NoWrap
                        Accessible.ignored: true
                    }
                }
            }
        }
    }
}
