// The method of sections, where joints alone go no further: the cut whose equation holds one
// unknown, makes a joint solvable, and is short to write. The possible cuts are found once; the
// results for a part are kept until one of its unknowns becomes known (memo functions: D. Michie,
// Nature 218 (1968) 19–22). A cut is re-examined each time it loses an unknown, so that all
// sections of a working together take n² steps for n cuts and joints.

#include "hand/paper/cuts.hpp"
#include "hand/paper/stages.hpp"
#include "hand/stages/section_step.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>

namespace gusset {
namespace {

// A person would not consider a cut with more unknowns than this.
constexpr std::size_t kMostUnknowns = 6;

// A way to find one unknown of a part.
struct WayFound {
    Symbol symbol;
    Way way;
};

} // namespace

// The results for one side of a division: valid until one of its unknowns becomes known, or a load
// counts as negligible.
struct PartLook {
    std::size_t unknowns = 0;
    double scale = -1;
    std::vector<WayFound> candidates{};
};
struct SectionLooks {
    std::vector<PartLook> straight; // two per division
    std::vector<PartLook> bent;
};

namespace {

struct FoundSection {
    PartOfCut part;
    const WayFound& candidate;
    bool frees; // a joint becomes solvable once the unknown is known
};

bool settlesWithout(const Body& joint, const Symbol& known) {
    std::vector<Vec2> left;
    for (const Acting& force : joint.unknowns) {
        if (!(force.symbol == known)) {
            left.push_back(force.along);
        }
    }
    return left.size() == 1 || (left.size() == 2 && !parallel(left[0], left[1]));
}

// The unknowns that, once known, make a joint solvable.
struct Freeing {
    std::vector<bool> members;
    std::vector<bool> restraints;

    [[nodiscard]] bool contains(const Symbol& symbol) const {
        return symbol.kind == SymbolKind::Reaction ? restraints[symbol.restraint.at()]
                                                   : members[symbol.member.at()];
    }
};

Freeing freeingUnknowns(const Sheet& sheet) {
    Freeing freeing{std::vector<bool>(sheet.forces.size()),
                    std::vector<bool>(sheet.reactions.size())};
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        if (unknownsAt(sheet, joint) > 3) {
            continue;
        }
        const Body body = bodyOf(sheet, {joint});
        for (const Acting& force : body.unknowns) {
            if (!settlesWithout(body, force.symbol)) {
                continue;
            }
            if (force.symbol.kind == SymbolKind::Reaction) {
                freeing.restraints[force.symbol.restraint.at()] = true;
            } else {
                freeing.members[force.symbol.member.at()] = true;
            }
        }
    }
    return freeing;
}

// Which of two is better: less to write and less to look for; the first of equals is kept.
bool isBetter(const FoundSection& one, const FoundSection& other) {
    if (one.frees != other.frees) {
        return one.frees;
    }
    const Effort mine = effortOf(one.part, one.candidate.way);
    const Effort theirs = effortOf(other.part, other.candidate.way);
    return mine != theirs ? mine < theirs : comesBefore(one.part, other.part);
}

class Search {
public:
    explicit Search(const Sheet& sheet) : sheet_(sheet), freeing_(freeingUnknowns(sheet)) {
        for (std::size_t i = 0; i < sheet.reactions.size(); ++i) {
            if (!sheet.reactions[i]) {
                openReactions_.push_back(sheet.structure.restraints[i].joint);
            }
        }
    }

    void consider(const Divisions& cuts, std::vector<PartLook>& looks) {
        looks.resize(2 * cuts.count());
        for (std::size_t division = 0; division < cuts.count(); ++division) {
            const auto cut = cuts.cut(division);
            const auto open = static_cast<std::size_t>(
                std::count_if(cut.begin(), cut.end(), [&](MemberId member) {
                    return !sheet_.forces[member.at()].has_value();
                }));
            for (const int side : {0, 1}) {
                considerSide(cuts, division, side, open,
                             looks[2 * division + static_cast<std::size_t>(side)]);
            }
        }
    }

    [[nodiscard]] const std::optional<FoundSection>& best() const { return best_; }

private:
    void considerSide(const Divisions& cuts, std::size_t division, int side,
                      std::size_t openMembers, PartLook& look) {
        const auto openReactions = static_cast<std::size_t>(
            std::count_if(openReactions_.begin(), openReactions_.end(),
                          [&](JointId joint) { return cuts.contains(division, side, joint); }));
        const std::size_t unknowns = openMembers + openReactions;
        if (unknowns == 0 || unknowns > kMostUnknowns || cuts.sizeOf(division, side) < 2) {
            return;
        }
        if (look.unknowns != unknowns || look.scale != sheet_.scale) {
            look = lookAt(cuts, division, side);
        }
        for (const WayFound& candidate : look.candidates) {
            const FoundSection section{
                {cuts, division, side, unknowns}, candidate, freeing_.contains(candidate.symbol)};
            if (!best_ || isBetter(section, *best_)) {
                best_.emplace(section);
            }
        }
    }

    [[nodiscard]] PartLook lookAt(const Divisions& cuts, std::size_t division, int side) const {
        const Body body = bodyBeside(sheet_, cuts, division, side);
        PartLook look{body.unknowns.size(), sheet_.scale};
        for (const Acting& force : body.unknowns) {
            if (const auto way = wayTo(sheet_, body, force.symbol)) {
                look.candidates.push_back({force.symbol, *way});
            }
        }
        return look;
    }

    const Sheet& sheet_;
    Freeing freeing_;
    std::vector<JointId> openReactions_; // their joints
    std::optional<FoundSection> best_;
};

} // namespace

bool writeSection(Sheet& sheet) {
    if (!sheet.looks) {
        sheet.looks = std::make_shared<SectionLooks>();
    }
    Search search(sheet);
    search.consider(straightCuts(sheet), sheet.looks->straight);
    if (!search.best() || !search.best()->frees) {
        search.consider(bentCuts(sheet), sheet.looks->bent);
    }
    if (!search.best()) {
        return false;
    }
    const FoundSection& best = *search.best();
    const Body body = bodyBeside(sheet, best.part.cuts, best.part.division, best.part.side);
    const auto& [symbol, way] = best.candidate;
    const bool sameCut =
        body.joints == sheet.lastCut && sheet.steps.back().kind == StepKind::SectionEquation;
    if (!sameCut) {
        writeCut(sheet, body, {remarkThat(phrase::kNoEasyJoint)});
    }
    sheet.lastCut = body.joints;
    writeSectionEquation(sheet, body, written(sheet, body, symbol, way));
    return true;
}

} // namespace gusset
