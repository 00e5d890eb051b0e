import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The load as it lies on the bar: a tap puts a plate on each side.
Sheet {
    id: root

    required property PlateEntry entry
    property string load // to begin with

    signal taken(string load)

    title: qsTr("Plates on the bar")
    onAboutToShow: entry.begin(load)

    BodyText {
        objectName: "platesTotal"
        text: root.entry.total
        font.pixelSize: Theme.scaled(34)
        font.weight: Font.Bold
        Layout.fillWidth: true
        Accessible.name: qsTr("Load: %1").arg(root.entry.total)
    }
    RowLayout {
        spacing: Theme.smallGap

        NoteText {
            objectName: "platesSide"
            text: root.entry.sideText
            font.pixelSize: Theme.bodySize
            Layout.fillWidth: true
            Layout.minimumHeight: Theme.touchTarget
            verticalAlignment: Text.AlignVCenter
        }
        IconButton {
            objectName: "takeOff"
            visible: root.entry.any
            label: qsTr("Take the last plates off")
            sign: Glyph.Undo
            onClicked: root.entry.takeOff()
        }
    }
    GridLayout {
        columns: Theme.large ? 2 : 4
        columnSpacing: Theme.smallGap
        rowSpacing: Theme.smallGap
        Layout.fillWidth: true

        Repeater {
            model: root.entry.weights

            PadKey {
                required property int index
                required property string modelData

                objectName: "plate" + index
                text: modelData
                label: qsTr("A plate of %1 on each side").arg(modelData)
                onClicked: root.entry.add(index) // qmllint disable unqualified
            }
        }
    }
    ActionButton {
        objectName: "barAlone"
        visible: root.entry.any
        text: qsTr("Take all off")
        onClicked: root.entry.clear()
    }

    actions: ActionButton {
        objectName: "takeLoad"
        main: true
        text: qsTr("This is on the bar")
        onClicked: {
            root.taken(root.entry.load())
            root.close()
        }
    }
}
