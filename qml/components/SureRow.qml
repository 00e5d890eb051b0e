import QtQuick
import QtQuick.Layouts
import Fleetrung

// One thing that was learned, how sure it is, and why.
GridLayout {
    id: row

    required property int mark
    required property string name
    required property string value
    required property string words
    required property string why

    columns: Theme.large ? 2 : 3
    columnSpacing: 10
    rowSpacing: 1
    Layout.fillWidth: true
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("%1: %2, %3. %4").arg(name).arg(words).arg(value).arg(why)

    Glyph {
        sign: row.mark === 0 ? Glyph.Check : Glyph.Dash
        color: row.mark === 0 ? Theme.good : Theme.caution
        thickness: 3.2
        Layout.preferredWidth: Theme.scaled(16)
        Layout.preferredHeight: Theme.scaled(16)
    }
    BodyText {
        text: row.name
        font.pixelSize: Theme.scaled(15)
        Layout.fillWidth: true
        Accessible.ignored: true
    }
    BodyText {
        text: qsTr("%1, %2").arg(row.words).arg(row.value)
        font.pixelSize: Theme.scaled(15)
        font.weight: Font.DemiBold
        Layout.leftMargin: Theme.large ? Theme.scaled(16) + 10 : 0
        Layout.columnSpan: Theme.large ? 2 : 1
        Accessible.ignored: true
    }
    NoteText {
        text: row.why
        visible: text !== ""
        Layout.columnSpan: row.columns
        Layout.leftMargin: Theme.scaled(16) + 10
        Layout.fillWidth: true
        Accessible.ignored: true
    }
}
