import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Before the first repetition: what the plan wants of this lift, and how it begins.
ColumnLayout {
    id: root

    required property BenchViewModel viewModel

    spacing: Theme.gap
    Layout.fillWidth: true

    Card {
        visible: root.viewModel.planLines.length > 0 && !root.viewModel.running

        Repeater {
            model: root.viewModel.planLines

            BodyText {
                required property string modelData
                text: modelData
                font.pixelSize: Theme.scaled(15)
                Layout.fillWidth: true
            }
        }
        RowLayout {
            visible: root.viewModel.caution !== ""
            spacing: 10

            Glyph {
                sign: Glyph.Caution
                color: Theme.caution
                Layout.preferredWidth: Theme.scaled(18)
                Layout.preferredHeight: Theme.scaled(18)
                Layout.alignment: Qt.AlignTop
            }
            NoteText {
                text: root.viewModel.caution
                color: Theme.caution
                Layout.fillWidth: true
            }
        }
    }
    Field {
        id: load
        objectName: "load"
        visible: root.viewModel.asksLoad && root.viewModel.sensor !== BenchViewModel.NoSensor && !root.viewModel.running
        number: true
        label: root.viewModel.loadLabel
        text: root.viewModel.load
        onTextChanged: root.viewModel.load = load.text
    }
    RowButton {
        objectName: "byPlates"
        visible: load.visible
        title: qsTr("By plates")
        onClicked: plates.open()
    }
    NoteText {
        objectName: "plates"
        visible: text !== "" && !root.viewModel.running
        text: root.viewModel.platesText
        Layout.fillWidth: true
    }
    EmptyState {
        sign: root.viewModel.sensor === BenchViewModel.NoSensor ? Glyph.Sensor : Glyph.Bench
        title: root.viewModel.waitingTitle
        text: root.viewModel.waitingText
        Layout.topMargin: 8
    }

    PlatesSheet {
        id: plates
        objectName: "platesSheet"
        entry: root.viewModel.plates
        load: root.viewModel.load
        onTaken: text => root.viewModel.load = text
    }
}
