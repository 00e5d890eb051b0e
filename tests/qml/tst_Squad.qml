import QtQuick
import Fleetrung
import Fleetrung.Views

PageCase {
    id: testCase
    name: "Squad"

    Component { id: pageComponent; SquadPage { anchors.fill: parent } }

    function makePage(view: SquadViewModel): SquadPage {
        return createTemporaryObject(pageComponent, testCase, { viewModel: view, day: driver.squadDay(5), preferences: driver.preferences(), sensors: driver.sensors(0), demoOffered: true })
    }

    function test_thePageFitsTheSmallestScreen() {
        checkPage(findChild(makePage(driver.squad(3)), "athletesPart"))
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
        tap(findChild(findChild(page, "parts"), "option2"))
        waitForRendering(page)
        tapIn(findChild(findChild(page, "devicePart"), "scroll"), findChild(findChild(page, "massChoice"), "option1"))
        compare(driver.preferences().pounds, true)
        driver.preferences().pounds = false
    }

    function test_everyPartFitsTheSmallestScreen_data() {
        return [{ tag: "today", part: 1, name: "todayPart" }, { tag: "device", part: 2, name: "devicePart" }]
    }

    function test_everyPartFitsTheSmallestScreen(data) {
        const page = makePage(driver.squad(3))
        page.part = data.part
        checkPage(findChild(page, data.name))
    }

    function test_whoIsDueIsSaidAndATapShowsTheAthlete() {
        const page = makePage(driver.squad(3))
        let chosen = ""
        page.day.chosen.connect(key => chosen = key)
        tap(findChild(findChild(page, "parts"), "option1"))
        waitForRendering(page)
        const list = findChild(findChild(page, "todayPart"), "scroll")
        compare(list.count, 5)
        const row = list.itemAtIndex(1)
        verify(row.Accessible.name.indexOf("Athlete Number1 · B, Half squat 101 kg") === 0, row.Accessible.name)
        tap(row)
        verify(chosen !== "")
    }

    function test_racksShareTheAthletesOut() {
        const page = makePage(driver.squad(3))
        page.part = 1
        waitForRendering(page)
        tap(findChild(findChild(page, "listKind"), "option1"))
        waitForRendering(page)
        compare(page.day.turns.count, 2)
        compare(findChild(page, "racks").text, "2 racks")
        tap(findChild(page, "fewerRacks"))
        compare(findChild(page, "racks").text, "1 rack")
        // Everybody still lifts: lightest first at the only rack of a round.
        verify(page.day.turns.count >= 1)
    }

    function test_aGroupAloneIsShown() {
        const page = makePage(driver.squad(3))
        page.part = 1
        waitForRendering(page)
        tap(findChild(findChild(page, "groups"), "option2"))
        compare(page.day.due.count, 2)
    }

    function test_twoHundredAthletesAreMadeAsTheyAreSeen() {
        const page = makePage(driver.squad(200))
        waitForRendering(page)
        const list = findChild(page, "scroll")
        compare(list.count, 200)
        verify(list.contentItem.children.length < 40, list.contentItem.children.length + " rows made")
        list.positionViewAtEnd()
        waitForRendering(page)
        verify(findChild(page, "addAthlete").mapToItem(page, 0, 0).y < page.height)
    }
}
