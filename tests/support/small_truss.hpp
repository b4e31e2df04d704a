#pragma once
// Small trusses written down in a test: joints, members, supports and loads by their labels.

#include "model/truss.hpp"

#include <string>

namespace gusset::support {

void joint(Truss&, const std::string& label, double x, double y);
void member(Truss&, const std::string& a, const std::string& b);
void pin(Truss&, const std::string& joint);
void roller(Truss&, const std::string& joint, double reaction = 90); // degrees
void force(Truss&, const std::string& joint, double fx, double fy, const std::string& caseId = {});

// Index of a member or a joint that is there.
[[nodiscard]] std::size_t memberAt(const Truss&, const std::string& a, const std::string& b);
[[nodiscard]] std::size_t jointAt(const Truss&, const std::string& label);

} // namespace gusset::support
