import QtQuick
import QtQuick.Layouts
import Fleetrung

// One of the six sides: how it lies, and whether it is taken. The tick is a form and words, then a colour.
Rectangle {
    id: root

    required property int pose
    required property bool taken
    required property bool wanted

    implicitHeight: column.implicitHeight + 16
    radius: Theme.cardRadius
    color: Theme.ground
    border.width: wanted ? 2 : 1
    border.color: wanted ? Theme.accent : taken ? Theme.good : Theme.hairline
    Layout.fillWidth: true
    Layout.preferredWidth: 1
    Accessible.role: Accessible.StaticText
    Accessible.name: taken ? qsTr("%1: taken").arg(drawing.words) : wanted ? qsTr("%1: next").arg(drawing.words) : qsTr("%1: open").arg(drawing.words)

    ColumnLayout {
        id: column
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        anchors.margins: 8
        spacing: 2

        PoseDrawing {
            id: drawing
            pose: root.pose
            body: Theme.outline
            mark: Theme.accent
            dot: Theme.wordOnAccent
            line: Theme.ink
            table: Theme.raised
            Layout.preferredWidth: Math.min(root.width - 16, 104)
            Layout.preferredHeight: Math.min(root.width - 16, 104)
            Layout.alignment: Qt.AlignHCenter
            Accessible.ignored: true
        }
        RowLayout {
            spacing: 4
            Layout.alignment: Qt.AlignHCenter

            Glyph {
                sign: root.taken ? Glyph.Check : Glyph.Dash
                color: root.taken ? Theme.good : root.wanted ? Theme.accent : Theme.muted
                thickness: 3.2
                Layout.preferredWidth: Theme.scaled(14)
                Layout.preferredHeight: Theme.scaled(14)
            }
            NoteText {
                text: root.taken ? qsTr("taken") : root.wanted ? qsTr("next") : qsTr("open")
                color: root.wanted ? Theme.ink : Theme.muted
                font.pixelSize: Theme.smallSize
                Accessible.ignored: true
            }
        }
    }
}
