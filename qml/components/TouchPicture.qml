import QtQuick
import Fleetrung
import Fleetrung.Plot

// A picture that answers: a tap means a point, and with the focus the arrow keys go from point to point.
Picture {
    id: picture

    signal touched(point place)
    signal stepped(int by)
    signal released()

    textSize: Theme.scaled(12)
    activeFocusOnTab: true
    Accessible.focusable: true
    Keys.onRightPressed: picture.stepped(1)
    Keys.onLeftPressed: picture.stepped(-1)
    Keys.onEscapePressed: picture.released()

    TapHandler {
        onTapped: point => picture.touched(picture.placeAt(point.position.x, point.position.y))
    }
    Rectangle {
        anchors.fill: parent
        anchors.margins: -4
        visible: picture.activeFocus
        color: "transparent"
        radius: 8
        border.width: 3
        border.color: Theme.ink
    }
}
