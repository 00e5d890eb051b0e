import QtQuick
import Fleetrung
import Fleetrung.Views

PageCase {
    id: testCase
    name: "Trends"

    Component { id: pageComponent; TrendsPage { anchors.fill: parent } }

    function makePage(view: TrendsViewModel): TrendsPage {
        return createTemporaryObject(pageComponent, testCase, { viewModel: view })
    }

    function test_aWideWindowHoldsTwoColumns() {
        testCase.width = 980
        const page = makePage(driver.trends())
        waitForRendering(page)
        const left = findChild(page, "liftTrend")
        const right = findChild(page, "sprintTrends")
        verify(right.mapToItem(page, 0, 0).x >= left.mapToItem(page, left.width, 0).x)
        checkPage(page)
        Theme.textScale = 2 // too large for two
        waitForRendering(page)
        verify(right.mapToItem(page, 0, 0).y >= left.mapToItem(page, 0, left.height).y)
    }

    function test_thePageFitsTheSmallestScreen() {
        const page = makePage(driver.trends())
        verify(!findChild(page, "didItWork").visible) // there is no season to judge
        checkPage(page)
    }

    function test_theTrendIsToldInWords() {
        const page = makePage(driver.trends())
        verify(findChild(page, "tpvTrend").summary !== "")
        verify(findChild(page, "liftWords").text.indexOf("298 ms") >= 0, findChild(page, "liftWords").text)
    }

    // Where a point of the picture is drawn on its item.
    function placeOn(picture: Item, week: real, value: real): point {
        const a = picture.placeAt(0, 0)
        const b = picture.placeAt(100, 100)
        return Qt.point(100 * (week - a.x) / (b.x - a.x), 100 * (value - a.y) / (b.y - a.y))
    }

    function newest(page: TrendsPage): string {
        const card = findChild(page, "liftPoint")
        tapIn(findChild(page, "scroll"), findChild(card, "later"))
        return findChild(card, "pointText").text
    }

    function test_aTapOnAPointTellsItsSession() {
        for (const scale of [1, 2]) {
            Theme.textScale = scale
            const page = makePage(driver.trends())
            waitForRendering(page)
            const text = newest(page)
            verify(text.indexOf("298 ms ± 6, 120 kg") > 0, text)
            const picture = findChild(page, "tpvTrend")
            verify(picture.summary.indexOf("Chosen: 298 milliseconds") > 0, picture.summary)
            const week = Number(picture.summary.match(/Chosen: 298 milliseconds in week (\d+)/)[1])
            // Four weeks before, where the note is: a finger beside the point is enough.
            findChild(page, "scroll").contentY = Math.max(0, picture.mapToItem(findChild(page, "scroll").contentItem, 0, 0).y - 60)
            waitForRendering(page)
            const at = placeOn(picture, week - 1 - 4 + 0.1, 322)
            mouseClick(picture, at.x + 4, at.y - 3)
            compare(findChild(findChild(page, "liftPoint"), "pointText").text.indexOf("slept badly") > 0, true)
            Theme.textScale = 1
        }
    }

    function test_theSetsOfTheSessionAreOneTapAway() {
        const page = makePage(driver.trends())
        waitForRendering(page)
        newest(page)
        const card = findChild(page, "liftPoint")
        tapIn(findChild(page, "scroll"), findChild(card, "details"))
        compare(findChild(card, "detail").text, "Probe set: 3 × 120 kg, fastest 0.62 m/s.")
        checkPage(page)
        tapIn(findChild(page, "scroll"), findChild(card, "details"))
        tryVerify(() => !findChild(card, "detail"))
    }

    function test_arrowKeysGoFromPointToPoint() {
        const page = makePage(driver.trends())
        waitForRendering(page)
        const picture = findChild(page, "sprintTrend")
        picture.forceActiveFocus()
        keyClick(Qt.Key_Left)
        const text = findChild(findChild(page, "sprintPoint"), "pointText")
        verify(text.text.indexOf("2.10 s, wind +2.6 m/s, gates, track") > 0, text.text)
        keyClick(Qt.Key_Left)
        verify(text.text.indexOf("2.11 s") > 0, text.text)
        keyClick(Qt.Key_Right)
        verify(text.text.indexOf("2.10 s") > 0, text.text)
        keyClick(Qt.Key_Escape)
        compare(text.text, "Touch a point to see its session.")
    }

    function test_theLineOfLoadsPointsToThe1RMOrSaysWhatIsMissing() {
        const page = makePage(driver.trends())
        waitForRendering(page)
        const card = findChild(page, "loads")
        verify(findChild(card, "maximum").text.indexOf("Estimated 1RM 1") === 0, findChild(card, "maximum").text)
        verify(findChild(card, "loadVelocity").visible)
        tapIn(findChild(page, "scroll"), findChild(findChild(card, "loadPoint"), "earlier"))
        verify(findChild(findChild(card, "loadPoint"), "pointText").text.indexOf("120 kg, 0.5") > 0)
        tapIn(findChild(page, "scroll"), findChild(findChild(page, "ladders"), "option1"))
        verify(!findChild(card, "loadVelocity").visible)
        verify(findChild(card, "loadMissing").text.indexOf("two loads at least 10 % apart") > 0)
    }

    function test_filtersThatHideEverythingCanBeCleared() {
        const page = makePage(driver.trends())
        waitForRendering(page)
        const scroll = findChild(page, "scroll")
        tapIn(scroll, findChild(findChild(page, "ladders"), "option1"))
        tapIn(scroll, findChild(findChild(page, "periods"), "option1"))
        const nothing = findChild(page, "noLifts")
        verify(nothing.visible)
        verify(!findChild(page, "tpvTrend").visible)
        checkPage(page)
        tapIn(scroll, findChild(nothing, "clearFilters"))
        verify(!nothing.visible)
        verify(findChild(page, "tpvTrend").visible)
        compare(findChild(page, "sides").options.length, 3)
    }

    function test_runsCanBeLeftOut() {
        const page = makePage(driver.trends())
        waitForRendering(page)
        tapIn(findChild(page, "scroll"), findChild(findChild(page, "sprintFilters"), "option1"))
        verify(findChild(page, "leftOut").text.indexOf("4 of 5 runs") === 0, findChild(page, "leftOut").text)
        verify(findChild(page, "sprintWords").text.indexOf("Best 2.11 s") === 0, findChild(page, "sprintWords").text)
    }

    function test_whatMovedTogetherIsToldWithAllLagsAndNoCause() {
        const view = driver.trends()
        driver.judge(view, true)
        const page = makePage(view)
        checkPage(page)
        const card = findChild(page, "didItWork")
        verify(card.visible)
        verify(findChild(card, "lagPicture").summary.indexOf("2 weeks, 16 with both at 0.72") > 0, findChild(card, "lagPicture").summary)
        compare(findChild(card, "noProof").text, "This is no proof of cause.")
        verify(findChild(card, "chance").text.indexOf("1.2 of 100") > 0)
    }

    function test_tooFewTestsAreCountedAndNoCorrelationIsShown() {
        const view = driver.trends()
        driver.judge(view, false)
        const page = makePage(view)
        checkPage(page)
        verify(!findChild(page, "lagPicture").visible)
        compare(findChild(page, "lag").value, "9 of 12")
        verify(findChild(page, "toLog").text.indexOf("probe set") > 0)
    }

    function test_howItIsJudgedIsToldOnATap() {
        const view = driver.trends()
        driver.judge(view, true)
        const page = makePage(view)
        waitForRendering(page)
        tapIn(findChild(page, "scroll"), findChild(page, "howJudged"))
        const sheet = findChild(page, "howJudgedSheet")
        tryCompare(sheet, "opened", true)
        checkSheet(sheet)
        verify(findChild(sheet.contentItem, "sheetText").text.indexOf("Why no plain correlation is shown") > 0)
    }

    function test_withoutEvidenceThePageTeaches() {
        verify(findChild(makePage(driver.emptyTrends()), "emptyTrends").visible)
    }
}
