#include "app/gui/views/cut_picture.h"

#include "app/gui/models/sentence.h"

#include <cmath>
#include <QCoreApplication>

namespace pw::gui {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::CutPicture)
};

QString spoken(const exchange::CutPath& path, units::System system) {
    const QString length = local(units::show(units::Length::fromMm(path.cutLength), system));
    const QString time = path.seconds < 60
                             ? Words::tr("%1 s").arg(local(units::number(std::round(path.seconds), 2)))
                             : Words::tr("%1 min").arg(local(units::number(path.seconds / 60, 2)));
    return Words::tr("Pierces: %1. Cut: %2, about %3.").arg(path.burns.size()).arg(length, time);
}

} // namespace

CutPicture::Arrow arrowAlong(const shape::Loop& loop, double share) {
    double left = share * shape::perimeter(loop);
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const shape::Side side = loop.side(i);
        const double length = side.length();
        if (left <= length || i + 1 == loop.size()) {
            const double t = length > 0 ? std::min(left / length, 1.0) : 0;
            return {side.pointAt(t), side.tangentAt(t)};
        }
        left -= length;
    }
    return {};
}

CutPicture cutPictureOf(const util::Result<exchange::CutPath>& path, units::System system) {
    CutPicture picture;
    if (!path) {
        picture.trouble = asSentence(path.problem().message);
        return picture;
    }
    const exchange::Burn* before = nullptr;
    int order = 0;
    for (const auto& burn : path->burns) {
        if (before)
            picture.lines.push_back({CutPicture::Kind::Travel, {{before->end(), burn.pierce(), 0}}});
        picture.lines.push_back({CutPicture::Kind::Lead, {burn.leadIn}});
        CutPicture::Line cut{CutPicture::Kind::Cut, {}};
        for (std::size_t i = 0; i < burn.loop.size(); ++i)
            cut.sides.push_back(burn.loop.side(i));
        picture.lines.push_back(std::move(cut));
        if (burn.leadOut)
            picture.lines.push_back({CutPicture::Kind::Lead, {*burn.leadOut}});
        for (const double share : {0.25, 0.75})
            picture.arrows.push_back(arrowAlong(burn.loop, share));
        picture.pierces.push_back({burn.pierce(), ++order});
        before = &burn;
    }
    for (const auto& hole : path->drilled)
        picture.drills.push_back({hole.centre, hole.diameter.mm()});
    picture.words = spoken(*path, system);
    return picture;
}

} // namespace pw::gui
