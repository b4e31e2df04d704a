#pragma once
// Small trusses defined in a test: joints, members, supports and loads by their labels.

#include "model/truss/truss.hpp"

#include <initializer_list>
#include <string>

namespace gusset::support {

void joint(Truss&, const std::string& label, double x, double y);
void member(Truss&, const std::string& a, const std::string& b);
void member(Truss&, JointId a, JointId b);
// Several of them, each by the one-letter labels of its ends: "AB".
void members(Truss&, std::initializer_list<const char*> pairs);
void pin(Truss&, const std::string& joint);
void roller(Truss&, const std::string& joint, double reaction = 90); // degrees
void pinAndRoller(Truss&, JointId pin, JointId roller);              // and no other support
void force(Truss&, const std::string& joint, double fx, double fy, const std::string& caseId = {});

//      C        Straight rafters 8 m wide and 3 m high on a pin at A and a roller at B, with struts
//    D | E      DF and EF and the post CF, without loads. The roof slopes 3 in 4, and D and E halve
//  A---F---B    the rafters.
[[nodiscard]] Truss struttedRoof();

//      C        a triangle 8 m wide and 3 m high on a pin at A and a roller at B, 24 kN down at C:
//     / \       reactions 12 kN each, rafters AC and CB 12·5/3 = 20 kN in compression, tie AB
//    A---B      20·4/5 = 16 kN in tension
[[nodiscard]] Truss gable();

//     C        a triangle 6 m wide and 4 m high on a pin at A and a roller at B, 10 kN down at C:
//    / \       reactions 5 kN each, rafters 5·5/4 = 6.25 kN in compression, tie AB
//   A---B      6.25·3/5 = 3.75 kN in tension
[[nodiscard]] Truss roof();

//   C
//  / \       pin at A, roller at B, 4 wide, C 3 high and `apex` from A; no load
// A---B
[[nodiscard]] Truss triangle(double apex);

// Index of an existing member or joint.
[[nodiscard]] std::size_t memberAt(const Truss&, const std::string& a, const std::string& b);
[[nodiscard]] std::size_t jointAt(const Truss&, const std::string& label);

} // namespace gusset::support
