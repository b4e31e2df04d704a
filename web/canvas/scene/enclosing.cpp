#include "canvas/scene/enclosing.hpp"

#include "canvas/scene/pick.hpp"

#include <algorithm>

namespace gusset {

namespace {

constexpr double kLeastPiece = 3; // px: closer events add nothing to the shape
// The largest ratio of a stroke's length to the distance between its ends at which it is straight.
// A semicircle has 1.57; an unsteady diagonal stays below 1.1.
constexpr double kStraight = 1.2;

double lengthOf(const std::vector<Vec2>& line) {
    double sum = 0;
    for (std::size_t i = 1; i < line.size(); ++i) {
        sum += length(line[i] - line[i - 1]);
    }
    return sum;
}

// By the number of edges crossed by a ray to the right.
bool isInside(const std::vector<Vec2>& outline, Vec2 point) {
    bool inside = false;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Vec2 a = outline[i];
        const Vec2 b = outline[(i + 1) % outline.size()];
        if ((a.y > point.y) != (b.y > point.y) &&
            point.x < a.x + (b.x - a.x) * (point.y - a.y) / (b.y - a.y)) {
            inside = !inside;
        }
    }
    return inside;
}

template <class Id>
void unite(std::vector<Id>& list, const std::vector<Id>& more) {
    for (const Id& id : more) {
        if (std::find(list.begin(), list.end(), id) == list.end()) {
            list.push_back(id);
        }
    }
}

template <class List, class Item>
void toggle(List& list, const Item& item) {
    const auto found = std::find(list.begin(), list.end(), item);
    if (found == list.end()) {
        list.push_back(item);
    } else {
        list.erase(found);
    }
}

} // namespace

void goOnAround(std::vector<Vec2>& line, Vec2 pixel) {
    if (line.empty() || length(pixel - line.back()) >= kLeastPiece) {
        line.push_back(pixel);
    }
}

bool isDiagonal(const std::vector<Vec2>& line) {
    return line.size() < 3 || lengthOf(line) <= kStraight * length(line.back() - line.front());
}

Things thingsEnclosed(const AppState& state, const std::vector<Vec2>& line) {
    if (line.size() < 2) {
        return {};
    }
    if (isDiagonal(line)) {
        return thingsInBox(state, line.front(), line.back());
    }
    return thingsWhere(state, [&line](Vec2 pixel) { return isInside(line, pixel); });
}

Things united(Things things, const Things& more) {
    unite(things.joints, more.joints);
    unite(things.members, more.members);
    unite(things.supports, more.supports);
    unite(things.loads, more.loads);
    return things;
}

Things toggled(Things things, const Things& change) {
    for (const JointId joint : change.joints) {
        toggle(things.joints, joint);
    }
    for (const MemberId member : change.members) {
        toggle(things.members, member);
    }
    for (const SupportId support : change.supports) {
        toggle(things.supports, support);
    }
    for (const LoadId load : change.loads) {
        toggle(things.loads, load);
    }
    return things;
}

} // namespace gusset
