import QtQuick
import QtQuick.Layouts
import Fleetrung

// A number with its name before it and, below, how sure it is. In large text each takes the whole width.
GridLayout {
    id: row

    required property string name
    required property string value
    required property string note

    columns: Theme.large ? 1 : 2
    columnSpacing: 12
    rowSpacing: 0
    Layout.fillWidth: true
    Accessible.role: Accessible.StaticText
    Accessible.name: note === "" ? qsTr("%1: %2").arg(name).arg(value) : qsTr("%1: %2, %3").arg(name).arg(value).arg(note)

    BodyText {
        text: row.name
        font.pixelSize: Theme.scaled(15)
        Layout.fillWidth: true
        Accessible.ignored: true
    }
    ColumnLayout {
        spacing: 0
        Layout.alignment: Theme.large ? Qt.AlignLeft : Qt.AlignRight | Qt.AlignTop

        BodyText {
            text: row.value
            font.weight: Font.DemiBold
            horizontalAlignment: Theme.large ? Text.AlignLeft : Text.AlignRight
            wrapMode: Text.NoWrap
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        NoteText {
            text: row.note
            visible: text !== ""
            horizontalAlignment: Theme.large ? Text.AlignLeft : Text.AlignRight
            wrapMode: Theme.large ? Text.Wrap : Text.NoWrap
            Layout.fillWidth: true
            Accessible.ignored: true
        }
    }
}
