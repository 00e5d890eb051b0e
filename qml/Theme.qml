pragma Singleton

import QtQuick

// Every colour, size and distance of the interface. No other file holds a colour.
// Okabe-Ito hues on near-black or warm white. In the light palette the hues are darkened until text in them has a
// contrast of 4.5:1 on ground and card (tests/qml/tst_Theme.qml computes it for both palettes).
QtObject {
    id: theme

    property bool dark: true
    property real textScale: 1
    property real keyboard: 0 // covered from the window's lower edge

    readonly property color ground: dark ? "#101315" : "#FAF7F0"
    readonly property color card: dark ? "#1A1F23" : "#F0EBE0"
    readonly property color raised: dark ? "#262D33" : "#E2DBCD"
    readonly property color outline: dark ? "#6B757D" : "#837C70"
    readonly property color hairline: dark ? "#2E363C" : "#D8D0C1"
    readonly property color ink: dark ? "#F3EFE8" : "#16191C"
    readonly property color muted: dark ? "#9BA5AD" : "#565E65"
    readonly property color accent: dark ? "#56B4E9" : "#005F96"
    readonly property color wordOnAccent: dark ? "#0B1216" : "#FFFFFF"
    readonly property color good: dark ? "#2FB58E" : "#00684A"
    readonly property color caution: dark ? "#E69F00" : "#7F4F00"
    readonly property color stop: dark ? "#FF8A4C" : "#A33F00"
    readonly property color wordOnStop: dark ? "#160B04" : "#FFFFFF"
    readonly property color band: dark ? "#24404F" : "#C6DFF0"
    readonly property color scrim: dark ? "#B0000000" : "#80000000"

    readonly property string family: "Inter"
    readonly property int titleSize: scaled(26)
    readonly property int headingSize: scaled(20)
    readonly property int valueSize: scaled(19)
    readonly property int bodySize: scaled(16)
    readonly property int noteSize: scaled(14)
    readonly property int smallSize: scaled(13)

    readonly property bool large: textScale > 1.3

    // Room for two columns beside each other.
    function holdsTwo(width: real): bool {
        return width >= (theme.large ? 1000 : 720)
    }

    readonly property int margin: 20
    readonly property int gap: 14
    readonly property int smallGap: 8
    readonly property int cardPadding: 16
    readonly property int cardRadius: 16
    readonly property int touchTarget: 48
    readonly property int mainButton: 60

    function scaled(pixels: real): int {
        return Math.round(pixels * theme.textScale)
    }
}
