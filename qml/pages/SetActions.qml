import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// What can be done with the set, always in reach of the thumb.
GridLayout {
    id: root

    required property BenchViewModel viewModel

    columns: 2
    columnSpacing: 12
    rowSpacing: Theme.smallGap

    ActionButton {
        objectName: "undo"
        visible: root.viewModel.repetitionCount > 0 || root.viewModel.running
        enabled: root.viewModel.repetitionCount > 0
        text: qsTr("Undo")
        sign: Theme.large ? -1 : Glyph.Undo
        implicitHeight: Math.max(Theme.mainButton, implicitContentHeight + 2 * padding)
        Accessible.name: qsTr("Undo the last repetition")
        Layout.fillWidth: false
        Layout.preferredWidth: Math.min(0.46 * root.width, Math.max(Theme.large ? 160 : 116, implicitContentWidth + 2 * padding))
        onClicked: root.viewModel.undoRepetition()
    }
    ActionButton {
        objectName: "endSet"
        visible: root.viewModel.repetitionCount > 0 || root.viewModel.running
        main: !root.viewModel.stopNow
        warning: root.viewModel.stopNow
        text: qsTr("End set")
        onClicked: root.viewModel.endSet()
    }
    ActionButton {
        objectName: "begin"
        visible: root.viewModel.repetitionCount === 0 && !root.viewModel.running
        enabled: root.viewModel.canBegin
        main: true
        text: root.viewModel.beginText
        Layout.columnSpan: root.columns
        onClicked: root.viewModel.begin()
    }
}
