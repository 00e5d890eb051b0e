import QtQuick
import QtQuick.Layouts
import Fleetrung

// Shown at the first start, and on Squad whenever wanted.
Sheet {
    id: root

    signal understood()

    readonly property list<string> points: [
        qsTr("This is not medical advice. Work with a licensed coach or clinician; local rules and facility codes come first."),
        qsTr("Pain, an injury or pregnancy: ask a clinician before you train by this plan."),
        qsTr("Under 18: only with a guardian's consent and a clearance."),
        qsTr("Heavy lifts over a short range carry more load than you are used to: safety bars set, and a spotter."),
        qsTr("Drop jumps: few contacts, days between, and none when you are sore."),
        qsTr("An estimated one-repetition maximum is an estimate. Never load it to see whether it is right.")
    ]

    objectName: "cautions"
    title: qsTr("Before you start")

    Repeater {
        model: root.points

        RowLayout {
            id: point

            required property string modelData

            spacing: 12

            Glyph {
                sign: Glyph.Caution
                color: Theme.caution
                Layout.preferredWidth: 22
                Layout.preferredHeight: 22
                Layout.alignment: Qt.AlignTop
            }
            BodyText {
                text: point.modelData
                Layout.fillWidth: true
            }
        }
    }
    NoteText {
        text: qsTr("That shorter ranges carry over better to sprinting is the working premise of this program. There is evidence on both sides; your own stopwatch decides.")
        Layout.fillWidth: true
    }
    ActionButton {
        objectName: "understood"
        main: true
        text: qsTr("I have read this")
        onClicked: root.understood()
    }
}
