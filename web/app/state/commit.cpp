#include "app/state/commit.hpp"

namespace gusset {

bool commitOrSay(const Outcome<Edit>& edit, Actions& actions) {
    if (edit) {
        actions.push_back(Commit{edit.value()});
    } else {
        actions.push_back(Say{MessageKind::Problem, edit.issues().front().says});
    }
    return edit.ok();
}

} // namespace gusset
