import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Which test's runs are listed, and its best; of all, the way to the personal bests.
ColumnLayout {
    id: root

    required property TrackViewModel viewModel

    spacing: Theme.gap
    Layout.fillWidth: true

    Choices {
        objectName: "tests"
        visible: root.viewModel.tests.length > 2
        options: root.viewModel.tests
        current: root.viewModel.test
        onChosen: index => root.viewModel.test = index
    }
    RowButton {
        objectName: "openBests"
        visible: root.viewModel.test === 0
        face: Theme.card
        title: qsTr("Personal bests")
        onClicked: bestsSheet.open()
    }
    Repeater {
        model: root.viewModel.test === 0 ? null : root.viewModel.bests

        Card {
            id: best

            required property string value
            required property string detail

            objectName: "bestOfTest"
            color: Theme.band
            padding: 12

            ListRow {
                title: qsTr("Best")
                detail: best.detail
                value: best.value
            }
        }
    }

    BestsSheet {
        id: bestsSheet
        objectName: "bestsSheet"
        viewModel: root.viewModel
    }
}
