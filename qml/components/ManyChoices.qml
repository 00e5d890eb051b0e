import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// Any of a few; each tells with a tick whether it is chosen.
ColumnLayout {
    id: choices

    required property string label
    required property var options // list of strings
    property var chosen: [] // indices, ascending
    property string problem
    property bool bound: false // the page says what is chosen, and hears of taps

    signal toggled(int index) // after a tap

    function toggle(index: int) {
        choices.chosen = choices.chosen.indexOf(index) >= 0 ? choices.chosen.filter(i => i !== index)
                                                            : choices.chosen.concat([index]).sort((a, b) => a - b)
    }

    spacing: 4
    Layout.fillWidth: true

    NoteText {
        text: choices.label
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
                readonly property bool here: choices.chosen.indexOf(option.index) >= 0 // qmllint disable unqualified

                objectName: "option" + option.index
                text: option.modelData
                implicitHeight: Math.max(Theme.touchTarget, row.implicitHeight + 16)
                implicitWidth: Math.max(Theme.touchTarget, row.implicitWidth + 28)
                width: Math.min(option.implicitWidth, choices.width) // qmllint disable unqualified
                Accessible.role: Accessible.CheckBox
                Accessible.name: option.text
                Accessible.checked: option.here
                onClicked: {
                    if (!choices.bound) // qmllint disable unqualified
                        choices.toggle(option.index) // qmllint disable unqualified
                    choices.toggled(option.index) // qmllint disable unqualified
                }

                background: Rectangle {
                    radius: 16
                    color: option.here ? Theme.band : "transparent"
                    border.width: option.here || option.visualFocus ? 2 : 1
                    border.color: option.visualFocus ? Theme.ink : option.here ? Theme.accent : Theme.outline
                }
                contentItem: Item {
                    RowLayout {
                        id: row
                        anchors.centerIn: parent
                        width: Math.min(implicitWidth, parent.width)
                        spacing: 6

                        Glyph {
                            visible: option.here
                            sign: Glyph.Check
                            color: Theme.accent
                            thickness: 3
                            Layout.preferredWidth: Theme.scaled(13)
                            Layout.preferredHeight: Theme.scaled(13)
                        }
                        BodyText {
                            text: option.text
                            font.pixelSize: Theme.scaled(15)
                            font.weight: option.here ? Font.DemiBold : Font.Normal
                            wrapMode: Text.NoWrap
                            elide: Text.ElideRight
                            Layout.fillWidth: true
                            Accessible.ignored: true
                        }
                    }
                }
            }
        }
    }
    NoteText {
        text: choices.problem
        visible: text !== ""
        color: Theme.stop
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
    }
}
