import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// From box to saved sensor: search, choose, name. One thing at a time.
Sheet {
    id: root

    required property FindSensorsViewModel viewModel

    signal teachingAsked()
    signal savedAsked(string key)

    readonly property bool choosing: viewModel.stage === FindSensorsViewModel.Choosing
    readonly property bool listening: viewModel.stage === FindSensorsViewModel.Listening
    readonly property bool naming: viewModel.stage === FindSensorsViewModel.Naming

    title: choosing ? qsTr("Find a sensor") : naming ? qsTr("Name it") : viewModel.chosenName
    tall: true
    onAboutToShow: viewModel.search()
    onClosed: viewModel.leave()

    TroubleCard {
        objectName: "findTrouble"
        text: root.viewModel.trouble
        action: root.choosing ? qsTr("Search again") : root.listening ? qsTr("Try again") : ""
        onAsked: root.choosing ? root.viewModel.search() : root.viewModel.tryAgain()
    }

    // Choosing
    StepList {
        objectName: "findSteps"
        visible: root.choosing && root.viewModel.foundCount === 0
        steps: [qsTr("Switch the sensor on."), qsTr("Shake it: many sleep until they are moved."),
                qsTr("Hold it near this phone."), qsTr("Close other programs that use it.")]
        Layout.topMargin: 8
    }
    Field {
        id: filter
        objectName: "filter"
        visible: root.choosing && (root.viewModel.foundCount > 5 || filter.text !== "")
        label: qsTr("Part of its name")
        text: root.viewModel.filter
        onTextChanged: root.viewModel.filter = filter.text
    }
    NoteText {
        objectName: "foundCount"
        visible: root.choosing && text !== ""
        text: root.viewModel.countText
        Layout.fillWidth: true
    }
    Repeater {
        model: root.choosing ? root.viewModel.found : null

        FoundRow {
            onChosen: key => root.viewModel.choose(key)
        }
    }

    // Listening
    PoseDrawing {
        id: still
        objectName: "listenDrawing"
        visible: root.listening
        pose: PoseDrawing.MainSideUp
        body: Theme.outline
        mark: Theme.accent
        dot: Theme.wordOnAccent
        line: Theme.ink
        table: Theme.raised
        Layout.preferredWidth: 150
        Layout.preferredHeight: 150
        Layout.alignment: Qt.AlignHCenter
        Accessible.role: Accessible.Graphic
        Accessible.name: still.words
    }
    HeadingText {
        objectName: "listening"
        visible: text !== ""
        text: root.viewModel.listeningText
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }
    BodyText {
        objectName: "unread"
        visible: text !== ""
        text: root.viewModel.unreadText
        Layout.fillWidth: true
    }
    Repeater {
        model: root.listening && root.viewModel.unreadText !== "" ? root.viewModel.maps : null

        RowButton {
            required property string key
            required property string name
            required detail

            objectName: "fit-" + key
            title: name
            onClicked: root.viewModel.chooseMap(key) // qmllint disable unqualified
        }
    }

    // Naming
    RowLayout {
        visible: root.naming
        spacing: Theme.smallGap

        Glyph {
            sign: Glyph.Check
            color: Theme.good
            thickness: 3
            Layout.preferredWidth: Theme.scaled(18)
            Layout.preferredHeight: Theme.scaled(18)
        }
        BodyText {
            objectName: "readAs"
            text: root.viewModel.mapText
            Layout.fillWidth: true
        }
    }
    Choices {
        id: place
        objectName: "newPlace"
        visible: root.naming
        label: qsTr("Where it is worn")
        options: root.viewModel.places
        onChosen: index => current = index
    }
    Field {
        id: name
        objectName: "newName"
        visible: root.naming
        label: qsTr("Name")
    }

    onNamingChanged: {
        if (!root.naming)
            return
        name.text = root.viewModel.proposedName
        name.problem = ""
        place.current = root.viewModel.proposedPlace
    }

    actions: [
        ActionButton {
            objectName: "searchOrStop"
            visible: root.choosing
            main: !root.viewModel.searching
            text: root.viewModel.searching ? qsTr("Stop searching") : qsTr("Search")
            onClicked: root.viewModel.searching ? root.viewModel.stop() : root.viewModel.search()
        },
        ActionButton {
            objectName: "teachIt"
            visible: root.listening && root.viewModel.unreadText !== ""
            main: true
            text: qsTr("Teach it")
            onClicked: {
                root.viewModel.teach()
                root.teachingAsked()
            }
        },
        ActionButton {
            objectName: "listenAgain"
            visible: root.listening && root.viewModel.unreadText !== ""
            sign: Glyph.Undo
            text: qsTr("Listen again")
            onClicked: root.viewModel.tryAgain()
        },
        ActionButton {
            objectName: "saveSensor"
            visible: root.naming
            main: true
            text: qsTr("Save")
            onClicked: {
                name.problem = root.viewModel.save(name.text, place.current)
                if (name.problem === "")
                    root.close()
            }
        },
        ActionButton {
            objectName: "backToList"
            visible: !root.choosing
            text: qsTr("Back to the list")
            onClicked: root.viewModel.back()
        }
    ]

    Connections {
        target: root.viewModel
        function onSavedChosen(address) { root.savedAsked(address) }
    }
}
