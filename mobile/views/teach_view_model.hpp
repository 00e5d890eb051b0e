// Teaching a sensor that nobody described: eleven short steps, one a screen, then the map that the engine learns from
// what came (engine/sensor/teach.hpp). The learning runs on a thread of its own and can be stopped.
#pragma once

#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include <QObject>
#include <QThread>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "engine/sensor/teach.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

class TeachViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(Stage stage READ stage NOTIFY changed FINAL)
    Q_PROPERTY(QString sensorName READ sensorName NOTIFY changed FINAL)
    Q_PROPERTY(int step READ step NOTIFY changed FINAL) ///< TeachStep: also which pose is drawn
    Q_PROPERTY(int stepNumber READ stepNumber NOTIFY changed FINAL)
    Q_PROPERTY(int stepCount READ stepCount CONSTANT FINAL)
    Q_PROPERTY(QString stepText READ stepText NOTIFY changed FINAL)
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed FINAL)
    Q_PROPERTY(QString hint READ hint NOTIFY changed FINAL)
    Q_PROPERTY(QString why READ why NOTIFY changed FINAL) ///< what went wrong with this step
    Q_PROPERTY(bool canRepeat READ canRepeat NOTIFY changed FINAL)
    Q_PROPERTY(bool asksHeight READ asksHeight NOTIFY changed FINAL)
    Q_PROPERTY(QString height READ height NOTIFY changed FINAL)
    Q_PROPERTY(QString heightLabel READ heightLabel NOTIFY changed FINAL)
    Q_PROPERTY(double share READ share NOTIFY ticked FINAL) ///< of the step or of the learning, 0 to 1
    Q_PROPERTY(QString countdown READ countdown NOTIFY ticked FINAL)
    Q_PROPERTY(QString nowText READ nowText NOTIFY ticked FINAL)
    Q_PROPERTY(fleetrung::views::Rows* sureness READ sureness CONSTANT FINAL)
    Q_PROPERTY(QString resultTitle READ resultTitle NOTIFY changed FINAL)
    Q_PROPERTY(QString resultText READ resultText NOTIFY changed FINAL)
    Q_PROPERTY(QString proposedName READ proposedName NOTIFY changed FINAL)

public:
    /// Waiting for the link; a step to be begun; it runs; learning; learned; cannot be learned.
    enum Stage { Connecting, Ready, Running, Learning, Learned, Failed };
    Q_ENUM(Stage)
    using Learn = std::function<sensor::Taught(const sensor::TeachRecording&, const std::function<bool(double)>&)>;
    using Clock = std::function<std::int64_t()>;

    /// `now`: ns of the clock that arrivals are on.
    TeachViewModel(const Preferences* preferences, Learn learn, Clock now, QObject* parent = nullptr);
    ~TeachViewModel() override;

    // From the program
    void begin(const QString& address, const QString& name);
    void showNotifiers(const QString& address, const std::vector<sensor::Notifier>& notifiers);
    void addPackets(const QString& address, const std::vector<sensor::RawPacket>& packets);
    /// The link was lost, or could not be made.
    void showTrouble(const QString& text);

    [[nodiscard]] QString address() const { return address_; }

    // From the page
    Q_INVOKABLE void start();
    Q_INVOKABLE void stopStep();
    /// The step before this one once more.
    Q_INVOKABLE void repeatLast();
    /// A sentence where it is no height; empty where it was taken.
    Q_INVOKABLE QString setHeight(const QString& text);
    /// All from the beginning.
    Q_INVOKABLE void startOver();
    Q_INVOKABLE void cancel();
    /// A sentence where the name cannot be taken; empty where it was.
    Q_INVOKABLE QString save(const QString& name);

    Stage stage() const { return stage_; }
    QString sensorName() const { return sensorName_; }
    int step() const { return static_cast<int>(step_); }
    int stepNumber() const { return step() + 1; }
    int stepCount() const { return static_cast<int>(sensor::teachSteps); }
    QString stepText() const;
    QString sentence() const;
    QString hint() const;
    QString why() const { return why_; }
    bool canRepeat() const;
    bool asksHeight() const;
    QString height() const;
    QString heightLabel() const;
    double share() const;
    QString countdown() const;
    QString nowText() const;
    Rows* sureness() { return &surenessRows_; }
    QString resultTitle() const;
    QString resultText() const;
    QString proposedName() const { return sensorName_; }

    /// Looks at the clock: called ten times a second while something runs.
    void tick();

signals:
    void changed();
    void ticked();
    void listenAsked(const QString& address);
    void listenEnded();
    void taught(const QString& address, const fleetrung::sensor::SensorMap& map);

private:
    [[nodiscard]] bool isFace() const;
    [[nodiscard]] bool isRaise() const;
    void clear();
    void goTo(Stage stage);
    void endStep();
    void learn();
    void stopLearning();
    void showTaught(const sensor::Taught& taught);

    const Preferences* preferences_;
    Learn learn_;
    Clock now_;
    QTimer timer_;
    QString address_;
    QString sensorName_;
    Stage stage_ = Connecting;
    sensor::TeachStep step_ = sensor::TeachStep::FaceOne;
    std::optional<sensor::TeachStep> onlyThis_; ///< asked for again after the learning
    QString why_;
    sensor::TeachRecording recording_;
    std::int64_t begun_ = 0;
    std::size_t packetsBefore_ = 0;
    bool heightSaid_ = false;
    std::optional<sensor::Taught> taught_;
    Rows surenessRows_;

    std::unique_ptr<QThread> learner_;
    std::shared_ptr<std::atomic<bool>> stop_;
    double learned_ = 0; ///< share
};

} // namespace fleetrung::views
