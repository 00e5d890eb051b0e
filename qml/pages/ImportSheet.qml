import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Another program's table into the log: a file is chosen, what was recognised is seen and put right, then it is added.
Sheet {
    id: root

    required property ImportViewModel viewModel
    readonly property bool choosing: viewModel.step === ImportViewModel.ChooseFile
    readonly property bool looking: viewModel.step === ImportViewModel.Look

    title: viewModel.sets ? qsTr("Import sets") : qsTr("Import runs")
    tall: true

    Connections {
        target: root.viewModel
        function onAdded() {
            root.close()
        }
    }

    TroubleCard {
        objectName: "importProblem"
        text: root.viewModel.problem
    }
    NoteText {
        objectName: "importFolder"
        visible: root.choosing
        text: root.viewModel.files.count > 0 ? qsTr("From %1").arg(root.viewModel.folder)
                                             : qsTr("Put the table as a CSV file into %1, then look again.").arg(root.viewModel.folder)
        Layout.fillWidth: true
    }
    Repeater {
        model: root.choosing ? root.viewModel.files : null

        RowButton {
            required property string name

            objectName: "file-" + name
            title: name
            onClicked: root.viewModel.openFile(name) // qmllint disable unqualified
        }
    }
    ImportLook {
        objectName: "importLook"
        visible: root.looking
        viewModel: root.viewModel
        onPicking: pickSheet.open()
    }
    BodyText {
        objectName: "importProgress"
        visible: root.viewModel.step === ImportViewModel.Working
        text: root.viewModel.progressText
        font.pixelSize: Theme.valueSize
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }

    actions: [
        NoteText {
            objectName: "importSummary"
            visible: root.looking && text !== ""
            text: root.viewModel.summary
            horizontalAlignment: Text.AlignHCenter
            Layout.fillWidth: true
        },
        ActionButton {
            objectName: "addImported"
            visible: root.looking
            main: true
            enabled: root.viewModel.canAdd
            text: root.viewModel.addText
            onClicked: root.viewModel.add()
        },
        ActionButton {
            objectName: "otherFile"
            visible: !root.viewModel.working
            text: root.choosing ? qsTr("Look again") : qsTr("Choose another file")
            onClicked: root.choosing ? root.viewModel.lookForFiles() : root.viewModel.backToFiles()
        },
        ActionButton {
            objectName: "stopImport"
            visible: root.viewModel.working
            text: qsTr("Stop")
            onClicked: root.viewModel.cancel()
        }
    ]

    ImportPickSheet {
        id: pickSheet
        objectName: "pickSheet"
        viewModel: root.viewModel
    }
}
