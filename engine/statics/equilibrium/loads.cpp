// Loads of the chosen cases, distributed to the joints; see structure.hpp.
#include "model/truss/member_index.hpp"
#include "statics/equilibrium/structure.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <string_view>
#include <unordered_set>

namespace gusset {

namespace {

std::string_view caseOf(const Load& load) { return caseNameOf(load.caseId); }

bool isSelfWeight(const Load& load) { return std::holds_alternative<SelfWeight>(load.what); }

// A uniform load between two joints; as on a simple beam, each takes half.
struct Span {
    JointId a;
    JointId b;
    double down = 0;    // N, total
    double breadth = 0; // m, horizontal
    MemberId member;    // the member between the joints, if there is one
};

// The members by their joints; empty if no load needs it.
MemberIndex membersUnderLoads(const Truss& truss) {
    const auto asks = [](const Load& load) {
        return std::holds_alternative<ChordLoad>(load.what) ||
               std::holds_alternative<MemberForce>(load.what);
    };
    return std::any_of(truss.loads.begin(), truss.loads.end(), asks) ? MemberIndex(truss)
                                                                     : MemberIndex();
}

struct FactoredLoad {
    const Load& load;
    double factor = 1;
};

// Calls take(span) for every span of the load, times its factor.
template <class Take>
void forEachSpan(const Truss& truss, const Structure& structure, const MemberIndex& members,
                 const FactoredLoad& factored, Take take) {
    const auto& [load, factor] = factored;
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
            take(Span{a, b, -up, metre * breadth(a, b), members.find(a, b)});
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

// By the law of the lever: the nearer joint takes more.
void carryToEnds(const Truss& truss, const MemberForce& load, double factor,
                 std::vector<Vec2>& loads) {
    const double whole = length(truss.joints[load.to.at()].at - truss.joints[load.from.at()].at);
    const Vec2 force = factor * toNewton(truss.units.force) * Vec2{load.fx, load.fy};
    const double share = load.at / whole;
    loads[load.from.at()] = loads[load.from.at()] + (1 - share) * force;
    loads[load.to.at()] = loads[load.to.at()] + share * force;
}

} // namespace

std::vector<std::string> caseNames(const Truss& truss) {
    std::vector<std::string> names;
    std::unordered_set<std::string_view> known;
    for (const Load& load : truss.loads) {
        if (known.insert(caseOf(load)).second) {
            names.emplace_back(caseOf(load));
        }
    }
    return names;
}

bool isOneCase(const LoadChoice& choice) { return std::holds_alternative<OneCase>(choice); }

bool isCombination(const LoadChoice& choice) {
    return std::holds_alternative<OneCombination>(choice);
}

std::string choiceName(const LoadChoice& choice) {
    if (const auto* alone = std::get_if<OneCase>(&choice)) {
        return alone->id;
    }
    const auto* combined = std::get_if<OneCombination>(&choice);
    return combined ? combined->id : "";
}

const Combination* combinationOf(const Truss& truss, const LoadChoice& choice) {
    const auto* combined = std::get_if<OneCombination>(&choice);
    const auto found = std::find_if(
        truss.combinations.begin(), truss.combinations.end(),
        [combined](const Combination& each) { return combined && each.id == combined->id; });
    return found == truss.combinations.end() ? nullptr : &*found;
}

bool isThere(const Truss& truss, const LoadChoice& choice) {
    if (const auto* alone = std::get_if<OneCase>(&choice)) {
        return std::any_of(truss.loads.begin(), truss.loads.end(),
                           [alone](const Load& load) { return caseOf(load) == alone->id; });
    }
    return !isCombination(choice) || combinationOf(truss, choice) != nullptr;
}

double caseFactor(const Truss& truss, const LoadChoice& choice, const Load& load) {
    if (isCombination(choice)) {
        if (const Combination* combination = combinationOf(truss, choice)) {
            for (const auto& [name, factor] : combination->factors) {
                if (name == caseOf(load)) {
                    return factor;
                }
            }
        }
        return 0;
    }
    const auto* alone = std::get_if<OneCase>(&choice);
    return !alone || alone->id == caseOf(load) ? 1 : 0;
}

LoadFactors::LoadFactors(const Truss& truss) : truss_(truss) {
    for (const Load& load : truss.loads) {
        caseOf_.push_back(cases_.try_emplace(caseOf(load), cases_.size()).first->second);
    }
    for (std::size_t i = 0; i < truss.combinations.size(); ++i) {
        combinations_.try_emplace(truss.combinations[i].id, i);
    }
}

std::vector<double> LoadFactors::under(const LoadChoice& choice) const {
    const bool every = std::holds_alternative<EveryLoad>(choice);
    std::vector<double> ofCase(cases_.size(), every ? 1 : 0);
    if (const auto* combined = std::get_if<OneCombination>(&choice)) {
        const auto combination = combinations_.find(combined->id);
        if (combination != combinations_.end()) {
            const auto& factors = truss_.combinations[combination->second].factors;
            for (auto factor = factors.rbegin(); factor != factors.rend(); ++factor) {
                if (const auto at = cases_.find(factor->first); at != cases_.end()) {
                    ofCase[at->second] = factor->second; // the first of two factors counts
                }
            }
        }
    } else if (const auto* alone = std::get_if<OneCase>(&choice)) {
        if (const auto at = cases_.find(alone->id); at != cases_.end()) {
            ofCase[at->second] = 1;
        }
    }
    std::vector<double> factors;
    factors.reserve(caseOf_.size());
    for (const std::size_t of : caseOf_) {
        factors.push_back(ofCase[of]);
    }
    return factors;
}

namespace {

std::vector<double> factorsUnder(const Truss& truss, const LoadChoice& choice) {
    if (isCombination(choice)) {
        return LoadFactors(truss).under(choice);
    }
    std::vector<double> factors;
    factors.reserve(truss.loads.size());
    for (const Load& load : truss.loads) {
        factors.push_back(caseFactor(truss, choice, load));
    }
    return factors;
}

} // namespace

std::vector<Vec2> jointLoads(const Truss& truss, const Structure& structure,
                             const std::vector<double>& factors) {
    std::vector<Vec2> loads(truss.joints.size());
    const MemberIndex members = membersUnderLoads(truss);
    for (std::size_t i = 0; i < truss.loads.size(); ++i) {
        const Load& load = truss.loads[i];
        const double factor = factors[i];
        if (factor == 0) {
            continue;
        }
        forEachSpan(truss, structure, members, {load, factor}, [&](const Span& span) {
            loads[span.a.at()].y -= span.down / 2;
            loads[span.b.at()].y -= span.down / 2;
        });
        if (const auto* between = std::get_if<MemberForce>(&load.what)) {
            carryToEnds(truss, *between, factor, loads);
        }
        const std::optional<Vec2> force = forceOf(load);
        if (!force) {
            continue;
        }
        Vec2& sum = loads[jointOf(load).at()];
        sum = sum + factor * toNewton(truss.units.force) * *force;
    }
    return loads;
}

std::vector<Vec2> jointLoads(const Truss& truss, const Structure& structure,
                             const LoadChoice& choice) {
    return jointLoads(truss, structure, factorsUnder(truss, choice));
}

std::vector<Vec2> jointLoads(const Truss& truss, const LoadChoice& choice) {
    const bool weighed = std::any_of(truss.loads.begin(), truss.loads.end(), isSelfWeight);
    return jointLoads(truss, weighed ? structureOf(truss) : Structure{}, choice);
}

namespace {

// A force across a member, `at` the fraction of the member's length from its left end.
struct CrossForce {
    double at = 0;
    double size = 0; // N, positive when it makes the member sag
};

// The loads that bend one member as a simple beam.
struct Bending {
    double uniform = 0; // N·m, load times horizontal breadth
    double length = 0;  // m
    std::vector<CrossForce> forces;

    [[nodiscard]] double momentAt(double t) const {
        double moment = uniform * t * (1 - t) / 2;
        for (const CrossForce& force : forces) {
            moment += force.size * length * std::min(t, force.at) * (1 - std::max(t, force.at));
        }
        return moment;
    }

    // Where the shear would be zero if `t`'s stretch between forces went on indefinitely.
    [[nodiscard]] double turningPoint(double t) const {
        double slope = uniform / 2;
        for (const CrossForce& force : forces) {
            slope += force.size * length * (t < force.at ? 1 - force.at : -force.at);
        }
        return uniform == 0 ? t : slope / uniform;
    }

    // The moment of largest absolute value: at a force, or between two where the shear is zero.
    [[nodiscard]] double largest() const {
        std::vector<double> ends{0, 1};
        for (const CrossForce& force : forces) {
            ends.push_back(force.at);
        }
        std::sort(ends.begin(), ends.end());
        double largest = 0;
        const auto consider = [&](double t) {
            const double moment = momentAt(t);
            largest = std::abs(moment) > std::abs(largest) ? moment : largest;
        };
        for (std::size_t i = 1; i < ends.size(); ++i) {
            consider(ends[i]);
            const double turn = turningPoint((ends[i - 1] + ends[i]) / 2);
            if (turn > ends[i - 1] && turn < ends[i]) {
                consider(turn);
            }
        }
        return largest;
    }
};

CrossForce crossForceOf(const Truss& truss, const Bar& bar, const MemberForce& load,
                        double factor) {
    const bool leftIsA = bar.along.x >= 0;
    const Vec2 rightwards = leftIsA ? bar.along : -bar.along;
    const bool fromLeft = (load.from.index == bar.a) == leftIsA;
    const double fraction = load.at * toMetre(truss.units.length) / bar.length;
    const double newtons = factor * toNewton(truss.units.force);
    return {fromLeft ? fraction : 1 - fraction, -newtons * cross(rightwards, {load.fx, load.fy})};
}

} // namespace

std::vector<double> bendingMoments(const Truss& truss, const Structure& structure,
                                   const std::vector<double>& factors) {
    const MemberIndex members = membersUnderLoads(truss);
    std::map<MemberId, Bending> bent;
    for (std::size_t i = 0; i < truss.loads.size(); ++i) {
        const Load& load = truss.loads[i];
        const double factor = factors[i];
        if (factor == 0) {
            continue;
        }
        forEachSpan(truss, structure, members, {load, factor}, [&](const Span& span) {
            if (span.member.valid() && span.down * span.breadth != 0) {
                bent[span.member].uniform += span.down * span.breadth;
            }
        });
        if (const auto* between = std::get_if<MemberForce>(&load.what)) {
            const MemberId member = members.find(between->from, between->to);
            const Bar& bar = structure.bars[member.at()];
            bent[member].length = bar.length;
            bent[member].forces.push_back(crossForceOf(truss, bar, *between, factor));
        }
    }
    std::vector<double> moments(bent.empty() ? 0 : truss.members.size());
    for (const auto& [member, bending] : bent) {
        moments[member.at()] = bending.largest();
    }
    return moments;
}

std::vector<double> bendingMoments(const Truss& truss, const Structure& structure,
                                   const LoadChoice& choice) {
    return bendingMoments(truss, structure, factorsUnder(truss, choice));
}

} // namespace gusset
