import QtQuick
import QtQuick.Layouts
import Fleetrung

// A quiet surface that holds what belongs together.
Rectangle {
    id: card

    default property alias content: column.data
    property int padding: Theme.cardPadding
    property alias spacing: column.spacing

    implicitWidth: column.implicitWidth + 2 * padding
    implicitHeight: column.implicitHeight + 2 * padding
    radius: Theme.cardRadius
    color: Theme.card
    Layout.fillWidth: true

    ColumnLayout {
        id: column
        anchors.fill: parent
        anchors.margins: card.padding
        spacing: Theme.smallGap
    }
}
