// Runs the page tests. A warning of QML at run time (a binding loop, a missing property) fails them as a wrong value
// does.
#include <cstdio>

#include <QQmlContext>
#include <QQmlEngine>
#include <QtQuickTest/quicktest.h>

#include "driver.hpp"
#include "mobile/fonts/fonts.hpp"

namespace
{

class Setup : public QObject
{
    Q_OBJECT

public:
    [[nodiscard]] int warnings() const { return warnings_; }

public slots:
    void qmlEngineAvailable(QQmlEngine* engine)
    {
        fleetrung::fonts::bring();
        driver_.speakThrough(engine);
        engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
        engine->rootContext()->setContextProperty(QStringLiteral("driver"), &driver_);
        connect(engine, &QQmlEngine::warnings, this, [this](const QList<QQmlError>& list) {
            for (const auto& warning : list)
                std::fprintf(stderr, "QML warning: %s\n", qPrintable(warning.toString()));
            warnings_ += static_cast<int>(list.size());
        });
    }

private:
    fleetrung::tests::Driver driver_;
    int warnings_ = 0;
};

} // namespace

int main(int argc, char* argv[])
{
    QTEST_SET_MAIN_SOURCE_PATH
    Setup setup;
    const int failed = quick_test_main_with_setup(argc, argv, "pages", QUICK_TEST_SOURCE_DIR, &setup);
    if (setup.warnings() > 0)
        std::fprintf(stderr, "%d warning(s) of QML while the pages ran\n", setup.warnings());
    return failed != 0 ? failed : setup.warnings() > 0;
}

#include "main.moc"
