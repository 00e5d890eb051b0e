// The phone program: puts store, view models and pages together. The only place that sees all of them.
#include <cstdio>
#include <memory>

#include <QDir>
#include <QFile>
#include <QFont>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTimer>

#include "engine/motion/recording_csv.hpp"
#include "mobile/app/demo_squad.hpp"
#include "mobile/app/options.hpp"
#include "mobile/app/screenshots.hpp"
#include "mobile/ble/radio.hpp"
#include "mobile/feedback/share_sheet.hpp"
#include "mobile/fonts/fonts.hpp"
#include "mobile/views/app_view_model.hpp"
#include "mobile/views/bench_feedback.hpp"
#include "mobile/views/new_identifier.hpp"
#include "mobile/views/replay_source.hpp"
#include "mobile/views/translations.hpp"

namespace fleetrung::app
{
namespace
{

/// This device in every row it writes; made at the first start.
Identifier deviceOf(const QString& settingsFile)
{
    QSettings settings(settingsFile, QSettings::IniFormat);
    const auto known = parseIdentifier(settings.value(QStringLiteral("device")).toString().toStdString());
    const Identifier device = known ? *known : views::newIdentifier();
    settings.setValue(QStringLiteral("device"), QString::fromStdString(identifierText(device)));
    return device;
}

Expected<views::SensorOffer> replayOf(const QString& path, double speed)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return fail(Code::NotFound, path.toStdString(), "cannot be read: " + file.errorString().toStdString());
    const QByteArray bytes = file.readAll();
    const auto imported = motion::importRecording({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    if (!imported)
        return tl::unexpected(imported.error());
    const QString name = QGuiApplication::translate("Sensor", "Bar sensor");
    return views::SensorOffer{name, [recording = imported->recording, name = name.toStdString(), speed] {
                                  return std::make_unique<views::ReplaySource>(recording, name, speed);
                              }};
}

/// Pictures and the self-test work on a copy: what is the user's stays as it is.
QString copyOf(const QString& store, const QDir& folder)
{
    const QFileInfo file(store);
    for (const QString& name : {file.fileName(), QStringLiteral("captures.fleetrung")})
        for (const QString& end : {QString(), QStringLiteral("-wal")})
            QFile::copy(file.dir().filePath(name + end), folder.filePath(name + end));
    return folder.filePath(file.fileName());
}

int run(QGuiApplication& application)
{
    const Options options = readOptions(application.arguments());
    QTemporaryDir scratch; // where nothing of the user's is to be touched
    const bool forShow = options.selfTest || !options.screenshots.isEmpty();
    QString store = options.store.isEmpty() ? scratch.filePath(QStringLiteral("athletes.fleetrung")) : options.store;
    if (forShow && !options.store.isEmpty())
        store = copyOf(options.store, QDir(scratch.path()));
    const QString settingsFile =
        forShow ? scratch.filePath(QStringLiteral("settings.ini")) : store + QStringLiteral(".settings");

    views::Preferences preferences(forShow ? QString() : settingsFile);
    if (forShow) {
        preferences.setAppearance(views::Preferences::Dark);
        preferences.setCautionsRead(true);
    }
    if (!options.language.isEmpty())
        preferences.speak(options.language);
    views::Translations translations(&preferences);
    const QFileInfo file(store);
    const store::StorePaths paths{.rows = store.toStdString(),
                                  .captures = file.dir().filePath(QStringLiteral("captures.fleetrung")).toStdString()};
    views::LogThread log(paths, deviceOf(settingsFile));
    views::DayClock clock(options.today);
    if (forShow && !options.today) {
        log.run(
            &application, [](logbook::Logbook& logbook) { return rehearseDay(logbook); },
            [&clock](const Expected<std::optional<CivilDate>>& day) {
                if (day && *day)
                    clock.fix(**day);
            });
        log.settle();
    }

    std::unique_ptr<ble::Radio> radio; // outlives what uses it
    if (!forShow && !options.noRadio)
        radio = std::make_unique<ble::Radio>(ble::devicePermission());
    views::AppViewModel app(&preferences, &log, clock);
    if (radio)
        app.setRadio(radio.get());
    else if (options.noRadio)
        app.sensors()->showNoRadio(
            QGuiApplication::translate("Sensor", "Started with --no-radio: no sensor is looked for."));
    auto files = views::folderHand(forShow ? scratch.filePath(QStringLiteral("documents"))
                                           : QDir(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
                                                 .filePath(QStringLiteral("Fleetrung")));
    if (!forShow)
        files.offer = feedback::shareSheet();
    app.handFilesTo(std::move(files));
    app.offerDemo(demoSquad(file.dir().filePath(QStringLiteral("demo-squad"))), paths);
    if (!options.replay.isEmpty()) {
        auto offer = replayOf(options.replay, options.replaySpeed);
        if (!offer) {
            std::fprintf(stderr, "fleetrung: %s\n", describe(offer.error()).c_str());
            return 2;
        }
        app.offerSensor(std::move(*offer));
    }

    std::unique_ptr<views::BenchFeedback> heard;
    if (!forShow)
        heard = std::make_unique<views::BenchFeedback>(app.bench(), &preferences, feedback::deviceSpeaker(),
                                                       feedback::deviceBody());

    QQmlApplicationEngine engine;
    translations.speakThrough(&engine);
    int warnings = 0;
    QObject::connect(&engine, &QQmlEngine::warnings, &application,
                     [&warnings](const QList<QQmlError>& list) { warnings += static_cast<int>(list.size()); });
    engine.addImportPath(QStringLiteral("qrc:/qt/qml")); // no default path before Qt 6.5
    engine.setInitialProperties({{QStringLiteral("app"), QVariant::fromValue(&app)}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Fleetrung/Main.qml")));
    auto* window =
        engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    if (!window)
        return 1;
    app.refresh();
    if (!forShow)
        return application.exec();

    log.settle();
    if (!options.screenshots.isEmpty()) {
        const int saved = saveScreenshots(*window, app, log, options.screenshots, options.pictureSize);
        std::printf("%d pictures in %s\n", saved, qPrintable(options.screenshots));
        return saved > 0 && warnings == 0 ? 0 : 1;
    }
    for (int place = 0; place < 5; ++place) {
        window->setProperty("place", place);
        window->grabWindow();
    }
    std::printf("self-test: %d warnings\n", warnings);
    return warnings == 0 ? 0 : 1;
}

} // namespace
} // namespace fleetrung::app

int main(int argc, char* argv[])
{
    QGuiApplication application(argc, argv);
    fleetrung::fonts::bring();
    QGuiApplication::setFont(QFont(QStringLiteral("Inter"))); // also of the pictures
    QGuiApplication::setApplicationName(QStringLiteral("Fleetrung"));
    QGuiApplication::setApplicationVersion(QStringLiteral(FLEETRUNG_VERSION));
    return fleetrung::app::run(application);
}
