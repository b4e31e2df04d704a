#include "cli/asked.hpp"

#include "exchange/exercises/exercise_file.hpp"

namespace gusset::cli {

std::vector<MemberId> allMembers(const Truss& truss) {
    std::vector<MemberId> members;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        members.push_back({static_cast<int>(i)});
    }
    return members;
}

Outcome<Exercise> askedOf(const Truss& truss) {
    if (!truss.exercise.empty()) {
        return readExercise(truss);
    }
    Exercise everything;
    everything.questions = {{AskReactions{}, 0}, {AskForces{allMembers(truss)}, 0}};
    return everything;
}

} // namespace gusset::cli
