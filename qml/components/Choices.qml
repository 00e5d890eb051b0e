import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// One of a few. All are seen at once; they flow to the next line when the text is large.
ColumnLayout {
    id: choices

    property string label
    required property var options // list of strings
    property int current: 0

    signal chosen(int index)

    spacing: 4
    Layout.fillWidth: true

    NoteText {
        text: choices.label
        visible: choices.label !== ""
        Layout.fillWidth: true
        Accessible.ignored: true
    }
    Flow {
        spacing: Theme.smallGap
        Layout.fillWidth: true

        Repeater {
            model: choices.options

            AbstractButton {
                id: option

                required property int index
                required property string modelData
                readonly property bool here: option.index === choices.current // qmllint disable unqualified

                objectName: "option" + option.index
                text: option.modelData
                implicitHeight: Math.max(Theme.touchTarget, word.implicitHeight + 16)
                implicitWidth: Math.max(Theme.touchTarget, word.implicitWidth + 32)
                width: Math.min(option.implicitWidth, choices.width) // qmllint disable unqualified
                Accessible.role: Accessible.RadioButton
                Accessible.name: option.text
                Accessible.checked: option.here
                onClicked: choices.chosen(option.index) // qmllint disable unqualified

                background: Rectangle {
                    radius: 16
                    color: option.here ? Theme.band : "transparent"
                    border.width: option.here || option.visualFocus ? 2 : 1
                    border.color: option.visualFocus ? Theme.ink : option.here ? Theme.accent : Theme.outline
                }
                contentItem: BodyText {
                    id: word
                    text: option.text
                    font.pixelSize: Theme.scaled(15)
                    font.weight: option.here ? Font.DemiBold : Font.Normal
                    horizontalAlignment: Text.AlignHCenter
                    verticalAlignment: Text.AlignVCenter
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                    Accessible.ignored: true
                }
            }
        }
    }
}
