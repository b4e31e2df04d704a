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

std::optional<Sketch> questionFigure(const Writer& writer, const LoadChoice& loads,
                                     const std::vector<Question>& questions) {
    Working nothing; // of a truss that was not solved: nothing that is found can get into it
    nothing.structure = structureOf(writer.truss);
    const double newton = toNewton(writer.truss.units.force);
    for (const Vec2 load : jointLoads(writer.truss, loads)) {
        nothing.loads.push_back({load.x / newton, load.y / newton});
    }
    return givenFigure(notationOf(writer, nothing), membersInInk(writer.truss, questions));
}

} // namespace gusset
