#include "support/reading/solving_truth.hpp"

#include "phrases/working/across.hpp"
#include "phrases/working/letters.hpp"
#include "phrases/working/remarks.hpp"
#include "phrases/working/together.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <tuple>

namespace gusset::support {

namespace {

constexpr double kTrue = 1e-7;
constexpr double kInRadians = 3.14159265358979323846 / 180;

auto keyOf(const Symbol& symbol) {
    return std::tuple(symbol.kind, symbol.member.index, symbol.restraint.index);
}
using Symbols = std::set<std::tuple<SymbolKind, int, int>>;

Symbols setOf(const std::vector<Symbol>& symbols) {
    Symbols set;
    for (const Symbol& symbol : symbols) {
        set.insert(keyOf(symbol));
    }
    return set;
}

// A truss as drawn, and what a reader knows of its forces so far.
struct Board {
    const Truss& truss;
    Structure structure;
    Symbols known{};
    std::map<int, AngleLine> angles{}; // by the index of the letter

    [[nodiscard]] Vec2 directionOf(const Symbol& symbol) const {
        return symbol.kind == SymbolKind::Reaction
                   ? structure.restraints[symbol.restraint.at()].along
                   : structure.bars[symbol.member.at()].along;
    }
    [[nodiscard]] Vec2 pointOn(const Symbol& symbol) const {
        return symbol.kind == SymbolKind::Reaction
                   ? truss.joints[symbol.joint.at()].at
                   : truss.joints[truss.members[symbol.member.at()].a.at()].at;
    }
    // All forces that act on a body: cut members and reactions.
    [[nodiscard]] std::vector<Symbol> forcesOn(const std::vector<JointId>& body) const {
        const auto inside = [&](JointId joint) {
            return std::find(body.begin(), body.end(), joint) != body.end();
        };
        std::vector<Symbol> forces;
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            if (inside(truss.members[i].a) != inside(truss.members[i].b)) {
                forces.push_back(
                    {.kind = SymbolKind::MemberForce, .member = {static_cast<int>(i)}});
            }
        }
        for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
            if (inside(structure.restraints[i].joint)) {
                forces.push_back({.kind = SymbolKind::Reaction,
                                  .restraint = {static_cast<int>(i)},
                                  .joint = structure.restraints[i].joint});
            }
        }
        return forces;
    }
    [[nodiscard]] Symbols unknownOn(const std::vector<JointId>& body) const {
        Symbols open;
        for (const Symbol& symbol : forcesOn(body)) {
            if (!known.contains(keyOf(symbol))) {
                open.insert(keyOf(symbol));
            }
        }
        return open;
    }
};

std::string judgeAcross(const Board& board, const Step& step, const Remark& remark) {
    const Vec2 n = step.equations.front().along;
    const auto& others = partOf<std::vector<Symbol>>(remark, "others");
    bool oneLine = true;
    for (const Symbol& other : others) {
        const Vec2 along = board.directionOf(other);
        if (std::fabs(dot(along, n)) > kTrue) {
            return "n is not at right angles to a force";
        }
        const Vec2 apart = board.pointOn(other) - board.pointOn(others.front());
        oneLine = oneLine && std::fabs(cross(apart, along)) <= kTrue * (1 + length(apart));
    }
    if (says(remark, phrase::kAcrossLine) != (oneLine && others.size() > 1) ||
        says(remark, phrase::kAcrossOne) != (others.size() == 1)) {
        return "forces are, or are not, in one line";
    }
    Symbols left;
    for (const Symbol& symbol : board.forcesOn(step.body)) {
        const double part = std::fabs(dot(board.directionOf(symbol), n));
        if (!board.known.contains(keyOf(symbol)) && part > kTrue) {
            left.insert(keyOf(symbol));
        }
    }
    return left == Symbols{keyOf(partOf<Symbol>(remark, "left"))} ? "" : "n leaves other unknowns";
}

std::string judgeTurned(const Board& board, const Remark& remark) {
    const auto& angle = partOf<TurnedAngle>(remark, "angle");
    const double first = board.angles.at(angle.first.index).degrees;
    const double second = board.angles.at(angle.second.index).degrees;
    if (std::fabs(first + (angle.minus ? -second : second) - angle.degrees) > kTrue) {
        return "the angles don't add up";
    }
    const Vec2 force = board.directionOf(partOf<Symbol>(remark, "force"));
    const Vec2 line = board.directionOf(partOf<Symbol>(remark, "line"));
    const double between = std::atan2(std::fabs(cross(force, line)), dot(force, line)) / kInRadians;
    return std::fabs(between - angle.degrees) < kTrue ||
                   std::fabs(180 - between - angle.degrees) < kTrue
               ? ""
               : "the angle is not that between the lines";
}

// What a factor of an angle is worth by its letter and its name.
double worthOf(const Board& board, const Factor& factor) {
    const AngleLine& line = board.angles.at(factor.symbol.index);
    const double side = factor.kind == FactorKind::Sine     ? line.rise
                        : factor.kind == FactorKind::Cosine ? line.run
                        : factor.horizontal                 ? line.run
                                                            : line.rise;
    return side / line.length;
}

std::string judgePart(const Board& board, const Factor& factor, double truth) {
    return std::fabs(worthOf(board, factor) - std::fabs(truth)) < kTrue ? "" : "n has other parts";
}

std::string judgeMoved(const Board& board, const Step& step, const Remark& remark) {
    const auto& symbol = partOf<Symbol>(remark, "force");
    const JointId joint = partOf<JointId>(remark, "joint");
    const Member& member = board.truss.members[symbol.member.at()];
    const bool inside = std::find(step.body.begin(), step.body.end(), joint) != step.body.end();
    if ((joint != member.a && joint != member.b) || inside) {
        return "a force is moved to a joint that is not its far end";
    }
    const Vec2 from = board.truss.joints[joint.at()].at - step.equations.front().point;
    const double arm = says(remark, phrase::kMovedPlumb) ? from.x : from.y;
    return std::fabs(arm) < kTrue ? "" : "a part of the moved force does have an arm";
}

// The factor of an unknown in the last line so far with this label.
double factorIn(const std::vector<Term>& terms, const Symbol& symbol) {
    double sum = 0;
    for (const Term& term : terms) {
        double product = term.sign;
        bool here = false;
        for (const Factor& factor : term.factors) {
            here = here || (factor.kind == FactorKind::Unknown && factor.symbol == symbol);
            product *= factor.kind == FactorKind::Unknown ? 1 : factor.value;
        }
        sum += here ? product : 0;
    }
    return sum;
}

// The lines of a step's solving in order, and the pair of equations that they are about.
struct SolvingJudge {
    const Board& board;
    const Step& step;
    SolvingCounts& counts;
    std::vector<const NumberLine*> pair{};
    Symbols written{}; // with letters

    [[nodiscard]] const NumberLine* next(std::size_t line) const {
        for (std::size_t i = line + 1; i < step.solving.size(); ++i) {
            const auto* numbers = std::get_if<NumberLine>(&step.solving[i]);
            if (numbers && (numbers->of.size() == 2 || numbers->of.empty())) {
                return numbers;
            }
        }
        return nullptr;
    }

    std::string judgeElimination(const Remark& remark, std::size_t line) {
        ++counts.eliminated;
        const auto& unknown = partOf<Symbol>(remark, "unknown");
        const double one = factorIn(pair.at(0)->left, unknown);
        const double other = factorIn(pair.at(1)->left, unknown);
        const bool adds = says(remark, phrase::kPairAdd) || says(remark, phrase::kPairMultiplyAdd);
        if (adds != (one * other < 0)) {
            return "it adds where it should subtract";
        }
        const bool same = std::fabs(std::fabs(one) - std::fabs(other)) < kTrue * std::fabs(one);
        if (same != (says(remark, phrase::kPairAdd) || says(remark, phrase::kPairSubtract))) {
            return "the factors are, or are not, the same";
        }
        const NumberLine* combined = next(line);
        if (!combined || combined->of.size() != 2 || factorIn(combined->left, unknown) != 0) {
            return "the unknown does not drop out";
        }
        const double sum = combined->of[0].factor * one + combined->of[1].factor * other;
        return std::fabs(sum) < kTrue * std::fabs(combined->of[0].factor * one)
                   ? ""
                   : "the multiples leave the unknown in";
    }

    [[nodiscard]] std::string judgeEqual(const Remark& remark) const {
        const NumberLine& line =
            *pair.at(static_cast<std::size_t>(partOf<int>(remark, "number") - 1));
        const double sign = says(remark, phrase::kPairEqual) ? 1 : -1;
        std::vector<double> values;
        for (const Term& term : line.left) {
            for (const Factor& factor : term.factors) {
                if (factor.kind == FactorKind::Unknown) {
                    values.push_back(factor.value);
                }
            }
        }
        const double size = std::max(std::fabs(values.at(0)), 1.0);
        return line.right.empty() && std::fabs(values.at(0) - sign * values.at(1)) < kTrue * size
                   ? ""
                   : "the two are not equal";
    }

    std::string judge(const Remark& remark, std::size_t line) {
        if (says(remark, phrase::kPairInNumbers)) {
            pair.clear();
        } else if (says(remark, phrase::kPairStart)) {
            const auto at = static_cast<std::size_t>(partOf<int>(remark, "number") - 1);
            const double factor = factorIn(pair.at(at)->left, partOf<Symbol>(remark, "left"));
            return pair.at(at)->left.size() == 1 && factor != 0 ? "" : "it holds the other one too";
        } else if (says(remark, phrase::kPairSubstitute)) {
            ++counts.substituted;
            const auto at = static_cast<std::size_t>(partOf<int>(remark, "number") - 1);
            const double factor = factorIn(pair.at(at)->left, partOf<Symbol>(remark, "unknown"));
            return std::fabs(std::fabs(factor) - 1) < kTrue ? "" : "the factor is not 1";
        } else if (says(remark, phrase::kPairEqual) || says(remark, phrase::kPairOpposite)) {
            ++counts.equal;
            return judgeEqual(remark);
        } else if (says(remark, phrase::kPairAdd) || says(remark, phrase::kPairSubtract) ||
                   says(remark, phrase::kPairMultiplyAdd) ||
                   says(remark, phrase::kPairMultiplySubtract)) {
            return judgeElimination(remark, line);
        } else if (says(remark, phrase::kWalkJoint)) {
            ++counts.walkedJoints;
            return judgeWalked(remark);
        } else if (says(remark, phrase::kWalkSpare)) {
            return openAt(partOf<JointId>(remark, "joint")).empty() ? "" : "a force there is open";
        }
        return "";
    }

    [[nodiscard]] Symbols openAt(JointId joint) const {
        Symbols open = board.unknownOn({joint});
        for (const auto& symbol : written) {
            open.erase(symbol);
        }
        return open;
    }

    std::string judgeWalked(const Remark& remark) {
        const Symbols said = setOf(partOf<std::vector<Symbol>>(remark, "unknowns"));
        if (said != openAt(partOf<JointId>(remark, "joint")) || said.size() > 2) {
            return "a joint gives other forces than it is said to";
        }
        written.insert(said.begin(), said.end());
        return "";
    }

    std::string run() {
        for (std::size_t i = 0; i < step.solving.size(); ++i) {
            std::string fault;
            if (const auto* remark = std::get_if<Remark>(&step.solving[i])) {
                fault = judge(*remark, i);
            } else if (const auto* line = std::get_if<NumberLine>(&step.solving[i])) {
                if (pair.size() < 2 && line->of.size() == 1) {
                    pair.push_back(line);
                }
            }
            if (!fault.empty()) {
                return fault;
            }
        }
        return "";
    }
};

std::string judgeRemark(const Board& board, const Step& step, const Remark& remark,
                        SolvingCounts& counts) {
    if (says(remark, phrase::kAcrossOne) || says(remark, phrase::kAcrossLine) ||
        says(remark, phrase::kAcrossParallels)) {
        ++counts.across;
        return judgeAcross(board, step, remark);
    }
    if (says(remark, phrase::kTurnedForce)) {
        ++counts.turned;
        return judgeTurned(board, remark);
    }
    if (says(remark, phrase::kTurnedUpright)) {
        return judgePart(board, partOf<Factor>(remark, "part"), step.equations.front().along.y);
    }
    if (says(remark, phrase::kTurnedLevel)) {
        return judgePart(board, partOf<Factor>(remark, "part"), step.equations.front().along.x);
    }
    if (says(remark, phrase::kPartsAlongN)) {
        const Vec2 n = step.equations.front().along;
        return judgePart(board, partOf<Factor>(remark, "level"), n.x) +
               judgePart(board, partOf<Factor>(remark, "upright"), n.y);
    }
    if (says(remark, phrase::kMovedPlumb) || says(remark, phrase::kMovedLevel)) {
        ++counts.moved;
        return judgeMoved(board, step, remark);
    }
    return "";
}

std::string judgeSolving(const Board& board, const Step& step, SolvingCounts& counts) {
    SolvingJudge judge{board, step, counts};
    for (const Remark& remark : step.remarks) {
        if (says(remark, phrase::kCallOne)) {
            ++counts.walks;
            judge.written = setOf({partOf<Symbol>(remark, "force")});
        } else if (says(remark, phrase::kCallTwo)) {
            ++counts.walks;
            judge.written =
                setOf({partOf<Symbol>(remark, "first"), partOf<Symbol>(remark, "second")});
        }
    }
    return judge.run();
}

} // namespace

std::string falseSolving(const Truss& truss, const Working& working, SolvingCounts& counts) {
    Board board{truss, structureOf(truss)};
    for (const Step& step : working.steps) {
        for (const AngleLine& line : step.angles) {
            board.angles[line.angle.index] = line;
        }
    }
    for (const Step& step : working.steps) {
        for (const Remark& remark : step.remarks) {
            if (std::string fault = judgeRemark(board, step, remark, counts); !fault.empty()) {
                return fault;
            }
        }
        if (std::string fault = judgeSolving(board, step, counts); !fault.empty()) {
            return fault;
        }
        for (const Found& found : step.found) {
            board.known.insert(keyOf(found.symbol));
        }
    }
    return "";
}

} // namespace gusset::support
