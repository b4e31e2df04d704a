#include "cli/asked.hpp"

#include "classroom/exercise/answers.hpp"
#include "exchange/exercises/exercise_file.hpp"

namespace gusset::cli {

Outcome<Exercise> askedOf(const Truss& truss) {
    if (!truss.exercise.empty()) {
        return readExercise(truss);
    }
    Exercise everything;
    everything.questions = {{AskReactions{}, 0}, {AskForces{allMembers(truss)}, 0}};
    return everything;
}

std::string exerciseAddress(const Arguments& arguments, const std::string& link) {
    const std::string page = arguments.valueOf("--address");
    return (page.empty() ? page : page + "exercise/") + "#" + link;
}

} // namespace gusset::cli
