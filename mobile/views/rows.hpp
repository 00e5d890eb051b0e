// A list for a page: rows of named values. New rows at the end are inserted and a changed row is announced alone, so
// that a list on the page keeps its place.
#pragma once

#include <QAbstractListModel>
#include <QByteArray>
#include <QList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace fleetrung::views
{

class Rows : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Owned by a view model")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)

public:
    Rows(QList<QByteArray> roles, QObject* parent);

    int count() const { return static_cast<int>(rows_.size()); }
    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

    void show(const QList<QVariantMap>& rows);
    [[nodiscard]] const QList<QVariantMap>& all() const { return rows_; }

signals:
    void countChanged();

private:
    QList<QByteArray> roles_;
    QList<QVariantMap> rows_;
};

} // namespace fleetrung::views
