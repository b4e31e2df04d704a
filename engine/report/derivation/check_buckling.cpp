#include "report/derivation/check_sheet.hpp"

#include <numbers>

namespace gusset {
namespace {

constexpr const char* kLambda = "\u03BB";
constexpr const char* kPhi = "\u03A6";    // Φ of EN 1993-1-1
constexpr const char* kChi = "\u03C7";    // χ
constexpr const char* kStress = "\u03C3"; // σ

} // namespace

void CheckSheet::writeWay(Phrase<> heading, const Slenderness& way) {
    tell(heading);
    write_.name(kLambda).equals().name("K").times().name("L").over().name("r").equals();
    write_.given(way.factor).times().given(way.length / length_).over();
    write_.given(way.radius / length_).equals().found(way.value).put(passage_);
}

void CheckSheet::writeTied() {
    const double own = *it_.make.pair->packing / it_.make.pair->single / 2;
    tell(phrase::kCheckTiedLine);
    write_.name(kLambda, "m").equals();
    write_.root(it_.out.value * it_.out.value + own * own).equals().found(it_.tied);
    write_.put(passage_);
}

void CheckSheet::writeBothWays() {
    writeWay(phrase::kCheckInPlaneLine, it_.in);
    writeWay(phrase::kCheckOutOfPlaneLine, it_.out);
    if (it_.tied > 0) {
        writeTied();
    }
    tell(it_.outGoverns ? phrase::kCheckOutGoverns : phrase::kCheckInGoverns);
    sayLimit();
}

void CheckSheet::sayPacking() {
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

void CheckSheet::sayLocal() {
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
        return plainLine(formatNumber(
            value, {NumberForm::Significant, 3, writer_.truss.classSettings.decimalSign, false}));
    };
    tell(byAisc() ? phrase::kCheckIsSlenderElement : phrase::kCheckIsClass4,
         {{"ratio", rounded(local.ratio)}, {"limit", rounded(local.limit)}});
}

void CheckSheet::writeSlenderness() {
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

void CheckSheet::sayLimit() {
    if (it_.limit == 0) {
        tell(phrase::kCheckNoLimit);
    } else {
        tell(it_.tooSlender ? phrase::kCheckTooSlender : phrase::kCheckSlenderEnough,
             {{"limit", figure(it_.limit)}});
    }
}

// σ = π² · E / λ², or F_e.
CheckFormula& CheckSheet::nameElastic() {
    return byAisc() ? write_.name("F", "e") : write_.name(kStress, "cr");
}

void CheckSheet::writeElastic(Phrase<> heading) {
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

void CheckSheet::writeBuckling() {
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

void CheckSheet::writeTimber() {
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

void CheckSheet::writeTimberReduction(const TimberReduction& t) {
    const double difference = t.k * t.k - t.relative * t.relative;
    write_.name("k").equals().sign("(").given(1).sign("+").name("\u03B2", "c").times().sign("(");
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

void CheckSheet::writeEuler() {
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

void CheckSheet::writeReduction() {
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

void CheckSheet::writePhi(const BucklingReduction& r) {
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

void CheckSheet::writeCriticalStress() {
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

} // namespace gusset
