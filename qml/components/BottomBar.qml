import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// The five places: along the lower edge, or upright at the side where height is short.
Rectangle {
    id: bar

    property int current: 0
    property bool upright: false

    signal chosen(int index)

    readonly property list<QtObject> places: [
        QtObject { readonly property string name: qsTr("Bench"); readonly property int sign: Glyph.Bench },
        QtObject { readonly property string name: qsTr("Ladder"); readonly property int sign: Glyph.Ladder },
        QtObject { readonly property string name: qsTr("Track"); readonly property int sign: Glyph.Track },
        QtObject { readonly property string name: qsTr("Trends"); readonly property int sign: Glyph.Trends },
        QtObject { readonly property string name: qsTr("Squad"); readonly property int sign: Glyph.Squad }
    ]

    // Five words share the width: they grow by a third at most, the signs beside them by as much.
    readonly property real growth: Math.min(Theme.textScale, 1.3)

    implicitHeight: 68 + 16 * (growth - 1)
    implicitWidth: 84 * growth
    color: Theme.card
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Places")

    GridLayout {
        anchors.fill: parent
        anchors.leftMargin: 4
        anchors.rightMargin: 4
        columns: bar.upright ? 1 : bar.places.length
        columnSpacing: 0
        rowSpacing: 0

        Repeater {
            model: bar.places

            AbstractButton {
                id: place

                required property int index
                required property string name
                required property int sign
                readonly property bool here: place.index === bar.current // qmllint disable unqualified

                objectName: "place" + place.index
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                Layout.preferredHeight: 1
                Accessible.role: Accessible.PageTab
                Accessible.name: place.name
                Accessible.selected: place.here
                onClicked: bar.chosen(place.index) // qmllint disable unqualified

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
                        Layout.preferredWidth: 26 * bar.growth // qmllint disable unqualified
                        Layout.preferredHeight: 26 * bar.growth // qmllint disable unqualified
                    }
                    BodyText {
                        text: place.name
                        color: place.here ? Theme.ink : Theme.muted
                        font.pixelSize: 13 * bar.growth // qmllint disable unqualified
                        font.weight: place.here ? Font.DemiBold : Font.Normal
                        fontSizeMode: Text.HorizontalFit
                        minimumPixelSize: 11
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
