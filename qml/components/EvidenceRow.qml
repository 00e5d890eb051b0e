import QtQuick
import QtQuick.Layouts
import Fleetrung

// One number a decision rests on: mark, name, value, allowed. The mark is a form and words, then a colour.
GridLayout {
    id: row

    required property int mark
    required property string name
    required property string value
    required property string allowed

    readonly property string markWord: mark === 0 ? qsTr("met") : mark === 1 ? qsTr("not met") : qsTr("for show")

    // A value with its uncertainty needs a line of its own, or the name would have no room.
    readonly property bool tall: !Theme.large && value.length > 12

    columns: Theme.large ? 2 : tall ? 3 : 4
    columnSpacing: 10
    rowSpacing: 2
    Layout.fillWidth: true
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("%1: %2, allowed %3, %4").arg(name).arg(value).arg(allowed).arg(markWord)

    Glyph {
        sign: row.mark === 0 ? Glyph.Check : Glyph.Dash
        color: row.mark === 0 ? Theme.good : row.mark === 1 ? Theme.caution : Theme.muted
        thickness: 3.2
        Layout.preferredWidth: Theme.scaled(16)
        Layout.preferredHeight: Theme.scaled(16)
    }
    BodyText {
        text: row.name
        font.pixelSize: Theme.scaled(15)
        Layout.columnSpan: row.tall ? 2 : 1
        Layout.fillWidth: true
        Accessible.ignored: true
    }
    BodyText {
        text: row.value
        font.pixelSize: Theme.scaled(15)
        font.weight: Font.DemiBold
        horizontalAlignment: Theme.large || row.tall ? Text.AlignLeft : Text.AlignRight
        Layout.columnSpan: Theme.large || row.tall ? 2 : 1
        Layout.leftMargin: Theme.large || row.tall ? Theme.scaled(16) + 10 : 0
        Layout.fillWidth: Theme.large || row.tall
        Accessible.ignored: true
    }
    NoteText {
        text: row.allowed
        horizontalAlignment: Theme.large ? Text.AlignLeft : Text.AlignRight
        Layout.columnSpan: Theme.large ? 2 : 1
        Layout.leftMargin: Theme.large ? Theme.scaled(16) + 10 : 0
        Layout.preferredWidth: Theme.large ? -1 : row.tall ? 130 : 92
        Layout.fillWidth: Theme.large
        Accessible.ignored: true
    }
}
