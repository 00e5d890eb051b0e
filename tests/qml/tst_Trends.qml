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

    function test_thePageFitsTheSmallestScreen() {
        const page = makePage(driver.trends())
        verify(!findChild(page, "didItWork").visible) // there is no season to judge
        for (const scale of [1, 2]) {
            Theme.textScale = scale
            waitForRendering(page)
            checkScroll(page)
        }
        Theme.textScale = 1
    }

    function test_theTrendIsToldInWords() {
        const page = makePage(driver.trends())
        verify(findChild(page, "tpvTrend").summary !== "")
        verify(findChild(page, "liftWords").text.indexOf("298 ms") >= 0, findChild(page, "liftWords").text)
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
