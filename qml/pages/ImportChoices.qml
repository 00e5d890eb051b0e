import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// How the file is read: each choice as it was recognised, to be put right, and what was recognised by what.
ColumnLayout {
    id: root

    required property ImportViewModel viewModel
    required property bool shown

    spacing: Theme.gap
    Layout.fillWidth: true

    Repeater {
        model: root.shown ? root.viewModel.choices : null

        Choices {
            required property string key

            required label
            required options
            required current

            objectName: "choice-" + key
            onChosen: index => root.viewModel.answer(key, index) // qmllint disable unqualified
        }
    }
    Repeater {
        model: root.shown ? root.viewModel.remarks : []

        MarkedLine {
            required property string modelData

            text: modelData
        }
    }
}
