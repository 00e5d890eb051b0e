// What the import sheet shows: the file as it was recognised, what is open, the rows as they will be read, and what an
// import would do. It decides nothing that engine/importing can say; the program does what it asks (app_import.cpp).
#pragma once

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "mobile/views/import_work.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

class ImportViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(Step step READ step NOTIFY changed FINAL)
    Q_PROPERTY(bool working READ working NOTIFY changed FINAL)
    Q_PROPERTY(bool sets READ sets NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* files READ files CONSTANT FINAL)
    Q_PROPERTY(QString folder READ folder NOTIFY changed FINAL)
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(QStringList remarks READ remarks NOTIFY changed FINAL)
    Q_PROPERTY(QString question READ question NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* columns READ columns CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* names READ names CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* lifts READ lifts CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* preview READ preview CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* bad READ bad CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* choices READ choices CONSTANT FINAL)
    Q_PROPERTY(bool dayAsked READ dayAsked NOTIFY changed FINAL)
    Q_PROPERTY(QString dayExample READ dayExample NOTIFY changed FINAL) ///< how a day is typed here
    Q_PROPERTY(QString dayProblem READ dayProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    Q_PROPERTY(QString addText READ addText NOTIFY changed FINAL)
    Q_PROPERTY(bool canAdd READ canAdd NOTIFY changed FINAL)
    Q_PROPERTY(QString progressText READ progressText NOTIFY progressed FINAL)
    Q_PROPERTY(QString pickTitle READ pickTitle NOTIFY picksChanged FINAL)
    Q_PROPERTY(QString pickDetail READ pickDetail NOTIFY picksChanged FINAL)
    Q_PROPERTY(bool pickHasDistance READ pickHasDistance NOTIFY picksChanged FINAL)
    Q_PROPERTY(QString pickDistance READ pickDistance NOTIFY picksChanged FINAL)
    Q_PROPERTY(fleetrung::views::Rows* picks READ picks CONSTANT FINAL)

public:
    enum Step { ChooseFile, Look, Working };
    Q_ENUM(Step)

    explicit ImportViewModel(Preferences* preferences, QObject* parent = nullptr);

    Q_INVOKABLE void begin(bool sets);
    Q_INVOKABLE void lookForFiles();
    Q_INVOKABLE void openFile(const QString& name);
    Q_INVOKABLE void backToFiles();
    /// One of `choices` ("decimal", "dates", "rows", "splits", "load", "start", "timing") is answered.
    Q_INVOKABLE void answer(const QString& key, int index);
    Q_INVOKABLE void setDay(const QString& text);
    /// What is going to be picked: the meaning of a column, who a name is, what lift a word is.
    Q_INVOKABLE void openColumn(int column);
    Q_INVOKABLE void openName(int name);
    Q_INVOKABLE void openLift(int lift);
    Q_INVOKABLE void pick(const QString& key);
    /// Where the gate of the open column stands; false where that is no distance.
    Q_INVOKABLE bool setDistance(const QString& metres);
    Q_INVOKABLE void add();
    Q_INVOKABLE void cancel();

    void showFiles(const QStringList& names, const QString& folder);
    void showTable(std::shared_ptr<const importing::Table> table);
    void showSeen(const ImportJob& job, const ImportSeen& seen);
    void showFailure(const Error& error);
    /// What was added: kept as the mapping of files with that header.
    void showAdded(const ImportSeen& seen);

    Step step() const { return step_; }
    bool working() const { return step_ == Working; }
    [[nodiscard]] bool awaits(int serial) const { return working() && serial == serial_; }
    bool sets() const { return kind_ == importing::Kind::Sets; }
    Rows* files() { return &fileRows_; }
    QString folder() const { return folder_; }
    QString fileName() const { return fileName_; }
    QString problem() const { return problem_; }
    QStringList remarks() const;
    QString question() const;
    Rows* columns() { return &columnRows_; }
    Rows* names() { return &nameRows_; }
    Rows* lifts() { return &liftRows_; }
    Rows* preview() { return &previewRows_; }
    Rows* bad() { return &badRows_; }
    Rows* choices() { return &choiceRows_; }
    bool dayAsked() const;
    QString dayExample() const { return preferences_->units().dayExample(); }
    QString dayProblem() const { return dayProblem_; }
    QString summary() const;
    QString addText() const;
    bool canAdd() const;
    QString progressText() const;
    QString pickTitle() const { return pickTitle_; }
    QString pickDetail() const { return pickDetail_; }
    bool pickHasDistance() const;
    QString pickDistance() const;
    Rows* picks() { return &pickRows_; }

signals:
    void changed();
    void progressed();
    void picksChanged();
    void filesAsked();
    /// The answer counts while `awaits` says so of the same serial: the file may have been stopped, another opened
    /// since.
    void fileAsked(const QString& name, int serial);
    void jobAsked(const fleetrung::views::ImportJob& job, bool write);
    void added(); ///< the sheet has done its work

private:
    enum class Picking { Nothing, Column, Name, Lift };

    void ask(bool write);
    void takeMapping(const importing::Proposal& proposal);
    void showRows();
    void showColumns(const Units& units);
    void showNames();
    void showLifts();
    void showPreview(const Units& units);
    void showBad();
    void showChoices();
    void showPicks(const QString& title, const QString& detail, const QList<QVariantMap>& picks);
    [[nodiscard]] QString examples(std::size_t column) const;
    [[nodiscard]] importing::ColumnMeaning& pickedColumn() { return mapping_.columns[picked_]; }

    Preferences* preferences_;
    Step step_ = ChooseFile;
    importing::Kind kind_ = importing::Kind::Runs;
    QString folder_, fileName_, problem_, dayProblem_;
    std::shared_ptr<const importing::Table> table_;
    importing::Mapping mapping_;
    logbook::NameChoices chosenNames_;
    std::vector<importing::Remark> remarks_;
    ImportSeen seen_;
    bool fresh_ = false;
    bool checked_ = false; ///< seen_ is of the mapping as it is now
    int serial_ = 0;
    std::shared_ptr<ImportProgress> progress_;
    QTimer watch_;
    Picking picking_ = Picking::Nothing;
    std::size_t picked_ = 0;
    QString pickTitle_, pickDetail_;
    Rows fileRows_, columnRows_, nameRows_, liftRows_, previewRows_, badRows_, choiceRows_, pickRows_;
};

} // namespace fleetrung::views
