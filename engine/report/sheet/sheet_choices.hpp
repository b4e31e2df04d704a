#pragma once
// What a sheet is to hold, for whom, and on which paper.

#include "design/loading/outline.hpp"
#include "report/text/writer.hpp"
#include "statics/equilibrium/structure.hpp"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace gusset {

enum class SheetPart {
    LoadDrawing,
    ForceDrawing,
    Model,
    Combinations,
    Forces,
    Displacements,
    Checks,
    Working
};
inline constexpr std::size_t kSheetParts = 8;
enum class SheetSize { A4, Letter };

struct SheetChoices {
    LoadChoice loads{}; // of the drawings, the displacements and the working
    std::array<bool, kSheetParts> parts{true, true, true, true, true, true, true, false};
    SheetSize size = SheetSize::A4;
    bool across = false;
    std::string project{};
    std::string author{};
    std::string date{};
    std::string link{}; // the whole address that opens the truss; empty: none on the sheet
    bool asks = false;  // it opens an exercise
    std::optional<Outline> outline{}; // that the truss is still made by, loads and all

    [[nodiscard]] bool has(SheetPart part) const { return parts[static_cast<std::size_t>(part)]; }
};

// The first combination, or every load where there is none.
[[nodiscard]] LoadChoice usualLoads(const Truss&);

// As on the command line: "drawing", "diagram", "model", "cases", "forces", "displacements",
// "checks", "working", with commas between them. None if one of them is unknown, or there are none.
[[nodiscard]] std::optional<std::array<bool, kSheetParts>> partsNamed(std::string_view names);
[[nodiscard]] std::string partNames();                                   // all of them, with commas
[[nodiscard]] std::optional<SheetSize> sizeNamed(std::string_view name); // "A4", "Letter"

// Width of a page between its margins, in CSS px.
[[nodiscard]] double widthOf(const SheetChoices&);

// "combination winter", "case snow", "all loads together"; as the head of a column, the name alone.
[[nodiscard]] std::string loadsName(const PhraseBook&, const LoadChoice&);
[[nodiscard]] std::string loadsHead(const PhraseBook&, const LoadChoice&);

} // namespace gusset
