#include <QQmlContext>
#include <QQmlEngine>
#include <QtQuickTest/quicktest.h>

#include "driver.hpp"

namespace
{

class Setup : public QObject
{
    Q_OBJECT

public slots:
    void qmlEngineAvailable(QQmlEngine* engine)
    {
        engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
        engine->rootContext()->setContextProperty(QStringLiteral("driver"), &driver_);
    }

private:
    fleetrung::tests::Driver driver_;
};

} // namespace

QUICK_TEST_MAIN_WITH_SETUP(pages, Setup)

#include "main.moc"
