#pragma once
// The names of what one can start from: forms of truss and materials. What is put on the board with
// such a name has it from then on, as if it had been typed.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kFormKingPost = "King post"_phrase;
inline constexpr auto kFormQueenPost = "Queen post"_phrase;
inline constexpr auto kFormPratt = "Pratt"_phrase;
inline constexpr auto kFormHowe = "Howe"_phrase;
inline constexpr auto kFormWarren = "Warren"_phrase;
inline constexpr auto kFormWarrenWithPosts = "Warren with posts"_phrase;
inline constexpr auto kFormFink = "Fink"_phrase;
inline constexpr auto kFormKBraced = "K"_phrase;
inline constexpr auto kFormScissors = "Scissors"_phrase;
inline constexpr auto kFormBowstring = "Bowstring"_phrase;
inline constexpr auto kFormCantilever = "Cantilever"_phrase;
inline constexpr auto kFormPrattRoof = "Pratt roof"_phrase;
inline constexpr auto kFormHoweRoof = "Howe roof"_phrase;
inline constexpr auto kFormWRoof = "W roof"_phrase;
inline constexpr auto kFormCompoundFink = "Compound Fink"_phrase;
inline constexpr auto kFormQueenPostRoof = "Queen post roof"_phrase;
inline constexpr auto kFormMonoPitch = "Mono-pitch"_phrase;
inline constexpr auto kFormPolygonalChord = "Polygonal chord"_phrase;
inline constexpr auto kFormGantry = "Gantry"_phrase;
inline constexpr auto kFormTower = "Tower"_phrase;

inline constexpr auto kTitleKingPost = "King post truss"_phrase;
inline constexpr auto kTitleQueenPost = "Queen post truss"_phrase;
inline constexpr auto kTitlePratt = "Pratt truss"_phrase;
inline constexpr auto kTitleHowe = "Howe truss"_phrase;
inline constexpr auto kTitleWarren = "Warren truss"_phrase;
inline constexpr auto kTitleWarrenWithPosts = "Warren with posts truss"_phrase;
inline constexpr auto kTitleFink = "Fink truss"_phrase;
inline constexpr auto kTitleKBraced = "K truss"_phrase;
inline constexpr auto kTitleScissors = "Scissors truss"_phrase;
inline constexpr auto kTitleBowstring = "Bowstring truss"_phrase;
inline constexpr auto kTitleCantilever = "Cantilever truss"_phrase;
inline constexpr auto kTitlePrattRoof = "Pratt roof truss"_phrase;
inline constexpr auto kTitleHoweRoof = "Howe roof truss"_phrase;
inline constexpr auto kTitleWRoof = "W roof truss"_phrase;
inline constexpr auto kTitleCompoundFink = "Compound Fink truss"_phrase;
inline constexpr auto kTitleQueenPostRoof = "Queen post roof truss"_phrase;
inline constexpr auto kTitleMonoPitch = "Mono-pitch truss"_phrase;
inline constexpr auto kTitlePolygonalChord = "Polygonal chord truss"_phrase;
inline constexpr auto kTitleGantry = "Gantry truss"_phrase;
inline constexpr auto kTitleTower = "Tower truss"_phrase;

inline constexpr auto kMaterialSteel = "steel"_phrase;
inline constexpr auto kMaterialTimber = "timber"_phrase;

} // namespace gusset::phrase
