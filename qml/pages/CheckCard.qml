import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The warm-up check of the open lift: what is to be done, then what it found, and the athlete's answer.
Card {
    id: root

    required property BenchViewModel viewModel
    property string problem

    readonly property bool asks: viewModel.checkState === BenchViewModel.CheckLess

    RowLayout {
        spacing: 10

        Glyph {
            sign: root.asks ? Glyph.Caution
                : root.viewModel.checkState === BenchViewModel.CheckAsUsual ? Glyph.Check : Glyph.Dash
            color: root.asks ? Theme.caution
                 : root.viewModel.checkState === BenchViewModel.CheckAsUsual ? Theme.good : Theme.muted
            thickness: 3
            Layout.preferredWidth: Theme.scaled(18)
            Layout.preferredHeight: Theme.scaled(18)
        }
        BodyText {
            objectName: "checkTitle"
            text: root.viewModel.checkTitle
            font.weight: Font.DemiBold
            Layout.fillWidth: true
        }
        ExplainButton {
            topics: ["warm-up-check", "typical-error"]
        }
    }
    NoteText {
        objectName: "checkText"
        text: root.viewModel.checkText
        visible: text !== ""
        font.pixelSize: Theme.scaled(15)
        Layout.fillWidth: true
    }
    Repeater {
        model: root.viewModel.checkEvidence

        EvidenceRow {
            objectName: "checkEvidence"
        }
    }
    ActionButton {
        objectName: "acceptCheck"
        visible: root.asks
        text: qsTr("Take it lighter today")
        onClicked: root.viewModel.answerCheck(true, "")
    }
    Field {
        id: why
        objectName: "whyNot"
        visible: root.asks
        label: qsTr("If not: why?")
        hint: qsTr("bar slipped in the warm-up")
        problem: root.problem
    }
    ActionButton {
        objectName: "declineCheck"
        visible: root.asks
        text: qsTr("Keep the plan")
        onClicked: root.problem = root.viewModel.answerCheck(false, why.text)
    }
}
