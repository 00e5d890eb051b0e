import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// A page: title and lead on top, then a column that scrolls, then, if there are any, actions that stay in reach.
Item {
    id: page

    required property string title
    property string aside
    property string lead
    property string leadNote
    property bool canGoBack: false
    default property alias content: column.data
    property alias actions: actionColumn.data

    readonly property alias scroller: scroll

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
        contentHeight: column.implicitHeight + column.y + Theme.margin
        boundsBehavior: Flickable.StopAtBounds

        ScrollBar.vertical: ScrollBar { policy: scroll.contentHeight > scroll.height + 1 ? ScrollBar.AsNeeded : ScrollBar.AlwaysOff }

        ColumnLayout {
            id: column
            x: Math.max(Theme.margin, (scroll.width - width) / 2)
            y: Theme.margin
            width: Math.min(scroll.width - 2 * Theme.margin, 680)
            spacing: Theme.gap

            ColumnLayout {
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
