// What Bench shows: today's lifts, and the live set of the one that is open. Holds no session logic: the plan, the
// repetitions and the set stop come from the engine; here they become words in the user's units.
#pragma once

#include <optional>
#include <vector>

#include <QElapsedTimer>
#include <QObject>
#include <QStringList>
#include <QTimer>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "engine/base/identifier.hpp"
#include "engine/reps/repetition.hpp"
#include "engine/season/warm_up_check.hpp"
#include "engine/store/records.hpp"
#include "mobile/plot/plot_value.hpp"
#include "mobile/views/plate_entry.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

/// The day's own adjustment of a lift, and what the athlete did with it.
struct WarmUpCheckShown {
    season::DayAdjustment adjustment;
    std::optional<bool> accepted;
    std::string why; ///< of a "no"
};

/// One of those who share the sensor.
struct Sharer {
    std::string key;
    std::string name;
};

/// One lift of the day as the plan wants it, and how far it has come.
struct BenchLift {
    season::PlannedLift plan;
    std::string name;   ///< "Half squat"
    std::string ladder; ///< "Squat"
    int rungNumber = 0; ///< 1 = longest range
    int rungCount = 0;
    int setsDone = 0; ///< work sets
    bool probeDone = false;
    std::optional<double> maximumKg; ///< 1RM on this rung as last told by the bar or by a typed set
    bool oneSided = false;
    std::optional<Identifier> replay;         ///< the latest recorded set of this rung: it can be watched again
    std::optional<WarmUpCheckShown> check;    ///< once two warm-up loads were lifted with full intent
    int maintenanceDone = 0;                  ///< sets
    std::optional<season::EnteredLength> box; ///< the plan's box as it was entered
    std::string maintenanceName;              ///< of the longer rung
    std::string maintenanceLift;              ///< its lift key
};

/// A lift of the day that stands on no ladder: logged and counted as load.
struct OtherLift {
    season::SecondaryLift plan;
    int setsDone = 0;
    std::optional<double> lastLoadKg;
};

struct BenchDay {
    std::optional<CivilDate> day; ///< none: no season, no athlete
    std::string athlete;
    QString phase;
    QString week;
    std::vector<std::string> notes; ///< why something rests, what comes first
    bool sprintsForbidden = false;
    std::vector<std::string> cautions;       ///< texts, of the day's decisions
    std::optional<store::Wellness> wellness; ///< what the athlete said of today
    QString emptyTitle;                      ///< said where there are no lifts
    QString emptyText;
    QString emptyAction; ///< where that can be changed
    bool emptyLeadsToSquad = false;
    std::vector<BenchLift> lifts;
    std::vector<OtherLift> others;
};

/// A set that is over.
struct SetDone {
    int repetitions = 0;
    std::optional<double> timeToPeak;   ///< s, mean
    std::optional<double> meanVelocity; ///< m/s, mean
    double loadKg = 0;
};

/// What a form of a set without a sensor held.
struct TypedSet {
    store::SetKind kind = store::SetKind::Work;
    double loadKg = 0;
    int repetitions = 0;
    std::optional<double> meanVelocity; ///< m/s
    std::optional<double> timeToPeak;   ///< s
    std::optional<double> effort;       ///< 1..10
};

class BenchViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(QString sessionTitle READ sessionTitle NOTIFY sessionChanged FINAL)
    Q_PROPERTY(QString weekText READ weekText NOTIFY sessionChanged FINAL)
    Q_PROPERTY(QString phaseText READ phaseText NOTIFY sessionChanged FINAL)
    Q_PROPERTY(QString dayText READ dayText NOTIFY sessionChanged FINAL)
    Q_PROPERTY(fleetrung::views::Rows* notes READ notes CONSTANT FINAL)
    Q_PROPERTY(bool hasAthlete READ hasAthlete NOTIFY sessionChanged FINAL)
    Q_PROPERTY(QString athleteName READ athleteName NOTIFY sessionChanged FINAL)
    Q_PROPERTY(QString wellnessText READ wellnessText NOTIFY sessionChanged FINAL)
    Q_PROPERTY(QStringList regions READ regions CONSTANT FINAL) ///< where it may hurt
    Q_PROPERTY(fleetrung::views::Rows* sharers READ sharers CONSTANT FINAL)
    Q_PROPERTY(QString emptyAction READ emptyAction NOTIFY sessionChanged FINAL)
    Q_PROPERTY(bool emptyLeadsToSquad READ emptyLeadsToSquad NOTIFY sessionChanged FINAL)
    Q_PROPERTY(QString emptyTitle READ emptyTitle NOTIFY sessionChanged FINAL)
    Q_PROPERTY(QString emptyText READ emptyText NOTIFY sessionChanged FINAL)
    Q_PROPERTY(fleetrung::views::Rows* lifts READ lifts CONSTANT FINAL)

    Q_PROPERTY(fleetrung::views::Rows* others READ others CONSTANT FINAL) ///< lifts outside the ladders
    Q_PROPERTY(bool liftOpen READ liftOpen NOTIFY setChanged FINAL)
    Q_PROPERTY(QString openKey READ openKey NOTIFY setChanged FINAL) ///< ladder of the open lift
    Q_PROPERTY(QString liftName READ liftName NOTIFY setChanged FINAL)
    Q_PROPERTY(QString setText READ setText NOTIFY setChanged FINAL)
    Q_PROPERTY(QString loadText READ loadText NOTIFY setChanged FINAL)
    Q_PROPERTY(QString planText READ planText NOTIFY setChanged FINAL)
    Q_PROPERTY(QString plannedLoad READ plannedLoad NOTIFY setChanged FINAL)
    Q_PROPERTY(QString load READ load WRITE setLoad NOTIFY setChanged FINAL) ///< as typed; stored with the set
    Q_PROPERTY(bool asksLoad READ asksLoad NOTIFY setChanged FINAL)
    Q_PROPERTY(QString platesText READ platesText NOTIFY setChanged FINAL) ///< plates a side for the load
    Q_PROPERTY(QString leftText READ leftText NOTIFY setChanged FINAL)     ///< repetitions left by the loss, a guess
    Q_PROPERTY(QString knownMaximum READ knownMaximum NOTIFY setChanged FINAL)
    Q_PROPERTY(fleetrung::views::PlateEntry* plates READ plates CONSTANT FINAL)
    Q_PROPERTY(QString loadLabel READ loadLabel NOTIFY setChanged FINAL)
    Q_PROPERTY(QString plannedRepetitions READ plannedRepetitions NOTIFY setChanged FINAL)
    Q_PROPERTY(QString massUnit READ massUnit NOTIFY setChanged FINAL)

    Q_PROPERTY(QString whyTitle READ whyTitle NOTIFY whyChanged FINAL)
    Q_PROPERTY(fleetrung::views::Rows* why READ why CONSTANT FINAL)

    Q_PROPERTY(CheckState checkState READ checkState NOTIFY setChanged FINAL)
    Q_PROPERTY(QString checkTitle READ checkTitle NOTIFY setChanged FINAL)
    Q_PROPERTY(QString checkText READ checkText NOTIFY setChanged FINAL)
    Q_PROPERTY(fleetrung::views::Rows* checkEvidence READ checkEvidence CONSTANT FINAL)

    Q_PROPERTY(bool hasMaintenance READ hasMaintenance NOTIFY setChanged FINAL)
    Q_PROPERTY(bool canSwitch READ canSwitch NOTIFY setChanged FINAL)
    Q_PROPERTY(QStringList planLines READ planLines NOTIFY setChanged FINAL)
    Q_PROPERTY(QString caution READ caution NOTIFY setChanged FINAL)
    Q_PROPERTY(Kind kind READ kind WRITE setKind NOTIFY setChanged FINAL)
    Q_PROPERTY(bool oneSided READ oneSided NOTIFY setChanged FINAL)
    Q_PROPERTY(bool rightSide READ rightSide WRITE setRightSide NOTIFY setChanged FINAL)

    Q_PROPERTY(Sensor sensor READ sensor NOTIFY setChanged FINAL)
    Q_PROPERTY(QString sensorText READ sensorText NOTIFY setChanged FINAL)
    Q_PROPERTY(QString sensorDetail READ sensorDetail NOTIFY setChanged FINAL)
    Q_PROPERTY(bool running READ running NOTIFY setChanged FINAL)
    Q_PROPERTY(bool canBegin READ canBegin NOTIFY setChanged FINAL)
    Q_PROPERTY(QString beginText READ beginText NOTIFY setChanged FINAL)
    Q_PROPERTY(QString waitingTitle READ waitingTitle NOTIFY setChanged FINAL)
    Q_PROPERTY(QString waitingText READ waitingText NOTIFY setChanged FINAL)

    Q_PROPERTY(int repetitionCount READ repetitionCount NOTIFY setChanged FINAL)
    Q_PROPERTY(QString number READ number NOTIFY setChanged FINAL)
    Q_PROPERTY(QString numberUnit READ numberUnit NOTIFY setChanged FINAL)
    /// What stands large, kept for each ladder: the time by which the rung is judged, or the velocity.
    Q_PROPERTY(QStringList largeChoices READ largeChoices NOTIFY setChanged FINAL)
    Q_PROPERTY(bool velocityIsLarge READ velocityIsLarge WRITE setVelocityIsLarge NOTIFY setChanged FINAL)
    Q_PROPERTY(QStringList numberTopics READ numberTopics NOTIFY setChanged FINAL)
    Q_PROPERTY(QStringList besideTopics READ besideTopics NOTIFY setChanged FINAL)
    Q_PROPERTY(QString timeName READ timeName NOTIFY setChanged FINAL)
    Q_PROPERTY(Verdict verdict READ verdict NOTIFY setChanged FINAL)
    Q_PROPERTY(QString verdictText READ verdictText NOTIFY setChanged FINAL)
    Q_PROPERTY(fleetrung::plot::PlotValue strikeLine READ strikeLine NOTIFY setChanged FINAL)
    Q_PROPERTY(QString velocity READ velocity NOTIFY setChanged FINAL)
    Q_PROPERTY(QString velocityName READ velocityName NOTIFY setChanged FINAL)
    Q_PROPERTY(QString velocityNote READ velocityNote NOTIFY setChanged FINAL)
    /// The one of the two that does not stand large.
    Q_PROPERTY(QString beside READ beside NOTIFY setChanged FINAL)
    Q_PROPERTY(QString besideName READ besideName NOTIFY setChanged FINAL)
    Q_PROPERTY(QString besideNote READ besideNote NOTIFY setChanged FINAL)
    Q_PROPERTY(QString range READ range NOTIFY setChanged FINAL)
    Q_PROPERTY(QString rangeName READ rangeName NOTIFY setChanged FINAL)
    Q_PROPERTY(QString rangeNote READ rangeNote NOTIFY setChanged FINAL)
    Q_PROPERTY(QString loss READ loss NOTIFY setChanged FINAL)
    Q_PROPERTY(QString lossNote READ lossNote NOTIFY setChanged FINAL)
    Q_PROPERTY(bool stopNow READ stopNow NOTIFY setChanged FINAL)
    Q_PROPERTY(QString stopText READ stopText NOTIFY setChanged FINAL)
    Q_PROPERTY(QString lastSetText READ lastSetText NOTIFY setChanged FINAL)
    Q_PROPERTY(QString restText READ restText NOTIFY restChanged FINAL)
    Q_PROPERTY(bool cutOffCanBeKept READ cutOffCanBeKept NOTIFY cutOffChanged FINAL)
    Q_PROPERTY(QString cutOffText READ cutOffText NOTIFY cutOffChanged FINAL) ///< a set that was cut off by a crash

public:
    enum Sensor { NoSensor, Ready, Streaming, Lost, Finished };
    Q_ENUM(Sensor)
    enum Verdict { None, Inside, Sooner, Later, NoEvidence };
    Q_ENUM(Verdict)
    enum Kind { Work, Probe, WarmUp, Maintenance };
    Q_ENUM(Kind)
    /// Of the warm-up check: not for this lift; not lifted yet; too little to compare with; nothing to change; less is
    /// proposed; answered.
    enum CheckState { NoCheck, CheckAhead, CheckUnknown, CheckAsUsual, CheckLess, CheckAnswered };
    Q_ENUM(CheckState)

    explicit BenchViewModel(Preferences* preferences, QObject* parent = nullptr);

    // From the program
    void showDay(const BenchDay& day);
    /// A sensor that can be begun with; `name` is "Bar sensor".
    void showSensor(Sensor sensor, const QString& name = {}, double rateHz = 0);
    /// Rate, battery and loss of the sensor, ready to be read; empty: not known.
    void showSensorLine(const QString& line);
    /// The bar is listened to: the set begins when it moves.
    void showListening(bool listens);
    /// What is said where there is no sensor to begin with: one is being looked for, say. Empty: there is none.
    void showAwaited(const QString& text);
    /// A set whose recording was cut off, to be kept or dropped; empty: none.
    void showCutOff(const QString& text, bool canKeep = false);
    void addRepetition(const reps::Repetition& repetition);
    /// The repetitions of the final analysis take the place of the live ones.
    void showRepetitions(const std::vector<reps::Repetition>& repetitions);
    void showLastSet(const SetDone& set);
    /// Those who share this sensor, the athlete shown among them; none where nobody does.
    void showSharers(const std::vector<Sharer>& sharers, const std::string& current);
    [[nodiscard]] const BenchLift* openedLift() const;
    [[nodiscard]] const BenchDay& day() const { return day_; }
    [[nodiscard]] QString massText(double kilograms) const { return units().mass(kilograms); }
    [[nodiscard]] const std::vector<reps::Repetition>& repetitions() const { return repetitions_; }
    /// Taken back with Undo since the set began.
    [[nodiscard]] const std::vector<reps::Repetition>& undone() const { return undone_; }
    [[nodiscard]] QString load() const { return load_; }
    void setLoad(const QString& load);
    PlateEntry* plates() { return &plates_; }
    [[nodiscard]] bool asksLoad() const; ///< false for lifts of body mass alone
    [[nodiscard]] QString platesText() const;
    [[nodiscard]] QString leftText() const;
    /// What a typed set says of 1RM; empty while load, repetitions and effort are no numbers.
    Q_INVOKABLE QString maximumText(const QVariantMap& form) const;
    [[nodiscard]] QString knownMaximum() const; ///< for a field; empty where nothing tells it
    /// Loads by the chart for a typed 1RM: rows of {title, detail, value}; none while it is no number.
    Q_INVOKABLE QVariantList loadChart(const QString& maximum) const;
    [[nodiscard]] QString loadLabel() const;
    [[nodiscard]] std::optional<double> loadKg() const; ///< typed or planned, 0 for body mass; none where it is unknown

    // From the page
    Q_INVOKABLE void openLift(const QString& key);
    /// Back to the day, unless repetitions of a set are not saved yet.
    Q_INVOKABLE void goBack();
    Q_INVOKABLE void leaveLift();
    void setReplaying(bool replaying) { replaying_ = replaying; } ///< a stored set is watched: nothing can be lost
    Q_INVOKABLE void begin();
    /// The values of the form of a set outside the ladders.
    Q_INVOKABLE QVariantMap otherForm(int index) const;
    /// Problems by field; empty where the set was taken.
    Q_INVOKABLE QVariantMap typeOther(int index, const QVariantMap& form);
    Q_INVOKABLE void openWhy(const QString& key);
    /// A sentence where the reason of a "no" is missing; empty where it was taken.
    Q_INVOKABLE QString answerCheck(bool accepted, const QString& why);
    /// Another athlete lifts next; never while a set is under way.
    Q_INVOKABLE void switchTo(const QString& key);
    /// Problems by field; empty where it was taken.
    Q_INVOKABLE QVariantMap sayHowYouAre(const QVariantMap& form);
    Q_INVOKABLE void undoRepetition();
    Q_INVOKABLE void endSet();
    Q_INVOKABLE void keepCutOff();
    Q_INVOKABLE void dropCutOff();
    /// Problems by field; empty where the set was taken.
    Q_INVOKABLE QVariantMap typeSet(const QVariantMap& form);

    QString sessionTitle() const;
    QString weekText() const { return day_.week; }
    QString phaseText() const { return day_.phase; }
    QString dayText() const;
    Rows* notes() { return &notes_; }
    bool hasAthlete() const { return !day_.athlete.empty(); }
    QString athleteName() const { return QString::fromStdString(day_.athlete); }
    QString wellnessText() const;
    QStringList regions() const;
    Rows* sharers() { return &sharers_; }
    QString emptyAction() const { return day_.emptyAction; }
    bool emptyLeadsToSquad() const { return day_.emptyLeadsToSquad; }
    QString whyTitle() const { return whyTitle_; }
    Rows* why() { return &why_; }
    CheckState checkState() const;
    QString checkTitle() const;
    QString checkText() const;
    Rows* checkEvidence() { return &checkEvidence_; }
    bool hasMaintenance() const { return openedLift() && openedLift()->plan.maintenance; }
    bool canSwitch() const { return !running() && repetitions_.empty(); }
    QString emptyTitle() const { return day_.emptyTitle; }
    QString emptyText() const { return day_.emptyText; }
    Rows* lifts() { return &lifts_; }

    Rows* others() { return &others_; }
    bool liftOpen() const { return open_.has_value(); }
    QString openKey() const { return openedLift() ? QString::fromStdString(openedLift()->plan.ladder) : QString(); }
    QString liftName() const;
    QString setText() const;
    QString loadText() const;
    QString planText() const;
    QString plannedLoad() const;
    QString plannedRepetitions() const;
    QString massUnit() const { return preferences_->massUnit(); }

    QStringList planLines() const;
    QString caution() const;
    Kind kind() const { return kind_; }
    void setKind(Kind kind);
    [[nodiscard]] store::SetKind storedKind() const;
    bool oneSided() const { return openedLift() && openedLift()->oneSided; }
    bool rightSide() const { return rightSide_; }
    void setRightSide(bool right);

    Sensor sensor() const { return sensor_; }
    QString sensorText() const;
    QString sensorDetail() const;
    bool running() const { return sensor_ == Streaming || sensor_ == Lost; }
    bool canBegin() const;
    QString beginText() const;
    QString waitingTitle() const;
    QString waitingText() const;

    int repetitionCount() const { return static_cast<int>(repetitions_.size()); }
    QString number() const;
    QString numberUnit() const;
    QStringList largeChoices() const;
    bool velocityIsLarge() const;
    void setVelocityIsLarge(bool large);
    QString beside() const;
    QString besideName() const;
    QString besideNote() const;
    QStringList numberTopics() const;
    QStringList besideTopics() const;
    QString timeName() const; ///< of the time by which the rung is judged
    Verdict verdict() const;
    QString verdictText() const;
    plot::PlotValue strikeLine() const;
    QString velocity() const;
    QString velocityName() const;
    QString velocityNote() const;
    QString range() const;
    QString rangeName() const;
    QString rangeNote() const;
    QString loss() const;
    QString lossNote() const;
    bool stopNow() const;
    QString stopText() const;
    QString lastSetText() const;
    QString restText() const;
    QString cutOffText() const { return cutOff_; }
    bool cutOffCanBeKept() const { return cutOffCanBeKept_; }

signals:
    void sessionChanged();
    void setChanged();
    /// The latest repetition said it: for the sound.
    void repetitionAdded(); ///< measured just now; before stopReached
    void stopReached();
    void restChanged();
    void cutOffChanged();
    void cutOffAnswered(bool kept);

    void liftOpened();
    void liftLeft();
    void endFirst(); ///< what was asked would lose a set that is not saved yet
    void beginAsked();
    void endAsked();
    void setTyped(const fleetrung::views::TypedSet& set);
    void otherTyped(const fleetrung::store::LiftSet& set, int repetitions);
    void whyChanged();
    void checkAnswered(const QString& ladder, bool accepted, const QString& why);
    void switchAsked(const QString& key);
    void wellnessSaid(const fleetrung::store::Wellness& wellness);

private:
    Units units() const { return preferences_->units(); }
    static QString repetitionsText(int count);
    void showLifts();
    void showNotes();
    void showOthers();
    void showCheck();
    [[nodiscard]] QStringList extrasOf(const BenchLift& lift) const;
    [[nodiscard]] QString setLine(const season::PlannedSet& set) const;
    void clearSet();
    [[nodiscard]] bool holdsSet() const { return !replaying_ && !repetitions_.empty(); } ///< not saved yet
    const reps::Repetition& latest() const { return repetitions_.back(); }
    std::optional<season::PlannedSet> plannedSet() const;
    bool byPeakVelocity() const;
    bool byContactTime() const;
    bool byDropTime() const;
    bool isBallistic() const;
    reps::Measured judgedTime(const reps::Repetition& repetition) const;
    void chooseKind();
    void proposeLoad();
    void goOn();
    void convertLoad();
    std::vector<double> velocities() const;

    Preferences* preferences_;
    BenchDay day_;
    PlateEntry plates_;
    Rows lifts_;
    Rows notes_;
    Rows why_;
    QString whyTitle_;
    Rows checkEvidence_;
    Rows sharers_;
    Rows others_;
    std::optional<std::size_t> open_;
    Kind kind_ = Work;
    QString load_;
    QString proposed_;          ///< by the plan; the load differs where the athlete typed another
    bool kindIsChosen_ = false; ///< by the athlete
    Units loadUnits_;           ///< in which it was typed
    bool rightSide_ = false;
    Sensor sensor_ = NoSensor;
    QString sensorName_;
    double rateHz_ = 0;
    QString sensorLine_;
    bool listens_ = false;
    QString awaited_;
    QString cutOff_;
    bool cutOffCanBeKept_ = false;
    bool replaying_ = false;
    std::vector<reps::Repetition> repetitions_;
    std::vector<reps::Repetition> undone_;
    std::optional<SetDone> lastSet_;
    QElapsedTimer sinceLastSet_;
    QTimer restTick_;
};

} // namespace fleetrung::views
