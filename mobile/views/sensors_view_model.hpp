// The sensors of this device: which are saved, how each one's link and stream stand, and the one that is opened. Holds
// no radio: the program says what happened, and hears what the page asks.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QElapsedTimer>
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/ble/radio.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"
#include "mobile/views/sensor_words.hpp"

namespace fleetrung::views
{

/// A saved sensor.
struct SensorShown {
    QString address;
    QString name;
    SensorPlace place = SensorPlace::Bar;
    std::string mapKey;
    QString mapName;
    bool hasGyroscope = true;
    bool sixFaces = false; ///< its six sides were measured
};

/// A way to read a sensor's bytes that the user may choose.
struct MapShown {
    std::string key;
    QString name;
    bool own = false; ///< taught or taken in from a file, not one that comes with the program
};

class SensorsViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(fleetrung::views::Rows* sensors READ sensors CONSTANT FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)           ///< all of them in a line
    Q_PROPERTY(QString radioTrouble READ radioTrouble NOTIFY changed FINAL) ///< nothing works until it is mended
    Q_PROPERTY(QString radioAction READ radioAction NOTIFY changed FINAL)
    Q_PROPERTY(bool canSearch READ canSearch NOTIFY changed FINAL)
    Q_PROPERTY(QStringList places READ places CONSTANT FINAL)

    Q_PROPERTY(bool open READ isOpen NOTIFY openedChanged FINAL)
    Q_PROPERTY(QString name READ name NOTIFY openedChanged FINAL)
    Q_PROPERTY(int place READ place NOTIFY openedChanged FINAL)
    Q_PROPERTY(QString stateText READ stateText NOTIFY openedChanged FINAL)
    Q_PROPERTY(QString stateDetail READ stateDetail NOTIFY openedChanged FINAL)
    Q_PROPERTY(Mark stateMark READ stateMark NOTIFY openedChanged FINAL)
    Q_PROPERTY(bool streaming READ streaming NOTIFY openedChanged FINAL)
    Q_PROPERTY(QString trouble READ trouble NOTIFY openedChanged FINAL)
    Q_PROPERTY(QString troubleAction READ troubleAction NOTIFY openedChanged FINAL)
    Q_PROPERTY(fleetrung::views::Rows* health READ health CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* about READ about CONSTANT FINAL)
    Q_PROPERTY(QString mapName READ mapName NOTIFY openedChanged FINAL)
    Q_PROPERTY(QString sidesText READ sidesText NOTIFY openedChanged FINAL)
    Q_PROPERTY(fleetrung::views::Rows* maps READ maps CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* mapFiles READ mapFiles CONSTANT FINAL)
    Q_PROPERTY(QString mapFolder READ mapFolder NOTIFY mapFilesChanged FINAL)

public:
    /// Streaming; on its way; needs the user.
    enum Mark { Good, Waiting, Bad };
    Q_ENUM(Mark)

    explicit SensorsViewModel(const Preferences* preferences, QObject* parent = nullptr);

    // From the program
    void showSensors(std::vector<SensorShown> sensors);
    void showMaps(std::vector<MapShown> maps);
    void showMapFiles(const QStringList& names, const QString& folder);
    void showState(const QString& address, sensor::LinkState state);
    void showHealth(const QString& address, const sensor::Health& health);
    void showInfo(const QString& address, const ble::SensorInfo& info);
    void showTrouble(const QString& address, const ble::Trouble& trouble); ///< address empty: of the radio
    void endTrouble(const QString& address);
    void showZeroed(const QString& address);
    /// This run of the program has no radio: why.
    void showNoRadio(const QString& why);

    [[nodiscard]] const std::vector<SensorShown>& all() const { return saved_; }
    [[nodiscard]] const SensorShown* find(const QString& address) const;
    [[nodiscard]] sensor::LinkState stateOf(const QString& address) const;
    [[nodiscard]] SensorFacts factsOf(const QString& address) const;
    [[nodiscard]] QString openAddress() const { return openAddress_; }

    // From the page
    Q_INVOKABLE void openSensor(const QString& address);
    Q_INVOKABLE void closeSensor();
    /// A sentence where the name cannot be taken; empty where it was.
    Q_INVOKABLE QString rename(const QString& name);
    Q_INVOKABLE void setPlace(int place);
    Q_INVOKABLE void chooseMap(const QString& key);
    Q_INVOKABLE void tryNow();
    Q_INVOKABLE void forget();
    /// What the trouble of the opened sensor, or of the radio, asks for.
    Q_INVOKABLE void mend();
    Q_INVOKABLE void mendRadio();
    Q_INVOKABLE void calibrate();
    Q_INVOKABLE void teach();
    Q_INVOKABLE void exportMap();
    Q_INVOKABLE void lookForMapFiles();
    Q_INVOKABLE void importMap(const QString& fileName);

    Rows* sensors() { return &sensorRows_; }
    QString summary() const;
    QString radioTrouble() const;
    QString radioAction() const;
    bool canSearch() const { return noRadio_.isEmpty(); }
    QStringList places() const { return placeChoices(); }
    bool isOpen() const { return opened() != nullptr; }
    QString name() const { return opened() ? opened()->name : QString(); }
    int place() const { return opened() ? static_cast<int>(opened()->place) : 0; }
    QString stateText() const { return linkText(stateOf(openAddress_)); }
    QString stateDetail() const;
    Mark stateMark() const { return markOf(openAddress_); }
    bool streaming() const { return stateOf(openAddress_) == sensor::LinkState::Streaming; }
    QString trouble() const;
    QString troubleAction() const;
    Rows* health() { return &healthRows_; }
    Rows* about() { return &aboutRows_; }
    QString mapName() const { return opened() ? opened()->mapName : QString(); }
    QString sidesText() const;
    Rows* maps() { return &mapRows_; }
    Rows* mapFiles() { return &fileRows_; }
    QString mapFolder() const { return mapFolder_; }

signals:
    void changed();
    void openedChanged();
    void mapFilesChanged();

    void renameAsked(const QString& address, const QString& name);
    void placeAsked(const QString& address, const QString& place);
    void mapAsked(const QString& address, const QString& key);
    void tryAsked(const QString& address);
    void forgetAsked(const QString& address);
    void searchAsked(); ///< once more, after a trouble of the radio
    void mapChoiceWanted();
    void calibrateAsked(const QString& address, const QString& name);
    void teachAsked(const QString& address, const QString& name);
    void exportAsked(const QString& mapKey);
    void mapFilesAsked();
    void importAsked(const QString& fileName);

private:
    /// What is known of a link beside the saved row.
    struct Link {
        sensor::LinkState state = sensor::LinkState::Idle;
        std::optional<sensor::Health> health;
        std::optional<ble::SensorInfo> info;
        std::optional<ble::Trouble> trouble;
        QElapsedTimer zeroed;
    };

    [[nodiscard]] const SensorShown* opened() const { return find(openAddress_); }
    [[nodiscard]] const Link* linkOf(const QString& address) const;
    [[nodiscard]] Mark markOf(const QString& address) const;
    [[nodiscard]] QString lineOf(const SensorShown& sensor) const;
    void showRows();
    void showOpened();
    void showMapRows();
    void told(const QString& address);

    const Preferences* preferences_;
    std::vector<SensorShown> saved_;
    std::vector<MapShown> known_;
    QHash<QString, Link> links_;
    std::optional<ble::Trouble> radioTrouble_;
    QString noRadio_;
    QString openAddress_;
    QString mapFolder_;
    Rows sensorRows_;
    Rows healthRows_;
    Rows aboutRows_;
    Rows mapRows_;
    Rows fileRows_;
};

} // namespace fleetrung::views
