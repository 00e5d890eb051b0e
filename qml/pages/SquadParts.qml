import QtQuick
import Fleetrung

// The three parts of Squad.
Choices {
    objectName: "parts"
    options: [qsTr("Athletes"), qsTr("Today"), qsTr("This device")]
}
