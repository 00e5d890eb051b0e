import QtQuick
import QtQuick.Layouts
import Fleetrung

// A set that was cut off when the program ended: kept or dropped, as the athlete says.
Card {
    id: root

    required property string text
    property bool canKeep: true

    signal kept()
    signal dropped()

    visible: text !== ""
    border.width: 1
    border.color: Theme.caution

    RowLayout {
        spacing: 10

        Glyph {
            sign: Glyph.Caution
            color: Theme.caution
            Layout.preferredWidth: Theme.scaled(20)
            Layout.preferredHeight: Theme.scaled(20)
            Layout.alignment: Qt.AlignTop
        }
        BodyText {
            objectName: "cutOffText"
            text: root.text
            Layout.fillWidth: true
        }
    }
    GridLayout {
        columns: 2
        columnSpacing: 12

        ActionButton {
            objectName: "keepCutOff"
            visible: root.canKeep
            main: true
            text: qsTr("Keep")
            onClicked: root.kept()
        }
        ActionButton {
            objectName: "dropCutOff"
            text: qsTr("Drop")
            implicitHeight: Math.max(Theme.mainButton, implicitContentHeight + 2 * padding)
            onClicked: root.dropped()
        }
    }
}
