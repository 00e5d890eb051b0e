#include "mobile/views/sensors_view_model.hpp"

#include <algorithm>

namespace fleetrung::views
{
namespace
{

constexpr int longestName = 40;

QVariantMap aboutRow(const QString& name, const QString& value)
{
    return {{QStringLiteral("name"), name}, {QStringLiteral("value"), value}};
}

/// The one thing that can be done about it here; what else to do stands in the trouble's own text.
QString actionFor(ble::TroubleKind kind)
{
    switch (kind) {
    case ble::TroubleKind::WrongSensor:
    case ble::TroubleKind::Unreadable:
        return SensorsViewModel::tr("Choose how it is read");
    case ble::TroubleKind::NotAllowed:
        return SensorsViewModel::tr("Ask again");
    case ble::TroubleKind::TooSlow:
        return {};
    default:
        return SensorsViewModel::tr("Try now");
    }
}

} // namespace

SensorsViewModel::SensorsViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), sensorRows_({"key", "name", "detail", "mark"}, this),
      healthRows_({"name", "value", "allowed", "mark"}, this), aboutRows_({"name", "value"}, this),
      mapRows_({"key", "name", "detail", "chosen"}, this), fileRows_({"name"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, [this] {
        showRows();
        showOpened();
    });
}

// --- From the program

void SensorsViewModel::showSensors(std::vector<SensorShown> sensors)
{
    saved_ = std::move(sensors);
    showRows();
    showOpened();
}

void SensorsViewModel::showMaps(std::vector<MapShown> maps)
{
    known_ = std::move(maps);
    showMapRows();
}

void SensorsViewModel::showMapFiles(const QStringList& names, const QString& folder)
{
    QList<QVariantMap> rows;
    for (const QString& name : names)
        rows += QVariantMap{{QStringLiteral("name"), name}};
    fileRows_.show(rows);
    mapFolder_ = folder;
    emit mapFilesChanged();
}

void SensorsViewModel::showState(const QString& address, sensor::LinkState state)
{
    Link& link = links_[address];
    link.state = state;
    if (state == sensor::LinkState::Streaming)
        link.trouble.reset();
    else
        link.health.reset();
    told(address);
}

void SensorsViewModel::showHealth(const QString& address, const sensor::Health& health)
{
    links_[address].health = health;
    told(address);
}

void SensorsViewModel::showInfo(const QString& address, const ble::SensorInfo& info)
{
    links_[address].info = info;
    told(address);
}

void SensorsViewModel::showTrouble(const QString& address, const ble::Trouble& trouble)
{
    if (address.isEmpty()) {
        radioTrouble_ = trouble;
        emit changed();
        return;
    }
    links_[address].trouble = trouble;
    told(address);
}

void SensorsViewModel::endTrouble(const QString& address)
{
    if (address.isEmpty()) {
        radioTrouble_.reset();
        emit changed();
        return;
    }
    links_[address].trouble.reset();
    told(address);
}

void SensorsViewModel::showZeroed(const QString& address)
{
    links_[address].zeroed.start();
    told(address);
}

void SensorsViewModel::showNoRadio(const QString& why)
{
    noRadio_ = why;
    emit changed();
}

void SensorsViewModel::told(const QString& address)
{
    showRows();
    if (address == openAddress_)
        showOpened();
}

// --- Reading

const SensorShown* SensorsViewModel::find(const QString& address) const
{
    const auto found = std::ranges::find(saved_, address, &SensorShown::address);
    return found == saved_.end() ? nullptr : &*found;
}

const SensorsViewModel::Link* SensorsViewModel::linkOf(const QString& address) const
{
    const auto found = links_.constFind(address);
    return found == links_.constEnd() ? nullptr : &*found;
}

sensor::LinkState SensorsViewModel::stateOf(const QString& address) const
{
    const Link* link = linkOf(address);
    return link ? link->state : sensor::LinkState::Idle;
}

SensorFacts SensorsViewModel::factsOf(const QString& address) const
{
    SensorFacts facts;
    if (const SensorShown* sensor = find(address))
        facts.hasGyroscope = sensor->hasGyroscope;
    const Link* link = linkOf(address);
    if (!link)
        return facts;
    facts.health = link->health.value_or(sensor::Health{});
    if (link->info)
        facts.battery = link->info->battery;
    if (link->zeroed.isValid())
        facts.sinceZeroed = static_cast<double>(link->zeroed.elapsed()) / 1000;
    return facts;
}

SensorsViewModel::Mark SensorsViewModel::markOf(const QString& address) const
{
    const Link* link = linkOf(address);
    if (!link)
        return Waiting;
    if (link->trouble || link->state == sensor::LinkState::Lost)
        return Bad;
    return link->state == sensor::LinkState::Streaming ? Good : Waiting;
}

QString SensorsViewModel::lineOf(const SensorShown& sensor) const
{
    QStringList parts{placeText(sensor.place), linkText(stateOf(sensor.address))};
    const Link* link = linkOf(sensor.address);
    if (link && link->health)
        parts += healthLine(factsOf(sensor.address), preferences_->units());
    return parts.join(QStringLiteral(" · "));
}

QString SensorsViewModel::summary() const
{
    if (saved_.empty())
        return tr("None yet. One is added in two minutes, and found by itself from then on.");
    QStringList parts;
    for (const auto& sensor : saved_)
        parts += tr("%1: %2").arg(sensor.name, linkText(stateOf(sensor.address)).toLower());
    return parts.join(QStringLiteral(" · "));
}

QString SensorsViewModel::radioTrouble() const
{
    return radioTrouble_ ? radioTrouble_->text : noRadio_;
}

QString SensorsViewModel::radioAction() const
{
    return radioTrouble_ ? actionFor(radioTrouble_->kind) : QString();
}

QString SensorsViewModel::stateDetail() const
{
    const Link* link = linkOf(openAddress_);
    return link && link->health ? healthLine(factsOf(openAddress_), preferences_->units()) : QString();
}

QString SensorsViewModel::trouble() const
{
    const Link* link = linkOf(openAddress_);
    return link && link->trouble ? link->trouble->text : QString();
}

QString SensorsViewModel::troubleAction() const
{
    const Link* link = linkOf(openAddress_);
    return link && link->trouble ? actionFor(link->trouble->kind) : QString();
}

QString SensorsViewModel::sidesText() const
{
    if (!opened())
        return {};
    return opened()->sixFaces ? tr("Measured. Do it again after a fall, or each season.")
                              : tr("Not measured yet: two minutes, and speeds get truer.");
}

void SensorsViewModel::showRows()
{
    QList<QVariantMap> rows;
    for (const auto& sensor : saved_)
        rows += QVariantMap{{QStringLiteral("key"), sensor.address},
                            {QStringLiteral("name"), sensor.name},
                            {QStringLiteral("detail"), lineOf(sensor)},
                            {QStringLiteral("mark"), static_cast<int>(markOf(sensor.address))}};
    sensorRows_.show(rows);
    emit changed();
}

void SensorsViewModel::showOpened()
{
    const Link* link = linkOf(openAddress_);
    healthRows_.show(link && link->health ? healthRows(factsOf(openAddress_), preferences_->units())
                                          : QList<QVariantMap>());
    QList<QVariantMap> about;
    if (link && link->info) {
        const ble::SensorInfo& info = *link->info;
        for (const auto& [name, value] : {std::pair{tr("Maker"), info.manufacturer},
                                          {tr("Model"), info.model},
                                          {tr("Firmware"), info.firmware},
                                          {tr("Hardware"), info.hardware},
                                          {tr("Serial number"), info.serial}})
            if (!value.isEmpty())
                about += aboutRow(name, value);
    }
    if (opened())
        about += aboutRow(tr("Address"), openAddress_);
    aboutRows_.show(about);
    showMapRows();
    emit openedChanged();
}

void SensorsViewModel::showMapRows()
{
    const std::string chosen = opened() ? opened()->mapKey : std::string();
    QList<QVariantMap> rows;
    for (const auto& map : known_)
        rows += QVariantMap{{QStringLiteral("key"), QString::fromStdString(map.key)},
                            {QStringLiteral("name"), map.name},
                            {QStringLiteral("detail"), map.own ? tr("Yours") : tr("Comes with the program")},
                            {QStringLiteral("chosen"), map.key == chosen}};
    mapRows_.show(rows);
}

// --- From the page

void SensorsViewModel::openSensor(const QString& address)
{
    openAddress_ = address;
    showOpened();
}

void SensorsViewModel::closeSensor()
{
    openSensor({});
}

QString SensorsViewModel::rename(const QString& name)
{
    const QString wanted = name.simplified();
    if (!opened() || wanted == opened()->name)
        return {};
    if (wanted.isEmpty())
        return tr("Give it a name, such as \"Bar sensor\".");
    if (wanted.size() > longestName)
        return tr("%1 letters are enough.").arg(longestName);
    for (const auto& other : saved_)
        if (other.address != openAddress_ && other.name == wanted)
            return tr("Another sensor has that name.");
    emit renameAsked(openAddress_, wanted);
    return {};
}

void SensorsViewModel::setPlace(int place)
{
    if (opened() && place >= 0 && place < sensorPlaces && place != this->place())
        emit placeAsked(openAddress_, QString::fromStdString(placeKey(static_cast<SensorPlace>(place))));
}

void SensorsViewModel::chooseMap(const QString& key)
{
    if (opened() && key.toStdString() != opened()->mapKey)
        emit mapAsked(openAddress_, key);
}

void SensorsViewModel::tryNow()
{
    if (opened())
        emit tryAsked(openAddress_);
}

void SensorsViewModel::forget()
{
    if (!opened())
        return;
    const QString address = openAddress_;
    closeSensor();
    links_.remove(address);
    emit forgetAsked(address);
}

void SensorsViewModel::mend()
{
    const Link* link = linkOf(openAddress_);
    if (!link || !link->trouble)
        return;
    const auto kind = link->trouble->kind;
    if (kind == ble::TroubleKind::WrongSensor || kind == ble::TroubleKind::Unreadable)
        emit mapChoiceWanted();
    else
        tryNow();
}

void SensorsViewModel::mendRadio()
{
    emit searchAsked();
}

void SensorsViewModel::calibrate()
{
    if (opened())
        emit calibrateAsked(openAddress_, name());
}

void SensorsViewModel::teach()
{
    if (opened())
        emit teachAsked(openAddress_, name());
}

void SensorsViewModel::exportMap()
{
    if (opened())
        emit exportAsked(QString::fromStdString(opened()->mapKey));
}

void SensorsViewModel::lookForMapFiles()
{
    emit mapFilesAsked();
}

void SensorsViewModel::importMap(const QString& fileName)
{
    emit importAsked(fileName);
}

} // namespace fleetrung::views
