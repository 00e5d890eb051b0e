// Text, tables and pictures set down a column from page to page, each text told by the wording. Sizes in points.
// Internal to this folder.
#pragma once

#include <QFont>
#include <QFontMetricsF>
#include <QPainter>
#include <QPdfWriter>
#include <QString>
#include <QStringList>
#include <vector>

#include "mobile/pdf/season_pdf.hpp"
#include "mobile/plot/plot.hpp"

namespace fleetrung::pdf
{

struct TableColumn {
    QString title;
    double share = 1;        ///< of the width, against the other columns
    bool alignRight = false; ///< numbers
};

/// One number of the row at the head of the report.
struct Figure {
    QString value;
    QString caption;
};

class PageFlow
{
public:
    /// `pageCount` stands in the footer; 0 while it is not known.
    PageFlow(QPdfWriter& writer, const QString& footer, int pageCount, Wording wording);
    PageFlow(const PageFlow&) = delete;
    PageFlow& operator=(const PageFlow&) = delete;

    [[nodiscard]] bool isOpen() const { return painter_.isActive(); }
    /// Ends the last page; gives the number of pages.
    int finish();

    void title(const QString& overline, const QString& name, const QString& subline);
    // These three stay with what follows them: no heading is left alone at the foot of a page.
    void section(const QString& text);
    void subsection(const QString& text);
    void lead(const QString& text);

    void quiet(const QString& text);
    void points(const std::vector<QString>& texts);
    void figures(const std::vector<Figure>& english);
    /// A row is never split, a short table neither; the heading row is repeated on each page.
    void table(const std::vector<TableColumn>& english, const std::vector<QStringList>& englishRows);
    void picture(const plot::Plot& plot, double height);
    /// A tinted box with a heading.
    void box(const QString& heading, const std::vector<QString>& english);

private:
    void space(double points) { y_ += toDevice(points); }

    struct Heading {
        QString text;
        double size = 0;
        bool strong = true;
        double before = 0;
        double after = 0;
    };
    enum class Ink { Strong, Body, Quiet, Accent };

    [[nodiscard]] QString told(const QString& english) const
    {
        return wording_.tell ? wording_.tell(english) : english;
    }
    [[nodiscard]] std::vector<QString> told(const std::vector<QString>& english) const;
    [[nodiscard]] double toDevice(double points) const { return points * writer_.resolution() / 72.0; }
    [[nodiscard]] QFont font(double size, bool strong = false) const;
    [[nodiscard]] QFontMetricsF metrics(const QFont& font) const { return QFontMetricsF(font, painter_.device()); }
    [[nodiscard]] double lineHeight(const QFont& font) const { return metrics(font).height() * 1.12; }
    [[nodiscard]] QStringList lines(const QString& text, const QFont& font, double width) const;
    /// Room for `height` and the headings that wait: else a new page. Then the headings are written.
    void begin(double height);
    void ensure(double height); ///< a new page where the rest of this one is less
    void newPage();
    void footer();
    void write(const QString& text, const QFont& font, Ink ink, double x, double top);
    void writeLines(const QString& text, const QFont& font, Ink ink, double left, double width);
    void rule(double y, double weight);
    void tableRow(const std::vector<TableColumn>& columns, const std::vector<double>& widths,
                  const std::vector<QStringList>& cells);
    void tableHead(const std::vector<TableColumn>& columns, const std::vector<double>& widths);
    [[nodiscard]] double roomOf(const std::vector<double>& widths, std::size_t column) const;
    /// By the columns' shares, but no narrower than the heading and the longest word, as far as others have room.
    [[nodiscard]] std::vector<double> widthsOf(const std::vector<TableColumn>& columns,
                                               const std::vector<QStringList>& rows) const;

    QPdfWriter& writer_;
    QPainter painter_;
    Wording wording_;
    QString footer_; ///< told
    int pageCount_;
    int page_ = 1;
    std::vector<Heading> waiting_;
    double left_ = 0;
    double right_ = 0;
    double top_ = 0;
    double bottom_ = 0;
    double y_ = 0;
};

} // namespace fleetrung::pdf
