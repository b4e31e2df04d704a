#pragma once
// How far results can be trusted, in sentences, and how many of their figures are written.

#include "core/number.hpp"
#include "report/text/writer.hpp"
#include "statics/solve/reliance.hpp"

#include <string>
#include <vector>

namespace gusset {

// The class's number style, limited to the figures that rounding leaves; for forces in force units.
[[nodiscard]] NumberStyle forceStyleOf(const Truss&, const Reliance&);
[[nodiscard]] NumberStyle forceStyleOf(const Truss&, const Solution&);
// The same without trailing zeros, as on a drawing.
[[nodiscard]] NumberStyle drawingStyleOf(const Truss&, const Solution&);
// Significant figures of displacements: stiffnesses are known no better.
inline constexpr int kMovementFigures = 3;
// The style of a displacement, or of a value derived from it, whose error is at most `off` in its
// unit.
[[nodiscard]] NumberStyle movementStyleOf(const Truss&, double off);
// The number of reliable figures of the largest force.
[[nodiscard]] int figuresLeft(const Reliance&);
[[nodiscard]] int figuresLeft(const Solution&);
// Whether there are fewer of them than the class asks for.
[[nodiscard]] bool losesFigures(const Truss&, const Reliance&);
// NumberStyle::lastPlace of forces whose error may be as large as `error` (N).
[[nodiscard]] int lastPlaceOfForces(const Truss&, double error);

// Whether a stable truss without faults has no forces.
[[nodiscard]] bool isRefused(const Solution&);
// Empty for an ordinary truss. Otherwise: why it has no forces, that it is close to a mechanism and
// where, loss of figures, forces and reactions that are negligible or below their error bound, a
// member whose stiffness is out of proportion, a mechanism that is held, but too weakly to count.
[[nodiscard]] std::vector<std::string> trustSentences(const Writer&, const Solution&);
[[nodiscard]] std::vector<std::string> trustSentences(const Writer&, const Reliance&);
// The same for a working, which keeps every computed figure.
[[nodiscard]] std::vector<std::string> workingSentences(const Writer&, const Solution&);
// The same, with these sentences about figures.
[[nodiscard]] std::vector<std::string> trustSentences(const Writer&, const Reliance&,
                                                      const std::vector<std::string>& ofFigures);
// The sentences about figures: on the largest force, and on those of `forces` (one per member) that
// are written as 0.
[[nodiscard]] std::vector<std::string> figureSentences(const Writer&, const Reliance&,
                                                       const std::vector<double>& forces);
// What forces rest on besides loads and geometry: the assumptions, and that a mechanism is at rest.
[[nodiscard]] std::vector<std::string> standingSentences(const PhraseBook&, const Reliance&);
// Why a stable truss without faults has no forces. Precondition: it has none.
[[nodiscard]] std::string unsolvedSentence(const Writer&, const Solution&);
// How well equilibrium is satisfied, and how large rounding errors may be. Precondition: solved.
[[nodiscard]] std::string residualSentence(const Writer&, const Solution&);

} // namespace gusset
