// The program over a filled logbook on a day of full squats, without a window.
#pragma once

#include <catch2/catch.hpp>

#include "mobile/views/app_view_model.hpp"
#include "tests/logbook/logbook_helper.hpp"

namespace Catch
{
template <> struct StringMaker<QString> {
    static std::string convert(const QString& text) { return text.toStdString(); }
};
} // namespace Catch

namespace fleetrung::views
{

class PhoneOverLogbook
{
public:
    PhoneOverLogbook()
        : filled_(fill()), log_({folder_.paths().rows, folder_.paths().captures}, logbook::test::numbered(0xD0001)),
          app_(&preferences_, &log_, DayClock(logbook::test::date("2025-12-01")))
    {
        preferences_.setLocale(QLocale(QLocale::English, QLocale::UnitedKingdom));
        app_.refresh();
        log_.settle();
    }

    AppViewModel& app() { return app_; }
    void settle() { log_.settle(); }
    void undo()
    {
        app_.undo();
        settle();
    }

private:
    bool fill()
    {
        auto logbook = logbook::test::openLogbook(folder_);
        logbook::test::fill(logbook);
        return true;
    }

    logbook::test::Folder folder_;
    bool filled_; ///< before the program opens it
    Preferences preferences_;
    LogThread log_;
    AppViewModel app_;
};

} // namespace fleetrung::views
