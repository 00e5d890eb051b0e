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

std::string reportCsv(const std::vector<Row>& rows)
{
    std::string all = head();
    for (const auto& row : rows)
        all += text(row);
    return all;
}

} // namespace fleetrung::accuracy
