import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// What is on the plan today, lift by lift.
PageFrame {
    id: root

    required property BenchViewModel viewModel

    signal ladderAsked()

    title: viewModel.sessionTitle
    aside: viewModel.weekText
    lead: viewModel.phaseText
    leadNote: viewModel.dayText

    BodyText {
        objectName: "sessionNote"
        text: root.viewModel.sessionNote
        visible: text !== ""
        color: Theme.muted
        Layout.fillWidth: true
    }

    Repeater {
        model: root.viewModel.lifts

        AbstractButton {
            id: lift

            required property string key
            required property string name
            required property string load
            required property string plan
            required property string rung
            required property string band
            required property string progress
            required property bool done

            objectName: "lift-" + key
            Layout.fillWidth: true
            implicitHeight: Math.max(Theme.touchTarget, words.implicitHeight + 2 * Theme.cardPadding)
            Accessible.role: Accessible.Button
            Accessible.name: qsTr("%1, %2, %3, %4, %5").arg(name).arg(load).arg(plan).arg(rung).arg(progress)
            onClicked: root.viewModel.openLift(key) // qmllint disable unqualified

            background: Rectangle {
                radius: Theme.cardRadius
                color: lift.down ? Theme.raised : Theme.card
                border.width: lift.visualFocus ? 3 : 0
                border.color: Theme.ink
            }
            contentItem: Item {
                RowLayout {
                    id: words
                    anchors.verticalCenter: parent.verticalCenter
                    anchors.left: parent.left
                    anchors.right: parent.right
                    anchors.leftMargin: Theme.cardPadding
                    anchors.rightMargin: 10
                    spacing: Theme.smallGap

                    ColumnLayout {
                        spacing: 3

                        HeadingText {
                            text: lift.name
                            Layout.fillWidth: true
                            Accessible.ignored: true
                        }
                        Flow {
                            spacing: 10
                            Layout.fillWidth: true

                            BodyText {
                                text: lift.load
                                font.weight: Font.DemiBold
                                visible: text !== ""
                                Accessible.ignored: true
                            }
                            BodyText {
                                text: lift.plan
                                Accessible.ignored: true
                            }
                        }
                        NoteText {
                            text: lift.rung
                            visible: text !== ""
                            Layout.fillWidth: true
                            Accessible.ignored: true
                        }
                        NoteText {
                            text: lift.band
                            visible: text !== ""
                            color: Theme.accent
                            Layout.fillWidth: true
                            Accessible.ignored: true
                        }
                        RowLayout {
                            spacing: 6

                            Glyph {
                                visible: lift.done
                                sign: Glyph.Check
                                color: Theme.good
                                thickness: 3
                                Layout.preferredWidth: Theme.scaled(14)
                                Layout.preferredHeight: Theme.scaled(14)
                            }
                            NoteText {
                                text: lift.progress
                                color: lift.done ? Theme.good : Theme.muted
                                Layout.fillWidth: true
                                Accessible.ignored: true
                            }
                        }
                    }
                    Glyph {
                        sign: Glyph.Forward
                        color: Theme.muted
                        Layout.preferredWidth: 22
                        Layout.preferredHeight: 22
                    }
                }
            }
        }
    }

    EmptyState {
        objectName: "emptySession"
        visible: root.viewModel.lifts.count === 0
        sign: Glyph.Bench
        title: root.viewModel.emptyTitle
        text: root.viewModel.emptyText
        action: qsTr("Go to Ladder")
        onAsked: root.ladderAsked()
    }
}
