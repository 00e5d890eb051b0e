import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

Sheet {
    id: root

    required property SquadViewModel viewModel
    required property string massUnit
    required property string lengthUnit
    property string key
    property var problems: ({})

    title: key === "" ? qsTr("Add an athlete") : qsTr("Edit the athlete")
    onAboutToShow: {
        const form = viewModel.form(key)
        problems = {}
        name.text = form.name
        born.text = form.born
        mass.text = form.mass
        stature.text = form.stature
        years.text = form.years
        event.text = form.event
        group.text = form.group
        consent.current = form.consent ? 1 : 0
    }

    Field {
        id: name
        objectName: "name"
        label: qsTr("Name")
        problem: root.problems.name ?? ""
    }
    Field {
        id: born
        objectName: "born"
        label: qsTr("Born, like %1").arg(root.viewModel.dayExample)
        problem: root.problems.born ?? ""
    }
    Field {
        id: mass
        objectName: "mass"
        label: qsTr("Body mass, %1 (optional)").arg(root.massUnit)
        number: true
        problem: root.problems.mass ?? ""
    }
    Field {
        id: stature
        objectName: "stature"
        label: qsTr("Stature, %1 (optional)").arg(root.lengthUnit)
        number: true
        problem: root.problems.stature ?? ""
    }
    Field {
        id: years
        objectName: "years"
        label: qsTr("Years of regular lifting (optional)")
        number: true
        problem: root.problems.years ?? ""
    }
    Field {
        id: event
        objectName: "event"
        label: qsTr("Event (optional)")
        hint: qsTr("200 m, long jump")
    }
    Field {
        id: group
        objectName: "group"
        label: qsTr("Training group (optional)")
        hint: qsTr("sprint 2")
    }
    Choices {
        id: consent
        objectName: "consent"
        label: qsTr("Under 18: has a guardian agreed?")
        options: [qsTr("No, or not needed"), qsTr("Yes")]
        onChosen: index => current = index
    }
    NoteText {
        objectName: "consentProblem"
        visible: text !== ""
        text: root.problems.consent ?? ""
        color: Theme.stop
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
    }
    ActionButton {
        objectName: "deleteAthlete"
        visible: root.key !== ""
        sign: Glyph.Bin
        text: qsTr("Move to the archive")
        onClicked: {
            root.close()
            root.viewModel.remove(root.key)
        }
    }

    actions: ActionButton {
        objectName: "saveAthlete"
        main: true
        text: qsTr("Save")
        onClicked: {
            root.problems = root.viewModel.save(root.key, {
                name: name.text, born: born.text, mass: mass.text, stature: stature.text, years: years.text,
                event: event.text, group: group.text, consent: consent.current === 1
            })
            if (Object.keys(root.problems).length === 0)
                root.close()
        }
    }
}
