// What the import sheet lists: columns, names, lifts, rows as they will be read, bad rows, and what can be picked.
#include <algorithm>
#include <array>
#include <cmath>

#include <QTime>

#include "mobile/views/import_view_model.hpp"
#include "mobile/views/import_words.hpp"

namespace fleetrung::views
{
namespace
{

constexpr std::size_t mostBad = 20;
const QString dot = QStringLiteral(" · ");

QString textOf(const std::string& text)
{
    return QString::fromStdString(text);
}

template <std::size_t n> int placeOf(const std::array<const char*, n>& keys, const std::string& key)
{
    const auto found = std::ranges::find(keys, key);
    return found == keys.end() ? -1 : static_cast<int>(found - keys.begin());
}

QVariantMap choiceRow(const QString& key, const QString& label, const QStringList& options, int current)
{
    return {{QStringLiteral("key"), key},
            {QStringLiteral("label"), label},
            {QStringLiteral("options"), options},
            {QStringLiteral("current"), current}};
}

QVariantMap pickRow(const QString& key, const QString& title, bool chosen)
{
    return {{QStringLiteral("key"), key}, {QStringLiteral("title"), title}, {QStringLiteral("chosen"), chosen}};
}

} // namespace

void ImportViewModel::showRows()
{
    const Units units = preferences_->units();
    showColumns(units);
    showNames();
    showLifts();
    showPreview(units);
    showBad();
    showChoices();
}

QString ImportViewModel::examples(std::size_t column) const
{
    QStringList cells;
    for (const auto& row : table_->rows) {
        const QString cell = column < row.cells.size() ? textOf(row.cells[column]).simplified() : QString();
        if (!cell.isEmpty() && !cells.contains(cell))
            cells += cell.left(24);
        if (cells.size() == 3)
            break;
    }
    return cells.join(QStringLiteral(", "));
}

void ImportViewModel::showColumns(const Units& units)
{
    QList<QVariantMap> rows;
    for (std::size_t i = 0; table_ && i < mapping_.columns.size(); ++i) {
        QStringList detail{columnWords(mapping_.columns[i], units)};
        if (const QString cells = examples(i); !cells.isEmpty())
            detail += cells;
        rows.append({{QStringLiteral("title"), textOf(table_->header[i])},
                     {QStringLiteral("detail"), detail.join(dot)},
                     {QStringLiteral("used"), mapping_.columns[i].meaning != importing::Meaning::Ignore}});
    }
    columnRows_.show(rows);
}

void ImportViewModel::showNames()
{
    QList<QVariantMap> rows;
    for (const auto& [name, choice] : seen_.names) {
        QString detail = tr("Not in the squad: left out. Tap to choose.");
        if (choice.kind == logbook::NameChoice::Add)
            detail = tr("Will be added to the squad");
        for (const auto& [key, athlete] : seen_.squad)
            if (choice.kind == logbook::NameChoice::Match && key == identifierText(choice.athlete))
                detail = textOf(athlete);
        rows.append({{QStringLiteral("title"), name.empty() ? tr("Rows without a name") : textOf(name)},
                     {QStringLiteral("detail"), detail},
                     {QStringLiteral("settled"), choice.kind != logbook::NameChoice::Skip}});
    }
    nameRows_.show(rows);
}

void ImportViewModel::showLifts()
{
    QList<QVariantMap> rows;
    for (const auto& [word, key] : seen_.lifts) {
        QString detail = tr("Not known: left out. Tap to choose.");
        for (const auto& lift : importLifts())
            if (lift.key == key)
                detail = textOf(lift.name);
        rows.append({{QStringLiteral("title"), textOf(word)},
                     {QStringLiteral("detail"), detail},
                     {QStringLiteral("settled"), !key.empty()}});
    }
    liftRows_.show(rows);
}

void ImportViewModel::showPreview(const Units& units)
{
    QList<QVariantMap> rows;
    for (const auto& row : seen_.first) {
        QStringList detail{units.day(row.day)};
        if (row.clock)
            detail += QTime::fromMSecsSinceStartOfDay(*row.clock % 86400 * 1000).toString(QStringLiteral("HH:mm"));
        for (const auto& split : row.splits)
            if (split.distance < row.distance)
                detail += tr("%1: %2").arg(units.distance(split.distance), units.sprintTime(split.time));
        const QString what = sets() ? textOf(row.what) : units.distance(row.distance);
        const QString title = row.athlete.empty() ? what : textOf(row.athlete) + dot + what;
        const QString value =
            sets() ? tr("%1 × %2").arg(row.repetitions).arg(units.mass(row.loadKg)) : units.sprintTime(row.time);
        rows.append({{QStringLiteral("title"), title},
                     {QStringLiteral("detail"), detail.join(dot)},
                     {QStringLiteral("value"), value}});
    }
    previewRows_.show(rows);
}

void ImportViewModel::showBad()
{
    QList<QVariantMap> rows;
    for (std::size_t i = 0; table_ && i < std::min(seen_.bad.size(), mostBad); ++i) {
        const auto& bad = seen_.bad[i];
        const QString place =
            bad.column < 0
                ? tr("Line %1").arg(bad.line)
                : tr("Line %1, %2").arg(bad.line).arg(textOf(table_->header[static_cast<std::size_t>(bad.column)]));
        rows.append({{QStringLiteral("title"), place}, {QStringLiteral("detail"), faultWords(bad)}});
    }
    if (seen_.bad.size() > mostBad)
        rows.append({{QStringLiteral("title"), tr("And %1 more").arg(seen_.bad.size() - mostBad)},
                     {QStringLiteral("detail"), QString()}});
    badRows_.show(rows);
}

void ImportViewModel::showChoices()
{
    QList<QVariantMap> rows;
    const auto has = [this](importing::Meaning meaning) {
        return std::ranges::any_of(mapping_.columns, [meaning](const auto& c) { return c.meaning == meaning; });
    };
    const auto open = [this](importing::Ask ask) {
        return std::ranges::any_of(seen_.questions, [ask](const auto& question) { return question.ask == ask; });
    };
    if (!table_ || mapping_.columns.empty())
        return choiceRows_.show(rows);
    if (!mapping_.decimalMark || mapping_.decimalMark == ',')
        rows.append(choiceRow(QStringLiteral("decimal"), tr("Decimal mark"), {tr("Point, 1.85"), tr("Comma, 1,85")},
                              mapping_.decimalMark ? 1 : -1));
    else if (table_->delimiter != ',')
        rows.append(
            choiceRow(QStringLiteral("decimal"), tr("Decimal mark"), {tr("Point, 1.85"), tr("Comma, 1,85")}, 0));
    if (mapping_.dateOrder || open(importing::Ask::DateOrder))
        rows.append(
            choiceRow(QStringLiteral("dates"), tr("Days are written"), {tr("Day, month"), tr("Month, day")},
                      mapping_.dateOrder ? (mapping_.dateOrder == importing::DateOrder::DayMonth ? 0 : 1) : -1));
    if (sets()) {
        const auto load =
            std::ranges::find(mapping_.columns, importing::Meaning::Load, &importing::ColumnMeaning::meaning);
        if (load != mapping_.columns.end() && load->unit == importing::Unit::None)
            rows.append(choiceRow(QStringLiteral("load"), tr("Loads are in"), {tr("kg"), tr("lb")},
                                  mapping_.load == importing::Unit::None    ? -1
                                  : mapping_.load == importing::Unit::Pound ? 1
                                                                            : 0));
        return choiceRows_.show(rows);
    }
    if (!has(importing::Meaning::Split) && has(importing::Meaning::Distance) && has(importing::Meaning::Time))
        rows.append(choiceRow(QStringLiteral("rows"), tr("One row is"), {tr("A run"), tr("A split")},
                              mapping_.form == importing::RowForm::SplitPerRow ? 1 : 0));
    if (has(importing::Meaning::Split) || mapping_.form == importing::RowForm::SplitPerRow)
        rows.append(choiceRow(QStringLiteral("splits"), tr("Times count"),
                              {tr("From the start"), tr("From the gate before")},
                              mapping_.splits == importing::SplitForm::Interval ? 1 : 0));
    if (!has(importing::Meaning::Start))
        rows.append(
            choiceRow(QStringLiteral("start"), tr("Start"),
                      {tr("Blocks"), tr("Standing"), tr("Falling"), tr("Rolling"), tr("Flying")},
                      placeOf(std::array{"block", "standing", "falling", "rolling", "flying"}, mapping_.start)));
    if (!has(importing::Meaning::Timing))
        rows.append(choiceRow(QStringLiteral("timing"), tr("Timed by"),
                              {tr("Hand"), tr("Gates"), tr("Video"), tr("Electronic")},
                              placeOf(std::array{"hand", "gates", "video", "electronic"}, mapping_.timing)));
    choiceRows_.show(rows);
}

void ImportViewModel::showPicks(const QString& title, const QString& detail, const QList<QVariantMap>& picks)
{
    pickTitle_ = title;
    pickDetail_ = detail;
    pickRows_.show(picks);
    emit picksChanged();
}

void ImportViewModel::openColumn(int column)
{
    if (!table_ || column < 0 || static_cast<std::size_t>(column) >= mapping_.columns.size())
        return;
    picking_ = Picking::Column;
    picked_ = static_cast<std::size_t>(column);
    QList<QVariantMap> picks;
    for (int i = 0; i < importing::meaningCount; ++i) {
        const auto meaning = static_cast<importing::Meaning>(i);
        if (importing::belongsTo(meaning, kind_))
            picks.append(pickRow(QString::number(i), meaningName(meaning), pickedColumn().meaning == meaning));
    }
    showPicks(textOf(table_->header[picked_]), examples(picked_), picks);
}

void ImportViewModel::openName(int name)
{
    if (name < 0 || static_cast<std::size_t>(name) >= seen_.names.size())
        return;
    picking_ = Picking::Name;
    picked_ = static_cast<std::size_t>(name);
    const auto& [word, choice] = seen_.names[picked_];
    QList<QVariantMap> picks{
        pickRow(QStringLiteral("skip"), tr("Leave out"), choice.kind == logbook::NameChoice::Skip)};
    if (!word.empty())
        picks.append(pickRow(QStringLiteral("add"), tr("Add to the squad"), choice.kind == logbook::NameChoice::Add));
    for (const auto& [key, athlete] : seen_.squad)
        picks.append(pickRow(textOf(key), textOf(athlete),
                             choice.kind == logbook::NameChoice::Match && identifierText(choice.athlete) == key));
    showPicks(word.empty() ? tr("Rows without a name") : textOf(word), tr("Who is this?"), picks);
}

void ImportViewModel::openLift(int lift)
{
    if (lift < 0 || static_cast<std::size_t>(lift) >= seen_.lifts.size())
        return;
    picking_ = Picking::Lift;
    picked_ = static_cast<std::size_t>(lift);
    const auto& [word, chosen] = seen_.lifts[picked_];
    QList<QVariantMap> picks{pickRow(QString(), tr("Leave out"), chosen.empty())};
    for (const auto& known : importLifts())
        picks.append(pickRow(textOf(known.key), textOf(known.name), known.key == chosen));
    showPicks(textOf(word), tr("Which lift is this?"), picks);
}

void ImportViewModel::pick(const QString& key)
{
    if (!table_)
        return;
    if (picking_ == Picking::Column) {
        auto meaning = pickedColumn();
        meaning.meaning = static_cast<importing::Meaning>(std::clamp(key.toInt(), 0, importing::meaningCount - 1));
        if (meaning.meaning != pickedColumn().meaning)
            meaning.unit = importing::Unit::None;
        takeMapping(importing::withMeaning(*table_, mapping_, picked_, meaning));
        openColumn(static_cast<int>(picked_));
    } else if (picking_ == Picking::Name) {
        auto& choice = chosenNames_[seen_.names[picked_].first];
        choice = {key == QStringLiteral("add") ? logbook::NameChoice::Add : logbook::NameChoice::Skip, {}};
        if (const auto id = parseIdentifier(key.toStdString()))
            choice = {logbook::NameChoice::Match, *id};
        ask(false);
    } else if (picking_ == Picking::Lift) {
        mapping_.lifts[seen_.lifts[picked_].first] = key.toStdString();
        ask(false);
    }
}

bool ImportViewModel::pickHasDistance() const
{
    return picking_ == Picking::Column && picked_ < mapping_.columns.size() &&
           mapping_.columns[picked_].meaning == importing::Meaning::Split;
}

QString ImportViewModel::pickDistance() const
{
    const double distance = pickHasDistance() ? mapping_.columns[picked_].distance : 0;
    return distance > 0 ? preferences_->units().number(distance, distance == std::floor(distance) ? 0 : 2) : QString();
}

bool ImportViewModel::setDistance(const QString& metres)
{
    const auto distance = Units::parse(metres);
    if (!table_ || !pickHasDistance() || !distance || *distance <= 0 || *distance > 1000)
        return false;
    auto meaning = pickedColumn();
    meaning.distance = *distance;
    meaning.from = 0;
    takeMapping(importing::withMeaning(*table_, mapping_, picked_, meaning));
    return true;
}

} // namespace fleetrung::views
