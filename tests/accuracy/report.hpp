// The report in words and as CSV, and whether it keeps its limits.
#pragma once

#include <string>
#include <vector>

#include "tests/accuracy/tally.hpp"

namespace fleetrung::accuracy
{

struct Row {
    const reps::Lift* lift;
    const Fault* fault;
    double rate;
    Tally tally;
};

/// One table for each class: by rate and fault, then class A by lift.
void printReport(const std::vector<Row>& rows);
/// Every row, SI units.
[[nodiscard]] std::string reportCsv(const std::vector<Row>& rows);
/// One line a set: what was drawn, and how many repetitions were missed and invented in it.
[[nodiscard]] std::string setsCsv(const std::vector<SetScore>& scores);
/// The worst repetitions by error in stated sigmas, or by the error of one metric, with what draws their set again.
void printWorst(const std::vector<SetScore>& scores, std::size_t count, std::string_view byMetric);
/// Prints every breach of limits.hpp; true where there is none.
[[nodiscard]] bool keepsLimits(const std::vector<Row>& rows);

} // namespace fleetrung::accuracy
