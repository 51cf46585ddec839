#include "app/gui/help/help_pages.h"

#include "app/gui/models/fields.h"
#include "app/gui/models/new_job.h"
#include "app/gui/settings/settings.h"

#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>
#include <QSet>

namespace pw::gui {

namespace {

class HelpWords {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::HelpPages)

public:
    static std::vector<HelpPage> pages() {
        return {{QStringLiteral("first_job"), tr("A first job")},
                {QStringLiteral("measuring"), tr("How to measure")},
                {QStringLiteral("checks"), tr("What each check means")},
                {QStringLiteral("assumed"), tr("What is assumed")},
                {QStringLiteral("cautions"), tr("Cautions")},
                {QStringLiteral("window"), tr("The window")}};
    }
    static QString measuringHead() {
        return tr("What each field asks for and how to get it at the bench. Click a name to open its field.");
    }
    static QString spring() { return tr("One spring"); }
    static QString forPulls() { return tr("When something is pulled off"); }
};

/// Every kind of job together knows every field.
std::vector<jobfile::Tree> everyKind() {
    std::vector<jobfile::Tree> jobs;
    for (const NewJob kind :
         {NewJob::CompressRing, NewJob::CompressBar, NewJob::PullBolts, NewJob::PullStrongback})
        jobs.push_back(newJob(kind, units::System::Metric));
    return jobs;
}

QString labelOf(const QString& path) {
    const std::string wanted = path.toStdString();
    for (const auto& job : everyKind()) {
        for (const auto& group : fieldGroups(job))
            for (const auto& field : group.fields)
                if (field.path == wanted)
                    return field.label;
        const SpringFields spring = springFields(job, 0);
        std::vector<std::vector<Field>> all = spring.readings;
        all.push_back(spring.main);
        all.push_back(spring.more);
        for (const auto& fields : all)
            for (const auto& field : fields)
                if (field.path == wanted)
                    return field.label;
    }
    return path;
}

QString entryOf(const Field& field) {
    const QString path = QString::fromStdString(field.path);
    QString picture;
    if (field.sketch != Sketch::None)
        picture = QStringLiteral("<td width=\"104\"><img src=\"sketch:%1\"></td>")
                      .arg(static_cast<int>(field.sketch));
    return QStringLiteral(
               "<table cellpadding=\"4\"><tr>%1<td><a name=\"%2\"></a><b><a href=\"figure:%2\">%3</a></b>"
               "<br>%4</td></tr></table>")
        .arg(picture, path, field.label.toHtmlEscaped(), field.how.toHtmlEscaped());
}

/// Made from what the fields themselves say, so that both say the same.
QString measuring() {
    QString page =
        QStringLiteral("<h1>%1</h1><p>%2</p>")
            .arg(HelpWords::pages()[1].title.toHtmlEscaped(), HelpWords::measuringHead().toHtmlEscaped());
    QSet<QString> told;
    const auto tell = [&](const Field& field) {
        const QString key = QString::fromStdString(field.path);
        if (field.how.isEmpty() || told.contains(key))
            return QString();
        told.insert(key);
        return entryOf(field);
    };
    const auto jobs = everyKind();
    for (const auto& job : jobs)
        for (const auto& group : fieldGroups(job)) {
            QString entries;
            for (const auto& field : group.fields)
                entries += tell(field);
            if (group.id == "load") {
                const SpringFields spring = springFields(job, 0);
                for (const auto& field : spring.main)
                    entries += tell(field);
                for (const auto& reading : spring.readings)
                    for (const auto& field : reading)
                        entries += tell(field);
                for (const auto& field : spring.more)
                    entries += tell(field);
            }
            if (!entries.isEmpty())
                page += QStringLiteral("<h2>%1</h2>%2").arg(group.title.toHtmlEscaped(), entries);
        }
    return page;
}

QString textOf(const QString& name) {
    for (const QString& language : {settings::language(), QStringLiteral("en")}) {
        QFile file(QStringLiteral(":/help/%1/%2.html").arg(language, name));
        if (file.open(QIODevice::ReadOnly))
            return QString::fromUtf8(file.readAll());
    }
    return {};
}

} // namespace

std::vector<HelpPage> helpPages() {
    return HelpWords::pages();
}

QString helpPage(const QString& name) {
    if (name == QLatin1String("measuring"))
        return measuring();
    QString text = textOf(name);
    // <a href="figure:PATH">@</a> is named as its field is; <h3 id="ID"> can be gone to.
    static const QRegularExpression figure(QStringLiteral("<a href=\"figure:([^\"]+)\">@</a>"));
    for (auto match = figure.match(text); match.hasMatch(); match = figure.match(text))
        text.replace(match.capturedStart(), match.capturedLength(),
                     QStringLiteral("<a href=\"figure:%1\">%2</a>")
                         .arg(match.captured(1), labelOf(match.captured(1)).toHtmlEscaped()));
    static const QRegularExpression mark(QStringLiteral("<h3 id=\"([^\"]+)\">"));
    text.replace(mark, QStringLiteral("<h3><a name=\"\\1\"></a>"));
    return text;
}

QString helpOnCheck(const std::string& id) {
    return QStringLiteral("checks#") + QString::fromStdString(id);
}

QString helpOnField(const std::string& path) {
    // Every spring is measured as the first one is.
    static const QRegularExpression index(QStringLiteral("\\[\\d+\\]"));
    return QStringLiteral("measuring#") + QString::fromStdString(path).replace(index, QStringLiteral("[0]"));
}

} // namespace pw::gui
