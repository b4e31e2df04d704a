#include "app/page/starter.hpp"

#include "app/fields/typed_text.hpp"
#include "app/state/session.hpp"
#include "app/state/update.hpp"
#include "exchange/json/json_text.hpp"
#include "model/forms/forms.hpp"
#include "model/quantity/quantity_input.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

namespace gusset {
namespace {

Outcome<double> lengthIn(const Truss& board, std::string_view typed) {
    return readLength(withPoints(board, std::string(typed)), board.units.length);
}

// The lines before the first that can't be read, and why that can't be.
struct Cases {
    std::vector<FormCase> cases;
    Issues faults;
};
Cases readCases(const Truss& board, std::string_view lines) {
    Cases read;
    while (!lines.empty() && read.faults.empty()) {
        const std::string_view line = lines.substr(0, lines.find('\n'));
        lines.remove_prefix(std::min(line.size() + 1, lines.size()));
        const std::size_t tab = std::min(line.find('\t'), line.size());
        const std::string_view typed = line.substr(std::min(tab + 1, line.size()));
        const Outcome<double> load =
            readForce(withPoints(board, std::string(typed)), board.units.force);
        if (load) {
            read.cases.push_back({std::string(line.substr(0, tab)), load.value()});
        } else {
            read.faults = load.issues();
        }
    }
    return read;
}

} // namespace

std::string starterForms(const AppState& state) {
    JsonText json(Layout::Compact);
    json.beginObject();
    json.text("length", symbolOf(state.truss.units.length));
    json.text("force", symbolOf(state.truss.units.force));
    json.key("forms");
    json.beginArray();
    for (const FormChoice& choice : formChoices()) {
        json.beginObject();
        json.text("name", sentenceIn(*state.book, choice.name.english));
        json.whole("fewest", choice.fewestPanels);
        json.whole("most", choice.mostPanels);
        json.whole("step", choice.evenPanels ? 2 : 1);
        json.endObject();
    }
    json.endArray();
    json.endObject();
    return std::move(json).take();
}

Outcome<Truss> starterOf(const AppState& state, const StarterWish& wish) {
    const int last = static_cast<int>(formChoices().size()) - 1;
    const FormChoice& choice = choiceOf(static_cast<FormKind>(std::clamp(wish.form, 0, last)));
    const Outcome<double> span = lengthIn(state.truss, wish.span);
    const Outcome<double> rise = lengthIn(state.truss, wish.rise);
    Cases cases = readCases(state.truss, wish.cases);
    for (const Issues& faults : {span.issues(), rise.issues(), cases.faults}) {
        if (!faults.empty()) {
            return faults.front();
        }
    }
    FormSpec spec{.kind = choice.kind,
                  .span = span.value(),
                  .rise = rise.value(),
                  .panels = wish.panels,
                  .cases = std::move(cases.cases),
                  .loaded = choice.usual,
                  .units = state.truss.units};
    Outcome<Truss> truss = makeForm(*state.book, spec);
    if (!truss) {
        return truss;
    }
    Truss begun = std::move(truss).value();
    begun.classSettings = state.truss.classSettings;
    return begun;
}

Truss emptyBoard(const AppState& state) {
    Truss empty;
    empty.units = state.truss.units;
    empty.classSettings = state.truss.classSettings;
    return empty;
}

std::string retitled(std::string_view saved, std::string_view title) {
    std::optional<AppState> state = readSession(saved);
    if (!state) {
        return "";
    }
    update(*state, {Commit{SetTitle{std::string(title)}}});
    return writeSession(*state);
}

} // namespace gusset
