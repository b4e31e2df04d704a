#pragma once
// What is to be known of how far results can be trusted, in sentences, and how many of their
// figures are written.

#include "core/number.hpp"
#include "report/text/writer.hpp"
#include "statics/solve/reliance.hpp"

#include <string>
#include <vector>

namespace gusset {

// The class's style with only the figures that rounding leaves; for forces, in force units.
[[nodiscard]] NumberStyle forceStyleOf(const Truss&, const Reliance&);
[[nodiscard]] NumberStyle forceStyleOf(const Truss&, const Solution&);
// The same without zeros that say nothing, as on a drawing.
[[nodiscard]] NumberStyle drawingStyleOf(const Truss&, const Solution&);
// Displacements are written with so many: stiffnesses are known no better.
inline constexpr int kMovementFigures = 3;
// The style of a displacement or of what follows from it, off by no more than `off`, in its unit.
[[nodiscard]] NumberStyle movementStyleOf(const Truss&, double off);
// Figures of the largest force that can be relied on.
[[nodiscard]] int figuresLeft(const Reliance&);
[[nodiscard]] int figuresLeft(const Solution&);
// Whether these are fewer than the class asks for.
[[nodiscard]] bool losesFigures(const Truss&, const Reliance&);
// In a number style, of forces that may be off by so much (N): their last place.
[[nodiscard]] int lastPlaceOfForces(const Truss&, double error);

// Whether a stable truss without faults has no forces.
[[nodiscard]] bool isRefused(const Solution&);
// Empty for an ordinary truss: why it has no forces, close to a mechanism and where, figures lost,
// forces and reactions smaller than the bound of their errors or than counts, a member whose
// stiffness stands out, a mechanism that is barely one.
[[nodiscard]] std::vector<std::string> trustSentences(const Writer&, const Solution&);
[[nodiscard]] std::vector<std::string> trustSentences(const Writer&, const Reliance&);
// The same of a working, which carries every figure that was computed.
[[nodiscard]] std::vector<std::string> workingSentences(const Writer&, const Solution&);
// The same with these sentences on figures.
[[nodiscard]] std::vector<std::string> trustSentences(const Writer&, const Reliance&,
                                                      const std::vector<std::string>& ofFigures);
// Those on figures: of the largest force, and of these forces, a member each, that are written 0.
[[nodiscard]] std::vector<std::string> figureSentences(const Writer&, const Reliance&,
                                                       const std::vector<double>& forces);
// What forces rest on beside loads and shape: what is assumed, and that a mechanism is at rest.
[[nodiscard]] std::vector<std::string> standingSentences(const PhraseBook&, const Reliance&);
// Why a stable truss without faults has no forces. Precondition: it has none.
[[nodiscard]] std::string unsolvedSentence(const Writer&, const Solution&);
// How well equilibrium is met, and how large errors by rounding may be. Precondition: solved.
[[nodiscard]] std::string residualSentence(const Writer&, const Solution&);

} // namespace gusset
