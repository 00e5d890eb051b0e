// A Plot as a Qt Quick item (module Fleetrung.Plot):
//     PlotItem { plot: view.stairPlot; dark: Theme.dark; textSize: Theme.smallText; Layout.fillWidth: true }
// A view model hands it over as Q_PROPERTY(fleetrung::plot::PlotValue stairPlot ...). The implicit height follows from
// the picture, the width and the text size. The ground is left to the page: a card of plot::groundColour. The item
// names itself for screen readers by its summary, unless the page has named it.
#pragma once

#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

#include "mobile/plot/plot_value.hpp"

namespace fleetrung::plot
{

class PlotItem : public QQuickPaintedItem
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(fleetrung::plot::PlotValue plot READ plot WRITE setPlot NOTIFY plotChanged)
    Q_PROPERTY(bool dark READ isDark WRITE setDark NOTIFY lookChanged)
    Q_PROPERTY(qreal textSize READ textSize WRITE setTextSize NOTIFY lookChanged)
    Q_PROPERTY(QString summary READ summary NOTIFY plotChanged)

public:
    explicit PlotItem(QQuickItem* parent = nullptr);

    [[nodiscard]] const PlotValue& plot() const { return value_; }
    void setPlot(const PlotValue& value);
    [[nodiscard]] bool isDark() const { return dark_; }
    void setDark(bool dark);
    [[nodiscard]] qreal textSize() const { return textSize_; }
    void setTextSize(qreal size);
    [[nodiscard]] QString summary() const { return value_.summary(); }

    /// Where a point of the item lies in the picture's own coordinates: what a finger means.
    Q_INVOKABLE QPointF placeAt(qreal x, qreal y) const;

    void paint(QPainter* painter) override;

signals:
    void plotChanged();
    void lookChanged();

protected:
    void geometryChange(const QRectF& now, const QRectF& before) override;
    void componentComplete() override;

private:
    void refresh();
    void tellScreenReaders();

    PlotValue value_;
    bool dark_ = false;
    qreal textSize_ = 13.0;
    QString told_; ///< the name last given to screen readers
};

} // namespace fleetrung::plot
