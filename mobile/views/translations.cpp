#include "mobile/views/translations.hpp"

#include <QCoreApplication>
#include <QQmlEngine>

namespace fleetrung::views
{

Translations::Translations(Preferences* preferences, QObject* parent) : QObject(parent), preferences_(preferences)
{
    connect(preferences, &Preferences::languageChanged, this, &Translations::takeChosen);
    takeChosen();
}

Translations::~Translations()
{
    if (translator_)
        QCoreApplication::removeTranslator(translator_.get());
}

void Translations::takeChosen()
{
    install(QStringLiteral(":/i18n/fleetrung_%1.qm").arg(preferences_->languageCode()));
}

bool Translations::install(const QString& file)
{
    if (translator_)
        QCoreApplication::removeTranslator(translator_.get());
    translator_ = std::make_unique<QTranslator>();
    const bool loaded = translator_->load(file);
    if (loaded)
        QCoreApplication::installTranslator(translator_.get());
    else
        translator_.reset();
    if (engine_)
        engine_->retranslate();
    return loaded;
}

} // namespace fleetrung::views
