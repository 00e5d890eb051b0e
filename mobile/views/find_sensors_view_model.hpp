// From box to saved sensor, one thing at a time: search and choose one; listen to it, and find by which map its bytes
// make sense; name it and say where it is worn. The radio and the maps are the program's: this says and hears.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/views/found_list.hpp"
#include "mobile/views/rows.hpp"
#include "mobile/views/sensor_words.hpp"
#include "mobile/views/sensors_view_model.hpp"

namespace fleetrung::views
{

/// How well a map reads what the chosen sensor sends.
struct MapFit {
    MapShown map;
    bool applies = false; ///< the sensor has the map's characteristics
    double fit = 0;       ///< sensor::fitOf
};

/// A sensor as the user wants it saved.
struct NewSensor {
    QString address;
    QString name;
    SensorPlace place = SensorPlace::Bar;
    std::string mapKey;
};

class FindSensorsViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(Stage stage READ stage NOTIFY changed FINAL)
    Q_PROPERTY(bool searching READ searching NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* found READ found CONSTANT FINAL)
    Q_PROPERTY(QString filter READ filter WRITE setFilter NOTIFY changed FINAL)
    Q_PROPERTY(int foundCount READ foundCount NOTIFY changed FINAL)
    Q_PROPERTY(QString countText READ countText NOTIFY changed FINAL)
    Q_PROPERTY(QString chosenName READ chosenName NOTIFY changed FINAL)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed FINAL)
    Q_PROPERTY(QString listeningText READ listeningText NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* maps READ maps CONSTANT FINAL)
    Q_PROPERTY(QString mapText READ mapText NOTIFY changed FINAL) ///< how it is read; empty where nothing fits yet
    Q_PROPERTY(QString unreadText READ unreadText NOTIFY changed FINAL)
    Q_PROPERTY(QString proposedName READ proposedName NOTIFY changed FINAL)
    Q_PROPERTY(int proposedPlace READ proposedPlace NOTIFY changed FINAL)
    Q_PROPERTY(QStringList places READ places CONSTANT FINAL)

public:
    enum Stage { Choosing, Listening, Naming };
    Q_ENUM(Stage)

    explicit FindSensorsViewModel(QObject* parent = nullptr);

    // From the program
    void showSearching(bool searching);
    void showFound(const ble::FoundSensor& sensor);
    void showSaved(const std::vector<SensorShown>& saved);
    void setLikelyServices(const QSet<QString>& services);
    void showTrouble(const QString& text); ///< empty: it is over
    /// What came so far; `settled`: enough to judge by, or waited long enough for it.
    void showFits(std::vector<MapFit> fits, int packets, bool settled);
    /// Taught just now: read by it.
    void showTaught(const MapShown& map);

    [[nodiscard]] QString chosenAddress() const { return chosen_; }

    // From the page
    Q_INVOKABLE void search();
    Q_INVOKABLE void stop();
    Q_INVOKABLE void choose(const QString& address);
    Q_INVOKABLE void tryAgain(); ///< to listen to the chosen one
    Q_INVOKABLE void back();     ///< to the list
    Q_INVOKABLE void leave();
    Q_INVOKABLE void chooseMap(const QString& key);
    Q_INVOKABLE void teach();
    /// A sentence where the name cannot be taken; empty where it was.
    Q_INVOKABLE QString save(const QString& name, int place);

    Stage stage() const { return stage_; }
    bool searching() const { return searching_; }
    Rows* found() { return &foundRows_; }
    QString filter() const { return filter_; }
    void setFilter(const QString& filter);
    int foundCount() const { return list_.count(); }
    QString countText() const;
    QString chosenName() const;
    QString trouble() const { return trouble_; }
    QString listeningText() const;
    Rows* maps() { return &mapRows_; }
    QString mapText() const;
    QString unreadText() const;
    QString proposedName() const;
    int proposedPlace() const;
    QStringList places() const { return placeChoices(); }

signals:
    void changed();
    void searchAsked();
    void stopAsked();
    void listenAsked(const QString& address);
    void listenEnded();
    void teachAsked(const QString& address, const QString& name);
    void savedChosen(const QString& address); ///< it is saved already: its own page is wanted
    void saveAsked(const fleetrung::views::NewSensor& sensor);

private:
    void showRows();
    void showMapRows();
    void forgetChosen();
    [[nodiscard]] bool nameTaken(const QString& name) const;

    FoundList list_;
    std::vector<SensorShown> saved_;
    Stage stage_ = Choosing;
    bool searching_ = false;
    QString filter_;
    QString trouble_;
    QString chosen_;
    std::vector<MapFit> fits_;
    int packets_ = 0;
    bool settled_ = false;
    std::string mapKey_;
    QString mapName_;
    Rows foundRows_;
    Rows mapRows_;
};

} // namespace fleetrung::views
