// Android's vibrator and its "keep screen on" flag. Not built on the development machines.
#include "mobile/feedback/device_body.hpp"

#include <QCoreApplication>
#include <QJniEnvironment>
#include <QJniObject>

namespace fleetrung::feedback
{
namespace
{

constexpr jint keepScreenOn = 0x80; // WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON

class Body : public DeviceBody
{
public:
    [[nodiscard]] bool canShake() const override
    {
        const auto vibrator = service();
        return vibrator.isValid() && vibrator.callMethod<jboolean>("hasVibrator");
    }

    void shake(const std::vector<int>& pattern) override
    {
        const auto vibrator = service();
        if (!vibrator.isValid() || pattern.empty())
            return;
        std::vector<jlong> lengths{0}; // Android begins with a pause
        lengths.insert(lengths.end(), pattern.begin(), pattern.end());
        QJniEnvironment environment;
        const auto count = static_cast<jsize>(lengths.size());
        jlongArray timings = environment->NewLongArray(count);
        environment->SetLongArrayRegion(timings, 0, count, lengths.data());
        vibrator.callMethod<void>("vibrate", "([JI)V", timings, -1); // -1: once
        environment->DeleteLocalRef(timings);
        environment.checkAndClearExceptions();
    }

    void keepAwake(bool awake) override
    {
        QNativeInterface::QAndroidApplication::runOnAndroidMainThread([awake] {
            const QJniObject activity = QNativeInterface::QAndroidApplication::context();
            const auto window = activity.callObjectMethod("getWindow", "()Landroid/view/Window;");
            if (window.isValid())
                window.callMethod<void>(awake ? "addFlags" : "clearFlags", "(I)V", keepScreenOn);
        });
    }

private:
    static QJniObject service()
    {
        const QJniObject context = QNativeInterface::QAndroidApplication::context();
        const auto name = QJniObject::fromString(QStringLiteral("vibrator"));
        return context.callObjectMethod("getSystemService", "(Ljava/lang/String;)Ljava/lang/Object;",
                                        name.object<jstring>());
    }
};

} // namespace

std::unique_ptr<DeviceBody> deviceBody()
{
    return std::make_unique<Body>();
}

} // namespace fleetrung::feedback
