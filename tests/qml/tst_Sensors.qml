import QtQuick
import QtQuick.Controls.Basic
import QtTest
import Fleetrung
import Fleetrung.Views

PageCase {
    id: testCase
    name: "Sensors"
    height: 640

    property var sensors
    property var find
    property var teach
    property var calibration

    Component { id: sheetsComponent; SensorSheets { anchors.fill: parent } }

    function makeSheets(count: int): SensorSheets {
        testCase.sensors = driver.sensors(count)
        testCase.find = driver.findSensors()
        testCase.teach = driver.teach()
        testCase.calibration = driver.calibration()
        return createTemporaryObject(sheetsComponent, testCase, {
            sensors: testCase.sensors, find: testCase.find, teach: testCase.teach, calibration: testCase.calibration
        })
    }

    function opened(sheets: Item, name: string): var {
        const sheet = findChild(sheets, name)
        verify(sheet, name)
        if (!sheet.opened) {
            sheet.open()
            tryCompare(sheet, "opened", true)
        }
        waitForRendering(sheet.contentItem)
        return sheet
    }

    function part(sheet: var, name: string): Item {
        const item = findChild(sheet.contentItem, name)
        verify(item, name + " is there")
        return item
    }

    function checkInEverySize(sheet: var) {
        for (const scale of [1, 2]) {
            Theme.textScale = scale
            wait(40)
            checkSheet(sheet)
        }
        Theme.textScale = 1
    }

    function test_noSensorYetTeachesWhatToDo() {
        const sheet = opened(makeSheets(0), "sensorsSheet")
        verify(part(sheet, "emptySensors").visible)
        verify(part(sheet, "addSensor").main)
        checkInEverySize(sheet)
        tap(part(sheet, "addSensor"))
        const finding = findChild(sheet.parent, "findSheet") || findChild(testCase, "findSheet")
        verify(finding)
        tryCompare(finding, "opened", true)
        verify(findChild(finding.contentItem, "findSteps").visible)
    }

    function test_aSensorsHealthStandsAsValueAllowedAndMark() {
        const sheets = makeSheets(2)
        const list = opened(sheets, "sensorsSheet")
        checkInEverySize(list)
        tap(part(list, "sensor-C4:10:00:00:4F:2A"))
        const sheet = opened(sheets, "sensorSheet")
        compare(sheet.title, "Bar sensor")
        verify(part(sheet, "healthCard").visible)
        compare(testCase.sensors.health.count, 6)
        checkInEverySize(sheet)
    }

    function test_aLostSensorSaysWhatToDo() {
        const sheets = makeSheets(1)
        sheets.openSensor("C4:10:00:00:4F:2A")
        const sheet = opened(sheets, "sensorSheet")
        driver.loseSensor(testCase.sensors)
        waitForRendering(sheet.contentItem)
        const trouble = part(sheet, "sensorTrouble")
        verify(trouble.visible)
        let tried = 0
        testCase.sensors.tryAsked.connect(() => ++tried)
        tap(findChild(trouble, "troubleAction"))
        compare(tried, 1)
        verify(!part(sheet, "healthCard").visible)
        verify(!part(sheet, "calibrate").enabled)
    }

    function test_aSensorIsRenamedMovedAndForgotten() {
        const sheets = makeSheets(2)
        sheets.openSensor("C4:10:00:00:4F:2A")
        const sheet = opened(sheets, "sensorSheet")
        let renamed = "", place = "", forgotten = ""
        testCase.sensors.renameAsked.connect((address, name) => renamed = name)
        testCase.sensors.placeAsked.connect((address, key) => place = key)
        testCase.sensors.forgetAsked.connect(address => forgotten = address)
        const scroll = part(sheet, "sheetScroll")
        type(sheet, "sensorName", "Left shoe")
        tapIn(scroll, part(sheet, "saveName"))
        compare(renamed, "")
        compare(part(sheet, "sensorName").problem !== "", true)
        type(sheet, "sensorName", "Rack two")
        tapIn(scroll, part(sheet, "saveName"))
        compare(renamed, "Rack two")
        tapIn(scroll, findChild(part(sheet, "place"), "option1"))
        compare(place, "shoe")
        tapIn(scroll, part(sheet, "forget"))
        compare(forgotten, "C4:10:00:00:4F:2A")
        tryCompare(sheet, "opened", false)
    }

    function test_howASensorIsReadCanBeChosen() {
        const sheets = makeSheets(1)
        sheets.openSensor("C4:10:00:00:4F:2A")
        const sheet = opened(sheets, "sensorSheet")
        tapIn(part(sheet, "sheetScroll"), part(sheet, "maps"))
        const maps = opened(sheets, "mapSheet")
        checkInEverySize(maps)
        let chosen = ""
        testCase.sensors.mapAsked.connect((address, key) => chosen = key)
        tap(part(maps, "map-own"))
        compare(chosen, "own")
        let asked = 0
        testCase.sensors.mapFilesAsked.connect(() => ++asked)
        tap(part(maps, "importMap"))
        compare(asked, 1)
        verify(part(maps, "fileNote").visible)
        checkInEverySize(maps)
    }

    function test_aSensorIsFoundNamedAndSaved() {
        const sheets = makeSheets(0)
        const sheet = opened(sheets, "findSheet")
        checkInEverySize(sheet)
        driver.hear(testCase.find, 12)
        waitForRendering(sheet.contentItem)
        verify(!part(sheet, "findSteps").visible)
        checkInEverySize(sheet)
        type(sheet, "filter", "device 7")
        compare(testCase.find.found.count, 1)
        type(sheet, "filter", "")
        compare(testCase.find.found.count, 12)
        tap(part(sheet, "found-0"))
        compare(testCase.find.stage, FindSensorsViewModel.Listening)
        verify(part(sheet, "listening").visible)
        compare(part(sheet, "listenDrawing").Accessible.name, "Main side up")
        driver.fit(testCase.find, true)
        compare(testCase.find.stage, FindSensorsViewModel.Naming)
        waitForRendering(sheet.contentItem)
        checkInEverySize(sheet)
        compare(part(sheet, "newName").text, "Device 0 of a crowded room")
        let saved = 0
        testCase.find.saveAsked.connect(() => ++saved)
        type(sheet, "newName", "")
        tap(part(sheet, "saveSensor"))
        compare(saved, 0)
        type(sheet, "newName", "Bar sensor")
        tap(part(sheet, "saveSensor"))
        compare(saved, 1)
        tryCompare(sheet, "opened", false)
    }

    function test_whereNoMapFitsTeachingIsOffered() {
        const sheets = makeSheets(0)
        const sheet = opened(sheets, "findSheet")
        driver.hear(testCase.find, 1)
        waitForRendering(sheet.contentItem)
        tap(part(sheet, "found-0"))
        driver.fit(testCase.find, false)
        waitForRendering(sheet.contentItem)
        checkInEverySize(sheet)
        verify(part(sheet, "fit-packets").visible)
        tap(part(sheet, "teachIt"))
        tryCompare(findChild(sheets, "teachSheet"), "opened", true)
    }

    function test_everyStepOfTeachingHasADrawingAndASentence() {
        const sheets = makeSheets(1)
        const sheet = opened(sheets, "teachSheet")
        const poses = new Set()
        driver.answer(true, -1)
        for (let step = 0; step < 11; ++step) {
            waitForRendering(sheet.contentItem)
            compare(sheet.title, "Step " + (step + 1) + " of 11")
            verify(part(sheet, "poseDrawing").visible)
            verify(part(sheet, "poseDrawing").Accessible.name !== "")
            poses.add(part(sheet, "poseDrawing").Accessible.name)
            verify(part(sheet, "sentence").text !== "")
            checkInEverySize(sheet)
            if (testCase.teach.asksHeight) {
                type(sheet, "raiseHeight", "3")
                tap(part(sheet, "keepHeight"))
                verify(part(sheet, "raiseHeight").problem !== "")
                type(sheet, "raiseHeight", "60")
                tap(part(sheet, "keepHeight"))
                waitForRendering(sheet.contentItem)
            }
            const start = part(sheet, "startStep")
            verify(start.height >= 72)
            tap(start)
            waitForRendering(sheet.contentItem)
            verify(part(sheet, "countdownRing").visible)
            verify(part(sheet, "countdown").text !== "")
            driver.pass(testCase.teach, 60)
        }
        compare(poses.size, 10) // both raises look the same
        tryCompare(testCase.teach, "stage", TeachViewModel.Learned)
        waitForRendering(sheet.contentItem)
        checkInEverySize(sheet)
        compare(testCase.teach.sureness.count, 3)
        tap(part(sheet, "saveMap"))
        tryCompare(sheet, "opened", false)
    }

    function test_aStepThatMustBeRepeatedIsGoneToWithTheReason() {
        const sheets = makeSheets(1)
        const sheet = opened(sheets, "teachSheet")
        driver.answer(false, 7)
        for (let step = 0; step < 11; ++step) {
            if (testCase.teach.asksHeight)
                testCase.teach.setHeight("60")
            testCase.teach.start()
            driver.pass(testCase.teach, 60)
        }
        tryCompare(testCase.teach, "stage", TeachViewModel.Ready)
        waitForRendering(sheet.contentItem)
        compare(testCase.teach.step, 7)
        verify(part(sheet, "teachWhy").visible)
        compare(findChild(part(sheet, "teachWhy"), "troubleText").text, "It turned less than once.")
    }

    function test_sixSidesAreTickedAsTheyAreTaken() {
        const sheets = makeSheets(1)
        const sheet = opened(sheets, "calibrationSheet")
        checkInEverySize(sheet)
        const names = new Set()
        for (let pose = 0; pose < 6; ++pose)
            names.add(part(sheet, "pose" + pose).Accessible.name)
        compare(names.size, 6)
        compare(part(sheet, "pose0").Accessible.name, "Main side up: next")
        driver.lay(testCase.calibration, 0, 0, 1)
        compare(part(sheet, "pose0").Accessible.name, "Main side up: taken")
        driver.lay(testCase.calibration, 0, 0.6, 0.8)
        compare(part(sheet, "now").text, "It lies slanted: lay it flat.")
        for (const up of [[0, 0, -1], [0, 1, 0], [0, -1, 0], [1, 0, 0], [-1, 0, 0]])
            driver.lay(testCase.calibration, up[0], up[1], up[2])
        verify(testCase.calibration.complete)
        waitForRendering(sheet.contentItem)
        verify(part(sheet, "result").visible)
        checkInEverySize(sheet)
        let saved = 0
        testCase.calibration.saved.connect(() => ++saved)
        tap(part(sheet, "saveCalibration"))
        compare(saved, 1)
    }
}
