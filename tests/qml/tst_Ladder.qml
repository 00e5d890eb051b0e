import QtQuick
import Fleetrung
import Fleetrung.Views

PageCase {
    id: testCase
    name: "Ladder"

    Component { id: pageComponent; LadderPage { anchors.fill: parent } }

    function makePage(view: LadderViewModel): LadderPage {
        return createTemporaryObject(pageComponent, testCase, { viewModel: view, season: driver.season(), lifts: driver.seasonLifts() })
    }

    function test_aWideWindowHoldsTwoColumns() {
        testCase.width = 980
        const page = makePage(driver.ladder())
        waitForRendering(page)
        const left = findChild(page, "stair")
        const right = findChild(page, "decision")
        verify(right.mapToItem(page, 0, 0).x >= left.mapToItem(page, left.width, 0).x)
        verify(Math.abs(right.mapToItem(page, 0, 0).y - left.mapToItem(page, 0, 0).y) < 200)
        checkPage(page)
        Theme.textScale = 2 // too large for two
        waitForRendering(page)
        verify(right.mapToItem(page, 0, 0).y >= left.mapToItem(page, 0, left.height).y)
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

    function openSheet(page: LadderPage, button: string, sheetName: string): var {
        tapIn(findChild(page, "scroll"), findChild(page, button))
        const sheet = findChild(page, sheetName)
        tryCompare(sheet, "opened", true)
        return sheet
    }

    function test_aTapOnAStepOfTheStairShowsWhatItRestsOn() {
        const page = makePage(driver.ladder())
        waitForRendering(page)
        const stair = findChild(page, "stair")
        // Where week 18 of the season and the third rung are drawn: the stay on half squat.
        const a = stair.placeAt(0, 0)
        const b = stair.placeAt(100, 100)
        mouseClick(stair, 100 * (18 - a.x) / (b.x - a.x), 100 * (2 - a.y) / (b.y - a.y))
        const sheet = findChild(page, "stepSheet")
        tryCompare(sheet, "opened", true)
        compare(sheet.title, "Half squat")
        compare(findChild(sheet.contentItem, "stepRule").text, "Step for evidence")
        // The day stands in the locale's form, not in the engine's.
        verify(findChild(sheet.contentItem, "stepReason").text.indexOf("05/01/2026") > 0, findChild(sheet.contentItem, "stepReason").text)
        compare(findChild(sheet.contentItem, "stepEvidence").value, "40 ms ± 9")
        compare(findChild(sheet.contentItem, "stepAnswer").text, "You follow this.")
    }

    function test_theStepsAreAListToo() {
        const page = makePage(driver.ladder())
        waitForRendering(page)
        const list = openSheet(page, "steps", "stepsSheet")
        const row = findChild(list.contentItem, "step2")
        verify(row.Accessible.name.indexOf("Quarter squat, planned for") === 0, row.Accessible.name)
        tap(row)
        const sheet = findChild(page, "stepSheet")
        tryCompare(sheet, "opened", true)
        verify(findChild(sheet.contentItem, "stepMissing").text.indexOf("spread (up to 18)") > 0)
    }

    function test_bothSidesOfTheEvidenceAreTold() {
        const page = makePage(driver.ladder())
        waitForRendering(page)
        const sheet = openSheet(page, "premise", "premiseSheet")
        const text = findChild(sheet.contentItem, "sheetText").text
        verify(text.indexOf("for:") > 0 && text.indexOf("against:") > 0, text)
    }

    function test_aCompetitionIsMovedByTouchAndTheConsequencesAreSeenFirst() {
        const page = makePage(driver.ladder())
        let kept = 0
        page.season.seasonChanged.connect(() => ++kept)
        waitForRendering(page)
        const sheet = openSheet(page, "editSeason", "seasonEditSheet")
        const row = findChild(sheet.contentItem, "competition1")
        compare(row.title, "Championship")
        tap(row)
        const form = findChild(page, "competitionSheet")
        tryCompare(form, "opened", true)
        const chosen = findChild(form.contentItem, "chosenDay")
        compare(chosen.text, "Saturday, 6 June 2026")
        const scroll = findChild(form.contentItem, "sheetScroll")
        tapIn(scroll, findChild(form.contentItem, "move7"))
        compare(chosen.text, "Saturday, 13 June 2026")
        verify(page.season.consequences.count > 0)
        const first = page.season.consequences.data(page.season.consequences.index(0, 0), 256)
        verify(first.indexOf("/2026") > 0, first)
        compare(kept, 0)
        tapIn(scroll, findChild(form.contentItem, "cell0")) // 1 June 2026 is a Monday
        compare(chosen.text, "Monday, 1 June 2026")
        tap(findChild(form.contentItem, "saveCompetition"))
        compare(kept, 1)
        tryCompare(form, "opened", false)
    }

    function test_theSeasonCannotLoseItsMainCompetition() {
        const page = makePage(driver.ladder())
        waitForRendering(page)
        const sheet = openSheet(page, "editSeason", "seasonEditSheet")
        tap(findChild(sheet.contentItem, "competition1"))
        const form = findChild(page, "competitionSheet")
        tryCompare(form, "opened", true)
        tapIn(findChild(form.contentItem, "sheetScroll"), findChild(form.contentItem, "deleteCompetition"))
        verify(form.opened)
        verify(findChild(form.contentItem, "seasonProblem").text !== "")
    }

    function test_theWeekAndTheWeightRoomAreChangedByTouch() {
        const page = makePage(driver.ladder())
        let said = []
        page.season.seasonChanged.connect((setup, before, text) => said.push(text))
        waitForRendering(page)
        const sheet = openSheet(page, "editSeason", "seasonEditSheet")
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        tapIn(scroll, findChild(findChild(sheet.contentItem, "liftDays"), "option5"))
        tapIn(scroll, findChild(findChild(sheet.contentItem, "equipment"), "option2"))
        compare(said.length, 2)
        verify(!findChild(sheet.contentItem, "keepMinutes").visible)
        findChild(findChild(sheet.contentItem, "minutes"), "input").text = "70"
        tapIn(scroll, findChild(sheet.contentItem, "keepMinutes"))
        compare(said.length, 3)
        for (const scale of [1, 2]) {
            Theme.textScale = scale
            checkSheet(sheet)
        }
    }

    function test_daysAwayAreAddedByTouch() {
        const page = makePage(driver.ladder())
        let setup = 0
        page.season.seasonChanged.connect(() => ++setup)
        waitForRendering(page)
        const sheet = openSheet(page, "editSeason", "seasonEditSheet")
        tapIn(findChild(sheet.contentItem, "sheetScroll"), findChild(sheet.contentItem, "addBlock"))
        const form = findChild(page, "blockSheet")
        tryCompare(form, "opened", true)
        const scroll = findChild(form.contentItem, "sheetScroll")
        const last = findChild(findChild(form.contentItem, "lastDay"), "chosenDay")
        compare(last.text, "Sunday, 5 April 2026")
        tapIn(scroll, findChild(findChild(form.contentItem, "firstDay"), "move7"))
        compare(last.text, "Sunday, 12 April 2026") // the block moves as a whole
        tapIn(scroll, findChild(findChild(form.contentItem, "lastDay"), "move-7"))
        verify(findChild(findChild(form.contentItem, "lastDay"), "dayProblem").text !== "")
        verify(!findChild(form.contentItem, "saveBlock").enabled)
        tapIn(scroll, findChild(findChild(form.contentItem, "lastDay"), "move7"))
        tap(findChild(form.contentItem, "saveBlock"))
        compare(setup, 1)
    }

    function test_aBoxIsAddedAsTyped() {
        const page = makePage(driver.ladder())
        let setups = 0
        page.season.seasonChanged.connect(() => ++setups)
        waitForRendering(page)
        const sheet = openSheet(page, "editSeason", "seasonEditSheet")
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        tapIn(scroll, findChild(sheet.contentItem, "addBox"))
        compare(setups, 0)
        verify(findChild(findChild(sheet.contentItem, "newBox"), "problem").text !== "")
        findChild(findChild(sheet.contentItem, "newBox"), "input").text = "36"
        tapIn(scroll, findChild(sheet.contentItem, "addBox"))
        compare(setups, 1)
    }

    function test_theSheetsFitTheSmallestScreenAtTwiceTheText_data() {
        return [{ tag: "steps", sheet: "stepsSheet" }, { tag: "step", sheet: "stepSheet" },
                { tag: "season", sheet: "seasonEditSheet" }, { tag: "competition", sheet: "competitionSheet" },
                { tag: "block", sheet: "blockSheet" }]
    }

    function test_theSheetsFitTheSmallestScreenAtTwiceTheText(data) {
        const page = makePage(driver.ladder())
        page.ladder.openStep(1)
        page.season.editCompetition(0)
        Theme.textScale = 2
        if (data.sheet === "competitionSheet" || data.sheet === "blockSheet") { // lies over the season
            findChild(page, "seasonEditSheet").open()
            tryCompare(findChild(page, "seasonEditSheet"), "opened", true)
        }
        const sheet = findChild(page, data.sheet)
        sheet.open()
        tryCompare(sheet, "opened", true)
        checkSheet(sheet)
        Theme.textScale = 1
    }

    function test_withoutASeasonThePageTeaches() {
        const page = makePage(driver.emptyLadder())
        verify(findChild(page, "emptyLadder").visible)
        verify(!findChild(page, "stair").visible)
    }

    function test_theLiftsOfTheSeasonAreChosenAndOneOfOnesOwnIsMade() {
        const page = makePage(driver.ladder())
        let kept = null
        page.lifts.seasonChanged.connect((setup, before, said) => kept = said)
        waitForRendering(page)
        const edit = openSheet(page, "editSeason", "seasonEditSheet")
        tapIn(findChild(edit.contentItem, "sheetScroll"), findChild(edit.contentItem, "editLifts"))
        const sheet = findChild(edit, "seasonLiftsSheet")
        tryCompare(sheet, "opened", true)
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        compare(findChild(sheet.contentItem, "ladder0").chosen, true)
        tapIn(scroll, findChild(findChild(sheet.contentItem, "ladder2"), "toggle"))
        verify(kept !== null)
        compare(findChild(sheet.contentItem, "ladder2").chosen, true)
        checkSheet(sheet)

        tapIn(scroll, findChild(sheet.contentItem, "addOwn"))
        const from = findChild(sheet, "fromSheet")
        tryCompare(from, "opened", true)
        tapIn(findChild(from.contentItem, "sheetScroll"), findChild(from.contentItem, "from0"))
        const own = findChild(sheet, "ownSheet")
        tryCompare(own, "opened", true)
        type(own, "ladderName", "Squat to benches")
        const ownScroll = findChild(own.contentItem, "sheetScroll")
        tapIn(ownScroll, findChild(own.contentItem, "rung1"))
        const rung = findChild(own, "rungSheet")
        tryCompare(rung, "opened", true)
        checkSheet(rung)
        type(rung, "rangeTo", "200") // more than a body is long
        mouseClick(findChild(rung.contentItem, "saveRung"))
        verify(rung.opened)
        verify(findChild(rung.contentItem, "rangeTo").problem !== "")
        type(rung, "rangeTo", "50")
        mouseClick(findChild(rung.contentItem, "saveRung"))
        tryCompare(rung, "opened", false)
        checkSheet(own)
        kept = null
        mouseClick(findChild(own.contentItem, "saveLadder"))
        tryCompare(own, "opened", false)
        verify(kept.indexOf("Squat to benches") === 0, kept)
    }

    function test_aLiftBesideTheLaddersIsAdded() {
        const page = makePage(driver.ladder())
        waitForRendering(page)
        const edit = openSheet(page, "editSeason", "seasonEditSheet")
        tapIn(findChild(edit.contentItem, "sheetScroll"), findChild(edit.contentItem, "editLifts"))
        const sheet = findChild(edit, "seasonLiftsSheet")
        tryCompare(sheet, "opened", true)
        tapIn(findChild(sheet.contentItem, "sheetScroll"), findChild(sheet.contentItem, "addSecondary"))
        const form = findChild(sheet, "secondarySheet")
        tryCompare(form, "opened", true)
        checkSheet(form)
        mouseClick(findChild(form.contentItem, "saveSecondary"))
        verify(form.opened) // it has no name
        type(form, "name", "Hip thrust")
        mouseClick(findChild(form.contentItem, "saveSecondary"))
        tryCompare(form, "opened", false)
        compare(page.lifts.secondary.count, 1)
    }
}
