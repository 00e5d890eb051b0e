import QtQuick
import Fleetrung
import Fleetrung.Views

Sheet {
    id: root

    required property TrackViewModel viewModel
    property var problems: ({})
    readonly property bool drop: kind.current === 0
    readonly property bool along: kind.current >= 3

    title: qsTr("Add a jump")
    onAboutToShow: {
        problems = {}
        day.text = viewModel.today
        contact.text = ""
        flight.text = ""
        height.text = ""
        distance.text = ""
    }

    Choices {
        id: kind
        objectName: "jumpKind"
        label: qsTr("Kind of jump")
        options: [qsTr("Drop jump"), qsTr("Counter-movement"), qsTr("Squat jump"), qsTr("Standing long"), qsTr("Bounds")]
        onChosen: index => current = index
    }
    Field {
        id: box
        objectName: "box"
        visible: root.drop
        label: qsTr("Box height, %1").arg(root.viewModel.lengthUnit)
        number: true
        problem: root.problems.box ?? ""
    }
    Field {
        id: contact
        objectName: "contact"
        visible: root.drop
        label: qsTr("Contact time, ms")
        number: true
        problem: root.problems.contact ?? ""
    }
    Field {
        id: flight
        objectName: "flight"
        visible: !root.along
        label: qsTr("Flight time, ms (or the height below)")
        number: true
        problem: root.problems.flight ?? ""
    }
    Field {
        id: height
        objectName: "height"
        visible: !root.along
        label: qsTr("Height, %1").arg(root.viewModel.lengthUnit)
        number: true
        problem: root.problems.height ?? ""
    }
    Field {
        id: distance
        objectName: "jumpDistance"
        visible: root.along
        label: qsTr("Distance, m")
        number: true
        problem: root.problems.distance ?? ""
    }
    Field {
        id: day
        objectName: "day"
        label: qsTr("Day (year-month-day)")
        problem: root.problems.day ?? ""
    }

    actions: ActionButton {
        objectName: "saveJump"
        main: true
        text: qsTr("Save the jump")
        onClicked: {
            root.problems = root.viewModel.addJump({
                kind: kind.current, box: box.text, contact: contact.text, flight: flight.text,
                height: height.text, distance: distance.text, day: day.text
            })
            if (Object.keys(root.problems).length === 0)
                root.close()
        }
    }
}
