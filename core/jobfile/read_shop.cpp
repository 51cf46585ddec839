#include "core/jobfile/sections.h"

#include "core/util/say.h"

namespace pw::jobfile {

namespace {

constexpr Word<job::Process> kProcesses[] = {{"plasma table", job::Process::PlasmaTable},
                                             {"torch table", job::Process::TorchTable},
                                             {"hand torch", job::Process::HandTorch},
                                             {"saw and drill", job::Process::SawAndDrill},
                                             {"milled", job::Process::Milled}};

constexpr Limits<units::Length> kSetLimit{units::Length::fromMm(0.001), units::Length::fromMm(50),
                                          PW_SAY("from 0.001 mm to 50 mm, for instance 0.02 mm or 1 thou")};

} // namespace

void readHeat(FieldReader& figures, job::Heat& heat) {
    figures.quantity("part", heat.part, kWarmth);
    figures.quantity("tool", heat.tool, kWarmth);
}

void readPiece(FieldReader& figures, job::PieceChoice& piece) {
    figures.text("name", piece.name);
    if (figures.has("at")) {
        job::PointXY at;
        if (figures.need("at", at))
            piece.at = at;
    } else {
        figures.acceptKey("at");
    }
    figures.quantity("turn", piece.turn, kTurn);
}

void readCutting(FieldReader& figures, job::Cutting& cutting) {
    figures.choice("process", cutting.process, kProcesses);
    figures.quantity("kerf", cutting.kerf, kSmall);
    figures.quantity("layout_error", cutting.layoutError, kSmall);
    figures.quantity("growth", cutting.growth, kSmall);
    figures.quantity("edge_margin", cutting.edgeMargin, kSmall);
}

void readWanted(FieldReader& figures, job::Wanted& wanted) {
    figures.number("margin", wanted.margin, 1, 20);
    figures.quantity("set_limit", wanted.setLimit, kSetLimit);
    figures.quantity("stamp", wanted.stamp, kForce);
}

} // namespace pw::jobfile
