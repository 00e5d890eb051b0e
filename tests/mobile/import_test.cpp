// The import as its sheet drives it: the whole program over a store and a folder of files.
#include <QFile>
#include <QTemporaryDir>

#include "mobile/views/app_view_model.hpp"
#include "mobile/views/new_identifier.hpp"

using namespace fleetrung;
using namespace fleetrung::views;

namespace
{

const std::string plain = "Name,Date,10 m,30 m,Wind\nAda Example,2026-03-01,1.85,4.02,0.3\n"
                          "ada example,2026-03-01,1.84,3.99,\nGuest,2026-03-01,1.95,4.20,\n"
                          "Ada Example,2026-03-01,abc,4.01,\n";

class Program
{
public:
    Program()
        : log_(store::StorePaths{folder_.filePath(QStringLiteral("a.fleetrung")).toStdString(),
                                 folder_.filePath(QStringLiteral("c.fleetrung")).toStdString()},
               newIdentifier()),
          app_(&preferences_, &log_, DayClock(*parseDate("2026-03-30")))
    {
        preferences_.setLocale(QLocale(QLocale::English, QLocale::UnitedKingdom));
        app_.handFilesTo(folderHand(folder_.path()));
        log_.run(
            &app_,
            [](logbook::Logbook& logbook) {
                store::Athlete athlete;
                athlete.name = "Ada Example";
                return logbook.addAthlete(athlete);
            },
            [](const Expected<Identifier>& added) { REQUIRE(added); });
        app_.refresh();
        settle();
    }

    ImportViewModel& open(const std::string& text, bool sets = false)
    {
        QFile file(folder_.filePath(QStringLiteral("in.csv")));
        REQUIRE(file.open(QIODevice::WriteOnly));
        file.write(text.data(), static_cast<qint64>(text.size()));
        file.close();
        imports().begin(sets);
        imports().openFile(QStringLiteral("in.csv"));
        settle();
        return imports();
    }
    ImportViewModel& imports() { return *app_.imports(); }
    AppViewModel& app() { return app_; }
    QString file(const QString& name) { return folder_.filePath(name); }
    void settle()
    {
        for (int i = 0; i < 4; ++i) // an answer may ask again
            log_.settle();
    }
    int runs()
    {
        int count = -1;
        log_.run(
            &app_,
            [](logbook::Logbook& logbook) {
                return logbook.rows().list<store::Sprint>().map(
                    [](const auto& rows) { return static_cast<int>(rows.size()); });
            },
            [&count](const Expected<int>& found) { count = found.value_or(-1); });
        settle();
        return count;
    }

private:
    QTemporaryDir folder_;
    Preferences preferences_;
    LogThread log_;
    AppViewModel app_;
};

std::string cellOf(Rows* rows, int row, const char* role)
{
    REQUIRE(rows->count() > row);
    return rows->all().at(row).value(QLatin1String(role)).toString().toStdString();
}

} // namespace

TEST_CASE("a file is recognised, counted, added and taken back", "[import]")
{
    Program program;
    auto& imports = program.open(plain);
    CHECK(imports.step() == ImportViewModel::Look);
    CHECK(imports.question().isEmpty());
    CHECK(imports.addText().toStdString() == "Add 2 runs");
    CHECK(imports.summary().toStdString() == "1 is left out · 1 bad row");
    CHECK(cellOf(imports.preview(), 0, "value") == "4.02 s");
    CHECK(cellOf(imports.preview(), 0, "title") == "Ada Example · 30 m");
    CHECK(cellOf(imports.bad(), 0, "title") == "Line 5, 10 m");
    CHECK(cellOf(imports.columns(), 2, "detail").find("Split at 10 m, in s · 1.85, 1.84") == 0);
    REQUIRE(imports.names()->count() == 3); // as they stand in the file, whatever their case
    imports.openName(2);
    imports.pick(QStringLiteral("add"));
    program.settle();
    CHECK(imports.addText().toStdString() == "Add 3 runs");
    imports.add();
    CHECK(imports.step() == ImportViewModel::Working);
    program.settle();
    CHECK(program.runs() == 3);
    CHECK(program.app().notice().toStdString() == "3 runs are added.");
    REQUIRE(program.app().noticeCanUndo());
    program.app().undo();
    program.settle();
    CHECK(program.runs() == 0);
    CHECK(program.app().squad()->athletes()->count() == 1);
}

TEST_CASE("what is open is asked, and not asked again of the next file of that kind", "[import]")
{
    Program program;
    auto& imports = program.open("Wer;Wann;Tor\nAda Example;3/2/2026;4,215\n");
    CHECK_FALSE(imports.canAdd());
    CHECK(imports.question().startsWith(QStringLiteral("Nothing to add is known")));
    const auto say = [&](int column, importing::Meaning meaning) {
        imports.openColumn(column);
        imports.pick(QString::number(static_cast<int>(meaning)));
        program.settle();
    };
    say(0, importing::Meaning::Athlete);
    say(1, importing::Meaning::Date);
    say(2, importing::Meaning::Split);
    CHECK(imports.pickHasDistance());
    CHECK_FALSE(imports.setDistance(QStringLiteral("0")));
    CHECK(imports.setDistance(QStringLiteral("30")));
    program.settle();
    CHECK(imports.question().contains(QStringLiteral("decimal mark")));
    imports.answer(QStringLiteral("decimal"), 1);
    program.settle();
    CHECK(imports.question().contains(QStringLiteral("What comes first")));
    imports.answer(QStringLiteral("dates"), 0);
    program.settle();
    CHECK(imports.question().isEmpty());
    CHECK(cellOf(imports.preview(), 0, "value") == "4.22 s"); // printed to the hundredth
    CHECK(imports.addText().toStdString() == "Add 1 run");
    imports.add();
    program.settle();
    CHECK(program.runs() == 1);

    auto& again = program.open("Wer;Wann;Tor\nAda Example;5/6/2025;4,301\n");
    CHECK(again.question().isEmpty());
    CHECK(again.addText().toStdString() == "Add 1 run");
    CHECK(again.remarks().first().toStdString() == "Read as the last file of this kind was.");
}

TEST_CASE("a file without dates or names is of one day and of the athlete shown", "[import]")
{
    Program program;
    auto& imports = program.open("Run,30 m\n1,4.21\n2,4.15\n");
    CHECK(imports.dayAsked());
    imports.setDay(QStringLiteral("2026-02-30"));
    CHECK_FALSE(imports.dayProblem().isEmpty());
    imports.setDay(QStringLiteral("2026-03-01"));
    program.settle();
    CHECK(imports.dayProblem().isEmpty());
    CHECK(cellOf(imports.names(), 0, "detail") == "Ada Example");
    CHECK(imports.addText().toStdString() == "Add 2 runs");
}

TEST_CASE("sets are added with their lift, unknown lifts are left out until one is chosen", "[import]")
{
    Program program;
    auto& imports = program.open("Name,Date,Lift,Load,Reps\nAda Example,2026-03-02,Half squat,100,5\n"
                                 "Ada Example,2026-03-02,Kniebeuge,90,5\n",
                                 true);
    CHECK(imports.question().contains(QStringLiteral("unit")));
    imports.answer(QStringLiteral("load"), 0);
    program.settle();
    CHECK(imports.addText().toStdString() == "Add 1 set");
    imports.openLift(1);
    imports.pick(QStringLiteral("full-squat"));
    program.settle();
    CHECK(imports.addText().toStdString() == "Add 2 sets");
    CHECK(cellOf(imports.preview(), 0, "value") == "5 × 100 kg");
    imports.add();
    program.settle();
    CHECK(program.app().notice().toStdString() == "2 sets are added.");
}

TEST_CASE("a file that is no table says why, and the folder is shown again", "[import]")
{
    Program program;
    auto& imports = program.open(std::string("\x00\x01\x02", 3));
    CHECK(imports.step() == ImportViewModel::ChooseFile);
    CHECK(imports.problem().startsWith(QStringLiteral("in.csv")));
    CHECK(imports.files()->count() == 1);
    imports.openFile(QStringLiteral("gone.csv"));
    program.settle();
    CHECK(imports.problem().startsWith(QStringLiteral("gone.csv")));
}

TEST_CASE("an import that is stopped has added nothing", "[import]")
{
    Program program;
    std::string text = "Name,Date,30 m\n";
    for (int i = 0; i < 20000; ++i)
        text += "Ada Example,2026-03-01," + std::to_string(4000 + i % 900) + "\n";
    auto& imports = program.open(text);
    REQUIRE(imports.canAdd());
    imports.add();
    imports.cancel(); // before the logbook's thread has come to the end
    program.settle();
    CHECK(program.runs() == 0);
    CHECK(imports.problem().toStdString() == "Stopped. Nothing was added.");
    CHECK(imports.canAdd());
}

TEST_CASE("while a file is opened the page says so, and stopping goes back to the files", "[import]")
{
    Program program;
    program.open(plain); // stands in the folder now
    auto& imports = program.imports();
    imports.begin(false);
    imports.openFile(QStringLiteral("in.csv"));
    CHECK(imports.working());
    CHECK(imports.progressText() == QStringLiteral("Reading"));
    imports.cancel();
    CHECK(imports.step() == ImportViewModel::ChooseFile);
    program.settle();
    CHECK(imports.step() == ImportViewModel::ChooseFile); // what was read is not shown any more
    imports.openFile(QStringLiteral("in.csv"));
    program.settle();
    CHECK(imports.step() == ImportViewModel::Look);
}

TEST_CASE("a file that was stopped is never taken for the one opened after it", "[import]")
{
    Program program;
    program.open("Name,Date,30 m\nAda Example,2026-03-02,4.10\n");
    QFile::copy(program.file(QStringLiteral("in.csv")), program.file(QStringLiteral("first.csv")));
    program.open(plain);
    auto& imports = program.imports();
    imports.begin(false);
    imports.openFile(QStringLiteral("first.csv"));
    imports.cancel();
    imports.openFile(QStringLiteral("in.csv")); // before the first was read
    program.settle();
    CHECK(imports.fileName() == QStringLiteral("in.csv"));
    REQUIRE(imports.step() == ImportViewModel::Look);
    CHECK(imports.bad()->count() == 1); // only the second file has a row that cannot be read
    imports.openFile(QStringLiteral("gone.csv"));
    imports.cancel();
    imports.openFile(QStringLiteral("in.csv"));
    program.settle();
    CHECK(imports.problem().isEmpty()); // of the file that is gone
    CHECK(imports.step() == ImportViewModel::Look);
}
