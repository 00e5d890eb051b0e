import QtQuick
import Fleetrung

// Scrolls to what is being typed in, when the keyboard comes and when the focus moves.
Item {
    id: keeper

    required property Flickable scroll
    required property bool active
    readonly property Item typed: Window.window ? Window.window.activeFocusItem : null

    function show() {
        if (active && Theme.keyboard > 0 && typed && inside(typed))
            scroll.contentY = between(typed)
    }
    function inside(item: Item): bool {
        for (let above = item; above; above = above.parent)
            if (above === scroll.contentItem)
                return true
        return false
    }
    function between(item: Item): real {
        const top = item.mapToItem(scroll.contentItem, 0, 0).y
        return Math.max(0, Math.min(top - Theme.scaled(40), scroll.contentHeight - scroll.height))
    }

    onTypedChanged: show()

    Connections {
        target: keeper.scroll
        function onHeightChanged() { keeper.show() }
    }
}
