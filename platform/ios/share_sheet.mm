// The iPhone's share sheet. Not built on the development machines.
#include "mobile/feedback/share_sheet.hpp"

#import <UIKit/UIKit.h>

namespace fleetrung::feedback
{
namespace
{

UIViewController* topController()
{
    for (UIScene* scene in UIApplication.sharedApplication.connectedScenes) {
        if (![scene isKindOfClass:UIWindowScene.class])
            continue;
        for (UIWindow* window in static_cast<UIWindowScene*>(scene).windows)
            if (window.isKeyWindow)
                return window.rootViewController;
    }
    return nil;
}

} // namespace

OfferFiles shareSheet()
{
    return [](const QStringList& paths) {
        NSMutableArray* files = [NSMutableArray array];
        for (const auto& path : paths)
            [files addObject:[NSURL fileURLWithPath:path.toNSString()]];
        UIViewController* parent = topController();
        if (parent == nil || files.count == 0)
            return;
        UIActivityViewController* sheet = [[UIActivityViewController alloc] initWithActivityItems:files
                                                                           applicationActivities:nil];
        // On a tablet the sheet hangs from a place: the middle of the lower edge, where the button was.
        sheet.popoverPresentationController.sourceView = parent.view;
        sheet.popoverPresentationController.sourceRect =
            CGRectMake(CGRectGetMidX(parent.view.bounds), CGRectGetMaxY(parent.view.bounds) - 1, 1, 1);
        [parent presentViewController:sheet animated:YES completion:nil];
    };
}

} // namespace fleetrung::feedback
