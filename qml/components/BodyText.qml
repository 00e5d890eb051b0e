import QtQuick
import QtQuick.Controls.Basic
import Fleetrung

// Text that is read; wraps rather than cuts.
Label {
    color: Theme.ink
    font.family: Theme.family
    font.pixelSize: Theme.bodySize
    wrapMode: Text.Wrap
    Accessible.name: text
}
