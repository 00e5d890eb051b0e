"""A language for tests: every string in brackets, with accents, and two fifths longer than English.

Usage: pseudo.py ANY.ts PSEUDO.ts. What shows without brackets was not translated; what is cut off would be in German.
"""

import re
import sys
import xml.etree.ElementTree as tree

ACCENTS = str.maketrans("aceinouyACEINOUY", "áçéíñóúýÁÇÉÍÑÓÚÝ")


def pseudo(text):
    parts = re.split(r"(%(?:\d+|n))", text)
    words = "".join(part if part.startswith("%") else part.translate(ACCENTS) for part in parts)
    letters = sum(character.isalpha() for character in text)
    longer = "".join("·" for _ in range(round(0.4 * letters)))
    broken = " ".join(longer[i:i + 8] for i in range(0, len(longer), 8))  # as words, so that it may wrap
    before, after = re.match(r"\s*", words).group(), re.search(r"\s*$", words).group()
    return f"{before}[{words.strip()}{' ' + broken if broken else ''}]{after}"


def main(source, target):
    document = tree.parse(source)
    document.getroot().set("language", "en_GB")
    for message in document.getroot().iter("message"):
        translation = message.find("translation")
        translation.attrib.pop("type", None)
        translation.text = pseudo(message.findtext("source"))
    document.write(target, encoding="utf-8", xml_declaration=True)


if __name__ == "__main__":
    main(*sys.argv[1:])
