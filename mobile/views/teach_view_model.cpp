#include "mobile/views/teach_view_model.hpp"

#include <algorithm>

namespace fleetrung::views
{

using sensor::TeachStep;

namespace
{

constexpr double leastHeight = 0.2; // m: a lower raise tells too little of the scale
constexpr double mostHeight = 2.0;  // m
constexpr int longestName = 40;

/// The engine's names of what it found, in plain words.
QString plainly(const std::string& what)
{
    if (what == "accelerometer")
        return TeachViewModel::tr("Acceleration");
    if (what == "gyroscope")
        return TeachViewModel::tr("Turning");
    if (what == "counter")
        return TeachViewModel::tr("Counting of samples");
    if (what == "time stamp")
        return TeachViewModel::tr("Its own time");
    if (what == "rate")
        return TeachViewModel::tr("Samples in a second");
    if (what == "packet form")
        return TeachViewModel::tr("Form of its messages");
    return QString::fromStdString(what);
}

QString surely(double sure)
{
    return sure >= 0.9   ? TeachViewModel::tr("sure")
           : sure >= 0.6 ? TeachViewModel::tr("fairly sure")
                         : TeachViewModel::tr("not sure");
}

/// "Bar sensor" -> "bar-sensor": as a map's key is written.
std::string keyOf(const QString& name)
{
    std::string key;
    for (const QChar letter : name.normalized(QString::NormalizationForm_KD).toLower()) {
        const bool plain = (letter >= QLatin1Char('a') && letter <= QLatin1Char('z')) ||
                           (letter >= QLatin1Char('0') && letter <= QLatin1Char('9'));
        if (plain)
            key += letter.toLatin1();
        else if (!key.empty() && key.back() != '-' && !letter.isMark())
            key += '-';
    }
    while (!key.empty() && key.back() == '-')
        key.pop_back();
    return key.empty() ? "own" : key;
}

} // namespace

TeachViewModel::TeachViewModel(const Preferences* preferences, Learn learn, Clock now, QObject* parent)
    : QObject(parent), preferences_(preferences), learn_(std::move(learn)), now_(std::move(now)),
      surenessRows_({"name", "value", "words", "why", "mark"}, this)
{
    timer_.setInterval(100);
    connect(&timer_, &QTimer::timeout, this, &TeachViewModel::tick);
    connect(preferences, &Preferences::unitsChanged, this, &TeachViewModel::changed);
}

TeachViewModel::~TeachViewModel()
{
    stopLearning();
}

void TeachViewModel::clear()
{
    stopLearning();
    timer_.stop();
    const double height = recording_.raiseHeight;
    recording_ = {};
    recording_.raiseHeight = height;
    step_ = TeachStep::FaceOne;
    onlyThis_.reset();
    why_.clear();
    heightSaid_ = false;
    taught_.reset();
    surenessRows_.show({});
}

void TeachViewModel::goTo(Stage stage)
{
    stage_ = stage;
    emit changed();
    emit ticked();
}

// --- The link

void TeachViewModel::begin(const QString& address, const QString& name)
{
    clear();
    address_ = address;
    sensorName_ = name;
    goTo(Connecting);
    emit listenAsked(address);
}

void TeachViewModel::showNotifiers(const QString& address, const std::vector<sensor::Notifier>& notifiers)
{
    if (address != address_)
        return;
    recording_.notifiers = notifiers;
    why_.clear();
    goTo(stage_ == Connecting ? Ready : stage_);
}

void TeachViewModel::addPackets(const QString& address, const std::vector<sensor::RawPacket>& packets)
{
    if (address == address_ && stage_ != Learning && stage_ != Learned)
        recording_.packets.insert(recording_.packets.end(), packets.begin(), packets.end());
}

void TeachViewModel::showTrouble(const QString& text)
{
    if (stage_ == Learning || stage_ == Learned || stage_ == Failed)
        return;
    why_ = text;
    timer_.stop();
    goTo(stage_ == Running ? Ready : stage_);
}

void TeachViewModel::cancel()
{
    clear();
    if (!address_.isEmpty())
        emit listenEnded();
    address_.clear();
    goTo(Connecting);
}

// --- The steps

double TeachViewModel::share() const
{
    if (stage_ == Learning)
        return learned_;
    if (stage_ != Running)
        return 0;
    const double passed = static_cast<double>(now_() - begun_) * 1e-9;
    return std::clamp(passed / sensor::secondsOf(step_), 0.0, 1.0);
}

void TeachViewModel::start()
{
    if (stage_ != Ready || asksHeight())
        return;
    why_.clear();
    begun_ = now_();
    packetsBefore_ = recording_.packets.size();
    timer_.start();
    goTo(Running);
}

void TeachViewModel::stopStep()
{
    if (stage_ != Running)
        return;
    timer_.stop();
    goTo(Ready);
}

void TeachViewModel::tick()
{
    if (stage_ == Running && share() >= 1)
        return endStep();
    emit ticked();
}

void TeachViewModel::endStep()
{
    timer_.stop();
    if (recording_.packets.size() == packetsBefore_) {
        why_ = tr("Nothing came from the sensor. Shake it awake, then do this step again.");
        return goTo(Ready);
    }
    recording_.spans.push_back({.step = step_, .from = begun_, .to = now_()});
    if (onlyThis_ || step_ == TeachStep::RaiseTwo)
        return learn();
    step_ = static_cast<TeachStep>(step() + 1);
    goTo(Ready);
}

bool TeachViewModel::canRepeat() const
{
    return stage_ == Ready && !onlyThis_ && step_ != TeachStep::FaceOne;
}

void TeachViewModel::repeatLast()
{
    if (!canRepeat())
        return;
    step_ = static_cast<TeachStep>(step() - 1);
    why_.clear();
    goTo(Ready);
}

QString TeachViewModel::setHeight(const QString& text)
{
    const auto height = preferences_->units().parseLength(text);
    if (!height || *height < leastHeight || *height > mostHeight)
        return tr("From %1 to %2.")
            .arg(preferences_->units().length(leastHeight), preferences_->units().length(mostHeight));
    recording_.raiseHeight = *height;
    heightSaid_ = true;
    emit changed();
    return {};
}

void TeachViewModel::startOver()
{
    const auto notifiers = recording_.notifiers;
    clear();
    recording_.notifiers = notifiers;
    goTo(notifiers.empty() ? Connecting : Ready);
}

// --- Learning

void TeachViewModel::learn()
{
    stopLearning();
    learned_ = 0;
    stop_ = std::make_shared<std::atomic<bool>>(false);
    auto answer = std::make_shared<sensor::Taught>();
    learner_.reset(QThread::create([this, answer, stop = stop_, learn = learn_, recording = recording_] {
        *answer = learn(recording, [this, stop](double share) {
            QMetaObject::invokeMethod(
                this,
                [this, stop, share] {
                    if (*stop)
                        return;
                    learned_ = share;
                    emit ticked();
                },
                Qt::QueuedConnection);
            return !*stop;
        });
    }));
    connect(learner_.get(), &QThread::finished, this, [this, answer, stop = stop_] {
        if (!*stop)
            showTaught(*answer);
    });
    goTo(Learning);
    learner_->start();
}

void TeachViewModel::stopLearning()
{
    if (!learner_)
        return;
    *stop_ = true;
    learner_->wait();
    learner_.reset();
}

void TeachViewModel::showTaught(const sensor::Taught& taught)
{
    taught_ = taught;
    QList<QVariantMap> rows;
    for (const auto& sure : taught.sureness)
        rows += QVariantMap{
            {QStringLiteral("name"), plainly(sure.what)},
            {QStringLiteral("value"), tr("%1 %").arg(preferences_->units().number(std::floor(sure.sure * 100), 0))},
            {QStringLiteral("words"), surely(sure.sure)},
            {QStringLiteral("why"), QString::fromStdString(sure.why)},
            {QStringLiteral("mark"), sure.sure >= 0.9 ? 0 : 1}};
    surenessRows_.show(rows);
    onlyThis_ = taught.map ? std::nullopt : taught.repeat;
    if (taught.map)
        return goTo(Learned);
    if (!taught.repeat)
        return goTo(Failed);
    step_ = *taught.repeat;
    why_ = QString::fromStdString(taught.why);
    goTo(Ready);
}

QString TeachViewModel::save(const QString& name)
{
    const QString wanted = name.simplified();
    if (wanted.isEmpty())
        return tr("Give it a name, to know it by later.");
    if (wanted.size() > longestName)
        return tr("%1 letters are enough.").arg(longestName);
    if (!taught_ || !taught_->map)
        return {};
    sensor::SensorMap map = *taught_->map;
    map.name = wanted.toStdString();
    map.key = keyOf(wanted);
    const QString address = std::exchange(address_, QString());
    clear();
    emit listenEnded();
    emit taught(address, map);
    goTo(Connecting);
    return {};
}

} // namespace fleetrung::views
