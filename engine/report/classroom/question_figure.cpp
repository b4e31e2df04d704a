#include "report/classroom/question_figure.hpp"

#include "report/derivation/truss_figures.hpp"

namespace gusset {

namespace {

std::vector<MemberId> membersInInk(const Truss& truss, const std::vector<Question>& questions) {
    std::vector<MemberId> asked;
    for (const Question& question : questions) {
        if (const auto* forces = std::get_if<AskForces>(&question.what);
            forces && forces->members.size() < truss.members.size()) {
            asked = forces->members;
        }
    }
    return asked;
}

} // namespace

Working workingOfNothing(const Truss& truss, const LoadChoice& loads) {
    Working nothing;
    nothing.structure = structureOf(truss);
    const double newton = toNewton(truss.units.force);
    for (const Vec2 load : jointLoads(truss, loads)) {
        nothing.loads.push_back({load.x / newton, load.y / newton});
    }
    return nothing;
}

std::optional<Sketch> questionFigure(const Writer& writer, const LoadChoice& loads,
                                     const std::vector<Question>& questions) {
    const Working nothing = workingOfNothing(writer.truss, loads);
    return givenFigure(notationOf(writer, nothing), membersInInk(writer.truss, questions));
}

} // namespace gusset
