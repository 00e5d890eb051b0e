import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// One step of the stair: what it rests on, or what it still waits for.
Sheet {
    id: root

    required property StepViewModel step

    title: step.title

    BodyText {
        objectName: "stepWhen"
        text: root.step.when
        color: Theme.accent
        font.weight: Font.Medium
        Layout.fillWidth: true
    }
    Repeater {
        model: root.step.facts

        NoteText {
            required property string modelData
            text: modelData
            font.pixelSize: Theme.scaled(15)
            Layout.fillWidth: true
        }
    }
    Card {
        color: Theme.ground
        visible: root.step.missing !== ""

        BodyText {
            objectName: "stepMissing"
            text: root.step.missing
            Layout.fillWidth: true
        }
    }
    RowLayout {
        visible: root.step.decisionTitle !== ""
        spacing: Theme.smallGap

        HeadingText {
            objectName: "stepRule"
            text: root.step.decisionTitle
            font.pixelSize: Theme.valueSize
            Layout.fillWidth: true
        }
        ExplainButton {
            topics: ["decision", "time-to-peak", "typical-error"]
        }
    }
    BodyText {
        objectName: "stepReason"
        text: root.step.reason
        visible: text !== ""
        font.pixelSize: Theme.scaled(15)
        lineHeight: 1.15
        Layout.fillWidth: true
    }
    Repeater {
        model: root.step.evidence

        EvidenceRow {
            objectName: "stepEvidence"
        }
    }
    RowLayout {
        visible: root.step.answer !== ""
        spacing: Theme.smallGap

        Glyph {
            sign: Glyph.Check
            color: Theme.good
            thickness: 3
            Layout.preferredWidth: Theme.scaled(16)
            Layout.preferredHeight: Theme.scaled(16)
            Layout.alignment: Qt.AlignTop
        }
        BodyText {
            objectName: "stepAnswer"
            text: root.step.answer
            font.pixelSize: Theme.scaled(15)
            Layout.fillWidth: true
        }
    }
    MarkedLine {
        visible: root.step.caution !== ""
        caution: true
        text: root.step.caution
    }
}
