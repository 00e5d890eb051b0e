#include "mobile/views/rows.hpp"

#include <algorithm>

namespace fleetrung::views
{

Rows::Rows(QList<QByteArray> roles, QObject* parent) : QAbstractListModel(parent), roles_(std::move(roles)) {}

int Rows::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant Rows::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || role < Qt::UserRole)
        return {};
    return rows_[index.row()].value(QString::fromLatin1(roles_[role - Qt::UserRole]));
}

QHash<int, QByteArray> Rows::roleNames() const
{
    QHash<int, QByteArray> names;
    for (qsizetype i = 0; i < roles_.size(); ++i)
        names[Qt::UserRole + static_cast<int>(i)] = roles_[i];
    return names;
}

void Rows::show(const QList<QVariantMap>& rows)
{
    const qsizetype before = rows_.size();
    const qsizetype common = std::min(before, rows.size());
    for (qsizetype i = 0; i < common; ++i) {
        if (rows_[i] == rows[i])
            continue;
        rows_[i] = rows[i];
        emit dataChanged(index(static_cast<int>(i)), index(static_cast<int>(i)));
    }
    if (rows.size() > before) {
        beginInsertRows({}, static_cast<int>(before), static_cast<int>(rows.size()) - 1);
        rows_ = rows;
        endInsertRows();
    } else if (rows.size() < before) {
        beginRemoveRows({}, static_cast<int>(rows.size()), static_cast<int>(before) - 1);
        rows_ = rows;
        endRemoveRows();
    }
    if (rows.size() != before)
        emit countChanged();
}

} // namespace fleetrung::views
