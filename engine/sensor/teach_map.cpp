#include "engine/sensor/teach_map.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::sensor::teaching
{
namespace
{

/// A number of a table with its channel, before it is known whether it stands in a packet or in each sample.
struct Named {
    Channel channel;
    Place place;
    double offset, scale;
    bool perSample;
};

Channel channelOf(Channel first, Eigen::Index axis)
{
    return static_cast<Channel>(static_cast<int>(first) + static_cast<int>(axis));
}

std::vector<Named> accelerometerFields(const TeachRecording& recording, const std::vector<Table>& tables,
                                       const Findings& findings)
{
    const auto& found = findings.accelerometer;
    const bool mirrored = findings.gyroscope && findings.gyroscope->mirrored;
    const double counts = plausibleCountsPerGravity(found.countsPerGravity, recording.gravity);
    std::vector<Named> fields;
    for (Eigen::Index axis = 0; axis < 3; ++axis) {
        const auto& place = found.triad.places.at(static_cast<std::size_t>(axis));
        const double sign = mirrored && axis == 2 ? -1 : 1;
        fields.push_back({channelOf(Channel::AccelerometerX, axis), place,
                          plausibleOffset(tables[found.table], place, found.center[axis], found.countsPerGravity),
                          sign * recording.gravity / counts, true});
    }
    return fields;
}

std::vector<Named> gyroscopeFields(const std::vector<Table>& tables, const Gyroscope& found)
{
    // A mirrored frame is set right by turning z of the accelerometer about; the rates then turn about all but z.
    Eigen::Matrix3d axes = found.axes;
    if (found.mirrored) {
        axes.topRows<2>() *= -1;
    }
    const double scale = 1 / plausibleCountsPerRate(1 / found.scale);
    std::vector<Named> fields;
    for (Eigen::Index field = 0; field < 3; ++field) {
        Eigen::Index axis = 0;
        axes.col(field).cwiseAbs().maxCoeff(&axis);
        const auto& place = found.triad.places.at(static_cast<std::size_t>(field));
        fields.push_back({channelOf(Channel::GyroscopeX, axis), place,
                          plausibleOffset(tables[found.table], place, found.bias[field], 2 / found.scale),
                          axes(axis, field) * scale, true});
    }
    return fields;
}

void addRunning(std::vector<Named>& fields, StreamForm& form, const RunningNumbers& running, int samples)
{
    const auto wrapOf = [&](const Running& number) { return number.wrap > 0 ? number.wrap : 0.0; };
    if (running.counter) {
        const auto& counter = *running.counter;
        const bool ofPackets = samples > 1 && !counter.perSample && std::abs(counter.step - 1) < 1e-6;
        form.counts = ofPackets ? Counts::Packets : Counts::Samples;
        form.counterWrap = static_cast<std::int64_t>(std::llround(wrapOf(counter)));
        fields.push_back({Channel::Counter, counter.place, 0, 1, counter.perSample || samples == 1});
    }
    if (running.stamp) {
        const double tick = plausibleTick(running.stamp->tick);
        form.stampWrap = wrapOf(*running.stamp) * tick;
        fields.push_back({Channel::Stamp, running.stamp->place, 0, tick, running.stamp->perSample || samples == 1});
    }
}

void fillBinary(BinaryForm& form, const Table& table, const std::vector<Named>& fields, const Triad& triad)
{
    form.stream = table.carrier == Carrier::ByteStream;
    form.mark = table.mark;
    form.length = static_cast<int>(table.width);
    form.samples = triad.samples;
    form.sampleBits = triad.stride;
    if (triad.samples == 1) {
        form.sampleBits = static_cast<int>(table.width) * 8;
    } else {
        // A sample may begin with something else: the last one must still fit.
        form.firstBit = static_cast<int>(table.width) * 8 - triad.samples * triad.stride;
        for (const auto& field : fields) {
            form.firstBit = field.perSample ? std::min(form.firstBit, field.place.bit) : form.firstBit;
        }
    }
    for (const auto& field : fields) {
        auto& list = field.perSample ? form.sampleFields : form.packetFields;
        const int bit = field.place.bit - (field.perSample ? form.firstBit : 0);
        list.push_back({field.channel, field.place.type, field.place.order, bit, field.offset, field.scale});
    }
    // Packets that hold another number of samples each.
    const auto whole = [&](std::size_t length) {
        return static_cast<int>(length) * 8 >= form.firstBit + form.sampleBits &&
               (static_cast<int>(length) * 8 - form.firstBit) % form.sampleBits == 0;
    };
    if (table.carrier == Carrier::Packets && !table.onlyLength && triad.samples > 1 &&
        std::all_of(table.lengths.begin(), table.lengths.end(), whole)) {
        form.length = form.samples = 0;
    }
}

void fillLines(TextForm& form, const Table& table, const std::vector<Named>& fields)
{
    form.separator = table.separator;
    form.prefix = table.prefix;
    for (const auto& field : fields) {
        const auto cell = static_cast<std::size_t>(field.place.bit);
        if (table.keys.empty()) {
            form.columns.push_back({field.channel, field.place.bit, {}, field.offset, field.scale});
        } else {
            form.columns.push_back({field.channel, 0, table.keys[cell], field.offset, field.scale});
        }
    }
}

StreamForm streamOf(const TeachRecording& recording, const Table& table, std::vector<Named> fields,
                    const Stream& stream, const Triad& triad)
{
    StreamForm form;
    form.service = recording.notifiers[table.notifier].service;
    form.characteristic = recording.notifiers[table.notifier].characteristic;
    form.text = table.isText();
    form.rate = stream.rate;
    addRunning(fields, form, stream.running, triad.samples);
    if (form.text) {
        fillLines(form.lines, table, fields);
    } else {
        fillBinary(form.binary, table, fields, triad);
    }
    return form;
}

} // namespace

SensorMap mapOf(const TeachRecording& recording, const std::vector<Table>& tables, const Findings& findings)
{
    SensorMap map;
    map.key = "taught-sensor";
    map.name = "Taught sensor";
    const auto& accelerometer = findings.accelerometer;
    auto fields = accelerometerFields(recording, tables, findings);
    const bool together = findings.gyroscope && findings.gyroscope->table == accelerometer.table;
    std::vector<Named> turning;
    if (findings.gyroscope) {
        turning = gyroscopeFields(tables, *findings.gyroscope);
    }
    if (together) {
        fields.insert(fields.end(), turning.begin(), turning.end());
    }
    map.streams.push_back(
        streamOf(recording, tables[accelerometer.table], fields, findings.accelerometerStream, accelerometer.triad));
    if (findings.gyroscope && !together) {
        map.streams.push_back(streamOf(recording, tables[findings.gyroscope->table], turning, findings.gyroscopeStream,
                                       findings.gyroscope->triad));
    }
    return map;
}

} // namespace fleetrung::sensor::teaching
