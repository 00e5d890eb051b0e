#include "mobile/views/help.hpp"

#include "mobile/views/help_texts.hpp"

namespace fleetrung::views
{

Help::Help(QObject* parent) : QObject(parent), entries_({"title", "what", "formula", "source", "sure"}, this) {}

void Help::ask(const QStringList& topics)
{
    QList<QVariantMap> rows;
    for (const auto& topic : topics)
        if (const auto text = helpText(topic))
            rows.append({{QStringLiteral("title"), text->title},
                         {QStringLiteral("what"), text->what},
                         {QStringLiteral("formula"), text->formula},
                         {QStringLiteral("source"), text->source},
                         {QStringLiteral("sure"), text->sure}});
    if (rows.isEmpty())
        return;
    entries_.show(rows);
    emit asked();
}

QString Help::questionOf(const QString& topic) const
{
    const auto text = helpText(topic);
    return text ? tr("What is this: %1?").arg(text->title) : QString();
}

} // namespace fleetrung::views
