import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The six sides of a sensor, measured as it is laid down: nothing is tapped in between.
Sheet {
    id: root

    required property CalibrationViewModel viewModel

    title: qsTr("Six sides")
    tall: true
    onClosed: viewModel.leave()

    NoteText {
        text: qsTr("Lay it on each side, in any order, on something hard and level. Wait for the tick.")
        visible: !root.viewModel.complete
        Layout.fillWidth: true
    }
    Rectangle {
        implicitHeight: now.implicitHeight + 24
        radius: Theme.cardRadius
        color: Theme.ground
        border.width: 2
        border.color: root.viewModel.nowMark === CalibrationViewModel.Wrong ? Theme.caution
                    : root.viewModel.nowMark === CalibrationViewModel.Good ? Theme.good : Theme.hairline
        Layout.fillWidth: true

        RowLayout {
            id: now
            anchors.verticalCenter: parent.verticalCenter
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.margins: 14
            spacing: 12

            Glyph {
                sign: root.viewModel.nowMark === CalibrationViewModel.Wrong ? Glyph.Caution
                    : root.viewModel.nowMark === CalibrationViewModel.Good ? Glyph.Check : Glyph.Sensor
                color: root.viewModel.nowMark === CalibrationViewModel.Wrong ? Theme.caution
                     : root.viewModel.nowMark === CalibrationViewModel.Good ? Theme.good : Theme.accent
                thickness: 2.8
                Layout.preferredWidth: Theme.scaled(24)
                Layout.preferredHeight: Theme.scaled(24)
            }
            ColumnLayout {
                spacing: 2

                BodyText {
                    objectName: "now"
                    text: root.viewModel.nowText
                    font.pixelSize: Theme.valueSize
                    font.weight: Font.DemiBold
                    Layout.fillWidth: true
                    Accessible.role: Accessible.AlertMessage
                }
                NoteText {
                    objectName: "sides"
                    text: root.viewModel.countText
                    Layout.fillWidth: true
                }
            }
        }
    }
    GridLayout {
        visible: !root.viewModel.complete
        columns: Theme.large ? 2 : 3
        columnSpacing: 8
        rowSpacing: 8
        Layout.fillWidth: true

        Repeater {
            model: root.viewModel.faces

            PoseTile {
                objectName: "pose" + pose
            }
        }
    }
    Card {
        objectName: "result"
        visible: root.viewModel.complete
        color: Theme.ground
        spacing: Theme.gap

        ListRow {
            title: qsTr("Before")
            detail: qsTr("how far gravity was off at worst")
            value: root.viewModel.beforeText
        }
        ListRow {
            title: qsTr("Now")
            detail: qsTr("with the six sides measured")
            value: root.viewModel.afterText
        }
    }

    actions: [
        ActionButton {
            objectName: "saveCalibration"
            visible: root.viewModel.complete
            main: true
            text: qsTr("Save")
            onClicked: {
                root.viewModel.save()
                root.close()
            }
        },
        ActionButton {
            objectName: "measureAgain"
            sign: Glyph.Undo
            text: qsTr("Start over")
            onClicked: root.viewModel.startOver()
        }
    ]
}
