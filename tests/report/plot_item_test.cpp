#include "mobile/plot/plot_item.hpp"

#include <QAccessible>
#include <QQmlComponent>
#include <QQmlContext>
#include <QQmlEngine>
#include <QQmlProperty>
#include <QQuickView>
#include <QtQml/qqmlextensionplugin.h>

#include <catch2/catch.hpp>

#include "mobile/plot/palette.hpp"
#include "mobile/plot/pictures.hpp"
#include "tests/report/gui_application.hpp"

Q_IMPORT_QML_PLUGIN(Fleetrung_PlotPlugin)

using namespace fleetrung;
using namespace fleetrung::plot;

namespace
{

PlotValue someStrikeLine()
{
    StrikeLineInput input;
    input.targetBand = Span{0.24, 0.30};
    input.repetitions = {{.number = 1, .timeToPeak = 0.261}, {.number = 2, .timeToPeak = 0.286}};
    PlotValue value;
    value.plot = strikeLine(input);
    return value;
}

/// A page with one picture, 360 wide, shown nowhere.
struct Page {
    QQuickView view;
    QScopedPointer<QQuickItem> root;

    explicit Page(const QByteArray& more = {})
    {
        view.engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
        QQmlComponent component(view.engine());
        component.setData("import QtQuick\nimport Fleetrung.Plot\n"
                          "PlotItem { width: 360; height: implicitHeight; dark: true; textSize: 12\n" +
                              more + "}",
                          QUrl());
        root.reset(qobject_cast<QQuickItem*>(component.create()));
        INFO(component.errorString().toStdString());
        REQUIRE(root);
        root->setParentItem(view.contentItem());
    }

    [[nodiscard]] PlotItem& item() const { return *qobject_cast<PlotItem*>(root.data()); }
};

} // namespace

TEST_CASE("a page may hold a picture, and is told its summary", "[item]")
{
    needGuiApplication();
    const Page page;
    page.item().setPlot(someStrikeLine());
    CHECK(page.item().summary().contains(QStringLiteral("Latest: 286 milliseconds, inside the target band.")));
    CHECK(page.item().property("summary").toString() == page.item().summary());
}

TEST_CASE("the item names itself for screen readers, anew with each picture", "[item]")
{
    needGuiApplication();
    const Page page;
    const auto said = [&](const char* property) {
        return QQmlProperty(page.root.data(), QLatin1String(property), qmlContext(page.root.data())).read();
    };
    page.item().setPlot(someStrikeLine());
    CHECK(said("Accessible.name").toString() == page.item().summary());
    CHECK(said("Accessible.role").toInt() == QAccessible::Graphic);
    page.item().setPlot({});
    CHECK(said("Accessible.name").toString() == page.item().summary());
}

TEST_CASE("a name given by the page is kept", "[item]")
{
    needGuiApplication();
    const Page page("Accessible.name: \"mine\"");
    page.item().setPlot(someStrikeLine());
    CHECK(QQmlProperty(page.root.data(), QStringLiteral("Accessible.name"), qmlContext(page.root.data())).read() ==
          "mine");
}

TEST_CASE("the item asks for more height as the text grows", "[item]")
{
    needGuiApplication();
    const Page page;
    page.item().setPlot(someStrikeLine());
    const double usual = page.item().implicitHeight();
    CHECK(usual > 100);
    page.item().setTextSize(24);
    CHECK(page.item().implicitHeight() > 1.5 * usual);
}

TEST_CASE("the item draws its picture", "[item]")
{
    needGuiApplication();
    Page page;
    page.item().setPlot(someStrikeLine());
    page.view.setColor(groundColour(Ground::Dark));
    page.view.resize(360, static_cast<int>(page.item().implicitHeight()));
    page.view.show();
    const auto image = page.view.grabWindow();
    REQUIRE(image.width() >= 360);
    int latest = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            latest += image.pixelColor(x, y) == shapeColour(Role::Latest, Ground::Dark) ? 1 : 0;
    CHECK(latest > 50); // the dot of the newest repetition
}
