#include <catch2/catch.hpp>

#include <QSignalSpy>

#include "mobile/views/find_sensors_view_model.hpp"
#include "mobile/views/sensors_view_model.hpp"

using namespace fleetrung;
using namespace fleetrung::views;

namespace Catch
{
template <> struct StringMaker<QString> {
    static std::string convert(const QString& text) { return text.toStdString(); }
};
} // namespace Catch

namespace
{

const QString bar = QStringLiteral("C4:10:00:00:4F:2A");
const QString shoe = QStringLiteral("C4:10:00:00:71:0B");

std::vector<SensorShown> two()
{
    SensorShown first;
    first.address = bar;
    first.name = QStringLiteral("Bar sensor");
    first.mapKey = "packets";
    SensorShown second = first;
    second.address = shoe;
    second.name = QStringLiteral("Left shoe");
    second.place = SensorPlace::Shoe;
    return {first, second};
}

sensor::Health health()
{
    sensor::Health health;
    health.rate = 198;
    health.expectedRate = 200;
    health.lossShare = 0.0042;
    health.jitter = 0.0184;
    health.longestStall = 0.14;
    return health;
}

struct Sensors {
    Preferences preferences;
    SensorsViewModel view{&preferences};

    Sensors()
    {
        preferences.setLocale(QLocale(QLocale::German, QLocale::Germany));
        view.showSensors(two());
    }
};

QString value(const Rows& rows, int row, const char* role)
{
    return rows.all().at(row).value(QString::fromLatin1(role)).toString();
}

QVariantMap named(const Rows& rows, const QString& name)
{
    for (const auto& row : rows.all())
        if (row.value(QStringLiteral("name")).toString() == name)
            return row;
    return {};
}

} // namespace

TEST_CASE("A streaming sensor says rate, battery and loss in the user's decimals", "[sensors]")
{
    Sensors sensors;
    sensors.view.showState(bar, sensor::LinkState::Streaming);
    sensors.view.showHealth(bar, health());
    sensors.view.showInfo(
        bar, {.battery = 82, .mtu = {}, .manufacturer = {}, .model = {}, .firmware = {}, .hardware = {}, .serial = {}});
    CHECK(value(*sensors.view.sensors(), 0, "detail") ==
          QStringLiteral("On the bar · Streaming · 198 Hz · battery 82 % · 0,4 % lost"));
    CHECK(value(*sensors.view.sensors(), 1, "detail") == QStringLiteral("On the shoe · Not looked for"));
    CHECK(sensors.view.summary() == QStringLiteral("Bar sensor: streaming · Left shoe: not looked for"));
}

TEST_CASE("Health is told as value, allowed and mark", "[sensors]")
{
    Sensors sensors;
    sensors.view.openSensor(bar);
    CHECK(sensors.view.health()->count() == 0); // nothing is claimed before something came
    sensors.view.showState(bar, sensor::LinkState::Streaming);
    sensor::Health slow = health();
    slow.rate = 150;
    slow.jitter = 0.072;
    sensors.view.showHealth(bar, slow);
    const Rows& rows = *sensors.view.health();
    const QVariantMap rate = named(rows, QStringLiteral("Rate"));
    CHECK(rate.value(QStringLiteral("value")).toString() == QStringLiteral("150 Hz"));
    CHECK(rate.value(QStringLiteral("allowed")).toString() == QStringLiteral("at least 190"));
    CHECK(rate.value(QStringLiteral("mark")).toInt() == 1);
    CHECK(named(rows, QStringLiteral("Lateness")).value(QStringLiteral("mark")).toInt() == 1);
    CHECK(named(rows, QStringLiteral("Lost on the way")).value(QStringLiteral("mark")).toInt() == 0);
    CHECK(named(rows, QStringLiteral("Battery")).value(QStringLiteral("value")).toString() ==
          QStringLiteral("not told"));
    CHECK(named(rows, QStringLiteral("Zeroed")).value(QStringLiteral("value")).toString() == QStringLiteral("not yet"));
    sensors.view.showZeroed(bar);
    CHECK(named(rows, QStringLiteral("Zeroed")).value(QStringLiteral("value")).toString() ==
          QStringLiteral("just now"));
}

TEST_CASE("How long ago the gyroscope was zeroed is told in minutes and hours", "[sensors]")
{
    CHECK(agoText(20) == QStringLiteral("just now"));
    CHECK(agoText(150) == QStringLiteral("2 min ago"));
    CHECK(agoText(3 * 3600 + 5) == QStringLiteral("3 h ago"));
}

TEST_CASE("What a lost sensor sent last is not shown as if it came now", "[sensors]")
{
    Sensors sensors;
    sensors.view.openSensor(bar);
    sensors.view.showState(bar, sensor::LinkState::Streaming);
    sensors.view.showHealth(bar, health());
    sensors.view.showState(bar, sensor::LinkState::Lost);
    CHECK(sensors.view.health()->count() == 0);
    CHECK(sensors.view.stateText() == QStringLiteral("Lost, looking for it"));
    CHECK(sensors.view.stateMark() == SensorsViewModel::Bad);
}

TEST_CASE("A trouble says what to do and offers one action", "[sensors]")
{
    Sensors sensors;
    sensors.view.openSensor(bar);
    QSignalSpy tried(&sensors.view, &SensorsViewModel::tryAsked);
    QSignalSpy maps(&sensors.view, &SensorsViewModel::mapChoiceWanted);
    sensors.view.showTrouble(bar, {ble::TroubleKind::Refused, QStringLiteral("It refused.")});
    CHECK(sensors.view.trouble() == QStringLiteral("It refused."));
    CHECK(sensors.view.troubleAction() == QStringLiteral("Try now"));
    sensors.view.mend();
    CHECK(tried.count() == 1);
    sensors.view.showTrouble(bar, {ble::TroubleKind::Unreadable, QStringLiteral("Nothing makes sense.")});
    CHECK(sensors.view.troubleAction() == QStringLiteral("Choose how it is read"));
    sensors.view.mend();
    CHECK(maps.count() == 1);
    sensors.view.endTrouble(bar);
    CHECK(sensors.view.trouble().isEmpty());
    sensors.view.showTrouble({}, {ble::TroubleKind::NotAllowed, QStringLiteral("No leave.")});
    CHECK(sensors.view.radioTrouble() == QStringLiteral("No leave."));
    CHECK(sensors.view.radioAction() == QStringLiteral("Ask again"));
}

TEST_CASE("A name is neither empty nor another sensor's", "[sensors]")
{
    Sensors sensors;
    QSignalSpy renamed(&sensors.view, &SensorsViewModel::renameAsked);
    sensors.view.openSensor(bar);
    CHECK_FALSE(sensors.view.rename(QStringLiteral("  ")).isEmpty());
    CHECK_FALSE(sensors.view.rename(QStringLiteral("Left shoe")).isEmpty());
    CHECK(renamed.count() == 0);
    CHECK(sensors.view.rename(QStringLiteral(" Rack  2 ")).isEmpty());
    REQUIRE(renamed.count() == 1);
    CHECK(renamed.first().at(1).toString() == QStringLiteral("Rack 2"));
}

TEST_CASE("Forgetting a sensor closes its page and tells the program which one", "[sensors]")
{
    Sensors sensors;
    QSignalSpy forgotten(&sensors.view, &SensorsViewModel::forgetAsked);
    sensors.view.openSensor(shoe);
    sensors.view.forget();
    REQUIRE(forgotten.count() == 1);
    CHECK(forgotten.first().first().toString() == shoe);
    CHECK_FALSE(sensors.view.isOpen());
}

TEST_CASE("All that is found is listed, saved and likely ones first, then the strongest", "[sensors]")
{
    FindSensorsViewModel find;
    find.showSaved(two());
    find.setLikelyServices({QStringLiteral("6e400001-b5a3-f393-e0a9-e50e24dcca9e")});
    find.showFound({QStringLiteral("AA:00:00:00:00:01"), QStringLiteral("Watch"), -50, {}});
    find.showFound({QStringLiteral("AA:00:00:00:00:02"), {}, -85, {}});
    find.showFound({QStringLiteral("AA:00:00:00:00:03"), QStringLiteral("Lamp"), -60, {}});
    find.showFound({QStringLiteral("AA:00:00:00:00:04"),
                    QStringLiteral("Motion"),
                    -85,
                    {QStringLiteral("6e400001-b5a3-f393-e0a9-e50e24dcca9e")}});
    find.showFound({bar, QStringLiteral("Motion 2A"), -90, {}});
    const Rows& rows = *find.found();
    REQUIRE(rows.count() == 5);
    CHECK(value(rows, 0, "key") == bar);
    CHECK(value(rows, 0, "detail") == QStringLiteral("Saved · Far away"));
    CHECK(value(rows, 1, "name") == QStringLiteral("Motion"));
    CHECK(value(rows, 1, "detail") == QStringLiteral("Likely a motion sensor · Far away"));
    CHECK(value(rows, 2, "name") == QStringLiteral("Watch"));
    CHECK(value(rows, 3, "name") == QStringLiteral("Lamp"));
    CHECK(value(rows, 4, "name") == QStringLiteral("No name (00:02)"));
}

TEST_CASE("A filter narrows the list and says how many it hides", "[sensors]")
{
    FindSensorsViewModel find;
    find.showFound({QStringLiteral("AA:00:00:00:00:01"), QStringLiteral("Watch"), -50, {}});
    find.showFound({QStringLiteral("AA:00:00:00:00:02"), QStringLiteral("Motion 7"), -70, {}});
    find.setFilter(QStringLiteral("mot"));
    REQUIRE(find.found()->count() == 1);
    CHECK(value(*find.found(), 0, "name") == QStringLiteral("Motion 7"));
    CHECK(find.countText() == QStringLiteral("1 of 2 shown: the others have another name."));
    find.setFilter(QStringLiteral("00:01")); // of the address
    REQUIRE(find.found()->count() == 1);
    CHECK(value(*find.found(), 0, "name") == QStringLiteral("Watch"));
    find.setFilter({});
    CHECK(find.found()->count() == 2);
}

TEST_CASE("A row keeps its place while the signal flickers within a step", "[sensors]")
{
    FindSensorsViewModel find;
    find.showFound({QStringLiteral("AA:00:00:00:00:01"), QStringLiteral("First"), -60, {}});
    find.showFound({QStringLiteral("AA:00:00:00:00:02"), QStringLiteral("Second"), -61, {}});
    for (const int signal : {-58, -66, -57, -66}) {
        find.showFound({QStringLiteral("AA:00:00:00:00:02"), QStringLiteral("Second"), signal, {}});
        CHECK(value(*find.found(), 0, "name") == QStringLiteral("First"));
    }
}

TEST_CASE("A name that comes in some packets only is kept", "[sensors]")
{
    FindSensorsViewModel find;
    find.showFound({QStringLiteral("AA:00:00:00:00:01"), QStringLiteral("Motion"), -60, {}});
    find.showFound({QStringLiteral("AA:00:00:00:00:01"), {}, -60, {}});
    CHECK(value(*find.found(), 0, "name") == QStringLiteral("Motion"));
}

TEST_CASE("The map that makes sense of what a sensor sends is chosen by itself", "[sensors]")
{
    FindSensorsViewModel find;
    QSignalSpy listened(&find, &FindSensorsViewModel::listenAsked);
    QSignalSpy saved(&find, &FindSensorsViewModel::saveAsked);
    find.showFound({QStringLiteral("AA:00:00:00:00:01"), {}, -50, {}});
    find.choose(QStringLiteral("AA:00:00:00:00:01"));
    CHECK(listened.count() == 1);
    CHECK(find.stage() == FindSensorsViewModel::Listening);
    const MapFit lines{.map = {"lines", QStringLiteral("Lines"), false}, .applies = true, .fit = 0.2};
    const MapFit packets{.map = {"packets", QStringLiteral("Packets"), false}, .applies = true, .fit = 0.98};
    find.showFits({lines, packets}, 20, false);
    CHECK(find.stage() == FindSensorsViewModel::Listening); // too early to judge
    find.showFits({lines, packets}, 400, true);
    CHECK(find.stage() == FindSensorsViewModel::Naming);
    CHECK(find.mapText() == QStringLiteral("Read as: Packets"));
    CHECK(find.proposedName() == QStringLiteral("Bar sensor"));
    CHECK(find.save(find.proposedName(), find.proposedPlace()).isEmpty());
    REQUIRE(saved.count() == 1);
    const auto fresh = saved.first().first().value<NewSensor>();
    CHECK(fresh.mapKey == "packets");
    CHECK(fresh.place == SensorPlace::Bar);
}

TEST_CASE("Where no map fits, the maps are listed and teaching is offered", "[sensors]")
{
    FindSensorsViewModel find;
    QSignalSpy taught(&find, &FindSensorsViewModel::teachAsked);
    find.showFound({QStringLiteral("AA:00:00:00:00:01"), QStringLiteral("Motion"), -50, {}});
    find.choose(QStringLiteral("AA:00:00:00:00:01"));
    const MapFit lines{.map = {"lines", QStringLiteral("Lines"), false}, .applies = true, .fit = 0.2};
    const MapFit other{.map = {"other", QStringLiteral("Other"), false}, .applies = false, .fit = 0};
    find.showFits({other, lines}, 400, true);
    CHECK(find.stage() == FindSensorsViewModel::Listening);
    CHECK(find.unreadText().contains(QStringLiteral("Teach it")));
    REQUIRE(find.maps()->count() == 2);
    CHECK(value(*find.maps(), 0, "detail") == QStringLiteral("May fit"));
    find.teach();
    CHECK(taught.count() == 1);
    find.showTaught({"motion", QStringLiteral("Motion"), true});
    CHECK(find.stage() == FindSensorsViewModel::Naming);
    CHECK(find.mapText() == QStringLiteral("Read as: Motion"));
}

TEST_CASE("A sensor that waits for a command is read by the one map that applies", "[sensors]")
{
    FindSensorsViewModel find;
    find.showFound({QStringLiteral("AA:00:00:00:00:01"), QStringLiteral("Motion"), -50, {}});
    find.choose(QStringLiteral("AA:00:00:00:00:01"));
    const MapFit silent{.map = {"started", QStringLiteral("Started"), false}, .applies = true, .fit = 0};
    const MapFit other{.map = {"other", QStringLiteral("Other"), false}, .applies = false, .fit = 0};
    find.showFits({other, silent}, 0, true);
    CHECK(find.stage() == FindSensorsViewModel::Naming);
}

TEST_CASE("A saved sensor that is tapped in the list opens its own page", "[sensors]")
{
    FindSensorsViewModel find;
    find.showSaved(two());
    QSignalSpy opened(&find, &FindSensorsViewModel::savedChosen);
    QSignalSpy listened(&find, &FindSensorsViewModel::listenAsked);
    find.showFound({bar, QStringLiteral("Motion 2A"), -50, {}});
    find.choose(bar);
    CHECK(opened.count() == 1);
    CHECK(listened.count() == 0);
}

TEST_CASE("A second sensor of the same name is proposed with the end of its address", "[sensors]")
{
    FindSensorsViewModel find;
    find.showSaved(two());
    find.showFound({QStringLiteral("AA:00:00:00:12:34"), QStringLiteral("Bar sensor"), -50, {}});
    find.choose(QStringLiteral("AA:00:00:00:12:34"));
    CHECK(find.proposedName() == QStringLiteral("Bar sensor 12:34"));
    CHECK(find.proposedPlace() == static_cast<int>(SensorPlace::Shoe));
    const MapFit packets{.map = {"packets", QStringLiteral("Packets"), false}, .applies = true, .fit = 0.98};
    find.showFits({packets}, 400, true);
    CHECK_FALSE(find.save(QStringLiteral("Bar sensor"), 0).isEmpty());
}
