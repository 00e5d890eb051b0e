import QtQuick
import QtQuick.Layouts
import Fleetrung

// The filters hide everything: says so, and takes them off.
ColumnLayout {
    id: nothing

    required property string text

    signal cleared()

    visible: text !== ""
    spacing: Theme.smallGap
    Layout.fillWidth: true

    BodyText {
        objectName: "nothingText"
        text: nothing.text
        Layout.fillWidth: true
    }
    ActionButton {
        objectName: "clearFilters"
        text: qsTr("Clear the filters")
        onClicked: nothing.cleared()
    }
}
