#include "mobile/views/file_hand.hpp"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QSaveFile>

namespace fleetrung::views
{

FileHand folderHand(const QString& folder)
{
    FileHand hand;
    hand.last = [folder](const QString& name) {
        QFile file(QDir(folder).filePath(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    };
    hand.names = [folder](const QString& ending) {
        return QDir(folder).entryList({QStringLiteral("*") + ending}, QDir::Files, QDir::Name);
    };
    hand.place = QDir::toNativeSeparators(folder);
    hand.hand = [folder](const QString& name, const QByteArray& bytes) -> Expected<QString> {
        const QString path = QDir(folder).filePath(name);
        QSaveFile file(path); // whole or not at all
        if (!QDir().mkpath(QFileInfo(path).path()) || !file.open(QIODevice::WriteOnly) ||
            file.write(bytes) != bytes.size() || !file.commit())
            return fail(Code::StoreFailed, path.toStdString(),
                        "cannot be written: " + file.errorString().toStdString());
        return QDir::toNativeSeparators(path);
    };
    return hand;
}

QString folderName(const QString& words)
{
    static const QRegularExpression refused(QStringLiteral("[\\x00-\\x1f/\\\\:*?\"<>|]"));
    QString name = words.simplified();
    name.remove(refused);
    return name.left(120);
}

QString fileName(const QString& words, const QString& ending)
{
    return folderName(words) + QStringLiteral(".") + ending;
}

} // namespace fleetrung::views
