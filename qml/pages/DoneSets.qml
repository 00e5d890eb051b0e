import QtQuick
import Fleetrung
import Fleetrung.Views

// What is done today, sheet over sheet: the list, one set of it.
Item {
    id: root

    required property DoneSetsViewModel viewModel

    function open() {
        list.open()
    }

    DoneSetsSheet {
        id: list
        objectName: "doneSetsSheet"
        viewModel: root.viewModel
        onChosen: key => {
            root.viewModel.open(key)
            one.open()
        }
    }
    DoneSetSheet {
        id: one
        objectName: "doneSetSheet"
        viewModel: root.viewModel
    }
}
