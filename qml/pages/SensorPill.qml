import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// What the sensor is doing; a tap leads to the sensors.
AbstractButton {
    id: root

    required property BenchViewModel viewModel

    implicitHeight: Math.max(Theme.touchTarget, pill.implicitHeight)
    Layout.fillWidth: true
    Accessible.role: Accessible.Button
    Accessible.name: qsTr("%1. %2 Show the sensors").arg(pill.text).arg(pill.detail)

    contentItem: StatusPill {
        id: pill
        leads: true
        sign: root.viewModel.sensor === BenchViewModel.NoSensor ? Glyph.Dash
            : root.viewModel.sensor === BenchViewModel.Lost ? Glyph.Caution
            : root.viewModel.sensor === BenchViewModel.Finished ? Glyph.Check : Glyph.Sensor
        tone: root.viewModel.sensor === BenchViewModel.NoSensor ? Theme.muted
            : root.viewModel.sensor === BenchViewModel.Lost ? Theme.caution : Theme.good
        text: root.viewModel.sensorText
        detail: root.viewModel.sensorDetail
        border.width: root.visualFocus ? 3 : 0
        border.color: Theme.ink
        color: root.down ? Theme.raised : Theme.card
    }
}
