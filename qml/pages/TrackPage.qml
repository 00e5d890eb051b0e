import QtQuick
import Fleetrung
import Fleetrung.Views

// Sprints and jumps: what was run, and the forms to type it.
PageFrame {
    id: root

    required property TrackViewModel viewModel

    signal squadAsked()
    signal importAsked()

    title: qsTr("Track")
    lead: viewModel.athleteName

    Choices {
        objectName: "kind"
        visible: root.viewModel.hasAthlete
        options: [qsTr("Sprints"), qsTr("Jumps")]
        current: root.viewModel.jumpsShown ? 1 : 0
        onChosen: index => root.viewModel.jumpsShown = index === 1
    }
    ActionButton {
        objectName: "add"
        visible: root.viewModel.hasAthlete
        main: true
        sign: Glyph.Plus
        text: root.viewModel.jumpsShown ? qsTr("Add a jump") : qsTr("Add a run")
        onClicked: root.viewModel.jumpsShown ? jumpSheet.open() : runSheet.open()
    }
    RunFilter {
        visible: !root.viewModel.jumpsShown && root.viewModel.bests.count > 0
        viewModel: root.viewModel
    }
    Repeater {
        model: root.viewModel.jumpsShown ? null : root.viewModel.runs

        RunRow {
            onOpened: {
                root.viewModel.openRun(key) // qmllint disable unqualified
                runFitSheet.open() // qmllint disable unqualified
            }
            onRemoved: root.viewModel.remove(key) // qmllint disable unqualified
        }
    }
    Repeater {
        model: root.viewModel.jumpsShown ? root.viewModel.jumps : null

        Card {
            id: entry

            required property string key
            required property string title
            required property string value
            required property string detail

            objectName: "entry"
            padding: 12

            ListRow {
                title: entry.title
                detail: entry.detail
                value: entry.value

                IconButton {
                    objectName: "remove"
                    label: qsTr("Delete %1, %2").arg(entry.title).arg(entry.value)
                    sign: Glyph.Bin
                    onClicked: root.viewModel.remove(entry.key) // qmllint disable unqualified
                }
            }
        }
    }
    ActionButton {
        objectName: "more"
        visible: root.viewModel.hasMore
        text: qsTr("Show earlier ones")
        onClicked: root.viewModel.showMore()
    }
    ActionButton {
        objectName: "importRuns"
        visible: root.viewModel.hasAthlete && !root.viewModel.jumpsShown
        text: qsTr("Import runs from a file")
        onClicked: root.importAsked()
    }
    EmptyState {
        objectName: "emptyTrack"
        visible: (root.viewModel.jumpsShown ? root.viewModel.jumps.count : root.viewModel.runs.count) === 0
        sign: Glyph.Track
        title: root.viewModel.emptyTitle
        text: root.viewModel.emptyText
        action: root.viewModel.hasAthlete ? "" : qsTr("Go to Squad")
        onAsked: root.squadAsked()
    }

    RunSheet {
        id: runSheet
        objectName: "runSheet"
        viewModel: root.viewModel
    }
    RunFitSheet {
        id: runFitSheet
        objectName: "runFitSheet"
        run: root.viewModel.fit
    }
    JumpSheet {
        id: jumpSheet
        objectName: "jumpSheet"
        viewModel: root.viewModel
    }
}
