#pragma once
// The key "exercise" of a model file, which Truss::exercise holds as text:
//
// { "text": "Find the forces.",
//   "ask": [ "reactions", { "what": "forces", "members": [["A","B"]], "marks": 4 }, "zero-members",
//            "determinacy", { "what": "displacement", "joint": "C", "axis": "y" },
//            { "what": "influence", "path": ["A","B","C"], "member": ["B","D"], "at": "B" },
//            "steps" ],
//   "tolerance": { "percent": 1, "floor": 0.1 },  or { "figures": 3 }
//   "hints": "none" | "bodies" | "equations" | "terms",
//   "checks": "at-once" | "at-the-end",
//   "case": "wind",  or "combination"
//   "variant": 7, "seed": "12345" }
//
// A question that needs no more than its name may be a word alone. "forces" without members asks
// for all of them. A displacement is in the model's displacement units, positive along +x or up; an
// influence ordinate is the force of the member, tension positive, under 1 downward at the joint.

#include "classroom/exercise/exercise.hpp"
#include "core/outcome.hpp"

#include <array>
#include <string>
#include <string_view>

namespace gusset {

inline constexpr std::array<std::string_view, 4> kHintWords{"none", "bodies", "equations", "terms"};

// Places of issues begin with "exercise". An issue too if the truss has none.
[[nodiscard]] Outcome<Exercise> readExercise(const Truss&);

// The same; of a truss that asks nothing, all reactions and all member forces.
[[nodiscard]] Outcome<Exercise> askedOf(const Truss&);

// The JSON text for Truss::exercise.
[[nodiscard]] std::string exerciseText(const Truss&, const Exercise&);

// Identifies a truss with its question, whatever its title and its class settings: eight
// hexadecimal digits. Answers carry it.
[[nodiscard]] std::string exerciseMark(const Truss&);

} // namespace gusset
