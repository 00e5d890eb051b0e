"""The layers of the tree, as rules that a program can check: who may include whom, and what the engine must not touch.

Run as a program with the top folder as argument it prints every breach and fails when there is one.
"""

import pathlib
import re
import sys

# Every folder of the engine, and the folders of the engine it may include beside itself.
MAY_INCLUDE = {
    "base": set(),
    "statistics": {"base"},
    "motion": {"base"},
    "sensor": {"base", "motion", "statistics"},
    "reps": {"base", "statistics", "motion"},
    "jumps": {"base", "statistics", "motion"},
    "sprint": {"base", "statistics"},
    "track": {"base", "statistics", "motion", "sprint", "jumps"},
    "strength": {"base", "statistics", "motion", "reps", "jumps"},
    "season": {"base", "statistics", "motion", "reps", "jumps", "strength", "sprint"},
    "transfer": {"base", "statistics"},
    "report": {"base", "statistics", "motion", "reps", "jumps", "strength", "sprint", "season", "transfer",
               "track"},
    "store": {"base"},
    "importing": {"base"},
}

# The top folders that each top folder may include. tests/ may include everything.
TOP_MAY_INCLUDE = {
    "engine": {"engine"},
    "mobile": {"mobile", "engine"},
    "qml": {"qml", "mobile"},
    "platform": {"platform", "mobile", "engine"},
    "demo": {"demo", "platform", "mobile", "engine"},
}

TOP_LEVEL_FILES = {"CMakeLists.txt", "CMakePresets.json", "README.md", "DEVELOPERS.md", "LICENSE"}
TOP_LEVEL_FOLDERS = {"engine", "mobile", "qml", "platform", "tests", "demo", "store-assets"}

# Foreign headers of the engine, by folder; "*" holds for all. The standard library is told by its names without a dot.
FOREIGN = {
    "*": r"(Eigen|tl|nlohmann)/.*",
    "base": r"valijson/.*|fast_float/fast_float\.h|sodium\.h|csv\.h|locale\.h",  # locale.h: to shut the locale out of the JSON library
    "store": r"(SQLiteCpp|cereal)/.*|sqlite3\.h|zstd\.h|sodium\.h",
}
STANDARD = r"[a-z_0-9]+"
FILES_AND_STREAMS = {"fstream", "iostream", "cstdio", "filesystem", "ostream", "istream"}  # only the store has files
LOCALE_HEADERS = {"locale", "clocale", "sstream", "iomanip", "regex"}

FORBIDDEN_IN_ENGINE = {
    "follows the machine's locale (use engine/base/numbers.hpp)": re.compile(
        r"\b(strto(?:d|f|ld|l|ll|ul|ull|imax)|ato(?:f|i|l|ll)|sto(?:d|f|ld|i|l|ll|ul|ull)"
        r"|v?(?:f|s|sn|d|as)?printf|v?[fs]?scanf|to_w?string|[io]?w?stringstream|setlocale|localeconv"
        r"|std::locale|std::v?format(?:_to|_to_n)?|isalpha|isalnum|isspace|isupper|islower|ispunct|tolower|toupper)\b(?!\s*=)"),
    "reads a clock (times come in as arguments)": re.compile(
        r"\b(system_clock|steady_clock|high_resolution_clock|utc_clock|file_clock|gettimeofday|clock_gettime|timespec_get"
        r"|localtime(?:_r)?|gmtime(?:_r)?|mktime|std::time|std::clock)\b"),
    "draws random numbers (seeds and identifiers come in as arguments)": re.compile(
        r"\b(random_device|mt19937(?:_64)?|minstd_rand0?|default_random_engine|srand|rand|drand48|getrandom|arc4random"
        r"|randombytes\w*|(?:uniform|normal|bernoulli|poisson)_\w*distribution|setRandom|(?<=::)Random)\b"),
}

CODE = {".cpp", ".hpp", ".h", ".cc"}


def without_comments(text, keep_strings):
    """The program without comments, lines kept; string and character literals emptied unless they are kept."""
    token = re.compile(
        r'//[^\n]*|/\*.*?\*/|R"(?P<mark>[^(\s]*)\(.*?\)(?P=mark)"|"(?:\\.|[^"\\\n])*"'
        r"|(?<![0-9A-Za-z_])'(?:\\.|[^'\\\n])+'",
        re.DOTALL)

    def replacement(match):
        found = match.group()
        lines = "\n" * found.count("\n")
        if found.startswith("/"):
            return " " + lines
        return found if keep_strings else '""' + lines

    return token.sub(replacement, text)


def code_files(folder):
    return sorted(path for path in folder.rglob("*") if path.suffix in CODE and path.is_file())


def included(text):
    """(line number, header, quoted) of every include."""
    for number, line in enumerate(without_comments(text, keep_strings=True).splitlines(), 1):
        match = re.match(r'\s*#\s*include\s*(["<])([^">]+)[">]', line)
        if match:
            yield number, match.group(2), match.group(1) == '"'


def engine_include_breach(folder, header, quoted):
    """Why a file of engine/<folder> must not include the header; None where it may."""
    if header.startswith("Q") or header.startswith("Qt"):
        return f"the engine stays free of Qt: <{header}>"
    if quoted or header.split("/")[0] in TOP_LEVEL_FOLDERS:
        parts = header.split("/")
        if parts[0] != "engine" or len(parts) < 3:
            return f'engine/{folder} may include only "engine/<folder>/<file>", not "{header}"'
        if parts[1] != folder and parts[1] not in MAY_INCLUDE.get(folder, set()):
            return f"engine/{folder} may not include engine/{parts[1]}: {header}"
        return None
    if header in LOCALE_HEADERS:
        return f"<{header}> follows the machine's locale"
    if header in FILES_AND_STREAMS and folder != "store":
        return f"<{header}>: only engine/store has files"
    if re.fullmatch(STANDARD, header):
        return None
    allowed = [FOREIGN["*"], FOREIGN.get(folder, "(?!)")]
    if any(re.fullmatch(pattern, header) for pattern in allowed):
        return None
    return f"engine/{folder} has no leave to include <{header}>"


def check_engine(root):
    for path in code_files(root / "engine"):
        relative = path.relative_to(root)
        if len(relative.parts) < 3 or relative.parts[1] not in MAY_INCLUDE:
            yield f"{relative}: no folder of the engine that layers.py knows"
            continue
        text = path.read_text(encoding="utf-8")
        for number, header, quoted in included(text):
            reason = engine_include_breach(relative.parts[1], header, quoted)
            if reason:
                yield f"{relative}:{number}: {reason}"
        for number, line in enumerate(without_comments(text, keep_strings=False).splitlines(), 1):
            if line.lstrip().startswith("#"):
                continue
            for reason, pattern in FORBIDDEN_IN_ENGINE.items():
                match = pattern.search(line)
                if match:
                    yield f"{relative}:{number}: {match.group()} {reason}"


def check_links(root):
    """The link sets say the same as the includes."""
    for path in sorted((root / "engine").glob("*/CMakeLists.txt")):
        folder = path.parent.name
        for target in re.findall(r"\bfleetrung_(\w+)", re.sub(r"#.*", "", path.read_text(encoding="utf-8"))):
            if target != folder and target not in MAY_INCLUDE.get(folder, set()):
                yield f"{path.relative_to(root)}: engine/{folder} may not link engine/{target}"
    top = (root / "CMakeLists.txt").read_text(encoding="utf-8")
    engine, qt = re.search(r"add_subdirectory\(engine\)", top), re.search(r"find_package\(Qt", top)
    if not engine or (qt and qt.start() < engine.start()):
        yield "CMakeLists.txt: engine/ must be added before Qt is found, so that it cannot see Qt"


def check_upper_layers(root):
    for top, allowed in TOP_MAY_INCLUDE.items():
        if top == "engine":
            continue
        for path in code_files(root / top):
            relative = path.relative_to(root)
            for number, header, _ in included(path.read_text(encoding="utf-8")):
                first = header.split("/")[0]
                if first in TOP_LEVEL_FOLDERS and first not in allowed:
                    yield f"{relative}:{number}: {top}/ may not include {header}"
                if relative.parts[:2] == ("mobile", "logbook") and header.startswith("Q"):
                    yield f"{relative}:{number}: mobile/logbook stays free of Qt: <{header}>"


def check_top_level(root):
    ignored = set()
    if (root / ".gitignore").exists():
        ignored = set(re.findall(r"^/([^/\n]+)/?$", (root / ".gitignore").read_text(encoding="utf-8"), re.MULTILINE))
    names = {path.name for path in root.iterdir() if not path.name.startswith(".")}
    for name in sorted(names - ignored - TOP_LEVEL_FILES - TOP_LEVEL_FOLDERS):
        yield f"{name}: stands at the top level and is not of the layout"
    for name in sorted(TOP_LEVEL_FILES - names):
        yield f"{name}: is missing at the top level"


def breaches(root):
    root = pathlib.Path(root)
    for check in (check_engine, check_links, check_upper_layers, check_top_level):
        yield from check(root)


if __name__ == "__main__":
    found = list(breaches(sys.argv[1]))
    print("\n".join(found) if found else "the layers hold")
    sys.exit(1 if found else 0)
