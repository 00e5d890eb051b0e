import QtQuick
import QtQuick.Layouts
import Fleetrung

// A heading over numbers, with the button that explains them.
RowLayout {
    id: row

    required property string text
    required property var topics

    spacing: Theme.smallGap
    Layout.fillWidth: true

    HeadingText {
        text: row.text
        font.pixelSize: Theme.valueSize
        Layout.fillWidth: true
    }
    ExplainButton {
        topics: row.topics
    }
}
