#include "report/derivation/check_working.hpp"

#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "phrases/working/check_working.hpp"
#include "report/results/check_text.hpp"
#include "report/results/results_text.hpp"
#include "report/text/formula.hpp"

#include <cmath>
#include <numbers>

namespace gusset {
namespace {

constexpr const char* kLambda = "\u03BB";
constexpr const char* kPhi = "\u03A6";    // Φ of EN 1993-1-1
constexpr const char* kChi = "\u03C7";    // χ
constexpr const char* kStress = "\u03C3"; // σ
constexpr const char* kGamma = "\u03B3";  // γ
constexpr const char* kSquared = "\u00B2";

// Builds a formula from left to right.
class FormulaWriter {
public:
    FormulaWriter(const Truss& truss) : truss_(truss) {}

    FormulaWriter& name(std::string text, std::string subscript = {}) {
        formula_.push_back(variableToken(std::move(text), std::move(subscript)));
        return *this;
    }
    FormulaWriter& squared(std::string text, std::string subscript = {}) {
        name(std::move(text), std::move(subscript));
        formula_.push_back(numberToken(kSquared));
        return *this;
    }
    FormulaWriter& sign(const char* text) {
        formula_.push_back(operatorToken(text));
        return *this;
    }
    FormulaWriter& equals() { return sign("="); }
    FormulaWriter& times() { return sign(kDot); }
    FormulaWriter& over() { return sign("/"); }
    // A number from the input: as many figures as it has, up to six.
    FormulaWriter& given(double value) { return number(formatNumber(value, typedStyleOf(truss_))); }
    // A computed number: five figures, one more than the last line of a check needs.
    FormulaWriter& found(double value) { return number(foundText(value)); }
    FormulaWriter& square(double value) { return number(foundText(value) + kSquared); }
    FormulaWriter& number(std::string text) {
        formula_.push_back(numberToken(std::move(text)));
        return *this;
    }
    FormulaWriter& root(double value) {
        formula_.push_back({.kind = TokenKind::Root, .text = foundText(value)});
        return *this;
    }
    FormulaWriter& unit(const std::string& symbol) {
        if (!symbol.empty()) {
            formula_.push_back(wordToken(symbol));
        }
        return *this;
    }
    // Conversion of stress · area to force, where the model's units need one: "/ 1000".
    FormulaWriter& toForce() {
        const double factor =
            toPascal(truss_.units.stress) * areaUnit() / toNewton(truss_.units.force);
        const double inverse = std::round(1 / factor);
        if (std::abs(factor - 1) < kWholeRatio) {
            return *this;
        }
        return std::abs(factor * inverse - 1) < kWholeRatio ? over().given(inverse)
                                                            : times().given(factor);
    }

    void put(Passage& passage, LineRole role = LineRole::Equation) {
        addFormula(passage, role, std::move(formula_));
        formula_.clear();
    }

    [[nodiscard]] double areaUnit() const {
        const double metre = toMetre(truss_.units.section);
        return metre * metre;
    }

private:
    [[nodiscard]] std::string foundText(double value) const {
        return formatNumber(value,
                            {NumberForm::Significant, 5, truss_.classSettings.decimalSign, false});
    }

    const Truss& truss_;
    Formula formula_;
};

// The numbers of a check in the model's units.
class CheckSheet {
public:
    CheckSheet(const Writer& writer, const MemberCheck& check)
        : writer_(writer), it_(check),
          settings_(writer.truss.checks), passage_{say(writer, phrase::kCheckTitle,
                                                       {{"member",
                                                         memberName(writer.truss, check.member)}})},
          write_(writer.truss), stress_(toPascal(writer.truss.units.stress)),
          length_(toMetre(writer.truss.units.section)), area_(length_ * length_),
          newtons_(toNewton(writer.truss.units.force)) {}

    std::vector<Passage> take() {
        sayForce();
        if (!isChecked(it_)) {
            sayLacks();
        } else if (it_.governing == CheckKind::None) {
            writeSlenderness();
        } else {
            writeGiven();
            writeStrength();
            writeSlenderness();
            if (it_.force < 0) {
                writeBuckling();
                tell(phrase::kCheckGoverns, {{"check", checkWord(writer_, it_.governing)}});
            }
            writeUse();
        }
        for (const std::string& line : cautionLines(writer_)) {
            passage_.parts.push_back(WorkingLine{LineRole::Caution, plainLine(line)});
        }
        return {std::move(passage_)};
    }

private:
    void tell(Phrase<> phrase) { addSentence(passage_, say(writer_, phrase)); }
    template <PartName... Names>
    void tell(Phrase<Names...> phrase, const PartsOf<Words, Names...>& parts) {
        addSentence(passage_, say(writer_, phrase, parts));
    }

    [[nodiscard]] RichLine figure(double value) const {
        return plainLine(formatNumber(value, typedStyleOf(writer_.truss)));
    }

    void sayForce() {
        if (it_.force == 0 && isChecked(it_)) {
            tell(phrase::kCheckIdle);
            return;
        }
        tell(it_.force > 0 ? phrase::kCheckPulled : phrase::kCheckPressed,
             {{"force", forceText(writer_.truss, std::abs(it_.force) / newtons_,
                                  numberStyleOf(writer_.truss))}});
    }

    void sayLacks() {
        MemberChecks alone;
        alone.members = {it_};
        alone.unchecked = 1;
        for (const std::string& line : lackLines(writer_, alone)) {
            addSentence(passage_, plainLine(line));
        }
    }

    void writeGiven() {
        const std::string section = symbolOf(writer_.truss.units.section);
        const std::string stress = symbolOf(writer_.truss.units.stress);
        const std::string square = section.empty() ? section : section + kSquared;
        tell(phrase::kCheckGiven);
        write_.name("A").equals().given(*it_.make.area / area_).unit(square);
        write_.sign(",");
        nameStrength().equals().given(strength()).unit(stress);
        if (it_.force < 0) {
            write_.sign(",").name("E").equals().given(modulus()).unit(stress);
        }
        if (it_.make.radius) {
            write_.sign(",").name("L").equals().given(it_.length / length_).unit(section);
            write_.sign(",").name("r").equals().given(*it_.make.radius / length_).unit(section);
        }
        write_.put(passage_);
    }

    [[nodiscard]] bool byAisc() const { return it_.formula == ColumnFormula::Aisc360; }
    [[nodiscard]] bool byEn() const { return it_.formula == ColumnFormula::En1993; }
    [[nodiscard]] double strength() const { return *it_.make.strength / stress_; }
    [[nodiscard]] double modulus() const { return *it_.make.modulus / stress_; }
    [[nodiscard]] double area() const { return *it_.make.area / area_; }

    // f, f_y or F_y.
    FormulaWriter& nameStrength() {
        return byAisc() ? write_.name("F", "y") : byEn() ? write_.name("f", "y") : write_.name("f");
    }

    // "· 0.9", "/ 1.67", "/ 1.5": as a symbol or as a number.
    void divide(bool names, const char* gamma, double factor) {
        if (byAisc() && settings_.safety == AiscSafety::Resistance) {
            write_.times();
            names ? write_.name("\u03C6") : write_.given(settings_.phi);
        } else if (byAisc()) {
            write_.over();
            names ? write_.name("\u03A9") : write_.given(settings_.omega);
        } else {
            write_.over();
            names ? write_.name(kGamma, byEn() ? gamma : std::string{}) : write_.given(factor);
        }
    }

    void force(double newtons) {
        write_.equals().found(newtons / newtons_).unit(symbolOf(writer_.truss.units.force));
    }

    void writeStrength() {
        const double factor = byEn() ? settings_.gammaM0 : settings_.strengthFactor;
        tell(phrase::kCheckStrengthLine);
        write_.name("N", "R").equals();
        nameStrength().times().name("A");
        divide(true, "M0", factor);
        write_.equals().given(strength()).times().given(area());
        divide(false, "M0", factor);
        write_.toForce();
        force(it_.onArea);
        write_.put(passage_);
    }

    void writeSlenderness() {
        if (it_.slenderness == 0) {
            return;
        }
        const bool pulled = it_.force > 0;
        tell(phrase::kCheckSlendernessLine);
        write_.name(kLambda).equals();
        if (!pulled) {
            write_.name("K").times();
        }
        write_.name("L").over().name("r").equals();
        if (!pulled) {
            write_.given(settings_.effectiveLength).times();
        }
        write_.given(it_.length / length_).over().given(*it_.make.radius / length_);
        write_.equals().found(it_.slenderness).put(passage_);
        if (it_.limit == 0) {
            tell(phrase::kCheckNoLimit);
        } else {
            tell(it_.tooSlender ? phrase::kCheckTooSlender : phrase::kCheckSlenderEnough,
                 {{"limit", figure(it_.limit)}});
        }
    }

    // σ = π² · E / λ², or F_e.
    FormulaWriter& nameElastic() {
        return byAisc() ? write_.name("F", "e") : write_.name(kStress, "cr");
    }
    void writeElastic(Phrase<> heading) {
        tell(heading);
        nameElastic().equals().squared("\u03C0").times().name("E").over().squared(kLambda);
        write_.equals()
            .square(std::numbers::pi)
            .times()
            .given(modulus())
            .over()
            .square(it_.slenderness);
        write_.equals().found(elastic()).unit(symbolOf(writer_.truss.units.stress));
        write_.put(passage_);
    }

    [[nodiscard]] double elastic() const { return it_.elastic / stress_; }

    void writeBuckling() {
        if (byEn()) {
            writeElastic(phrase::kCheckElasticLine);
            writeReduction();
        } else if (byAisc()) {
            writeElastic(phrase::kCheckElasticLine);
            writeCriticalStress();
        } else {
            writeElastic(phrase::kCheckEulerLine);
            writeEuler();
        }
    }

    void writeEuler() {
        write_.name("N", "cr").equals().name(kStress, "cr").times().name("A");
        write_.equals().found(elastic()).times().given(area()).toForce();
        force(it_.elastic * *it_.make.area);
        write_.put(passage_);
        tell(phrase::kCheckBucklingLine);
        write_.name("N", "b").equals().name("N", "cr").over().name("n").equals();
        write_.found(it_.elastic * *it_.make.area / newtons_).over().given(settings_.eulerFactor);
        force(it_.buckling);
        write_.put(passage_);
    }

    void writeReduction() {
        const BucklingReduction& r = it_.reduction;
        const double square = r.relative * r.relative;
        tell(phrase::kCheckReductionLine,
             {{"curve", curveName(settings_.curve)}, {"alpha", figure(r.imperfection)}});
        write_.squared(kLambda, "r").equals().name("f", "y").over().name(kStress, "cr");
        write_.equals().given(strength()).over().found(elastic()).equals().found(square);
        write_.sign(",").name(kLambda, "r").equals().root(square).equals().found(r.relative);
        write_.put(passage_);
        if (r.relative <= 0.2) {
            tell(phrase::kCheckPlateau);
            write_.name(kChi).equals().given(1).put(passage_);
        } else {
            writePhi(r);
        }
        tell(phrase::kCheckBucklingLine);
        write_.name("N", "b").equals().name(kChi).times().name("f", "y").times().name("A");
        write_.over().name(kGamma, "M1").equals().found(r.chi).times().given(strength());
        write_.times().given(area()).over().given(settings_.gammaM1).toForce();
        force(it_.buckling);
        write_.put(passage_);
    }

    void writePhi(const BucklingReduction& r) {
        const double difference = r.phi * r.phi - r.relative * r.relative;
        write_.name(kPhi).equals().sign("(").given(1).sign("+").name("\u03B1").times().sign("(");
        write_.name(kLambda, "r").sign(kMinus).given(0.2).sign(")").sign("+");
        write_.squared(kLambda, "r").sign(")").over().given(2);
        write_.equals().sign("(").given(1).sign("+").given(r.imperfection).times().sign("(");
        write_.found(r.relative).sign(kMinus).given(0.2).sign(")").sign("+");
        write_.square(r.relative).sign(")").over().given(2).equals().found(r.phi).put(passage_);
        write_.squared(kPhi).sign(kMinus).squared(kLambda, "r").equals().square(r.phi);
        write_.sign(kMinus).square(r.relative).equals().found(difference).put(passage_);
        write_.name(kChi).equals().given(1).over().sign("(").found(r.phi).sign("+");
        write_.root(difference).sign(")").equals().found(r.chi).put(passage_);
    }

    void writeCriticalStress() {
        const double ratio = *it_.make.strength / it_.elastic;
        const double critical = it_.critical.stress / stress_;
        write_.name("F", "y").over().name("F", "e").equals().given(strength()).over();
        write_.found(elastic()).equals().found(ratio).put(passage_);
        tell(it_.critical.elastic ? phrase::kCheckElastic : phrase::kCheckInelastic);
        write_.name("F", "cr").equals();
        if (it_.critical.elastic) {
            write_.given(0.877).times().name("F", "e").equals().given(0.877).times();
            write_.found(elastic());
        } else {
            write_.given(0.658).sign("^").found(ratio).times().name("F", "y").equals();
            write_.given(0.658).sign("^").found(ratio).times().given(strength());
        }
        write_.equals().found(critical).unit(symbolOf(writer_.truss.units.stress)).put(passage_);
        tell(phrase::kCheckBucklingLine);
        write_.name("N", "b").equals().name("F", "cr").times().name("A");
        divide(true, "", 1);
        write_.equals().found(critical).times().given(area());
        divide(false, "", 1);
        write_.toForce();
        force(it_.buckling);
        write_.put(passage_);
    }

    void writeUse() {
        const double carried = std::abs(it_.force) / newtons_;
        write_.name("N").over().name("N", it_.governing == CheckKind::Buckling ? "b" : "R");
        write_.equals().found(carried).over().found(it_.capacity / newtons_);
        write_.equals()
            .number(useText(writer_.truss, it_.use, useErrorOf(it_)))
            .put(passage_, LineRole::Result);
        tell(isOver(it_) ? phrase::kCheckUseOver : phrase::kCheckUseHolds);
    }

    const Writer writer_;
    const MemberCheck& it_;
    const CheckSettings& settings_;
    Passage passage_;
    FormulaWriter write_;
    double stress_; // Pa per stress unit
    double length_; // m per section unit
    double area_;
    double newtons_;
};

} // namespace

std::vector<Passage> checkPassages(const Writer& writer, const MemberCheck& check) {
    return CheckSheet(writer, check).take();
}

} // namespace gusset
