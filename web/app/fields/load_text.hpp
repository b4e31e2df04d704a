#pragma once
// The force of a load as it is shown and typed, with one meaning on the board, in the tables and in
// the inspector: a size and a direction, or, if both its parts were given, these parts. A number
// typed over a size or a part keeps its direction; a negative one turns it round.

#include "core/outcome.hpp"
#include "model/truss/truss.hpp"
#include "report/text/writer.hpp"

#include <optional>
#include <string>

namespace gusset {

// The force of a load that is drawn as one arrow, on a joint or on a member between its joints;
// none for other loads. Force units.
[[nodiscard]] std::optional<Vec2> arrowForce(const Load&);
[[nodiscard]] double
forceSizeOf(const Load&); // of that force, exactly as typed; zero for other loads
// Whether it is shown by its two parts: it was given by them, and neither is zero.
[[nodiscard]] bool isByParts(const Load&);
// Degrees from the x axis, anticlockwise, above −180 and up to 180; none for no force, parts, and
// other loads.
[[nodiscard]] std::optional<double> degreesOf(const Load&);
// "↓" for a direction along an axis, "30°" for others; empty without a direction.
[[nodiscard]] std::string directionLook(const Truss&, const Load&);
// "→ 3" and "↓ 4": a part with its direction; precondition: isByParts.
[[nodiscard]] std::string partLook(const Truss&, const Load&, bool upright);

[[nodiscard]] std::string perLengthText(const Truss&, double perLength); // "2 kN/m"
// Beside its arrow or row of arrows: "5 kN", "→ 3, ↓ 4 kN", "2 kN/m".
[[nodiscard]] std::string loadFigure(const Writer&, const Load&);
// What typing over that figure begins with: "5", or "3, -4".
[[nodiscard]] std::string loadFigureTyped(const Truss&, const Load&);
[[nodiscard]] bool canTypeFigure(const Load&);

[[nodiscard]] Load withSize(const Load&, double size);
[[nodiscard]] Load withPart(const Load&, bool upright, double size);
[[nodiscard]] Load withDirection(const Load&, double degrees);
// A size, "5 @ 30°" or "3, -4".
[[nodiscard]] Outcome<Load> withTypedForce(const Truss&, const Load&, const std::string& text);

// Where a load acts that is not on a single joint: "along A–B–C", "on A–B, 2 m from A",
// "self-weight"; the joint's label for others.
[[nodiscard]] std::string placeOfLoad(const Writer&, const Load&);
// Of all members, force units; zero if areas or densities are missing.
[[nodiscard]] double weightOf(const Truss&);

} // namespace gusset
