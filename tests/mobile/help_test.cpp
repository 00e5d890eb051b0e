// Every number explains itself: nothing that a page may ask is missing, and no text is empty.
#include "bench_day.hpp"

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>
#include <QSet>

#include "mobile/views/help.hpp"
#include "mobile/views/help_texts.hpp"

using namespace fleetrung::views;

namespace
{

/// Topics that the pages ask for: the strings of every `topics:` binding.
QSet<QString> askedByPages()
{
    static const QRegularExpression binding(QStringLiteral("topics: (.*)"));
    static const QRegularExpression word(QStringLiteral("\"([a-z-]+)\""));
    QSet<QString> asked;
    for (QDirIterator file(QStringLiteral(FLEETRUNG_SOURCE "/qml"), {QStringLiteral("*.qml")}, QDir::Files,
                           QDirIterator::Subdirectories);
         file.hasNext();) {
        QFile page(file.next());
        REQUIRE(page.open(QIODevice::ReadOnly));
        for (auto line = binding.globalMatch(QString::fromUtf8(page.readAll())); line.hasNext();)
            for (auto topic = word.globalMatch(line.next().captured(1)); topic.hasNext();)
                asked.insert(topic.next().captured(1));
    }
    BenchDay day;
    for (const bool large : {false, true}) { // the set asks through its view model
        Preferences preferences;
        BenchViewModel bench(&preferences);
        bench.showDay(dayWithHalfSquat());
        bench.openLift(QStringLiteral("squat"));
        bench.setVelocityIsLarge(large);
        for (const auto& topic : bench.numberTopics() + bench.besideTopics())
            asked.insert(topic);
    }
    return asked;
}

} // namespace

TEST_CASE("Every topic that a page asks for is explained, and each one is asked for somewhere", "[help]")
{
    const auto asked = askedByPages();
    CHECK(asked.size() > 15);
    for (const auto& topic : asked) {
        CAPTURE(topic.toStdString());
        CHECK(helpText(topic).has_value());
    }
    for (const auto& topic : helpTopics()) {
        CAPTURE(topic.toStdString());
        CHECK(asked.contains(topic));
    }
}

TEST_CASE("Each explanation says what it is, where it comes from, and how sure it is", "[help]")
{
    for (const auto& topic : helpTopics()) {
        CAPTURE(topic.toStdString());
        const auto text = helpText(topic);
        REQUIRE(text);
        CHECK_FALSE(text->title.isEmpty());
        CHECK(text->what.size() > 30);
        CHECK_FALSE(text->source.isEmpty());
        CHECK_FALSE(text->sure.isEmpty());
    }
}

TEST_CASE("Asking shows the topics in their order; what there is not asks nothing", "[help]")
{
    Help help;
    int asked = 0;
    QObject::connect(&help, &Help::asked, [&asked] { ++asked; });
    help.ask({QStringLiteral("velocity-loss"), QStringLiteral("left")});
    CHECK(asked == 1);
    REQUIRE(help.entries()->count() == 2);
    CHECK(help.entries()->all()[0].value(QStringLiteral("title")).toString() == QStringLiteral("Velocity loss"));
    CHECK(help.questionOf(QStringLiteral("velocity-loss")) == QStringLiteral("What is this: Velocity loss?"));
    help.ask({QStringLiteral("no such number")});
    CHECK(asked == 1);
    CHECK(help.entries()->count() == 2);
}
