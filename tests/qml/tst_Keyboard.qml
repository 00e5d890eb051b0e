import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Templates as T
import QtTest
import Fleetrung
import Fleetrung.Views

// What is typed is never behind the on-screen keyboard, on a small screen, at any text size.
TestCase {
    id: testCase
    name: "Keyboard"
    when: windowShown
    visible: true

    readonly property real keyboardHeight: 260

    Component { id: mainComponent; Main { width: 360; height: 640 } }

    function makeMain(): Main {
        const app = driver.app()
        const window = createTemporaryObject(mainComponent, null, { app: app })
        verify(window)
        tryCompare(window, "visible", true)
        window.requestActivate()
        tryCompare(window, "active", true)
        return window
    }
    function cleanup() {
        driver.preferences().textScale = 1
    }

    function fieldsIn(item: Item, found: var): var {
        if (item instanceof T.TextField && item.visible)
            found.push(item)
        for (let i = 0; i < item.children.length; ++i)
            fieldsIn(item.children[i], found)
        return found
    }

    function checkFields(window: Main, root: Item): int {
        const fields = fieldsIn(root, [])
        for (const field of fields) {
            window.app.keyboard.setHeight(0)
            field.forceActiveFocus()
            window.app.keyboard.setHeight(keyboardHeight)
            wait(60)
            const top = field.mapToItem(null, 0, 0).y
            verify(top >= 0, field.Accessible.name + " begins above the window, at " + top)
            verify(top + field.height <= window.height - keyboardHeight + 1,
                   field.Accessible.name + " ends at " + (top + field.height) + ", the keyboard begins at " + (window.height - keyboardHeight))
        }
        window.app.keyboard.setHeight(0)
        return fields.length
    }

    function test_noFieldOfAFormIsHidden_data() {
        return [{ tag: "athlete", place: 4, sheet: "athleteSheet", scale: 1 }, { tag: "athlete, large", place: 4, sheet: "athleteSheet", scale: 2 },
                { tag: "run", place: 2, sheet: "runSheet", scale: 1 }, { tag: "run, large", place: 2, sheet: "runSheet", scale: 2 },
                { tag: "jump, large", place: 2, sheet: "jumpSheet", scale: 2 }]
    }
    function test_noFieldOfAFormIsHidden(data) {
        const window = makeMain()
        driver.plantSeason()
        driver.settle()
        driver.preferences().textScale = data.scale
        window.place = data.place
        const sheet = findChild(window, data.sheet)
        verify(sheet, data.sheet)
        sheet.open()
        tryCompare(sheet, "opened", true)
        verify(checkFields(window, sheet.contentItem) > 2)
    }

    function test_theLoadOnTheBarIsNotHidden() {
        const window = makeMain()
        driver.plantSeason()
        driver.settle()
        driver.offerStillSensor()
        window.place = 0
        window.app.bench.openLift("squat")
        wait(60)
        const page = findChild(window, "set")
        verify(page)
        compare(checkFields(window, page), 1)
    }

    function test_theBottomBarMakesRoomAndComesBack() {
        const window = makeMain()
        verify(window.footer.visible)
        window.app.keyboard.setHeight(keyboardHeight)
        verify(!window.footer.visible)
        window.app.keyboard.setHeight(0)
        verify(window.footer.visible)
    }
}
