import QtQuick
import Fleetrung

// How strongly a sensor is heard: four bars. The words stand beside it.
Row {
    id: root

    required property int bars

    spacing: 3
    Accessible.ignored: true

    Repeater {
        model: 4

        Rectangle {
            required property int index

            anchors.bottom: parent ? parent.bottom : undefined
            width: Theme.scaled(5)
            height: Theme.scaled([7, 12, 17, 22][index])
            radius: 2
            color: index < root.bars ? Theme.accent : Theme.hairline // qmllint disable unqualified
        }
    }
}
