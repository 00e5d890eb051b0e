import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// A day by touch: big buttons for a day and a week, and the month to tap on. Seven cells of a thumb's width just fit the
// smallest screen, so the month may use the sheet's margin.
ColumnLayout {
    id: chooser

    required property string label
    required property DayPicker picker
    property string problem

    spacing: Theme.smallGap
    Layout.fillWidth: true

    NoteText {
        text: chooser.label
        Layout.fillWidth: true
    }
    HeadingText {
        objectName: "chosenDay"
        text: chooser.picker.dayText
        Layout.fillWidth: true
        Accessible.role: Accessible.StaticText
    }
    NoteText {
        objectName: "dayProblem"
        text: chooser.problem
        visible: text !== ""
        color: Theme.stop
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
    }
    GridLayout {
        columns: Theme.large ? 2 : 4
        columnSpacing: Theme.smallGap
        rowSpacing: Theme.smallGap

        Repeater {
            model: [
                { name: qsTr("a week sooner"), text: qsTr("− week"), days: -7 },
                { name: qsTr("a day sooner"), text: qsTr("− day"), days: -1 },
                { name: qsTr("a day later"), text: qsTr("+ day"), days: 1 },
                { name: qsTr("a week later"), text: qsTr("+ week"), days: 7 }
            ]

            ActionButton {
                required property var modelData

                objectName: "move" + modelData.days
                text: modelData.text
                padding: 4
                Accessible.name: modelData.name
                Layout.preferredWidth: 1
                onClicked: chooser.picker.move(modelData.days) // qmllint disable unqualified
            }
        }
    }
    RowLayout {
        spacing: 0

        IconButton {
            objectName: "monthBack"
            label: qsTr("The month before")
            sign: Glyph.Back
            onClicked: chooser.picker.moveMonth(-1)
        }
        BodyText {
            objectName: "month"
            text: chooser.picker.monthText
            font.weight: Font.DemiBold
            horizontalAlignment: Text.AlignHCenter
            Layout.fillWidth: true
        }
        IconButton {
            objectName: "monthForward"
            label: qsTr("The month after")
            sign: Glyph.Forward
            onClicked: chooser.picker.moveMonth(1)
        }
    }
    GridLayout {
        columns: 7
        columnSpacing: 0
        rowSpacing: 0
        Layout.fillWidth: true
        Layout.leftMargin: -8
        Layout.rightMargin: -8

        Repeater {
            model: chooser.picker.weekdays

            NoteText {
                required property string modelData

                text: modelData
                font.pixelSize: Math.min(Theme.smallSize, 18)
                wrapMode: Text.NoWrap
                elide: Text.ElideRight
                horizontalAlignment: Text.AlignHCenter
                Layout.fillWidth: true
                Layout.preferredWidth: 1
            }
        }
        Repeater {
            model: chooser.picker.cells

            AbstractButton {
                id: cell

                required property int index
                required property string number
                required property string name
                required property bool here
                required property bool inMonth
                required property bool today

                objectName: "cell" + index
                implicitWidth: Theme.touchTarget
                implicitHeight: Theme.touchTarget
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Accessible.role: Accessible.RadioButton
                Accessible.name: cell.today ? qsTr("%1, today").arg(name) : name
                Accessible.checked: here
                onClicked: chooser.picker.choose(index) // qmllint disable unqualified

                background: Rectangle {
                    radius: 14
                    color: cell.here ? Theme.accent : cell.down ? Theme.raised : "transparent"
                    border.width: cell.visualFocus ? 3 : cell.today ? 1 : 0
                    border.color: cell.visualFocus ? Theme.ink : Theme.outline
                }
                contentItem: BodyText {
                    text: cell.number
                    color: cell.here ? Theme.wordOnAccent : cell.inMonth ? Theme.ink : Theme.muted
                    font.pixelSize: Math.min(Theme.bodySize, 24)
                    font.weight: cell.here ? Font.Bold : cell.inMonth ? Font.Medium : Font.Normal
                    horizontalAlignment: Text.AlignHCenter
                    verticalAlignment: Text.AlignVCenter
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
        }
    }
}
