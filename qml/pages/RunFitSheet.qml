import QtQuick
import QtQuick.Layouts
import Fleetrung
import Fleetrung.Views

// One run: what its splits say, how sure that is, and how it compares.
Sheet {
    id: root

    required property RunFitViewModel run

    title: run.title
    tall: true

    RowLayout {
        spacing: Theme.gap

        NoteText {
            text: root.run.when
            Layout.fillWidth: true
        }
        BodyText {
            objectName: "runTime"
            text: root.run.time
            font.pixelSize: Theme.headingSize
            font.weight: Font.DemiBold
            wrapMode: Text.NoWrap
        }
        ExplainButton {
            topics: root.run.flyingStart ? ["flying-speed", "wind"] : ["top-speed", "force-power", "wind"]
        }
    }
    Repeater {
        model: root.run.facts

        NoteText {
            required property string modelData
            text: modelData
            Layout.fillWidth: true
        }
    }
    Card {
        visible: root.run.refused !== ""
        color: Theme.ground

        BodyText {
            objectName: "fitRefused"
            text: root.run.refused
            Layout.fillWidth: true
        }
    }
    Card {
        visible: root.run.numbers.count > 0
        color: Theme.ground
        spacing: 10

        Repeater {
            model: root.run.numbers

            NumberRow {
                objectName: "fitNumber"
            }
        }
    }
    ColumnLayout {
        visible: root.run.history.length > 0
        spacing: 2

        Repeater {
            model: root.run.history

            BodyText {
                required property string modelData
                objectName: "fitHistory"
                text: modelData
                font.pixelSize: Theme.scaled(15)
                Layout.fillWidth: true
            }
        }
    }
    TouchPicture {
        objectName: "fitCurve"
        visible: !root.run.curve.empty
        plot: root.run.curve
        onTouched: place => root.run.touchCurve(place)
        onStepped: by => root.run.stepSplit(by)
        onReleased: root.run.releaseSplit()
    }
    TouchedPoint {
        objectName: "touchedSplit"
        visible: !root.run.curve.empty
        hint: qsTr("Touch a split to read it.")
        text: root.run.splitText
        onStepped: by => root.run.stepSplit(by)
    }
    Repeater {
        model: root.run.notes

        MarkedLine {
            required property string modelData
            objectName: "fitNote"
            text: modelData
        }
    }
    ManyChoices {
        objectName: "useAll"
        visible: root.run.canUseAll
        label: qsTr("Splits that were left out")
        options: [qsTr("Use them anyway")]
        bound: true
        chosen: root.run.usesAll ? [0] : []
        onToggled: root.run.useAll(!root.run.usesAll)
    }
    HeadingText {
        text: qsTr("Splits against the fit")
        visible: !root.run.residuals.empty
        font.pixelSize: Theme.valueSize
        Layout.fillWidth: true
    }
    TouchPicture {
        objectName: "fitResiduals"
        visible: !root.run.residuals.empty
        plot: root.run.residuals
        onTouched: place => root.run.touchResiduals(place)
        onStepped: by => root.run.stepSplit(by)
        onReleased: root.run.releaseSplit()
    }
    BodyText {
        objectName: "touchedResidual"
        text: root.run.splitText
        visible: text !== ""
        font.pixelSize: Theme.scaled(15)
        Layout.fillWidth: true
    }
    HeadingText {
        text: qsTr("Force and power")
        visible: root.run.forceNote !== ""
        font.pixelSize: Theme.valueSize
        Layout.fillWidth: true
    }
    Card {
        visible: root.run.forces.count > 0
        color: Theme.ground
        spacing: 10

        Repeater {
            model: root.run.forces

            NumberRow {
                objectName: "forceNumber"
            }
        }
    }
    NoteText {
        objectName: "forceNote"
        text: root.run.forceNote
        visible: text !== ""
        Layout.fillWidth: true
    }
}
