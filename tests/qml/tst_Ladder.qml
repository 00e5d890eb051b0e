import QtQuick
import Fleetrung
import Fleetrung.Views

PageCase {
    id: testCase
    name: "Ladder"

    Component { id: pageComponent; LadderPage { anchors.fill: parent } }

    function makePage(view: LadderViewModel): LadderPage {
        return createTemporaryObject(pageComponent, testCase, { viewModel: view })
    }

    function test_thePageFitsTheSmallestScreen() {
        checkPage(makePage(driver.ladder()))
    }

    function test_theStairIsToldToScreenReaders() {
        const page = makePage(driver.ladder())
        verify(findChild(page, "stair").summary.indexOf("Half") >= 0)
    }

    function test_followIsKept() {
        const page = makePage(driver.ladder())
        let followed = null
        page.viewModel.answered.connect((decision, yes) => followed = yes)
        waitForRendering(page)
        tapIn(findChild(page, "scroll"), findChild(page, "follow"))
        compare(followed, true)
        verify(!findChild(page, "follow").visible)
        compare(findChild(page, "answer").text, "You follow this.")
    }

    function test_decidingOtherwiseAsksWhy() {
        const page = makePage(driver.ladder())
        let answer = null
        page.viewModel.answered.connect((decision, yes, to, why) => answer = { yes: yes, to: to, why: why })
        waitForRendering(page)
        tapIn(findChild(page, "scroll"), findChild(page, "otherwise"))
        const sheet = findChild(page, "decideSheet")
        tryCompare(sheet, "opened", true)
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        tapIn(scroll, findChild(sheet.contentItem, "keepDecision"))
        verify(sheet.opened)
        verify(findChild(sheet.contentItem, "problem").text !== "")
        findChild(sheet.contentItem, "choice").current = 0
        type(sheet, "why", "race moved")
        tapIn(scroll, findChild(sheet.contentItem, "keepDecision"))
        tryCompare(sheet, "opened", false)
        compare(answer.yes, false)
        compare(answer.to, "quarter")
        compare(answer.why, "race moved")
    }

    function test_withoutASeasonThePageTeaches() {
        const page = makePage(driver.emptyLadder())
        verify(findChild(page, "emptyLadder").visible)
        verify(!findChild(page, "stair").visible)
    }
}
