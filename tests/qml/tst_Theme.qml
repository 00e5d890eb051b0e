import QtQuick
import QtTest
import Fleetrung

TestCase {
    name: "Theme"

    // WCAG 2.2, relative luminance and contrast ratio.
    function luminance(c: color): real {
        const linear = v => v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4)
        return 0.2126 * linear(c.r) + 0.7152 * linear(c.g) + 0.0722 * linear(c.b)
    }

    function contrast(a: color, b: color): real {
        const one = luminance(a), other = luminance(b)
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05)
    }

    // Published example: black on white is 21 : 1.
    function test_contrastOfBlackOnWhite() {
        fuzzyCompare(contrast(Qt.rgba(0, 0, 0, 1), Qt.rgba(1, 1, 1, 1)), 21, 1e-9)
    }

    function test_textIsReadableInBothPalettes_data() {
        return [{ tag: "dark", dark: true }, { tag: "light", dark: false }]
    }

    function test_textIsReadableInBothPalettes(data) {
        Theme.dark = data.dark
        const texts = ["ink", "muted", "accent", "good", "caution", "stop"]
        for (const text of texts)
            for (const ground of ["ground", "card"])
                verify(contrast(Theme[text], Theme[ground]) >= 4.5,
                       text + " on " + ground + ": " + contrast(Theme[text], Theme[ground]))
        verify(contrast(Theme.ink, Theme.raised) >= 4.5)
        verify(contrast(Theme.ink, Theme.band) >= 4.5)
        verify(contrast(Theme.wordOnAccent, Theme.accent) >= 4.5)
        verify(contrast(Theme.wordOnStop, Theme.stop) >= 4.5)
        verify(contrast(Theme.muted, Theme.card) >= 4.5)
        verify(contrast(Theme.outline, Theme.ground) >= 3, "outline: " + contrast(Theme.outline, Theme.ground))
        Theme.dark = true
    }
}
