import QtQuick
import QtQuick.Controls.Basic
import Fleetrung
import Fleetrung.Views

// The window: one of the five places, the bar that leads to them (at the side where height is short), and what has just
// happened above it.
ApplicationWindow {
    id: window

    required property AppViewModel app
    property int place: 0
    readonly property bool low: width > height && height < 500

    visible: true
    width: 390
    height: 844
    title: qsTr("Fleetrung")
    color: Theme.ground
    font.family: Theme.family
    LayoutMirroring.enabled: Qt.application.layoutDirection === Qt.RightToLeft // qmllint disable type
    LayoutMirroring.childrenInherit: true

    Binding {
        target: Theme
        property: "dark"
        value: window.app.preferences.dark
    }
    Binding {
        target: Theme
        property: "textScale"
        value: window.app.preferences.textScale
    }

    Binding {
        target: Theme
        property: "keyboard"
        value: window.app.keyboard.height
    }

    DemoStrip {
        id: demo
        objectName: "demoStrip"
        anchors.left: pages.left
        anchors.right: parent.right
        app: window.app
    }
    Item {
        id: pages
        anchors.fill: parent
        anchors.topMargin: demo.implicitHeight
        anchors.leftMargin: window.low ? sideBar.width : 0
        anchors.bottomMargin: Theme.keyboard + (notice.visible ? notice.height + 24 : 0) // no key is covered

        BenchPage {
            anchors.fill: parent
            visible: window.place === 0
            viewModel: window.app.bench
            squadDay: window.app.squadDay
            doneSets: window.app.doneSets
            onLadderAsked: window.place = 1
            onSquadAsked: window.place = 4
            onSensorsAsked: sensorSheets.open()
        }
        LadderPage {
            anchors.fill: parent
            visible: window.place === 1
            viewModel: window.app.ladder
            season: window.app.season
            lifts: window.app.seasonLifts
            onCalendarAsked: window.app.handOutCalendar()
            onReportAsked: window.app.handOutReport()
            onTablesAsked: window.app.handOutTables()
            onSquadAsked: window.place = 4
        }
        TrackPage {
            anchors.fill: parent
            visible: window.place === 2
            viewModel: window.app.track
            work: window.app.trackWork
            onImportAsked: importSheet.begin(false)
            onSquadAsked: window.place = 4
        }
        TrendsPage {
            anchors.fill: parent
            visible: window.place === 3
            viewModel: window.app.trends
        }
        SquadPage {
            objectName: "squadPage"
            anchors.fill: parent
            visible: window.place === 4
            viewModel: window.app.squad
            day: window.app.squadDay
            onBenchAsked: window.place = 0
            preferences: window.app.preferences
            sensors: window.app.sensors
            demoOffered: window.app.demoOffered && !window.app.demoMaking
            onDemoAsked: window.app.openDemo()
            onImportAsked: importSheet.begin(true)
            onSensorsAsked: sensorSheets.open()
        }
    }
    BottomBar {
        id: sideBar
        objectName: "sideBar"
        upright: true
        visible: window.low
        width: implicitWidth
        height: parent.height
        current: window.place
        onChosen: index => window.place = index
    }
    ImportSheet {
        id: importSheet
        objectName: "importSheet"
        viewModel: window.app.imports

        function begin(sets: bool) {
            viewModel.begin(sets)
            open()
        }
    }
    SensorSheets {
        id: sensorSheets
        objectName: "sensorSheets"
        sensors: window.app.sensors
        find: window.app.findSensors
        teach: window.app.teach
        calibration: window.app.calibration
    }

    NoticeBar {
        id: notice
        objectName: "notice"
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        anchors.margins: 12
        anchors.leftMargin: 12 + pages.anchors.leftMargin
        anchors.bottomMargin: 12 + Theme.keyboard
        text: window.app.notice
        action: window.app.noticeCanUndo ? qsTr("Undo") : ""
        problem: window.app.noticeIsProblem
        onUndone: window.app.undo()
        onClosed: window.app.closeNotice()
    }

    footer: BottomBar {
        visible: Theme.keyboard === 0 && !window.low // the room is needed for what is typed
        objectName: "bottomBar"
        current: window.place
        onChosen: index => window.place = index
    }

    ExplainSheet {
        objectName: "explainSheet"
    }
    CautionsSheet {
        objectName: "firstCautions"
        closePolicy: Popup.NoAutoClose
        visible: !window.app.preferences.cautionsRead
        onUnderstood: window.app.preferences.cautionsRead = true
        onClosed: window.app.preferences.cautionsRead = true
    }
}
