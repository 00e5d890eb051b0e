import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// How a sensor's bytes are read: chosen from a list, taken in from a file, or handed out as one.
Sheet {
    id: root

    required property SensorsViewModel viewModel
    property bool files: false

    title: files ? qsTr("Take in a file") : qsTr("How it is read")
    onAboutToShow: files = false

    NoteText {
        visible: !root.files
        text: qsTr("A sensor map says what each byte means. It was chosen by itself; choose another only where the numbers look wrong.")
        Layout.fillWidth: true
    }
    Repeater {
        model: root.files ? null : root.viewModel.maps

        RowButton {
            required property string key
            required property string name
            required detail
            required property bool chosen

            objectName: "map-" + key
            title: name
            sign: chosen ? Glyph.Check : Glyph.Dash
            tone: chosen ? Theme.good : Theme.muted
            Accessible.role: Accessible.RadioButton
            Accessible.checked: chosen
            onClicked: root.viewModel.chooseMap(key) // qmllint disable unqualified
        }
    }
    NoteText {
        objectName: "fileNote"
        visible: root.files
        text: root.viewModel.mapFiles.count > 0 ? qsTr("From %1").arg(root.viewModel.mapFolder)
                                                : qsTr("Put the file of the sensor map (its name ends in .json) into %1, then look again.").arg(root.viewModel.mapFolder)
        Layout.fillWidth: true
    }
    Repeater {
        model: root.files ? root.viewModel.mapFiles : null

        RowButton {
            required property string name

            objectName: "file-" + name
            title: name
            trailing: Glyph.Plus
            onClicked: {
                root.viewModel.importMap(name) // qmllint disable unqualified
                root.files = false // qmllint disable unqualified
            }
        }
    }
    ActionButton {
        objectName: "importMap"
        text: root.files ? qsTr("Look again") : qsTr("Take in a file")
        onClicked: {
            root.viewModel.lookForMapFiles()
            root.files = true
        }
    }
    ActionButton {
        objectName: "exportMap"
        visible: !root.files && root.viewModel.open
        text: qsTr("Hand out this map as a file")
        onClicked: root.viewModel.exportMap()
    }
    ActionButton {
        objectName: "backToMaps"
        visible: root.files
        text: qsTr("Back to the list")
        onClicked: root.files = false
    }
}
