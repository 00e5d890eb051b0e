import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// What the numbers that were asked are: in words, as a formula, from where, how sure.
Sheet {
    id: root

    title: qsTr("What it is")

    Connections {
        target: Help
        function onAsked() {
            root.open()
        }
    }

    Repeater {
        model: Help.entries

        ColumnLayout {
            id: entry

            required property string title
            required property string what
            required property string formula
            required property string source
            required property string sure

            objectName: "explained"
            spacing: 6
            Layout.fillWidth: true

            HeadingText {
                text: entry.title
                font.pixelSize: Theme.valueSize
                Layout.fillWidth: true
            }
            BodyText {
                text: entry.what
                lineHeight: 1.15
                Layout.fillWidth: true
            }
            BodyText {
                text: entry.formula
                visible: text !== ""
                font.italic: true
                Layout.fillWidth: true
            }
            NoteText {
                text: qsTr("How sure: %1").arg(entry.sure)
                color: Theme.ink
                Layout.fillWidth: true
            }
            NoteText {
                text: qsTr("Source: %1").arg(entry.source)
                Layout.fillWidth: true
                Layout.bottomMargin: Theme.smallGap
            }
        }
    }
}
