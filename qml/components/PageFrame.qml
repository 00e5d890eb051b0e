import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// A page: title and lead on top, then a column that scrolls, then, if there are any, actions that stay in reach. What
// stands in `side` follows below, and beside it where the window is wide.
Item {
    id: page

    required property string title
    property string aside
    property string lead
    property string leadNote
    property bool canGoBack: false
    default property alias content: column.data
    property alias side: sideColumn.data
    property alias actions: actionColumn.data
    property bool hasSide: false

    readonly property alias scroller: scroll
    readonly property bool beside: hasSide && Theme.holdsTwo(width)

    signal back()

    Rectangle {
        anchors.fill: parent
        color: Theme.ground
    }

    Flickable {
        id: scroll
        objectName: "scroll"
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: actionArea.top
        clip: true
        contentWidth: width
        contentHeight: Math.max(column.y + column.implicitHeight, page.hasSide ? sideColumn.y + sideColumn.implicitHeight : 0) + Theme.margin
        boundsBehavior: Flickable.StopAtBounds

        ScrollBar.vertical: ScrollBar { policy: scroll.contentHeight > scroll.height + 1 ? ScrollBar.AsNeeded : ScrollBar.AlwaysOff }

        ColumnLayout {
            id: column
            x: Math.max(Theme.margin, (scroll.width - (page.beside ? 2 * width + Theme.margin : width)) / 2)
            y: Theme.margin
            width: Math.min((scroll.width - (page.beside ? 3 : 2) * Theme.margin) / (page.beside ? 2 : 1), page.beside ? 600 : 680)
            spacing: Theme.gap

            ColumnLayout {
                id: head
                spacing: 2

                RowLayout {
                    spacing: 4

                    IconButton {
                        objectName: "back"
                        visible: page.canGoBack
                        label: qsTr("Back")
                        sign: Glyph.Back
                        onClicked: page.back()
                        Layout.leftMargin: -14
                    }
                    BodyText {
                        objectName: "title"
                        text: page.title
                        font.pixelSize: Theme.titleSize
                        font.weight: Font.DemiBold
                        Layout.fillWidth: true
                        Accessible.role: Accessible.Heading
                    }
                    NoteText {
                        text: page.aside
                        visible: page.aside !== "" && !Theme.large
                        Layout.alignment: Qt.AlignBaseline
                    }
                }
                NoteText {
                    text: page.aside
                    visible: page.aside !== "" && Theme.large
                    Layout.fillWidth: true
                }
                GridLayout {
                    columns: Theme.large ? 1 : 2
                    columnSpacing: 10
                    rowSpacing: 2
                    visible: page.lead !== "" || page.leadNote !== ""

                    BodyText {
                        text: page.lead
                        font.weight: Font.Medium
                        visible: text !== ""
                        wrapMode: Theme.large ? Text.Wrap : Text.NoWrap
                        Layout.fillWidth: Theme.large
                    }
                    NoteText {
                        text: page.leadNote
                        visible: text !== ""
                        Layout.fillWidth: true
                    }
                }
            }
        }
        ColumnLayout {
            id: sideColumn
            visible: page.hasSide
            x: page.beside ? column.x + column.width + Theme.margin : column.x
            y: column.y + (page.beside ? head.height : column.implicitHeight) + Theme.gap
            width: column.width
            spacing: Theme.gap
        }
    }

    KeepInSight {
        scroll: scroll
        active: page.visible
    }

    Rectangle {
        id: actionArea
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        height: actionColumn.implicitHeight > 0 ? actionColumn.implicitHeight + 2 * Theme.smallGap : 0
        color: Theme.ground

        ColumnLayout {
            id: actionColumn
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            anchors.leftMargin: Theme.margin
            anchors.rightMargin: Theme.margin
            spacing: Theme.smallGap
        }
    }
}
