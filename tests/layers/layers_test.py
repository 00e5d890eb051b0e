"""Plants one breach at a time into a small sound tree: each must be found, and nothing in the sound tree may be."""

import pathlib
import sys
import tempfile
import unittest

sys.path.insert(0, str(pathlib.Path(__file__).parent))
import layers

SOUND = {
    "CMakeLists.txt": "add_subdirectory(engine)\nfind_package(Qt6 REQUIRED)\n",
    "CMakePresets.json": "{}", "README.md": "", "DEVELOPERS.md": "", "LICENSE": "",
    ".gitignore": "/build/\n*.user\n",
    "build/anything.txt": "",
    "engine/base/numbers.cpp": "#include <charconv>\n#include <fast_float/fast_float.h>\n"
                               "// never strtod, std::to_string or steady_clock\n"
                               'const char* text = "printf(random_device)"; const int many = 1\'000\'000;\n',
    "engine/reps/CMakeLists.txt": "engine_library(reps SOURCES a.cpp MAY_USE fleetrung_motion fleetrung_statistics)\n",
    "engine/reps/a.cpp": '#include "engine/reps/a.hpp"\n#include <vector>\n#include <Eigen/Core>\n'
                         '#include "engine/motion/sample.hpp"\n#include "engine/base/error.hpp"\n'
                         "double random = 1; double time(double x) { return x; }\n",
    "engine/store/b.cpp": "#include <SQLiteCpp/SQLiteCpp.h>\n#include <fstream>\n",
    "mobile/views/c.cpp": '#include <QObject>\n#include "engine/reps/analyse.hpp"\n',
    "mobile/logbook/d.cpp": '#include "engine/store/store.hpp"\n',
    "platform/desk/e.cpp": '#include "mobile/logbook/logbook.hpp"\n#include <cstdio>\n',
    "demo/squad/f.cpp": '#include "mobile/logbook/logbook.hpp"\n',
    "tests/engine/g.cpp": '#include "demo/simulator/simulate.hpp"\n',
}

# What is planted, where, and a word of the message it must bring.
PLANTED = [
    ("engine/motion/x.cpp", "#include <QString>\n", "Qt"),
    ("engine/motion/x.hpp", "#  include <QtCore/qglobal.h>\n", "Qt"),
    ("engine/motion/x.cpp", '#include "engine/reps/analyse.hpp"\n', "may not include engine/reps"),
    ("engine/season/x.cpp", '#include "engine/store/store.hpp"\n', "may not include engine/store"),
    ("engine/store/x.cpp", '#include "engine/reps/repetition.hpp"\n', "may not include engine/reps"),
    ("engine/base/x.cpp", '#include "engine/motion/sample.hpp"\n', "may not include engine/motion"),
    ("engine/reps/x.cpp", '#include "demo/simulator/simulate.hpp"\n', "demo/"),
    ("engine/reps/x.cpp", "#include <mobile/logbook/logbook.hpp>\n", "mobile/"),
    ("engine/reps/x.cpp", '#include "platform/desk/failure.hpp"\n', "platform/"),
    ("engine/reps/x.cpp", '#include "sample.hpp"\n', "sample.hpp"),
    ("engine/reps/x.cpp", "#include <sqlite3.h>\n", "no leave"),
    ("engine/reps/x.cpp", "#include <boost/math/tools/roots.hpp>\n", "no leave"),
    ("engine/reps/x.cpp", "#include <fstream>\n", "only engine/store"),
    ("engine/reps/x.cpp", "#include <sstream>\n", "locale"),
    ("engine/unknown/x.cpp", "int x;\n", "no folder"),
    ("engine/reps/x.cpp", "double x = strtod(text, nullptr);\n", "strtod"),
    ("engine/reps/x.cpp", "double x = std::stod(text);\n", "stod"),
    ("engine/reps/x.cpp", 'int n = std::snprintf(b, 9, "%f", 1.0);\n', "snprintf"),
    ("engine/reps/x.cpp", "auto s = std::to_string(1.5);\n", "to_string"),
    ("engine/reps/x.cpp", "std::ostringstream out;\n", "ostringstream"),
    ("engine/reps/x.cpp", "std::locale here;\n", "std::locale"),
    ("engine/reps/x.cpp", "auto c = std::tolower(letter);\n", "tolower"),
    ("engine/reps/x.cpp", "auto t = std::chrono::system_clock::now();\n", "system_clock"),
    ("engine/reps/x.cpp", "auto t = std::chrono::steady_clock::now();\n", "steady_clock"),
    ("engine/reps/x.cpp", "auto t = std::time(nullptr);\n", "std::time"),
    ("engine/reps/x.cpp", "std::random_device seed;\n", "random_device"),
    ("engine/reps/x.cpp", "/* a comment\n over lines */ std::mt19937 random(1);\n", "mt19937"),
    ("engine/reps/x.cpp", "auto m = Eigen::Matrix3d::Random();\n", "Random"),
    ("engine/reps/x.cpp", 'const char* a = "\\"//"; auto t = steady_clock::now();\n', "steady_clock"),
    ("engine/motion/CMakeLists.txt", "engine_library(motion SOURCES x.cpp MAY_USE fleetrung_reps)\n", "may not link"),
    ("CMakeLists.txt", "find_package(Qt6 REQUIRED)\nadd_subdirectory(engine)\n", "before Qt"),
    ("mobile/views/x.cpp", '#include "platform/desk/failure.hpp"\n', "mobile/ may not include"),
    ("mobile/views/x.cpp", '#include "demo/squad/squad.hpp"\n', "mobile/ may not include"),
    ("mobile/logbook/x.cpp", "#include <QString>\n", "mobile/logbook"),
    ("platform/desk/x.cpp", '#include "demo/squad/squad.hpp"\n', "platform/ may not include"),
    ("demo/squad/x.cpp", '#include "tests/support/tree.hpp"\n', "demo/ may not include"),
    ("notes.txt", "", "not of the layout"),
    ("tools/helper.py", "", "not of the layout"),
]


def tree(folder, files):
    for name, text in files.items():
        path = pathlib.Path(folder) / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")


class PlantedBreaches(unittest.TestCase):
    def test_a_sound_tree_has_none(self):
        with tempfile.TemporaryDirectory() as folder:
            tree(folder, SOUND)
            self.assertEqual(list(layers.breaches(folder)), [])

    def test_each_planted_breach_is_found_and_no_other(self):
        for place, text, word in PLANTED:
            with self.subTest(place=place, text=text), tempfile.TemporaryDirectory() as folder:
                tree(folder, {**SOUND, place: text})
                found = list(layers.breaches(folder))
                self.assertEqual(len(found), 1, found)
                self.assertIn(word, found[0])
                self.assertIn(place.split("/")[0], found[0])

    def test_a_missing_page_of_the_top_level_is_found(self):
        with tempfile.TemporaryDirectory() as folder:
            tree(folder, {name: text for name, text in SOUND.items() if name != "README.md"})
            self.assertEqual(list(layers.breaches(folder)), ["README.md: is missing at the top level"])


if __name__ == "__main__":
    unittest.main()
