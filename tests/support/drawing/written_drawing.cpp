#include "support/drawing/written_drawing.hpp"

#include "core/number.hpp"

#include <algorithm>
#include <cmath>

namespace gusset::support {

namespace {

std::string group(int code, const std::string& value, const char* lineEnd) {
    return std::to_string(code) + lineEnd + value + lineEnd;
}

std::string place(int code, Vec2 at, const char* lineEnd) {
    return group(code, shortestNumber(at.x), lineEnd) +
           group(code + 10, shortestNumber(at.y), lineEnd);
}

Vec2 near(Vec2 at, double off, Random& random) {
    const double angle = random.integer(0, 6283) / 1000.0;
    const double by = off * random.integer(0, 1000) / 1000.0;
    return at + by * Vec2{std::cos(angle), std::sin(angle)};
}

// The other end of a member that was not drawn yet, or −1.
int nextFrom(const Truss& truss, int joint, std::vector<bool>& isDrawn) {
    for (std::size_t i = 0; i < isDrawn.size(); ++i) {
        const Member& member = truss.members[i];
        if (!isDrawn[i] && (member.a.index == joint || member.b.index == joint)) {
            isDrawn[i] = true;
            return member.a.index == joint ? member.b.index : member.a.index;
        }
    }
    return -1;
}

template <class T>
void shuffle(std::vector<T>& list, Random& random) {
    for (std::size_t i = list.size(); i > 1; --i) {
        std::swap(list[i - 1],
                  list[static_cast<std::size_t>(random.integer(0, static_cast<int>(i) - 1))]);
    }
}

double distanceTo(Vec2 at, Vec2 from, Vec2 to) {
    const Vec2 along = to - from;
    const double share = std::clamp(dot(at - from, along) / dot(along, along), 0.0, 1.0);
    return length(at - (from + share * along));
}

std::string entityOf(const Stroke& stroke, double scale, Random& random, const char* lineEnd) {
    std::string text;
    const auto g = [&](int code, const std::string& value) { text += group(code, value, lineEnd); };
    const auto p = [&](int code, Vec2 at) { text += place(code, scale * at, lineEnd); };
    if (stroke.size() == 2) {
        g(0, "LINE");
        g(8, "TRUSS");
        p(10, stroke[0]);
        p(11, stroke[1]);
    } else if (random.oneIn(2)) {
        g(0, "LWPOLYLINE");
        g(8, "TRUSS");
        g(90, std::to_string(stroke.size()));
        g(70, "0");
        for (const Vec2 corner : stroke) {
            p(10, corner);
        }
    } else {
        g(0, "POLYLINE");
        g(8, "TRUSS");
        g(66, "1");
        g(70, "0");
        for (const Vec2 corner : stroke) {
            g(0, "VERTEX");
            g(8, "TRUSS");
            p(10, corner);
        }
        g(0, "SEQEND");
    }
    return text;
}

std::string pair(Vec2 at) { return shortestNumber(at.x) + "," + shortestNumber(at.y); }

std::string shapeOf(const Stroke& stroke, Random& random) {
    if (stroke.size() == 2 && random.oneIn(2)) {
        return "<line x1='" + shortestNumber(stroke[0].x) + "' y1='" + shortestNumber(stroke[0].y) +
               "' x2='" + shortestNumber(stroke[1].x) + "' y2='" + shortestNumber(stroke[1].y) +
               "'/>\n";
    }
    std::string text = pair(stroke[0]);
    if (random.oneIn(3)) {
        for (std::size_t i = 1; i < stroke.size(); ++i) {
            text += " " + pair(stroke[i]);
        }
        return "<polyline points=\"" + text + "\"/>\n";
    }
    const bool isRelative = random.oneIn(2);
    text = "M" + text;
    for (std::size_t i = 1; i < stroke.size(); ++i) {
        text += isRelative ? " l" + pair(stroke[i] - stroke[i - 1]) : " L" + pair(stroke[i]);
    }
    return "<path d=\"" + text + "\"/>\n";
}

} // namespace

Truss asDrawn(const Truss& truss) {
    Truss drawn;
    drawn.units = truss.units;
    std::vector<JointId> now(truss.joints.size());
    const auto shown = [&](JointId joint) {
        JointId& id = now[joint.at()];
        if (!id.valid()) {
            id = JointId{static_cast<int>(drawn.joints.size())};
            drawn.joints.push_back(truss.joints[joint.at()]);
        }
        return id;
    };
    for (const Member& member : truss.members) {
        const JointId a = shown(member.a);
        drawn.members.push_back({a, shown(member.b), {}, 0, 0, {}});
    }
    return drawn;
}

std::vector<Stroke> drawnStrokes(const Truss& truss, double off, Random& random) {
    std::vector<Stroke> strokes;
    std::vector<bool> isDrawn(truss.members.size(), false);
    std::vector<int> order;
    for (int i = 0; i < static_cast<int>(truss.members.size()); ++i) {
        order.push_back(i);
    }
    shuffle(order, random);
    for (const int i : order) {
        const Member& member = truss.members[static_cast<std::size_t>(i)];
        if (isDrawn[static_cast<std::size_t>(i)]) {
            continue;
        }
        isDrawn[static_cast<std::size_t>(i)] = true;
        const bool isTurned = random.oneIn(2);
        int joint = (isTurned ? member.a : member.b).index;
        Stroke stroke{truss.joints[(isTurned ? member.b : member.a).at()].at,
                      truss.joints[static_cast<std::size_t>(joint)].at};
        while (random.oneIn(3)) {
            joint = nextFrom(truss, joint, isDrawn);
            if (joint < 0) {
                break;
            }
            stroke.push_back(truss.joints[static_cast<std::size_t>(joint)].at);
        }
        for (Vec2& corner : stroke) {
            corner = near(corner, off, random);
        }
        strokes.push_back(std::move(stroke));
    }
    return strokes;
}

std::string strokesAsDxf(const std::vector<Stroke>& strokes, double scale, Random& random) {
    const char* lineEnd = random.oneIn(2) ? "\r\n" : "\n";
    std::string text = group(0, "SECTION", lineEnd) + group(2, "ENTITIES", lineEnd);
    for (const Stroke& stroke : strokes) {
        text += entityOf(stroke, scale, random, lineEnd);
    }
    return text + group(0, "ENDSEC", lineEnd) + group(0, "EOF", lineEnd);
}

std::string strokesAsSvg(const std::vector<Stroke>& strokes, double scale, Random& random) {
    std::string text = "<?xml version='1.0'?>\n<svg xmlns='http://www.w3.org/2000/svg'>\n"
                       "<g transform='translate(7 400) scale(" +
                       shortestNumber(scale) + ")'><g transform='scale(1,-1)'>\n";
    for (const Stroke& stroke : strokes) {
        text += shapeOf(stroke, random);
    }
    return text + "</g></g></svg>\n";
}

double clearanceOf(const Truss& truss) {
    double least = 1e9;
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        const Vec2 here = truss.joints[i].at;
        for (std::size_t j = 0; j < i; ++j) {
            least = std::min(least, length(here - truss.joints[j].at));
        }
        for (const Member& member : truss.members) {
            if (member.a.at() != i && member.b.at() != i) {
                least = std::min(least, distanceTo(here, truss.joints[member.a.at()].at,
                                                   truss.joints[member.b.at()].at));
            }
        }
    }
    return least;
}

std::string differenceOf(const Truss& drawn, const Truss& found, Vec2 shift, double off) {
    if (drawn.joints.size() != found.joints.size() ||
        drawn.members.size() != found.members.size()) {
        return std::to_string(found.joints.size()) + " joints and " +
               std::to_string(found.members.size()) + " members instead of " +
               std::to_string(drawn.joints.size()) + " and " + std::to_string(drawn.members.size());
    }
    std::vector<JointId> now;
    for (const Joint& joint : drawn.joints) {
        int count = 0;
        for (std::size_t i = 0; i < found.joints.size(); ++i) {
            if (length(found.joints[i].at + shift - joint.at) <= off) {
                now.resize(static_cast<std::size_t>(&joint - drawn.joints.data()) + 1);
                now.back() = JointId{static_cast<int>(i)};
                ++count;
            }
        }
        if (count != 1) {
            return std::to_string(count) + " joints at the place of " + joint.label;
        }
    }
    for (const Member& member : drawn.members) {
        if (!findMember(found, now[member.a.at()], now[member.b.at()]).valid()) {
            return "no member " +
                   memberName(drawn.joints[member.a.at()].label, drawn.joints[member.b.at()].label);
        }
    }
    return {};
}

std::string dxfOf(const std::string& entities, const std::string& before) {
    return before + "0\nSECTION\n2\nENTITIES\n" + entities + "0\nENDSEC\n0\nEOF\n";
}

std::string dxfLine(double x1, double y1, double x2, double y2, const std::string& layer) {
    return "0\nLINE\n8\n" + layer + "\n" + place(10, {x1, y1}, "\n") + place(11, {x2, y2}, "\n");
}

} // namespace gusset::support
