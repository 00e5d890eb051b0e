import QtQuick
import QtQuick.Layouts
import Fleetrung

// The session behind a point of the picture above: its words, the points beside it, and what more there is on a tap. A
// column with anchors rather than layouts: wrapped words in a layout of unknown width take several rounds to settle.
Column {
    id: point

    required property string text
    property string hint: qsTr("Touch a point to see its session.")
    property var details: [] // list of strings
    property bool open: false

    signal stepped(int by)

    spacing: 4
    Layout.fillWidth: true

    Item {
        width: parent.width
        height: Math.max(Theme.touchTarget, words.height)

        IconButton {
            id: before
            objectName: "earlier"
            anchors.left: parent.left
            anchors.leftMargin: -8
            anchors.verticalCenter: parent.verticalCenter
            width: Theme.touchTarget
            height: Theme.touchTarget
            label: qsTr("The point before")
            sign: Glyph.Back
            onClicked: point.stepped(-1)
        }
        BodyText {
            id: words
            objectName: "pointText"
            anchors.left: before.right
            anchors.right: after.left
            anchors.verticalCenter: parent.verticalCenter
            text: point.text === "" ? point.hint : point.text
            color: point.text === "" ? Theme.muted : Theme.ink
            font.pixelSize: Theme.scaled(15)
        }
        IconButton {
            id: after
            objectName: "later"
            anchors.right: parent.right
            anchors.rightMargin: -8
            anchors.verticalCenter: parent.verticalCenter
            width: Theme.touchTarget
            height: Theme.touchTarget
            label: qsTr("The next point")
            sign: Glyph.Forward
            onClicked: point.stepped(1)
        }
    }
    ActionButton {
        objectName: "details"
        width: parent.width
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
            width: point.width // qmllint disable unqualified
            text: modelData
        }
    }
}
