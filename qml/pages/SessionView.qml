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
    signal squadAsked()
    property string doneText
    signal doneAsked()
    signal sharingAsked()
    signal sensorsAsked()

    function openWhy(key: string) {
        root.viewModel.openWhy(key)
        whySheet.open()
    }

    title: viewModel.sessionTitle
    aside: viewModel.weekText
    lead: viewModel.phaseText
    leadNote: viewModel.dayText

    SharerStrip {
        objectName: "sharers"
        viewModel: root.viewModel
    }
    CutOffCard {
        objectName: "cutOff"
        text: root.viewModel.cutOffText
        canKeep: root.viewModel.cutOffCanBeKept
        onKept: root.viewModel.keepCutOff()
        onDropped: root.viewModel.dropCutOff()
    }
    SensorPill {
        objectName: "sessionSensor"
        viewModel: root.viewModel
        onClicked: root.sensorsAsked()
    }
    RowButton {
        objectName: "howAreYou"
        visible: root.viewModel.hasAthlete
        title: qsTr("How are you today?")
        detail: root.viewModel.wellnessText === "" ? qsTr("Sleep, soreness, pain: the day is decided with it.") : root.viewModel.wellnessText
        sign: root.viewModel.wellnessText === "" ? Glyph.Dash : Glyph.Check
        tone: root.viewModel.wellnessText === "" ? Theme.muted : Theme.good
        trailing: Glyph.Pencil
        face: Theme.card
        onClicked: wellnessSheet.open()
    }
    Repeater {
        model: root.viewModel.notes

        MarkedLine {
            objectName: "note"
            required caution
        }
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
            required property string extra

            objectName: "lift-" + key
            Layout.fillWidth: true
            implicitHeight: Math.max(Theme.touchTarget, words.implicitHeight + 2 * Theme.cardPadding)
            Accessible.role: Accessible.Button
            Accessible.name: qsTr("%1, %2, %3, %4, %5").arg(name).arg(load).arg(plan).arg(rung).arg(progress) + (extra === "" ? "" : ". " + extra)
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
                        NoteText {
                            text: lift.extra
                            visible: text !== ""
                            color: Theme.ink
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
                    ColumnLayout {
                        spacing: 0

                        Glyph {
                            sign: Glyph.Forward
                            color: Theme.muted
                            Layout.preferredWidth: 22
                            Layout.preferredHeight: 22
                            Layout.alignment: Qt.AlignRight | Qt.AlignTop
                            Layout.topMargin: Theme.cardPadding
                        }
                        Item { Layout.fillHeight: true }
                        ActionButton {
                            objectName: "why-" + lift.key
                            text: qsTr("Why?")
                            Accessible.name: qsTr("Why %1 today?").arg(lift.name)
                            Layout.fillWidth: false
                            Layout.bottomMargin: 8
                            onClicked: root.openWhy(lift.key) // qmllint disable unqualified
                        }
                    }
                }
            }
        }
    }

    HeadingText {
        visible: root.viewModel.others.count > 0
        text: qsTr("Other lifts")
        font.pixelSize: Theme.valueSize
        Layout.fillWidth: true
    }
    Repeater {
        model: root.viewModel.others

        RowButton {
            required property int index
            required property bool done
            required detail

            objectName: "other" + index
            face: Theme.card
            sign: done ? Glyph.Check : Glyph.Plus
            tone: done ? Theme.good : Theme.muted
            onClicked: {
                otherSheet.index = index // qmllint disable unqualified
                otherSheet.open() // qmllint disable unqualified
            }
        }
    }

    EmptyState {
        objectName: "emptySession"
        visible: root.viewModel.lifts.count === 0
        sign: Glyph.Bench
        title: root.viewModel.emptyTitle
        text: root.viewModel.emptyText
        action: root.viewModel.emptyAction
        onAsked: root.viewModel.emptyLeadsToSquad ? root.squadAsked() : root.ladderAsked()
    }
    ActionButton {
        objectName: "done"
        visible: root.doneText !== ""
        sign: Glyph.Check
        text: root.doneText
        onClicked: root.doneAsked()
    }
    ActionButton {
        objectName: "share"
        visible: root.viewModel.hasAthlete
        sign: Glyph.Squad
        text: qsTr("Several athletes on this sensor")
        onClicked: root.sharingAsked()
    }

    WellnessSheet {
        id: wellnessSheet
        objectName: "wellnessSheet"
        viewModel: root.viewModel
    }
    OtherSetSheet {
        id: otherSheet
        objectName: "otherSheet"
        viewModel: root.viewModel
    }
    WhySheet {
        id: whySheet
        objectName: "whySheet"
        viewModel: root.viewModel
    }
}
