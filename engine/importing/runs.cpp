#include "engine/importing/runs.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "engine/base/numbers.hpp"
#include "engine/importing/run_form.hpp"
#include "engine/importing/words.hpp"

namespace fleetrung::importing
{
namespace
{

// Bounds of sense, as the form of a run has them: starting values of this project.
constexpr double farthest = 1000, longest = 600, fastest = 13, sameTime = 0.0005;

/// Everything of a run but its distance and times.
void readFacts(RowReader& reader, const Mapping& mapping, ReadRun& run, CivilDate today)
{
    reader.readShared(run, today);
    run.reaction = reader.number(Meaning::Reaction, 0.05, 1);
    std::string start = mapping.start;
    if (run.reaction && start != "flying")
        start = "block";
    const auto test = testWords(reader.text(Meaning::Test));
    if (!test.start.empty())
        start = test.start;
    run.start = reader.word(Meaning::Start, startKey, start, run);
    run.timing = reader.word(Meaning::Timing, timingKey, mapping.timing, run);
    run.surface = reader.word(Meaning::Surface, surfaceKey, "", run);
    run.shoes = reader.word(Meaning::Shoes, shoesKey, "", run);
    run.runIn = reader.number(Meaning::RunIn, 0, 100).value_or(0);
    run.wind = reader.number(Meaning::Wind, -20, 20);
    run.temperature = reader.number(Meaning::Temperature, -30, 50);
    run.contact = reader.number(Meaning::Contact, 0.05, 1);
    run.stepLength = reader.number(Meaning::StepLength, 0.3, 4);
    run.competition = reader.yes(Meaning::Competition);
    run.trial = reader.yes(Meaning::Trial);
    if (!test.distance && test.start.empty() && !isBlank(reader.text(Meaning::Test)))
        run.note = std::string(reader.text(Meaning::Test)) + (run.note.empty() ? "" : "; ") + run.note;
    if (run.start == "flying" || run.start == "falling" || run.start == "rolling")
        run.reaction.reset();
    if (run.start != "flying")
        run.runIn = 0;
}

/// The times of a row's gates, each from the start.
void readSplits(RowReader& reader, const Mapping& mapping, ReadRun& run)
{
    double sum = 0;
    bool gap = false;
    for (const int column : reader.places().splits) {
        const auto time = reader.numberAt(column, 0, longest);
        const auto& meaning = mapping.columns[static_cast<std::size_t>(column)];
        if (!time) {
            gap = true;
            continue;
        }
        if (mapping.splits == SplitForm::Interval && gap)
            return reader.blame(Fault::GapInIntervals, column);
        sum = mapping.splits == SplitForm::Interval ? sum + *time : *time;
        if (meaning.distance <= 0 || (*time == 0 && run.splits.empty())) // the beam that starts the clock
            continue;
        if (!run.splits.empty() && sum <= run.splits.back().time)
            return reader.blame(Fault::TimesDoNotRise, column);
        run.splits.push_back({meaning.distance, mapping.splits == SplitForm::Interval ? roundTo(sum, 1e6) : sum});
    }
}

/// Distance and time of the whole run, from their columns, the test's name, or the last split.
void readEnd(RowReader& reader, ReadRun& run)
{
    const auto time = reader.number(Meaning::Time, 0.1, longest);
    auto distance = reader.number(Meaning::Distance, 1, farthest);
    if (!distance)
        distance = testWords(reader.text(Meaning::Test)).distance;
    const bool splits = !run.splits.empty();
    if (!time && !splits)
        return reader.blame(Fault::NoTime, Meaning::Time);
    if (!distance && !splits)
        return reader.blame(Fault::NoDistance, Meaning::Distance);
    if (time && !distance && std::abs(*time - run.splits.back().time) > sameTime)
        return reader.blame(Fault::NoDistance, Meaning::Time);
    run.distance = distance && time ? *distance : splits ? run.splits.back().distance : *distance;
    run.time = time ? *time : run.splits.back().time;
    if (!splits)
        return;
    const auto& last = run.splits.back();
    if (last.distance > run.distance)
        reader.blame(Fault::BeyondDistance, Meaning::Distance);
    else if (last.distance == run.distance && std::abs(last.time - run.time) > sameTime)
        reader.blame(Fault::EndDisagrees, Meaning::Time);
    else if (last.distance < run.distance && run.time <= last.time)
        reader.blame(Fault::TimesDoNotRise, Meaning::Time);
}

/// Flying runs keep their zone alone; nobody is faster than `fastest` between two gates.
void finish(RowReader& reader, ReadRun& run)
{
    if (run.start == "flying")
        run.splits.clear();
    SplitTime before;
    auto all = run.splits;
    if (all.empty() || all.back().distance < run.distance)
        all.push_back({run.distance, run.time});
    for (const auto& split : all) {
        if (split.distance - before.distance > fastest * (split.time - before.time))
            return reader.blame(Fault::TooFast);
        before = split;
    }
}

Expected<Runs> readWide(const Table& table, const Mapping& mapping, const Reading& reading)
{
    const Places places(mapping);
    Runs read;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        if (auto wanted = report(reading, i, table.rows.size()); !wanted)
            return tl::unexpected(wanted.error());
        RowReader reader(table, mapping, places, table.rows[i]);
        ReadRun run;
        readFacts(reader, mapping, run, reading.today);
        readSplits(reader, mapping, run);
        if (!reader.bad())
            readEnd(reader, run);
        if (!reader.bad())
            finish(reader, run);
        if (reader.bad())
            read.bad.push_back(*reader.bad());
        else
            read.runs.push_back(std::move(run));
    }
    return read;
}

/// The rows of one run to the run: facts of its first row, a split a row.
void readLong(const Table& table, const Mapping& mapping, const Places& places, const std::vector<std::size_t>& rows,
              CivilDate today, Runs& read)
{
    ReadRun run;
    RowReader first(table, mapping, places, table.rows[rows.front()]);
    readFacts(first, mapping, run, today);
    double sum = 0;
    for (const auto at : rows) {
        RowReader reader(table, mapping, places, table.rows[at]);
        const auto distance = reader.number(Meaning::Distance, 0, farthest);
        const auto time = reader.number(Meaning::Time, 0, longest);
        if (!distance)
            reader.blame(Fault::NoDistance, Meaning::Distance);
        if (!time)
            reader.blame(Fault::NoTime, Meaning::Time);
        if (reader.bad()) {
            read.bad.push_back(*reader.bad());
            return;
        }
        sum = mapping.splits == SplitForm::Interval ? sum + *time : *time;
        if (*distance == 0)
            continue;
        if (!run.splits.empty() && sum <= run.splits.back().time) {
            reader.blame(Fault::TimesDoNotRise, Meaning::Time);
            read.bad.push_back(*reader.bad());
            return;
        }
        run.splits.push_back({*distance, mapping.splits == SplitForm::Interval ? roundTo(sum, 1e6) : sum});
    }
    if (run.splits.empty()) {
        first.blame(Fault::NoTime, Meaning::Time);
    } else {
        run.distance = run.splits.back().distance;
        run.time = run.splits.back().time;
        finish(first, run);
    }
    if (first.bad())
        read.bad.push_back(*first.bad());
    else
        read.runs.push_back(std::move(run));
}

} // namespace

Expected<Runs> readRuns(const Table& table, const Mapping& mapping, const Reading& reading)
{
    if (auto readable = checkReadable(table, mapping, Kind::Runs); !readable)
        return tl::unexpected(readable.error());
    if (mapping.form == RowForm::RunPerRow)
        return readWide(table, mapping, reading);
    const Places places(mapping);
    Runs read;
    const auto groups = runsOfRows(table, mapping);
    for (std::size_t i = 0; i < groups.size(); ++i) {
        if (auto wanted = report(reading, i, groups.size()); !wanted)
            return tl::unexpected(wanted.error());
        readLong(table, mapping, places, groups[i], reading.today, read);
    }
    std::ranges::stable_sort(read.bad, {}, &BadRow::line);
    return read;
}

} // namespace fleetrung::importing
