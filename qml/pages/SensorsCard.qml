import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The sensors of this device in a few words, and the way to them.
Card {
    id: root

    required property SensorsViewModel sensors

    signal asked()

    HeadingText {
        text: qsTr("Sensors")
        Layout.fillWidth: true
    }
    NoteText {
        objectName: "sensorsSummary"
        text: root.sensors.summary
        Layout.fillWidth: true
    }
    ActionButton {
        objectName: "openSensors"
        sign: Glyph.Sensor
        text: root.sensors.sensors.count === 0 ? qsTr("Add a sensor") : qsTr("Show the sensors")
        onClicked: root.asked()
    }
}
