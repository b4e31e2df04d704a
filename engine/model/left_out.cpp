// What this version reads and keeps and does not compute. Each line goes when its computation
// comes.

#include "model/validate.hpp"

#include <algorithm>

namespace gusset {

namespace {

template <class What>
bool hasLoad(const Truss& truss) {
    return std::any_of(truss.loads.begin(), truss.loads.end(),
                       [](const Load& load) { return std::holds_alternative<What>(load.what); });
}

bool hasSettlement(const Truss& truss) {
    return std::any_of(truss.supports.begin(), truss.supports.end(), [](const Support& it) {
        return it.settleAlong != 0 || it.settle != Vec2{};
    });
}

bool hasStrain(const Truss& truss) {
    return std::any_of(truss.members.begin(), truss.members.end(),
                       [](const Member& it) { return it.warming != 0 || it.misfit != 0; });
}

} // namespace

Issues leftOut(const Truss& truss) {
    Issues notes;
    const auto note = [&](const char* at, const char* says) {
        notes.push_back({IssueCode::NotComputed, at, says});
    };
    if (hasLoad<SelfWeight>(truss)) {
        note("loads", "self-weight is kept, and left out of account");
    }
    if (hasSettlement(truss)) {
        note("supports", "settlements are kept; displacements are not computed yet");
    }
    if (hasStrain(truss)) {
        note("members", "temperature and misfit are kept; displacements are not computed yet");
    }
    if (!truss.moving.empty()) {
        note("moving", "moving loads are kept, and left out of account");
    }
    return notes;
}

} // namespace gusset
