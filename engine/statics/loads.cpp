// Loads of the chosen cases, carried to the joints; see structure.hpp.
#include "statics/structure.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

std::string caseOf(const Load& load) { return load.caseId.empty() ? kDefaultCase : load.caseId; }

bool isSelfWeight(const Load& load) { return std::holds_alternative<SelfWeight>(load.what); }

// A uniform load between two joints, of which a simple beam carries half to each.
struct Span {
    JointId a;
    JointId b;
    double down = 0;    // N, in all
    double breadth = 0; // m, horizontal
    MemberId member;    // that lies between the joints, if one does
};

// Calls take(span) for every span of the load, times its factor.
template <class Take>
void forEachSpan(const Truss& truss, const Structure& structure, const Load& load, double factor,
                 Take take) {
    const double metre = toMetre(truss.units.length);
    const auto breadth = [&](JointId a, JointId b) {
        return std::abs(truss.joints[b.at()].at.x - truss.joints[a.at()].at.x);
    };
    if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
        for (std::size_t i = 0; i + 1 < chord->chord.size(); ++i) {
            const JointId a = chord->chord[i];
            const JointId b = chord->chord[i + 1];
            const double up =
                chord->perLength * breadth(a, b) * factor * toNewton(truss.units.force);
            take(Span{a, b, -up, metre * breadth(a, b), findMember(truss, a, b)});
        }
    }
    if (!isSelfWeight(load)) {
        return;
    }
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        const JointId a{bar.a};
        const JointId b{bar.b};
        const MemberId member{static_cast<int>(i)};
        take(Span{a, b, factor * bar.weight, metre * breadth(a, b), member});
    }
}

} // namespace

std::vector<std::string> caseNames(const Truss& truss) {
    std::vector<std::string> names;
    for (const Load& load : truss.loads) {
        if (std::find(names.begin(), names.end(), caseOf(load)) == names.end()) {
            names.push_back(caseOf(load));
        }
    }
    return names;
}

double caseFactor(const Truss& truss, const LoadChoice& choice, const Load& load) {
    if (!choice.combinationId.empty()) {
        for (const Combination& combination : truss.combinations) {
            if (combination.id != choice.combinationId) {
                continue;
            }
            for (const auto& [name, factor] : combination.factors) {
                if (name == caseOf(load)) {
                    return factor;
                }
            }
        }
        return 0;
    }
    return choice.caseId.empty() || choice.caseId == caseOf(load) ? 1 : 0;
}

std::vector<Vec2> jointLoads(const Truss& truss, const Structure& structure,
                             const LoadChoice& choice) {
    std::vector<Vec2> loads(truss.joints.size());
    for (const Load& load : truss.loads) {
        const double factor = caseFactor(truss, choice, load);
        if (factor == 0) {
            continue;
        }
        forEachSpan(truss, structure, load, factor, [&](const Span& span) {
            loads[span.a.at()].y -= span.down / 2;
            loads[span.b.at()].y -= span.down / 2;
        });
        const std::optional<Vec2> force = forceOf(load);
        if (!force) {
            continue;
        }
        Vec2& sum = loads[jointOf(load).at()];
        sum = sum + factor * toNewton(truss.units.force) * *force;
    }
    return loads;
}

std::vector<Vec2> jointLoads(const Truss& truss, const LoadChoice& choice) {
    const bool weighed = std::any_of(truss.loads.begin(), truss.loads.end(), isSelfWeight);
    return jointLoads(truss, weighed ? structureOf(truss) : Structure{}, choice);
}

std::vector<double> bendingMoments(const Truss& truss, const Structure& structure,
                                   const LoadChoice& choice) {
    std::vector<double> moments;
    for (const Load& load : truss.loads) {
        const double factor = caseFactor(truss, choice, load);
        if (factor == 0) {
            continue;
        }
        forEachSpan(truss, structure, load, factor, [&](const Span& span) {
            if (!span.member.valid() || span.down * span.breadth == 0) {
                return;
            }
            moments.resize(truss.members.size());
            moments[span.member.at()] += span.down * span.breadth / 8;
        });
    }
    return moments;
}

} // namespace gusset
