import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Templates as T
import QtQuick.Layouts
import Fleetrung

// A form or a question that comes up from below. It scrolls, keeps the line being typed in above the keyboard, and what
// ends it (`actions`) in reach of the thumb however large the text is.
Popup {
    id: sheet

    required property string title
    default property alias content: column.data
    property alias actions: actionColumn.data
    property bool tall: false // as high as may be: what it shows changes, and it should not jump

    parent: T.Overlay.overlay
    width: parent ? Math.min(parent.width, 640) : 0
    height: parent ? Math.min(parent.height - 28 - Theme.keyboard, tall ? parent.height : implicitHeight) : 0
    x: parent ? (parent.width - width) / 2 : 0
    y: parent ? parent.height - height - Theme.keyboard : 0
    padding: 0
    topPadding: Theme.gap
    bottomPadding: actionColumn.implicitHeight > 0 ? Theme.smallGap : 0
    modal: true
    focus: true
    closePolicy: Popup.CloseOnEscape | Popup.CloseOnPressOutside
    implicitHeight: head.implicitHeight + scroll.contentHeight + 2 * Theme.gap + actionColumn.implicitHeight + topPadding + bottomPadding

    T.Overlay.modal: Rectangle { color: Theme.scrim }

    background: Rectangle {
        color: Theme.card
        radius: 22

        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: parent.radius
            color: parent.color
        }
    }

    contentItem: ColumnLayout {
        spacing: Theme.gap

        RowLayout {
            id: head
            Layout.leftMargin: Theme.margin
            Layout.rightMargin: 8

            HeadingText {
                text: sheet.title
                Layout.fillWidth: true
            }
            IconButton {
                objectName: "closeSheet"
                label: qsTr("Close")
                sign: Glyph.Cross
                onClicked: sheet.close()
            }
        }
        Flickable {
            id: scroll
            objectName: "sheetScroll"
            clip: true
            contentHeight: column.implicitHeight + (actionColumn.implicitHeight > 0 ? 4 : Theme.margin)
            contentWidth: width
            boundsBehavior: Flickable.StopAtBounds
            Layout.fillWidth: true
            Layout.fillHeight: true

            ScrollBar.vertical: ScrollBar { policy: scroll.contentHeight > scroll.height + 1 ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff }

            KeepInSight {
                scroll: scroll
                active: sheet.opened
            }
            ColumnLayout {
                id: column
                x: Theme.margin
                width: scroll.width - 2 * Theme.margin
                spacing: Theme.gap
            }
        }
        ColumnLayout {
            id: actionColumn
            spacing: Theme.smallGap
            visible: children.length > 0
            Layout.leftMargin: Theme.margin
            Layout.rightMargin: Theme.margin
        }
    }
}
