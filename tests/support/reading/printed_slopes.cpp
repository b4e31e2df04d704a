#include "support/reading/printed_slopes.hpp"

#include <algorithm>
#include <cmath>

namespace gusset::support {

namespace {

// Ratios have four decimals and degrees two; trailing zeros are dropped. Sides are given numbers:
// exact, or of at least four significant figures.
std::optional<Rounded> slopeNumberOf(const std::string& text, NumberPlace place) {
    const auto digits = digitsOf(text.substr(0, text.find("\u00B0")));
    if (!digits) {
        return std::nullopt;
    }
    double step = place == NumberPlace::Degrees ? 1e-2 : 1e-4;
    if (place == NumberPlace::Fraction) {
        step = digits->decimals == 0 ? 0 : digits->figureStep(4);
    }
    return Rounded{digits->value, 0.5 * step + kNoise * std::fabs(digits->value)};
}

Vec2 withoutSigns(Vec2 v) { return {std::fabs(v.x), std::fabs(v.y)}; }

// For the reaction "R_A" or, of a second inclined roller there, "R_A′".
void addRoller(const std::string& name, const Truss& truss, std::vector<Vec2>& directions) {
    constexpr double kRadian = 3.14159265358979323846 / 180;
    std::map<std::string, int> before;
    for (const Support& support : truss.supports) {
        const std::string first = "R_" + truss.joints[support.joint.at()].label;
        const double angle = support.reaction * kRadian;
        const Vec2 along = withoutSigns({std::cos(angle), std::sin(angle)});
        if (support.kind != SupportKind::Roller || along.x < kNoise || along.y < kNoise) {
            continue;
        }
        if (name == (before[first]++ == 0 ? first : first + "\u2032")) {
            directions.push_back(along);
        }
    }
}

// Their common direction, a unit vector without signs; none if there is none, or if one of the
// names is not in the truss.
std::optional<Vec2> directionOf(const std::vector<std::string>& names, const Truss& truss) {
    std::vector<Vec2> directions;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const MemberId member{static_cast<int>(i)};
        if (std::find(names.begin(), names.end(), memberName(truss, member)) != names.end()) {
            const Vec2 vector = memberVector(truss, member);
            directions.push_back((1 / length(vector)) * withoutSigns(vector));
        }
    }
    addRoller(names.front(), truss, directions);
    if (directions.size() != names.size()) {
        return std::nullopt;
    }
    for (const Vec2 direction : directions) {
        if (length(direction - directions.front()) > kNoise) {
            return std::nullopt;
        }
    }
    return directions.front();
}

// The true value of "sin α", "cos α_x", "tan α", "rise over length" for a direction.
std::optional<double> truthOf(const Formula& left, Vec2 direction) {
    const Token& first = left.front();
    if (first.kind == TokenKind::Function) {
        const std::string& axis = left.back().subscript;
        const bool upright = !axis.empty() && (axis.back() == 'y' || axis.back() == 'V');
        if (first.text == "tan") {
            return direction.y / direction.x;
        }
        return first.text == "sin" || upright ? direction.y : direction.x;
    }
    const std::string word = first.text.substr(0, 4); // "rise", "run" or "rise over length"
    if (word == "rise" || word.substr(0, 3) == "run") {
        return word == "rise" ? direction.y : direction.x;
    }
    constexpr double kRadian = 3.14159265358979323846 / 180;
    return first.kind == TokenKind::Variable
               ? std::optional(std::atan2(direction.y, direction.x) / kRadian)
               : std::nullopt;
}

} // namespace

std::vector<std::string> slopingIn(const std::string& sentence) {
    const std::string roller = " is inclined to the horizontal at";
    if (const auto at = sentence.find(roller); at != std::string::npos) {
        return {sentence.substr(0, at)};
    }
    std::string members = "inclination to the horizontal of ";
    auto start = sentence.find(members);
    if (start == std::string::npos) {
        members = "slope of ";
        start = sentence.find(members);
    }
    if (start == std::string::npos) {
        return {};
    }
    std::vector<std::string> names(1);
    for (std::size_t at = start + members.size(); at < sentence.size(); ++at) {
        const bool comma = sentence.compare(at, 2, ", ") == 0;
        if (comma || sentence.compare(at, 5, " and ") == 0) {
            names.emplace_back();
            at += comma ? 1 : 4;
        } else {
            names.back() += sentence[at];
        }
    }
    names.back().pop_back(); // the full stop or the colon
    return names;
}

std::string objectionToSlope(const Formula& formula, const std::vector<std::string>& of,
                             const Truss& truss, Names& names) {
    const auto direction = of.empty() ? std::nullopt : directionOf(of, truss);
    if (!direction) {
        return "a slope is not that of what it is said to be of";
    }
    for (const PrintedEquation& equation : equationsOf(formula)) {
        const Formula& left = equation.front().formula;
        const auto truth = truthOf(left, *direction);
        if (!truth || equation.size() < 2) {
            return "a slope can't be read";
        }
        for (std::size_t i = 1; i < equation.size(); ++i) {
            const auto& [part, isExact] = equation[i];
            const auto printed = worthOf(part, {}, slopeNumberOf);
            if (!printed || !agree(*printed, {*truth, kNoise})) {
                return "a slope is not the members'";
            }
            const bool given = part.front().kind == TokenKind::Fraction; // typed lengths
            if (isExact && !given && std::fabs(printed->value - *truth) > kNoise) {
                return "a slope that is rounded is said to be equal";
            }
            const Token& first = left.front();
            if (first.kind == TokenKind::Function) {
                names[first.text + " " + printedName(left.back())] = *printed;
            } else if (first.kind == TokenKind::Variable) {
                names[printedName(first)] = {*truth, 0}; // degrees
            }
        }
    }
    return {};
}

} // namespace gusset::support
