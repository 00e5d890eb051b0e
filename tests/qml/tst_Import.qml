import QtQuick
import Fleetrung
import Fleetrung.Views

PageCase {
    id: testCase
    name: "Import"

    Component {
        id: sheetComponent
        ImportSheet {}
    }

    function openSheet(text: string, sets: bool): var {
        const app = driver.app()
        driver.plantSeason()
        driver.putFile("gates.csv", text)
        const sheet = createTemporaryObject(sheetComponent, testCase, { viewModel: app.imports })
        app.imports.begin(sets)
        sheet.open()
        tryCompare(sheet, "opened", true)
        return sheet
    }

    function chooseFile(sheet: var) {
        tapIn(findChild(sheet.contentItem, "sheetScroll"), findChild(sheet.contentItem, "file-gates.csv"))
        driver.settle()
        driver.settle()
        waitForRendering(sheet.contentItem)
    }

    readonly property string gates: "Name;Date;10 m;30 m;Wind\nMira Example;2026-03-01;1,85;4,02;0,3\nGuest;2026-03-01;1,95;4,20;\nMira Example;2026-03-01;abc;4,00;\n"

    function test_theSheetFitsTheSmallestScreenInEveryStep_data() {
        return [{ tag: "100 %", scale: 1 }, { tag: "200 %", scale: 2 }]
    }

    function test_theSheetFitsTheSmallestScreenInEveryStep(data) {
        Theme.textScale = data.scale
        const sheet = openSheet(gates, false)
        checkSheet(sheet)
        chooseFile(sheet)
        checkSheet(sheet)
        Theme.textScale = 1
    }

    function test_runsOfAFileAreAddedByThreeTaps() {
        const sheet = openSheet(gates, false)
        const view = sheet.viewModel
        compare(view.files.count, 1)
        chooseFile(sheet)
        compare(findChild(sheet.contentItem, "importQuestion").visible, false)
        compare(findChild(sheet.contentItem, "addImported").text, "Add 1 run")
        compare(findChild(sheet.contentItem, "importSummary").text, "1 is left out · 1 bad row")
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        tapIn(scroll, findChild(sheet.contentItem, "name1"))
        const picks = findChild(sheet, "pickSheet")
        tryCompare(picks, "opened", true)
        checkSheet(picks)
        tapIn(findChild(picks.contentItem, "sheetScroll"), findChild(picks.contentItem, "pick-add"))
        tryCompare(picks, "opened", false)
        driver.settle()
        compare(findChild(sheet.contentItem, "addImported").text, "Add 2 runs")
        tap(findChild(sheet.contentItem, "addImported"))
        driver.settle()
        tryCompare(sheet, "opened", false)
        compare(driver.storedRuns(), 2)
    }

    function test_anOpenQuestionHoldsTheImportUntilItIsAnswered() {
        const sheet = openSheet("Name;Date;30 m\nMira Example;2026-03-01;4,215\n", false)
        chooseFile(sheet)
        const question = findChild(sheet.contentItem, "importQuestion")
        verify(question.visible)
        verify(question.text.indexOf("4,215") >= 0, question.text)
        verify(!findChild(sheet.contentItem, "addImported").enabled)
        tapIn(findChild(sheet.contentItem, "sheetScroll"), findChild(findChild(sheet.contentItem, "choice-decimal"), "option1"))
        driver.settle()
        verify(!question.visible)
        verify(findChild(sheet.contentItem, "addImported").enabled)
    }

    function test_aColumnGetsItsMeaningAndItsDistance() {
        const sheet = openSheet("Name;Date;Split 1;Split 2\nMira Example;2026-03-01;1,85;4,02\n", false)
        chooseFile(sheet)
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        const picks = findChild(sheet, "pickSheet")
        for (const [column, metres] of [["column2", "10"], ["column3", "30"]]) {
            tapIn(scroll, findChild(sheet.contentItem, column))
            tryCompare(picks, "opened", true)
            type(picks, "pickDistance", metres)
            tap(findChild(picks.contentItem, "saveDistance"))
            tryCompare(picks, "opened", false)
            driver.settle()
        }
        compare(findChild(sheet.contentItem, "addImported").text, "Add 1 run")
        verify(findChild(sheet.contentItem, "column3").detail.indexOf("Split at 30 m") === 0)
    }

    function test_aFileThatIsNoTableSaysWhy() {
        const sheet = openSheet("Name\nMira\n", false)
        chooseFile(sheet)
        const problem = findChild(sheet.contentItem, "importProblem")
        verify(problem.visible)
        verify(problem.text.indexOf("gates.csv") === 0, problem.text)
        verify(findChild(sheet.contentItem, "file-gates.csv").visible)
    }
}
