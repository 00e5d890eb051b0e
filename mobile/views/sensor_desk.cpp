#include "mobile/views/sensor_desk.hpp"

#include <algorithm>

#include "engine/sensor/packet_decoder.hpp"
#include "mobile/views/map_fit.hpp"

namespace fleetrung::views
{
namespace
{

constexpr int lookEvery = 500;             // ms
constexpr qint64 listenFor = 3000;         // ms after the characteristics are known, before a map is judged
constexpr std::size_t mostPackets = 20000; // of a sensor that is listened to: more tells nothing new

} // namespace

SensorDesk::SensorDesk(Preferences* preferences, QObject* parent)
    : QObject(parent), sensors_(preferences), teach_(preferences, sensor::teach, ble::Radio::now),
      calibration_(preferences)
{
    look_.setInterval(lookEvery);
    connect(&look_, &QTimer::timeout, this, &SensorDesk::lookAtPackets);
    connectPages();
    showMaps();
}

SensorDesk::~SensorDesk() = default;

// --- What is known

std::vector<const sensor::SensorMap*> SensorDesk::maps() const
{
    std::vector<const sensor::SensorMap*> all;
    for (const auto& map : own_)
        all.push_back(&map);
    for (const auto& map : sensor::includedMaps())
        if (std::ranges::find(own_, map.key, &sensor::SensorMap::key) == own_.end())
            all.push_back(&map);
    return all;
}

const sensor::SensorMap* SensorDesk::findMap(const std::string& key) const
{
    for (const auto* map : maps())
        if (map->key == key)
            return map;
    return nullptr;
}

const SavedSensor* SensorDesk::saved(const QString& address) const
{
    const auto found = std::ranges::find(saved_, address, &SavedSensor::address);
    return found == saved_.end() ? nullptr : &*found;
}

const SavedSensor* SensorDesk::at(SensorPlace place) const
{
    const auto found = std::ranges::find(saved_, place, &SavedSensor::place);
    return found == saved_.end() ? nullptr : &*found;
}

std::vector<StreamingSensor> SensorDesk::streaming() const
{
    std::vector<StreamingSensor> all;
    if (!radio_)
        return all;
    for (const auto& sensor : saved_)
        if (sensors_.stateOf(sensor.address) == sensor::LinkState::Streaming)
            all.push_back({sensor.address, sensor.name, sensor.place, radio_->sourceOf(sensor.address)});
    std::ranges::stable_sort(all, {}, &StreamingSensor::place);
    return all;
}

void SensorDesk::showMaps()
{
    std::vector<MapShown> shown;
    QSet<QString> services;
    for (const auto* map : maps()) {
        const bool own = std::ranges::find(own_, map->key, &sensor::SensorMap::key) != own_.end();
        shown.push_back({map->key, QString::fromStdString(map->name), own});
        for (const auto& stream : map->streams)
            services.insert(QString::fromStdString(stream.service));
    }
    sensors_.showMaps(shown);
    find_.setLikelyServices(services);
}

void SensorDesk::showOwnMaps(std::vector<sensor::SensorMap> maps)
{
    own_ = std::move(maps);
    showMaps();
}

void SensorDesk::showSaved(std::vector<SavedSensor> saved)
{
    const auto before = std::exchange(saved_, std::move(saved));
    std::vector<SensorShown> shown;
    for (const auto& sensor : saved_)
        shown.push_back({.address = sensor.address,
                         .name = sensor.name,
                         .place = sensor.place,
                         .mapKey = sensor.map.key,
                         .mapName = QString::fromStdString(sensor.map.name),
                         .hasGyroscope = sensor.map.hasGyroscope(),
                         .sixFaces = sensor.calibration.sixFaces});
    sensors_.showSensors(shown);
    find_.showSaved(shown);
    if (radio_) {
        for (const auto& old : before)
            if (!this->saved(old.address))
                radio_->release(old.address);
        for (const auto& sensor : saved_)
            keep(sensor);
    }
    emit changed();
}

void SensorDesk::keep(const SavedSensor& sensor)
{
    if (sensor.address != listening_)
        radio_->keep({sensor.address, sensor.name, sensor.map, sensor.calibration});
}

// --- The radio

void SensorDesk::setRadio(ble::Radio* radio)
{
    radio_ = radio;
    connectRadio();
    for (const auto& sensor : saved_)
        keep(sensor);
}

void SensorDesk::connectRadio()
{
    using ble::Radio;
    connect(radio_, &Radio::found, &find_, &FindSensorsViewModel::showFound);
    connect(radio_, &Radio::scanningChanged, &find_, &FindSensorsViewModel::showSearching);
    connect(radio_, &Radio::stateChanged, this, [this](const QString& address, sensor::LinkState state) {
        sensors_.showState(address, state);
        if (state == sensor::LinkState::Streaming)
            calibration_.showTrouble(address, {});
        else if (state == sensor::LinkState::Lost)
            calibration_.showTrouble(address, tr("The sensor is lost. It goes on when it is back."));
        emit changed();
    });
    connect(radio_, &Radio::health, this, [this](const QString& address, const sensor::Health& health) {
        sensors_.showHealth(address, health);
        emit changed();
    });
    connect(radio_, &Radio::info, this, [this](const QString& address, const ble::SensorInfo& info) {
        sensors_.showInfo(address, info);
        emit changed();
    });
    connect(radio_, &Radio::trouble, this, &SensorDesk::showTrouble);
    connect(radio_, &Radio::troubleOver, this, [this](const QString& address) {
        sensors_.endTrouble(address);
        if (address.isEmpty() || address == find_.chosenAddress())
            find_.showTrouble({});
        emit changed();
    });
    connect(radio_, &Radio::rezeroed, this, [this](const QString& address, const motion::Calibration& calibration) {
        const auto sensor = std::ranges::find(saved_, address, &SavedSensor::address);
        if (sensor != saved_.end())
            sensor->calibration = calibration;
        sensors_.showZeroed(address);
    });
    connect(radio_, &Radio::samples, &calibration_, &CalibrationViewModel::addSamples);
    connect(radio_, &Radio::learning, this,
            [this](const QString& address, const std::vector<sensor::Notifier>& notifiers) {
                if (address != listening_)
                    return;
                notifiers_ = notifiers;
                packets_.clear();
                sinceNotifiers_.start();
                look_.start();
                teach_.showNotifiers(address, notifiers);
            });
    connect(radio_, &Radio::raw, this, [this](const QString& address, const std::vector<sensor::RawPacket>& packets) {
        teach_.addPackets(address, packets);
        if (address == listening_ && packets_.size() < mostPackets)
            packets_.insert(packets_.end(), packets.begin(), packets.end());
    });
}

void SensorDesk::showTrouble(const QString& address, const ble::Trouble& trouble)
{
    sensors_.showTrouble(address, trouble);
    if (address.isEmpty() || address == find_.chosenAddress())
        find_.showTrouble(trouble.text);
    if (address.isEmpty() || address == teach_.address())
        teach_.showTrouble(trouble.text);
    emit changed();
}

// --- The pages

void SensorDesk::connectPages()
{
    const auto search = [this] {
        if (radio_)
            radio_->scan();
    };
    connect(&sensors_, &SensorsViewModel::searchAsked, this, search);
    connect(&find_, &FindSensorsViewModel::searchAsked, this, search);
    connect(&find_, &FindSensorsViewModel::stopAsked, this, [this] {
        if (radio_)
            radio_->stopScan();
    });
    connect(&sensors_, &SensorsViewModel::tryAsked, this, [this](const QString& address) {
        if (radio_)
            radio_->tryNow(address);
    });
    connect(&sensors_, &SensorsViewModel::renameAsked, this, [this](const QString& address, const QString& name) {
        change(address, tr("It is called %1.").arg(name), [&name](SavedSensor& sensor) { sensor.name = name; });
    });
    connect(&sensors_, &SensorsViewModel::placeAsked, this, [this](const QString& address, const QString& key) {
        const SensorPlace place = placeOf(key.toStdString());
        change(address, placeText(place), [place](SavedSensor& sensor) { sensor.place = place; });
    });
    connect(&sensors_, &SensorsViewModel::mapAsked, this, [this](const QString& address, const QString& key) {
        if (const auto* map = findMap(key.toStdString()))
            change(address, tr("Read as: %1").arg(QString::fromStdString(map->name)),
                   [map](SavedSensor& sensor) { sensor.map = *map; });
    });
    connect(&sensors_, &SensorsViewModel::forgetAsked, this, [this](const QString& address) {
        if (const SavedSensor* sensor = saved(address))
            emit forgetAsked(*sensor);
    });
    connect(&sensors_, &SensorsViewModel::calibrateAsked, &calibration_, &CalibrationViewModel::begin);
    connect(&calibration_, &CalibrationViewModel::saved, this,
            [this](const QString& address, const motion::Calibration& calibration) {
                change(address, tr("The six sides are saved."),
                       [&calibration](SavedSensor& sensor) { sensor.calibration = calibration; });
            });
    connect(&sensors_, &SensorsViewModel::teachAsked, &teach_, &TeachViewModel::begin);
    connect(&find_, &FindSensorsViewModel::teachAsked, &teach_, &TeachViewModel::begin);
    connect(&find_, &FindSensorsViewModel::listenAsked, this, &SensorDesk::listen);
    connect(&find_, &FindSensorsViewModel::listenEnded, this, &SensorDesk::endListening);
    connect(&teach_, &TeachViewModel::listenAsked, this, &SensorDesk::listen);
    connect(&teach_, &TeachViewModel::listenEnded, this, [this] {
        if (find_.chosenAddress() != listening_) // else it is still to be named
            endListening();
    });
    connect(&teach_, &TeachViewModel::taught, this, &SensorDesk::learned);
    connect(&find_, &FindSensorsViewModel::saveAsked, this, &SensorDesk::addNew);
}

void SensorDesk::change(const QString& address, const QString& said, const std::function<void(SavedSensor&)>& how)
{
    const SavedSensor* old = saved(address);
    if (!old)
        return;
    SavedSensor sensor = *old;
    how(sensor);
    emit keepAsked(sensor, said);
}

// --- A new one

void SensorDesk::listen(const QString& address)
{
    if (!radio_)
        return;
    if (listening_ == address && !notifiers_.empty())
        return teach_.showNotifiers(address, notifiers_); // it is listened to already
    endListening();
    listening_ = address;
    if (saved(address))
        radio_->release(address); // there is one link to a sensor at most
    radio_->listen(address);
}

void SensorDesk::endListening()
{
    look_.stop();
    notifiers_.clear();
    packets_.clear();
    if (listening_.isEmpty())
        return;
    const QString address = std::exchange(listening_, QString());
    if (!radio_)
        return;
    radio_->stopListening();
    if (const SavedSensor* sensor = saved(address))
        keep(*sensor);
}

void SensorDesk::lookAtPackets()
{
    if (find_.stage() != FindSensorsViewModel::Listening)
        return look_.stop();
    std::vector<MapFit> fits;
    for (const auto* map : maps()) {
        const bool own = std::ranges::find(own_, map->key, &sensor::SensorMap::key) != own_.end();
        fits.push_back({.map = {map->key, QString::fromStdString(map->name), own},
                        .applies = applies(*map, notifiers_),
                        .fit = fitOf(*map, notifiers_, packets_)});
    }
    const bool settled = sinceNotifiers_.elapsed() >= listenFor;
    if (settled)
        look_.stop();
    find_.showFits(std::move(fits), static_cast<int>(packets_.size()), settled);
}

void SensorDesk::addNew(const NewSensor& fresh)
{
    const auto* map = findMap(fresh.mapKey);
    if (!map)
        return;
    SavedSensor sensor;
    sensor.address = fresh.address;
    sensor.name = fresh.name;
    sensor.place = fresh.place;
    sensor.map = *map;
    endListening();
    emit keepAsked(sensor, tr("%1 is saved. It is found by itself from now on.").arg(fresh.name));
}

void SensorDesk::learned(const QString& address, const sensor::SensorMap& taught)
{
    sensor::SensorMap map = taught;
    for (int i = 2; findMap(map.key); ++i) // an older one stays as it is: other sensors may be read by it
        map.key = taught.key + "-" + std::to_string(i);
    own_.push_back(map);
    showMaps();
    emit keepMapAsked(map, tr("%1 is kept.").arg(QString::fromStdString(map.name)));
    if (address == find_.chosenAddress())
        return find_.showTaught({map.key, QString::fromStdString(map.name), true});
    change(address, tr("Read as: %1").arg(QString::fromStdString(map.name)),
           [&map](SavedSensor& sensor) { sensor.map = map; });
}

} // namespace fleetrung::views
