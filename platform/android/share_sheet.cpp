// Android's share sheet: an intent with the files as addresses of the program's own provider, which
// share_provider.xml declares. Not built on the development machines.
#include "mobile/feedback/share_sheet.hpp"

#include <QCoreApplication>
#include <QJniEnvironment>
#include <QJniObject>

namespace fleetrung::feedback
{
namespace
{

constexpr jint grantReading = 0x1; // Intent.FLAG_GRANT_READ_URI_PERMISSION

QJniObject text(const QString& words)
{
    return QJniObject::fromString(words);
}

/// content://... of a file, as other programs may read it; invalid where the provider does not know its folder.
QJniObject addressOf(const QJniObject& context, const QString& path)
{
    const QJniObject file("java/io/File", "(Ljava/lang/String;)V", text(path).object<jstring>());
    const auto package = context.callObjectMethod("getPackageName", "()Ljava/lang/String;").toString();
    return QJniObject::callStaticObjectMethod(
        "androidx/core/content/FileProvider", "getUriForFile",
        "(Landroid/content/Context;Ljava/lang/String;Ljava/io/File;)Landroid/net/Uri;", context.object(),
        text(package + QStringLiteral(".files")).object<jstring>(), file.object());
}

QJniObject intentWith(const QJniObject& addresses, bool one)
{
    QJniObject intent(
        "android/content/Intent", "(Ljava/lang/String;)V",
        text(one ? QStringLiteral("android.intent.action.SEND") : QStringLiteral("android.intent.action.SEND_MULTIPLE"))
            .object<jstring>());
    const auto stream = text(QStringLiteral("android.intent.extra.STREAM"));
    if (one) {
        const auto address = addresses.callObjectMethod("get", "(I)Ljava/lang/Object;", 0);
        intent.callObjectMethod("putExtra", "(Ljava/lang/String;Landroid/os/Parcelable;)Landroid/content/Intent;",
                                stream.object<jstring>(), address.object());
    } else {
        intent.callObjectMethod("putParcelableArrayListExtra",
                                "(Ljava/lang/String;Ljava/util/ArrayList;)Landroid/content/Intent;",
                                stream.object<jstring>(), addresses.object());
    }
    intent.callObjectMethod("setType", "(Ljava/lang/String;)Landroid/content/Intent;",
                            text(QStringLiteral("*/*")).object<jstring>());
    intent.callObjectMethod("addFlags", "(I)Landroid/content/Intent;", grantReading);
    return intent;
}

} // namespace

OfferFiles shareSheet()
{
    return [](const QStringList& paths) {
        QNativeInterface::QAndroidApplication::runOnAndroidMainThread([paths] {
            QJniEnvironment environment;
            const QJniObject activity = QNativeInterface::QAndroidApplication::context();
            const QJniObject addresses("java/util/ArrayList");
            for (const auto& path : paths)
                if (const auto address = addressOf(activity, path);
                    !environment.checkAndClearExceptions() && address.isValid())
                    addresses.callMethod<jboolean>("add", "(Ljava/lang/Object;)Z", address.object());
            const auto count = addresses.callMethod<jint>("size");
            if (count == 0)
                return;
            const auto chooser = QJniObject::callStaticObjectMethod(
                "android/content/Intent", "createChooser",
                "(Landroid/content/Intent;Ljava/lang/CharSequence;)Landroid/content/Intent;",
                intentWith(addresses, count == 1).object(), nullptr);
            activity.callMethod<void>("startActivity", "(Landroid/content/Intent;)V", chooser.object());
            environment.checkAndClearExceptions();
        });
    };
}

} // namespace fleetrung::feedback
