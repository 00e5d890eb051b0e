import QtQuick
import QtTest
import Fleetrung
import Fleetrung.Views

PageCase {
    id: testCase
    name: "Bench"

    Component { id: pageComponent; BenchPage { anchors.fill: parent } }

    function makePage(view: BenchViewModel): BenchPage {
        return createTemporaryObject(pageComponent, testCase, { viewModel: view, squadDay: driver.squadDay(3), doneSets: driver.doneSets() })
    }

    function openSet(): BenchPage {
        const page = makePage(driver.bench())
        page.viewModel.openLift("squat")
        waitForRendering(page)
        return page
    }

    function test_todaysLiftsFitTheSmallestScreen() {
        const page = makePage(driver.bench())
        checkPage(findChild(page, "session"))
    }

    function test_anEmptyDayTeaches() {
        const page = makePage(driver.emptyBench())
        verify(findChild(page, "emptySession").visible)
        compare(findChild(page, "emptySession").title, "No season yet")
    }

    function test_aTapOpensTheLift() {
        const page = makePage(driver.bench())
        waitForRendering(page)
        tap(findChild(page, "lift-squat"))
        verify(findChild(page, "set").visible)
        compare(findChild(findChild(page, "set"), "title").text, "Half squat")
        tap(findChild(findChild(page, "set"), "back"))
        verify(findChild(page, "session").visible)
    }

    function test_everyStateFitsTheSmallestScreen_data() {
        return [{ tag: "no sensor", state: BenchViewModel.NoSensor, repetitions: 0 },
                { tag: "streaming", state: BenchViewModel.Streaming, repetitions: 0 },
                { tag: "first repetition", state: BenchViewModel.Streaming, repetitions: 1 },
                { tag: "a set", state: BenchViewModel.Streaming, repetitions: 5 },
                { tag: "lost", state: BenchViewModel.Lost, repetitions: 3 }]
    }

    function test_everyStateFitsTheSmallestScreen(data) {
        const page = openSet()
        driver.sensor(page.viewModel, data.state)
        for (let i = 0; i < data.repetitions; ++i)
            driver.repetition(page.viewModel, 280 + i, 0.62)
        checkPage(findChild(page, "set"))
    }

    function test_whyIsToldForEachLift() {
        const page = makePage(driver.bench())
        waitForRendering(page)
        tapIn(findChild(findChild(page, "session"), "scroll"), findChild(page, "why-squat"))
        const sheet = findChild(page, "whySheet")
        tryCompare(sheet, "opened", true)
        compare(page.viewModel.why.count, 2)
        verify(findChild(sheet.contentItem, "whyText").text.indexOf("16/02/2026") > 0)
        verify(!page.viewModel.liftOpen)
        checkSheet(sheet)
    }

    function test_notesSayWhatRestsAndWhy() {
        const page = makePage(driver.bench())
        compare(findChild(page, "note").text, "The clean rests: its competition is on 01/04/2026.")
    }

    function test_theWarmUpCheckSaysWhatIsToBeDone() {
        const page = openSet()
        const text = findChild(page, "checkText").text
        verify(text.indexOf("84 kg") > 0 && text.indexOf("98 kg") > 0, text)
        verify(!findChild(page, "acceptCheck").visible)
    }

    function test_theWarmUpCheckIsAnsweredWithWhy() {
        const page = makePage(driver.benchAfterSlowWarmUp())
        page.viewModel.openLift("squat")
        waitForRendering(page)
        let answer = null
        page.viewModel.checkAnswered.connect((ladder, accepted, why) => answer = { ladder: ladder, accepted: accepted, why: why })
        verify(findChild(page, "checkText").text.indexOf("Proposed: 5 % less load, one set less.") === 0, findChild(page, "checkText").text)
        compare(page.viewModel.checkEvidence.count, 2)
        const scroll = findChild(findChild(page, "set"), "scroll")
        tapIn(scroll, findChild(page, "declineCheck"))
        compare(answer, null)
        findChild(findChild(page, "whyNot"), "input").text = "the bar slipped"
        tapIn(scroll, findChild(page, "declineCheck"))
        compare(answer.accepted, false)
        compare(answer.why, "the bar slipped")
        verify(!findChild(page, "acceptCheck").visible)
        checkPage(findChild(page, "set"))
    }

    function test_painIsSaidWithWhere() {
        const page = makePage(driver.bench())
        let said = 0
        page.viewModel.wellnessSaid.connect(() => ++said)
        waitForRendering(page)
        tapIn(findChild(findChild(page, "session"), "scroll"), findChild(page, "howAreYou"))
        const sheet = findChild(page, "wellnessSheet")
        tryCompare(sheet, "opened", true)
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        tapIn(scroll, findChild(findChild(sheet.contentItem, "pain"), "option6"))
        verify(findChild(sheet.contentItem, "painCaution").visible)
        tap(findChild(sheet.contentItem, "saveWellness"))
        compare(said, 0)
        verify(findChild(sheet.contentItem, "regionProblem").text !== "")
        tapIn(scroll, findChild(findChild(sheet.contentItem, "region"), "option0"))
        tap(findChild(sheet.contentItem, "saveWellness"))
        compare(said, 1)
        tryCompare(sheet, "opened", false)
    }

    function test_theNextAthleteIsOneTapAwayButNeverDuringASet() {
        const page = openSet()
        compare(findChild(page, "athleteName").text, "Mira Example-Longsurname")
        driver.share(page.viewModel)
        waitForRendering(page)
        let next = ""
        page.viewModel.switchAsked.connect(key => next = key)
        driver.sensor(page.viewModel, BenchViewModel.Streaming)
        const strip = findChild(page, "setSharers")
        mouseClick(findChild(strip, "sharer-b"))
        compare(next, "")
        driver.sensor(page.viewModel, BenchViewModel.Ready)
        tap(findChild(strip, "sharer-b"))
        compare(next, "b")
        verify(findChild(page, "athleteName").visible)
    }

    function test_aMaintenanceSetNamesTheLongerRung() {
        const page = openSet()
        page.viewModel.kind = BenchViewModel.Maintenance
        compare(page.viewModel.liftName, "Full squat")
        compare(page.viewModel.load, "120")
    }

    function test_aLiftOutsideTheLaddersTakesThreeTaps() {
        const page = makePage(driver.bench())
        waitForRendering(page)
        let typed = null
        page.viewModel.otherTyped.connect((set, repetitions) => typed = repetitions)
        tapIn(findChild(findChild(page, "session"), "scroll"), findChild(page, "other0"))
        const sheet = findChild(page, "otherSheet")
        tryCompare(sheet, "opened", true)
        compare(sheet.title, "Hip thrust")
        tapIn(findChild(sheet.contentItem, "sheetScroll"), findChild(findChild(sheet.contentItem, "effort"), "option6"))
        tap(findChild(sheet.contentItem, "saveOther"))
        compare(typed, 8)
        tryCompare(sheet, "opened", false)
    }

    function test_theNumberFollowsTheRepetitions() {
        const page = openSet()
        driver.sensor(page.viewModel, BenchViewModel.Streaming)
        driver.repetition(page.viewModel, 281, 0.63)
        compare(findChild(page, "bigNumber").text, "281")
        driver.repetition(page.viewModel, 286, 0.62)
        compare(findChild(page, "bigNumber").text, "286")
        verify(findChild(page, "strikeLine").summary !== "")
    }

    function test_theNumberIsReadFromTwoMetres() {
        const page = openSet()
        driver.repetition(page.viewModel, 286, 0.62)
        waitForRendering(page)
        const number = findChild(page, "bigNumber")
        // Digits are about 0.72 of the font's size high in the interface's font.
        verify(number.fontInfo.pixelSize * 0.72 >= page.width / 5, "digits " + number.fontInfo.pixelSize * 0.72)
    }

    function test_undoTakesTheLastOneBack() {
        const page = openSet()
        driver.sensor(page.viewModel, BenchViewModel.Streaming)
        driver.repetition(page.viewModel, 281, 0.63)
        driver.repetition(page.viewModel, 420, 0.61)
        tap(findChild(page, "undo"))
        compare(page.viewModel.repetitionCount, 1)
        compare(findChild(page, "bigNumber").text, "281")
    }

    function test_theStopIsSaidInWords() {
        const page = openSet()
        driver.sensor(page.viewModel, BenchViewModel.Streaming)
        driver.repetition(page.viewModel, 281, 0.62)
        verify(!findChild(page, "stopSign").visible)
        driver.repetition(page.viewModel, 281, 0.45)
        verify(findChild(page, "stopSign").visible)
        verify(findChild(page, "stopSign").Accessible.name.indexOf("Stop the set") === 0)
    }

    function test_outsideTheBandIsSaidInWords() {
        const page = openSet()
        driver.repetition(page.viewModel, 324, 0.62)
        compare(findChild(page, "verdict").text, "24 ms later than the band")
    }

    function test_aTypedSetTakesADecimalComma() {
        const page = openSet()
        let typed = null
        page.viewModel.setTyped.connect(() => typed = true)
        tapIn(findChild(findChild(page, "set"), "scroll"), findChild(page, "typeSet"))
        const sheet = findChild(page, "typedSheet")
        tryCompare(sheet, "opened", true)
        compare(findChild(findChild(sheet.contentItem, "load"), "input").text, "140")
        type(sheet, "load", "heavy")
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        tapIn(scroll, findChild(sheet.contentItem, "saveTyped"))
        verify(sheet.opened)
        verify(findChild(findChild(sheet.contentItem, "load"), "problem").text !== "")
        compare(typed, null)
        type(sheet, "load", "142,5")
        type(sheet, "repetitions", "5")
        type(sheet, "effort", "8")
        verify(findChild(sheet.contentItem, "maximum").text.indexOf("1RM about 171 kg") === 0)
        type(sheet, "velocity", "0,61")
        tapIn(scroll, findChild(sheet.contentItem, "saveTyped"))
        tryCompare(sheet, "opened", false)
        compare(typed, true)
    }

    function test_loadsByTheChart() {
        const page = openSet()
        tapIn(findChild(findChild(page, "set"), "scroll"), findChild(page, "loadChart"))
        const sheet = findChild(page, "loadChartSheet")
        tryCompare(sheet, "opened", true)
        compare(sheet.rows.length, 0)
        type(sheet, "maximum", "140")
        compare(sheet.rows.length, 11)
        compare(sheet.rows[4].value, "121.8 kg")
    }

    function test_aDoneSetIsOpenedAndARepetitionStruckOut() {
        const page = makePage(driver.bench())
        waitForRendering(page)
        const spy = createTemporaryObject(spyComponent, testCase, { target: page.doneSets, signalName: "struckOut" })
        tapIn(findChild(findChild(page, "session"), "scroll"), findChild(findChild(page, "session"), "done"))
        const list = findChild(page, "doneSetsSheet")
        tryCompare(list, "opened", true)
        checkSheet(list)
        tap(findChild(list.contentItem, "doneSet0"))
        const sheet = findChild(page, "doneSetSheet")
        tryCompare(sheet, "opened", true)
        compare(sheet.title, "Half squat, 140 kg")
        checkSheet(sheet)
        tapIn(findChild(sheet.contentItem, "sheetScroll"), findChild(findChild(sheet.contentItem, "repetition0"), "strike"))
        compare(spy.count, 1)
        tapIn(findChild(sheet.contentItem, "sheetScroll"), findChild(sheet.contentItem, "addRepetition"))
        verify(findChild(sheet.contentItem, "addedRepetition").visible)
        checkSheet(sheet)
    }

    Component { id: spyComponent; SignalSpy {} }

    function test_theLoadIsPutTogetherFromPlates() {
        const page = openSet()
        driver.sensor(page.viewModel, BenchViewModel.Ready)
        tapIn(findChild(findChild(page, "set"), "scroll"), findChild(page, "byPlates"))
        const sheet = findChild(page, "platesSheet")
        tryCompare(sheet, "opened", true)
        compare(findChild(sheet.contentItem, "platesTotal").text, "140 kg")
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        tapIn(scroll, findChild(sheet.contentItem, "barAlone"))
        compare(findChild(sheet.contentItem, "platesTotal").text, "20 kg")
        for (const plate of [0, 6, 3])
            tapIn(scroll, findChild(sheet.contentItem, "plate" + plate))
        compare(findChild(sheet.contentItem, "platesTotal").text, "92.5 kg")
        compare(findChild(sheet.contentItem, "platesSide").text, "Each side 25 + 10 + 1.25. Bar 20 kg.")
        tapIn(scroll, findChild(sheet.contentItem, "takeOff")) // the 10, put on last
        compare(findChild(sheet.contentItem, "platesTotal").text, "72.5 kg")
        for (const scale of [1, 2]) {
            Theme.textScale = scale
            checkSheet(sheet)
        }
        tap(findChild(sheet.contentItem, "takeLoad"))
        tryCompare(sheet, "opened", false)
        compare(page.viewModel.load, "72.5")
    }
}
