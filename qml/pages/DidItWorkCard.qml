import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// Whether bar and sprint moved together: the sentence, every lag, what chance alone gives. Never called cause.
Card {
    id: root

    required property DidItWorkViewModel viewModel

    padding: 12

    AskedHeading {
        text: qsTr("Did it work?")
        topics: ["did-it-work"]
    }
    BodyText {
        objectName: "verdict"
        text: root.viewModel.verdict
        color: Theme.accent
        font.weight: Font.DemiBold
        Layout.fillWidth: true
    }
    BodyText {
        objectName: "sentence"
        text: root.viewModel.sentence
        font.pixelSize: Theme.scaled(15)
        lineHeight: 1.15
        Layout.fillWidth: true
    }
    BodyText {
        objectName: "toLog"
        text: root.viewModel.toLog
        visible: text !== ""
        font.pixelSize: Theme.scaled(15)
        lineHeight: 1.15
        Layout.fillWidth: true
    }
    Picture {
        objectName: "lagPicture"
        visible: root.viewModel.hasPicture
        plot: root.viewModel.picture
        textSize: Theme.scaled(12)
    }
    Repeater {
        model: root.viewModel.lags

        ListRow {
            required title
            required value
            required detail
            objectName: "lag"
        }
    }
    NoteText {
        objectName: "chance"
        text: root.viewModel.chance
        visible: text !== ""
        Layout.fillWidth: true
    }
    NoteText {
        objectName: "noProof"
        text: root.viewModel.noProof
        color: Theme.ink
        font.weight: Font.DemiBold
        Layout.fillWidth: true
    }
    ActionButton {
        objectName: "howJudged"
        text: qsTr("How this is judged")
        onClicked: explanation.open()
    }

    TextSheet {
        id: explanation
        objectName: "howJudgedSheet"
        title: qsTr("How this is judged")
        text: root.viewModel.explanation
    }
}
