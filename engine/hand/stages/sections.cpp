#include "hand/stages/sections.hpp"

#include "hand/paper/cuts.hpp"
#include "hand/paper/stages.hpp"
#include "hand/stages/explain.hpp"
#include "hand/stages/section_step.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <cassert>
#include <optional>
#include <tuple>
#include <utility>

namespace gusset {
namespace {

// A working of one step that says why it ends there.
Working refusal(const Solution& solution, const std::vector<Remark>& why) {
    Working working;
    working.counting = solution.counting;
    Step step;
    step.kind = StepKind::SectionIntro;
    step.remarks = why;
    working.steps.push_back(step);
    return working;
}

bool hasWorking(const Solution& solution) {
    return solution.solved && solution.counting.redundants == 0;
}

// Up to the point where a section can begin: reactions, slopes, zero-force members.
Sheet beginSection(const Truss& truss, const LoadChoice& choice,
                   std::shared_ptr<Shape> shape = {}) {
    Sheet sheet = makeSheet(truss, choice, std::move(shape));
    writeWholeBody(sheet);
    writeAllReactions(sheet);
    writeGeometry(sheet);
    writeIdleMembers(sheet);
    return sheet;
}

Working finish(Sheet& sheet, const LoadChoice& choice, const Solution& solution,
               const std::vector<Symbol>& wanted) {
    Working whole;
    whole.counting = solution.counting;
    whole.structure = sheet.structure;
    whole.loads = sheet.loads;
    whole.exact = exactValuesOf(sheet.truss, choice);
    whole.steps = std::move(sheet.steps);
    Working working = stepsFor(whole, wanted);
    working.complete = !working.steps.empty();
    return working;
}

// A part that gives the force.
struct PartFound {
    PartOfCut part;
    Way way;
};

bool isBetter(const PartFound& one, const PartFound& other) {
    const auto mine = effortOf(one.part, one.way);
    const auto theirs = effortOf(other.part, other.way);
    return mine != theirs ? mine < theirs : comesBefore(one.part, other.part);
}

// Considers all parts that cut the member.
void consider(const Sheet& sheet, const Divisions& cuts, const Symbol& symbol,
              std::optional<PartFound>& best) {
    for (std::size_t division = 0; division < cuts.count(); ++division) {
        const auto cut = cuts.cut(division);
        if (!std::binary_search(cut.begin(), cut.end(), symbol.member)) {
            continue;
        }
        for (const int side : {0, 1}) {
            const Body body = bodyBeside(sheet, cuts, division, side);
            const auto way = wayTo(sheet, body, symbol);
            if (!way) {
                continue;
            }
            const PartFound candidate{{cuts, division, side, body.unknowns.size()}, *way};
            if (!best || isBetter(candidate, *best)) {
                best.emplace(candidate);
            }
        }
    }
}

} // namespace

std::optional<SectionChoice> bestSection(const Sheet& sheet, const Symbol& symbol) {
    assert(symbol.kind == SymbolKind::MemberForce);
    if (valueOf(sheet, symbol)) {
        return std::nullopt;
    }
    std::optional<PartFound> best;
    consider(sheet, straightCuts(sheet), symbol, best);
    if (!best || best->part.unknowns > 3) {
        consider(sheet, bentCuts(sheet), symbol, best);
    }
    if (!best) {
        return std::nullopt;
    }
    const Body body = bodyBeside(sheet, best->part.cuts, best->part.division, best->part.side);
    return SectionChoice{body, written(sheet, body, symbol, best->way)};
}

namespace {

// The joints on the first member's side, if the cut separates the truss.
std::optional<TrussPart> sideOfCut(const Truss& truss, const std::vector<MemberId>& cut) {
    std::vector<int> side(truss.joints.size(), -1);
    const auto isCut = [&](std::size_t i) {
        return std::find(cut.begin(), cut.end(), MemberId{static_cast<int>(i)}) != cut.end();
    };
    int sides = 0;
    for (std::size_t start = 0; start < side.size(); ++start) {
        if (side[start] >= 0) {
            continue;
        }
        side[start] = sides;
        for (bool grown = true; grown;) {
            grown = false;
            for (std::size_t i = 0; i < truss.members.size(); ++i) {
                const std::size_t a = truss.members[i].a.at();
                const std::size_t b = truss.members[i].b.at();
                if (!isCut(i) && (side[a] == sides) != (side[b] == sides)) {
                    side[a] = side[b] = sides;
                    grown = true;
                }
            }
        }
        ++sides;
    }
    if (sides != 2) {
        return std::nullopt;
    }
    TrussPart part;
    for (std::size_t i = 0; i < side.size(); ++i) {
        if (side[i] == 0) {
            part.push_back({static_cast<int>(i)});
        }
    }
    return part;
}

TrussPart otherSide(const Truss& truss, const TrussPart& part) {
    TrussPart other;
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        if (std::find(part.begin(), part.end(), joint) == part.end()) {
            other.push_back(joint);
        }
    }
    return other;
}

std::size_t forcesOn(const Sheet& sheet, const Body& body) {
    const auto loads = static_cast<std::size_t>(
        std::count_if(body.joints.begin(), body.joints.end(),
                      [&](JointId joint) { return hasLoad(sheet, joint); }));
    return body.knowns.size() + body.unknowns.size() + loads;
}

// A force of a drawn cut, from one side, before any other force of the cut is known.
struct ForceOfCut {
    Symbol symbol;
    std::optional<Way> way{};
};

// One side of a drawn cut, and how each of its forces is found there.
struct SideOfCut {
    Body body;
    std::vector<ForceOfCut> forces{}; // those not known yet

    // Smaller is better: as in bestSection, all forces together.
    [[nodiscard]] auto effort(const Sheet& sheet) const {
        std::size_t without = 0;
        int difficult = 0;
        std::size_t terms = 0;
        for (const ForceOfCut& force : forces) {
            without += force.way ? 0u : 1u;
            difficult += force.way ? difficulty(force.way->kind) : 0;
            terms += force.way ? force.way->terms : 0;
        }
        return std::tuple(without, difficult, terms, forcesOn(sheet, body), body.joints.size());
    }
};

SideOfCut sideWith(const Sheet& sheet, const TrussPart& part, const std::vector<MemberId>& cut) {
    SideOfCut side{bodyOf(sheet, part)};
    for (const MemberId member : cut) {
        const Symbol symbol = forceSymbol(member);
        const auto symbols = symbolsOf(side.body.unknowns); // not those within a part
        if (std::find(symbols.begin(), symbols.end(), symbol) != symbols.end()) {
            side.forces.push_back({symbol, wayTo(sheet, side.body, symbol)});
        }
    }
    return side;
}

SideOfCut betterSide(const Sheet& sheet, const TrussPart& part, const std::vector<MemberId>& cut) {
    SideOfCut one = sideWith(sheet, part, cut);
    SideOfCut other = sideWith(sheet, otherSide(sheet.truss, part), cut);
    return other.effort(sheet) < one.effort(sheet) ? other : one;
}

// Adds another cut that would give one of these members, if there is one.
void addSuggestion(const Sheet& sheet, const std::vector<MemberId>& cut, std::vector<Remark>& why) {
    for (const MemberId member : cut) {
        const auto section = bestSection(sheet, forceSymbol(member));
        if (section) {
            why.push_back(remarkThat(phrase::kTryCut,
                                     {{"symbol", forceSymbol(member)},
                                      {"members", cutMembers(sheet, section->body.joints)}}));
            return;
        }
    }
}

// Each force of the cut by an equation that holds no other one, the easiest first; those without
// such an equation then with the help of the others. Returns the cut members that are known in the
// end.
std::vector<Symbol> writeWholeCut(Sheet& sheet, SideOfCut side, const std::vector<MemberId>& cut) {
    writeCut(sheet, side.body, {});
    std::erase_if(side.forces, [](const ForceOfCut& force) { return !force.way; });
    std::stable_sort(side.forces.begin(), side.forces.end(),
                     [](const ForceOfCut& one, const ForceOfCut& other) {
                         return std::pair(difficulty(one.way->kind), one.way->terms) <
                                std::pair(difficulty(other.way->kind), other.way->terms);
                     });
    for (const ForceOfCut& force : side.forces) {
        writeSectionEquation(sheet, side.body, written(sheet, side.body, force.symbol, *force.way));
    }
    Body body = bodyOf(sheet, side.body.joints);
    while (!body.unknowns.empty()) {
        const auto isolation = isolateAny(sheet, body, Preference::Moments);
        if (!isolation) {
            break;
        }
        writeSectionEquation(sheet, body, *isolation);
        body = bodyOf(sheet, body.joints);
    }
    std::vector<Symbol> known;
    for (const MemberId member : cut) {
        if (sheet.forces[member.at()]) {
            known.push_back(forceSymbol(member));
        }
    }
    return known;
}

} // namespace

Working workSection(const Truss& truss, const LoadChoice& choice, const Solution& solution,
                    MemberId member, std::shared_ptr<Shape> shape) {
    assert(member.valid() && member.at() < truss.members.size());
    if (!hasWorking(solution)) {
        return refusal(solution, {remarkThat(phrase::kNoWorking)});
    }
    const Symbol symbol = forceSymbol(member);
    Sheet sheet = beginSection(truss, choice, std::move(shape));
    if (!sheet.forces[member.at()]) { // else it is a zero-force member by inspection
        const auto section = bestSection(sheet, symbol);
        if (!section) {
            return refusal(solution,
                           {remarkThat(phrase::kNoSectionFor, {{"member", std::vector{member}}})});
        }
        writeCut(sheet, section->body, {});
        writeSectionEquation(sheet, section->body, section->isolation);
    }
    return finish(sheet, choice, solution, {symbol});
}

Working workCut(const Truss& truss, const LoadChoice& choice, const Solution& solution,
                const std::vector<MemberId>& cut) {
    if (!hasWorking(solution)) {
        return refusal(solution, {remarkThat(phrase::kNoWorking)});
    }
    Sheet sheet = beginSection(truss, choice);
    const auto part = sideOfCut(truss, cut);
    if (!part) {
        std::vector<Remark> why{remarkThat(phrase::kNotTwoParts, {{"members", cut}})};
        addSuggestion(sheet, cut, why);
        return refusal(solution, why);
    }
    const SideOfCut side = betterSide(sheet, *part, cut);
    const std::vector<Symbol> wanted = writeWholeCut(sheet, side, cut);
    if (wanted.empty()) {
        std::vector<Remark> why{
            remarkThat(phrase::kTooManyCut,
                       {{"n", static_cast<int>(side.body.unknowns.size())}, {"members", cut}})};
        addSuggestion(sheet, cut, why);
        return refusal(solution, why);
    }
    return finish(sheet, choice, solution, wanted);
}

} // namespace gusset
