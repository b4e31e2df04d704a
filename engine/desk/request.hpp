#pragma once
// A request to the desk, read: the model, its question and the student's answers. Private to desk.

#include "classroom/exercise/answers.hpp"
#include "classroom/practice/terms.hpp"
#include "exchange/json/json_value.hpp"
#include "model/truss/truss.hpp"

#include <optional>
#include <string>

namespace gusset {

struct DeskRequest {
    std::string wants; // the word under "do"
    Truss truss;
    std::optional<Exercise> exercise; // none: the model asks nothing
    Answers answers;                  // blank where the request brings none
    ChosenBody body{};
    bool isNarrow = false;  // the page has little room for drawings
    std::string typed{};    // an answer as typed …
    std::string typedFor{}; // … to a question of this kind; empty: a force
    int level = 1;          // of a hint
    SumKind sum{};          // of an equation that is built
    JointId about{};        // its centre
    std::vector<BuiltTerm> terms{};
    bool asksJudgement = false; // of the equation
};
[[nodiscard]] Outcome<DeskRequest> readRequest(std::string_view json);

} // namespace gusset
