#include "engine/base/numbers.hpp"
#include "tests/accuracy/report.hpp"

namespace fleetrung::accuracy
{
namespace
{

std::string number(std::size_t value)
{
    return integerText(static_cast<std::int64_t>(value));
}

void addTo(std::string& line, std::string_view cell)
{
    if (!line.empty())
        line += ',';
    line += cell;
}

std::string head()
{
    std::string line = "lift,rate_hz,fault,sets,true,found,missed,invented,refused,refused_sets";
    for (const auto& metric : allMetrics()) {
        std::string name(metric.name);
        for (char& c : name)
            c = c == ' ' ? '_' : c;
        for (const char* what : {"_count", "_rms", "_bias", "_coverage"})
            addTo(line, name + what);
    }
    for (const char* what : {"TPV_rest_count", "TPV_rest_rms", "TPV_rest_bias", "TPV_moving_count", "TPV_moving_rms",
                             "TPV_moving_bias", "partial_right", "partial_wrong", "partial_overlooked",
                             "two_peaked_right", "two_peaked_wrong", "two_peaked_overlooked"})
        addTo(line, what);
    return line + "\r\n";
}

void addErrors(std::string& line, const Errors& errors)
{
    addTo(line, number(errors.count));
    addTo(line, shortestText(errors.rms()));
    addTo(line, shortestText(errors.bias()));
}

std::string text(const Row& row)
{
    const auto& tally = row.tally;
    std::string line(row.lift->key);
    addTo(line, shortestText(row.rate));
    addTo(line, row.fault->name);
    for (const auto count :
         {tally.sets, tally.repetitions, tally.found, tally.missed, tally.invented, tally.refused, tally.refusedSets})
        addTo(line, number(count));
    for (const auto& errors : tally.errors) {
        addErrors(line, errors);
        addTo(line, shortestText(errors.coverage()));
    }
    addErrors(line, tally.timeToPeakRest);
    addErrors(line, tally.timeToPeakMoving);
    for (const auto* flagged : {&tally.partial, &tally.twoPeaked})
        for (const auto count : {flagged->rightly, flagged->wrongly, flagged->overlooked})
            addTo(line, number(count));
    return line + "\r\n";
}

} // namespace

std::string setsCsv(const std::vector<SetScore>& scores)
{
    std::string all = "set,lift,rate_hz,fault,part,wobble_rad,range_m,load_share,velocity_loss,top_pause_s,"
                      "bottom_pause_s,tempo,still_before_s,rack_work,dropped,true,missed,refused,invented\r\n";
    for (const auto& score : scores) {
        const auto& situation = score.situation;
        const auto [plan, sensor] = draw(situation);
        std::string line = std::to_string(situation.seed);
        addTo(line, situation.lift->key);
        addTo(line, shortestText(situation.rate));
        addTo(line, situation.fault->name);
        addTo(line, sensor.part);
        for (const double value : {sensor.wobble, plan.range, plan.loadShare, plan.velocityLoss, plan.topPause,
                                   plan.bottomPause, plan.tempo, plan.stillBefore})
            addTo(line, shortestText(value));
        std::size_t missed = 0, refused = 0;
        for (const auto& rep : score.repetitions) {
            missed += rep.found || rep.refused ? 0 : 1;
            refused += rep.refused ? 1 : 0;
        }
        for (const std::size_t count : {std::size_t{plan.rackWork}, std::size_t{plan.drop}, score.repetitions.size(),
                                        missed, refused, score.invented.size()})
            addTo(line, number(count));
        all += line + "\r\n";
    }
    return all;
}

std::string reportCsv(const std::vector<Row>& rows)
{
    std::string all = head();
    for (const auto& row : rows)
        all += text(row);
    return all;
}

} // namespace fleetrung::accuracy
