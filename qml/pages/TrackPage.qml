import QtQuick
import Fleetrung
import Fleetrung.Views

// Sprints, jumps and work: what was run, and the forms to type it.
PageFrame {
    id: root

    required property TrackViewModel viewModel
    required property TrackWorkViewModel work
    readonly property int part: work.shown ? 2 : viewModel.jumpsShown ? 1 : 0

    signal squadAsked()
    signal importAsked()

    title: qsTr("Track")
    lead: viewModel.athleteName

    Choices {
        objectName: "kind"
        visible: root.viewModel.hasAthlete
        options: [qsTr("Sprints"), qsTr("Jumps"), qsTr("Work")]
        current: root.part
        onChosen: index => {
            root.viewModel.jumpsShown = index === 1
            root.work.shown = index === 2
        }
    }
    ActionButton {
        objectName: "add"
        visible: root.viewModel.hasAthlete
        main: true
        sign: Glyph.Plus
        text: [qsTr("Add a run"), qsTr("Add jumps"), qsTr("Add work")][root.part]
        onClicked: [runSheet, jumpSheet, workSheet][root.part].open()
    }
    RunFilter {
        visible: root.part === 0 && root.viewModel.bests.count > 0
        viewModel: root.viewModel
    }
    Repeater {
        model: root.part === 0 ? root.viewModel.runs : null

        RunRow {
            onOpened: {
                root.viewModel.openRun(key) // qmllint disable unqualified
                runFitSheet.open() // qmllint disable unqualified
            }
            onRemoved: root.viewModel.remove(key) // qmllint disable unqualified
        }
    }
    BoxCard {
        visible: root.part === 1 && root.viewModel.boxes.count > 0
        viewModel: root.viewModel
    }
    Repeater {
        model: root.part === 1 ? root.viewModel.jumps : null

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
        visible: root.part < 2 && root.viewModel.hasMore
        text: qsTr("Show earlier ones")
        onClicked: root.viewModel.showMore()
    }
    WorkPart {
        visible: root.viewModel.hasAthlete && root.part === 2
        viewModel: root.work
    }
    ActionButton {
        objectName: "importRuns"
        visible: root.viewModel.hasAthlete && root.part === 0
        text: qsTr("Import runs from a file")
        onClicked: root.importAsked()
    }
    EmptyState {
        objectName: "emptyTrack"
        visible: !root.viewModel.hasAthlete || (root.part < 2 && [root.viewModel.runs, root.viewModel.jumps][root.part].count === 0)
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
    WorkSheet {
        id: workSheet
        objectName: "workSheet"
        viewModel: root.work
    }
}
