// The part of the program behind the sensors: which are saved, which one a set begins with, and maps as files.
#include "mobile/views/app_view_model.hpp"

namespace fleetrung::views
{

using logbook::Logbook;

namespace
{

struct SensorsRead {
    std::vector<SavedSensor> sensors;
    std::vector<sensor::SensorMap> maps;
    std::optional<Error> damaged; ///< a row that could not be read: it is left out, and told
};

Expected<SensorsRead> readSensors(Logbook& logbook)
{
    const auto rows = logbook.sensors();
    if (!rows)
        return tl::unexpected(rows.error());
    const auto maps = logbook.sensorMaps();
    if (!maps)
        return tl::unexpected(maps.error());
    SensorsRead read;
    for (const auto& row : *rows) {
        auto map = sensor::parseSensorMap(row.map);
        if (!map) {
            read.damaged = map.error();
            continue;
        }
        SavedSensor saved{.id = row.id,
                          .address = QString::fromStdString(row.address),
                          .name = QString::fromStdString(row.name),
                          .place = placeOf(row.placement),
                          .map = std::move(*map),
                          .calibration = {}};
        if (!row.calibration.empty()) {
            if (const auto calibration = motion::parseCalibration(row.calibration))
                saved.calibration = *calibration;
            else
                read.damaged = calibration.error();
        }
        read.sensors.push_back(std::move(saved));
    }
    for (const auto& row : *maps) {
        if (auto map = sensor::parseSensorMap(row.text))
            read.maps.push_back(std::move(*map));
        else
            read.damaged = map.error();
    }
    return read;
}

store::Sensor rowOf(const SavedSensor& sensor)
{
    store::Sensor row;
    row.id = sensor.id;
    row.address = sensor.address.toStdString();
    row.name = sensor.name.toStdString();
    row.placement = placeKey(sensor.place);
    row.map = sensor::sensorMapText(sensor.map);
    row.calibration = motion::calibrationText(sensor.calibration);
    return row;
}

} // namespace

void AppViewModel::connectSensors()
{
    connect(&desk_, &SensorDesk::changed, this, &AppViewModel::showBarSensor);
    connect(&desk_, &SensorDesk::keepAsked, this, [this](const SavedSensor& sensor, const QString& said) {
        writeSensor([row = rowOf(sensor)](Logbook& logbook) { return logbook.keepSensor(row); }, said);
    });
    connect(&desk_, &SensorDesk::forgetAsked, this, [this](const SavedSensor& sensor) {
        const Identifier id = sensor.id;
        writeSensor([id](Logbook& logbook) { return logbook.forgetSensor(id).map([id] { return id; }); },
                    tr("%1 is forgotten.").arg(sensor.name),
                    [id](Logbook& logbook) { return logbook.restoreSensor(id); });
    });
    connect(&desk_, &SensorDesk::keepMapAsked, this, [this](const sensor::SensorMap& map, const QString& said) {
        writeSensor([text = sensor::sensorMapText(map)](Logbook& logbook) { return logbook.keepSensorMap(text); },
                    said);
    });
    connect(sensors(), &SensorsViewModel::exportAsked, this, &AppViewModel::handOutMap);
    connect(sensors(), &SensorsViewModel::mapFilesAsked, this, [this] {
        if (files_.names)
            sensors()->showMapFiles(files_.names(QStringLiteral(".json")), files_.place);
    });
    connect(sensors(), &SensorsViewModel::importAsked, this, &AppViewModel::takeInMap);
    connect(&bench_, &BenchViewModel::cutOffAnswered, this, &AppViewModel::answerCutOff);
    refreshSensors();
    lookForCutOff();
}

void AppViewModel::refreshSensors()
{
    log_->run(this, readSensors, [this](Expected<SensorsRead> read) {
        if (!read)
            return sayProblem(read.error());
        if (read->damaged)
            sayProblem(*read->damaged);
        desk_.showOwnMaps(std::move(read->maps));
        desk_.showSaved(std::move(read->sensors));
    });
}

void AppViewModel::writeSensor(std::function<Expected<Identifier>(Logbook&)> work, const QString& said, Undo undo)
{
    log_->run(this, std::move(work), [this, said, undo = std::move(undo)](const Expected<Identifier>& written) {
        if (!written)
            return sayProblem(written.error());
        say(said, undo);
        refreshSensors();
    });
}

// --- Maps as files

void AppViewModel::handOutMap(const QString& key)
{
    const auto* map = desk_.findMap(key.toStdString());
    if (!map || !files_.hand)
        return;
    const std::string text = sensor::sensorMapText(*map);
    const auto where = files_.hand(fileName(QString::fromStdString(map->name), QStringLiteral("json")),
                                   QByteArray::fromStdString(text));
    if (!where)
        return sayProblem(where.error());
    say(tr("The sensor map is in %1").arg(*where));
    offer({*where});
}

void AppViewModel::takeInMap(const QString& file)
{
    if (!files_.last)
        return;
    const QByteArray bytes = files_.last(file);
    const auto map = sensor::parseSensorMap({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    if (!map)
        return sayProblem({map.error().code, file.toStdString() + ", " + map.error().place, map.error().message});
    writeSensor([text = bytes.toStdString()](Logbook& logbook) { return logbook.keepSensorMap(text); },
                tr("%1 can be chosen now.").arg(QString::fromStdString(map->name)));
}

// --- The sensor of a set

/// The bar's sensor is the one that a set begins with. While a set runs it stays, and says itself how it is.
void AppViewModel::showBarSensor()
{
    const auto streaming = desk_.streaming();
    const bool there = !streaming.empty() && streaming.front().place == SensorPlace::Bar;
    const SavedSensor* bar = desk_.at(SensorPlace::Bar);
    bench_.showAwaited(bar ? tr("%1: %2").arg(bar->name, linkText(sensors()->stateOf(bar->address)).toLower())
                           : QString());
    const QString address = there ? streaming.front().address : sensor_ ? sensor_->address : QString();
    bench_.showSensorLine(address.isEmpty() ? QString()
                                            : healthLine(sensors()->factsOf(address), preferences_->units()));
    if (setRuns() || (sensor_ && sensor_->address.isEmpty())) // what the program was told to play stays
        return;
    if (there) {
        const bool same = sensor_ && sensor_->address == address && sensor_->name == streaming.front().name;
        if (!same || bench_.sensor() != BenchViewModel::Ready)
            offerSensor({.name = streaming.front().name, .make = streaming.front().make, .address = address});
    } else if (sensor_) { // of the radio, and gone
        sensor_.reset();
        showIdleSensor();
    }
}

} // namespace fleetrung::views
