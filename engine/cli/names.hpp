#pragma once
// Joints, members and effects as named on the command line, by the labels of joints.

#include "cli/arguments.hpp"
#include "core/outcome.hpp"
#include "hand/virtual_work/unit_load.hpp"
#include "model/truss/truss.hpp"
#include "statics/moving/influence.hpp"

#include <string_view>
#include <vector>

namespace gusset::cli {

// "A-B", either way round; labels may themselves contain hyphens.
[[nodiscard]] Outcome<MemberId> memberNamed(const Truss&, std::string_view name);
// "A-B,C-D"
[[nodiscard]] Outcome<std::vector<MemberId>> membersNamed(const Truss&, std::string_view names);

// "C:y"
struct JointAxis {
    JointId joint;
    DisplacementAxis axis = DisplacementAxis::Y;
};
[[nodiscard]] Outcome<JointAxis> jointAxisNamed(const Truss&, std::string_view name);

// "A,B,C"
[[nodiscard]] Outcome<std::vector<JointId>> pathNamed(const Truss&, std::string_view names);

// "member:B-C", "reaction:A:y", "displacement:C:x"
[[nodiscard]] Outcome<Effect> effectNamed(const Truss&, std::string_view name);

// "--case ID" or "--combination ID"; neither, or a blank ID: every load.
[[nodiscard]] LoadChoice choiceOf(const Arguments&);

} // namespace gusset::cli
