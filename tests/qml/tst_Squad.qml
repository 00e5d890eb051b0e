import QtQuick
import Fleetrung
import Fleetrung.Views

PageCase {
    id: testCase
    name: "Squad"

    Component { id: pageComponent; SquadPage { anchors.fill: parent } }

    function makePage(view: SquadViewModel): SquadPage {
        return createTemporaryObject(pageComponent, testCase, { viewModel: view, preferences: driver.preferences() })
    }

    function test_thePageFitsTheSmallestScreen() {
        checkPage(makePage(driver.squad(3)))
    }

    function test_anEmptySquadTeaches() {
        const page = makePage(driver.squad(0))
        verify(findChild(page, "emptySquad").visible)
        verify(findChild(page, "addAthlete").main)
    }

    function test_anAthleteNeedsANameAndADayOfBirth() {
        const page = makePage(driver.squad(0))
        let saved = 0
        page.viewModel.saved.connect(() => ++saved)
        waitForRendering(page)
        tapIn(findChild(page, "scroll"), findChild(page, "addAthlete"))
        const sheet = findChild(page, "athleteSheet")
        tryCompare(sheet, "opened", true)
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        tapIn(scroll, findChild(sheet.contentItem, "saveAthlete"))
        verify(sheet.opened)
        compare(saved, 0)
        type(sheet, "name", "Ada Example")
        type(sheet, "born", "1999-05-17")
        type(sheet, "mass", "61,5")
        tapIn(scroll, findChild(sheet.contentItem, "saveAthlete"))
        tryCompare(sheet, "opened", false)
        compare(saved, 1)
    }

    function test_poundsAreChosenHere() {
        const page = makePage(driver.squad(1))
        waitForRendering(page)
        tapIn(findChild(page, "scroll"), findChild(findChild(page, "massChoice"), "option1"))
        compare(driver.preferences().pounds, true)
        driver.preferences().pounds = false
    }
}
