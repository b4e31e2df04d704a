#pragma once
// How the check of a member is written out. Private to derivation.

#include "phrases/working/check_working.hpp"
#include "report/derivation/check_formula.hpp"
#include "report/results/check_text.hpp"
#include "report/results/results_text.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace gusset {

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

    std::vector<Passage> take();

private:
    static constexpr const char* kGamma = "\u03B3"; // γ

    void tell(Phrase<> phrase) { addSentence(passage_, say(writer_, phrase)); }
    template <PartName... Names>
    void tell(Phrase<Names...> phrase, const PartsOf<Words, Names...>& parts) {
        addSentence(passage_, say(writer_, phrase, parts));
    }
    [[nodiscard]] RichLine figure(double value) const {
        return plainLine(formatNumber(value, typedStyleOf(writer_.truss)));
    }

    // Of what the check begins and ends with (check_working.cpp).
    void sayForce();
    void sayLacks();
    void writeGiven();
    void writeStrength();
    void writeNet();
    void writeUse();

    [[nodiscard]] bool byAisc() const { return it_.formula == ColumnFormula::Aisc360; }
    [[nodiscard]] bool byEn() const { return it_.formula == ColumnFormula::En1993; }
    [[nodiscard]] bool needsUltimate() const { return byEn() || byAisc(); }
    [[nodiscard]] bool writesBothWays() const { return it_.force < 0 && it_.twoWays; }

    [[nodiscard]] double strength() const;
    [[nodiscard]] double modulus() const;
    [[nodiscard]] double area() const { return *it_.make.area / area_; }
    CheckFormula& nameModulus(CheckFormula& write) const;
    CheckFormula& nameUltimate();
    CheckFormula& nameStrength();
    void divide(bool names, const char* gamma, double factor);
    void force(double newtons);
    [[nodiscard]] std::string sectionSquare() const;

    // Of slenderness and buckling (check_buckling.cpp).
    void writeWay(Phrase<> heading, const Slenderness& way);
    void writeTied();
    void writeBothWays();
    void sayPacking();
    void sayLocal();
    void writeSlenderness();
    void sayLimit();
    CheckFormula& nameElastic();
    void writeElastic(Phrase<> heading);
    [[nodiscard]] double elastic() const { return it_.elastic / stress_; }
    void writeBuckling();
    void writeTimber();
    void writeTimberReduction(const TimberReduction& t);
    void writeEuler();
    void writeReduction();
    void writePhi(const BucklingReduction& r);
    void writeCriticalStress();

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

} // namespace gusset
