import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// A name, a line to type in, and below it what is wrong, if anything is.
ColumnLayout {
    id: field

    required property string label
    property alias text: input.text
    property alias hint: input.placeholderText
    property bool number: false
    property string problem

    signal accepted()

    spacing: 4
    Layout.fillWidth: true

    NoteText {
        text: field.label
        Layout.fillWidth: true
        Accessible.ignored: true
    }
    TextField {
        id: input
        objectName: "input"
        inputMethodHints: field.number ? Qt.ImhFormattedNumbersOnly : Qt.ImhNone
        color: Theme.ink
        placeholderTextColor: Theme.muted
        selectionColor: Theme.accent
        selectedTextColor: Theme.wordOnAccent
        font.family: Theme.family
        font.pixelSize: Theme.bodySize
        implicitHeight: Math.max(Theme.touchTarget, contentHeight + 20)
        leftPadding: 14
        rightPadding: 14
        Layout.fillWidth: true
        Accessible.name: field.label
        Accessible.description: field.problem
        onAccepted: field.accepted()

        background: Rectangle {
            radius: 12
            color: Theme.ground
            border.width: input.activeFocus || field.problem !== "" ? 2 : 1
            border.color: field.problem !== "" ? Theme.stop : input.activeFocus ? Theme.accent : Theme.outline
        }
    }
    RowLayout {
        visible: field.problem !== ""
        spacing: 6

        Glyph {
            sign: Glyph.Caution
            color: Theme.stop
            Layout.preferredWidth: Theme.scaled(15)
            Layout.preferredHeight: Theme.scaled(15)
            Layout.alignment: Qt.AlignTop
        }
        NoteText {
            objectName: "problem"
            text: field.problem
            color: Theme.stop
            Layout.fillWidth: true
            Accessible.role: Accessible.AlertMessage
        }
    }
}
