import QtQuick
import QtQuick.Layouts
import Fleetrung

// Words to read.
Sheet {
    id: root

    required property string text

    BodyText {
        objectName: "sheetText"
        text: root.text
        lineHeight: 1.2
        Layout.fillWidth: true
    }
}
