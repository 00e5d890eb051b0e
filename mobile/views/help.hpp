// A number was asked what it is: the answer for the one sheet that shows it.
#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

class Help : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(fleetrung::views::Rows* entries READ entries CONSTANT FINAL)

public:
    explicit Help(QObject* parent = nullptr);

    /// Topics of help_texts.hpp; nothing is asked where none of them is known.
    Q_INVOKABLE void ask(const QStringList& topics);
    /// "What is velocity loss?", for screen readers.
    Q_INVOKABLE QString questionOf(const QString& topic) const;

    /// Roles "title", "what", "formula", "source", "sure".
    Rows* entries() { return &entries_; }

signals:
    void asked();

private:
    Rows entries_;
};

} // namespace fleetrung::views
