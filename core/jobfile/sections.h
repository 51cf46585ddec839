#pragma once

#include "core/jobfile/field_reader.h"

/// How each section of the job file is read: the keys, the limits, and what must agree within the section.
/// One function a section, several a file. Those that return bool read a row and say whether it may be kept.
namespace pw::jobfile {

inline constexpr int kMostStations = 200;
inline constexpr std::size_t kMostHoles = 500;
inline constexpr std::size_t kMostCorners = 2000;

inline constexpr Word<job::ThreadCondition> kThreadConditions[] = {
    {"good", job::ThreadCondition::Good},
    {"worn", job::ThreadCondition::Worn},
    {"rusty", job::ThreadCondition::Rusty},
    {"damaged", job::ThreadCondition::Damaged}};

void readStations(FieldReader& figures, job::Stations& stations);
void readLoad(FieldReader& figures, job::Load& load);
bool readSpring(FieldReader& figures, job::Spring& spring);
void readTravel(FieldReader& figures, job::Travel& travel);

void readPlate(FieldReader& figures, job::Plate& plate);
void readOutline(FieldReader& figures, job::Outline& outline);
void readHoleForm(FieldReader& figures, job::HoleForm& form);
bool readHole(FieldReader& figures, job::ExtraHole& hole);
bool readObstacle(FieldReader& figures, job::Obstacle& obstacle);
void readCentre(FieldReader& figures, job::Centre& centre);

void readScrew(FieldReader& figures, job::Screw& screw);
void readRam(FieldReader& figures, job::Ram& ram);
void readBack(FieldReader& figures, job::Back& back);
void readLegs(FieldReader& figures, job::Legs& legs);
void readHub(FieldReader& figures, job::Hub& hub);

void readHeat(FieldReader& figures, job::Heat& heat);
void readPiece(FieldReader& figures, job::PieceChoice& piece);
void readCutting(FieldReader& figures, job::Cutting& cutting);
void readWanted(FieldReader& figures, job::Wanted& wanted);

} // namespace pw::jobfile
