#include "mobile/app/options.hpp"

#include <cstdio>
#include <cstdlib>

#include <QCommandLineParser>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace fleetrung::app
{
namespace
{

[[noreturn]] void refuse(const QString& message)
{
    std::fprintf(stderr, "fleetrung: %s\n", qPrintable(message));
    std::exit(2);
}

std::optional<QSize> sizeOf(const QString& text)
{
    const auto parts = text.split(QLatin1Char('x'));
    if (parts.size() != 2)
        return std::nullopt;
    const auto sound = [](int pixels) { return pixels >= 240 && pixels <= 4000; };
    const QSize size(parts[0].toInt(), parts[1].toInt());
    return sound(size.width()) && sound(size.height()) ? std::optional(size) : std::nullopt;
}

QString defaultStore()
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QDir().mkpath(folder);
    return folder + QStringLiteral("/athletes.fleetrung");
}

} // namespace

Options readOptions(const QStringList& arguments)
{
    QCommandLineParser parser;
    parser.setApplicationDescription(QStringLiteral("Fleetrung, the phone interface."));
    parser.addHelpOption();
    parser.addVersionOption();
    const QCommandLineOption store(QStringLiteral("store"), QStringLiteral("The logbook to open."),
                                   QStringLiteral("file"));
    const QCommandLineOption screenshots(QStringLiteral("screenshots"),
                                         QStringLiteral("Save pictures of all pages and states, and end."),
                                         QStringLiteral("folder"));
    const QCommandLineOption size(QStringLiteral("picture-size"), QStringLiteral("Of those pictures, in pixels."),
                                  QStringLiteral("width x height"), QStringLiteral("390x844"));
    const QCommandLineOption language(QStringLiteral("language"),
                                      QStringLiteral("en, de, es, fr or ja, whatever was chosen on the device."),
                                      QStringLiteral("code"));
    const QCommandLineOption replay(QStringLiteral("replay"), QStringLiteral("Play a recording CSV as the bar sensor."),
                                    QStringLiteral("file"));
    const QCommandLineOption speed(QStringLiteral("replay-speed"), QStringLiteral("1 = real time, 0 = at once."),
                                   QStringLiteral("factor"), QStringLiteral("1"));
    const QCommandLineOption today(QStringLiteral("today"), QStringLiteral("The training day to show."),
                                   QStringLiteral("year-month-day"));
    const QCommandLineOption selfTest(QStringLiteral("self-test"),
                                      QStringLiteral("Load all pages; any warning ends with 1."));
    const QCommandLineOption noRadio(QStringLiteral("no-radio"),
                                     QStringLiteral("Leave Bluetooth alone: no sensor is looked for."));
    parser.addOptions({store, screenshots, size, language, replay, speed, today, selfTest, noRadio});
    parser.process(arguments);

    Options options;
    options.store = parser.value(store);
    options.screenshots = parser.value(screenshots);
    options.language = parser.value(language);
    options.replay = parser.value(replay);
    options.selfTest = parser.isSet(selfTest);
    options.noRadio = parser.isSet(noRadio);
    bool sound = false;
    options.replaySpeed = parser.value(speed).toDouble(&sound);
    if (!sound || options.replaySpeed < 0)
        refuse(QStringLiteral("--replay-speed: a number from 0 on, not \"%1\".").arg(parser.value(speed)));
    const auto wanted = sizeOf(parser.value(size));
    if (!wanted)
        refuse(
            QStringLiteral("--picture-size: like 390x844, from 240 to 4000 each, not \"%1\".").arg(parser.value(size)));
    options.pictureSize = *wanted;
    if (parser.isSet(today)) {
        options.today = parseDate(parser.value(today).toStdString());
        if (!options.today)
            refuse(QStringLiteral("--today: year-month-day, not \"%1\".").arg(parser.value(today)));
    }
    if (!parser.positionalArguments().isEmpty())
        refuse(QStringLiteral("what is \"%1\"? See --help.").arg(parser.positionalArguments().constFirst()));
    if (options.store.isEmpty() && !options.selfTest)
        options.store = defaultStore();
    return options;
}

} // namespace fleetrung::app
