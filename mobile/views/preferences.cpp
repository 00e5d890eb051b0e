#include "mobile/views/preferences.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include <QGuiApplication>
#include <QPalette>

#include "mobile/views/bar_words.hpp"

namespace fleetrung::views
{
namespace
{

constexpr int mostRacks = 30;
constexpr int lastBar = 2;

struct Language {
    const char* code;
    const char* name; ///< in itself
};
const std::vector<Language> allLanguages{
    {"en", "English"}, {"de", "Deutsch"}, {"es", "Español"}, {"fr", "Français"}, {"ja", "日本語"}};

/// Of that language, where the device speaks another; the device's own region where it is the same.
QLocale localeOf(const QString& code)
{
    const QLocale device;
    return device.name().startsWith(code) ? device : QLocale(code);
}

} // namespace

Preferences::Preferences(const QString& file, QObject* parent) : QObject(parent)
{
    if (file.isEmpty())
        return;
    settings_ = std::make_unique<QSettings>(file, QSettings::IniFormat);
    appearance_ = static_cast<Appearance>(std::clamp(settings_->value(QStringLiteral("appearance"), 0).toInt(), 0, 2));
    sound_ = static_cast<Sound>(std::clamp(settings_->value(QStringLiteral("sound"), 1).toInt(), 0, 2));
    shakes_ = settings_->value(QStringLiteral("shakes"), true).toBool();
    setsByThemselves_ = settings_->value(QStringLiteral("setsByThemselves"), true).toBool();
    const auto code = settings_->value(QStringLiteral("language")).toString().toStdString();
    const auto known = std::ranges::find_if(allLanguages, [&code](const Language& one) { return one.code == code; });
    if (known != allLanguages.end()) {
        language_ = static_cast<int>(known - allLanguages.begin()) + 1;
        locale_ = localeOf(QString::fromStdString(code));
    }
    decimalMark_ =
        static_cast<DecimalMark>(std::clamp(settings_->value(QStringLiteral("decimalMark"), 0).toInt(), 0, 2));
    weekStart_ = static_cast<WeekStart>(std::clamp(settings_->value(QStringLiteral("weekStart"), 0).toInt(), 0, 2));
    largeVelocity_ = settings_->value(QStringLiteral("largeVelocity")).toStringList();
    textScale_ = std::clamp(settings_->value(QStringLiteral("textScale"), 1.0).toDouble(), 1.0, 2.0);
    const bool imperial = locale_.measurementSystem() == QLocale::ImperialUSSystem;
    pounds_ = settings_->value(QStringLiteral("pounds"), imperial).toBool();
    inches_ = settings_->value(QStringLiteral("inches"), imperial).toBool();
    cautionsRead_ = settings_->value(QStringLiteral("cautionsRead"), false).toBool();
    bar_ = std::clamp(settings_->value(QStringLiteral("bar"), 0).toInt(), 0, lastBar);
    racks_ = std::clamp(settings_->value(QStringLiteral("racks"), 2).toInt(), 1, mostRacks);
}

bool Preferences::dark() const
{
    if (appearance_ != AsDevice)
        return appearance_ == Dark;
    // Qt 6.4 has no word for the device's colour scheme: the lightness of its window colour tells.
    return QGuiApplication::palette().color(QPalette::Window).lightness() < 128;
}

Units Preferences::units() const
{
    return Units(locale_, pounds_ ? MassUnit::Pound : MassUnit::Kilogram,
                 inches_ ? LengthUnit::Inch : LengthUnit::Centimetre, decimalMark_, weekStart_);
}

void Preferences::setVelocityIsLarge(const QString& ladder, bool large)
{
    if (large == velocityIsLarge(ladder))
        return;
    if (large)
        largeVelocity_ += ladder;
    else
        largeVelocity_.removeAll(ladder);
    keep(QStringLiteral("largeVelocity"), largeVelocity_);
    emit changed();
}

QStringList Preferences::languages() const
{
    QStringList names{tr("As the device")};
    for (const auto& one : allLanguages)
        names += QString::fromUtf8(one.name);
    return names;
}

QString Preferences::languageCode() const
{
    return language_ > 0 ? QString::fromLatin1(allLanguages[static_cast<std::size_t>(language_) - 1].code)
                         : locale_.name().left(2);
}

void Preferences::setLanguage(int language)
{
    if (language == language_ || language < 0 || language > static_cast<int>(allLanguages.size()))
        return;
    language_ = language;
    locale_ = language > 0 ? localeOf(languageCode()) : QLocale();
    keep(QStringLiteral("language"), language > 0 ? languageCode() : QString());
    emit languageChanged();
    emit unitsChanged();
}

void Preferences::speak(const QString& code)
{
    const auto known =
        std::ranges::find_if(allLanguages, [&code](const Language& one) { return code == QLatin1String(one.code); });
    if (known != allLanguages.end())
        setLanguage(static_cast<int>(known - allLanguages.begin()) + 1);
}

void Preferences::setDecimalMark(int mark)
{
    if (mark == decimalMark() || mark < 0 || mark > 2)
        return;
    decimalMark_ = static_cast<DecimalMark>(mark);
    keep(QStringLiteral("decimalMark"), mark);
    emit unitsChanged();
}

void Preferences::setWeekStart(int start)
{
    if (start == weekStart() || start < 0 || start > 2)
        return;
    weekStart_ = static_cast<WeekStart>(start);
    keep(QStringLiteral("weekStart"), start);
    emit unitsChanged();
}

void Preferences::setLocale(const QLocale& locale)
{
    locale_ = locale;
    emit unitsChanged();
}

void Preferences::keep(const QString& key, const QVariant& value)
{
    if (settings_)
        settings_->setValue(key, value);
}

namespace
{

QString importKey(const QString& headerHash, bool sets)
{
    return QStringLiteral("imports/%1-%2").arg(sets ? QStringLiteral("sets") : QStringLiteral("runs"), headerHash);
}

} // namespace

QString Preferences::rememberedImport(const QString& headerHash, bool sets) const
{
    const QString key = importKey(headerHash, sets);
    return settings_ ? settings_->value(key).toString() : imports_.value(key);
}

void Preferences::rememberImport(const QString& headerHash, bool sets, const QString& mapping)
{
    const QString key = importKey(headerHash, sets);
    imports_.insert(key, mapping);
    keep(key, mapping);
}

void Preferences::setAppearance(Appearance appearance)
{
    if (appearance == appearance_)
        return;
    appearance_ = appearance;
    keep(QStringLiteral("appearance"), static_cast<int>(appearance));
    emit changed();
}

void Preferences::setSound(Sound sound)
{
    if (sound == sound_)
        return;
    sound_ = sound;
    keep(QStringLiteral("sound"), static_cast<int>(sound));
    emit changed();
}

void Preferences::setShakes(bool shakes)
{
    if (shakes == shakes_)
        return;
    shakes_ = shakes;
    keep(QStringLiteral("shakes"), shakes);
    emit changed();
}

void Preferences::setSetsByThemselves(bool byThemselves)
{
    if (byThemselves == setsByThemselves_)
        return;
    setsByThemselves_ = byThemselves;
    keep(QStringLiteral("setsByThemselves"), byThemselves);
    emit changed();
}

void Preferences::setTextScale(double scale)
{
    scale = std::clamp(scale, 1.0, 2.0);
    if (scale == textScale_)
        return;
    textScale_ = scale;
    keep(QStringLiteral("textScale"), scale);
    emit changed();
}

void Preferences::setPounds(bool pounds)
{
    if (pounds == pounds_)
        return;
    pounds_ = pounds;
    keep(QStringLiteral("pounds"), pounds);
    emit unitsChanged();
}

void Preferences::setInches(bool inches)
{
    if (inches == inches_)
        return;
    inches_ = inches;
    keep(QStringLiteral("inches"), inches);
    emit unitsChanged();
}

void Preferences::setRacks(int racks)
{
    racks = std::clamp(racks, 1, mostRacks);
    if (racks == racks_)
        return;
    racks_ = racks;
    keep(QStringLiteral("racks"), racks);
    emit changed();
}

void Preferences::setBar(int bar)
{
    bar = std::clamp(bar, 0, lastBar);
    if (bar == bar_)
        return;
    bar_ = bar;
    keep(QStringLiteral("bar"), bar);
    emit unitsChanged();
}

QStringList Preferences::bars() const
{
    return barNames(units());
}

void Preferences::setCautionsRead(bool read)
{
    if (read == cautionsRead_)
        return;
    cautionsRead_ = read;
    keep(QStringLiteral("cautionsRead"), read);
    emit changed();
}

} // namespace fleetrung::views
