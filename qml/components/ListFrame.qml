import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Fleetrung

// A page that is a long list: the title and what stands above scroll with it, rows are made only where they are seen.
Item {
    id: page

    required property string title
    property string aside
    property alias model: list.model
    property alias delegate: list.delegate
    property alias section: list.section
    property alias head: headColumn.data
    property alias foot: footColumn.data

    Rectangle {
        anchors.fill: parent
        color: Theme.ground
    }
    ListView {
        id: list
        objectName: "scroll"
        anchors.horizontalCenter: parent.horizontalCenter
        width: Math.min(parent.width - 2 * Theme.margin, 680)
        height: parent.height
        spacing: Theme.smallGap
        boundsBehavior: Flickable.StopAtBounds
        reuseItems: true
        cacheBuffer: 400

        ScrollBar.vertical: ScrollBar { policy: list.contentHeight > list.height + 1 ? ScrollBar.AsNeeded : ScrollBar.AlwaysOff }

        header: Item {
            width: parent ? parent.width : 0
            height: headColumn.implicitHeight + Theme.margin + Theme.gap // qmllint disable unqualified
        }
        footer: Item {
            width: parent ? parent.width : 0
            height: footColumn.implicitHeight + 2 * Theme.margin // qmllint disable unqualified
        }
    }
    // A taller head (larger text) would push the title out of sight. Not within the change itself: the list may be in
    // the making.
    Timer {
        id: settled
        interval: 0
        onTriggered: list.positionViewAtBeginning()
    }
    ColumnLayout {
        id: headColumn
        parent: list.headerItem
        onImplicitHeightChanged: settled.restart()
        y: Theme.margin
        width: list.width
        spacing: Theme.gap

        GridLayout {
            columns: Theme.large ? 1 : 2

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
                visible: text !== ""
                Layout.alignment: Qt.AlignBaseline
            }
        }
    }
    ColumnLayout {
        id: footColumn
        parent: list.footerItem
        y: Theme.margin
        width: list.width
        spacing: Theme.gap
    }
}
