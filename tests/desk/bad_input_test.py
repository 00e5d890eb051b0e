"""Bad input: one error with file, line and column, exit code 2, nothing on the standard output and nothing stored."""

import os
import subprocess
import time

from desk import HEADER, PROGRAM, DeskTest, main, run, squat_csv

HEAD = ",".join(HEADER) + "\n"
ROW = "0.00,0,0,9.8,0,0,0\n"

# name, content, what the error must hold beside the file's name
BAD_RECORDINGS = [
    ("missing column", "time_s,acc_x_mps2,acc_z_mps2\n0,0,9.8\n", ":line 1, column acc_y_mps2: "),
    ("no clock", "acc_x_g,acc_y_g,acc_z_g\n0,0,1\n", ":line 1, column time_s: "),
    ("text for a number", HEAD + ROW + "0.01,0,fast,9.8,0,0,0\n", ":line 3, column acc_y_mps2: "),
    ("not a number", "# lift: free\n" + HEAD + ROW + "0.01,0,0,nan,0,0,0\n", ":line 4, column acc_z_mps2: "),
    ("infinite", HEAD + ROW + "0.01,0,0,9.8,0,inf,0\n", ":line 3, column gyr_y_radps: "),
    ("empty cell", HEAD + ROW + "0.01,0,0,9.8,0,,0\n", ":line 3, column gyr_y_radps: "),
    ("two readings at one time", HEAD + ROW + "0.00,0,0,9.7,0,0,0\n", ":line 3, column time_s: "),
    ("time backwards", HEAD + "".join(f"{i / 100},0,0,{i},0,0,0\n" for i in range(500, 0, -1)), ":line 8, column time_s: "),
    ("empty file", "", ":line 1: "),
    ("blank file", "\n\n  \n", ":line 1: "),
    ("header only", HEAD, ":line 1: "),
    ("cut-off row", HEAD + ROW + "0.01,0\n", ":line 3: "),
    ("open quotation", HEAD + ROW + '0.01,"0,0,9.8,0,0,0\n', ":line 3: "),
    ("no text", b"\x1f\x8b\x08\x00\x00\x00\x00\x00", ": this is not a text file"),
    ("unknown lift", "# lift: moon-squat\n" + HEAD + ROW, ': there is no lift "moon-squat"; use one of full-squat, '),
    ("load that is none", "# load_kg: lots\n" + HEAD + ROW, ":line 1: "),
    ("two samples", HEAD + ROW + "0.01,0,0,9.8,0,0,0\n", ": "),
    ("ten a second", HEAD + "".join(f"{i / 10},0,0,9.8,0,0,0\n" for i in range(100)), ": "),
    ("no gravity", HEAD + "".join(f"{i / 100},0,0,0.5,0,0,0\n" for i in range(500)), ": "),
]


class BadInput(DeskTest):
    def refused(self, path, *options, command="analyse", file_named=True, **settings):
        """The one line of the error; the folder must be as it was."""
        before = sorted(os.listdir(self.folder))
        result = run(command, path, *options, **settings)
        error = result.stderr.decode()
        self.assertEqual(result.returncode, 2, error)
        self.assertEqual(result.stdout, b"")
        self.assertEqual(error.count("\n"), 1, error)
        if file_named:
            self.assertTrue(error.startswith(str(path)), error)
        self.assertEqual(sorted(os.listdir(self.folder)), before, "nothing may be stored")
        return error

    def test_bad_recordings_are_refused_with_file_line_and_column(self):
        for name, content, expected in BAD_RECORDINGS:
            for json in ([], ["--json"]):
                with self.subTest(name, json=json):
                    path = self.file("recording.csv", content)
                    self.assertIn(str(path) + expected, self.refused(path, *json))

    def test_a_file_of_two_gigabytes_is_refused_at_once_and_unread(self):
        path = self.file("huge.csv", HEAD)
        with open(path, "r+b") as file:
            file.truncate(2 * 1024**3)  # sparse: it takes no room on the disk
        self.assertIn("larger than 256 MB", self.refused(path))
        started = time.monotonic()
        process = subprocess.Popen([PROGRAM, "analyse", path], stderr=subprocess.DEVNULL)
        _, status, usage = os.wait4(process.pid, 0)
        process.returncode = os.waitstatus_to_exitcode(status)
        self.assertEqual(process.returncode, 2)
        self.assertLess(time.monotonic() - started, 2)
        self.assertLess(usage.ru_maxrss, 256 * 1024, "kB held in memory: the file was read")

    def test_a_pipe_that_never_ends_is_refused(self):
        self.assertIn("larger than 256 MB", self.refused("/dev/zero"))

    def test_a_folder_is_refused(self):
        self.assertIn("is a folder", self.refused(self.folder))

    def test_a_file_that_is_not_there_is_refused(self):
        self.assertIn("no such file", self.refused(self.folder / "absent.csv"))
        self.assertIn("no such file", self.refused(self.folder / "absent" / "recording.csv"))

    def test_a_file_without_permission_is_refused(self):
        path = self.file("private.csv", squat_csv())
        path.chmod(0)
        self.folder.chmod(0o755)
        somebody = {"user": 65534, "group": 65534} if os.geteuid() == 0 else {}
        try:
            error = self.refused(path, **somebody)
        except PermissionError:
            self.skipTest("the program itself cannot be run by another user here")
        self.assertIn("no permission", error)

    def test_options_that_cannot_be_meant_are_refused(self):
        path = self.file("recording.csv", squat_csv())
        self.assertIn("--lift: ", self.refused(path, "--lift", "squat", file_named=False))
        for load in ("heavy", "-5", "nan", "120,5", "5000", " ", ""):
            with self.subTest(load=load):
                self.assertIn("--load: ", self.refused(path, "--load", load, file_named=False))
        self.assertIn("--columns: ", self.refused(path, "--columns", "speed=v", file_named=False))
        self.assertIn(":line 3, column ax: ", self.refused(path, "--columns", "acc_x_mps2=ax"))

    def test_a_command_line_that_cannot_be_read_ends_with_2(self):
        for arguments in ([], ["dance"], ["analyse"], ["analyse", "a.csv", "--fast"], ["plan"], ["report"]):
            with self.subTest(arguments=arguments):
                result = run(*arguments)
                self.assertEqual((result.returncode, result.stdout), (2, b""))
                self.assertNotEqual(result.stderr, b"")

    def test_help_is_no_error(self):
        for arguments in (["--help"], ["--version"], ["analyse", "--help"], ["plan", "--help"], ["report", "--help"]):
            with self.subTest(arguments=arguments):
                result = run(*arguments)
                self.assertEqual((result.returncode, result.stderr), (0, b""))
                self.assertNotEqual(result.stdout, b"")

    def test_an_output_that_takes_nothing_is_a_failure(self):
        path = self.file("recording.csv", squat_csv())
        with open("/dev/full", "wb") as full:
            result = subprocess.run([PROGRAM, "analyse", path], stdout=full, stderr=subprocess.PIPE)
        self.assertEqual(result.returncode, 1)
        self.assertIn(b"standard output", result.stderr)


if __name__ == "__main__":
    main()
