import QtQuick
import QtQuick.Layouts
import Fleetrung

// The session behind a point of the picture above: its words, the points beside it, and what more there is on a tap.
ColumnLayout {
    id: point

    required property string text
    property var details: [] // list of strings
    property bool open: false

    signal stepped(int by)

    spacing: 4
    Layout.fillWidth: true

    RowLayout {
        spacing: 0
        Layout.fillWidth: true

        IconButton {
            objectName: "earlier"
            label: qsTr("The point before")
            sign: Glyph.Back
            Layout.leftMargin: -8
            onClicked: point.stepped(-1)
        }
        BodyText {
            objectName: "pointText"
            text: point.text === "" ? qsTr("Touch a point to see its session.") : point.text
            color: point.text === "" ? Theme.muted : Theme.ink
            font.pixelSize: Theme.scaled(15)
            Layout.fillWidth: true
        }
        IconButton {
            objectName: "later"
            label: qsTr("The next point")
            sign: Glyph.Forward
            Layout.rightMargin: -8
            onClicked: point.stepped(1)
        }
    }
    ActionButton {
        objectName: "details"
        visible: point.details.length > 0
        text: point.open ? qsTr("Close the session") : qsTr("The session's sets")
        onClicked: point.open = !point.open
    }
    Repeater {
        model: point.open ? point.details : []

        MarkedLine {
            required text
            required property string modelData
            objectName: "detail"
            text: modelData
        }
    }
}
