#include "hand/virtual_work/release_trial.hpp"

#include "hand/virtual_work/virtual_work.hpp"

#include <algorithm>

namespace gusset {

namespace {

// A redundant of size 1: a cut member pulls its joints together, a reaction acts along its own
// direction.
std::vector<Vec2> unitForces(const ReleasedFrom& given, const Release& release) {
    std::vector<Vec2> forces(given.truss.joints.size());
    if (const auto* cut = std::get_if<MemberId>(&release.of)) {
        const Member& member = given.truss.members[cut->at()];
        const Vec2 along = given.structure.bars[cut->at()].along;
        forces[member.a.at()] = along;
        forces[member.b.at()] = -along;
    } else {
        const std::size_t let = std::get<RestraintId>(release.of).at();
        const Restraint& held = given.structure.restraints[let];
        forces[held.joint.at()] = held.along;
    }
    return forces;
}

Difficulty difficultyOf(const Working& working) {
    Difficulty difficulty = Difficulty::Joints;
    for (const Step& step : working.steps) {
        if (step.kind == StepKind::Simultaneous) {
            return Difficulty::Together;
        }
        if (step.kind == StepKind::SectionIntro) {
            difficulty = Difficulty::Sections;
        }
    }
    return difficulty;
}

void beginUnit(TrialTask& task) {
    Truss& truss = task.trial.unitTrusses[task.unit];
    truss = underForces(task.released, unitForces(task.given, task.trial.releases[task.unit]));
    truss.units.force = ForceUnit::Plain;
    task.atWork.emplace(truss, LoadChoice{}, solve(truss));
    ++task.unit;
}

} // namespace

ReleasedFrom releasedFrom(const Truss& strained, const LoadChoice& choice) {
    ReleasedFrom given{strained, structureOf(strained), jointLoads(strained, choice)};
    const double unit = toNewton(strained.units.force);
    for (Vec2& load : given.loads) {
        load = {load.x / unit, load.y / unit};
    }
    return given;
}

void TrialTask::begin(const std::vector<Release>& releases) {
    trial.releases = releases;
    trial.givenTruss = underForces(released, given.loads);
    atWork.emplace(trial.givenTruss, LoadChoice{}, solve(trial.givenTruss));
}

bool TrialTask::advance() {
    if (!atWork->advance()) {
        return false;
    }
    Working& working = unit == 0 ? trial.givenWorking : trial.unitWorkings[unit - 1];
    working = atWork->take();
    complete = working.complete;
    trial.difficulty = std::max(trial.difficulty, difficultyOf(working));
    if (!complete || unit == trial.releases.size()) {
        return true;
    }
    beginUnit(*this);
    return false;
}

} // namespace gusset
