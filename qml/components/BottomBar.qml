import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// The five places.
Rectangle {
    id: bar

    property int current: 0

    signal chosen(int index)

    readonly property list<QtObject> places: [
        QtObject { readonly property string name: qsTr("Bench"); readonly property int sign: Glyph.Bench },
        QtObject { readonly property string name: qsTr("Ladder"); readonly property int sign: Glyph.Ladder },
        QtObject { readonly property string name: qsTr("Track"); readonly property int sign: Glyph.Track },
        QtObject { readonly property string name: qsTr("Trends"); readonly property int sign: Glyph.Trends },
        QtObject { readonly property string name: qsTr("Squad"); readonly property int sign: Glyph.Squad }
    ]

    implicitHeight: 68
    color: Theme.card
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Places")

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: 4
        anchors.rightMargin: 4
        spacing: 0

        Repeater {
            model: bar.places

            AbstractButton {
                id: place

                required property int index
                required property string name
                required property int sign
                readonly property bool here: index === bar.current

                objectName: "place" + index
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                Accessible.role: Accessible.PageTab
                Accessible.name: name
                Accessible.selected: here
                onClicked: bar.chosen(index)

                background: Rectangle {
                    color: place.visualFocus || place.down ? Theme.raised : "transparent"
                    radius: 8
                }
                contentItem: ColumnLayout {
                    spacing: 2

                    Rectangle {
                        implicitWidth: 32
                        implicitHeight: 3
                        radius: 1.5
                        color: Theme.accent
                        opacity: place.here ? 1 : 0
                        Layout.alignment: Qt.AlignHCenter
                    }
                    Glyph {
                        sign: place.sign
                        color: place.here ? Theme.accent : Theme.muted
                        Layout.alignment: Qt.AlignHCenter
                        Layout.preferredWidth: 26
                        Layout.preferredHeight: 26
                    }
                    BodyText {
                        text: place.name
                        color: place.here ? Theme.ink : Theme.muted
                        font.pixelSize: Theme.smallSize
                        font.weight: place.here ? Font.DemiBold : Font.Normal
                        fontSizeMode: Text.HorizontalFit
                        minimumPixelSize: 12
                        wrapMode: Text.NoWrap
                        horizontalAlignment: Text.AlignHCenter
                        Layout.fillWidth: true
                        Accessible.ignored: true
                    }
                    Item { Layout.fillHeight: true }
                }
            }
        }
    }
}
