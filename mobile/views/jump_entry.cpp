#include "mobile/views/jump_entry.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>

#include "engine/season/rules.hpp"
#include "mobile/logbook/track_log.hpp"
#include "mobile/views/engine_words.hpp"
#include "mobile/views/form_keys.hpp"
#include "mobile/views/forms.hpp"
#include "mobile/views/track_words.hpp"

namespace fleetrung::views
{
namespace
{

// In the order of the form's choices.
const std::vector<std::string> kindKeys{"drop-jump", "counter-movement", "squat-jump", "standing-long", "bounds"};
const std::vector<int> boundCounts{3, 5, 10};

bool isAlong(const store::Jump& jump)
{
    return jump.kind == "standing-long" || jump.kind == "bounds" || jump.distance.value.has_value();
}

/// What trials of that kind are compared by: distance, reactive strength where contact is known, else height.
std::optional<double> scoreOf(const store::Jump& jump)
{
    if (isAlong(jump))
        return jump.distance.value;
    const auto values = logbook::valuesOf(jump);
    if (values.rsi)
        return values.rsi->value;
    return values.height ? std::optional(values.height->value) : std::nullopt;
}

QString scoreText(const store::Jump& like, double score, const Units& units)
{
    if (isAlong(like))
        return units.number(score, 2) + QStringLiteral(" ") + JumpEntry::tr("m");
    if (logbook::valuesOf(like).rsi)
        return JumpEntry::tr("RSI %1").arg(units.number(score, 2));
    return units.length(score);
}

} // namespace

JumpWords wordsOf(const store::Jump& jump, const Units& units)
{
    const auto values = logbook::valuesOf(jump);
    JumpWords words;
    if (jump.contact.value)
        words.parts += JumpEntry::tr("contact %1").arg(units.milliseconds(*jump.contact.value));
    if (jump.flight.value)
        words.parts += JumpEntry::tr("flight %1").arg(units.milliseconds(*jump.flight.value));
    if (values.rsi)
        words.parts += JumpEntry::tr("RSI %1").arg(units.number(values.rsi->value, 2));
    if (jump.distance.value)
        words.value = units.number(*jump.distance.value, 2) + QStringLiteral(" ") + JumpEntry::tr("m");
    else if (values.height)
        words.value = units.length(values.height->value);
    return words;
}

JumpEntry::JumpEntry(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), rows_({"words"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, &JumpEntry::showTrials);
}

QVariantMap JumpEntry::begin(const std::vector<store::Jump>& jumps, CivilDate today)
{
    today_ = today;
    clear();
    store::Jump last;
    last.repetitions = boundCounts.front();
    if (!jumps.empty())
        last = jumps.back();
    const auto lastBox = std::find_if(jumps.rbegin(), jumps.rend(), [](const store::Jump& jump) {
        return jump.kind == "drop-jump" && jump.boxHeightM;
    });
    const Units units = preferences_->units();
    return {{QStringLiteral("kind"), indexOfKey(kindKeys, last.kind, 0)},
            {QStringLiteral("box"), lastBox == jumps.rend() ? QString() : units.lengthNumber(*lastBox->boxHeightM)},
            {QStringLiteral("bounds"), indexOfKey(boundCounts, last.repetitions, 0)},
            {QStringLiteral("surface"), indexOfKey(surfaceKeys, last.surface, 0)},
            {QStringLiteral("shoes"), indexOfKey(shoeKeys, last.shoes, 2)}};
}

void JumpEntry::clear()
{
    trials_.clear();
    showTrials();
}

store::Jump JumpEntry::readTrial(FormReader& reader) const
{
    store::Jump jump;
    jump.kind = chosenKey(kindKeys, reader.choice(QStringLiteral("kind")));
    // Bounds of sense: what lies beyond is a slip of the finger. Starting values of this project.
    if (jump.kind == "bounds") {
        jump.repetitions = chosenKey(boundCounts, reader.choice(QStringLiteral("bounds")));
        jump.distance.value = reader.number(QStringLiteral("distance"), jump.repetitions, 4.0 * jump.repetitions, true);
        return jump;
    }
    if (jump.kind == "standing-long") {
        jump.distance.value = reader.number(QStringLiteral("distance"), 0.5, 4.5, true);
        return jump;
    }
    if (jump.kind == "drop-jump") {
        jump.boxHeightM = reader.length(QStringLiteral("box"), 0.05, 1.2, true);
        jump.contact.value = reader.milliseconds(QStringLiteral("contact"), 80, 800, true);
    }
    jump.flight.value = reader.milliseconds(QStringLiteral("flight"), 100, 1000, false);
    jump.height.value = reader.length(QStringLiteral("height"), 0.02, 1.2, false);
    if (reader.isEmpty(QStringLiteral("flight")) && reader.isEmpty(QStringLiteral("height")))
        reader.problem(QStringLiteral("flight"), tr("Type the flight time, or the height."));
    return jump;
}

void JumpEntry::readCommon(FormReader& reader, store::Jump& jump) const
{
    const auto day = reader.day(QStringLiteral("day"), true);
    if (day && *day > today_)
        reader.problem(QStringLiteral("day"), tr("That day has not come yet."));
    jump.done.trainingDay = day.value_or(today_);
    jump.test = reader.choice(QStringLiteral("test")) != 0;
    jump.surface = chosenKey(surfaceKeys, reader.choice(QStringLiteral("surface")));
    jump.shoes = chosenKey(shoeKeys, reader.choice(QStringLiteral("shoes")));
    jump.note = reader.text(QStringLiteral("note"), false).toStdString();
}

QVariantMap JumpEntry::addTrial(const QVariantMap& form)
{
    const Units units = preferences_->units();
    FormReader reader(form, units);
    const auto jump = readTrial(reader);
    if (!reader.sound())
        return reader.problems();
    if (full())
        return {{QStringLiteral("flight"), tr("Save these first.")}};
    if (jump.kind == "drop-jump" && any() && jump.boxHeightM != trials_.front().boxHeightM)
        return {{QStringLiteral("box"), tr("Save these first.")}}; // best and mean are of one box
    trials_.push_back(jump);
    showTrials();
    return {};
}

void JumpEntry::takeOffLast()
{
    if (trials_.empty())
        return;
    trials_.pop_back();
    showTrials();
}

QVariantMap JumpEntry::save(const QVariantMap& form)
{
    const Units units = preferences_->units();
    FormReader reader(form, units);
    auto jumps = trials_;
    const bool typed =
        std::ranges::any_of(std::vector{"contact", "flight", "height", "distance"},
                            [&reader](const char* field) { return !reader.isEmpty(QString::fromLatin1(field)); });
    if (typed || jumps.empty())
        jumps.push_back(readTrial(reader));
    store::Jump common;
    readCommon(reader, common);
    if (!reader.sound())
        return reader.problems();
    for (auto& jump : jumps) {
        jump.done = common.done;
        jump.test = common.test;
        jump.surface = common.surface;
        jump.shoes = common.shoes;
        jump.note = common.note;
    }
    emit added(jumps);
    return {};
}

void JumpEntry::showTrials()
{
    const Units units = preferences_->units();
    QList<QVariantMap> rows;
    for (const auto& trial : trials_) {
        const auto words = wordsOf(trial, units);
        QStringList parts;
        if (!words.value.isEmpty())
            parts += words.value;
        parts += words.parts;
        rows.append({{QStringLiteral("words"), parts.join(QStringLiteral(" · "))}});
    }
    rows_.show(rows);
    emit changed();
}

QString JumpEntry::summary() const
{
    std::vector<double> scores;
    for (const auto& trial : trials_)
        if (const auto score = scoreOf(trial))
            scores.push_back(*score);
    if (scores.size() < 2)
        return {};
    const Units units = preferences_->units();
    const double mean = std::accumulate(scores.begin(), scores.end(), 0.0) / static_cast<double>(scores.size());
    return tr("Best %1, mean %2")
        .arg(scoreText(trials_.front(), std::ranges::max(scores), units), scoreText(trials_.front(), mean, units));
}

QString JumpEntry::caution() const
{
    const Units units = preferences_->units();
    const auto& data = season::standardSeasonData();
    const auto& rules = data.rules;
    const auto count = [&units](double contacts) { return units.number(contacts, 0); };
    const auto* caution = season::findCaution(data, "drop-jumps");
    const QString limits =
        tr("At most %1 contacts in a session and %2 in seven days. Under 18: at most %3, from at most %4. Heavier than "
           "%5: no box above %6.")
            .arg(count(rules.jumpContacts), count(rules.jumpContactsWeek), count(rules.jumpContactsYoung),
                 units.length(rules.jumpHeightYoung), units.mass(rules.jumpHeavyMass),
                 units.length(rules.jumpHeavyHeight));
    return caution ? engineText(caution->text) + QLatin1Char(' ') + limits : limits;
}

} // namespace fleetrung::views
