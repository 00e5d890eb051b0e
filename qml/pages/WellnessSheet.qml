import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// How the athlete is, before the session. Only what is said counts; the day's decisions are taken again with it.
Sheet {
    id: root

    required property BenchViewModel viewModel
    property var problems: ({})

    readonly property var grades: ["0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10"]

    title: qsTr("How are you today?")
    onAboutToShow: {
        problems = {}
        sleep.text = ""
        soreness.current = -1
        pain.current = -1
        region.current = -1
        signs.chosen = []
        refusal.chosen = []
        mass.text = ""
    }

    Choices {
        id: pain
        objectName: "pain"
        label: qsTr("Pain, 0 none to 10 the worst")
        options: root.grades
        onChosen: index => current = index
    }
    Choices {
        id: region
        objectName: "region"
        visible: pain.current > 0
        label: qsTr("Where?")
        options: root.viewModel.regions
        current: -1
        onChosen: index => current = index
    }
    NoteText {
        objectName: "regionProblem"
        text: root.problems.region ?? ""
        visible: text !== ""
        color: Theme.stop
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
    }
    ManyChoices {
        id: signs
        objectName: "signs"
        label: qsTr("Any of these?")
        options: [qsTr("Sharp pain"), qsTr("Limping"), qsTr("New hamstring pain")]
    }
    MarkedLine {
        objectName: "painCaution"
        visible: pain.current >= 5 || signs.chosen.length > 0
        caution: true
        text: qsTr("No sprinting and no hinge today. See a clinician before you sprint or lift heavy again.")
    }
    Choices {
        id: soreness
        objectName: "soreness"
        label: qsTr("Soreness, 0 none to 10 very sore")
        options: root.grades
        onChosen: index => current = index
    }
    Field {
        id: sleep
        objectName: "sleep"
        label: qsTr("Sleep, hours")
        number: true
        problem: root.problems.sleep ?? ""
    }
    Field {
        id: mass
        objectName: "bodyMass"
        label: qsTr("Body mass, %1 (optional)").arg(root.viewModel.massUnit)
        number: true
        problem: root.problems.mass ?? ""
    }
    ManyChoices {
        id: refusal
        objectName: "refusal"
        label: qsTr("Your word counts before every rule")
        options: [qsTr("I do not want to lift today")]
    }

    actions: ActionButton {
        objectName: "saveWellness"
        main: true
        text: qsTr("Keep this")
        onClicked: {
            root.problems = root.viewModel.sayHowYouAre({
                sleep: sleep.text, soreness: soreness.current, pain: pain.current, region: region.current,
                sharp: signs.chosen.indexOf(0) >= 0, limping: signs.chosen.indexOf(1) >= 0,
                hamstring: signs.chosen.indexOf(2) >= 0, refused: refusal.chosen.length > 0, mass: mass.text
            })
            if (Object.keys(root.problems).length === 0)
                root.close()
        }
    }
}
