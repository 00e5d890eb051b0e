"""Makes the locales that the tests run under, into a folder of their own: LOCPATH=FOLDER LC_ALL=de_DE.UTF-8 ...

de_DE writes a decimal comma, ar_EG right to left, and the decimal mark of ps_AF has two bytes.
Needs localedef and the locale sources (Debian: package locales).
"""

import os
import pathlib
import subprocess
import sys

NAMES = ("de_DE", "ar_EG", "ps_AF")


def make(folder):
    folder = pathlib.Path(folder)
    folder.mkdir(parents=True, exist_ok=True)
    for name in NAMES:
        target = folder / f"{name}.UTF-8"
        if not target.exists():
            # Under a name of this process first: two tests may make the same locale at the same time.
            scratch = folder / f"{name}.{os.getpid()}"
            subprocess.run(["localedef", "-i", name, "-f", "UTF-8", str(scratch)], check=True)
            try:
                scratch.rename(target)
            except OSError:
                subprocess.run(["rm", "-r", str(scratch)], check=True)
    marks = {name: subprocess.run(["locale", "decimal_point"], check=True, capture_output=True, text=True, env={
        **os.environ, "LOCPATH": str(folder), "LC_ALL": f"{name}.UTF-8"}).stdout.strip() for name in NAMES}
    if marks["de_DE"] != "," or marks["ps_AF"] != "\u066b":
        sys.exit(f"the locales in {folder} do not work: {marks}")


if __name__ == "__main__":
    make(sys.argv[1])
