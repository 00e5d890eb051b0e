import QtQuick
import QtQuick.Layouts
import Fleetrung

// One number with its name and what it is measured against.
Rectangle {
    id: tile

    required property string value
    required property string name
    property string note

    implicitHeight: column.implicitHeight + 2 * column.anchors.margins
    radius: Theme.cardRadius
    color: Theme.card
    Layout.fillWidth: true
    Layout.fillHeight: true
    Layout.preferredWidth: 1
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("%1: %2. %3").arg(name).arg(value).arg(note)

    ColumnLayout {
        id: column
        anchors.fill: parent
        anchors.margins: 12
        spacing: 3

        BodyText {
            text: tile.value
            font.pixelSize: Theme.valueSize
            font.weight: Font.DemiBold
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Theme.noteSize
            wrapMode: Text.NoWrap
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        NoteText {
            text: tile.name
            font.pixelSize: Theme.smallSize
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        NoteText {
            text: tile.note
            font.pixelSize: Theme.smallSize
            visible: tile.note !== ""
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        Item { Layout.fillHeight: true }
    }
}
