#pragma once
// The joints and members that drawn lines make: ends become joints, and lines are divided where a
// joint lies on them. Private to exchange/drawings.

#include "exchange/drawings/lines_found.hpp"

#include <string>
#include <vector>

namespace gusset {

struct NetJoint {
    Vec2 at;           // drawing units; a mark, or the drawn end nearest to the middle of them all
    double across = 0; // the diagonal of the box around the ends that make it
    std::size_t moved = 0; // ends that lie elsewhere
    double farthest = 0;   // of these, from the joint
    bool isEnd = false;    // of a line, and not a mark alone
};

struct NetMember {
    int a = 0; // joints
    int b = 0;
    int times = 1; // it is drawn
};

struct DividedLine {
    int a = 0;
    int b = 0;
    std::vector<int> at; // joints along it, from a to b
};

struct Net {
    std::vector<NetJoint> joints;
    std::vector<NetMember> members;
    std::vector<DividedLine> divided;
    std::vector<DrawnLine> tooShort; // both ends in one joint
    std::vector<Vec2> looseMarks;    // on no line
    bool isTooLarge = false;         // more than kMostNetMembers: members is not complete
};

inline constexpr std::size_t kMostNetMembers = 20'000;

// The smaller of two shares, of the drawing's larger side and of the length of half of its lines.
[[nodiscard]] double chosenTolerance(const std::vector<DrawnLine>&);
[[nodiscard]] Net netOf(const LinesFound&, double tolerance);

} // namespace gusset
