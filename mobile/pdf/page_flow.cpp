#include "mobile/pdf/page_flow.hpp"

#include <QRegularExpression>
#include <QTextLayout>
#include <algorithm>
#include <cmath>
#include <utility>

#include "mobile/plot/painter.hpp"

namespace fleetrung::pdf
{
namespace
{

// Points.
constexpr double titleSize = 25;
constexpr double sectionSize = 15;
constexpr double subsectionSize = 10.5;
constexpr double bodySize = 9.5;
constexpr double smallSize = 8.2;
constexpr double figureSize = 17;
constexpr double pictureText = 8.2;
constexpr double footerRoom = 26;
constexpr double cellGap = 9;
constexpr double rowGap = 2.8;
constexpr double shortTable = 0.35; // share of the page: shorter ones are kept whole

constexpr double pixelsPerPoint = 96.0 / 72.0; // the layout pixels of plot::Look

QColor paper(plot::Role role)
{
    return plot::shapeColour(role, plot::Ground::Print);
}

QColor textInk(plot::Role role)
{
    return plot::textColour(role, plot::Ground::Print);
}

} // namespace

PageFlow::PageFlow(QPdfWriter& writer, QString footer, int pageCount)
    : writer_(writer), footer_(std::move(footer)), pageCount_(pageCount)
{
    if (!painter_.begin(&writer_))
        return;
    painter_.setRenderHint(QPainter::Antialiasing);
    right_ = writer_.width();
    bottom_ = writer_.height() - toDevice(footerRoom);
}

int PageFlow::finish()
{
    footer();
    painter_.end();
    return page_;
}

QFont PageFlow::font(double size, bool strong) const
{
    QFont font(QStringList{QStringLiteral("Inter"), QStringLiteral("DejaVu Sans")});
    font.setPixelSize(static_cast<int>(std::lround(toDevice(size))));
    font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::PreferNoShaping); // as in plot::plotFont: every sign must stay a character
    return font;
}

QStringList PageFlow::lines(const QString& text, const QFont& font, double width) const
{
    // A number stays with its unit: the space between them does not break, and is plain again in what is written.
    static const QRegularExpression unit(QStringLiteral("(\\d) (ms|s|m|cm|in|kg|lb|m/s|%)\\b"));
    auto whole =
        QString(text).replace(QLatin1Char('\n'), QLatin1Char(' ')).replace(unit, QStringLiteral("\\1\u00A0\\2"));
    QTextLayout layout(whole, font, painter_.device());
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    QStringList out;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        const auto part = whole.mid(line.textStart(), line.textLength());
        out.append(part.trimmed().replace(QChar(QChar::Nbsp), QLatin1Char(' ')));
    }
    layout.endLayout();
    return out;
}

void PageFlow::ensure(double height)
{
    if (y_ + height > bottom_ && y_ > top_)
        newPage();
}

void PageFlow::newPage()
{
    footer();
    writer_.newPage();
    ++page_;
    y_ = top_;
}

void PageFlow::footer()
{
    const auto small = font(smallSize - 0.7);
    const double top = bottom_ + toDevice(footerRoom) - lineHeight(small);
    rule(top - toDevice(5), 0.5);
    write(footer_, small, Ink::Quiet, left_, top);
    QString number = QStringLiteral("page %1").arg(page_);
    if (pageCount_ > 0)
        number += QStringLiteral(" of %1").arg(pageCount_);
    write(number, small, Ink::Quiet, right_ - metrics(small).horizontalAdvance(number), top);
}

void PageFlow::write(const QString& text, const QFont& font, Ink ink, double x, double top)
{
    switch (ink) {
    case Ink::Strong:
        painter_.setPen(textInk(plot::Role::Strong));
        break;
    case Ink::Body:
        painter_.setPen(QColor(0x2A, 0x2D, 0x30));
        break;
    case Ink::Quiet:
        painter_.setPen(textInk(plot::Role::Label));
        break;
    case Ink::Accent:
        painter_.setPen(textInk(plot::Role::Taken));
        break;
    }
    painter_.setFont(font);
    painter_.drawText(QPointF(x, top + metrics(font).ascent()), text);
}

void PageFlow::writeLines(const QString& text, const QFont& font, Ink ink, double left, double width)
{
    for (const auto& line : lines(text, font, width)) {
        ensure(lineHeight(font));
        write(line, font, ink, left, y_);
        y_ += lineHeight(font);
    }
}

void PageFlow::rule(double y, double weight)
{
    painter_.setPen(QPen(paper(plot::Role::Grid), toDevice(weight)));
    painter_.drawLine(QPointF(left_, y), QPointF(right_, y));
}

void PageFlow::title(const QString& overline, const QString& name, const QString& subline)
{
    writeLines(overline, font(smallSize, true), Ink::Accent, left_, right_ - left_);
    space(2);
    writeLines(name, font(titleSize, true), Ink::Strong, left_, right_ - left_);
    space(1);
    writeLines(subline, font(bodySize + 1), Ink::Quiet, left_, right_ - left_);
    space(14);
}

void PageFlow::section(const QString& text)
{
    waiting_.push_back({text, sectionSize, true, 18, 5});
}

void PageFlow::subsection(const QString& text)
{
    waiting_.push_back({text, subsectionSize, true, 10, 4});
}

void PageFlow::lead(const QString& text)
{
    waiting_.push_back({text, smallSize, false, 0, 4});
}

void PageFlow::begin(double height)
{
    double headings = 0;
    for (const auto& heading : waiting_) {
        const auto face = font(heading.size, heading.strong);
        headings += toDevice(heading.before + heading.after) +
                    static_cast<double>(lines(heading.text, face, right_ - left_).size()) * lineHeight(face);
    }
    ensure(headings + height);
    for (const auto& heading : std::exchange(waiting_, {})) {
        if (y_ > top_)
            space(heading.before);
        writeLines(heading.text, font(heading.size, heading.strong), heading.strong ? Ink::Strong : Ink::Quiet, left_,
                   right_ - left_);
        space(heading.after);
    }
}

void PageFlow::quiet(const QString& text)
{
    begin(lineHeight(font(smallSize)));
    writeLines(text, font(smallSize), Ink::Quiet, left_, right_ - left_);
    space(4);
}

void PageFlow::points(const std::vector<QString>& texts)
{
    const auto body = font(bodySize);
    const double indent = toDevice(11);
    for (const auto& text : texts) {
        begin(static_cast<double>(lines(text, body, right_ - left_ - indent).size()) * lineHeight(body));
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(paper(plot::Role::Taken));
        painter_.drawEllipse(QPointF(left_ + toDevice(2.5), y_ + metrics(body).ascent() - metrics(body).xHeight() / 2),
                             toDevice(1.6), toDevice(1.6));
        writeLines(text, body, Ink::Body, left_ + indent, right_ - left_ - indent);
        space(2.5);
    }
}

void PageFlow::figures(const std::vector<Figure>& figures)
{
    if (figures.empty())
        return;
    const auto large = font(figureSize, true);
    const auto small = font(smallSize);
    const double gap = toDevice(8);
    const double pad = toDevice(8);
    const double width = (right_ - left_ + gap) / static_cast<double>(figures.size()) - gap;
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

std::vector<double> PageFlow::widthsOf(const std::vector<TableColumn>& columns) const
{
    double shares = 0;
    for (const auto& column : columns)
        shares += column.share;
    std::vector<double> widths;
    for (const auto& column : columns)
        widths.push_back(column.share / shares * (right_ - left_));
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

void PageFlow::table(const std::vector<TableColumn>& columns, const std::vector<QStringList>& rows)
{
    const auto small = font(smallSize);
    const auto widths = widthsOf(columns);
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
    plot::paint(plot, painter_, QRectF(left_, y_, right_ - left_, toDevice(height)), look);
    y_ += toDevice(height);
    space(9);
}

void PageFlow::box(const QString& heading, const std::vector<QString>& texts)
{
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
    write(heading, bold, Ink::Strong, left_ + pad, y_);
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
