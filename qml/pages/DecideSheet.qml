import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// The athlete or coach decides otherwise: what, and why. Both are kept beside the evidence.
Sheet {
    id: root

    required property LadderViewModel viewModel
    property string problem

    title: qsTr("Decide otherwise")
    onAboutToShow: {
        problem = ""
        choice.current = -1
        why.text = ""
    }

    NoteText {
        text: qsTr("Your decision counts. It is kept with the evidence and your reason, so that the season can be read later.")
        Layout.fillWidth: true
    }
    Choices {
        id: choice
        objectName: "choice"
        label: qsTr("What will you do?")
        options: root.viewModel.otherChoices
        onChosen: index => current = index
    }
    Field {
        id: why
        objectName: "why"
        label: qsTr("Why?")
        hint: qsTr("for example: knee is sore, competition moved")
        problem: root.problem
    }

    actions: ActionButton {
        objectName: "keepDecision"
        main: true
        text: qsTr("Keep this decision")
        onClicked: {
            root.problem = root.viewModel.decideOtherwise(choice.current, why.text)
            if (root.problem === "")
                root.close()
        }
    }
}
