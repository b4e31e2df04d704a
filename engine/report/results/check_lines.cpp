#include "report/results/check_words.hpp"

#include "core/number.hpp"
#include "phrases/results/checks.hpp"
#include "phrases/results/lists.hpp"
#include "report/results/check_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"

#include <algorithm>

namespace gusset {

namespace {

constexpr std::size_t kMostMembers = 12; // members in a sentence

RichLine lackWord(const PhraseBook& book, Lack lack) {
    switch (lack) {
    case Lack::Area:
        return say(book, phrase::kLackArea);
    case Lack::Strength:
        return say(book, phrase::kWordStrength);
    case Lack::Modulus:
        return say(book, phrase::kLackModulus);
    case Lack::Radius:
        return say(book, phrase::kLackRadius);
    case Lack::Ultimate:
        return say(book, phrase::kLackUltimate);
    case Lack::HoleDepth:
        return say(book, phrase::kLackHoleDepth);
    case Lack::Along:
        return say(book, phrase::kLackAlong);
    case Lack::Modulus05:
        return say(book, phrase::kLackModulus05);
    case Lack::Force:
        break;
    }
    return say(book, phrase::kLackForce);
}

} // namespace

RichLine givenNumber(const Truss& truss, double value) {
    return plainLine(formatNumber(value, typedStyleOf(truss)));
}

RichLine lacksText(const PhraseBook& book, const std::vector<Lack>& lacks) {
    std::vector<RichLine> words;
    for (const Lack lack : lacks) {
        words.push_back(lackWord(book, lack));
    }
    return listOf(book, words);
}

namespace {

// The names of the members for which `isSo` holds; only the first dozen if there are many.
template <class IsSo>
RichLine membersWhere(const Writer& writer, const MemberChecks& checks, IsSo isSo) {
    std::vector<RichLine> names;
    std::size_t more = 0;
    for (const MemberCheck& check : checks.members) {
        if (isSo(check) && names.size() < kMostMembers) {
            names.push_back(plainLine(memberName(writer.truss, check.member)));
        } else if (isSo(check)) {
            ++more;
        }
    }
    if (more == 0) {
        return listOf(writer, names);
    }
    RichLine list;
    for (const RichLine& name : names) {
        list = list.empty() ? name : say(writer, phrase::kListMore, {{"a", list}, {"b", name}});
    }
    return say(writer, phrase::kListAndMore, {{"list", list}, {"n", more}});
}

class CheckLines {
public:
    CheckLines(const Writer& writer, const MemberChecks& checks)
        : writer_(writer), checks_(checks) {}

    void sayLoads(const CheckedLoads& loads) {
        if (loads.worst) {
            std::vector<RichLine> names;
            for (const LoadChoice& choice : loads.choices) {
                names.push_back(plainLine(choiceName(choice)));
            }
            add(phrase::kCheckOverChoices, {{"choices", listOf(writer_, names)}});
        } else if (const std::string name = choiceName(loads.choices.front()); !name.empty()) {
            add(phrase::kCheckUnder, {{"loads", name}});
        } else {
            add(phrase::kCheckUnderAll);
        }
    }

    void sayFormula() {
        const CheckSettings& it = writer_.truss.checks;
        const RichLine k = number(it.effectiveLength);
        switch (it.formula) {
        case ColumnFormula::Euler:
            add(phrase::kCheckByEuler, {{"strength", number(it.strengthFactor)},
                                        {"euler", number(it.eulerFactor)},
                                        {"k", k}});
            return;
        case ColumnFormula::En1993:
            add(phrase::kCheckByEn1993, {{"curve", curveName(it.curve)},
                                         {"m0", number(it.gammaM0)},
                                         {"m1", number(it.gammaM1)},
                                         {"k", k}});
            break;
        case ColumnFormula::Aisc360:
            if (it.safety == AiscSafety::Resistance) {
                add(phrase::kCheckByPhi, {{"phi", number(it.phi)}, {"k", k}});
            } else {
                add(phrase::kCheckByOmega, {{"omega", number(it.omega)}, {"k", k}});
            }
            break;
        }
        if (const RichLine others = membersWhere(writer_, checks_, isNotSteel); !others.empty()) {
            add(phrase::kCheckNotSteel, {{"strength", number(it.strengthFactor)},
                                         {"euler", number(it.eulerFactor)},
                                         {"members", others}});
        }
    }

    void sayVerdict() {
        if (checks_.worst.valid()) {
            const MemberCheck& worst = checks_.members[checks_.worst.at()];
            add(phrase::kCheckWorst, {{"member", memberName(writer_.truss, worst.member)},
                                      {"use", useText(writer_.truss, worst.use, useErrorOf(worst))},
                                      {"check", checkWord(writer_, worst.governing)}});
        }
        sayOfThose(phrase::kCheckOver, isOver);
        sayOfThose(phrase::kCheckSlender,
                   [](const MemberCheck& check) { return check.tooSlender; });
        if (checks_.over == 0 && checks_.slender == 0 && checks_.unchecked == 0 && coversAll()) {
            add(phrase::kCheckHolds);
        }
    }

    // Whether what is allowed is what these checks say for every member.
    [[nodiscard]] bool coversAll() const {
        return std::none_of(checks_.members.begin(), checks_.members.end(), [](const auto& it) {
            return isLocallySlender(it) || it.packing == Packing::Far;
        });
    }

    void sayReliance() {
        for (const auto& lines : {standingSentences(writer_, checks_.reliance),
                                  trustSentences(writer_, checks_.reliance)}) {
            lines_.insert(lines_.end(), lines.begin(), lines.end());
        }
    }

    // Members that lack the same data are named together.
    void sayLacks() {
        std::vector<std::vector<Lack>> told;
        for (const MemberCheck& check : checks_.members) {
            const std::vector<Lack>& lacks = check.lacks;
            if (lacks.empty() || std::find(told.begin(), told.end(), lacks) != told.end()) {
                continue;
            }
            told.push_back(lacks);
            add(phrase::kCheckLacks,
                {{"what", lacksText(writer_, lacks)},
                 {"members", membersWhere(writer_, checks_, [&](const MemberCheck& other) {
                      return other.lacks == lacks;
                  })}});
        }
    }

    // What makes a member carry less than these checks allow, and what they take for granted.
    void sayLimits() {
        const bool byAisc = writer_.truss.checks.formula == ColumnFormula::Aisc360;
        sayOfThose(byAisc ? phrase::kCheckSlenderElements : phrase::kCheckClass4, isLocallySlender);
        sayOfThose(byAisc ? phrase::kCheckPackingFarAisc : phrase::kCheckPackingFarEn,
                   [](const MemberCheck& check) { return check.packing == Packing::Far; });
        sayOfThose(phrase::kCheckPackingUnknown,
                   [](const MemberCheck& check) { return check.packing == Packing::Unknown; });
        sayOfThose(phrase::kCheckReverses, [](const MemberCheck& check) { return check.reverses; });
    }

    void sayMovement() {
        if (!checks_.movement) {
            return;
        }
        const MovementCheck& it = *checks_.movement;
        if (!it.known) {
            add(phrase::kCheckMovesUnknown);
        } else if (!it.joint.valid()) {
            add(phrase::kCheckMovesNot);
        } else {
            add(movesTooFar(it) ? phrase::kCheckMovesTooFar : phrase::kCheckMoves,
                {{"joint", writer_.truss.joints[it.joint.at()].label},
                 {"moved", movementText(it.moved)},
                 {"allowed", movementText(it.allowed)},
                 {"span", withUnit(formatMeasured(it.span / toMetre(writer_.truss.units.length),
                                                  writer_.truss.classSettings.decimalSign),
                                   symbolOf(writer_.truss.units.length))},
                 {"x", number(writer_.truss.checks.deflection)}});
        }
    }

    void sayBends() {
        sayOfThose(phrase::kCheckBends, [](const MemberCheck& check) { return check.bends; });
    }

    // By what else members were checked.
    void sayParts() {
        sayOfThose(phrase::kCheckOwnFactors, [&](const MemberCheck& check) {
            const LengthFactors& own = writer_.truss.members[check.member.at()].factors;
            return own.in || own.out;
        });
        sayTimber();
        sayNet();
        sayHeld();
    }

    [[nodiscard]] std::vector<std::string> take() { return std::move(lines_); }

private:
    void add(Phrase<> phrase) { lines_.push_back(sayPlain(writer_, phrase)); }
    template <PartName... Names>
    void add(Phrase<Names...> phrase, const PartsOf<Words, Names...>& parts) {
        lines_.push_back(sayPlain(writer_, phrase, parts));
    }

    template <class IsSo>
    void sayOfThose(decltype("{members}"_phrase) phrase, IsSo isSo) {
        if (const RichLine members = membersWhere(writer_, checks_, isSo); !members.empty()) {
            add(phrase, {{"members", members}});
        }
    }

    [[nodiscard]] std::string movementText(double metres) const {
        const LengthUnit unit = writer_.truss.units.displacement;
        return withUnit(
            formatMeasured(metres / toMetre(unit), writer_.truss.classSettings.decimalSign),
            symbolOf(unit));
    }

    void sayTimber() {
        const CheckSettings& it = writer_.truss.checks;
        const RichLine members =
            membersWhere(writer_, checks_, [](const MemberCheck& check) { return check.byTimber; });
        if (!members.empty()) {
            add(phrase::kCheckByEn1995, {{"k", number(it.kMod)},
                                         {"gamma", number(it.gammaTimber)},
                                         {"beta", number(it.betaC)},
                                         {"members", members}});
        }
    }

    void sayNet() {
        const CheckSettings& it = writer_.truss.checks;
        const auto ofThose = [&](bool bySteel) {
            return membersWhere(writer_, checks_, [&](const MemberCheck& check) {
                const bool standard = check.formula != ColumnFormula::Euler;
                return check.onNet > 0 && standard == bySteel;
            });
        };
        const RichLine bySteel = ofThose(true);
        if (!bySteel.empty() && it.formula == ColumnFormula::En1993) {
            add(phrase::kCheckNetEn1993, {{"m2", number(it.gammaM2)}, {"members", bySteel}});
        } else if (!bySteel.empty()) {
            add(phrase::kCheckNetAisc, {{"members", bySteel}});
        }
        if (const RichLine others = ofThose(false); !others.empty()) {
            add(phrase::kCheckNetOther, {{"members", others}});
        }
    }

    void sayHeld() {
        const auto& held = writer_.truss.checks.held;
        if (held && held->empty()) {
            add(phrase::kCheckNoneHeld);
        } else if (held) {
            std::vector<RichLine> joints;
            for (const JointId joint : *held) {
                joints.push_back(plainLine(writer_.truss.joints[joint.at()].label));
            }
            add(phrase::kCheckHeld, {{"joints", listOf(writer_, joints)}});
        }
    }

    [[nodiscard]] RichLine number(double value) const { return givenNumber(writer_.truss, value); }

    static bool isNotSteel(const MemberCheck& check) {
        return check.make.area && !check.make.steel && !check.byTimber;
    }

    const Writer writer_;
    const MemberChecks& checks_;
    std::vector<std::string> lines_;
};

} // namespace

std::vector<std::string> checkLines(const Writer& writer, const MemberChecks& checks,
                                    const CheckedLoads& loads) {
    if (checks.members.empty()) {
        std::vector<std::string> says{sayPlain(writer, phrase::kCheckNothing)};
        for (const Issue& fault : checks.faults) {
            says.push_back(faultSentence(writer.book, fault));
        }
        return says;
    }
    CheckLines lines(writer, checks);
    lines.sayVerdict();
    lines.sayReliance();
    lines.sayLacks();
    lines.sayLimits();
    lines.sayBends();
    lines.sayMovement();
    lines.sayLoads(loads);
    lines.sayFormula();
    lines.sayParts();
    return lines.take();
}

std::string formulaLine(const Writer& writer, const MemberChecks& checks) {
    CheckLines lines(writer, checks);
    lines.sayFormula();
    return lines.take().front();
}

std::vector<std::string> checkWarnings(const Writer& writer, const MemberChecks& checks) {
    CheckLines lines(writer, checks);
    if (!checks.members.empty()) {
        lines.sayReliance();
    }
    return lines.take();
}

std::vector<std::string> lackLines(const Writer& writer, const MemberChecks& checks) {
    CheckLines lines(writer, checks);
    lines.sayLacks();
    return lines.take();
}

} // namespace gusset
