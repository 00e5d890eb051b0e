#include "mobile/ble/radio.hpp"

#include <chrono>
#include <map>
#include <utility>

#include <QThread>

#include "mobile/ble/board.hpp"
#include "mobile/ble/central.hpp"
#include "mobile/ble/tap.hpp"

namespace fleetrung::ble
{

/// The radio's thread and the way to it; itself on the interface's thread.
class Radio::Engine
{
public:
    Engine(Radio& radio, std::unique_ptr<Permission> permission, const Timing& timing)
        : radio_(radio), permission_(std::move(permission)), there_(std::make_unique<QObject>()),
          central_(std::make_shared<std::unique_ptr<Central>>()),
          board_(std::make_shared<Board>(there_.get(), central_))
    {
        there_->moveToThread(&thread_);
        thread_.setObjectName(QStringLiteral("radio"));
        thread_.start();
        auto tell = [this](std::function<void(Radio&)> call) {
            QMetaObject::invokeMethod(
                &radio_, [this, call = std::move(call)] { call(radio_); }, Qt::QueuedConnection);
        };
        QMetaObject::invokeMethod(
            there_.get(),
            [central = central_, timing, tell = std::move(tell)] {
                *central = std::make_unique<Central>(timing, tell);
            },
            Qt::QueuedConnection);
    }

    ~Engine()
    {
        board_->post([this](Central& central) {
            central.end([this] {
                // Queued: this may be a call of the central itself.
                QMetaObject::invokeMethod(
                    there_.get(),
                    [this] {
                        central_->reset();
                        thread_.quit();
                    },
                    Qt::QueuedConnection);
            });
        });
        board_->close(); // sets that still run ask for nothing more
        thread_.wait();
    }

    Engine(const Engine&) = delete;
    Engine& operator=(const Engine&) = delete;

    void post(std::function<void(Central&)> work) { board_->post(std::move(work)); }

    /// Once leave is given; the user is told where it is not. `work` is done on the interface's thread.
    void whenAllowed(std::function<void()> work)
    {
        if (!permission_)
            return work();
        permission_->ask([this, work = std::move(work)](bool given) {
            if (!given) {
                refused_ = true;
                emit radio_.trouble({}, {TroubleKind::NotAllowed, permission_->reason()});
                return;
            }
            if (std::exchange(refused_, false)) {
                emit radio_.troubleOver({});
                for (const auto& [address, sensor] : kept) // asked for while there was no leave
                    keepNow(address);
            }
            work();
        });
    }

    /// Where it is still wanted.
    void keepNow(const QString& address)
    {
        if (const auto found = kept.find(address); found != kept.end())
            post([sensor = found->second](Central& central) { central.keep(sensor); });
    }

    std::map<QString, KnownSensor> kept;
    [[nodiscard]] const std::shared_ptr<Board>& board() const { return board_; }

private:
    Radio& radio_;
    std::unique_ptr<Permission> permission_;
    bool refused_ = false;
    QThread thread_;
    std::unique_ptr<QObject> there_; ///< lives on thread_
    std::shared_ptr<std::unique_ptr<Central>> central_;
    std::shared_ptr<Board> board_;
};

Radio::Radio(std::unique_ptr<Permission> permission, QObject* parent) : Radio(std::move(permission), Timing{}, parent)
{
}

Radio::Radio(std::unique_ptr<Permission> permission, const Timing& timing, QObject* parent)
    : QObject(parent), engine_(std::make_unique<Engine>(*this, std::move(permission), timing))
{
}

Radio::~Radio() = default;

void Radio::scan()
{
    engine_->whenAllowed([this] { engine_->post([](Central& central) { central.scan(true); }); });
}

void Radio::stopScan()
{
    engine_->post([](Central& central) { central.scan(false); });
}

void Radio::keep(const KnownSensor& sensor)
{
    engine_->kept[sensor.address] = sensor;
    engine_->whenAllowed([this, address = sensor.address] { engine_->keepNow(address); });
}

void Radio::release(const QString& address)
{
    engine_->kept.erase(address);
    engine_->post([address](Central& central) { central.release(address); });
}

void Radio::tryNow(const QString& address)
{
    engine_->post([address](Central& central) { central.tryNow(address); });
}

void Radio::listen(const QString& address)
{
    engine_->whenAllowed([this, address] { engine_->post([address](Central& central) { central.listen(address); }); });
}

void Radio::stopListening()
{
    engine_->post([](Central& central) { central.listen({}); });
}

std::function<std::unique_ptr<sensor::SampleSource>()> Radio::sourceOf(const QString& address)
{
    const auto kept = engine_->kept.find(address);
    if (kept == engine_->kept.end())
        return {};
    return [board = engine_->board(), sensor = kept->second] { return std::make_unique<Tap>(board, sensor); };
}

std::int64_t Radio::now()
{
    using std::chrono::nanoseconds;
    return std::chrono::duration_cast<nanoseconds>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

} // namespace fleetrung::ble
