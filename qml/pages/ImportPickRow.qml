import QtQuick
import Fleetrung

// A word of the file and what it was taken for.
RowButton {
    required property int index
    required property bool settled

    required title
    required detail

    sign: settled ? Glyph.Check : Glyph.Caution
    tone: settled ? Theme.good : Theme.caution
}
