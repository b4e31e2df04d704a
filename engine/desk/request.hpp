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
    std::string joint;                // a label, or empty
    std::string typed;                // an answer as typed
    int level = 1;                    // of a hint
    std::string sum;                  // of an equation that is built: "x", "y" or "moments"
    std::string about;                // the label of its centre
    std::vector<BuiltTerm> terms;
};
[[nodiscard]] Outcome<DeskRequest> readRequest(std::string_view json);

} // namespace gusset
