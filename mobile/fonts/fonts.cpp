#include "mobile/fonts/fonts.hpp"

#include <QFont>
#include <QFontDatabase>
#include <QStringList>

namespace fleetrung::fonts
{

void bring()
{
    static const bool brought = [] {
        for (const auto* file :
             {"Inter-Regular", "Inter-Medium", "Inter-SemiBold", "Inter-Bold", "NotoSansCJKjp-Regular"})
            QFontDatabase::addApplicationFont(QStringLiteral(":/fonts/%1.otf").arg(QLatin1String(file)));
        // What Inter lacks is looked for there first.
        QFont::insertSubstitutions(QStringLiteral("Inter"), {QStringLiteral("Noto Sans CJK JP")});
        return true;
    }();
    static_cast<void>(brought);
}

} // namespace fleetrung::fonts
