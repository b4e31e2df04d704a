#pragma once
// What a function returns when a user's input may be wrong: the value, or what is wrong with it.

#include "core/statement.hpp"

#include <cassert>
#include <optional>
#include <utility>
#include <vector>

namespace gusset {

enum class IssueCode {
    Syntax,       // can't be read at all: broken JSON, broken link
    WrongType,    // a string where a number belongs, and the like
    Missing,      // a required key is missing
    NotFinite,    // NaN, infinity or a number outside the range of the calculation
    OutOfRange,   // a finite number or a word that is not allowed here
    UnknownName,  // a reference to something that does not exist
    Duplicate,    // two things with the same name, two members between the same joints
    ZeroLength,   // a member of zero length
    TooLarge,     // more than is accepted from a file or link
    NewerVersion, // written by a later version
    Damaged,      // a link cut short or altered
    UnknownKey,   // an unknown key; it is kept
    NotComputed,  // read and kept, but not part of the results
    Unstable,     // the truss can move: not an input error, but there is no answer
    Suspicious,   // allowed, but perhaps not intended: coincident joints, crossing members
};

struct Issue {
    IssueCode code = IssueCode::Syntax;
    Statement at;   // place, as a path in the model file: members[3].b; or in words: the link
    Statement says; // one sentence that names the thing and the remedy

    friend bool operator==(const Issue&, const Issue&) = default;
};

using Issues = std::vector<Issue>;

// Holds a value, or at least one issue that says why there is none.
template <class T>
class [[nodiscard]] Outcome {
public:
    Outcome(T value) : value_(std::move(value)) {}
    Outcome(Issue issue) : issues_{std::move(issue)} {}
    Outcome(Issues issues) : issues_(std::move(issues)) { assert(!issues_.empty()); }

    [[nodiscard]] bool ok() const { return value_.has_value(); }
    explicit operator bool() const { return ok(); }

    // Precondition for both: ok().
    [[nodiscard]] const T& value() const& { return assert(ok()), *value_; }
    [[nodiscard]] T&& value() && { return assert(ok()), std::move(*value_); }

    [[nodiscard]] const Issues& issues() const { return issues_; }

private:
    std::optional<T> value_;
    Issues issues_;
};

} // namespace gusset
