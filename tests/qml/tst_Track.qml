import QtQuick
import Fleetrung
import Fleetrung.Views

PageCase {
    id: testCase
    name: "Track"

    Component { id: pageComponent; TrackPage { anchors.fill: parent } }

    function makePage(view: TrackViewModel): TrackPage {
        return createTemporaryObject(pageComponent, testCase, { viewModel: view, work: driver.trackWork(0) })
    }

    function makeWorkPage(weeks: int): TrackPage {
        const page = createTemporaryObject(pageComponent, testCase,
                                           { viewModel: driver.track(4), work: driver.trackWork(weeks) })
        waitForRendering(page)
        tap(findChild(findChild(page, "kind"), "option2"))
        return page
    }

    function test_thePageFitsTheSmallestScreen() {
        checkPage(makePage(driver.track(4)))
    }

    function test_manyRunsComePageByPage() {
        const page = makePage(driver.track(70))
        compare(page.viewModel.runs.count, 30)
        waitForRendering(page)
        tapIn(findChild(page, "scroll"), findChild(page, "more"))
        compare(page.viewModel.runs.count, 60)
    }

    function test_aRunIsTypedWithDecimalCommas() {
        const page = makePage(driver.track(0))
        verify(findChild(page, "emptyTrack").visible)
        let run = null
        page.viewModel.runAdded.connect(() => run = true)
        waitForRendering(page)
        tap(findChild(page, "add"))
        const sheet = findChild(page, "runSheet")
        tryCompare(sheet, "opened", true)
        type(sheet, "distance", "60")
        type(sheet, "time", "7,12")
        type(sheet, "wind", "+0,8")
        tapIn(findChild(sheet.contentItem, "sheetScroll"), findChild(sheet.contentItem, "saveRun"))
        tryCompare(sheet, "opened", false)
        compare(run, true)
    }

    function test_splitsAreTypedWithBigKeysAndTheLastOneIsTakenOff() {
        const page = makePage(driver.track(0))
        let run = null
        page.viewModel.runAdded.connect(added => run = added)
        waitForRendering(page)
        tap(findChild(page, "add"))
        const sheet = findChild(page, "runSheet")
        tryCompare(sheet, "opened", true)
        type(sheet, "distance", "30")
        tapIn(findChild(sheet.contentItem, "sheetScroll"), findChild(sheet.contentItem, "typeSplits"))
        const splits = findChild(page, "splitSheet")
        tryCompare(splits, "opened", true)
        checkSheet(splits)
        const scroll = findChild(splits.contentItem, "sheetScroll")
        for (const keys of ["189", "288", "378"]) {
            for (const key of keys)
                tapIn(scroll, findChild(splits.contentItem, "key" + key))
            tap(findChild(splits.contentItem, "addSplit"))
        }
        compare(page.viewModel.splits.rows.count, 3)
        tapIn(scroll, findChild(splits.contentItem, "takeOffLast"))
        compare(page.viewModel.splits.rows.count, 2)
        for (const key of ["3", "7", "9"])
            tapIn(scroll, findChild(splits.contentItem, "key" + key))
        tap(findChild(splits.contentItem, "addSplit"))
        tap(findChild(splits.contentItem, "splitsDone"))
        tryCompare(splits, "opened", false)
        tap(findChild(sheet.contentItem, "saveRun"))
        tryCompare(sheet, "opened", false)
        verify(run !== null)
    }

    function test_aRunOpensWithItsFitInAnyTextSize() {
        const page = makePage(driver.track(4))
        waitForRendering(page)
        tapIn(findChild(page, "scroll"), findChild(page, "openRun"))
        const sheet = findChild(page, "runFitSheet")
        tryCompare(sheet, "opened", true)
        compare(page.viewModel.fit.refused, "")
        verify(page.viewModel.fit.numbers.count >= 4)
        verify(page.viewModel.fit.forces.count > 0)
        const curve = findChild(sheet.contentItem, "fitCurve")
        verify(curve.visible)
        curve.touched(Qt.point(25, 8))
        const point = findChild(sheet.contentItem, "touchedSplit")
        verify(findChild(point, "pointText").text.indexOf("20 m to 30 m") === 0, findChild(point, "pointText").text)
        tapIn(findChild(sheet.contentItem, "sheetScroll"), findChild(point, "later"))
        verify(findChild(point, "pointText").text.indexOf("30 m to 40 m") === 0)
        curve.released()
        for (const scale of [1, 2]) {
            Theme.textScale = scale
            checkSheet(sheet)
        }
        Theme.textScale = 1
        sheet.close()
        tryCompare(sheet, "opened", false)
    }

    function test_thePersonalBestsOpen() {
        const page = makePage(driver.track(4))
        waitForRendering(page)
        tapIn(findChild(page, "scroll"), findChild(page, "openBests"))
        const sheet = findChild(page, "bestsSheet")
        tryCompare(sheet, "opened", true)
        verify(findChild(sheet.contentItem, "best"))
        checkSheet(sheet)
        sheet.close()
        tryCompare(sheet, "opened", false)
    }

    function test_theFormOpensWhatIsRareWhereItIsWrong() {
        const page = makePage(driver.track(3))
        waitForRendering(page)
        tap(findChild(page, "add"))
        const sheet = findChild(page, "runSheet")
        tryCompare(sheet, "opened", true)
        compare(findChild(findChild(sheet.contentItem, "distance"), "input").text, "60")
        verify(!findChild(sheet.contentItem, "temperature").visible)
        checkSheet(sheet)
        type(sheet, "time", "7.1")
        type(sheet, "temperature", "hot")
        tap(findChild(sheet.contentItem, "saveRun"))
        verify(findChild(sheet.contentItem, "temperature").visible)
        verify(sheet.opened)
        checkSheet(sheet)
        sheet.close()
        tryCompare(sheet, "opened", false)
    }

    function openJumps(): var {
        const page = makePage(driver.track(0))
        page.viewModel.jumpsShown = true
        waitForRendering(page)
        tap(findChild(page, "add"))
        const sheet = findChild(page, "jumpSheet")
        tryCompare(sheet, "opened", true)
        return sheet
    }

    function test_aJumpShowsOnlyWhatBelongsToIt() {
        const sheet = openJumps()
        verify(findChild(sheet.contentItem, "contact").visible)
        verify(findChild(sheet.contentItem, "jumpCaution").visible)
        verify(!findChild(sheet.contentItem, "jumpDistance").visible)
        tap(findChild(findChild(sheet.contentItem, "jumpKind"), "option3"))
        verify(!findChild(sheet.contentItem, "contact").visible)
        verify(!findChild(sheet.contentItem, "jumpCaution").visible)
        verify(findChild(sheet.contentItem, "jumpDistance").visible)
        verify(!findChild(sheet.contentItem, "bounds").visible)
        tap(findChild(findChild(sheet.contentItem, "jumpKind"), "option4"))
        verify(findChild(sheet.contentItem, "bounds").visible)
        for (const scale of [1, 2]) {
            Theme.textScale = scale
            checkSheet(sheet)
        }
        Theme.textScale = 1
        sheet.close()
        tryCompare(sheet, "opened", false)
    }

    function test_trialsAreTypedOneAfterTheOther() {
        const sheet = openJumps()
        let added = null
        sheet.viewModel.jumpsAdded.connect(jumps => added = jumps)
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        type(sheet, "box", "30")
        for (const contact of ["180", "200"]) {
            type(sheet, "contact", contact)
            type(sheet, "flight", "500")
            tapIn(scroll, findChild(sheet.contentItem, "addTrial"))
            compare(findChild(findChild(sheet.contentItem, "contact"), "input").text, "")
        }
        compare(sheet.entry.trials.count, 2)
        tapIn(scroll, findChild(findChild(sheet.contentItem, "jumpKind"), "option0")) // the kind it is already
        compare(sheet.entry.trials.count, 2)
        verify(findChild(sheet.contentItem, "trialSummary").text.indexOf("RSI 1.70") > 0)
        tapIn(scroll, findChild(sheet.contentItem, "takeOffTrial"))
        compare(sheet.entry.trials.count, 1)
        tap(findChild(sheet.contentItem, "saveJump"))
        tryCompare(sheet, "opened", false)
        verify(added !== null)
    }

    function test_workShowsItsWeeksAndTheOneThatGrewTooFast() {
        const page = makeWorkPage(6)
        verify(page.work.shown)
        verify(!findChild(page, "openRun"))
        compare(page.work.rows.count, 6)
        const flag = findChild(findChild(page, "workWeeks"), "flag")
        verify(flag.visible)
        verify(flag.text.indexOf("four weeks before") > 0, flag.text)
        checkPage(page)
    }

    function test_workIsTypedAndKeepsWhatStayedTheSame() {
        const page = makeWorkPage(2)
        let added = null
        page.work.workAdded.connect(work => added = work)
        tap(findChild(page, "add"))
        const sheet = findChild(page, "workSheet")
        tryCompare(sheet, "opened", true)
        verify(findChild(sheet.contentItem, "load").visible)
        verify(!findChild(sheet.contentItem, "slope").visible)
        verify(!findChild(sheet.contentItem, "timing").visible)
        compare(findChild(findChild(sheet.contentItem, "workDistance"), "input").text, "30")
        checkSheet(sheet)
        type(sheet, "repetitions", "0")
        tap(findChild(sheet.contentItem, "saveWork"))
        verify(sheet.opened)
        verify(findChild(findChild(sheet.contentItem, "repetitions"), "problem").visible)
        type(sheet, "repetitions", "6")
        type(sheet, "bestTime", "4,9")
        verify(findChild(sheet.contentItem, "timing").visible)
        tap(findChild(sheet.contentItem, "saveWork"))
        tryCompare(sheet, "opened", false)
        verify(added !== null)
    }

    function test_withoutWorkThePageSaysWhatBelongsThere() {
        const page = makeWorkPage(0)
        verify(findChild(page, "emptyWork").visible)
        verify(!findChild(page, "workWeeks").visible)
        verify(!findChild(page, "emptyTrack").visible)
        checkPage(page)
    }

    function test_workIsDeletedByItsBin() {
        const page = makeWorkPage(2)
        let gone = ""
        page.work.workRemoved.connect(key => gone = key)
        tapIn(findChild(page, "scroll"), findChild(page, "removeWork"))
        verify(gone !== "")
    }
}
