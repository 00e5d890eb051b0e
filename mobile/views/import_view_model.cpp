#include "mobile/views/import_view_model.hpp"

#include <algorithm>
#include <array>

#include "mobile/views/engine_words.hpp"
#include "mobile/views/import_words.hpp"

namespace fleetrung::views
{
namespace
{

constexpr int watchedEvery = 100; // ms

} // namespace

ImportViewModel::ImportViewModel(Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), fileRows_({"name"}, this),
      columnRows_({"title", "detail", "used"}, this), nameRows_({"title", "detail", "settled"}, this),
      liftRows_({"title", "detail", "settled"}, this), previewRows_({"title", "detail", "value"}, this),
      badRows_({"title", "detail"}, this), choiceRows_({"key", "label", "options", "current"}, this),
      pickRows_({"key", "title", "chosen"}, this)
{
    watch_.setInterval(watchedEvery);
    connect(&watch_, &QTimer::timeout, this, &ImportViewModel::progressed);
    connect(preferences, &Preferences::unitsChanged, this, &ImportViewModel::showRows);
}

void ImportViewModel::begin(bool sets)
{
    kind_ = sets ? importing::Kind::Sets : importing::Kind::Runs;
    backToFiles();
}

void ImportViewModel::lookForFiles()
{
    emit filesAsked();
}

void ImportViewModel::backToFiles()
{
    cancel();
    ++serial_;
    step_ = ChooseFile;
    fileName_.clear();
    problem_.clear();
    table_.reset();
    seen_ = {};
    checked_ = false;
    showRows();
    emit changed();
    lookForFiles();
}

void ImportViewModel::showFiles(const QStringList& names, const QString& folder)
{
    folder_ = folder;
    QList<QVariantMap> rows;
    for (const auto& name : names)
        rows.append({{QStringLiteral("name"), name}});
    fileRows_.show(rows);
    emit changed();
}

void ImportViewModel::openFile(const QString& name)
{
    fileName_ = name;
    table_.reset();
    progress_.reset();
    step_ = Working; // a large file takes a moment
    problem_.clear();
    dayProblem_.clear();
    chosenNames_.clear();
    emit changed();
    emit fileAsked(name, ++serial_);
}

void ImportViewModel::showTable(std::shared_ptr<const importing::Table> table)
{
    table_ = std::move(table);
    mapping_ = {};
    mapping_.kind = kind_;
    seen_ = {};
    fresh_ = true;
    step_ = Look;
    ask(false);
}

void ImportViewModel::ask(bool write)
{
    ImportJob job;
    job.table = table_;
    job.mapping = mapping_;
    job.fresh = fresh_;
    if (fresh_)
        job.kept = preferences_->rememberedImport(QString::fromStdString(importing::headerHash(*table_)), sets())
                       .toStdString();
    job.names = chosenNames_;
    job.serial = ++serial_;
    if (progress_)
        progress_->stopped = !write; // what it counted is of no use any more
    progress_ = job.progress;
    checked_ = false;
    if (write) {
        step_ = Working;
        watch_.start();
    }
    emit changed();
    emit jobAsked(job, write);
}

void ImportViewModel::showSeen(const ImportJob& job, const ImportSeen& seen)
{
    if (job.serial != serial_)
        return;
    watch_.stop();
    step_ = Look;
    seen_ = seen;
    mapping_ = seen.mapping;
    checked_ = true;
    if (job.fresh)
        remarks_ = seen.remarks;
    fresh_ = false;
    showRows();
    emit changed();
}

void ImportViewModel::showFailure(const Error& error)
{
    watch_.stop();
    const bool stopped = error.code == Code::Cancelled;
    step_ = table_ ? Look : ChooseFile;
    problem_ = stopped ? tr("Stopped. Nothing was added.") : errorText(error);
    if (stopped && table_)
        ask(false);
    emit changed();
}

void ImportViewModel::showAdded(const ImportSeen& seen)
{
    watch_.stop();
    auto kept = seen.mapping;
    kept.day.reset();
    for (const auto& [name, choice] : seen.names)
        if (choice.kind == logbook::NameChoice::Match && !name.empty())
            kept.athletes[name] = identifierText(choice.athlete);
    for (const auto& [word, key] : seen.lifts)
        kept.lifts[word] = key;
    preferences_->rememberImport(QString::fromStdString(importing::headerHash(*table_)), sets(),
                                 QString::fromStdString(importing::mappingText(kept)));
    step_ = ChooseFile;
    table_.reset();
    emit changed();
    emit added();
}

void ImportViewModel::takeMapping(const importing::Proposal& proposal)
{
    mapping_ = proposal.mapping;
    for (const auto& remark : proposal.remarks) { // told anew
        std::erase_if(remarks_, [&remark](const auto& before) {
            const auto form = [](importing::Told told) {
                return told == importing::Told::IntervalSplits || told == importing::Told::CumulativeSplits;
            };
            return before.told == remark.told || (form(before.told) && form(remark.told));
        });
        remarks_.push_back(remark);
    }
    ask(false);
}

void ImportViewModel::answer(const QString& key, int index)
{
    if (!table_)
        return;
    const bool second = index == 1;
    if (key == QStringLiteral("decimal")) {
        mapping_.decimalMark = second ? ',' : '.';
        return takeMapping(importing::answered(*table_, mapping_));
    }
    if (key == QStringLiteral("dates"))
        mapping_.dateOrder = second ? importing::DateOrder::MonthDay : importing::DateOrder::DayMonth;
    else if (key == QStringLiteral("rows"))
        mapping_.form = second ? importing::RowForm::SplitPerRow : importing::RowForm::RunPerRow;
    else if (key == QStringLiteral("splits"))
        mapping_.splits = second ? importing::SplitForm::Interval : importing::SplitForm::Cumulative;
    else if (key == QStringLiteral("load"))
        mapping_.load = second ? importing::Unit::Pound : importing::Unit::Kilogram;
    else if (key == QStringLiteral("start"))
        mapping_.start = std::array{"block", "standing", "falling", "rolling", "flying"}.at(
            static_cast<std::size_t>(std::clamp(index, 0, 4)));
    else if (key == QStringLiteral("timing"))
        mapping_.timing =
            std::array{"hand", "gates", "video", "electronic"}.at(static_cast<std::size_t>(std::clamp(index, 0, 3)));
    ask(false);
}

void ImportViewModel::setDay(const QString& text)
{
    const Units units = preferences_->units();
    const auto day = units.parseDay(text);
    dayProblem_ = day ? QString() : tr("There is no such day. Type it like %1.").arg(units.dayExample());
    if (!day || !table_) {
        emit changed();
        return;
    }
    mapping_.day = day;
    ask(false);
}

void ImportViewModel::add()
{
    if (canAdd())
        ask(true);
}

void ImportViewModel::cancel()
{
    if (progress_)
        progress_->stopped = true;
    if (table_ || step_ != Working)
        return;
    step_ = ChooseFile; // the file was being opened: what comes of it is not shown
    emit changed();
}

QStringList ImportViewModel::remarks() const
{
    QStringList words;
    if (seen_.remembered)
        words += tr("Read as the last file of this kind was.");
    for (const auto& remark : remarks_)
        words += remarkWords(remark);
    return words;
}

QString ImportViewModel::question() const
{
    return seen_.questions.empty() ? QString() : questionWords(seen_.questions.front());
}

bool ImportViewModel::dayAsked() const
{
    return std::ranges::any_of(seen_.questions, [](const auto& open) { return open.ask == importing::Ask::Day; }) ||
           mapping_.day.has_value();
}

QString ImportViewModel::summary() const
{
    if (!seen_.questions.empty() || !checked_)
        return {};
    QStringList words;
    if (seen_.count.duplicates > 0)
        words += seen_.count.duplicates == 1 ? tr("1 is there already")
                                             : tr("%1 are there already").arg(seen_.count.duplicates);
    if (seen_.count.skipped > 0)
        words += seen_.count.skipped == 1 ? tr("1 is left out") : tr("%1 are left out").arg(seen_.count.skipped);
    if (!seen_.bad.empty())
        words += seen_.bad.size() == 1 ? tr("1 bad row") : tr("%1 bad rows").arg(seen_.bad.size());
    return words.join(QStringLiteral(" · "));
}

QString ImportViewModel::addText() const
{
    const int count = seen_.count.added;
    if (!checked_)
        return tr("Counting");
    if (!seen_.questions.empty())
        return tr("Answer the question first");
    if (count == 0)
        return tr("Nothing to add");
    if (sets())
        return count == 1 ? tr("Add 1 set") : tr("Add %1 sets").arg(count);
    return count == 1 ? tr("Add 1 run") : tr("Add %1 runs").arg(count);
}

bool ImportViewModel::canAdd() const
{
    return step_ == Look && checked_ && seen_.questions.empty() && seen_.count.added > 0;
}

QString ImportViewModel::progressText() const
{
    if (!progress_ || progress_->all == 0)
        return tr("Reading");
    return tr("%1 of %2").arg(progress_->done.load()).arg(progress_->all.load());
}

} // namespace fleetrung::views
