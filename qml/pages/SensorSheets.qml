import QtQuick
import Fleetrung
import Fleetrung.Views

// All that is done with sensors, sheet over sheet: the list, one of them, finding, teaching, six sides.
Item {
    id: root

    required property SensorsViewModel sensors
    required property FindSensorsViewModel find
    required property TeachViewModel teach
    required property CalibrationViewModel calibration

    function open() {
        list.open()
    }
    function openSensor(key: string) {
        root.sensors.openSensor(key)
        one.open()
    }

    SensorsSheet {
        id: list
        objectName: "sensorsSheet"
        viewModel: root.sensors
        onSensorChosen: key => root.openSensor(key)
        onFindAsked: finding.open()
    }
    SensorSheet {
        id: one
        objectName: "sensorSheet"
        viewModel: root.sensors
        onMapsAsked: maps.open()
        onCalibrationAsked: sides.open()
        onTeachingAsked: teaching.open()
    }
    MapSheet {
        id: maps
        objectName: "mapSheet"
        viewModel: root.sensors
    }
    FindSensorsSheet {
        id: finding
        objectName: "findSheet"
        viewModel: root.find
        onTeachingAsked: teaching.open()
        onSavedAsked: key => {
            finding.close()
            root.openSensor(key)
        }
    }
    TeachSheet {
        id: teaching
        objectName: "teachSheet"
        viewModel: root.teach
    }
    CalibrationSheet {
        id: sides
        objectName: "calibrationSheet"
        viewModel: root.calibration
    }
}
