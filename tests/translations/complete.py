"""Every string of the interface is translated into every language, with its places for values.

Usage: complete.py LUPDATE SOURCE. Reads the strings of the program anew, so that a new one is found missing at once.
"""

import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as tree


def messages(path):
    """{(context, source, comment): translation}; the translation is None where it is not finished."""
    found = {}
    for context in tree.parse(path).getroot().findall("context"):
        for message in context.findall("message"):
            translation = message.find("translation")
            finished = translation is not None and translation.get("type") is None and translation.text
            comment = message.findtext("comment") or ""
            found[context.findtext("name"), message.findtext("source"), comment] = translation.text if finished else None
    return found


def faults(language, wanted, path):
    have = messages(path)
    for context, source, _ in sorted(wanted - have.keys()):
        yield f"{language}: {context}: not there, run mobile/translations/update: {source!r}"
    for context, source, _ in sorted(have.keys() - wanted):
        yield f"{language}: {context}: no longer in the program, run mobile/translations/update: {source!r}"
    for (context, source, _), translation in have.items():
        if translation is None:
            yield f"{language}: {context}: not translated: {source!r}"
        elif sorted(re.findall(r"%(?:\d+|n)", source)) != sorted(re.findall(r"%(?:\d+|n)", translation)):
            yield f"{language}: {context}: other places for values: {source!r} -> {translation!r}"
        elif (source[:1] == " ", source[-1:] == " ") != (translation[:1] == " ", translation[-1:] == " "):
            yield f"{language}: {context}: a space at an end is lost or new: {source!r} -> {translation!r}"


def main(lupdate, source):
    top = pathlib.Path(source)
    with tempfile.TemporaryDirectory() as folder:
        fresh = pathlib.Path(folder) / "fresh_de.ts"
        subprocess.run([lupdate, "-silent", "-I", ".", "-locations", "none", "-source-language", "en", "-target-language", "de",
                        "-recursive", "mobile", "qml", "-ts", str(fresh)], cwd=top, check=True, stderr=subprocess.DEVNULL)
        wanted = messages(fresh).keys()
    if len(wanted) < 1000:
        sys.exit(f"only {len(wanted)} strings were read: is the folder right?")
    found = []
    for language in ("de", "es", "fr", "ja"):
        found += faults(language, wanted, top / "mobile/translations" / f"fleetrung_{language}.ts")
    print("\n".join(found) or f"{len(wanted)} strings, each in four languages")
    sys.exit(1 if found else 0)


if __name__ == "__main__":
    main(*sys.argv[1:])
