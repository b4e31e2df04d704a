#include "exchange/forms/outline_file.hpp"

#include "exchange/files/object_reader.hpp"
#include "exchange/json/json_text.hpp"
#include "phrases/faults/outlines.hpp"
#include "phrases/faults/reading.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace gusset {

namespace {

constexpr auto kKinds = std::to_array<std::string_view>({"king-post",     "queen-post",
                                                         "pratt",         "howe",
                                                         "warren",        "warren-with-posts",
                                                         "fink",          "k",
                                                         "scissors",      "bowstring",
                                                         "cantilever",    "pratt-roof",
                                                         "howe-roof",     "w-roof",
                                                         "compound-fink", "queen-post-roof",
                                                         "mono-pitch",    "polygonal-chord",
                                                         "gantry",        "tower"});
constexpr auto kSizes =
    std::to_array<std::string_view>({"heel", "tie", "overhang", "depth", "top"});
constexpr auto kSpreads = std::to_array<std::string_view>(
    {"area-on-plan", "area-on-slope", "area-normal", "line-on-plan", "line-on-slope", "joint"});
constexpr auto kRules =
    std::to_array<std::string_view>({"en-6.10", "en-6.10ab", "asce-lrfd", "asce-asd"});
constexpr WordList kChords{"upper", "lower"};

// Its place among the words; nothing, and an error that lists them, for any other.
std::optional<std::size_t> wordAmong(std::span<const std::string_view> words,
                                     const std::string& word, const std::string& place,
                                     IssueList& issues) {
    const auto found = std::find(words.begin(), words.end(), word);
    if (found != words.end()) {
        return static_cast<std::size_t>(found - words.begin());
    }
    std::string all;
    for (const std::string_view each : words) {
        all += (all.empty() ? "\"" : ", \"") + std::string(each) + "\"";
    }
    issues.error(IssueCode::OutOfRange, place,
                 statement(phrase::kUnknownWord, {{"word", word}, {"words", all}}));
    return std::nullopt;
}

class OutlineReader {
public:
    explicit OutlineReader(IssueList& issues) : issues_(issues) {}

    Outline read(const JsonValue& value, const Units& units) {
        ObjectReader object(value, "form", issues_);
        Outline outline;
        readForm(object, outline.form);
        outline.form.units = units;
        object.read("spacing", false, outline.spacing);
        const std::vector<JsonValue>& loads = object.list("loads");
        for (std::size_t i = 0; i < loads.size() && !issues_.isFull(); ++i) {
            outline.loads.push_back(readLoad(loads[i], "form.loads[" + std::to_string(i) + "]"));
        }
        object.read("selfWeight", false, outline.selfWeight);
        if (const JsonValue* rule = object.any("rule")) {
            outline.rule = readRule(*rule);
        }
        return outline;
    }

private:
    void readForm(ObjectReader& object, FormSpec& form) {
        std::string kind;
        object.read("kind", true, kind);
        form.kind = FormKind(wordAmong(kKinds, kind, object.placeOf("kind"), issues_).value_or(0));
        object.read("span", true, form.span);
        readPanels(object, form);
        for (std::size_t i = 0; i < kSizes.size(); ++i) {
            object.read(kSizes[i], false, form.sizes[i]);
        }
        std::optional<double> pitch;
        object.read("pitch", false, pitch);
        object.read("rise", !pitch, form.rise);
        if (pitch) {
            setPitch(object, *pitch, form);
        }
    }

    void readPanels(ObjectReader& object, FormSpec& form) {
        constexpr double kMost = 1000; // no form has as many
        double panels = form.panels;
        object.read("panels", false, panels);
        if (panels != std::floor(panels) || std::abs(panels) > kMost) {
            issues_.error(IssueCode::OutOfRange, object.placeOf("panels"), phrase::kPanelsAreWhole);
        } else {
            form.panels = static_cast<int>(panels);
        }
    }

    void setPitch(ObjectReader& object, double pitch, FormSpec& form) {
        if (const std::optional<double> rise = riseOfPitch(form, pitch)) {
            form.rise = *rise;
        } else {
            issues_.error(IssueCode::OutOfRange, object.placeOf("pitch"), phrase::kPitchOfRoofs);
        }
    }

    OutlineLoad readLoad(const JsonValue& value, const std::string& place) {
        ObjectReader object(value, place, issues_);
        OutlineLoad of;
        object.read("case", false, of.load.caseId);
        object.read("kind", false, of.kind);
        std::string as;
        object.read("as", true, as);
        of.load.spread =
            LoadSpread(wordAmong(kSpreads, as, object.placeOf("as"), issues_).value_or(0));
        double size = 0;
        object.read("size", !object.has("left") && !object.has("right"), size);
        of.load.left = of.load.right = size;
        object.read("left", false, of.load.left);
        object.read("right", false, of.load.right);
        of.on = LoadedChord(object.word("on", kChords, 0));
        return of;
    }

    CombinationWish readRule(const JsonValue& value) {
        CombinationWish wish;
        if (value.kind == JsonValue::Kind::Text) {
            wish.rule = ruleOf(value.text, "form.rule");
            return wish;
        }
        ObjectReader object(value, "form.rule", issues_);
        std::string by;
        object.read("by", true, by);
        wish.rule = ruleOf(by, object.placeOf("by"));
        object.read("permanent", false, wish.permanentUp);
        object.read("favourable", false, wish.permanentDown);
        object.read("variable", false, wish.variable);
        object.read("xi", false, wish.xi);
        if (const JsonValue* national = object.object("national")) {
            for (const auto& [word, psi] : national->members) {
                readNational(word, psi, object.placeOf("national") + "." + word, wish);
            }
        }
        return wish;
    }

    CombinationRule ruleOf(const std::string& word, const std::string& place) {
        return CombinationRule(wordAmong(kRules, word, place, issues_).value_or(0));
    }

    void readNational(const std::string& word, const JsonValue& psi, const std::string& place,
                      CombinationWish& wish) {
        const std::optional<CaseKind> action = actionNamed(word);
        const bool isNumbers =
            psi.items.size() == 3 &&
            std::all_of(psi.items.begin(), psi.items.end(),
                        [](const JsonValue& it) { return it.kind == JsonValue::Kind::Number; });
        if (!action || !isNumbers) {
            issues_.error(IssueCode::OutOfRange, place, phrase::kNationalValues);
            return;
        }
        wish.national.push_back(
            {*action, {psi.items[0].number, psi.items[1].number, psi.items[2].number}});
    }

    IssueList& issues_;
};

void writeLoad(JsonText& out, const OutlineLoad& of) {
    if (!of.load.caseId.empty()) {
        out.text("case", of.load.caseId);
    }
    if (!of.kind.empty()) {
        out.text("kind", of.kind);
    }
    out.text("as", wordOf(of.load.spread));
    if (of.load.left == of.load.right) {
        out.number("size", of.load.left);
    } else {
        out.number("left", of.load.left);
        out.number("right", of.load.right);
    }
    if (of.on == LoadedChord::Lower) {
        out.text("on", kChords[1]);
    }
}

void writeRule(JsonText& out, const CombinationWish& wish) {
    const CombinationWish usual;
    const auto put = [&](const char* key, double value, double otherwise) {
        if (value != otherwise) {
            out.number(key, value);
        }
    };
    out.text("by", wordOf(wish.rule));
    put("permanent", wish.permanentUp, usual.permanentUp);
    put("favourable", wish.permanentDown, usual.permanentDown);
    put("variable", wish.variable, usual.variable);
    put("xi", wish.xi, usual.xi);
    if (wish.national.empty()) {
        return;
    }
    out.object("national", [&] {
        for (const NationalFactors& own : wish.national) {
            out.key(ruleOf(own.action).word);
            out.beginArray();
            out.number(own.psi.combination);
            out.number(own.psi.frequent);
            out.number(own.psi.quasiPermanent);
            out.endArray();
        }
    });
}

// Truss::form with its outline changed; as it is where there is none.
template <class Change>
std::string formWith(const Truss& truss, const Change& change) {
    Outcome<Outline> read = readOutline(truss);
    if (!read) {
        return truss.form;
    }
    Outline outline = std::move(read).value();
    change(outline);
    return outlineText(outline);
}

} // namespace

std::string_view wordOf(FormKind kind) { return kKinds[static_cast<std::size_t>(kind)]; }
std::string_view wordOf(FormSize size) { return kSizes[static_cast<std::size_t>(size)]; }
std::string_view wordOf(LoadSpread spread) { return kSpreads[static_cast<std::size_t>(spread)]; }
std::string_view wordOf(CombinationRule rule) { return kRules[static_cast<std::size_t>(rule)]; }

std::optional<CombinationRule> ruleNamed(std::string_view word) {
    const auto found = std::find(kRules.begin(), kRules.end(), word);
    return found == kRules.end()
               ? std::nullopt
               : std::optional<CombinationRule>(CombinationRule(found - kRules.begin()));
}

Outcome<Outline> readOutline(const Truss& truss) {
    if (truss.form.empty()) {
        return Issue{IssueCode::Missing, "form", phrase::kNoOutline};
    }
    const Outcome<JsonValue> value = parseJson(truss.form);
    if (!value) {
        return value.issues();
    }
    IssueList issues;
    Outline outline = OutlineReader(issues).read(value.value(), truss.units);
    if (!issues.errors().empty()) {
        return issues.errors();
    }
    return outline;
}

std::optional<Outline> standingOutline(const PhraseBook& book, const Truss& truss) {
    const Outcome<Outline> outline = readOutline(truss);
    return outline && carriesLoadsOf(book, truss, outline.value())
               ? std::optional<Outline>(outline.value())
               : std::nullopt;
}

std::string formWithCase(const Truss& truss, const std::string& name, const std::string& to) {
    return formWith(truss, [&](Outline& outline) {
        const auto rename = [&](std::string& id) {
            if (caseNameOf(id) == name) {
                id = caseIdOf(to);
            }
        };
        for (OutlineLoad& of : outline.loads) {
            rename(of.load.caseId);
        }
        if (!outline.selfWeight.empty()) {
            rename(outline.selfWeight);
        }
    });
}

std::string formWithKind(const Truss& truss, const std::string& name, const std::string& kind) {
    return formWith(truss, [&](Outline& outline) {
        for (OutlineLoad& of : outline.loads) {
            of.kind = caseNameOf(of.load.caseId) == name ? kind : of.kind;
        }
    });
}

std::string outlineText(const Outline& outline) {
    JsonText out(Layout::Compact);
    out.beginObject();
    out.text("kind", wordOf(outline.form.kind));
    out.number("span", outline.form.span);
    out.number("rise", outline.form.rise);
    out.whole("panels", outline.form.panels);
    for (std::size_t i = 0; i < kSizes.size(); ++i) {
        if (outline.form.sizes[i]) {
            out.number(kSizes[i], *outline.form.sizes[i]);
        }
    }
    out.number("spacing", outline.spacing);
    if (!outline.loads.empty()) {
        out.objects("loads", outline.loads, [&](const OutlineLoad& of) { writeLoad(out, of); });
    }
    if (!outline.selfWeight.empty()) {
        out.text("selfWeight", outline.selfWeight);
    }
    if (outline.rule) {
        out.object("rule", [&] { writeRule(out, *outline.rule); });
    }
    out.endObject();
    return out.take();
}

} // namespace gusset
