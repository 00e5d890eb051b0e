import QtQuick
import Fleetrung
import Fleetrung.Views

StatusPill {
    id: root

    required property BenchViewModel viewModel

    sign: viewModel.sensor === BenchViewModel.NoSensor ? Glyph.Dash
        : viewModel.sensor === BenchViewModel.Lost ? Glyph.Caution
        : viewModel.sensor === BenchViewModel.Finished ? Glyph.Check : Glyph.Sensor
    tone: viewModel.sensor === BenchViewModel.NoSensor ? Theme.muted
        : viewModel.sensor === BenchViewModel.Lost ? Theme.caution : Theme.good
    text: viewModel.sensorText
    detail: viewModel.sensorDetail
}
