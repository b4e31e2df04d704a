#include "exchange/results/json_checks.hpp"

#include "exchange/files/format_words.hpp"
#include "exchange/json/json_text.hpp"
#include "exchange/results/json_trust.hpp"

#include <array>
#include <utility>

namespace gusset {

namespace {

constexpr std::array<std::string_view, 4> kPackingWords{"", "notStated", "close", "tooFar"};
constexpr std::string_view kTimberFormula = "EN 1995-1-1";
constexpr WordList kCheckWords{"", "tension", "crushing", "buckling", "net"};
// In the order of Lack.
constexpr std::array<std::string_view, 9> kLackWords{
    "area", "strength", "E", "radius", "force", "ultimate", "shapeAtHoles", "alongGrain", "E05"};

class ChecksWriter {
public:
    ChecksWriter(const PhraseBook& book, const Truss& truss)
        : book_(book), truss_(truss), newton_(toNewton(truss.units.force)) {}

    std::string write(const MemberChecks& checks, const CheckSentences& sentences,
                      const Issues& notes) {
        out_.beginObject();
        out_.text("formula", wordOf(kFormulaWords, truss_.checks.formula));
        out_.whole("over", checks.over);
        out_.whole("tooSlender", checks.slender);
        out_.whole("unchecked", checks.unchecked);
        if (checks.worst.valid()) {
            out_.object("worst", [&] {
                ends(checks.members[checks.worst.at()]);
                writeUse(checks.members[checks.worst.at()]);
            });
        }
        if (checks.movement) {
            writeMovement(*checks.movement);
        }
        out_.objects("members", checks.members, [&](const MemberCheck& it) { write(it); });
        if (!checks.members.empty()) {
            writeTrust(out_, checks.reliance.trust);
        }
        out_.texts("warnings", sentences.warnings);
        out_.texts("caution", sentences.caution);
        out_.issues("notes", notes, book_);
        out_.endObject();
        return out_.take() + "\n";
    }

private:
    void flagIf(std::string_view key, bool value) {
        if (value) {
            out_.yes(key);
        }
    }
    void ends(const MemberCheck& check) {
        const Member& member = truss_.members[check.member.at()];
        out_.text("a", truss_.joints[member.a.at()].label);
        out_.text("b", truss_.joints[member.b.at()].label);
    }

    void writeUse(const MemberCheck& check) {
        out_.result("use", check.use, lastPlaceOf(useErrorOf(check), 1));
    }

    void write(const MemberCheck& check) {
        ends(check);
        out_.result("force", check.force / newton_, lastPlaceOf(check.error / newton_, 1));
        writeChoice(check.choice);
        if (!isChecked(check)) {
            writeLacks(check.lacks);
        } else {
            if (check.governing != CheckKind::None) {
                out_.text("formula",
                          check.byTimber ? kTimberFormula : wordOf(kFormulaWords, check.formula));
                out_.text("check", wordOf(kCheckWords, check.governing));
                out_.result("allowed", check.capacity / newton_);
            }
            writeUse(check);
            flagIf("over", isOver(check));
        }
        if (check.slenderness > 0) {
            out_.result("slenderness", check.slenderness);
        }
        flagIf("tooSlender", check.tooSlender);
        flagIf("bends", check.bends);
        flagIf("reverses", check.reverses);
        if (check.twoWays) {
            writeWays(check);
        }
        if (check.local.number > 0) {
            flagIf("locallySlender", isLocallySlender(check));
            if (check.formula == ColumnFormula::En1993) {
                out_.whole("class", check.local.number);
            }
        }
        if (check.packing != Packing::None) {
            out_.text("packing", kPackingWords[static_cast<std::size_t>(check.packing)]);
        }
    }

    void writeWays(const MemberCheck& check) {
        const double length = toMetre(truss_.units.length);
        for (const auto& [key, way] :
             {std::pair{"inPlane", check.in}, std::pair{"outOfPlane", check.out}}) {
            out_.object(key, [&, &one = way] {
                out_.result("K", one.factor);
                out_.result("length", one.length / length);
                out_.result("slenderness", one.value);
            });
        }
    }

    void writeMovement(const MovementCheck& it) {
        const double unit = toMetre(truss_.units.displacement);
        out_.object("movement", [&] {
            flagIf("unknown", !it.known);
            if (it.known && it.joint.valid()) {
                out_.text("joint", truss_.joints[it.joint.at()].label);
                out_.result("moved", it.moved / unit);
                writeChoice(it.choice);
            }
            out_.result("allowed", it.allowed / unit);
            flagIf("tooFar", movesTooFar(it));
        });
    }

    void writeChoice(const LoadChoice& choice) {
        if (!std::holds_alternative<EveryLoad>(choice)) {
            out_.text(isCombination(choice) ? "combination" : "case", choiceName(choice));
        }
    }

    void writeLacks(const std::vector<Lack>& lacks) {
        std::vector<std::string> words;
        for (const Lack lack : lacks) {
            words.emplace_back(kLackWords[static_cast<std::size_t>(lack)]);
        }
        out_.texts("lacks", words);
    }

    const PhraseBook& book_;
    const Truss& truss_;
    const double newton_;
    JsonText out_{Layout::Indented};
};

} // namespace

std::string writeChecks(const PhraseBook& book, const Truss& truss, const MemberChecks& checks,
                        const CheckSentences& sentences, const Issues& notes) {
    return ChecksWriter(book, truss).write(checks, sentences, notes);
}

} // namespace gusset
