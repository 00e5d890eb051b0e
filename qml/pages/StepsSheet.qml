import QtQuick
import Fleetrung
import Fleetrung.Views

// The stair as a list: for a keyboard, a screen reader, or a thumb that finds the picture too small.
Sheet {
    id: root

    required property LadderViewModel viewModel

    signal chosen(int index)

    title: qsTr("Steps of the ladder")

    Repeater {
        model: root.viewModel.steps

        RowButton {
            required property int index
            required detail
            required property bool taken
            required property bool underWay

            objectName: "step" + index
            strong: underWay
            sign: taken ? Glyph.Check : Glyph.Dash
            tone: taken ? Theme.accent : Theme.muted
            onClicked: root.chosen(index) // qmllint disable unqualified
        }
    }
}
