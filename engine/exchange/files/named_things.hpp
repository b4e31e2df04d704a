#pragma once
// Joints and members that a question or a lesson speaks of, by the labels of joints.

#include "exchange/files/object_reader.hpp"
#include "model/truss/truss.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

struct NamedThings {
    const Truss& truss;
    IssueList& issues;

    // What is not there is an error at its place, and an invalid id.
    [[nodiscard]] JointId joint(const std::string& label, const std::string& place) const;
    [[nodiscard]] MemberId member(const JsonValue&, const std::string& place) const; // ["A","B"]
    [[nodiscard]] JointId jointUnder(ObjectReader&, std::string_view key) const;
    [[nodiscard]] MemberId memberUnder(ObjectReader&, std::string_view key) const;
    // At least two of them.
    [[nodiscard]] std::vector<JointId> pathUnder(ObjectReader&, std::string_view key) const;
};

} // namespace gusset
