import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The sensors of this device, and how each one stands.
Sheet {
    id: root

    required property SensorsViewModel viewModel

    signal sensorChosen(string key)
    signal findAsked()

    title: qsTr("Sensors")

    TroubleCard {
        objectName: "radioTrouble"
        text: root.viewModel.radioTrouble
        action: root.viewModel.radioAction
        onAsked: root.viewModel.mendRadio()
    }
    EmptyState {
        objectName: "emptySensors"
        visible: root.viewModel.sensors.count === 0
        sign: Glyph.Sensor
        title: qsTr("No sensor yet")
        text: qsTr("Any motion sensor that speaks Bluetooth Low Energy will do. Add it once; from then on it is found by itself.")
        Layout.topMargin: 8
    }
    Repeater {
        model: root.viewModel.sensors

        RowButton {
            required property string key
            required property string name
            required detail
            required property int mark

            objectName: "sensor-" + key
            title: name
            strong: true
            sign: mark === SensorsViewModel.Good ? Glyph.Sensor : mark === SensorsViewModel.Bad ? Glyph.Caution : Glyph.Dash
            tone: mark === SensorsViewModel.Good ? Theme.good : mark === SensorsViewModel.Bad ? Theme.caution : Theme.muted
            implicitHeight: Math.max(64, implicitContentHeight + 24)
            onClicked: root.sensorChosen(key) // qmllint disable unqualified
        }
    }

    actions: ActionButton {
        objectName: "addSensor"
        main: true
        enabled: root.viewModel.canSearch
        sign: Glyph.Plus
        text: qsTr("Add a sensor")
        onClicked: root.findAsked()
    }
}
