"""`fleetrung-desk plan --calendar`, read by a program that is not ours (Debian's python3-icalendar), against the plan's
own JSON. The rules of the standard are cited beside each check: RFC 5545, and RFC 5546 for updates."""

import datetime
import json
import os
import sys

from desk import SEASON, SKIPPED, DeskTest, main, run

try:
    import icalendar
except ImportError:
    print("python3-icalendar is not installed (platform/linux/setup installs it): the calendar is not checked")
    sys.exit(SKIPPED)

DAY = datetime.timedelta(days=1)
FIRST, LATER = "2026-01-01T10:00:00Z", "2026-02-01T11:00:00Z"
MAIN_RACE = "陸上競技大会 🏃🏽, Wien; der \\ große Lauf\nzweite Zeile 陸上競技大会陸上競技大会陸上競技大会"


def moved(name, day):
    competitions = [{**one, "date": day} if one["name"] == name else one for one in SEASON["competitions"]]
    return {**SEASON, "competitions": competitions}


class Calendar(DeskTest):
    def setUp(self):
        super().setUp()
        self.path = self.folder / "season.ics"

    def plan(self, season=SEASON, stamp=FIRST, *options, **environment):
        path = self.file("season.json", json.dumps(season))
        return json.loads(self.output("plan", path, "--json", "--calendar", self.path, "--stamp", stamp, *options,
                                      **environment))

    def calendar(self):
        calendar = icalendar.Calendar.from_ical(self.path.read_bytes())
        self.assertEqual([error for event in calendar.walk() for error in event.errors], [])
        return calendar

    def events(self, category=None):
        events = [event for event in self.calendar().walk("VEVENT")
                  if category in (None, event["CATEGORIES"].to_ical().decode())]
        self.assertEqual(len({event["UID"] for event in events}), len(events))  # RFC 5545 section 3.8.4.7
        return events

    def event(self, category, summary):
        found = [event for event in self.events(category) if event["SUMMARY"] == summary]
        self.assertEqual(len(found), 1, summary)
        return found[0]

    def test_the_calendar_says_what_the_plan_says(self):
        season = json.loads(json.dumps(SEASON))
        season["competitions"][1]["name"] = MAIN_RACE  # section 3.3.11 (text) and 3.1 (folding), read by the other
        plan = self.plan(season)
        calendar = self.calendar()
        self.assertEqual((calendar["VERSION"], calendar["METHOD"]), ("2.0", "PUBLISH"))
        self.assertTrue(all(len(line) <= 75 for line in self.path.read_bytes().split(b"\r\n")))  # section 3.1

        competitions = {(str(event["SUMMARY"]), event["DTSTART"].dt, event["DTEND"].dt)
                        for event in self.events("competition")}
        dates = {one["name"]: datetime.date.fromisoformat(one["date"]) for one in plan["competitions"]}
        self.assertEqual(competitions, {(name, day, day + DAY) for name, day in dates.items()})  # DTEND: section 3.6.1

        phases = [(str(event["SUMMARY"]), event["DTSTART"].dt.isoformat(), (event["DTEND"].dt - DAY).isoformat())
                  for event in self.events("phase")]
        self.assertEqual(sorted(phases, key=lambda phase: phase[1]),
                         [("Phase: " + phase["phase"].replace("-", " ").replace("pre c", "pre-c"), phase["from"],
                           phase["to"]) for phase in plan["phases"]])
        self.assertEqual({event["TRANSP"] for event in self.events("phase")}, {"TRANSPARENT"})  # section 3.8.2.7

    def test_every_lift_of_a_session_is_the_rung_planned_on_its_day(self):
        plan = self.plan()
        sessions = self.events("strength")
        self.assertGreater(len(sessions), 70)
        for event in sessions:
            day = event["DTSTART"].dt
            self.assertIn(day.isoweekday(), (1, 3, 5))
            self.assertEqual(event["DTEND"].dt, day + DAY)
            planned = {rung["name"].lower() for ladder in plan["ladders"] for rung in ladder["rungs"]
                       if rung["from"] <= day.isoformat() <= rung["to"]}
            lifts = str(event["SUMMARY"]).removeprefix("Lifts: ").removeprefix("Primer: ").split("; ")
            self.assertLessEqual({lift.lower() for lift in lifts}, planned, day)
            self.assertIn("Planned; the day's evidence decides rung and load.", event["DESCRIPTION"])
        first_three_weeks = [event["DTSTART"].dt.isoformat() for event in sessions][:9]
        start = datetime.date.fromisoformat(SEASON["start"])
        self.assertEqual(first_three_weeks,
                         [(start + (7 * week + day) * DAY).isoformat() for week in range(3) for day in (0, 2, 4)])

    def test_a_session_may_begin_at_a_time_of_day(self):
        self.plan(SEASON, FIRST, "--at", "17:30")
        begin, end = (self.events("strength")[0][name].dt for name in ("DTSTART", "DTEND"))
        self.assertEqual(begin, datetime.datetime(2026, 1, 5, 17, 30))  # no zone: section 3.3.5, form 1
        self.assertEqual(end - begin, datetime.timedelta(minutes=90))

    def test_a_change_updates_what_was_published_instead_of_doubling_it(self):
        self.plan()
        before = {event["UID"]: event for event in self.events()}
        meeting = self.event("competition", "Spring meeting")
        self.plan(moved("Spring meeting", "2026-06-21"), LATER)
        after = self.event("competition", "Spring meeting")
        self.assertEqual(after["UID"], meeting["UID"])
        self.assertEqual(after["DTSTART"].dt, datetime.date(2026, 6, 21))
        self.assertEqual((meeting["SEQUENCE"], after["SEQUENCE"]), (0, 1))  # RFC 5546 section 2.1.4
        self.assertLess(meeting["DTSTAMP"].dt, after["DTSTAMP"].dt)
        for event in self.events():
            old = before.get(event["UID"])
            if old is not None and old.to_ical() != event.to_ical():
                self.assertEqual(event["SEQUENCE"], old["SEQUENCE"] + 1)

    def test_a_session_no_longer_planned_is_cancelled(self):
        self.plan()
        fridays = {event["UID"] for event in self.events("strength") if event["DTSTART"].dt.isoweekday() == 5}
        self.plan({**SEASON, "training_days": ["mon", "wed"]}, LATER, "--from", "2026-02-02")
        for event in self.events("strength"):
            if event["UID"] in fridays:
                past = event["DTSTART"].dt < datetime.date(2026, 2, 2)
                self.assertEqual((event["STATUS"], event["SEQUENCE"]), ("CONFIRMED", 0) if past else ("CANCELLED", 1))

    def test_the_same_season_leaves_the_file_alone(self):
        self.plan()
        bytes_before, time_before = self.path.read_bytes(), os.stat(self.path).st_mtime_ns
        self.plan(SEASON, LATER)
        self.assertEqual((self.path.read_bytes(), os.stat(self.path).st_mtime_ns), (bytes_before, time_before))

    def test_the_same_bytes_under_every_locale_and_zone(self):
        written = set()
        for environment in ({"LC_ALL": "C", "TZ": "UTC"}, {"LC_ALL": "ar_EG.UTF-8", "TZ": "Pacific/Auckland"},
                            {"LC_ALL": "de_DE.UTF-8", "TZ": "America/Anchorage"}):
            self.path.unlink(missing_ok=True)
            self.plan(environment=environment)
            written.add(self.path.read_bytes())
        self.assertEqual(len(written), 1)

    def test_without_a_stamp_the_clock_is_read(self):
        before = datetime.datetime.now(datetime.timezone.utc).replace(microsecond=0)
        self.output("plan", self.file("season.json", json.dumps(SEASON)), "--calendar", self.path)
        after = datetime.datetime.now(datetime.timezone.utc)
        for event in self.events():
            self.assertTrue(before <= event["DTSTAMP"].dt <= after)

    def test_a_file_that_is_not_ours_is_refused_with_its_line_and_stays_as_it_was(self):
        self.plan()
        ours = self.path.read_bytes()
        foreign = icalendar.Calendar.from_ical(ours)
        foreign["PRODID"] = "-//Somebody else//EN"
        for wrong, place in [(b"name,time\n", ":line 1: "), (ours[:5000], ":line "), (b"\xff\x00", ":line 1: "),
                             (foreign.to_ical(), ":line "),
                             (ours.replace(b"SEQUENCE:0", b"SEQUENCE:many", 1), ":line 11: SEQUENCE ")]:
            with self.subTest(place, wrong=wrong[:30]):
                self.path.write_bytes(wrong)
                result = run("plan", self.file("season.json", json.dumps(SEASON)), "--calendar", self.path)
                error = result.stderr.decode()
                self.assertEqual((result.returncode, result.stdout, error.count("\n")), (2, b"", 1), error)
                self.assertIn(str(self.path) + place, error)
                self.assertEqual(self.path.read_bytes(), wrong)
                self.assertEqual(list(self.folder.glob("*.unfinished")), [])

    def test_options_that_cannot_be_understood_are_refused(self):
        season = self.file("season.json", json.dumps(SEASON))
        for option, value in [("--from", "2026-02-30"), ("--at", "25:00"), ("--at", "5pm"), ("--stamp", "yesterday"),
                              ("--stamp", "2026-01-01T10:00:00+01:00")]:
            with self.subTest(option, value=value):
                result = run("plan", season, "--calendar", self.path, option, value)
                self.assertEqual(result.returncode, 2)
                self.assertIn(option, result.stderr.decode())
                self.assertFalse(self.path.exists())
        self.assertEqual(run("plan", season, "--at", "17:30").returncode, 2)  # without a calendar it says nothing


if __name__ == "__main__":
    main()
