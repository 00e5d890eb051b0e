// Between the radio and the pages of sensors: what the radio tells goes to the view models, what a page asks goes to
// the radio. Keeps no row: what is to be saved or forgotten is asked of the program, which shows the saved ones anew.
#pragma once

#include <optional>
#include <vector>

#include <QElapsedTimer>
#include <QObject>
#include <QPointer>
#include <QTimer>

#include "engine/base/identifier.hpp"
#include "engine/sensor/sensor_map.hpp"
#include "mobile/ble/radio.hpp"
#include "mobile/views/calibration_view_model.hpp"
#include "mobile/views/find_sensors_view_model.hpp"
#include "mobile/views/live_session.hpp"
#include "mobile/views/sensors_view_model.hpp"
#include "mobile/views/teach_view_model.hpp"

namespace fleetrung::views
{

struct SavedSensor {
    Identifier id;
    QString address;
    QString name;
    SensorPlace place = SensorPlace::Bar;
    sensor::SensorMap map;
    motion::Calibration calibration;
};

/// A sensor that streams: the source of a set.
struct StreamingSensor {
    QString address;
    QString name;
    SensorPlace place = SensorPlace::Bar;
    LiveSession::MakeSource make;
};

class SensorDesk : public QObject
{
    Q_OBJECT

public:
    explicit SensorDesk(Preferences* preferences, QObject* parent = nullptr);
    ~SensorDesk() override;

    SensorsViewModel& sensors() { return sensors_; }
    FindSensorsViewModel& find() { return find_; }
    TeachViewModel& teach() { return teach_; }
    CalibrationViewModel& calibration() { return calibration_; }

    /// The radio outlives the desk. All saved sensors are kept connected from here on.
    void setRadio(ble::Radio* radio);
    void showSaved(std::vector<SavedSensor> saved);
    /// Maps of the user's own, taught or taken in; those that come with the program are known.
    void showOwnMaps(std::vector<sensor::SensorMap> maps);
    [[nodiscard]] const sensor::SensorMap* findMap(const std::string& key) const;

    /// Those that stream now; the bar's first.
    [[nodiscard]] std::vector<StreamingSensor> streaming() const;
    [[nodiscard]] const SavedSensor* at(SensorPlace place) const; ///< the first saved one worn there
    [[nodiscard]] const SavedSensor* saved(const QString& address) const;

signals:
    void keepAsked(const fleetrung::views::SavedSensor& sensor, const QString& said);
    void forgetAsked(const fleetrung::views::SavedSensor& sensor);
    void keepMapAsked(const fleetrung::sensor::SensorMap& map, const QString& said);
    /// A state, a health or a battery changed: what is said of the sensors elsewhere may be another.
    void changed();

private:
    void connectPages();
    void connectRadio();
    void keep(const SavedSensor& sensor);
    void change(const QString& address, const QString& said, const std::function<void(SavedSensor&)>& how);
    void showMaps();
    void listen(const QString& address);
    void endListening();
    void lookAtPackets(); ///< by which map do they make sense?
    void addNew(const NewSensor& sensor);
    void learned(const QString& address, const sensor::SensorMap& map);
    void showTrouble(const QString& address, const ble::Trouble& trouble);
    [[nodiscard]] std::vector<const sensor::SensorMap*> maps() const;

    SensorsViewModel sensors_;
    FindSensorsViewModel find_;
    TeachViewModel teach_;
    CalibrationViewModel calibration_;
    QPointer<ble::Radio> radio_;
    std::vector<SavedSensor> saved_;
    std::vector<sensor::SensorMap> own_;
    QString listening_; ///< address; empty: to none
    std::vector<sensor::Notifier> notifiers_;
    std::vector<sensor::RawPacket> packets_;
    QElapsedTimer sinceNotifiers_;
    QTimer look_;
};

} // namespace fleetrung::views
