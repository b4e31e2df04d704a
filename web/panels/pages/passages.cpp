#include "panels/pages/passages.hpp"

#include "ui/heights.hpp"
#include "ui/rich_layout.hpp"
#include "ui/text_table.hpp"
#include "ui/widgets.hpp"

#include <string>

namespace gusset {
namespace {

RichLook lookOf(const Ui& ui, LineRole role) {
    const Palette& palette = *ui.palette;
    switch (role) {
    case LineRole::Heading:
        return {0, 0, palette.ink, ui.fonts.strong};
    case LineRole::Equation:
        return {16, 24, palette.ink};
    case LineRole::Result:
        return {16, 24, palette.accent, ui.fonts.strong};
    case LineRole::Caution:
        return {0, 0, palette.warning};
    case LineRole::Sentence:
        break;
    }
    return {0, 0, palette.ink};
}

struct Draw {
    const Ui& ui;
    const SketchLook& look;
    int part = 0;

    void operator()(const WorkingLine& line) const {
        drawRich(ui, line.runs, lookOf(ui, line.role));
    }
    void operator()(const TextTable& table) const {
        gap(ui, 4);
        drawTextTable(ui, table);
    }
    void operator()(const Sketch& sketch) const {
        gap(ui, 4);
        (void)drawSketch(ui, ("sketch " + std::to_string(part)).c_str(), sketch, look);
        gap(ui, 4);
    }
};

} // namespace

void drawPassage(const Ui& ui, int id, const Passage& passage, const SketchLook& look,
                 std::vector<float>* heights) {
    ImGui::PushID(id);
    whereSeen(heights, 0, [&] { drawRich(ui, passage.title, lookOf(ui, LineRole::Heading)); });
    int part = 0;
    for (const auto& it : passage.parts) {
        whereSeen(heights, static_cast<std::size_t>(part) + 1, [&] {
            std::visit(Draw{ui, look, part}, it);
        });
        ++part;
    }
    ImGui::PopID();
}

} // namespace gusset
