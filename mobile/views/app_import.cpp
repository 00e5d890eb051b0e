// The part of the program behind the import: files, the work on the logbook's thread, and the undo of the whole.
#include "mobile/views/app_view_model.hpp"

namespace fleetrung::views
{

using logbook::Logbook;

void AppViewModel::connectImport()
{
    connect(&import_, &ImportViewModel::filesAsked, this, [this] {
        if (!files_.names)
            return;
        QStringList names;
        for (const auto* ending : {".csv", ".txt", ".tsv"})
            names += files_.names(QLatin1String(ending));
        import_.showFiles(names, files_.place);
    });
    connect(&import_, &ImportViewModel::fileAsked, this, [this](const QString& name, int serial) {
        using Opened = Expected<std::shared_ptr<const importing::Table>>;
        log_->run(
            this, [files = files_, name](Logbook&) { return openImport(files, name); },
            [this, serial](Opened opened) {
                if (!import_.awaits(serial))
                    return;
                if (!opened)
                    return import_.showFailure(opened.error());
                import_.showTable(std::move(*opened));
            });
    });
    connect(&import_, &ImportViewModel::jobAsked, this, [this](ImportJob job, bool write) {
        job.current = current_;
        job.now = clock_.now();
        log_->run(
            this, [job, write](Logbook& logbook) { return runImport(logbook, job, write); },
            [this, job, write](const Expected<ImportSeen>& seen) {
                if (!seen && (write || seen.error().code != Code::Cancelled))
                    import_.showFailure(seen.error());
                if (!seen)
                    return;
                if (!write)
                    return import_.showSeen(job, *seen);
                finishImport(*seen);
            });
    });
}

void AppViewModel::finishImport(const ImportSeen& seen)
{
    const int count = seen.count.added;
    import_.showAdded(seen);
    const bool runs = seen.mapping.kind == importing::Kind::Runs;
    const QString text = count == 1 ? (runs ? tr("1 run is added.") : tr("1 set is added."))
                                    : (runs ? tr("%1 runs are added.") : tr("%1 sets are added.")).arg(count);
    say(text, [receipt = seen.count.receipt](Logbook& logbook) { return logbook::undoImport(logbook, receipt); });
    refresh();
}

} // namespace fleetrung::views
