import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// How this device shows things.
Card {
    id: root

    required property Preferences preferences

    spacing: Theme.gap

    HeadingText {
        text: qsTr("This device")
        Layout.fillWidth: true
    }
    Choices {
        objectName: "language"
        label: qsTr("Language")
        options: root.preferences.languages
        current: root.preferences.language
        onChosen: index => root.preferences.language = index
    }
    Choices {
        objectName: "decimalMark"
        label: qsTr("Decimal mark")
        options: [qsTr("As the language"), qsTr("Point, 1.85"), qsTr("Comma, 1,85")]
        current: root.preferences.decimalMark
        onChosen: index => root.preferences.decimalMark = index
    }
    Choices {
        objectName: "weekStart"
        label: qsTr("Weeks of the calendar begin on")
        options: [qsTr("As the language"), qsTr("Monday"), qsTr("Sunday")]
        current: root.preferences.weekStart
        onChosen: index => root.preferences.weekStart = index
    }
    Choices {
        objectName: "massChoice"
        label: qsTr("Loads")
        options: [qsTr("Kilograms"), qsTr("Pounds")]
        current: root.preferences.pounds ? 1 : 0
        onChosen: index => root.preferences.pounds = index === 1
    }
    Choices {
        objectName: "barChoice"
        label: qsTr("The bar")
        options: root.preferences.bars
        current: root.preferences.bar
        onChosen: index => root.preferences.bar = index
    }
    Choices {
        objectName: "lengthChoice"
        label: qsTr("Ranges and boxes")
        options: [qsTr("Centimetres"), qsTr("Inches")]
        current: root.preferences.inches ? 1 : 0
        onChosen: index => root.preferences.inches = index === 1
    }
    Choices {
        objectName: "sound"
        label: qsTr("Sound on Bench")
        options: [qsTr("Silent"), qsTr("Tones"), qsTr("Voice")]
        current: root.preferences.sound
        onChosen: index => root.preferences.sound = index
    }
    Choices {
        objectName: "shakes"
        label: qsTr("Shakes in the hand, where the device can")
        options: [qsTr("On"), qsTr("Off")]
        current: root.preferences.shakes ? 0 : 1
        onChosen: index => root.preferences.shakes = index === 0
    }
    Choices {
        objectName: "setsByThemselves"
        label: qsTr("Sets begin when the bar moves, and end when it has rested for 15 s")
        options: [qsTr("On"), qsTr("Off")]
        current: root.preferences.setsByThemselves ? 0 : 1
        onChosen: index => root.preferences.setsByThemselves = index === 0
    }
    Choices {
        objectName: "appearance"
        label: qsTr("Light or dark")
        options: [qsTr("As the device"), qsTr("Dark"), qsTr("Light")]
        current: root.preferences.appearance
        onChosen: index => root.preferences.appearance = index
    }
    Choices {
        objectName: "textSize"
        label: qsTr("Text size")
        options: [qsTr("Normal"), qsTr("150 %"), qsTr("200 %")]
        current: root.preferences.textScale < 1.25 ? 0 : root.preferences.textScale < 1.75 ? 1 : 2
        onChosen: index => root.preferences.textScale = [1, 1.5, 2][index]
    }
}
