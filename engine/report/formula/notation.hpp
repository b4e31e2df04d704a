#pragma once
// The class's notation: symbols, axes, equations, results and angles, as formulas.

#include "core/number.hpp"
#include "hand/paper/working.hpp"
#include "report/text/rich_text.hpp"
#include "report/text/writer.hpp"

#include <memory>

namespace gusset {

struct WorkingIndex; // report/formula/working_index.hpp

struct Notation {
    const PhraseBook& book; // the language of the words
    const Truss& truss;
    const Working& working;
    NumberStyle numbers;                   // of computed values
    std::shared_ptr<WorkingIndex> index{}; // of the working, built on first use
};
[[nodiscard]] Notation notationOf(const Writer&, const Working&);
[[nodiscard]] const WorkingIndex& workingIndexOf(const Notation&);

[[nodiscard]] Token symbolToken(const Notation&, const Symbol&);
[[nodiscard]] RichLine symbolRuns(const Notation&, const Symbol&);
[[nodiscard]] Token angleToken(const Symbol&); // α
// ΣM_A, ΣF_x or ΣH.
[[nodiscard]] Formula sumName(const Notation&, const Equation&, const std::string& centre);
// ΣM_A = 0: E_y · 12 − 20 · 3 = 0. `centre` names a moment centre that is not a joint.
[[nodiscard]] Formula equationFormula(const Notation&, const Equation&, const std::string& centre);
[[nodiscard]] Formula numbersFormula(const Notation&, const Equation&); // what stands after ":"
// As the class writes it: ΣM_A = 0: E_y · 12 − P_B · 3 = 0 first, if it has a name for a number in
// it, then E_y · 12 − 20 · 3 = 0; or equationFormula at once.
[[nodiscard]] std::vector<Formula> equationLines(const Notation&, const Equation&,
                                                 const std::string& centre);
// The terms of a sum, with their signs; 0 if there are none.
[[nodiscard]] Formula sumFormula(const Notation&, const std::vector<Term>&);
[[nodiscard]] Formula factorFormula(const Notation&, const Factor&); // alone
// How a result is told: with the sign that its equation gave, or as it acts.
enum class Told { AsFound, AsActs };
// E_y = 15.00 kN ↑; F_AB ≈ −16.67 kN (compression). A reaction that acts against its drawn sense:
// A_x = −4.00 kN as found, A_x = 4.00 kN ← as it acts.
// With what quotientOf gives (report/formula/quotient): E_y = 60/12 = 5.00 kN ↑.
[[nodiscard]] Formula resultFormula(const Notation&, const Found&, Told,
                                    const Formula& quotient = {});
// "=" if the number is written in full, else "≈".
[[nodiscard]] Token relationTo(const Notation&, double value);
// tan α = 3/4, α = 36.87°, sin α = 0.6, cos α = 0.8; or the cosines; or the slope triangle.
[[nodiscard]] Formula angleFormula(const Notation&, const AngleLine&);
// α = 30°, sin α = 0.5, cos α = 0.866, for a given direction.
[[nodiscard]] Formula givenAngleFormula(const Notation&, const AngleLine&);
// "↑", "←", "↗" …
[[nodiscard]] std::string directionArrow(Vec2 direction);
// "up", "to the left", "up to the right" …
[[nodiscard]] std::string directionWord(const PhraseBook&, Vec2 direction);
// "20 kN", for a number from the input.
[[nodiscard]] std::string givenForce(const Notation&, double force);
[[nodiscard]] std::string givenLength(const Notation&, double length);

} // namespace gusset
