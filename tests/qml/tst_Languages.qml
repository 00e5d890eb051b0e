import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Templates as T
import QtTest
import Fleetrung
import Fleetrung.Views

// The whole program in a language for tests (strings in brackets, two fifths longer), in real ones, and from right to left.
TestCase {
    id: testCase
    name: "Languages"
    when: windowShown
    visible: true

    Component { id: mainComponent; Main { width: 360; height: 640 } }

    function makeMain(): Main {
        const window = createTemporaryObject(mainComponent, null, { app: driver.app() })
        verify(window)
        tryCompare(window, "visible", true)
        driver.plantSeason()
        return window
    }
    function cleanup() {
        driver.preferences().language = 0
        driver.speakPseudo(false)
        driver.mirror(false)
        driver.preferences().textScale = 1
    }

    function visit(item: Item, look: var) {
        if (!item.visible)
            return
        look(item)
        for (let i = 0; i < item.children.length; ++i)
            visit(item.children[i], look)
    }

    // Names, numbers, units and days are the same in this language.
    readonly property var same: [
        /^[^A-Za-z]*$/, /^(Mira Example|Outdoor 2026|Championship)/, /^[A-Z]{2}$/,
        /^(English|Deutsch|Español|Français|日本語)$/, /^[\d\s.,%±–−+×·:()\/]*(kg|lb|cm|m|ms|s)?$/, /^(Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)/
    ]
    function sentences(window: Main): var {
        const texts = []
        visit(window.contentItem, item => {
            if (item instanceof Text && item.text !== "" && item.width > 0)
                texts.push(item)
        })
        return texts
    }

    function checkPlace(window: Main, what: string) {
        wait(60)
        for (const item of sentences(window)) {
            const known = item.text.indexOf("[") >= 0 || same.some(form => form.test(item.text))
            verify(known, what + ": not translated: \"" + item.text + "\"")
            verify(!item.truncated, what + ": cut off: \"" + item.text + "\"")
            if (item.wrapMode === Text.NoWrap && item.fontSizeMode === Text.FixedSize)
                verify(item.paintedWidth <= item.width + 1, what + ": sticks out: \"" + item.text + "\"")
        }
    }

    function test_everyStringIsTranslatedAndFits() {
        const window = makeMain()
        verify(driver.speakPseudo(true))
        for (let place = 0; place < 5; ++place) {
            window.place = place
            checkPlace(window, "place " + place)
        }
        const squad = findChild(window, "squadPage")
        for (let part = 1; part < 3; ++part) {
            squad.part = part
            driver.settle()
            checkPlace(window, "squad part " + part)
        }
        window.place = 2
        for (const part of [1, 2]) {
            window.app.track.jumpsShown = part === 1
            window.app.trackWork.shown = part === 2
            driver.settle()
            checkPlace(window, "track part " + part)
        }
        window.place = 0
        window.app.bench.openLift("squat")
        checkPlace(window, "the open lift")
    }

    function test_aLanguageIsChosenAndTakenBackAtOnce() {
        const window = makeMain()
        window.place = 4
        const bar = findChild(window.footer, "place0")
        compare(bar.Accessible.name, "Bench")
        for (const [index, name, add] of [[2, "Bank", "Athletin oder Athlet hinzufügen"], [3, "Banco", "Añadir atleta"],
                                          [4, "Banc", "Ajouter un athlète"], [5, "ベンチ", "選手を追加"]]) {
            window.app.preferences.language = index
            driver.settle()
            compare(findChild(window.footer, "place0").Accessible.name, name)
            compare(findChild(findChild(window, "squadPage"), "addAthlete").text, add)
        }
        window.app.preferences.language = 1
        driver.settle()
        compare(findChild(window.footer, "place0").Accessible.name, "Bench")
    }

    function test_numbersFollowTheLanguageOrTheUsersOwnChoice() {
        const window = makeMain()
        const preferences = window.app.preferences
        preferences.language = 2 // German: comma
        window.app.track.addRun({ distance: "60", time: "7.12", start: 0, runIn: "", wind: "", surface: 1, timing: 3,
                                  day: "2026-03-28" })
        driver.settle()
        const value = () => window.app.track.runs.data(window.app.track.runs.index(0, 0), 258)
        compare(value(), "7,12 s")
        preferences.decimalMark = 1
        compare(value(), "7.12 s")
        preferences.decimalMark = 0
        preferences.language = 1
        driver.settle()
        compare(value(), "7.12 s")
    }

    function test_fromRightToLeftThePagesAreMirrored() {
        const window = makeMain()
        wait(60)
        const x = name => findChild(window.footer, name).mapToItem(null, 0, 0).x
        verify(x("place0") < x("place4"))
        driver.mirror(true)
        tryVerify(() => x("place0") > x("place4"))
        for (let place = 0; place < 5; ++place) {
            window.place = place
            wait(60)
            visit(window.contentItem, item => {
                if (!(item instanceof T.AbstractButton) || item.width === 0)
                    return
                const left = item.mapToItem(null, 0, 0).x
                verify(left >= -15 && left + item.width <= 375, place + ": " + item.objectName + " from " + left)
            })
        }
    }
}
