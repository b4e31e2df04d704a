#include "ui/whole_picture.hpp"

#include "app/fields/load_text.hpp"
#include "app/page/page_text.hpp"
#include "core/number.hpp"
#include "model/truss/units.hpp"
#include "phrases/drawing.hpp"
#include "phrases/frame.hpp"
#include "ui/force_signs.hpp"

#include <algorithm>

namespace gusset {
namespace {

constexpr double kFirstWidth = 900; // CSS px
constexpr double kMostWidth = 3000; // wider ones would not be read as a whole
constexpr double kLarger = 1.25;    // from one try to the next
constexpr double kMostHigh = 1.4;   // height over width of a sheet
// More members than this are not laid out several times: they need a table, not a larger picture.
constexpr std::size_t kMostMembers = 1500;

// A sheet of this width with the whole truss on it, and room for what is drawn around it.
Camera sheetFor(const Truss& truss, double width) {
    constexpr Vec2 kAround{225, 240};
    constexpr Vec2 kSpare{240, 120}; // for dimensions beyond long labels
    const Extent box = boardExtent(truss);
    const Vec2 size = box.high - box.low;
    const double high = size.x > 0 ? (width - kAround.x) * size.y / size.x + kAround.y : width;
    Camera camera;
    camera.size = {width, std::clamp(high, 0.3 * width, kMostHigh * width)};
    camera = fitTo(camera, box);
    camera.size = camera.size + kSpare; // the picture is cropped to what is drawn
    return camera;
}

void addSigns(const PhraseBook& book, const AppState& state, std::vector<PictureLine>& lines) {
    const std::string unit = symbolOf(state.truss.units.force);
    if (state.view.memberFigure == MemberFigure::Stress) {
        lines.push_back({sayPlain(book, phrase::kFiguresStress), Ink::Muted});
    } else if (state.view.memberFigure == MemberFigure::Use) {
        lines.push_back({sayPlain(book, phrase::kFiguresUse), Ink::Muted});
    } else if (!unit.empty()) {
        lines.push_back({sayPlain(book, phrase::kMemberForcesIn, {{"unit", unit}}), Ink::Muted});
    }
    for (const ForceSign& sign : forceSigns()) {
        lines.push_back(
            {sayPlain(book, phrase::kSignMeans,
                      {{"letter", say(book, sign.letter)}, {"word", say(book, sign.word)}}),
             Ink::Plain, LabelKind::Hint, sign.ink});
    }
}

// What a value without room belongs to, and the value.
std::string keyEntry(const AppState& state, const LabelMark& mark) {
    const PhraseBook& book = *state.book;
    const Truss& truss = state.truss;
    if (const JointId joint = hitOf<JointId>(mark.of); joint.valid()) {
        const Joint& it = truss.joints[joint.at()];
        const char sign = truss.classSettings.decimalSign;
        return sayPlain(book, phrase::kKeyOfJoint,
                        {{"joint", it.label},
                         {"x", formatMeasured(it.at.x, sign)},
                         {"y", formatMeasured(it.at.y, sign)}});
    }
    std::string what;
    if (const MemberId member = hitOf<MemberId>(mark.of); member.valid()) {
        what = memberName(truss, member);
    } else if (const LoadId load = hitOf<LoadId>(mark.of); load.valid()) {
        what = placeOfLoad({book, truss}, truss.loads[load.at()]);
    } else if (const SupportId support = hitOf<SupportId>(mark.of); support.valid()) {
        what = truss.joints[truss.supports[support.at()].joint.at()].label;
    }
    return what.empty() ? mark.text
                        : sayPlain(book, phrase::kKeyEntry, {{"what", what}, {"value", mark.text}});
}

void addKey(const AppState& state, const Scene& scene, std::vector<PictureLine>& lines) {
    std::vector<RichLine> entries;
    for (const LabelMark& mark : scene.unplaced) {
        entries.push_back(plainLine(keyEntry(state, mark)));
    }
    if (!entries.empty()) {
        lines.push_back(
            {sayPlain(*state.book, phrase::kWithoutRoom, {{"list", listOf(*state.book, entries)}}),
             Ink::Plain});
    }
}

std::string underLoads(const AppState& state) {
    const PhraseBook& book = *state.book;
    if (const std::string name = choiceName(state.choice); !name.empty()) {
        return sayPlain(book, phrase::kUnderLoads, {{"loads", name}});
    }
    return caseNames(state.truss).size() > 1 ? sayPlain(book, phrase::kUnderAllLoads) : "";
}

} // namespace

Scene wholeScene(const AppState& state, const Derived& derived, const MeasureText& measure) {
    AppState sheet = state;
    const bool few = state.truss.members.size() <= kMostMembers;
    Scene scene;
    for (double width = kFirstWidth; width <= kMostWidth; width *= kLarger) {
        sheet.view.camera = sheetFor(state.truss, width);
        scene = pictureScene(sheet, derived, measure);
        if (scene.unplaced.empty() || !few) {
            break;
        }
    }
    return scene;
}

std::string wholePicture(const AppState& state, const Derived& derived, const MeasureText& measure,
                         const Palette& palette) {
    const Scene scene = wholeScene(state, derived, measure);
    const std::string name = boardSummary(state, derived);
    PictureLook look{.palette = palette, .measure = measure, .title = name};
    if (!state.truss.title.empty()) {
        look.above.push_back({state.truss.title, Ink::Plain, LabelKind::Joint});
    }
    if (const std::string under = underLoads(state); !under.empty()) {
        look.above.push_back({under, Ink::Muted});
    }
    const bool forces = std::any_of(scene.labels.begin(), scene.labels.end(), [](const auto& it) {
        return it.kind == LabelKind::Force && hitOf<MemberId>(it.of).valid();
    });
    if (forces) {
        addSigns(*state.book, state, look.below);
    }
    addKey(state, scene, look.below);
    if (const std::string note = pictureNote(state, derived); !note.empty()) {
        look.below.push_back({note, Ink::Warning});
    }
    return sceneSvg(scene, look);
}

Palette picturePalette(PaletteName theme, bool white) {
    Palette palette = paletteOf(white && theme == PaletteName::Dark ? PaletteName::Paper : theme);
    if (white) {
        palette.board = {255, 255, 255};
    }
    return palette;
}

} // namespace gusset
