import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// What was recognised in a file: the open question first, then the rows as they will be read, names, columns, bad rows.
ColumnLayout {
    id: root

    required property ImportViewModel viewModel

    // What is open comes before the rows, what was recognised after them.
    readonly property bool asks: viewModel.question !== ""

    signal picking()

    spacing: Theme.gap
    Layout.fillWidth: true

    BodyText {
        objectName: "importFile"
        text: root.viewModel.fileName
        visible: text !== ""
        font.weight: Font.DemiBold
        wrapMode: Text.WrapAnywhere
        Layout.fillWidth: true
    }
    MarkedLine {
        objectName: "importQuestion"
        visible: text !== ""
        caution: true
        text: root.viewModel.question
    }
    Field {
        objectName: "importDay"
        visible: root.viewModel.dayAsked
        label: qsTr("Day of all rows, like %1").arg(root.viewModel.dayExample)
        problem: root.viewModel.dayProblem
        onAccepted: root.viewModel.setDay(text)
        onTextChanged: if (text.length === 10) root.viewModel.setDay(text)
    }
    ImportChoices {
        viewModel: root.viewModel
        shown: root.asks
        visible: shown
    }
    HeadingText {
        visible: root.viewModel.preview.count > 0
        text: qsTr("As it will be read")
        Layout.fillWidth: true
    }
    Repeater {
        model: root.viewModel.preview

        Card {
            id: row

            required property string title
            required property string detail
            required property string value

            objectName: "previewRow"
            color: Theme.ground
            padding: 12

            ListRow {
                title: row.title
                detail: row.detail
                value: row.value
            }
        }
    }
    ImportChoices {
        viewModel: root.viewModel
        shown: !root.asks
        visible: shown
    }
    HeadingText {
        visible: root.viewModel.names.count > 0
        text: qsTr("Athletes")
        Layout.fillWidth: true
    }
    Repeater {
        model: root.viewModel.names

        ImportPickRow {
            objectName: "name" + index
            onClicked: {
                root.viewModel.openName(index) // qmllint disable unqualified
                root.picking() // qmllint disable unqualified
            }
        }
    }
    HeadingText {
        visible: root.viewModel.lifts.count > 0
        text: qsTr("Lifts")
        Layout.fillWidth: true
    }
    Repeater {
        model: root.viewModel.lifts

        ImportPickRow {
            objectName: "lift" + index
            onClicked: {
                root.viewModel.openLift(index) // qmllint disable unqualified
                root.picking() // qmllint disable unqualified
            }
        }
    }
    HeadingText {
        visible: root.viewModel.bad.count > 0
        text: qsTr("Rows that cannot be read")
        Layout.fillWidth: true
    }
    Repeater {
        model: root.viewModel.bad

        MarkedLine {
            required property string title
            required property string detail

            objectName: "badRow"
            caution: true
            text: detail === "" ? title : qsTr("%1: %2").arg(title).arg(detail)
        }
    }
    HeadingText {
        text: qsTr("Columns")
        Layout.fillWidth: true
    }
    Repeater {
        model: root.viewModel.columns

        RowButton {
            required property int index
            required property bool used

            required title
            required detail

            objectName: "column" + index
            sign: used ? Glyph.Check : Glyph.Dash
            tone: used ? Theme.good : Theme.muted
            onClicked: {
                root.viewModel.openColumn(index) // qmllint disable unqualified
                root.picking() // qmllint disable unqualified
            }
        }
    }
}
