import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Plot

// One of our pictures in the page's look.
PlotItem {
    dark: Theme.dark
    Layout.fillWidth: true
    Layout.minimumHeight: 80 // a layout without height would not give it a width to find its own height from
}
