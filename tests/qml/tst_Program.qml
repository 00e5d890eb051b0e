import QtQuick
import QtQuick.Controls.Basic
import QtTest
import Fleetrung
import Fleetrung.Views

// The whole program over a store in a temporary folder.
TestCase {
    id: testCase
    name: "Program"
    when: windowShown
    visible: true

    Component { id: mainComponent; Main { width: 360; height: 640 } }

    function makeMain(): Main {
        const window = createTemporaryObject(mainComponent, null, { app: driver.app() })
        verify(window)
        tryCompare(window, "visible", true)
        return window
    }

    function test_allFivePlacesAreReachedByTheBottomBar() {
        const window = makeMain()
        for (let i = 0; i < 5; ++i) {
            mouseClick(findChild(window.footer, "place" + i))
            compare(window.place, i)
        }
    }

    function test_aLowWindowHasItsBarAtTheSide() {
        const window = makeMain()
        window.width = 844
        window.height = 390
        tryVerify(() => findChild(window, "sideBar").visible)
        verify(!window.footer.visible)
        mouseClick(findChild(findChild(window, "sideBar"), "place3"))
        compare(window.place, 3)
        for (let i = 0; i < 5; ++i)
            verify(findChild(findChild(window, "sideBar"), "place" + i).height >= 48)
        window.width = 360
        window.height = 640
        tryVerify(() => window.footer.visible)
        verify(!findChild(window, "sideBar").visible)
    }

    function test_wideWindowsShowTheLiftBesideTheDaysList() {
        const window = makeMain()
        driver.plantSeason()
        window.width = 1280
        window.height = 800
        const bench = window.app.bench
        const session = findChild(window, "session")
        const set = findChild(window, "set")
        verify(session.visible)
        verify(!set.visible)
        bench.openLift("squat")
        tryVerify(() => set.visible && session.visible)
        tryVerify(() => set.mapToItem(null, set.width, 0).x === 1280)
        const edge = session.mapToItem(null, session.width, 0).x
        verify(set.mapToItem(null, 0, 0).x >= edge - 1)
        window.width = 360
        window.height = 640
        tryVerify(() => !session.visible)
        verify(set.visible)
    }

    function test_theCautionsStandBeforeTheFirstStart() {
        driver.preferences().cautionsRead = false
        const window = makeMain()
        const sheet = findChild(window, "firstCautions")
        tryCompare(sheet, "opened", true)
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        wait(40)
        scroll.contentY = Math.max(0, scroll.contentHeight - scroll.height)
        wait(40)
        mouseClick(findChild(sheet.contentItem, "understood"))
        tryCompare(sheet, "opened", false)
        compare(driver.preferences().cautionsRead, true)
    }

    function test_anArchivedAthleteComesBack() {
        const window = makeMain()
        driver.plantSeason()
        const key = driver.keyOf("Mira Example")
        window.place = 4
        const page = findChild(window, "squadPage")
        verify(!findChild(page, "openArchive").visible)
        window.app.squad.remove(key)
        driver.settle()
        compare(driver.keyOf("Mira Example"), "")
        compare(window.app.squad.archived.count, 1)
        tryVerify(() => findChild(page, "openArchive").visible)
        wait(40)
        mouseClick(findChild(page, "openArchive"))
        const sheet = findChild(window, "archiveSheet")
        tryCompare(sheet, "opened", true)
        wait(40)
        mouseClick(findChild(sheet.contentItem, "bringBack"))
        driver.settle()
        compare(driver.keyOf("Mira Example"), key)
        verify(window.app.ladder.hasSeason)
        tryCompare(sheet, "opened", false)
        window.app.undo()
        driver.settle()
        compare(driver.keyOf("Mira Example"), "")
    }

    function test_theDemoSquadIsMarkedAndLeavesNothingBehind() {
        const window = makeMain()
        window.app.squad.save("", { name: "Ada Example", born: "1999-05-17", mass: "", stature: "", years: "", event: "", consent: false })
        driver.settle()
        const strip = findChild(window, "demoStrip")
        verify(!strip.visible)
        window.place = 4
        verify(findChild(findChild(window, "squadPage"), "openDemo").visible)
        window.app.openDemo()
        tryCompare(window.app, "demoShown", true)
        driver.settle()
        verify(strip.visible)
        verify(findChild(strip, "demoText").text.indexOf("invented") > 0)
        compare(driver.keyOf("Ada Example"), "")
        verify(driver.keyOf("Demo Example") !== "")
        verify(driver.demoKept())
        window.app.squad.save("", { name: "Stray Example", born: "1999-05-17", mass: "", stature: "", years: "", event: "", consent: false })
        driver.settle()
        mouseClick(findChild(strip, "endDemo"))
        driver.settle()
        verify(!window.app.demoShown)
        verify(!strip.visible)
        verify(!driver.demoKept())
        verify(driver.keyOf("Ada Example") !== "")
        compare(driver.keyOf("Demo Example"), "")
        compare(driver.keyOf("Stray Example"), "") // written into the demo, gone with it
    }

    function test_makingTheDemoSquadIsWatchedAndCancelled() {
        driver.app()
        driver.slowDemo()
        const window = createTemporaryObject(mainComponent, null, { app: driver.restart() })
        window.app.openDemo()
        const strip = findChild(window, "demoStrip")
        tryVerify(() => findChild(strip, "demoText").text.indexOf("25") > 0)
        tryCompare(strip, "visible", true)
        wait(40)
        mouseClick(findChild(strip, "endDemo"))
        tryCompare(window.app, "demoMaking", false)
        verify(!window.app.demoShown)
        verify(!driver.demoKept())
        verify(!strip.visible)
    }

    function test_anAthleteIsAddedDeletedAndBroughtBack() {
        const window = makeMain()
        const squad = window.app.squad
        compare(squad.athletes.count, 0)
        squad.save("", { name: "Ada Example", born: "1999-05-17", mass: "", stature: "", years: "", event: "", consent: false })
        driver.settle()
        compare(squad.athletes.count, 1)
        const key = squad.athletes.data(squad.athletes.index(0, 0), 256)
        squad.remove(key)
        driver.settle()
        compare(squad.athletes.count, 0)
        verify(window.app.noticeCanUndo)
        window.app.undo()
        driver.settle()
        compare(squad.athletes.count, 1)
    }

    function test_theSensorsAreReachedFromBenchAndFromSquad() {
        const window = makeMain()
        const sheet = findChild(window, "sensorsSheet")
        wait(40)
        mouseClick(findChild(window, "sessionSensor"))
        tryCompare(sheet, "opened", true)
        sheet.close()
        tryCompare(sheet, "visible", false)
        window.place = 4
        findChild(window, "squadPage").part = 2
        wait(80)
        mouseClick(findChild(window, "openSensors"))
        tryCompare(sheet, "opened", true)
    }

    function test_aSavedSensorIsThereAfterARestartAndForgettingIsTakenBack() {
        compare(driver.app().sensors.sensors.count, 0)
        driver.saveSensor()
        const app = driver.restart()
        compare(app.sensors.sensors.count, 1)
        app.sensors.openSensor("C4:10:00:00:4F:2A")
        compare(app.sensors.name, "Bar sensor")
        app.sensors.forget()
        driver.settle()
        compare(app.sensors.sensors.count, 0)
        verify(app.noticeCanUndo)
        app.undo()
        driver.settle()
        compare(app.sensors.sensors.count, 1)
    }

    function test_aMapGoesOutAsAFileAndComesBack() {
        const app = driver.app()
        driver.saveSensor()
        app.sensors.openSensor("C4:10:00:00:4F:2A")
        app.sensors.exportMap()
        verify(!app.noticeIsProblem, app.notice)
        app.sensors.lookForMapFiles()
        compare(app.sensors.mapFiles.count, 1)
        const name = app.sensors.mapFiles.data(app.sensors.mapFiles.index(0, 0), 256)
        app.sensors.importMap(name)
        driver.settle()
        verify(!app.noticeIsProblem, app.notice)
        app.sensors.importMap("not-there.json")
        driver.settle()
        verify(app.noticeIsProblem)
    }

    function test_aSetThatWasCutOffIsOfferedAndKept() {
        driver.app()
        driver.plantSeason()
        driver.cutOff(3)
        const app = driver.restart()
        compare(app.bench.cutOffText, "Half squat: the set was cut off. 3 repetitions are kept.")
        verify(app.bench.cutOffCanBeKept)
        app.bench.keepCutOff()
        driver.settle()
        verify(!app.noticeIsProblem, app.notice)
        compare(driver.storedRepetitions(), 3)
        compare(driver.restart().bench.cutOffText, "")
    }

    function test_aTypedRunIsInTheStore() {
        const window = makeMain()
        driver.plantSeason()
        compare(window.app.track.runs.count, 0)
        window.app.track.addRun({ distance: "60", time: "7,12", start: 0, runIn: "", wind: "0,4", surface: 1, timing: 3,
                                  day: "2026-03-28" })
        driver.settle()
        compare(window.app.track.runs.count, 1)
        window.app.undo()
        driver.settle()
        compare(window.app.track.runs.count, 0)
    }

    function test_aTypedSetCountsOnTheDaysPlan() {
        const window = makeMain()
        driver.plantSeason()
        const bench = window.app.bench
        verify(bench.lifts.count > 0, window.app.notice)
        const key = bench.lifts.data(bench.lifts.index(0, 0), 256)
        const progress = () => bench.lifts.data(bench.lifts.index(0, 0), 256 + 6)
        bench.openLift(key)
        compare(bench.setText, "probe set")
        compare(progress(), "not begun")
        bench.typeSet({ kind: 0, load: "60", repetitions: "5", velocity: "", time: "", effort: "7" })
        driver.settle()
        verify(progress().indexOf("1 of") === 0, progress())
        verify(bench.lastSetText !== "")
        bench.typeSet({ kind: 1, load: "60", repetitions: "3", velocity: "", time: "", effort: "" })
        driver.settle()
        verify(bench.setText.indexOf("set 2") === 0, bench.setText)
        window.app.undo()
        driver.settle()
        compare(bench.setText, "probe set")
    }

    function test_theStairStandsOnLadderAndTheAnswerIsKept() {
        const window = makeMain()
        driver.plantSeason()
        const ladder = window.app.ladder
        verify(ladder.hasSeason, window.app.notice)
        verify(ladder.canAnswer)
        ladder.follow()
        driver.settle()
        verify(!ladder.canAnswer)
        compare(ladder.answerText, "You follow this.")
    }

    function test_aSensorThatLiesStillGivesNoRepetition() {
        const window = makeMain()
        driver.plantSeason()
        driver.offerStillSensor()
        const bench = window.app.bench
        bench.openLift(bench.lifts.data(bench.lifts.index(0, 0), 256))
        compare(bench.sensor, BenchViewModel.Ready)
        verify(!bench.canBegin) // nobody knows the load yet
        bench.load = "60"
        verify(bench.canBegin)
        bench.begin()
        tryCompare(bench, "sensor", BenchViewModel.Streaming)
        tryCompare(bench, "sensor", BenchViewModel.Finished, 60000)
        compare(bench.repetitionCount, 0)
    }

    function openSquat(window: Main): BenchViewModel {
        const bench = window.app.bench
        bench.openLift("squat")
        return bench
    }

    function test_aSimulatedSetIsSeenLiveUndoneAndStored() {
        const window = makeMain()
        driver.plantSeason()
        const bench = openSquat(window)
        verify(bench.liftOpen)
        driver.offerSimulatedSet(2)
        bench.load = "62,5"
        bench.begin()
        tryCompare(bench, "repetitionCount", 2, 120000)
        tryCompare(bench, "sensor", BenchViewModel.Finished, 60000)
        bench.undoRepetition()
        compare(bench.repetitionCount, 1)
        bench.endSet()
        tryVerify(() => bench.lastSetText !== "", 60000)
        driver.settle()
        compare(driver.storedRepetitions(), 1)
        bench.leaveLift()
    }

    function test_aTypedRunThatHasNotComeYetIsRefused() {
        const window = makeMain()
        driver.plantSeason()
        const problems = window.app.track.addRun({ distance: "60", time: "7,12", start: 0, runIn: "", wind: "", surface: 1,
                                                   timing: 3, day: "2026-04-30" })
        verify(problems.day !== undefined)
    }

    function test_aSeasonIsPlannedOnThePhone() {
        const window = makeMain()
        window.app.squad.save("", { name: "Ada Example", born: "1999-05-17", mass: "61", stature: "", years: "3", event: "",
                                    consent: false })
        driver.settle()
        const ladder = window.app.ladder
        verify(ladder.canPlan)
        const form = { race: "Club championship", liftDays: [0, 2, 4], sprintDays: [1], ladders: [0], equipment: [0, 1],
                       boxes: "20 30" }
        ladder.beginSeason()
        ladder.raceDay.move(-200) // before the season's first day
        verify(ladder.planSeason(form).raceDay !== undefined)
        ladder.raceDay.move(200)
        compare(Object.keys(ladder.planSeason(form)).length, 0)
        driver.settle()
        verify(ladder.hasSeason, window.app.notice)
        compare(window.app.bench.lifts.count, 1)
    }

    function test_painForbidsAndUndoBringsTheDayBack() {
        const window = makeMain()
        driver.plantSeason()
        const bench = window.app.bench
        const lifts = bench.lifts.count
        verify(lifts > 0)
        compare(Object.keys(bench.sayHowYouAre({ pain: 6, region: bench.regions.indexOf("knee"), soreness: -1, sleep: "", mass: "" })).length, 0)
        driver.settle()
        compare(bench.wellnessText, "pain 6, knee")
        const said = bench.notes.data(bench.notes.index(0, 0), 256)
        compare(said, "No sprinting today: pain forbids it.")
        verify(bench.lifts.count < lifts)
        window.app.undo()
        driver.settle()
        compare(bench.lifts.count, lifts)
        compare(bench.wellnessText, "")
    }

    function test_aMovedCompetitionIsInTheStoreAndUndoMovesItBack() {
        const window = makeMain()
        driver.plantSeason()
        const season = window.app.season
        verify(season.hasSeason)
        season.editCompetition(0)
        season.day.move(-14)
        verify(season.canSave)
        season.saveCompetition()
        driver.settle()
        const detail = () => season.competitions.data(season.competitions.index(0, 0), 257)
        verify(detail().indexOf("Saturday, 23 May") === 0, detail())
        window.app.undo()
        driver.settle()
        verify(detail().indexOf("Saturday, 6 June") === 0, detail())
    }

    function test_aSetUnderWayStaysWithWhoBeganIt() {
        const window = makeMain()
        driver.plantSeason()
        driver.plantSecondAthlete()
        window.app.squad.choose(driver.keyOf("Mira Example"))
        driver.settle()
        const bench = openSquat(window)
        driver.offerSimulatedSet(2)
        bench.load = "62,5"
        bench.begin()
        tryCompare(bench, "repetitionCount", 2, 120000)
        bench.switchTo(driver.keyOf("Noor Example"))
        window.app.squad.choose(driver.keyOf("Noor Example"))
        driver.settle()
        compare(bench.athleteName, "Mira Example")
        verify(window.app.noticeIsProblem)
        tryCompare(bench, "sensor", BenchViewModel.Finished, 60000)
        bench.endSet()
        tryVerify(() => bench.lastSetText !== "", 60000)
        driver.settle()
        compare(driver.ownersOfSets(), "Mira Example")
        // The next set is the other's, on the same lift, with the sensor still there.
        bench.switchTo(driver.keyOf("Noor Example"))
        driver.settle()
        compare(bench.athleteName, "Noor Example")
        verify(bench.liftOpen)
        compare(bench.sensor, BenchViewModel.Ready)
        bench.leaveLift()
    }

    function test_aNumberExplainsItselfOnTouchAndByKeyboard() {
        const window = makeMain()
        driver.plantSeason()
        window.place = 1
        const sheet = findChild(window, "explainSheet")
        const button = findChild(findChild(window, "decision"), "explain")
        verify(button.Accessible.name.indexOf("What is this") === 0)
        wait(40)
        button.clicked()
        tryCompare(sheet, "opened", true)
        verify(findChild(sheet.contentItem, "explained"))
        for (const scale of [1, 2]) {
            driver.preferences().textScale = scale
            wait(40)
            verify(findChild(sheet.contentItem, "sheetScroll").height >= 150)
        }
        driver.preferences().textScale = 1
        keyClick(Qt.Key_Escape)
        tryCompare(sheet, "opened", false)
        button.forceActiveFocus()
        keyClick(Qt.Key_Space)
        tryCompare(sheet, "opened", true)
        sheet.close()
        tryCompare(sheet, "opened", false)
    }

    function test_theSeasonIsHandedOutAsReportAndTables() {
        const window = makeMain()
        driver.plantSeason()
        compare(driver.handedFiles("pdf"), 0)
        window.app.handOutReport()
        driver.settle()
        verify(window.app.notice.indexOf("The report is in ") === 0, window.app.notice)
        verify(window.app.notice.endsWith("Outdoor 2026, Mira Example.pdf"), window.app.notice)
        compare(driver.handedFiles("pdf"), 1)
        compare(driver.offered().length, 1) // the share sheet, where the system has one
        window.app.handOutTables()
        driver.settle()
        const files = driver.handedFiles("csv")
        verify(files > 15, files + " tables")
        compare(driver.offered().length, 1 + files)
        verify(window.app.notice.indexOf(files + " tables in ") === 0, window.app.notice)
    }

    function test_theSeasonIsHandedOutAsACalendar() {
        const window = makeMain()
        driver.plantSeason()
        window.app.handOutCalendar()
        driver.settle()
        verify(window.app.notice.indexOf("The calendar is in ") === 0, window.app.notice)
        const text = driver.handedCalendar()
        verify(text.indexOf("BEGIN:VCALENDAR") === 0)
        verify(text.indexOf("Championship") > 0)
        const entries = text.split("BEGIN:VEVENT").length
        window.app.handOutCalendar()
        driver.settle()
        compare(driver.handedCalendar().split("BEGIN:VEVENT").length, entries)
    }
}
