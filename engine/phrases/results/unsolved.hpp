#pragma once
// Why there are no forces, displacements, influence lines or envelope.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kSettlementsContradict =
    "the settlements of the supports at joint {joint} contradict each other; give them one "
    "movement"_phrase;
inline constexpr auto kNoAlpha =
    "member {member} has a temperature change, but no alpha: give it a section whose material has "
    "alpha"_phrase;
inline constexpr auto kNoWeight =
    "the weight of member {member} is asked for, but not known: give it a section with A, or a "
    "shape, and a material with density"_phrase;
inline constexpr auto kForcesNeedStiffness =
    "the forces depend on E and A of every member, and member {member} has none: give it a section "
    "with A and a material with E"_phrase;
inline constexpr auto kStrainsNeedStiffness =
    "settlement, temperature changes and lack of fit cause forces that depend on E and A: give "
    "every member a "
    "section with A and a material with E"_phrase;
inline constexpr auto kNoLoadInCase = "no load is in case \"{case}\"; name an existing one"_phrase;
inline constexpr auto kNoSuchCombination =
    "there is no combination \"{name}\"; name an existing one"_phrase;

inline constexpr auto kTooCloseToMechanism =
    "the truss is so close to a mechanism that its forces can't be computed to working "
    "accuracy"_phrase;
inline constexpr auto kStiffnessesTooFar =
    "the stiffnesses of the members differ too much for forces to be computed, that of member "
    "{member} most: are its E and A in the right units?"_phrase;
inline constexpr auto kMechanismNoLines =
    "the truss is a mechanism: it has no influence lines before it is stable"_phrase;
inline constexpr auto kMechanismNoEnvelope =
    "the truss is a mechanism: it has no envelope before it is stable"_phrase;

inline constexpr auto kPathNeedsPicked = "a path needs at least two joints: pick them"_phrase;
inline constexpr auto kPathTooShort = "a path needs at least two joints"_phrase;
inline constexpr auto kPathTooLarge = "path and truss are too large for influence lines"_phrase;
inline constexpr auto kNoSupportThere = "joint {joint} has no support: name one that has"_phrase;
inline constexpr auto kDisplacementsDoubtful =
    "rounding would leave fewer than three figures of the displacements: the truss is too close to "
    "a mechanism, or its stiffnesses differ too much"_phrase;
inline constexpr auto kDisplacementsNeedStiffness =
    "displacements need E and A of every member: give each a section with A and a material with "
    "E"_phrase;

} // namespace gusset::phrase
