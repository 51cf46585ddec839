#include "app/gui/widgets/palette.h"

namespace pw::gui {

namespace {

Palette light() {
    Palette p;
    p.tone = Tone::Light;
    p.ground = "#E8E5DD";
    p.panel = "#F4F2EC";
    p.field = "#FFFFFF";
    p.ink = "#1B2226";
    p.muted = "#515A5F";
    p.rule = "#CBC7BB";
    p.strongRule = "#84877F";
    p.steel = "#CED5D7";
    p.steelEdge = "#2C363B";
    p.scrap = "#DEDACF";
    p.scrapEdge = "#827E72";
    p.touch = "#2A4A97";
    p.onTouch = "#FFFFFF";
    p.touchSoft = "#DDE3F1";
    p.holds = {"#0B655D", "#FFFFFF", "#0B655D"};
    p.thin = {"#F0B83A", "#1B2226", "#745200"};
    p.sets = {"#C2491A", "#FFFFFF", "#A93C11"};
    p.breaks = {"#571034", "#FFFFFF", "#571034"};
    p.incomplete = {p.panel, "#515A5F", "#515A5F"};
    return p;
}

Palette dark() {
    Palette p;
    p.tone = Tone::Dark;
    p.ground = "#14181A";
    p.panel = "#1C2225";
    p.field = "#283034";
    p.ink = "#ECEAE4";
    p.muted = "#A9B1B4";
    p.rule = "#39434A";
    p.strongRule = "#6C777C";
    p.steel = "#414C52";
    p.steelEdge = "#C3CCCF";
    p.scrap = "#232A2D";
    p.scrapEdge = "#69747A";
    p.touch = "#9BB8F5";
    p.onTouch = "#111A2E";
    p.touchSoft = "#2A3856";
    p.holds = {"#5CCFBE", "#0E1F1C", "#5CCFBE"};
    p.thin = {"#F6CC62", "#241B05", "#F6CC62"};
    p.sets = {"#EC6A33", "#1E0B03", "#FF9A6B"};
    p.breaks = {"#C9297B", "#FFFFFF", "#F58BB9"};
    p.incomplete = {p.panel, "#AEB7BB", "#AEB7BB"};
    return p;
}

} // namespace

const VerdictColours& Palette::of(verdict::Grade grade) const {
    switch (grade) {
    case verdict::Grade::Holds:
        return holds;
    case verdict::Grade::Thin:
        return thin;
    case verdict::Grade::Sets:
        return sets;
    case verdict::Grade::Breaks:
        return breaks;
    case verdict::Grade::Incomplete:
        break;
    }
    return incomplete;
}

QPalette Palette::forQt() const {
    QPalette q;
    q.setColor(QPalette::Window, panel);
    q.setColor(QPalette::WindowText, ink);
    q.setColor(QPalette::Base, field);
    q.setColor(QPalette::AlternateBase, panel);
    q.setColor(QPalette::Text, ink);
    q.setColor(QPalette::PlaceholderText, muted);
    q.setColor(QPalette::Button, panel);
    q.setColor(QPalette::ButtonText, ink);
    q.setColor(QPalette::BrightText, field);
    q.setColor(QPalette::Highlight, touch);
    q.setColor(QPalette::HighlightedText, onTouch);
    q.setColor(QPalette::Link, touch);
    q.setColor(QPalette::ToolTipBase, field);
    q.setColor(QPalette::ToolTipText, ink);
    q.setColor(QPalette::Light, field);
    q.setColor(QPalette::Midlight, panel);
    q.setColor(QPalette::Mid, strongRule);
    q.setColor(QPalette::Dark, strongRule);
    q.setColor(QPalette::Shadow, steelEdge);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        q.setColor(QPalette::Disabled, role, strongRule);
    return q;
}

const Palette& paletteFor(Tone tone) {
    static const Palette kLight = light(), kDark = dark();
    return tone == Tone::Dark ? kDark : kLight;
}

} // namespace pw::gui
