import QtQuick
import Fleetrung

BodyText {
    font.pixelSize: Theme.headingSize
    font.weight: Font.DemiBold
    Accessible.role: Accessible.Heading
}
