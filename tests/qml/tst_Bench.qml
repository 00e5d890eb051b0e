import QtQuick
import Fleetrung
import Fleetrung.Views

PageCase {
    id: testCase
    name: "Bench"

    Component { id: pageComponent; BenchPage { anchors.fill: parent } }

    function makePage(view: BenchViewModel): BenchPage {
        return createTemporaryObject(pageComponent, testCase, { viewModel: view })
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
        type(sheet, "velocity", "0,61")
        tapIn(scroll, findChild(sheet.contentItem, "saveTyped"))
        tryCompare(sheet, "opened", false)
        compare(typed, true)
    }
}
