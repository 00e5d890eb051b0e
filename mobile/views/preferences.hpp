// What the user chose for this device: units, light or dark, text size, and that the cautions were read.
#pragma once

#include <memory>

#include <QHash>
#include <QObject>
#include <QSettings>
#include <QtQml/qqmlregistration.h>

#include "mobile/views/units.hpp"

namespace fleetrung::views
{

class Preferences : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(Appearance appearance READ appearance WRITE setAppearance NOTIFY changed FINAL)
    Q_PROPERTY(bool dark READ dark NOTIFY changed FINAL)
    Q_PROPERTY(Sound sound READ sound WRITE setSound NOTIFY changed FINAL)
    Q_PROPERTY(bool shakes READ shakes WRITE setShakes NOTIFY changed FINAL)
    /// A set begins when the bar moves and ends when it has rested.
    Q_PROPERTY(bool setsByThemselves READ setsByThemselves WRITE setSetsByThemselves NOTIFY changed FINAL)
    Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY changed FINAL)
    Q_PROPERTY(int language READ language WRITE setLanguage NOTIFY unitsChanged FINAL) ///< index into languages
    Q_PROPERTY(
        QStringList languages READ languages NOTIFY unitsChanged FINAL) ///< the device's, then each by its own name
    Q_PROPERTY(int decimalMark READ decimalMark WRITE setDecimalMark NOTIFY unitsChanged FINAL) ///< as DecimalMark
    Q_PROPERTY(int weekStart READ weekStart WRITE setWeekStart NOTIFY unitsChanged FINAL)       ///< as WeekStart
    Q_PROPERTY(bool pounds READ pounds WRITE setPounds NOTIFY unitsChanged FINAL)
    Q_PROPERTY(bool inches READ inches WRITE setInches NOTIFY unitsChanged FINAL)
    Q_PROPERTY(int racks READ racks WRITE setRacks NOTIFY changed FINAL) ///< that a squad's day is shared out among
    Q_PROPERTY(int bar READ bar WRITE setBar NOTIFY unitsChanged FINAL)  ///< index into the bars of bar_words.hpp
    Q_PROPERTY(QStringList bars READ bars NOTIFY unitsChanged FINAL)
    Q_PROPERTY(bool cautionsRead READ cautionsRead WRITE setCautionsRead NOTIFY changed FINAL)
    Q_PROPERTY(QString massUnit READ massUnit NOTIFY unitsChanged FINAL)
    Q_PROPERTY(QString lengthUnit READ lengthUnit NOTIFY unitsChanged FINAL)

public:
    enum Appearance { AsDevice, Dark, Light };
    Q_ENUM(Appearance)
    enum Sound { Silent, Tones, Voice }; ///< on Bench; Voice has the tones too
    Q_ENUM(Sound)

    /// An empty file name keeps nothing: for tests and pictures.
    explicit Preferences(const QString& file = {}, QObject* parent = nullptr);

    Appearance appearance() const { return appearance_; }
    void setAppearance(Appearance appearance);
    bool dark() const;
    Sound sound() const { return sound_; }
    void setSound(Sound sound);
    bool shakes() const { return shakes_; }
    void setShakes(bool shakes);
    bool setsByThemselves() const { return setsByThemselves_; }
    void setSetsByThemselves(bool byThemselves);
    double textScale() const { return textScale_; }
    void setTextScale(double scale);
    bool pounds() const { return pounds_; }
    void setPounds(bool pounds);
    bool inches() const { return inches_; }
    void setInches(bool inches);
    bool cautionsRead() const { return cautionsRead_; }
    void setCautionsRead(bool read);
    int racks() const { return racks_; }
    void setRacks(int racks); ///< 1 to 30
    int bar() const { return bar_; }
    void setBar(int bar);
    QStringList bars() const;
    QString massUnit() const { return units().massUnit(); }
    QString lengthUnit() const { return units().lengthUnit(); }

    /// What stands large on Bench for a ladder's lift: its velocity, or (else) its time.
    [[nodiscard]] bool velocityIsLarge(const QString& ladder) const { return largeVelocity_.contains(ladder); }
    void setVelocityIsLarge(const QString& ladder, bool large);

    /// The mapping (JSON text) that files with that header were imported with; empty where there was none.
    [[nodiscard]] QString rememberedImport(const QString& headerHash, bool sets) const;
    void rememberImport(const QString& headerHash, bool sets, const QString& mapping);

    int language() const { return language_; }
    void setLanguage(int language);
    QStringList languages() const;
    /// The language of that code; nothing where there is none.
    void speak(const QString& code);
    /// "de"; the device's own where it was left to it.
    [[nodiscard]] QString languageCode() const;
    int decimalMark() const { return static_cast<int>(decimalMark_); }
    void setDecimalMark(int mark);
    int weekStart() const { return static_cast<int>(weekStart_); }
    void setWeekStart(int start);

    [[nodiscard]] Units units() const;
    void setLocale(const QLocale& locale);
    [[nodiscard]] const QLocale& locale() const { return locale_; }

signals:
    void changed();
    void unitsChanged();
    /// Before anything is worded anew: the translation is to be changed now.
    void languageChanged();

private:
    void keep(const QString& key, const QVariant& value);

    std::unique_ptr<QSettings> settings_;
    QLocale locale_;
    int language_ = 0;
    DecimalMark decimalMark_ = DecimalMark::AsLanguage;
    WeekStart weekStart_ = WeekStart::AsLanguage;
    QHash<QString, QString> imports_;
    QStringList largeVelocity_; ///< ladders
    Appearance appearance_ = AsDevice;
    Sound sound_ = Tones;
    bool shakes_ = true;
    bool setsByThemselves_ = true;
    double textScale_ = 1;
    bool pounds_ = false;
    bool inches_ = false;
    bool cautionsRead_ = false;
    int racks_ = 2;
    int bar_ = 0;
};

} // namespace fleetrung::views
