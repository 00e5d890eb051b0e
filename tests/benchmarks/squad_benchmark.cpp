// A squad of 200 with three seasons each: who is due today, and an athlete's day, decisions and trends among them.
// Store and planning, nothing extrapolated. What fills the store is invented.
#include <cstdlib>
#include <filesystem>
#include <stdexcept>
#include <string>

#include <benchmark/benchmark.h>

#include "engine/base/numbers.hpp"
#include "mobile/logbook/logbook.hpp"

namespace fleetrung::benchmarks
{
namespace
{

constexpr int athletes = 200;
constexpr int seasonsEach = 3;
constexpr int sessionsASeason = 120; // four a week until the day asked for
constexpr int setsASession = 15;     // of two lifts: warm-ups, probe, work
const CivilDate start = *parseDate("2025-12-01");
const CivilDate today = *parseDate("2026-06-01"); // a Monday: all of them lift

template <class T> T good(Expected<T> result)
{
    if (!result)
        throw std::runtime_error(describe(result.error()));
    if constexpr (!std::is_void_v<T>)
        return std::move(*result);
}

store::Moment at(CivilDate day)
{
    return {day.time_since_epoch().count() * std::int64_t{86400} + 57600, 60, "Europe/Vienna", day};
}

season::SeasonSetup setup()
{
    season::SeasonSetup made;
    made.name = "Outdoor";
    made.start = start;
    made.competitions = {{*parseDate("2026-06-28"), "The main race", season::Priority::A, true}};
    made.trainingDays = {1, 3, 5};
    made.sprintDays = {1, 3, 5};
    made.boxHeights = season::boxesOf({20, 30, 40});
    made.equipment = {"bar", "rack", "pins", "blocks"};
    made.ladders = {"squat", "hinge"};
    return made;
}

class Squad
{
public:
    Squad()
    {
        std::string name = (std::filesystem::temp_directory_path() / "fleetrung-squad-XXXXXX").string();
        if (mkdtemp(name.data()) == nullptr)
            throw std::runtime_error("no temporary folder");
        folder_ = name;
        open();
        good(book_->inTransaction([&]() -> Expected<void> {
            for (int i = 0; i < athletes; ++i)
                addAthlete(i);
            return {};
        }));
        book_.reset(); // the log of the file is taken in
        open();
    }
    Squad(const Squad&) = delete;
    Squad& operator=(const Squad&) = delete;
    ~Squad() { std::filesystem::remove_all(folder_); }

    [[nodiscard]] logbook::Logbook& book() { return *book_; }
    [[nodiscard]] const Identifier& season() const { return season_; }

private:
    Identifier fresh()
    {
        Identifier id;
        ++made_;
        for (std::size_t i = 0; i < 8; ++i) // spread like the random ids of a phone
            id.bytes[i] = static_cast<std::uint8_t>((made_ * 0x9E3779B97F4A7C15U) >> (8 * i));
        id.bytes[15] = 1;
        return id;
    }

    void open()
    {
        const auto file = [&](const char* name) { return (folder_ / name).string(); };
        book_ = std::make_unique<logbook::Logbook>(good(logbook::Logbook::open(
            {file("athletes.fleetrung"), file("captures.fleetrung")}, fresh(), [this] { return fresh(); })));
    }

    void addAthlete(int number)
    {
        store::Athlete athlete;
        athlete.name = "Invented " + integerText(number);
        athlete.group = "group " + integerText(number % 5);
        athlete.born = parseDate("2001-05-20");
        athlete.trainingYears = 6;
        athlete.bodyMassKg = 70;
        const auto id = good(book_->addAthlete(athlete));
        for (int back = seasonsEach - 1; back >= 0; --back) {
            auto made = setup();
            made.start -= std::chrono::days{364 * back};
            made.competitions.front().date -= std::chrono::days{364 * back};
            const auto season = good(book_->addSeason(id, made));
            for (int session = 0; session < sessionsASeason; ++session)
                addSession(id, season, made.start + std::chrono::days{session * 210 / sessionsASeason}, session);
            if (number == 0 && back == 0)
                season_ = season;
        }
    }

    void addSession(const Identifier& athlete, const Identifier& season, CivilDate day, int number)
    {
        store::Session session;
        session.id = fresh();
        session.athlete = athlete;
        session.season = season;
        session.begun = at(day);
        session.kind = "strength";
        good(book_->rows().insert(session));
        for (int k = 0; k < setsASession; ++k) {
            const bool squat = k < 8;
            store::LiftSet set;
            set.id = fresh();
            set.session = session.id;
            set.ordinal = k + 1;
            set.done = at(day);
            set.ladder = squat ? "squat" : "hinge";
            set.rung = squat ? (number < 40 ? "full" : number < 80 ? "parallel" : "half") : "mid-shin";
            set.lift = squat ? "full-squat" : "hinge";
            const int place = squat ? k : k - 8;
            set.kind = place < 3 ? store::SetKind::WarmUp : place == 3 ? store::SetKind::Probe : store::SetKind::Work;
            set.loadKg = place < 4 ? 60 + 5 * place : 90; // work sets at one load
            set.repetitionsPlanned = 5;
            set.repetitionsDone = 5;
            set.effort = 7;
            good(book_->rows().insert(set));
        }
        for (const auto* ladder : {"squat", "hinge"})
            addDecision(athlete, season, day, ladder, number);
    }

    /// As long as a real one.
    void addDecision(const Identifier& athlete, const Identifier& season, CivilDate day, const char* ladder, int number)
    {
        const bool steps = std::string(ladder) == "squat" && (number == 40 || number == 80);
        season::Decision decision;
        decision.id = fresh();
        decision.day = day;
        decision.ladder = ladder;
        decision.rule = steps ? "step-for-evidence" : "hold";
        decision.kind = steps ? season::DecisionKind::Step : season::DecisionKind::Hold;
        decision.from = steps ? (number == 40 ? "full" : "parallel") : "full";
        decision.to = steps ? (number == 40 ? "parallel" : "half") : "full";
        for (int i = 0; i < 9; ++i)
            decision.evidence.push_back({"time to peak, gain", 12.0 + i, 3, "ms", "at least 27", false, true, ""});
        decision.reason = std::string(160, 'x');
        store::Decision row;
        row.id = decision.id;
        row.athlete = athlete;
        row.season = season;
        row.day = day;
        row.made = at(day);
        row.ladder = ladder;
        row.action = season::decisionKey(decision.kind);
        row.rule = decision.rule;
        row.rungFrom = decision.from;
        row.rungTo = decision.to;
        row.evidence = jsonText(season::decisionJson(decision));
        row.reason = decision.reason;
        row.ordinal = 1;
        good(book_->rows().insert(row));
    }

    std::filesystem::path folder_;
    std::unique_ptr<logbook::Logbook> book_;
    Identifier season_;
    std::uint64_t made_ = 0;
};

Squad& squad()
{
    static Squad made;
    return made;
}

void dueToday(benchmark::State& state)
{
    for (auto _ : state)
        state.counters["due"] = static_cast<double>(good(squad().book().dueToday(today)).size());
}
void storeOfDueToday(benchmark::State& state)
{
    squad(); // filled before the clock runs
    for (auto _ : state)
        benchmark::DoNotOptimize(good(squad().book().rows().squadRows(today)));
}
void day(benchmark::State& state)
{
    for (auto _ : state)
        benchmark::DoNotOptimize(good(squad().book().day(squad().season(), today)));
}
void decide(benchmark::State& state)
{
    for (auto _ : state)
        benchmark::DoNotOptimize(good(squad().book().decide(squad().season(), at(today))));
}
void plan(benchmark::State& state)
{
    for (auto _ : state)
        benchmark::DoNotOptimize(good(squad().book().plan(squad().season(), today)));
}
void weeks(benchmark::State& state)
{
    for (auto _ : state)
        benchmark::DoNotOptimize(good(squad().book().weeks(squad().season(), "squat", today)));
}
BENCHMARK(storeOfDueToday)->Name("squad of 200 x 3 seasons: rows of who is due")->Unit(benchmark::kMillisecond);
BENCHMARK(dueToday)->Name("squad of 200 x 3 seasons: who is due, with sessions")->Unit(benchmark::kMillisecond);
BENCHMARK(day)->Name("squad of 200 x 3 seasons: one athlete's day")->Unit(benchmark::kMillisecond);
BENCHMARK(decide)->Name("squad of 200 x 3 seasons: one athlete's decisions")->Unit(benchmark::kMillisecond);
BENCHMARK(plan)->Name("squad of 200 x 3 seasons: one athlete's plan anew")->Unit(benchmark::kMillisecond);
BENCHMARK(weeks)->Name("squad of 200 x 3 seasons: one athlete's trends")->Unit(benchmark::kMillisecond);

} // namespace
} // namespace fleetrung::benchmarks

BENCHMARK_MAIN();
