// Standard forms of truss to start from, chosen by form and size, with a preview before they are
// put on the board.
#include "app/fields/field_key.hpp"
#include "app/fields/typed_text.hpp"
#include "core/number.hpp"
#include "model/catalogue/samples.hpp"
#include "model/quantity/quantity_input.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/frame.hpp"
#include "phrases/history.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {
namespace {

// The choice is kept in the storage of the window that shows it: sizes in thousandths, which are
// exact.
constexpr double kGrain = 1000;
constexpr double kLargestSize = 1e6;

struct Size {
    Phrase<> name;
    StarterSize field;
    double SampleSpec::*value;
    bool isForce = false;
};
constexpr std::array kSizes{
    Size{phrase::kSpan, StarterSize::Span, &SampleSpec::span},
    Size{phrase::kRise, StarterSize::Rise, &SampleSpec::rise},
    Size{phrase::kLoadOfJoint, StarterSize::Load, &SampleSpec::load, true},
};

ImGuiID slotOf(const char* name) { return ImGui::GetID(name); }
ImGuiID slotOf(StarterSize size) { return ImGui::GetID(keyOf(size).c_str()); }

SampleSpec remembered(const Truss& truss) {
    const ImGuiStorage& memory = *ImGui::GetStateStorage();
    SampleSpec spec;
    spec.units = truss.units;
    spec.form = static_cast<SampleForm>(
        memory.GetInt(slotOf("starter.form"), static_cast<int>(SampleForm::Pratt)));
    spec.panels = memory.GetInt(slotOf("starter.panels"), spec.panels);
    for (const Size& size : kSizes) {
        const int usual = static_cast<int>(spec.*size.value * kGrain);
        spec.*size.value = memory.GetInt(slotOf(size.field), usual) / kGrain;
    }
    const SampleChoice& choice = choiceOf(spec.form);
    spec.panels = std::clamp(spec.panels, choice.fewestPanels, choice.mostPanels);
    spec.loaded = choice.usual;
    return spec;
}

// Takes a size that was typed.
void takeSizes(PanelContext& context) {
    if (!context.field.done) {
        return;
    }
    const FieldDone& done = *context.field.done;
    const auto size = std::find_if(kSizes.begin(), kSizes.end(), [&done](const Size& it) {
        return done.field == FieldId(it.field);
    });
    if (size == kSizes.end()) {
        return;
    }
    const Units& units = context.state.truss.units;
    const std::string text = withPoints(context.state.truss, done.text);
    const Outcome<double> value =
        size->isForce ? readForce(text, units.force) : readLength(text, units.length);
    context.actions.push_back(EndField{});
    if (done.how != FieldEnd::GivenUp && !value) {
        context.actions.push_back(Say{MessageKind::Problem, value.issues().front().says});
    } else if (done.how != FieldEnd::GivenUp) {
        const double kept = std::clamp(value.value(), 0.0, kLargestSize);
        ImGui::GetStateStorage()->SetInt(slotOf(size->field),
                                         static_cast<int>(std::round(kept * kGrain)));
    }
    context.field.done.reset();
}

void formChoice(const PanelContext& context, const SampleSpec& spec) {
    std::vector<const char*> names;
    for (const SampleChoice& choice : sampleChoices()) {
        names.push_back(words(context, choice.name));
    }
    const int before = static_cast<int>(spec.form);
    const int form = wordChoice(context.ui, "form", names, before);
    ImGui::GetStateStorage()->SetInt(slotOf("starter.form"), form);
}

void panelChoice(const PanelContext& context, const SampleSpec& spec) {
    const Ui& ui = context.ui;
    const SampleChoice& choice = choiceOf(spec.form);
    if (choice.fewestPanels == choice.mostPanels) {
        return;
    }
    const int step = choice.evenPanels ? 2 : 1;
    int panels = spec.panels;
    besideButtons(ui, words(context, phrase::kPanels));
    ImGui::SameLine();
    if (button(ui, "−##fewer panels", {.enabled = panels - step >= choice.fewestPanels})) {
        panels -= step;
    }
    ImGui::SameLine();
    besideButtons(ui, std::to_string(spec.panels));
    ImGui::SameLine();
    if (button(ui, "+##more panels", {.enabled = panels + step <= choice.mostPanels})) {
        panels += step;
    }
    ImGui::GetStateStorage()->SetInt(slotOf("starter.panels"), panels);
}

void sizeFields(PanelContext& context, const SampleSpec& spec) {
    const Ui& ui = context.ui;
    const Units& units = context.state.truss.units;
    const ImVec2 low = ImGui::GetCursorScreenPos();
    const float each = ImGui::GetContentRegionAvail().x / static_cast<float>(kSizes.size());
    const float label = std::round(ui.fonts.small->FontSize * 1.5f);
    const float height = std::max(ui.rowHeight(), ui.px(36));
    float x = low.x;
    for (const Size& size : kSizes) {
        const UnitHeading name = headOf(
            context, size.name, size.isForce ? symbolOf(units.force) : symbolOf(units.length));
        ImGui::GetWindowDrawList()->AddText(ui.fonts.small, ui.fonts.small->FontSize, {x, low.y},
                                            packed(ui.palette->muted), name.words.c_str());
        FieldLook look;
        look.field = size.field;
        look.name = words(context, size.name);
        look.text = typedNumber(context.state.truss, spec.*size.value);
        look.look = formatNumber(spec.*size.value, typedStyleOf(context.state.truss));
        look.align = Align::Right;
        look.framed = true;
        field(context, {{x, low.y + label}, {x + each - ui.px(8), low.y + label + height}}, look);
        x += each;
    }
    ImGui::Dummy({ImGui::GetContentRegionAvail().x, label + height});
}

// Only members and joints, in the middle of a strip of board.
void picture(const Ui& ui, const Truss& truss) {
    const ImVec2 low = ImGui::GetCursorScreenPos();
    const ImVec2 size{ImGui::GetContentRegionAvail().x, ui.px(120)};
    ImGui::Dummy(size);
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.AddRectFilled(low, {low.x + size.x, low.y + size.y}, packed(ui.palette->board));
    const Extent box = extent(truss);
    const double width = std::max(box.high.x - box.low.x, 1e-9);
    const double height = std::max(box.high.y - box.low.y, 1e-9);
    const double scale = std::min((size.x - ui.px(40)) / width, (size.y - ui.px(28)) / height);
    const Vec2 centre = 0.5 * (box.low + box.high);
    const auto place = [&](JointId joint) {
        const Vec2 from = truss.joints[joint.at()].at - centre;
        return ImVec2{low.x + size.x / 2 + static_cast<float>(scale * from.x),
                      low.y + size.y / 2 - static_cast<float>(scale * from.y)};
    };
    for (const Member& member : truss.members) {
        list.AddLine(place(member.a), place(member.b), packed(ui.palette->ink), ui.px(2));
    }
    for (int i = 0; i < static_cast<int>(truss.joints.size()); ++i) {
        const ImVec2 at = place(JointId{i});
        list.AddCircleFilled(at, ui.px(3.5), packed(ui.palette->board));
        list.AddCircle(at, ui.px(3.5), packed(ui.palette->ink), 0, ui.px(1.5));
    }
}

} // namespace

void starters(PanelContext& context) {
    takeSizes(context);
    const Ui& ui = context.ui;
    sectionHeading(ui, words(context, phrase::kBeginUsual));
    SampleSpec spec = remembered(context.state.truss);
    formChoice(context, spec);
    spec = remembered(context.state.truss);
    sizeFields(context, spec);
    panelChoice(context, spec);
    Outcome<Truss> truss = makeSample(*context.state.book, spec);
    if (!truss) {
        paragraph(ui, said(*context.state.book, truss.issues().front().says), Ink::Warning);
        return;
    }
    picture(ui, truss.value());
    if (button(ui, words(context, phrase::kPutOnBoard), {.icon = Icon::Plus, .full = true})) {
        Truss begun = std::move(truss).value();
        begun.classSettings = context.state.truss.classSettings;
        context.actions.push_back(Commit{ReplaceTruss{std::move(begun), phrase::kStepBegin}});
    }
}

} // namespace gusset
