import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Athletes who no longer train here, each with the way back.
Sheet {
    id: root

    required property SquadViewModel viewModel

    title: qsTr("Archive")

    NoteText {
        text: qsTr("Everything they did is kept. An athlete who comes back goes on where they were.")
        Layout.fillWidth: true
    }
    Repeater {
        model: root.viewModel.archived

        Card {
            id: entry

            required property string key
            required property string name
            required property string detail

            objectName: "archived"
            color: Theme.ground
            padding: 12

            ListRow {
                title: entry.name
                detail: entry.detail
            }
            ActionButton {
                objectName: "bringBack"
                text: qsTr("Bring back")
                Accessible.name: qsTr("Bring back %1").arg(entry.name)
                onClicked: {
                    root.close() // qmllint disable unqualified
                    root.viewModel.bringBack(entry.key) // qmllint disable unqualified
                }
            }
        }
    }
}
