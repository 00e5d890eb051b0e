import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The stair of one lift, planned against taken, and what the evidence says today.
PageFrame {
    id: root

    required property LadderViewModel viewModel
    readonly property LadderViewModel ladder: viewModel

    signal squadAsked()

    title: ladder.hasSeason ? ladder.title : qsTr("Ladder")
    aside: ladder.weekText
    lead: ladder.phaseText
    leadNote: ladder.raceText

    Choices {
        objectName: "ladders"
        visible: root.ladder.hasSeason && options.length > 1
        options: root.ladder.names
        current: root.ladder.current
        onChosen: index => root.ladder.choose(index)
    }
    Card {
        visible: root.ladder.hasSeason
        padding: 12

        Picture {
            objectName: "stair"
            plot: root.ladder.stair
            textSize: Theme.scaled(13)
        }
    }
    Card {
        objectName: "decision"
        visible: root.ladder.decisionTitle !== ""
        spacing: 10

        HeadingText {
            objectName: "decisionTitle"
            text: root.ladder.decisionTitle
            Layout.fillWidth: true
        }
        NoteText {
            objectName: "reason"
            text: root.ladder.reason
            font.pixelSize: Theme.scaled(15)
            lineHeight: 1.15
            Layout.fillWidth: true
        }
        Repeater {
            model: root.ladder.evidence

            EvidenceRow {}
        }
        RowLayout {
            visible: root.ladder.answerText !== ""
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
                objectName: "answer"
                text: root.ladder.answerText
                font.pixelSize: Theme.scaled(15)
                Layout.fillWidth: true
            }
        }
    }
    Card {
        visible: root.ladder.nextText !== ""

        BodyText {
            objectName: "next"
            text: root.ladder.nextText
            font.pixelSize: Theme.scaled(15)
            Layout.fillWidth: true
        }
    }
    BodyText {
        objectName: "caution"
        visible: root.ladder.caution !== ""
        text: root.ladder.caution
        color: Theme.caution
        font.pixelSize: Theme.noteSize
        Layout.fillWidth: true
    }
    EmptyState {
        objectName: "emptyLadder"
        visible: !root.ladder.hasSeason
        sign: Glyph.Ladder
        title: root.ladder.emptyTitle
        text: root.ladder.emptyText
        action: root.ladder.canPlan ? qsTr("Plan a season") : qsTr("Go to Squad")
        onAsked: root.ladder.canPlan ? season.open() : root.squadAsked()
    }

    actions: GridLayout {
        visible: root.ladder.canAnswer
        columns: Theme.large ? 1 : 2
        columnSpacing: 12
        rowSpacing: Theme.smallGap

        ActionButton {
            objectName: "follow"
            main: true
            text: qsTr("Follow")
            Layout.preferredWidth: 1
            onClicked: root.ladder.follow()
        }
        ActionButton {
            objectName: "otherwise"
            text: qsTr("Decide otherwise")
            implicitHeight: Math.max(Theme.mainButton, implicitContentHeight + 2 * padding)
            Layout.preferredWidth: 1
            onClicked: decide.open()
        }
    }

    SeasonSheet {
        id: season
        objectName: "seasonSheet"
        viewModel: root.ladder
    }
    DecideSheet {
        id: decide
        objectName: "decideSheet"
        viewModel: root.ladder
    }
}
