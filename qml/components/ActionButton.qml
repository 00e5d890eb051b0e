import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// The one thing to do next (`main`), or something else that can be done.
Button {
    id: button

    property bool main: false
    property bool warning: false
    property int sign: -1

    readonly property color face: !enabled ? Theme.card
                                : warning ? Theme.stop
                                : main ? Theme.accent : Theme.raised
    readonly property color word: !enabled ? Theme.muted
                                : warning ? Theme.wordOnStop
                                : main ? Theme.wordOnAccent : Theme.ink

    implicitHeight: Math.max(main || warning ? Theme.mainButton : Theme.touchTarget, implicitContentHeight + 2 * padding)
    padding: 12
    Layout.fillWidth: true
    Accessible.name: text

    background: Rectangle {
        radius: 18
        color: button.down ? Qt.darker(button.face, 1.15) : button.face
        border.width: button.visualFocus ? 3 : button.enabled ? 0 : 1
        border.color: button.visualFocus ? Theme.ink : Theme.outline
    }
    contentItem: Item {
        implicitWidth: row.implicitWidth
        implicitHeight: row.implicitHeight

        RowLayout {
            id: row
            anchors.centerIn: parent
            width: Math.min(parent.width, implicitWidth)
            spacing: Theme.smallGap

            Glyph {
                visible: button.sign >= 0
                sign: button.sign >= 0 ? button.sign : Glyph.Check
                color: button.word
                Layout.preferredWidth: Theme.scaled(18)
                Layout.preferredHeight: Theme.scaled(18)
            }
            BodyText {
                text: button.text
                color: button.word
                font.pixelSize: button.main || button.warning ? Theme.valueSize : Theme.bodySize
                font.weight: button.main || button.warning ? Font.DemiBold : Font.Medium
                horizontalAlignment: Text.AlignHCenter
                Layout.fillWidth: true
                Accessible.ignored: true
            }
        }
    }
}
