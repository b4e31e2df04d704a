#include "board_picture.hpp"

#include "app/page/page_text.hpp"
#include "app/state/camera.hpp"
#include "app/state/session.hpp"
#include "app/state/update.hpp"
#include "exchange/files/model_file.hpp"
#include "ui/labels.hpp"
#include "ui/scene_svg.hpp"
#include "ui/whole_picture.hpp"

#include <optional>
#include <utility>

namespace gusset {
namespace {

constexpr Vec2 kSmall{240, 150}; // CSS px

// The board as it opens, on a small sheet, with only the truss on it.
AppState onSmallSheet(const Truss& truss) {
    AppState state = startWith(truss);
    View& view = state.view;
    view.showForces = false;
    view.showReactions = false;
    view.showDimensions = false;
    view.camera = fitTo(Camera{.size = kSmall}, boardExtent(truss));
    return state;
}

std::optional<Truss> trussIn(std::string_view text) {
    if (const std::optional<AppState> saved = readSession(text)) {
        return saved->committed;
    }
    Outcome<Reading> model = readModel(text);
    return model ? std::optional(std::move(model).value().truss) : std::nullopt;
}

} // namespace

MeasureText measuring(const Ui& ui) {
    return [&ui](const std::string& text, LabelKind kind) { return measureLabel(ui, text, kind); };
}

std::string pictureOf(const Page& page) {
    const View& view = page.state.view;
    return wholePicture(page.state, page.derived, measuring(page.ui),
                        picturePalette(paletteFor(view.theme, page.viewport), view.whitePictures));
}

std::string smallPicture(PaletteName palette, std::string_view text) {
    const std::optional<Truss> truss = trussIn(text);
    if (!truss) {
        return "";
    }
    const AppState state = onSmallSheet(*truss);
    Derived derived;
    derive(state, derived);
    const MeasureText measure = [](const std::string&, LabelKind) { return Vec2{}; };
    Scene scene = pictureScene(state, derived, measure);
    scene.labels.clear();
    return sceneSvg(
        scene,
        {.palette = paletteOf(palette), .measure = measure, .title = boardSummary(state, derived)});
}

} // namespace gusset
