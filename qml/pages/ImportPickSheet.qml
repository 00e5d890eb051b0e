import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// What a column means, who a name is, which lift a word is: one of a list.
Sheet {
    id: root

    required property ImportViewModel viewModel
    property bool wrong: false

    title: viewModel.pickTitle
    onAboutToShow: {
        wrong = false
        distance.text = viewModel.pickDistance
    }

    NoteText {
        text: root.viewModel.pickDetail
        visible: text !== ""
        Layout.fillWidth: true
    }
    Field {
        id: distance
        objectName: "pickDistance"
        visible: root.viewModel.pickHasDistance
        label: qsTr("The gate stands at, m")
        number: true
        problem: root.wrong ? qsTr("Between 0 and 1000 m.") : ""
    }
    ActionButton {
        objectName: "saveDistance"
        visible: root.viewModel.pickHasDistance
        main: true
        text: qsTr("Take this distance")
        onClicked: {
            root.wrong = !root.viewModel.setDistance(distance.text)
            if (!root.wrong)
                root.close()
        }
    }
    Repeater {
        model: root.viewModel.picks

        RowButton {
            required property string key
            required property bool chosen

            required title

            objectName: "pick-" + key
            sign: chosen ? Glyph.Check : Glyph.Dash
            tone: chosen ? Theme.good : Theme.muted
            Accessible.role: Accessible.RadioButton
            Accessible.checked: chosen
            onClicked: {
                root.viewModel.pick(key) // qmllint disable unqualified
                if (!root.viewModel.pickHasDistance) // qmllint disable unqualified
                    root.close() // qmllint disable unqualified
            }
        }
    }
}
