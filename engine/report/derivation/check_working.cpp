#include "report/derivation/check_working.hpp"

#include "phrases/working/check_working.hpp"
#include "report/derivation/check_formula.hpp"
#include "report/results/check_text.hpp"
#include "report/results/results_text.hpp"

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
            if (it_.onNet > 0) {
                writeNet();
                tell(phrase::kCheckGoverns, {{"check", checkWord(writer_, it_.governing)}});
            }
            writeSlenderness();
            if (it_.force < 0) {
                sayPacking();
                sayLocal();
                writeBuckling();
                tell(phrase::kCheckGoverns, {{"check", checkWord(writer_, it_.governing)}});
            }
            writeUse();
            if (it_.reverses) {
                tell(phrase::kCheckReversed);
            }
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
            nameModulus(write_.sign(",")).equals().given(modulus()).unit(stress);
        }
        if (it_.onNet > 0 && needsUltimate()) {
            write_.sign(",");
            nameUltimate().equals().given(*it_.make.ultimate / stress_).unit(stress);
        }
        if (it_.make.radius && !writesBothWays()) {
            write_.sign(",").name("L").equals().given(it_.length / length_).unit(section);
            write_.sign(",").name("r").equals().given(*it_.make.radius / length_).unit(section);
        }
        write_.put(passage_);
    }

    [[nodiscard]] bool byAisc() const { return it_.formula == ColumnFormula::Aisc360; }
    [[nodiscard]] bool byEn() const { return it_.formula == ColumnFormula::En1993; }
    [[nodiscard]] bool needsUltimate() const { return byEn() || byAisc(); }
    [[nodiscard]] bool writesBothWays() const { return it_.force < 0 && it_.twoWays; }
    [[nodiscard]] double strength() const {
        const MemberMake& make = it_.make;
        const std::optional<double>& along =
            !it_.byTimber ? make.strength
                          : (it_.force > 0 ? make.timber->tension : make.timber->compression);
        return *along / stress_;
    }
    [[nodiscard]] double modulus() const {
        return (it_.byTimber ? *it_.make.timber->E05 : *it_.make.modulus) / stress_;
    }
    [[nodiscard]] double area() const { return *it_.make.area / area_; }

    CheckFormula& nameModulus(CheckFormula& write) const {
        return it_.byTimber ? write.name("E", "0,05") : write.name("E");
    }
    CheckFormula& nameUltimate() {
        return byAisc() ? write_.name("F", "u") : write_.name("f", "u");
    }
    // f, f_y or F_y; f_t,0,k or f_c,0,k.
    CheckFormula& nameStrength() {
        if (it_.byTimber) {
            return write_.name("f", it_.force > 0 ? "t,0,k" : "c,0,k");
        }
        return byAisc() ? write_.name("F", "y") : byEn() ? write_.name("f", "y") : write_.name("f");
    }

    // "· 0.9", "/ 1.67", "/ 1.5": as a symbol or as a number.
    void divide(bool names, const char* gamma, double factor) {
        if (it_.byTimber) {
            write_.times();
            names ? write_.name("k", "mod") : write_.given(settings_.kMod);
            write_.over();
            names ? write_.name(kGamma, "M") : write_.given(settings_.gammaTimber);
        } else if (byAisc() && settings_.safety == AiscSafety::Resistance) {
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

    // Less the holes, by as many as there are.
    void writeNet() {
        const bool aisc = byAisc();
        tell(aisc           ? phrase::kCheckNetLineAisc
             : byEn()       ? phrase::kCheckNetLineEn
             : it_.byTimber ? phrase::kCheckNetLineTimber
                            : phrase::kCheckNetLine);
        write_.name("A", "net").equals().found(*it_.make.net / area_);
        write_.unit(sectionSquare()).put(passage_);
        const double net = *it_.make.net / area_;
        write_.name("N", "u").equals();
        if (byEn()) {
            write_.given(0.9).times().name("A", "net").times();
            nameUltimate().over().name(kGamma, "M2").equals().given(0.9).times().found(net);
            write_.times().given(*it_.make.ultimate / stress_).over().given(settings_.gammaM2);
        } else if (aisc) {
            const bool resists = settings_.safety == AiscSafety::Resistance;
            nameUltimate().times().name("U").times().name("A", "net");
            resists ? write_.times().given(0.75) : write_.over().given(2);
            write_.equals().given(*it_.make.ultimate / stress_).times().given(it_.make.lag);
            write_.times().found(net);
            resists ? write_.times().given(0.75) : write_.over().given(2);
        } else {
            nameStrength().times().name("A", "net");
            divide(true, "", settings_.strengthFactor);
            write_.equals().given(strength()).times().found(net);
            divide(false, "", settings_.strengthFactor);
        }
        write_.toForce();
        force(it_.onNet);
        write_.put(passage_);
    }

    [[nodiscard]] std::string sectionSquare() const {
        const std::string section = symbolOf(writer_.truss.units.section);
        return section.empty() ? section : section + kSquared;
    }

    void writeWay(Phrase<> heading, const Slenderness& way) {
        tell(heading);
        write_.name(kLambda).equals().name("K").times().name("L").over().name("r").equals();
        write_.given(way.factor).times().given(way.length / length_).over();
        write_.given(way.radius / length_).equals().found(way.value).put(passage_);
    }

    void writeTied() {
        const double own = *it_.make.pair->packing / it_.make.pair->single / 2;
        tell(phrase::kCheckTiedLine);
        write_.name(kLambda, "m").equals();
        write_.root(it_.out.value * it_.out.value + own * own).equals().found(it_.tied);
        write_.put(passage_);
    }

    void writeBothWays() {
        writeWay(phrase::kCheckInPlaneLine, it_.in);
        writeWay(phrase::kCheckOutOfPlaneLine, it_.out);
        if (it_.tied > 0) {
            writeTied();
        }
        tell(it_.outGoverns ? phrase::kCheckOutGoverns : phrase::kCheckInGoverns);
        sayLimit();
    }

    void sayPacking() {
        const bool aisc = byAisc();
        switch (it_.packing) {
        case Packing::None:
            return;
        case Packing::Unknown:
            tell(phrase::kCheckNoPacking);
            return;
        case Packing::Close:
            tell(aisc ? phrase::kCheckCloseAisc : phrase::kCheckCloseEn);
            return;
        case Packing::Far:
            tell(aisc ? phrase::kCheckFarAisc : phrase::kCheckFarEn);
            return;
        }
    }

    void sayLocal() {
        const LocalBuckling& local = it_.local;
        if (local.number == 0) {
            return;
        }
        if (!isLocallySlender(it_)) {
            if (byAisc()) {
                tell(phrase::kCheckNoSlenderElement);
            } else {
                tell(phrase::kCheckIsClass, {{"class", plainLine(std::to_string(local.number))}});
            }
            return;
        }
        const auto rounded = [&](double value) {
            return plainLine(formatNumber(value, {NumberForm::Significant, 3,
                                                  writer_.truss.classSettings.decimalSign, false}));
        };
        tell(byAisc() ? phrase::kCheckIsSlenderElement : phrase::kCheckIsClass4,
             {{"ratio", rounded(local.ratio)}, {"limit", rounded(local.limit)}});
    }

    void writeSlenderness() {
        if (it_.slenderness == 0) {
            return;
        }
        if (it_.force <= 0 && it_.twoWays) {
            writeBothWays();
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
            write_.given(it_.in.factor).times();
        }
        write_.given(it_.length / length_).over().given(*it_.make.radius / length_);
        write_.equals().found(it_.slenderness).put(passage_);
        sayLimit();
    }

    void sayLimit() {
        if (it_.limit == 0) {
            tell(phrase::kCheckNoLimit);
        } else {
            tell(it_.tooSlender ? phrase::kCheckTooSlender : phrase::kCheckSlenderEnough,
                 {{"limit", figure(it_.limit)}});
        }
    }

    // σ = π² · E / λ², or F_e.
    CheckFormula& nameElastic() {
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
        if (it_.byTimber) {
            writeTimber();
        } else if (byEn()) {
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

    void writeTimber() {
        const TimberReduction& t = it_.timber;
        const double square = t.relative * t.relative;
        tell(phrase::kCheckTimberLine, {{"beta", figure(settings_.betaC)}});
        write_.squared(kLambda, "rel").equals().squared(kLambda).times().name("f", "c,0,k").over();
        write_.sign("(").squared("\u03C0").times().name("E", "0,05").sign(")").equals();
        write_.square(it_.slenderness).times().given(strength()).over().sign("(");
        write_.square(std::numbers::pi).times().given(modulus()).sign(")").equals().found(square);
        write_.sign(",").name(kLambda, "rel").equals().root(square).equals().found(t.relative);
        write_.put(passage_);
        if (t.relative <= 0.3) {
            tell(phrase::kCheckTimberShort);
            write_.name("k", "c").equals().given(1).put(passage_);
        } else {
            writeTimberReduction(t);
        }
        tell(phrase::kCheckBucklingLine);
        write_.name("N", "b").equals().name("k", "c").times();
        nameStrength().times().name("A");
        divide(true, "", 1);
        write_.equals().found(t.kc).times().given(strength()).times().given(area());
        divide(false, "", 1);
        write_.toForce();
        force(it_.buckling);
        write_.put(passage_);
    }

    void writeTimberReduction(const TimberReduction& t) {
        const double difference = t.k * t.k - t.relative * t.relative;
        write_.name("k")
            .equals()
            .sign("(")
            .given(1)
            .sign("+")
            .name("\u03B2", "c")
            .times()
            .sign("(");
        write_.name(kLambda, "rel").sign(kMinus).given(0.3).sign(")").sign("+");
        write_.squared(kLambda, "rel").sign(")").over().given(2).equals().sign("(").given(1);
        write_.sign("+").given(settings_.betaC).times().sign("(").found(t.relative);
        write_.sign(kMinus).given(0.3).sign(")").sign("+").square(t.relative).sign(")").over();
        write_.given(2).equals().found(t.k).put(passage_);
        write_.squared("k").sign(kMinus).squared(kLambda, "rel").equals().square(t.k);
        write_.sign(kMinus).square(t.relative).equals().found(difference).put(passage_);
        write_.name("k", "c").equals().given(1).over().sign("(").found(t.k).sign("+");
        write_.root(difference).sign(")").equals().found(t.kc).put(passage_);
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
        write_.name("N").over();
        write_.name("N", it_.governing == CheckKind::Buckling ? "b"
                         : it_.governing == CheckKind::Net    ? "u"
                                                              : "R");
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
    CheckFormula write_;
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
