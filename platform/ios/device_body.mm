// The iPhone's taps and its idle timer. Not built on the development machines.
#include "mobile/feedback/device_body.hpp"

#import <UIKit/UIKit.h>

namespace fleetrung::feedback
{
namespace
{

class Body : public DeviceBody
{
public:
    [[nodiscard]] bool canShake() const override { return true; }

    /// iOS gives taps, not lengths: one for each shake, a strong one for the long ones.
    void shake(const std::vector<int>& pattern) override
    {
        constexpr int strongFrom = 150; // ms
        double after = 0;               // s
        for (std::size_t i = 0; i < pattern.size(); ++i) {
            if (i % 2 == 0) {
                const auto style = pattern[i] >= strongFrom ? UIImpactFeedbackStyleHeavy : UIImpactFeedbackStyleLight;
                dispatch_after(dispatch_time(DISPATCH_TIME_NOW, static_cast<int64_t>(after * NSEC_PER_SEC)),
                               dispatch_get_main_queue(), ^{
                                   [[[UIImpactFeedbackGenerator alloc] initWithStyle:style] impactOccurred];
                               });
            }
            after += pattern[i] / 1000.0;
        }
    }

    void keepAwake(bool awake) override { UIApplication.sharedApplication.idleTimerDisabled = awake ? YES : NO; }
};

} // namespace

std::unique_ptr<DeviceBody> deviceBody()
{
    return std::make_unique<Body>();
}

} // namespace fleetrung::feedback
