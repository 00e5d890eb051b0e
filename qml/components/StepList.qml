import QtQuick
import QtQuick.Layouts
import Fleetrung

// A few things to do, in order.
ColumnLayout {
    id: root

    required property var steps // list of strings

    spacing: 10
    Layout.fillWidth: true

    Repeater {
        model: root.steps

        RowLayout {
            id: step

            required property int index
            required property string modelData

            spacing: 12
            Layout.fillWidth: true
            Accessible.role: Accessible.StaticText
            Accessible.name: qsTr("%1. %2").arg(step.index + 1).arg(step.modelData)

            Rectangle {
                implicitWidth: Theme.scaled(32)
                implicitHeight: implicitWidth
                radius: width / 2
                color: Theme.band
                Layout.alignment: Qt.AlignTop

                BodyText {
                    anchors.centerIn: parent
                    text: step.index + 1 // qmllint disable unqualified
                    font.weight: Font.DemiBold
                    Accessible.ignored: true
                }
            }
            BodyText {
                text: step.modelData
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignVCenter
                Accessible.ignored: true
            }
        }
    }
}
