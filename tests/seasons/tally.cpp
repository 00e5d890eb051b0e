#include "tests/seasons/tally.hpp"

#include <algorithm>
#include <thread>
#include <vector>

#include "engine/base/numbers.hpp"

namespace fleetrung::seasons
{
namespace
{

constexpr std::array<double, 5> changes{-2.5, -1.5, 0, 1.5, 2.5};
constexpr int largeWithin = 2, smallWithin = 5;

double share(std::size_t part, std::size_t whole)
{
    return whole == 0 ? 0 : static_cast<double>(part) / static_cast<double>(whole);
}

std::string percent(std::size_t part, std::size_t whole)
{
    return fixedText(100 * share(part, whole), 1) + " %";
}

std::string count(std::size_t number)
{
    return integerText(static_cast<std::int64_t>(number));
}

std::string row(std::initializer_list<std::string> cells)
{
    std::string text = "|";
    for (const auto& cell : cells)
        text += ' ' + cell + " |";
    return text + '\n';
}

std::string checksText(const Tally& tally)
{
    std::string text = "| check | seasons that break it | breaches | first |\n| --- | --- | --- | --- |\n";
    for (const auto& check : allChecks()) {
        const auto found = tally.checks.find(check.name);
        const auto& seen = found == tally.checks.end() ? CheckTally{} : found->second;
        text += row({check.says, count(seen.seasons), count(seen.breaches), seen.example});
    }
    return text;
}

std::string changesText(const Tally& tally)
{
    std::string text =
        "| true change of time to peak, after session 8 | told within 1 session | 2 | 3 | 4 | 5 | 6 | to "
        "reach |\n| --- | --- | --- | --- | --- | --- | --- | --- |\n";
    for (const auto& [change, stays] : tally.stays) {
        if (change == 0)
            continue;
        const bool large = change * change > 4;
        text += "| " + fixedText(change < 0 ? -change : change, 1) + " typical errors " +
                (change < 0 ? "sooner" : "later") + " |";
        for (int within = 1; within <= sessionsAfter; ++within)
            text += ' ' + percent(stays.seenWithin[static_cast<std::size_t>(within)], stays.stays) + " |";
        text += large ? " 90 % within 2 |\n" : " 80 % within 5 |\n";
    }
    return text;
}

std::string endsText(const Ends& ends)
{
    return "| ladders before a main competition | |\n| --- | --- |\n" + row({"all", count(ends.peaks)}) +
           row({"stood on their last rung", count(ends.reached)}) +
           row({"the athlete did not follow every decision", count(ends.notFollowed)}) +
           row({"came to less than 6 of 7 lifting days, was away for ten days or had pain before the race",
                count(ends.away)}) +
           row({"more than eight days from one turn of the ladder to the next", count(ends.sparse)}) +
           row({"the plan said that the time is too short", count(ends.told)}) +
           row({"time allows: the others", count(ends.judged)}) +
           row({"of these on their last rung", count(ends.judgedReached)});
}

std::string falseText(const Tally& tally)
{
    std::string text = "| without any true change | |\n| --- | --- |\n";
    text += row({"evidence steps in the seasons", count(tally.evidenceSteps)});
    text += row({"of them false: true gain since entry below 0.3 typical errors (to reach: under 5 %)",
                 percent(tally.falseSteps, tally.evidenceSteps)});
    const auto none = tally.stays.find(0);
    if (none == tally.stays.end())
        return text;
    const auto& stays = none->second;
    for (const int sessions : {6, 8, 10, 12, 14})
        text += row({"planted stays without change that have stepped by session " + integerText(sessions),
                     percent(stays.steppedBy[static_cast<std::size_t>(sessions)], stays.stays)});
    text += row({"looks at which rule 11 eases them", percent(stays.told, stays.looks)});
    text += row({"planted stays of 14 sessions that it eases at least once", percent(stays.seenAtAll, stays.stays)});
    return text;
}

void addEnds(Ends& sum, const Ends& other)
{
    sum.peaks += other.peaks;
    sum.reached += other.reached;
    sum.notFollowed += other.notFollowed;
    sum.away += other.away;
    sum.sparse += other.sparse;
    sum.told += other.told;
    sum.judged += other.judged;
    sum.judgedReached += other.judgedReached;
}

} // namespace

void Tally::add(const Played& played)
{
    ++seasons;
    for (const auto& day : played.days) {
        ++days;
        sessions += day.session.lifts.empty() ? 0 : 1;
        decisions += day.decisions.size();
        for (const auto& decision : day.decisions) {
            ++rules[decision.rule];
            const auto gain = day.trueGain.find(decision.ladder);
            if (decision.rule != "step-for-evidence" || gain == day.trueGain.end())
                continue;
            ++evidenceSteps;
            falseSteps += gain->second < noTrueGain ? 1 : 0;
        }
    }
    const auto report = judge(played);
    addEnds(ends, report.ends);
    std::map<std::string, bool> counted;
    for (const auto& breach : report.breaches) {
        auto& check = checks[breach.check];
        ++check.breaches;
        if (!counted[breach.check]) {
            counted[breach.check] = true;
            ++check.seasons;
        }
        if (check.example.empty())
            check.example = "season " + integerText(static_cast<std::int64_t>(played.athlete.seed)) + ", " +
                            dateText(breach.day) + ": " + breach.what;
    }
}

void Tally::addStay(double change, const Stay& stay)
{
    auto& tally = stays[change];
    if (change < 0 && stay.stepped > 0 && stay.stepped <= sessionsBefore)
        return; // the stay had ended before the change
    ++tally.stays;
    tally.steps += stay.stepped > 0 ? 1 : 0;
    tally.seenAtAll += stay.seen > 0 ? 1 : 0;
    tally.looks += static_cast<std::size_t>(stay.looks);
    tally.told += static_cast<std::size_t>(stay.told);
    for (int within = 1; within <= sessionsAfter; ++within)
        tally.seenWithin[static_cast<std::size_t>(within)] +=
            stay.seen > 0 && stay.seen <= sessionsBefore + within ? 1 : 0;
    for (int by = 1; by <= stayLength; ++by)
        tally.steppedBy[static_cast<std::size_t>(by)] += stay.stepped > 0 && stay.stepped <= by ? 1 : 0;
}

void Tally::add(const Tally& other)
{
    seasons += other.seasons;
    days += other.days;
    decisions += other.decisions;
    sessions += other.sessions;
    addEnds(ends, other.ends);
    evidenceSteps += other.evidenceSteps;
    falseSteps += other.falseSteps;
    for (const auto& [rule, number] : other.rules)
        rules[rule] += number;
    for (const auto& [name, check] : other.checks) {
        auto& mine = checks[name];
        if (mine.example.empty())
            mine.example = check.example;
        mine.breaches += check.breaches;
        mine.seasons += check.seasons;
    }
    for (const auto& [change, stay] : other.stays) {
        auto& mine = stays[change];
        mine.stays += stay.stays;
        mine.steps += stay.steps;
        mine.seenAtAll += stay.seenAtAll;
        mine.looks += stay.looks;
        mine.told += stay.told;
        for (std::size_t i = 0; i < stay.seenWithin.size(); ++i)
            mine.seenWithin[i] += stay.seenWithin[i];
        for (std::size_t i = 0; i < stay.steppedBy.size(); ++i)
            mine.steppedBy[i] += stay.steppedBy[i];
    }
}

std::size_t Tally::breaches() const
{
    std::size_t all = 0;
    for (const auto& [name, check] : checks)
        all += check.breaches;
    return all;
}

double Tally::falseShare() const
{
    return share(falseSteps, evidenceSteps);
}

double Tally::foundWithin(double change, int within) const
{
    const auto found = stays.find(change);
    return found == stays.end()
               ? 0
               : share(found->second.seenWithin[static_cast<std::size_t>(within)], found->second.stays);
}

bool Tally::reached() const
{
    return breaches() == 0 && falseShare() < largestFalseShare && foundWithin(-2.5, largeWithin) >= largeFound &&
           foundWithin(2.5, largeWithin) >= largeFound && foundWithin(-1.5, smallWithin) >= smallFound &&
           foundWithin(1.5, smallWithin) >= smallFound;
}

Tally playSeasons(std::uint64_t first, std::size_t count, unsigned threads)
{
    std::vector<Tally> parts(std::max<std::size_t>(1, std::min<std::size_t>(threads, count)));
    std::vector<std::thread> workers;
    for (std::size_t part = 0; part < parts.size(); ++part)
        workers.emplace_back([&, part] { // neighbouring seasons stay together, so that the first example is the first
            for (std::size_t i = count * part / parts.size(); i < count * (part + 1) / parts.size(); ++i) {
                parts[part].add(playSeason(first + i));
                for (const double change : changes)
                    parts[part].addStay(change, playStay(first + i + 0x57a9ULL, change));
            }
        });
    for (auto& worker : workers)
        worker.join();
    Tally all;
    for (const auto& part : parts)
        all.add(part);
    return all;
}

std::string tallyText(const Tally& tally)
{
    std::string text = count(tally.seasons) + " seasons, " + count(tally.days) + " days of lifting, " +
                       count(tally.sessions) + " sessions, " + count(tally.decisions) + " decisions.\n\n" +
                       checksText(tally) + "\n";
    text += endsText(tally.ends) + '\n';
    text += falseText(tally) + '\n' + changesText(tally) + "\n| rule | decisions |\n| --- | --- |\n";
    for (const auto& [rule, number] : tally.rules)
        text += row({rule, count(number)});
    return text;
}

} // namespace fleetrung::seasons
