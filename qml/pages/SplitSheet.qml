import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The splits of a run, typed with a thumb while the stopwatch is still in the other hand.
Sheet {
    id: root

    required property SplitEntry entry

    title: qsTr("Splits")
    tall: true
    onAboutToShow: distance.text = entry.distance

    Connections {
        target: root.entry
        function onChanged() {
            if (root.entry.distanceProblem === "" && root.entry.timeProblem === "")
                distance.text = root.entry.distance
        }
    }

    RowLayout {
        spacing: Theme.smallGap

        BodyText {
            objectName: "lastSplit"
            text: root.entry.last
            font.weight: root.entry.any ? Font.DemiBold : Font.Normal
            font.pixelSize: root.entry.any ? Theme.bodySize : Theme.noteSize
            color: root.entry.any ? Theme.ink : Theme.muted
            Layout.fillWidth: true
            Layout.minimumHeight: Theme.touchTarget
            verticalAlignment: Text.AlignVCenter
        }
        IconButton {
            objectName: "takeOffLast"
            visible: root.entry.any
            label: qsTr("Take the last split off: %1").arg(root.entry.last)
            sign: Glyph.Undo
            onClicked: root.entry.takeOffLast()
        }
    }
    GridLayout {
        columns: Theme.large ? 1 : 2
        columnSpacing: Theme.gap
        rowSpacing: Theme.smallGap

        Field {
            id: distance
            objectName: "splitDistance"
            label: qsTr("Split at, m")
            number: true
            problem: root.entry.distanceProblem
            Layout.preferredWidth: 1
        }
        ColumnLayout {
            spacing: 4
            Layout.preferredWidth: 1
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop

            NoteText {
                text: qsTr("Time, s")
                Accessible.ignored: true
            }
            BodyText {
                objectName: "splitTime"
                text: root.entry.time
                font.pixelSize: Theme.scaled(34)
                font.weight: Font.Bold
                fontSizeMode: Text.HorizontalFit
                wrapMode: Text.NoWrap
                verticalAlignment: Text.AlignVCenter
                Layout.fillWidth: true
                Layout.minimumHeight: Theme.touchTarget
                Accessible.name: qsTr("Time: %1 s").arg(root.entry.time)
            }
        }
    }
    NoteText {
        objectName: "splitTimeProblem"
        text: root.entry.timeProblem
        visible: text !== ""
        color: Theme.stop
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
    }
    GridLayout {
        objectName: "splitKeys"
        columns: 3
        columnSpacing: Theme.smallGap
        rowSpacing: Theme.smallGap
        Layout.fillWidth: true

        Repeater {
            model: ["1", "2", "3", "4", "5", "6", "7", "8", "9", root.entry.point, "0"]

            PadKey {
                required property string modelData

                objectName: "key" + modelData
                text: modelData
                label: modelData === root.entry.point ? qsTr("Decimal point") : modelData // qmllint disable unqualified
                onClicked: root.entry.press(modelData) // qmllint disable unqualified
            }
        }
        PadKey {
            objectName: "keyErase"
            label: qsTr("Erase a digit")
            sign: Glyph.Back
            onClicked: root.entry.erase()
        }
    }
    Repeater {
        model: root.entry.rows

        NoteText {
            required property string words
            objectName: "splitRow"
            text: words
            Layout.fillWidth: true
        }
    }

    actions: GridLayout {
        columns: 2
        columnSpacing: Theme.smallGap
        Layout.fillWidth: true

        ActionButton {
            objectName: "addSplit"
            main: true
            text: qsTr("Add the split")
            onClicked: root.entry.add(distance.text)
        }
        ActionButton {
            objectName: "splitsDone"
            visible: !Theme.large // the cross ends it too, and the keys need the room
            text: qsTr("Done")
            onClicked: root.close()
            Layout.fillWidth: false
            Layout.preferredWidth: 104
            Layout.minimumHeight: Theme.mainButton
        }
    }
}
