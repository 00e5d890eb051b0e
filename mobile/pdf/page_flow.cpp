#include "mobile/pdf/page_flow.hpp"

#include <QRegularExpression>
#include <QTextLayout>
#include <algorithm>
#include <cmath>
#include <utility>

#include "mobile/pdf/page_measures.hpp"

namespace fleetrung::pdf
{

using namespace measures;

PageFlow::PageFlow(QPdfWriter& writer, const QString& footer, int pageCount, Wording wording)
    : writer_(writer), wording_(std::move(wording)), footer_(told(footer)), pageCount_(pageCount)
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

std::vector<QString> PageFlow::told(const std::vector<QString>& english) const
{
    std::vector<QString> texts;
    for (const auto& text : english)
        texts.push_back(told(text));
    return texts;
}

QFont PageFlow::font(double size, bool strong) const
{
    QFont font(QStringList{QStringLiteral("Inter"), QStringLiteral("Noto Sans CJK JP"), QStringLiteral("DejaVu Sans")});
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
    const QString number = told(pageCount_ > 0 ? QStringLiteral("page %1 of %2").arg(page_).arg(pageCount_)
                                               : QStringLiteral("page %1").arg(page_));
    const double width = metrics(small).horizontalAdvance(number);
    const double room = right_ - left_ - width - toDevice(20);
    write(metrics(small).elidedText(footer_, Qt::ElideRight, room), small, Ink::Quiet, left_, top);
    write(number, small, Ink::Quiet, right_ - width, top);
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
    writeLines(told(overline), font(smallSize, true), Ink::Accent, left_, right_ - left_);
    space(2);
    writeLines(name, font(titleSize, true), Ink::Strong, left_, right_ - left_);
    space(1);
    writeLines(told(subline), font(bodySize + 1), Ink::Quiet, left_, right_ - left_);
    space(14);
}

void PageFlow::section(const QString& text)
{
    waiting_.push_back({told(text), sectionSize, true, 18, 5});
}

void PageFlow::subsection(const QString& text)
{
    waiting_.push_back({told(text), subsectionSize, true, 10, 4});
}

void PageFlow::lead(const QString& text)
{
    waiting_.push_back({told(text), smallSize, false, 0, 4});
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
    writeLines(told(text), font(smallSize), Ink::Quiet, left_, right_ - left_);
    space(4);
}

void PageFlow::points(const std::vector<QString>& texts)
{
    const auto body = font(bodySize);
    const double indent = toDevice(11);
    for (const auto& text : told(texts)) {
        begin(static_cast<double>(lines(text, body, right_ - left_ - indent).size()) * lineHeight(body));
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(paper(plot::Role::Taken));
        painter_.drawEllipse(QPointF(left_ + toDevice(2.5), y_ + metrics(body).ascent() - metrics(body).xHeight() / 2),
                             toDevice(1.6), toDevice(1.6));
        writeLines(text, body, Ink::Body, left_ + indent, right_ - left_ - indent);
        space(2.5);
    }
}

} // namespace fleetrung::pdf
