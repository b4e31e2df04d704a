#pragma once
// Parts of validate(), and how places in a model are written.

#include "core/outcome.hpp"
#include "model/truss/truss.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// "members[3]"
[[nodiscard]] inline std::string placeOf(const std::string& list, std::size_t index) {
    return list + "[" + std::to_string(index) + "]";
}

// A place as a chain of keys, turned into text only when there is something to report. Refers to
// the place that contains it, which must outlive it.
struct Place {
    const Place* within = nullptr;
    std::string_view name;
    int index = -1; // in a list

    [[nodiscard]] Place key(std::string_view inner) const { return {this, inner}; }
    [[nodiscard]] Place item(std::size_t at) const { return {within, name, static_cast<int>(at)}; }
    [[nodiscard]] std::string text() const; // "members[3].b"
};

// Whether names, and references to them, are known to be valid: then only numbers are checked.
enum class Names { Unknown, Sound };

// Only the errors of validate().
[[nodiscard]] Issues errorsOf(const Truss&, Names = Names::Unknown);

// Allowed, but perhaps not intended: coincident joints, joints without a member, members that cross
// or pass through a joint. Precondition: the model has no errors.
[[nodiscard]] Issues suspicious(const Truss&);

// The part of these that concerns names: those that look alike in letters of several alphabets.
[[nodiscard]] Issues sameShapes(const Truss&);

// Whether suspicious() still finds nothing after these joints have moved. Precondition: it found
// nothing before, and the larger side of the extent is unchanged.
[[nodiscard]] bool staysUnsuspicious(const Truss&, const std::vector<JointId>& moved);

// The notes of validate(): these, and the notes on moving loads. Precondition: the model has no
// errors.
[[nodiscard]] Issues notesOf(const Truss&, Issues suspicions);

} // namespace gusset
