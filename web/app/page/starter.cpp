#include "app/page/starter.hpp"

#include "app/fields/typed_text.hpp"
#include "app/page/typed_outline.hpp"
#include "app/state/session.hpp"
#include "app/state/update.hpp"
#include "exchange/forms/outline_file.hpp"
#include "exchange/json/json_text.hpp"
#include "phrases/design/loading.hpp"
#include "report/sheet/sheet_outline.hpp"
#include "report/text/html.hpp"

#include <array>
#include <optional>
#include <string>
#include <utility>

namespace gusset {
namespace {

constexpr std::array kSizeNames{phrase::kSizeHeel, phrase::kSizeTie, phrase::kSizeOverhang,
                                phrase::kSizeDepth, phrase::kSizeTopWidth};
constexpr std::array kSpreads{LoadSpread::AreaOnPlan,  LoadSpread::AreaOnSlope,
                              LoadSpread::AreaNormal,  LoadSpread::LineOnPlan,
                              LoadSpread::LineOnSlope, LoadSpread::PerJoint};
constexpr std::array kRuleNames{phrase::kRuleEn610, phrase::kRuleEn610ab, phrase::kRuleAsceLrfd,
                                phrase::kRuleAsceAsd};

// Factors of combinations that may be typed, by their keys in an outline.
struct TypedFactor {
    std::string_view key;
    Phrase<> says;
    double CombinationWish::*value;
    bool ofBoth; // 6.10 and 6.10a/b, or of the latter alone
};
constexpr std::array kTypedFactors{
    TypedFactor{"permanent", phrase::kFactorPermanentUp, &CombinationWish::permanentUp, true},
    TypedFactor{"favourable", phrase::kFactorPermanentDown, &CombinationWish::permanentDown, true},
    TypedFactor{"variable", phrase::kFactorVariable, &CombinationWish::variable, true},
    TypedFactor{"xi", phrase::kFactorXi, &CombinationWish::xi, false}};

std::vector<std::string> typedFactorsOf(CombinationRule rule) {
    std::vector<std::string> keys;
    for (const TypedFactor& factor : kTypedFactors) {
        if (rule == CombinationRule::En610ab || (rule == CombinationRule::En610 && factor.ofBoth)) {
            keys.emplace_back(factor.key);
        }
    }
    return keys;
}

class Listing {
public:
    explicit Listing(const AppState& state) : state_(state) {}

    std::string write() {
        json_.beginObject();
        json_.text("length", symbolOf(state_.truss.units.length));
        json_.text("force", symbolOf(state_.truss.units.force));
        list("forms", formChoices(), [&](const FormChoice& choice) { form(choice); });
        list("sizes", kSizeNames, [&](const Phrase<>& says) {
            word(wordOf(FormSize(&says - kSizeNames.data())), says);
        });
        list("spreads", kSpreads, [&](LoadSpread spread) {
            word(wordOf(spread), saysOf(spread));
            json_.text("unit", unitOf(spread, state_.truss.units));
            json_.key("sides");
            json_.boolean(spread == LoadSpread::AreaNormal);
        });
        list("kinds", actionRules(), [&](const ActionRule& rule) { kind(rule); });
        list("rules", kRuleNames, [&](const Phrase<>& says) {
            const auto rule = CombinationRule(&says - kRuleNames.data());
            word(wordOf(rule), says);
            json_.texts("factors", typedFactorsOf(rule));
        });
        list("factors", kTypedFactors, [&](const TypedFactor& factor) {
            word(factor.key, factor.says);
            json_.number("usual", CombinationWish{}.*factor.value);
        });
        json_.endObject();
        return json_.take();
    }

private:
    template <class Items, class Write>
    void list(const char* key, const Items& items, const Write& write) {
        json_.key(key);
        json_.beginArray();
        for (const auto& item : items) {
            json_.beginObject();
            write(item);
            json_.endObject();
        }
        json_.endArray();
    }
    void word(std::string_view word, const Phrase<>& says) {
        json_.text("word", word);
        json_.text("name", sentenceIn(*state_.book, says.english));
    }
    void kind(const ActionRule& rule) {
        word(rule.word, rule.says);
        if (rule.asce != AsceLoad::D) {
            json_.key("psi");
            json_.beginArray();
            json_.number(rule.psi.combination);
            json_.number(rule.psi.frequent);
            json_.number(rule.psi.quasiPermanent);
            json_.endArray();
        }
    }
    void form(const FormChoice& choice) {
        word(wordOf(choice.kind), choice.name);
        json_.whole("fewest", choice.fewestPanels);
        json_.whole("most", choice.mostPanels);
        json_.whole("step", choice.evenPanels ? 2 : 1);
        json_.text("loaded", choice.usual == LoadedChord::Upper ? "upper" : "lower");
        std::vector<std::string> sizes;
        for (std::size_t i = 0; i < kFormSizes; ++i) {
            if (choice.takes[i]) {
                sizes.emplace_back(wordOf(FormSize(i)));
            }
        }
        json_.allTexts("sizes", sizes);
        json_.key("pitched");
        json_.boolean(riseOfPitch({.kind = choice.kind}, 30).has_value());
    }

    const AppState& state_;
    JsonText json_{Layout::Compact};
};

} // namespace

std::string starterForms(const AppState& state) { return Listing(state).write(); }

Outcome<Truss> starterOf(const AppState& state, std::string_view typed) {
    const Outcome<Outline> outline = typedOutline(state.truss, typed);
    if (!outline) {
        return outline.issues();
    }
    Outcome<Truss> made = trussOf(*state.book, outline.value());
    if (!made) {
        return made;
    }
    Truss truss = std::move(made).value();
    truss.classSettings = state.truss.classSettings;
    truss.form = outlineText(outline.value());
    return truss;
}

std::string starterShares(const AppState& state, std::string_view typed) {
    const Outcome<Outline> outline = typedOutline(state.truss, typed);
    if (!outline) {
        return "";
    }
    const Outcome<Truss> made = trussOf(*state.book, outline.value());
    if (!made) {
        return "";
    }
    Truss truss = made.value();
    truss.classSettings = state.truss.classSettings;
    const Writer writer{*state.book, truss};
    std::string html;
    for (const TextTable& table : shareTables(writer, outline.value())) {
        html += tableHtml(table);
    }
    const std::string rule = sharingRule(*state.book, outline.value());
    return rule.empty() ? html : paragraphsHtml({rule}) + html;
}

Truss emptyBoard(const AppState& state) {
    Truss empty;
    empty.units = state.truss.units;
    empty.classSettings = state.truss.classSettings;
    return empty;
}

std::string outlineOf(const AppState& state) {
    const Outcome<Outline> outline = readOutline(state.committed);
    return outline && isUntouched(*state.book, state.committed, outline.value())
               ? state.committed.form
               : "";
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
