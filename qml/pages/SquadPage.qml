import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The athletes on this device, who is due for what today, and how this device shows things.
Item {
    id: root

    required property SquadViewModel viewModel
    required property SquadDayViewModel day
    required property Preferences preferences
    required property SensorsViewModel sensors
    required property bool demoOffered
    property int part: 0

    signal demoAsked()
    signal benchAsked()
    signal sensorsAsked()
    signal importAsked()

    onPartChanged: if (part === 1) day.ask()

    ListFrame {
        objectName: "athletesPart"
        anchors.fill: parent
        visible: root.part === 0
        title: qsTr("Squad")
        aside: root.viewModel.countText
        model: root.viewModel.athletes
        delegate: AthleteCard {
            width: ListView.view.width
            onChosen: root.viewModel.choose(key) // qmllint disable unqualified
            onEdit: {
                sheet.key = key // qmllint disable unqualified
                sheet.open() // qmllint disable unqualified
            }
        }
        head: SquadParts {
            current: root.part
            onChosen: index => root.part = index
        }
        foot: [
            EmptyState {
                objectName: "emptySquad"
                visible: root.viewModel.athletes.count === 0
                sign: Glyph.Squad
                title: qsTr("Who trains here?")
                text: qsTr("Add yourself, or each athlete you coach. Lifts, sprints and decisions are kept for each athlete apart, on this device only.")
            },
            ActionButton {
                objectName: "addAthlete"
                main: root.viewModel.athletes.count === 0
                sign: Glyph.Plus
                text: qsTr("Add an athlete")
                onClicked: {
                    sheet.key = ""
                    sheet.open()
                }
            },
            ActionButton {
                objectName: "openDemo"
                visible: root.demoOffered
                text: root.viewModel.athletes.count === 0 ? qsTr("Look around with a demo squad") : qsTr("Look at the demo squad")
                onClicked: root.demoAsked()
            },
            ActionButton {
                objectName: "openArchive"
                visible: root.viewModel.archived.count > 0
                text: qsTr("Archive")
                onClicked: archive.open()
            },
            ActionButton {
                objectName: "importSets"
                text: qsTr("Import sets from a file")
                onClicked: root.importAsked()
            }
        ]
    }
    SquadToday {
        objectName: "todayPart"
        anchors.fill: parent
        visible: root.part === 1
        viewModel: root.day
        part: root.part
        onPartChosen: index => root.part = index
        onBenchAsked: root.benchAsked()
    }
    PageFrame {
        objectName: "devicePart"
        anchors.fill: parent
        visible: root.part === 2
        title: qsTr("Squad")

        SquadParts {
            current: root.part
            onChosen: index => root.part = index
        }
        SensorsCard {
            objectName: "sensorsCard"
            sensors: root.sensors
            onAsked: root.sensorsAsked()
        }
        DeviceCard {
            preferences: root.preferences
        }
        Card {
            HeadingText {
                text: qsTr("Cautions")
                Layout.fillWidth: true
            }
            NoteText {
                text: qsTr("What to know before you lift heavy, or jump from a box.")
                Layout.fillWidth: true
            }
            ActionButton {
                objectName: "readCautions"
                text: qsTr("Read the cautions")
                onClicked: cautions.open()
            }
        }
    }

    AthleteSheet {
        id: sheet
        objectName: "athleteSheet"
        viewModel: root.viewModel
        massUnit: root.preferences.massUnit
        lengthUnit: root.preferences.lengthUnit
    }
    ArchiveSheet {
        id: archive
        objectName: "archiveSheet"
        viewModel: root.viewModel
    }
    CautionsSheet {
        id: cautions
        onUnderstood: close()
    }
}
