// Takes pictures of the window as it is: dark, light, and in large text.
#pragma once

#include <QQuickWindow>

#include "mobile/views/app_view_model.hpp"

namespace fleetrung::app
{

/// Lets bindings, layouts and the answers of the logbook arrive.
void settle(int milliseconds = 60);

class Photographer
{
public:
    Photographer(QQuickWindow& window, views::AppViewModel& app, const QString& folder)
        : window_(window), app_(app), folder_(folder)
    {
    }

    /// The state as it is now, in the three looks.
    void take(const QString& name);
    /// The same, the page scrolled until that part of it stands at the top.
    void takePart(const QString& object, const QString& name);
    void place(int index);
    /// A part of Squad.
    void part(int index);
    /// A button, as if it was tapped.
    void tap(const QString& object);
    void openSheet(const QString& object);
    void closeSheet(const QString& object);
    /// Opens the sheet of that name, takes the picture, closes it.
    void takeSheet(const QString& object, const QString& name);
    /// The same of a sheet that lies over another.
    void takeSheetOver(const QString& below, const QString& object, const QString& name);
    /// The same of one whose function `edit` opens it on a row.
    void takeFormOver(const QString& below, const QString& object, int row, const QString& name);
    [[nodiscard]] int saved() const { return saved_; }

private:
    void save(const QString& name, views::Preferences::Appearance appearance, double textScale);
    void scrollTo(const QString& object, bool back = false);
    bool call(const QString& object, const char* method);

    QQuickWindow& window_;
    views::AppViewModel& app_;
    QString folder_;
    QString part_; ///< to scroll to before a picture is taken
    int saved_ = 0;
};

} // namespace fleetrung::app
