"""What can be told from the sources of the pages: colours stand in Theme alone, words can be translated, and no page
calculates on what it shows."""

import pathlib
import re
import sys

COLOUR = re.compile(r'"#[0-9A-Fa-f]{3,8}"|\bQt\.rgba?\(|\bcolor:\s*"(?!transparent)')
BARE_WORDS = re.compile(r'^\s*(?:text|title|label|hint|placeholderText|name|detail|action)\s*:\s*"[^"]*[A-Za-z]')
ANY_STYLE = re.compile(r"^\s*import\s+QtQuick\.Controls\s*$")


def breaches(folder):
    for path in sorted(pathlib.Path(folder).rglob("*.qml")):
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            place = f"{path.relative_to(folder)}:{number}"
            if path.name != "Theme.qml" and COLOUR.search(line):
                yield f"{place}: a colour stands outside Theme.qml"
            if BARE_WORDS.search(line):
                yield f"{place}: words that qsTr() does not see"
            if ANY_STYLE.search(line):
                yield f"{place}: the style must be named: QtQuick.Controls.Basic"


def self_check():
    """The patterns find what they are for."""
    assert COLOUR.search('    color: "#101315"') and COLOUR.search('color: "red"')
    assert not COLOUR.search('    color: "transparent"') and not COLOUR.search("color: Theme.ink")
    assert BARE_WORDS.search('    text: "Save"') and not BARE_WORDS.search('    text: qsTr("Save")')
    assert ANY_STYLE.search("import QtQuick.Controls") and not ANY_STYLE.search("import QtQuick.Controls.Basic")


if __name__ == "__main__":
    self_check()
    found = list(breaches(sys.argv[1]))
    print("\n".join(found) if found else "the pages hold to it")
    sys.exit(1 if found else 0)
