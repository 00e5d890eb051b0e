// Figures, tables, pictures and boxes of a page.
#include <algorithm>

#include "mobile/pdf/page_flow.hpp"
#include "mobile/pdf/page_measures.hpp"
#include "mobile/plot/painter.hpp"

namespace fleetrung::pdf
{

using namespace measures;

void PageFlow::figures(const std::vector<Figure>& english)
{
    if (english.empty())
        return;
    std::vector<Figure> figures;
    for (const auto& figure : english)
        figures.push_back({told(figure.value), told(figure.caption)});
    const auto small = font(smallSize);
    const double gap = toDevice(8);
    const double pad = toDevice(8);
    const double width = (right_ - left_ + gap) / static_cast<double>(figures.size()) - gap;
    double size = figureSize; // smaller where a value would touch the edge
    for (const auto& figure : figures)
        while (size > figureSize / 2 && metrics(font(size, true)).horizontalAdvance(figure.value) > width - 2 * pad)
            size -= 0.5;
    const auto large = font(size, true);
    qsizetype captionLines = 1;
    for (const auto& figure : figures)
        captionLines = std::max(captionLines, lines(figure.caption, small, width - 2 * pad).size());
    const double height = 2 * pad + lineHeight(large) + static_cast<double>(captionLines) * lineHeight(small);
    begin(height);
    for (std::size_t i = 0; i < figures.size(); ++i) {
        const double left = left_ + static_cast<double>(i) * (width + gap);
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(QColor(0xF3, 0xF5, 0xF6));
        painter_.drawRoundedRect(QRectF(left, y_, width, height), toDevice(4), toDevice(4));
        write(figures[i].value, large, Ink::Strong, left + pad, y_ + pad);
        double top = y_ + pad + lineHeight(large);
        for (const auto& line : lines(figures[i].caption, small, width - 2 * pad)) {
            write(line, small, Ink::Quiet, left + pad, top);
            top += lineHeight(small);
        }
    }
    y_ += height;
    space(4);
}

std::vector<double> PageFlow::widthsOf(const std::vector<TableColumn>& columns,
                                       const std::vector<QStringList>& rows) const
{
    const auto cell = metrics(font(smallSize));
    const auto head = metrics(font(smallSize - 0.4, true));
    double shares = 0;
    for (const auto& column : columns)
        shares += column.share;
    std::vector<double> widths, needed;
    double missing = 0, spare = 0;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        double longest = head.horizontalAdvance(columns[i].title);
        for (const auto& row : rows)
            for (const auto& word : row[static_cast<qsizetype>(i)].split(QLatin1Char(' ')))
                longest = std::max(longest, cell.horizontalAdvance(word));
        needed.push_back(longest + toDevice(cellGap + 1));
        widths.push_back(columns[i].share / shares * (right_ - left_));
        missing += std::max(0.0, needed[i] - widths[i]);
        spare += std::max(0.0, widths[i] - needed[i]);
    }
    const double given = spare > 0 ? std::min(1.0, missing / spare) : 0;
    const double taken = missing > 0 ? std::min(1.0, spare / missing) : 0;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const double more = needed[i] - widths[i];
        widths[i] += more > 0 ? taken * more : given * more;
    }
    return widths;
}

/// A cell keeps off its right neighbour.
double PageFlow::roomOf(const std::vector<double>& widths, std::size_t column) const
{
    return column + 1 == widths.size() ? widths[column] : widths[column] - toDevice(cellGap);
}

void PageFlow::tableHead(const std::vector<TableColumn>& columns, const std::vector<double>& widths)
{
    const auto small = font(smallSize - 0.4, true);
    double x = left_;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const double room = roomOf(widths, i);
        const auto text = metrics(small).elidedText(columns[i].title, Qt::ElideRight, room);
        const double width = metrics(small).horizontalAdvance(text);
        write(text, small, Ink::Quiet, columns[i].alignRight ? x + room - width : x, y_);
        x += widths[i];
    }
    y_ += lineHeight(small);
    space(1.5);
    rule(y_, 1.0);
    space(rowGap);
}

void PageFlow::table(const std::vector<TableColumn>& english, const std::vector<QStringList>& englishRows)
{
    auto columns = english;
    for (auto& column : columns)
        column.title = told(column.title);
    auto rows = englishRows;
    for (auto& row : rows)
        for (auto& text : row)
            text = told(text);
    const auto small = font(smallSize);
    const auto widths = widthsOf(columns, rows);
    std::vector<std::vector<QStringList>> cells; // row, column, lines
    std::vector<double> heights;
    double all = 2 * lineHeight(small);
    for (const auto& row : rows) {
        auto& broken = cells.emplace_back();
        qsizetype most = 1;
        for (std::size_t i = 0; i < columns.size(); ++i) {
            broken.push_back(lines(row[static_cast<qsizetype>(i)], small, roomOf(widths, i)));
            most = std::max(most, broken.back().size());
        }
        heights.push_back(static_cast<double>(most) * lineHeight(small) + toDevice(2 * rowGap));
        all += heights.back();
    }
    const bool isShort = all < shortTable * (bottom_ - top_);
    begin(isShort ? all : 5 * lineHeight(small));
    tableHead(columns, widths);
    for (std::size_t row = 0; row < rows.size(); ++row) {
        if (y_ + heights[row] > bottom_) {
            newPage();
            tableHead(columns, widths);
        }
        tableRow(columns, widths, cells[row]);
        y_ += heights[row];
        rule(y_ - toDevice(rowGap), 0.4);
    }
    space(4);
}

void PageFlow::tableRow(const std::vector<TableColumn>& columns, const std::vector<double>& widths,
                        const std::vector<QStringList>& cells)
{
    const auto small = font(smallSize);
    double x = left_;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        double top = y_;
        for (const auto& line : cells[i]) {
            const double spare = roomOf(widths, i) - metrics(small).horizontalAdvance(line);
            write(line, small, Ink::Body, columns[i].alignRight ? x + spare : x, top);
            top += lineHeight(small);
        }
        x += widths[i];
    }
}

void PageFlow::picture(const plot::Plot& plot, double height)
{
    begin(toDevice(height));
    plot::Look look;
    look.ground = plot::Ground::Print;
    look.unit = toDevice(1) / pixelsPerPoint;
    look.textSize = pictureText * pixelsPerPoint;
    look.family = QStringLiteral("Inter");
    plot::paint(wording_.show ? wording_.show(plot) : plot, painter_,
                QRectF(left_, y_, right_ - left_, toDevice(height)), look);
    y_ += toDevice(height);
    space(9);
}

void PageFlow::box(const QString& heading, const std::vector<QString>& english)
{
    const auto texts = told(english);
    const auto bold = font(subsectionSize, true);
    const auto small = font(smallSize);
    const double pad = toDevice(10);
    const double width = right_ - left_ - 2 * pad;
    double height = 2 * pad + lineHeight(bold) + toDevice(3);
    for (const auto& text : texts)
        height += static_cast<double>(lines(text, small, width).size()) * lineHeight(small) + toDevice(2.5);
    begin(height + toDevice(14));
    if (y_ > top_)
        space(14);
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(QColor(0xFD, 0xF3, 0xE0));
    painter_.drawRoundedRect(QRectF(left_, y_, right_ - left_, height), toDevice(4), toDevice(4));
    y_ += pad;
    write(told(heading), bold, Ink::Strong, left_ + pad, y_);
    y_ += lineHeight(bold);
    space(3);
    for (const auto& text : texts) {
        for (const auto& line : lines(text, small, width)) {
            write(line, small, Ink::Body, left_ + pad, y_);
            y_ += lineHeight(small);
        }
        space(2.5);
    }
    y_ += pad;
}

} // namespace fleetrung::pdf
