import QtQuick
import QtQuick.Layouts
import Fleetrung

// The one number that matters, read from two metres: its digits are over a fifth of the page's width high.
ColumnLayout {
    id: big

    required property string value
    required property string unit

    spacing: -Math.round(number.font.pixelSize * 0.06)
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("%1 %2").arg(value).arg(unit)

    BodyText {
        id: number
        objectName: "bigNumber"
        text: big.value
        font.pixelSize: Math.min(big.width * 0.38, 220)
        font.weight: Font.Bold
        font.letterSpacing: -4
        fontSizeMode: Text.HorizontalFit
        wrapMode: Text.NoWrap
        horizontalAlignment: Text.AlignHCenter
        lineHeight: 0.86
        Layout.fillWidth: true
        Accessible.ignored: true
    }
    NoteText {
        text: big.unit
        font.pixelSize: Theme.bodySize
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
        Accessible.ignored: true
    }
}
