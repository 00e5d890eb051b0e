import QtQuick
import Fleetrung
import Fleetrung.Views

PageCase {
    id: testCase
    name: "Track"

    Component { id: pageComponent; TrackPage { anchors.fill: parent } }

    function makePage(view: TrackViewModel): TrackPage {
        return createTemporaryObject(pageComponent, testCase, { viewModel: view })
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

    function test_aJumpShowsOnlyWhatBelongsToIt() {
        const page = makePage(driver.track(0))
        page.viewModel.jumpsShown = true
        waitForRendering(page)
        tap(findChild(page, "add"))
        const sheet = findChild(page, "jumpSheet")
        tryCompare(sheet, "opened", true)
        verify(findChild(sheet.contentItem, "contact").visible)
        verify(!findChild(sheet.contentItem, "jumpDistance").visible)
        tap(findChild(findChild(sheet.contentItem, "jumpKind"), "option3"))
        verify(!findChild(sheet.contentItem, "contact").visible)
        verify(findChild(sheet.contentItem, "jumpDistance").visible)
        sheet.close()
        tryCompare(sheet, "opened", false)
    }
}
