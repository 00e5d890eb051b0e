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

    function test_withoutEvidenceThePageTeaches() {
        verify(findChild(makePage(driver.emptyTrends()), "emptyTrends").visible)
    }
}
