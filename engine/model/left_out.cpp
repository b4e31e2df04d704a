// What this version reads and keeps and does not compute. Each line goes when its computation
// comes.

#include "model/validate.hpp"

namespace gusset {

Issues leftOut(const Truss& truss) {
    Issues notes;
    if (!truss.moving.empty()) {
        notes.push_back({IssueCode::NotComputed, "moving",
                         "moving loads have no part in these results: ask for influence lines "
                         "along their path"});
    }
    return notes;
}

} // namespace gusset
