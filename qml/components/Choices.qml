import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// One of a few. All are seen at once; they flow to the next line when the text is large.
ColumnLayout {
    id: choices

    property string label
    required property list<string> options
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
                readonly property bool here: index === choices.current

                objectName: "option" + index
                text: modelData
                implicitHeight: Math.max(Theme.touchTarget, word.implicitHeight + 16)
                implicitWidth: Math.max(Theme.touchTarget, word.implicitWidth + 32)
                width: Math.min(implicitWidth, choices.width)
                Accessible.role: Accessible.RadioButton
                Accessible.name: text
                Accessible.checked: here
                onClicked: choices.chosen(index)

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
