import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// What the change of the season does to the plan, or why it cannot be.
Card {
    id: root

    required property SeasonViewModel season

    color: Theme.ground

    HeadingText {
        text: qsTr("What this does to the plan")
        font.pixelSize: Theme.valueSize
        Layout.fillWidth: true
    }
    NoteText {
        objectName: "seasonProblem"
        text: root.season.problem
        visible: text !== ""
        color: Theme.stop
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
    }
    Repeater {
        model: root.season.consequences

        MarkedLine {
            objectName: "consequence"
            required caution
        }
    }
}
