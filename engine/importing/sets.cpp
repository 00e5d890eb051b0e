#include "engine/importing/sets.hpp"

#include "engine/importing/row_reader.hpp"
#include "engine/importing/words.hpp"

namespace fleetrung::importing
{
namespace
{

// Bounds of sense, as the forms have them: what lies beyond is a slip of the finger. Starting values of this project.
constexpr double mostKg = 600, slowestPeak = 3, fastest = 6, highest = 3;

ReadSet readSet(RowReader& reader, CivilDate today)
{
    ReadSet set;
    reader.readShared(set, today);
    set.lift = reader.text(Meaning::Lift);
    if (set.lift.empty())
        reader.blame(Fault::NoLift, Meaning::Lift);
    set.rung = reader.text(Meaning::Rung);
    set.side = reader.word(Meaning::Side, sideKey, "both", set);
    set.kind = reader.word(Meaning::SetKind, setKindKey, "work", set);
    set.loadKg = reader.number(Meaning::Load, 0, mostKg).value_or(0);
    const auto repetitions = reader.wholeNumber(Meaning::Repetitions, 0, 1000);
    if (!repetitions)
        reader.blame(Fault::NoRepetitions, Meaning::Repetitions);
    set.repetitions = repetitions.value_or(0);
    set.timeToPeak = reader.number(Meaning::TimeToPeak, 0.01, slowestPeak);
    set.meanVelocity = reader.number(Meaning::MeanVelocity, 0.01, fastest);
    set.peakVelocity = reader.number(Meaning::PeakVelocity, 0.01, fastest);
    set.range = reader.number(Meaning::Range, 0.01, highest);
    set.boxHeight = reader.number(Meaning::BoxHeight, 0.01, highest);
    return set;
}

} // namespace

Expected<Sets> readSets(const Table& table, const Mapping& mapping, const Reading& reading)
{
    if (auto readable = checkReadable(table, mapping, Kind::Sets); !readable)
        return tl::unexpected(readable.error());
    const Places places(mapping);
    Sets read;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        if (auto wanted = report(reading, i, table.rows.size()); !wanted)
            return tl::unexpected(wanted.error());
        RowReader reader(table, mapping, places, table.rows[i]);
        auto set = readSet(reader, reading.today);
        if (reader.bad())
            read.bad.push_back(*reader.bad());
        else
            read.sets.push_back(std::move(set));
    }
    return read;
}

} // namespace fleetrung::importing
