import QtQuick
import QtQuick.Templates as T
import QtTest
import Fleetrung
import Fleetrung.Views

// One whole training day by touch, as somebody has it who has just got the program: from the first start over a season,
// a measured set, a typed one and a run to the coach's report; and all of it is there after a restart.
PageCase {
    id: testCase
    name: "TrainingDay"

    Component { id: mainComponent; Main { width: 360; height: 640 } }

    function open(app: AppViewModel): Main {
        const window = createTemporaryObject(mainComponent, null, { app: app })
        verify(window)
        tryCompare(window, "visible", true)
        return window
    }

    function openedSheet(window: Main, name: string): var {
        const sheet = findChild(window, name)
        verify(sheet, name)
        tryCompare(sheet, "opened", true)
        return sheet
    }

    function pressIn(sheet: var, control: string) {
        tapIn(findChild(sheet.contentItem, "sheetScroll"), findChild(sheet.contentItem, control))
    }

    function choose(sheet: var, choices: string, option: int) {
        const list = findChild(sheet.contentItem, choices)
        tapIn(findChild(sheet.contentItem, "sheetScroll"), findChild(list, "option" + option))
    }

    // What ends a sheet stands below its scroll.
    function finish(sheet: var, button: string) {
        tap(findChild(sheet.contentItem, button))
        driver.settle()
        tryCompare(sheet, "opened", false)
    }

    function goTo(window: Main, place: int) {
        tap(findChild(window.footer, "place" + place))
        compare(window.place, place)
    }

    function acceptCautions(window: Main) {
        const sheet = openedSheet(window, "firstCautions")
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        wait(40)
        scroll.contentY = Math.max(0, scroll.contentHeight - scroll.height)
        tap(findChild(sheet.contentItem, "understood"))
        tryCompare(sheet, "opened", false)
    }

    function addAthlete(window: Main) {
        const session = findChild(window, "session")
        tapIn(findChild(session, "scroll"), findChild(findChild(session, "emptySession"), "emptyAction"))
        compare(window.place, 4) // Bench sends there: nobody trains here yet
        tap(findChild(findChild(window, "squadPage"), "addAthlete"))
        const sheet = openedSheet(window, "athleteSheet")
        type(sheet, "name", "Ada Example")
        tap(findChild(sheet.contentItem, "saveAthlete"))
        verify(sheet.opened) // the day of birth decides what is allowed
        type(sheet, "born", "1999-05-17")
        finish(sheet, "saveAthlete")
        compare(window.app.bench.athleteName, "Ada Example")
    }

    function planSeason(window: Main) {
        goTo(window, 1)
        tap(findChild(findChild(window, "emptyLadder"), "emptyAction"))
        const sheet = openedSheet(window, "seasonSheet")
        type(sheet, "race", "Club championship")
        pressIn(sheet, "move7") // the race is a week later
        choose(sheet, "ladders", 0)
        finish(sheet, "saveSeason")
        verify(window.app.ladder.hasSeason, window.app.notice)
        const race = window.app.season.competitions
        verify(race.data(race.index(0, 0), 257).indexOf("in 25 weeks") > 0, race.data(race.index(0, 0), 257))
    }

    function sayHowOneIs(window: Main) {
        goTo(window, 0)
        tap(findChild(window, "howAreYou"))
        const sheet = openedSheet(window, "wellnessSheet")
        choose(sheet, "pain", 0)
        choose(sheet, "soreness", 2)
        type(sheet, "sleep", "7,5")
        finish(sheet, "saveWellness")
        compare(window.app.bench.wellnessText, "slept 7.5 h · soreness 2 · no pain")
    }

    function measureASet(window: Main) {
        const bench = window.app.bench
        tapIn(findChild(findChild(window, "session"), "scroll"), findChild(findChild(window, "session"), "lift-squat"))
        driver.offerSimulatedSet(4)
        const set = findChild(window, "set")
        tryCompare(bench, "sensor", BenchViewModel.Ready)
        verify(!findChild(set, "begin").enabled) // nobody knows the load yet
        findChild(findChild(set, "load"), "input").text = "62,5"
        tap(findChild(set, "begin"))
        tryCompare(bench, "repetitionCount", 4, 120000)
        tryCompare(bench, "sensor", BenchViewModel.Finished, 60000)
        verify(findChild(set, "strikeLine").visible)
        tap(findChild(set, "undo")) // the last was a re-rack
        compare(bench.repetitionCount, 3)
        tap(findChild(set, "endSet"))
        tryVerify(() => bench.lastSetText !== "", 60000)
        driver.settle()
        compare(driver.storedRepetitions(), 3)
    }

    function typeASet(window: Main) {
        const set = findChild(window, "set")
        const before = window.app.doneSets.countText
        tapIn(findChild(set, "scroll"), findChild(set, "typeSet"))
        const sheet = openedSheet(window, "typedSheet")
        compare(findChild(sheet.contentItem, "load").text, "62,5") // as it was typed for the set before
        finish(sheet, "saveTyped") // three taps: type it, look, save
        verify(window.app.doneSets.countText !== before)
        tapIn(findChild(set, "scroll"), findChild(set, "back"))
        verify(!window.app.bench.liftOpen)
    }

    function runOnTheTrack(window: Main) {
        goTo(window, 2)
        tap(findChild(window, "add"))
        const sheet = openedSheet(window, "runSheet")
        type(sheet, "distance", "30")
        type(sheet, "time", "4,12")
        finish(sheet, "saveRun")
        compare(window.app.track.runs.count, 1)
        window.app.undo() // mistyped
        driver.settle()
        compare(window.app.track.runs.count, 0)
        tap(findChild(window, "add"))
        tryCompare(sheet, "opened", true)
        type(sheet, "distance", "30")
        type(sheet, "time", "4,08")
        finish(sheet, "saveRun")
        compare(window.app.track.runs.count, 1)
    }

    function handOutTheReport(window: Main) {
        goTo(window, 1)
        const report = findChild(window, "report")
        report.clicked()
        driver.settle()
        verify(window.app.notice.indexOf("The report is in ") === 0, window.app.notice)
        compare(driver.handedFiles("pdf"), 1)
    }

    function test_aWholeDayFromTheFirstStartToTheReport() {
        driver.preferences().cautionsRead = false
        const window = open(driver.app())
        acceptCautions(window)
        addAthlete(window)
        planSeason(window)
        sayHowOneIs(window)
        measureASet(window)
        typeASet(window)
        runOnTheTrack(window)
        for (let place = 0; place < 5; ++place)
            goTo(window, place)
        handOutTheReport(window)

        const sets = window.app.doneSets.countText
        window.destroy()
        wait(0)
        const app = driver.restart()
        compare(app.bench.athleteName, "Ada Example")
        compare(app.doneSets.countText, sets)
        compare(app.track.runs.count, 1)
        compare(app.bench.wellnessText, "slept 7.5 h · soreness 2 · no pain")
        verify(app.ladder.hasSeason)
    }
}
