#include "report/derivation/check_working.hpp"

#include "report/derivation/check_sheet.hpp"

#include <cmath>

namespace gusset {
namespace {

constexpr const char* kSquared = "\u00B2";

} // namespace

std::vector<Passage> CheckSheet::take() {
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

void CheckSheet::sayForce() {
    if (it_.force == 0 && isChecked(it_)) {
        tell(phrase::kCheckIdle);
        return;
    }
    tell(it_.force > 0 ? phrase::kCheckPulled : phrase::kCheckPressed,
         {{"force", forceText(writer_.truss, std::abs(it_.force) / newtons_,
                              numberStyleOf(writer_.truss))}});
}

void CheckSheet::sayLacks() {
    MemberChecks alone;
    alone.members = {it_};
    alone.unchecked = 1;
    for (const std::string& line : lackLines(writer_, alone)) {
        addSentence(passage_, plainLine(line));
    }
}

void CheckSheet::writeGiven() {
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

double CheckSheet::strength() const {
    const MemberMake& make = it_.make;
    const std::optional<double>& along =
        !it_.byTimber ? make.strength
                      : (it_.force > 0 ? make.timber->tension : make.timber->compression);
    return *along / stress_;
}

double CheckSheet::modulus() const {
    return (it_.byTimber ? *it_.make.timber->E05 : *it_.make.modulus) / stress_;
}

CheckFormula& CheckSheet::nameModulus(CheckFormula& write) const {
    return it_.byTimber ? write.name("E", "0,05") : write.name("E");
}

CheckFormula& CheckSheet::nameUltimate() {
    return byAisc() ? write_.name("F", "u") : write_.name("f", "u");
}

// f, f_y or F_y; f_t,0,k or f_c,0,k.
CheckFormula& CheckSheet::nameStrength() {
    if (it_.byTimber) {
        return write_.name("f", it_.force > 0 ? "t,0,k" : "c,0,k");
    }
    return byAisc() ? write_.name("F", "y") : byEn() ? write_.name("f", "y") : write_.name("f");
}

// "· 0.9", "/ 1.67", "/ 1.5": as a symbol or as a number.
void CheckSheet::divide(bool names, const char* gamma, double factor) {
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

void CheckSheet::force(double newtons) {
    write_.equals().found(newtons / newtons_).unit(symbolOf(writer_.truss.units.force));
}

void CheckSheet::writeStrength() {
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
void CheckSheet::writeNet() {
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

std::string CheckSheet::sectionSquare() const {
    const std::string section = symbolOf(writer_.truss.units.section);
    return section.empty() ? section : section + kSquared;
}

void CheckSheet::writeUse() {
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

std::vector<Passage> checkPassages(const Writer& writer, const MemberCheck& check) {
    return CheckSheet(writer, check).take();
}

} // namespace gusset
