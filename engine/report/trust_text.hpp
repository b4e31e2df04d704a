#pragma once
// What is to be known of how far results can be trusted, in sentences, and how many of their
// figures are written.

#include "report/number.hpp"
#include "report/phrases.hpp"
#include "statics/reliance.hpp"

#include <string>
#include <vector>

namespace gusset {

// The class's style with only the figures that rounding leaves; for forces, in force units.
[[nodiscard]] NumberStyle forceStyleOf(const Truss&, const Reliance&);
[[nodiscard]] NumberStyle forceStyleOf(const Truss&, const Solution&);
// The same without zeros that say nothing, as on a drawing.
[[nodiscard]] NumberStyle drawingStyleOf(const Truss&, const Solution&);
// Figures of the largest force that can be relied on.
[[nodiscard]] int figuresLeft(const Reliance&);
[[nodiscard]] int figuresLeft(const Solution&);
// Whether these are fewer than the class asks for.
[[nodiscard]] bool losesFigures(const Truss&, const Reliance&);
// In a number style, of forces that may be off by so much (N): their last place.
[[nodiscard]] int lastPlaceOfForces(const Truss&, double error);

// Empty for an ordinary truss: close to a mechanism and where, figures lost, a member whose
// stiffness stands out, a mechanism that is barely one.
[[nodiscard]] std::vector<std::string> trustSentences(const PhraseBook&, const Truss&,
                                                      const Reliance&);
[[nodiscard]] std::vector<std::string> trustSentences(const PhraseBook&, const Truss&,
                                                      const Solution&);
// The same with another sentence on figures, or none if that is empty.
[[nodiscard]] std::vector<std::string> trustSentences(const PhraseBook&, const Truss&,
                                                      const Reliance&, std::string ofFigures);
// These, what the forces rest on, and that a mechanism happens to be at rest.
[[nodiscard]] std::vector<std::string> relianceSentences(const PhraseBook&, const Truss&,
                                                         const Reliance&);
// Why a stable truss without faults has no forces. Precondition: it has none.
[[nodiscard]] std::string unsolvedSentence(const PhraseBook&, const Truss&, const Solution&);
// How well equilibrium is met, and how large errors by rounding may be. Precondition: solved.
[[nodiscard]] std::string residualSentence(const PhraseBook&, const Truss&, const Solution&);

} // namespace gusset
