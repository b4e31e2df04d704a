#pragma once
// What is shown in a lesson, in which order, and what its author puts between.

#include "core/ids.hpp"
#include "model/truss/truss.hpp"
#include "statics/moving/influence.hpp"

#include <string>
#include <variant>
#include <vector>

namespace gusset {

struct ShowAll {}; // reactions, then the force of every member
struct ShowMember {
    MemberId member{};
};
struct ShowCut {
    std::vector<MemberId> members{};
};
struct ShowDisplacement {
    JointId joint{};
    bool horizontal = false;
};
struct ShowForceMethod {};
struct ShowPolygon {};
struct ShowInfluence {
    Effect effect{};
    std::vector<JointId> path{};
};
using Shown = std::variant<ShowAll, ShowMember, ShowCut, ShowDisplacement, ShowForceMethod,
                           ShowPolygon, ShowInfluence>;

// Put before a step. With a member, the room or the reader has to say its force before going on.
struct LessonPause {
    std::string before; // the step's subject; empty: after the last one
    std::string says;
    MemberId asks{}; // none: a remark
};

struct LessonItem {
    Shown shown{};
    std::vector<std::string> without{}; // subjects of steps that are left out
    std::vector<std::string> joined{};  // of those that go on with the step before them
    std::vector<JointId> order{};       // of joints: taken before all others (ShowAll, ShowMember)
    std::vector<LessonPause> pauses{};
};

struct LessonPlan {
    std::vector<LessonItem> items{};
    bool hidesValues = false; // on the truss, throughout
};

} // namespace gusset
