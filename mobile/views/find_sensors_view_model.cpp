#include "mobile/views/find_sensors_view_model.hpp"

#include <algorithm>

namespace fleetrung::views
{
namespace
{

constexpr double goodFit =
    0.8; // starting value of this project: four packets of five make sense, and gravity comes out
constexpr int longestName = 40;

} // namespace

FindSensorsViewModel::FindSensorsViewModel(QObject* parent)
    : QObject(parent), foundRows_({"key", "name", "detail", "bars", "saved"}, this),
      mapRows_({"key", "name", "detail", "chosen"}, this)
{
}

// --- Searching

void FindSensorsViewModel::search()
{
    list_.clear();
    trouble_.clear();
    showRows();
    emit searchAsked();
}

void FindSensorsViewModel::stop()
{
    emit stopAsked();
}

void FindSensorsViewModel::showSearching(bool searching)
{
    searching_ = searching;
    emit changed();
}

void FindSensorsViewModel::showFound(const ble::FoundSensor& sensor)
{
    list_.hear(sensor);
    showRows();
}

void FindSensorsViewModel::showSaved(const std::vector<SensorShown>& saved)
{
    saved_ = saved;
    QSet<QString> addresses;
    for (const auto& sensor : saved)
        addresses.insert(sensor.address);
    list_.setSaved(addresses);
    showRows();
}

void FindSensorsViewModel::setLikelyServices(const QSet<QString>& services)
{
    list_.setLikelyServices(services);
    showRows();
}

void FindSensorsViewModel::showTrouble(const QString& text)
{
    trouble_ = text;
    emit changed();
}

void FindSensorsViewModel::setFilter(const QString& filter)
{
    if (filter == filter_)
        return;
    filter_ = filter;
    showRows();
}

void FindSensorsViewModel::showRows()
{
    foundRows_.show(list_.rows(filter_));
    emit changed();
}

QString FindSensorsViewModel::countText() const
{
    const int shown = static_cast<int>(foundRows_.all().size());
    if (shown < list_.count())
        return tr("%1 of %2 shown: the others have another name.").arg(shown).arg(list_.count());
    if (list_.count() == 0)
        return searching_ ? tr("Searching") : QString();
    return searching_ ? tr("%1 found, still searching").arg(list_.count()) : tr("%1 found").arg(list_.count());
}

// --- Listening

void FindSensorsViewModel::choose(const QString& address)
{
    if (std::ranges::find(saved_, address, &SensorShown::address) != saved_.end()) {
        emit savedChosen(address);
        return;
    }
    if (!list_.find(address))
        return;
    forgetChosen();
    chosen_ = address;
    stage_ = Listening;
    trouble_.clear();
    emit stopAsked();
    emit listenAsked(address);
    emit changed();
}

void FindSensorsViewModel::tryAgain()
{
    if (stage_ != Listening)
        return;
    const QString address = chosen_;
    emit listenEnded();
    forgetChosen();
    chosen_ = address;
    trouble_.clear();
    emit listenAsked(address);
    emit changed();
}

void FindSensorsViewModel::forgetChosen()
{
    chosen_.clear();
    fits_.clear();
    packets_ = 0;
    settled_ = false;
    mapKey_.clear();
    mapName_.clear();
    showMapRows();
}

void FindSensorsViewModel::back()
{
    if (stage_ == Choosing)
        return;
    emit listenEnded();
    forgetChosen();
    stage_ = Choosing;
    search();
}

void FindSensorsViewModel::leave()
{
    if (stage_ != Choosing)
        emit listenEnded();
    emit stopAsked();
    forgetChosen();
    stage_ = Choosing;
    setFilter({});
    emit changed();
}

void FindSensorsViewModel::showFits(std::vector<MapFit> fits, int packets, bool settled)
{
    if (stage_ != Listening)
        return;
    std::ranges::stable_sort(fits, std::greater<>{}, [](const MapFit& fit) { return std::pair{fit.applies, fit.fit}; });
    fits_ = std::move(fits);
    packets_ = packets;
    settled_ = settled;
    if (settled && !fits_.empty()) {
        const MapFit& best = fits_.front();
        // A sensor that waits for a command sends nothing yet: the one map that applies is tried.
        const bool onlyOne = packets == 0 && best.applies && (fits_.size() < 2 || !fits_[1].applies);
        if (best.applies && (best.fit >= goodFit || onlyOne))
            chooseMap(QString::fromStdString(best.map.key));
    }
    showMapRows();
    emit changed();
}

void FindSensorsViewModel::showTaught(const MapShown& map)
{
    if (chosen_.isEmpty())
        return;
    fits_.insert(fits_.begin(), {.map = map, .applies = true, .fit = 1});
    settled_ = true;
    chooseMap(QString::fromStdString(map.key));
}

void FindSensorsViewModel::chooseMap(const QString& key)
{
    const std::string wanted = key.toStdString();
    const auto found = std::ranges::find_if(fits_, [&wanted](const MapFit& fit) { return fit.map.key == wanted; });
    if (found == fits_.end())
        return;
    mapKey_ = wanted;
    mapName_ = found->map.name;
    stage_ = Naming;
    showMapRows();
    emit changed();
}

void FindSensorsViewModel::showMapRows()
{
    QList<QVariantMap> rows;
    for (const auto& fit : fits_) {
        const QString detail = fit.fit >= goodFit ? tr("Fits what it sends")
                               : fit.applies      ? tr("May fit")
                                                  : tr("Does not fit what it offers");
        rows += QVariantMap{{QStringLiteral("key"), QString::fromStdString(fit.map.key)},
                            {QStringLiteral("name"), fit.map.name},
                            {QStringLiteral("detail"), detail},
                            {QStringLiteral("chosen"), fit.map.key == mapKey_}};
    }
    mapRows_.show(rows);
}

void FindSensorsViewModel::teach()
{
    if (!chosen_.isEmpty())
        emit teachAsked(chosen_, chosenName());
}

QString FindSensorsViewModel::chosenName() const
{
    const auto* sensor = list_.find(chosen_);
    return sensor ? foundName(*sensor) : QString();
}

QString FindSensorsViewModel::listeningText() const
{
    if (stage_ != Listening || settled_)
        return {};
    return packets_ == 0 ? tr("Connecting. Keep it near, lying still.") : tr("It sends. Finding how to read it.");
}

QString FindSensorsViewModel::mapText() const
{
    return mapName_.isEmpty() ? QString() : tr("Read as: %1").arg(mapName_);
}

QString FindSensorsViewModel::unreadText() const
{
    if (stage_ != Listening || !settled_)
        return {};
    return packets_ == 0 ? tr("It sends nothing by itself. Choose how it is read, if you know it; shake it awake and "
                              "try again, if not.")
                         : tr("It sends, but nothing here can read it yet. Teach it: three minutes, no tools.");
}

// --- Naming

bool FindSensorsViewModel::nameTaken(const QString& name) const
{
    return std::ranges::any_of(saved_, [&name](const SensorShown& sensor) { return sensor.name == name; });
}

QString FindSensorsViewModel::proposedName() const
{
    const auto* sensor = list_.find(chosen_);
    if (!sensor)
        return {};
    const QString own = sensor->name.simplified().left(longestName);
    const QString name = own.isEmpty() ? placeName(static_cast<SensorPlace>(proposedPlace())) : own;
    return nameTaken(name) ? QStringLiteral("%1 %2").arg(name, addressEnd(chosen_)) : name;
}

int FindSensorsViewModel::proposedPlace() const
{
    const bool bar = std::ranges::find(saved_, SensorPlace::Bar, &SensorShown::place) != saved_.end();
    return static_cast<int>(bar ? SensorPlace::Shoe : SensorPlace::Bar);
}

QString FindSensorsViewModel::save(const QString& name, int place)
{
    const QString wanted = name.simplified();
    if (wanted.isEmpty())
        return tr("Give it a name, such as \"Bar sensor\".");
    if (wanted.size() > longestName)
        return tr("%1 letters are enough.").arg(longestName);
    if (nameTaken(wanted))
        return tr("Another sensor has that name.");
    if (chosen_.isEmpty() || mapKey_.empty() || place < 0 || place >= sensorPlaces)
        return tr("Choose first how it is read.");
    emit saveAsked({.address = chosen_, .name = wanted, .place = static_cast<SensorPlace>(place), .mapKey = mapKey_});
    return {};
}

} // namespace fleetrung::views
