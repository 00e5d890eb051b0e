import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The athletes on this device, and how this device shows things.
PageFrame {
    id: root

    required property SquadViewModel viewModel
    required property Preferences preferences

    title: qsTr("Squad")
    aside: viewModel.countText

    EmptyState {
        objectName: "emptySquad"
        visible: root.viewModel.athletes.count === 0
        sign: Glyph.Squad
        title: qsTr("Who trains here?")
        text: qsTr("Add yourself, or each athlete you coach. Lifts, sprints and decisions are kept for each athlete apart, on this device only.")
    }
    Repeater {
        model: root.viewModel.athletes

        AthleteCard {
            onChosen: root.viewModel.choose(key) // qmllint disable unqualified
            onEdit: {
                sheet.key = key // qmllint disable unqualified
                sheet.open()
            }
        }
    }
    ActionButton {
        objectName: "addAthlete"
        main: root.viewModel.athletes.count === 0
        sign: Glyph.Plus
        text: qsTr("Add an athlete")
        onClicked: {
            sheet.key = ""
            sheet.open()
        }
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

    AthleteSheet {
        id: sheet
        objectName: "athleteSheet"
        viewModel: root.viewModel
        massUnit: root.preferences.massUnit
        lengthUnit: root.preferences.lengthUnit
    }
    CautionsSheet {
        id: cautions
        onUnderstood: close()
    }
}
