import Fleetrung

// What explains a number or a heading.
BodyText {
    color: Theme.muted
    font.pixelSize: Theme.noteSize
}
