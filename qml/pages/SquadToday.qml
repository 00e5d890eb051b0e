import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Who is due for what today, or how they share the racks, round by round.
ListFrame {
    id: root

    required property SquadDayViewModel viewModel
    required property int part
    property bool byRack: false

    signal partChosen(int index)
    signal benchAsked()

    title: qsTr("Squad")
    aside: viewModel.countText
    // Together: rows of one kind are no use to the other's delegate.
    function showKind() {
        model = null
        delegate = byRack ? turn : athlete
        model = byRack ? viewModel.turns : viewModel.due
    }

    onByRackChanged: showKind()
    Component.onCompleted: showKind()
    section.property: byRack ? "round" : ""
    section.delegate: HeadingText {
        required property string section

        text: section
        topPadding: Theme.gap
        bottomPadding: 4
    }
    head: [
        SquadParts {
            current: root.part
            onChosen: index => root.partChosen(index)
        },
        Choices {
            objectName: "groups"
            visible: options.length > 1
            label: qsTr("Training group")
            options: root.viewModel.groups
            current: root.viewModel.group
            onChosen: index => root.viewModel.chooseGroup(index)
        },
        Choices {
            objectName: "listKind"
            visible: root.viewModel.due.count > 0
            label: qsTr("Show")
            options: [qsTr("Who lifts what"), qsTr("Racks and rounds")]
            current: root.byRack ? 1 : 0
            onChosen: index => root.byRack = index === 1
        },
        RowLayout {
            visible: root.byRack && root.viewModel.due.count > 0
            spacing: Theme.smallGap

            BodyText {
                objectName: "racks"
                text: root.viewModel.racksText
                font.weight: Font.DemiBold
                Layout.fillWidth: true
            }
            ActionButton {
                objectName: "fewerRacks"
                text: "−"
                Accessible.name: qsTr("One rack less")
                Layout.fillWidth: false
                Layout.preferredWidth: 64
                onClicked: root.viewModel.moveRacks(-1)
            }
            ActionButton {
                objectName: "moreRacks"
                text: "+"
                Accessible.name: qsTr("One rack more")
                Layout.fillWidth: false
                Layout.preferredWidth: 64
                onClicked: root.viewModel.moveRacks(1)
            }
        },
        EmptyState {
            objectName: "nobodyDue"
            visible: root.viewModel.due.count === 0
            sign: Glyph.Squad
            title: qsTr("Nobody is due")
            text: root.viewModel.emptyText
        }
    ]

    Component {
        id: athlete

        RowButton {
            required property string key
            required property string name
            required property string group
            required property string lifts

            objectName: "due-" + key
            width: ListView.view.width
            face: Theme.card
            strong: true
            title: group === "" ? name : qsTr("%1 · %2").arg(name).arg(group)
            detail: lifts
            onClicked: {
                root.viewModel.choose(key) // qmllint disable unqualified
                root.benchAsked()
            }
        }
    }
    Component {
        id: turn

        Card {
            id: rack

            required property string title
            required property string names

            objectName: "turn"
            width: ListView.view.width
            padding: 12

            ListRow {
                title: rack.title
                detail: rack.names
            }
        }
    }
}
