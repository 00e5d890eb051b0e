import QtQuick
import QtQuick.Templates as T
import QtTest
import Fleetrung

// What every page must pass, on the smallest screen.
TestCase {
    id: testCase

    width: 360
    height: 572 // 640 less the bottom bar
    visible: true
    when: windowShown

    // A test that failed half way leaves nothing behind.
    function cleanup() {
        Theme.textScale = 1
        width = 360
    }

    function visit(item: Item, look: var) {
        if (!item.visible)
            return
        look(item)
        for (let i = 0; i < item.children.length; ++i)
            visit(item.children[i], look)
    }

    function checkTouch(page: Item) {
        let seen = 0
        visit(page, item => {
            if (!(item instanceof T.AbstractButton || item instanceof T.TextField))
                return
            ++seen
            verify(item.height >= 48, item + " " + item.objectName + " is " + item.height + " high")
            verify(item.width >= 48, item + " " + item.objectName + " is " + item.width + " wide")
        })
        verify(seen > 0, "a page without a control")
    }

    function checkNames(page: Item) {
        visit(page, item => {
            if (item instanceof T.AbstractButton)
                verify(item.Accessible.name !== "", item + " " + item.objectName + " has no name")
        })
    }

    // Nothing sticks out at the sides, and the end can be reached.
    function checkScroll(page: Item) {
        const scroll = findChild(page, "scroll")
        verify(scroll.contentHeight > 0)
        visit(scroll.contentItem, item => {
            if (item.width === 0 || item.height === 0)
                return
            const left = item.mapToItem(scroll.contentItem, 0, 0).x
            verify(left >= -15, item + " " + item.objectName + " begins at " + left)
            verify(left + item.width <= scroll.width + 1, item + " " + item.objectName + " ends at " + (left + item.width))
        })
        scroll.contentY = Math.max(0, scroll.contentHeight - scroll.height)
        let bottom = 0
        visit(scroll.contentItem, item => {
            if (item instanceof T.AbstractButton || item instanceof Text)
                bottom = Math.max(bottom, item.mapToItem(scroll, 0, item.height).y)
        })
        verify(bottom <= scroll.height + 1, "the last item ends at " + bottom + " of " + scroll.height)
        scroll.contentY = 0
    }

    function checkPage(page: Item) {
        for (const scale of [1, 2]) {
            Theme.textScale = scale
            waitForRendering(page)
            checkTouch(page)
            checkNames(page)
            checkScroll(page)
        }
        Theme.textScale = 1
    }

    // Controls are large enough and named, nothing sticks out, and what ends the sheet is in sight.
    function checkSheet(sheet: var) {
        waitForRendering(sheet.contentItem)
        checkTouch(sheet.contentItem)
        checkNames(sheet.contentItem)
        const scroll = findChild(sheet.contentItem, "sheetScroll")
        visit(scroll.contentItem, item => {
            if (item.width === 0 || item.height === 0)
                return
            const left = item.mapToItem(scroll.contentItem, 0, 0).x
            verify(left >= 0 && left + item.width <= scroll.width + 1, item + " " + item.objectName + " from " + left + " to " + (left + item.width))
        })
        verify(scroll.height >= 150, "only " + scroll.height + " of the sheet can be seen")
    }

    function tap(item: Item) {
        verify(item, "the control is there")
        verify(item.visible, item.objectName + " is visible")
        verify(item.enabled, item.objectName + " is enabled")
        wait(40) // layouts settle with the next frame
        mouseClick(item)
    }

    function type(sheet: var, field: string, text: string) {
        const input = findChild(findChild(sheet.contentItem, field), "input")
        verify(input, field)
        input.text = text
    }

    // Scrolls the control into view, as a thumb would.
    function tapIn(scroll: Item, item: Item) {
        wait(40)
        const top = item.mapToItem(scroll.contentItem, 0, 0).y
        scroll.contentY = Math.max(0, Math.min(top - 60, scroll.contentHeight - scroll.height))
        tap(item)
    }
}
