#include "mobile/views/own_ladder_view_model.hpp"

#include <algorithm>

#include "engine/base/numbers.hpp"
#include "mobile/views/engine_words.hpp"
#include "mobile/views/rung_form.hpp"
#include "mobile/views/wellness_form.hpp"

namespace fleetrung::views
{
namespace
{

constexpr double shorterBy = 0.8; // of the range above, where a new rung begins to be filled in

/// "rung-7": not taken on this ladder, nor by a rung that was stood on and is gone.
std::string freeKey(const season::Ladder& ladder, const std::set<std::string>& stoodOn)
{
    for (std::int64_t number = 1;; ++number) {
        auto key = "rung-" + integerText(number);
        if (ladder.find(key) == nullptr && !stoodOn.contains(key))
            return key;
    }
}

} // namespace

OwnLadderViewModel::OwnLadderViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), rungs_({"title", "detail"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, [this] {
        showRungs();
        emit changed();
    });
}

void OwnLadderViewModel::begin(season::Ladder ladder, bool isNew, std::set<std::string> stoodOn)
{
    ladder_ = std::move(ladder);
    isNew_ = isNew;
    stoodOn_ = std::move(stoodOn);
    problem_.clear();
    showRungs();
    emit changed();
}

void OwnLadderViewModel::setProblem(const QString& problem)
{
    problem_ = problem;
    emit changed();
}

void OwnLadderViewModel::showRungs()
{
    QList<QVariantMap> rows;
    for (const auto& rung : ladder_.rungs)
        rows.append(
            {{QStringLiteral("title"), engineText(rung.name)}, {QStringLiteral("detail"), rungWords(rung, units())}});
    rungs_.show(rows);
}

void OwnLadderViewModel::setName(const QString& name)
{
    ladder_.name = name.toStdString();
    problem_.clear();
    emit changed();
}

void OwnLadderViewModel::setHeavy(bool heavy)
{
    ladder_.heavy = heavy;
    emit changed();
}

void OwnLadderViewModel::setOneSided(bool oneSided)
{
    ladder_.oneSided = oneSided;
    emit changed();
}

QStringList OwnLadderViewModel::regionNames() const
{
    QStringList names = painRegionNames();
    names.removeLast(); // "somewhere else"
    return names;
}

QVariantList OwnLadderViewModel::regions() const
{
    QVariantList places;
    const auto keys = painRegions();
    for (std::size_t i = 0; i < keys.size(); ++i)
        if (std::ranges::find(ladder_.regions, keys[i]) != ladder_.regions.end())
            places.append(static_cast<int>(i));
    return places;
}

void OwnLadderViewModel::toggleRegion(int index)
{
    const auto keys = painRegions();
    if (index < 0 || static_cast<std::size_t>(index) >= keys.size())
        return;
    const auto& key = keys[static_cast<std::size_t>(index)];
    if (std::erase(ladder_.regions, key) == 0)
        ladder_.regions.push_back(key);
    emit changed();
}

QStringList OwnLadderViewModel::motions() const
{
    return motionNames();
}

QStringList OwnLadderViewModel::phases() const
{
    return phaseNames();
}

bool OwnLadderViewModel::holds(int index) const
{
    return index >= 0 && static_cast<std::size_t>(index) < ladder_.rungs.size();
}

/// As the last rung, shorter: what a ladder that goes on looks like.
season::Rung OwnLadderViewModel::freshRung() const
{
    season::Rung rung = ladder_.rungs.back();
    rung.name.clear();
    rung.pattern.clear();
    rung.box.reset();
    rung.climbs = false;
    rung.range = {rung.range.low * shorterBy, rung.range.high * shorterBy};
    rung.targetBand = {rung.targetBand.low * shorterBy, rung.targetBand.high * shorterBy};
    rung.loadRatio = 1;
    return rung;
}

QVariantMap OwnLadderViewModel::rungForm(int index) const
{
    return rungFields(holds(index) ? ladder_.rungs[static_cast<std::size_t>(index)] : freshRung(), units());
}

QVariantMap OwnLadderViewModel::saveRung(int index, const QVariantMap& form)
{
    season::Rung rung = holds(index) ? ladder_.rungs[static_cast<std::size_t>(index)] : freshRung();
    auto read = readRung(form, rung, units());
    if (!read)
        return read.error();
    if (holds(index)) {
        ladder_.rungs[static_cast<std::size_t>(index)] = std::move(*read);
    } else {
        read->key = freeKey(ladder_, stoodOn_);
        ladder_.rungs.push_back(std::move(*read));
    }
    const bool climbs = std::ranges::any_of(ladder_.rungs, &season::Rung::climbs);
    if (!climbs) // longest range first
        std::ranges::stable_sort(ladder_.rungs, std::ranges::greater{},
                                 [](const season::Rung& one) { return one.range.high; });
    problem_.clear();
    showRungs();
    emit changed();
    return {};
}

QString OwnLadderViewModel::removeRung(int index)
{
    if (!holds(index))
        return {};
    if (ladder_.rungs.size() == 1)
        return tr("A ladder needs a rung.");
    if (stoodOn_.contains(ladder_.rungs[static_cast<std::size_t>(index)].key))
        return tr("Training has been done on this rung. It stays.");
    ladder_.rungs.erase(ladder_.rungs.begin() + index);
    problem_.clear();
    showRungs();
    emit changed();
    return {};
}

void OwnLadderViewModel::save()
{
    ladder_.name = name().simplified().toStdString();
    if (ladder_.name.empty())
        return setProblem(tr("Give the ladder a name."));
    emit saved();
}

} // namespace fleetrung::views
