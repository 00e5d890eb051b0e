// The words of the interface in the user's language: installs what was translated, again whenever the choice changes.
#pragma once

#include <memory>

#include <QObject>
#include <QTranslator>

#include "mobile/views/preferences.hpp"

class QQmlEngine;

namespace fleetrung::views
{

class Translations : public QObject
{
    Q_OBJECT

public:
    /// Both outlive it. English where a language has no translation.
    explicit Translations(Preferences* preferences, QObject* parent = nullptr);
    ~Translations() override;

    /// Pages of this engine are worded anew on a change.
    void speakThrough(QQmlEngine* engine) { engine_ = engine; }
    /// A translation by its file, whatever the choice: for tests. False where it cannot be read.
    bool install(const QString& file);

private:
    void takeChosen();

    Preferences* preferences_;
    QQmlEngine* engine_ = nullptr;
    std::unique_ptr<QTranslator> translator_;
};

} // namespace fleetrung::views
