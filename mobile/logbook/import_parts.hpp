// What imports of runs and of sets share (private to mobile/logbook).
#pragma once

#include <map>
#include <set>

#include "mobile/logbook/import.hpp"

namespace fleetrung::logbook
{

/// Whose a row is; none: to be left out. Athletes to be added are made when the first of their rows needs them.
class ImportedAthletes
{
public:
    ImportedAthletes(Logbook& logbook, const ImportPlan& plan, ImportCount& count)
        : logbook_(logbook), plan_(plan), count_(count)
    {
    }
    [[nodiscard]] Expected<std::optional<Identifier>> of(const importing::ReadRow& row);

private:
    Logbook& logbook_;
    const ImportPlan& plan_;
    ImportCount& count_;
    std::map<std::string, Identifier> made_;
};

/// How many rows are alike: in the log before, and seen in the file so far.
class Alike
{
public:
    void stored(const std::string& key) { ++stored_[key]; }
    /// The place of this row among those alike, from 0.
    int next(const std::string& key) { return seen_[key]++; }
    [[nodiscard]] bool isStored(const std::string& key, int place) const
    {
        const auto found = stored_.find(key);
        return found != stored_.end() && place < found->second;
    }

private:
    std::map<std::string, int> stored_, seen_;
};

/// Local time of the row; without a clock time noon and a minute for every row before it on its day.
[[nodiscard]] Moment momentOf(const importing::ReadRow& row, int before, const ImportPlan& plan);

/// By what the file calls them.
[[nodiscard]] std::string fileName(const importing::ReadRow& row);

/// `work` row by row in one transaction (a dry run needs none); reports progress and stops where that is wanted.
[[nodiscard]] Expected<ImportCount>
asOne(Logbook& logbook, const ImportPlan& plan, std::size_t rows,
      const std::function<Expected<void>(std::size_t row, ImportCount& count)>& work);

/// Id of an imported row: a hash, so that the same row a second time adds nothing.
[[nodiscard]] Identifier importedId(std::string_view kind, const Identifier& athlete, const std::string& key,
                                    int place);

} // namespace fleetrung::logbook
