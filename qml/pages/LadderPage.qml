import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The stair of one lift, planned against taken, and what the evidence says today.
PageFrame {
    id: root

    required property LadderViewModel viewModel
    readonly property LadderViewModel ladder: viewModel

    required property SeasonViewModel season
    required property SeasonLiftsViewModel lifts

    signal squadAsked()
    signal calendarAsked()
    signal reportAsked()
    signal tablesAsked()

    function openStep(index: int) {
        if (root.ladder.openStep(index))
            stepSheet.open()
    }

    title: ladder.hasSeason ? ladder.title : qsTr("Ladder")
    aside: ladder.weekText
    lead: ladder.phaseText
    leadNote: ladder.competitionText

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
            id: stair
            objectName: "stair"
            plot: root.ladder.stair
            textSize: Theme.scaled(13)

            TapHandler {
                onTapped: point => root.openStep(root.ladder.stepAt(stair.placeAt(point.position.x, point.position.y)))
            }
        }
        ActionButton {
            objectName: "steps"
            text: qsTr("Steps and their evidence")
            onClicked: stepsSheet.open()
        }
    }
    EmptyState {
        objectName: "emptyLadder"
        visible: !root.ladder.hasSeason
        sign: Glyph.Ladder
        title: root.ladder.emptyTitle
        text: root.ladder.emptyText
        action: root.ladder.canPlan ? qsTr("Plan a season") : qsTr("Go to Squad")
        onAsked: root.ladder.canPlan ? planSheet.open() : root.squadAsked()
    }

    hasSide: ladder.hasSeason
    side: [
        Card {
            objectName: "decision"
            visible: root.ladder.decisionTitle !== ""
            spacing: 10

            RowLayout {
                spacing: Theme.smallGap

                HeadingText {
                    objectName: "decisionTitle"
                    text: root.ladder.decisionTitle
                    Layout.fillWidth: true
                }
                ExplainButton {
                    topics: ["decision", "time-to-peak", "typical-error"]
                }
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
        },
        Card {
            visible: root.ladder.nextText !== ""

            BodyText {
                objectName: "next"
                text: root.ladder.nextText
                font.pixelSize: Theme.scaled(15)
                Layout.fillWidth: true
            }
        },
        MarkedLine {
            objectName: "caution"
            visible: root.ladder.caution !== ""
            caution: true
            text: root.ladder.caution
        },
        Card {
            visible: root.season.hasSeason

            HeadingText {
                text: root.season.name
                Layout.fillWidth: true
            }
            ActionButton {
                objectName: "editSeason"
                sign: Glyph.Pencil
                text: qsTr("Change the season")
                onClicked: editSheet.open()
            }
            ActionButton {
                objectName: "report"
                text: qsTr("Season report as PDF")
                onClicked: root.reportAsked()
            }
            ActionButton {
                objectName: "tables"
                text: qsTr("All numbers as CSV tables")
                onClicked: root.tablesAsked()
            }
            ActionButton {
                objectName: "calendar"
                text: qsTr("Hand out as a calendar")
                onClicked: root.calendarAsked()
            }
            ActionButton {
                objectName: "premise"
                text: qsTr("Why shorter ranges? Both sides")
                onClicked: premiseSheet.open()
            }
        }
    ]

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

    StepSheet {
        id: stepSheet
        objectName: "stepSheet"
        step: root.ladder.step
    }
    StepsSheet {
        id: stepsSheet
        objectName: "stepsSheet"
        viewModel: root.ladder
        onChosen: index => root.openStep(index)
    }
    TextSheet {
        id: premiseSheet
        objectName: "premiseSheet"
        title: qsTr("Both sides of the evidence")
        text: root.ladder.premise
    }
    SeasonEditSheet {
        id: editSheet
        objectName: "seasonEditSheet"
        season: root.season
        lifts: root.lifts
    }
    SeasonSheet {
        id: planSheet
        objectName: "seasonSheet"
        viewModel: root.ladder
    }
    DecideSheet {
        id: decide
        objectName: "decideSheet"
        viewModel: root.ladder
    }
}
