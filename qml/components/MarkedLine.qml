import QtQuick
import QtQuick.Layouts
import Fleetrung

// One line of a list of words: with a caution's sign where it warns, else a quiet dash.
RowLayout {
    id: line

    required property string text
    property bool caution: false

    spacing: 10
    Layout.fillWidth: true
    Accessible.role: Accessible.StaticText
    Accessible.name: caution ? qsTr("Caution: %1").arg(text) : text

    Glyph {
        sign: line.caution ? Glyph.Caution : Glyph.Dash
        color: line.caution ? Theme.caution : Theme.muted
        Layout.preferredWidth: Theme.scaled(16)
        Layout.preferredHeight: Theme.scaled(16)
        Layout.alignment: Qt.AlignTop
        Layout.topMargin: 2
    }
    BodyText {
        text: line.text
        font.pixelSize: Theme.scaled(15)
        color: line.caution ? Theme.caution : Theme.ink
        Layout.fillWidth: true
        Accessible.ignored: true
    }
}
