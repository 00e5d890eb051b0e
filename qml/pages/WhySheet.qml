import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Why each part of a lift is prescribed as it is.
Sheet {
    id: root

    required property BenchViewModel viewModel

    title: qsTr("Why this today?")

    BodyText {
        objectName: "whyTitle"
        text: root.viewModel.whyTitle
        color: Theme.accent
        font.weight: Font.DemiBold
        Layout.fillWidth: true
    }
    Repeater {
        model: root.viewModel.why

        ColumnLayout {
            id: reason

            required property string about
            required property string text

            objectName: "why"
            spacing: 2
            Layout.fillWidth: true

            NoteText {
                text: reason.about
                font.weight: Font.DemiBold
                Layout.fillWidth: true
            }
            BodyText {
                objectName: "whyText"
                text: reason.text
                font.pixelSize: Theme.scaled(15)
                lineHeight: 1.15
                Layout.fillWidth: true
            }
        }
    }
}
