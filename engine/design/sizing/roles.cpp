#include "design/sizing/roles.hpp"

#include "phrases/design/sizing.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {
namespace {

constexpr double kUpright = 1e-6; // of a member's length: how far it may lean

struct Line {
    Vec2 left;
    Vec2 right;
    [[nodiscard]] bool isUpright() const {
        return right.x - left.x <= kUpright * std::abs(right.y - left.y);
    }
    [[nodiscard]] double heightAt(double x) const {
        return left.y + (right.y - left.y) * (x - left.x) / (right.x - left.x);
    }
};

std::vector<Line> linesOf(const Truss& truss) {
    std::vector<Line> lines;
    for (const Member& member : truss.members) {
        Line line{truss.joints[member.a.at()].at, truss.joints[member.b.at()].at};
        if (line.left.x > line.right.x) {
            std::swap(line.left, line.right);
        }
        lines.push_back(line);
    }
    return lines;
}

MemberRole roleOf(const std::vector<Line>& lines, const Line& line) {
    if (line.isUpright()) {
        return MemberRole::Post;
    }
    const Vec2 middle = 0.5 * (line.left + line.right);
    const double least = kUpright * (line.right.x - line.left.x);
    bool above = false;
    bool below = false;
    for (const Line& other : lines) {
        // Also where it ends: over the middle of a tie there may be nothing but the ridge.
        if (!other.isUpright() && other.left.x <= middle.x + least &&
            middle.x - least <= other.right.x) {
            const double height = other.heightAt(middle.x) - middle.y;
            above = above || height > least;
            below = below || height < -least;
        }
    }
    return !above ? MemberRole::UpperChord : !below ? MemberRole::LowerChord : MemberRole::Diagonal;
}

} // namespace

std::vector<MemberRole> rolesOf(const Truss& truss) {
    const std::vector<Line> lines = linesOf(truss);
    std::vector<MemberRole> roles;
    for (const Line& line : lines) {
        roles.push_back(roleOf(lines, line));
    }
    return roles;
}

const Phrase<>& nameOf(MemberRole role) {
    static constexpr std::array kNames{phrase::kRoleUpperChord, phrase::kRoleLowerChord,
                                       phrase::kRolePosts, phrase::kRoleDiagonals};
    return kNames[static_cast<std::size_t>(role)];
}

} // namespace gusset
