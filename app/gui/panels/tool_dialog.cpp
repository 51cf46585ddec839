#include "app/gui/panels/tool_dialog.h"

#include "app/gui/models/fields.h"
#include "app/gui/models/sentence.h"
#include "app/gui/panels/field_editor.h"
#include "app/gui/widgets/field_flow.h"
#include "app/gui/widgets/slim_scroll_area.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/verdict_head.h"
#include "app/gui/widgets/word_button.h"

#include <array>
#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

namespace pw::gui {

namespace {

/// What of a tool decides whether it does.
constexpr std::array kAsked{"plate.outline.shape",  "plate.outline.diameter", "plate.outline.length",
                            "plate.outline.width",  "plate.thickness",        "plate.steel",
                            "plate.bore",           "stations.count",         "stations.circle",
                            "stations.access_hole", "screw.washer_outside",   "cutting.process"};

std::vector<Field> fieldsOf(const jobfile::Tree& tree) {
    std::vector<Field> fields;
    for (const char* path : kAsked)
        for (const auto& group : fieldGroups(tree))
            for (const auto& field : group.fields)
                if (field.path == path && field.appliesTo(tree))
                    fields.push_back(field);
    return fields;
}

/// As a report, so that it is worked out where checks are: off the window's thread, the newest first.
engine::Report asReport(const engine::OtherUse& use) {
    engine::Report report;
    report.grade = use.fits ? use.grade : verdict::Grade::Breaks;
    report.reason = use.reason;
    report.assumptions = use.reasons;
    report.weakest = use.fits ? "fits" : "";
    return report;
}

} // namespace

ToolDialog::ToolDialog(const Document& part, units::System system, ToolFunction tryTool,
                       const Questions& questions, QWidget* parent)
    : QDialog(parent), m_units(system),
      m_checker([tryTool = std::move(tryTool), job = part.job()](const job::Job& tool,
                                                                 const engine::CheckOptions& options) {
          return asReport(tryTool(tool, job, tool.title, options));
      }),
      m_flow(new FieldFlow), m_head(new VerdictHead(this)), m_remarks(new TextBlock(Type::Sentence)) {
    setWindowTitle(tr("Try a tool you have"));
    dress(*this);
    const Look& look = Look::now();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, look.px(12));
    column->setSpacing(look.px(8));
    column->addWidget(m_head);
    const auto padded = [&](QWidget* widget, int stretch) {
        auto* row = new QHBoxLayout;
        row->setContentsMargins(look.px(16), 0, look.px(16), 0);
        row->addWidget(widget);
        column->addLayout(row, stretch);
    };
    padded(m_remarks, 0);
    auto* words = new TextBlock(Type::Sentence, &Palette::muted);
    words->setText(tr("The tool's own figures. The job that is open stays as it is."));
    padded(words, 0);
    auto* scroll = new SlimScrollArea(this);
    auto* inner = new QWidget; // room for the scroll bar beside the boxes
    inner->setAutoFillBackground(false);
    auto* margins = new QVBoxLayout(inner);
    margins->setContentsMargins(0, 0, look.px(14), 0);
    margins->addWidget(m_flow);
    margins->addStretch(1);
    scroll->setWidget(inner);
    padded(scroll, 1);
    auto* open = new WordButton(tr("Take the tool from its own job…"), WordButton::Style::Boxed, this);
    connect(open, &QAbstractButton::clicked, this, [this, ask = questions.openPath] {
        if (const auto file = ask ? ask(this) : std::filesystem::path(); !file.empty())
            take(file);
    });
    padded(open, 0);
    resize(look.px(420), look.px(640));

    connect(&m_checker, &Checker::answered, this,
            [this](quint64 revision, const std::shared_ptr<const engine::Report>& report) {
                if (revision == m_tool.revision())
                    show(*report);
            });
    connect(&m_checker, &Checker::slow, m_head, &VerdictHead::setBusy);
    connect(&m_checker, &Checker::failed, this, [this](quint64, const QString& what) {
        m_head->setBusy(-1, {});
        m_head->setVerdict(verdict::Grade::Incomplete, tr("It could not be worked out: %1").arg(what));
    });
    connect(&m_tool, &Document::changed, this, &ToolDialog::toolChanged);
    m_head->setVerdict(verdict::Grade::Incomplete, tr("Working it out."));
    m_tool.startNew(part.tree());
}

ToolDialog::~ToolDialog() {
    for (auto* editor : m_editors)
        delete editor;
    m_tool.undoStack().blockSignals(true);
}

void ToolDialog::paintEvent(QPaintEvent*) {
    QPainter(this).fillRect(rect(), Look::now().colours().panel);
}

void ToolDialog::build() {
    const auto fields = fieldsOf(m_tool.tree());
    std::string asked;
    for (const auto& field : fields)
        asked += field.path + ';';
    if (asked == m_asked)
        return;
    m_asked = asked;
    for (auto* editor : m_editors)
        editor->deleteLater();
    m_editors.clear();
    m_flow->clear();
    for (const auto& field : fields) {
        auto* editor = new FieldEditor(m_tool, field, *m_flow, this);
        editor->setUnits(m_units);
        m_editors.push_back(editor);
    }
}

void ToolDialog::toolChanged() {
    build();
    for (auto* editor : m_editors)
        editor->refresh(nullptr);
    job::Job tool = m_tool.job();
    tool.preferred = m_units;
    m_checker.ask(tool, m_tool.revision());
}

void ToolDialog::show(const engine::Report& report) {
    m_head->setBusy(-1, {});
    QStringList lines;
    for (const auto& reason : report.assumptions)
        lines << asSentence(reason);
    if (report.weakest.empty())
        m_head->setVerdict(verdict::Grade::Breaks, tr("It does not go on this part."));
    else
        m_head->setVerdict(report.grade, local(report.reason));
    m_remarks->setText(lines.join(QLatin1Char('\n')));
    m_remarks->setVisible(!lines.isEmpty());
}

QString ToolDialog::remarks() const {
    return m_remarks->text();
}

void ToolDialog::take(const std::filesystem::path& file) {
    if (const auto opened = m_tool.open(file); !opened) {
        m_remarks->setText(QString::fromStdString(opened.problem().message));
        m_remarks->setVisible(true);
    }
}

} // namespace pw::gui
