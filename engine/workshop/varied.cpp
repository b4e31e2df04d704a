#include "workshop/varied.hpp"

#include "desk/given.hpp"
#include "exchange/forms/outline_file.hpp"
#include "exchange/json/json_text.hpp"
#include "phrases/design/workshop.hpp"
#include "workshop/chosen.hpp"
#include "workshop/opened.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr int kMostPoints = 24;
constexpr double kMostPanels = 1000; // the form has its own limits

struct VariedRange {
    bool ofPanels = false;
    std::vector<double> values;
};

Outcome<VariedRange> rangeUnder(const JsonValue& request, const FormSpec& form) {
    VariedRange range;
    range.ofPanels = textUnder(request, "what") == "panels";
    const double from = numberUnder(request, "from");
    const double to = numberUnder(request, "to");
    if (!(from > 0 && to > from)) {
        return Issue{IssueCode::OutOfRange, "", phrase::kRangeRises};
    }
    if (range.ofPanels) {
        const FormChoice& choice = choiceOf(form.kind);
        for (int panels = choice.fewestPanels; panels <= choice.mostPanels;
             panels += choice.evenPanels ? 2 : 1) {
            if (panels >= from && panels <= to) {
                range.values.push_back(panels);
            }
        }
    } else {
        const int count = static_cast<int>(
            std::clamp(numberUnder(request, "count", 9), 2.0, double{kMostPoints}));
        for (int i = 0; i < count; ++i) {
            range.values.push_back(from + (to - from) * i / (count - 1));
        }
    }
    return range;
}

void writePoint(JsonText& out, double value, const Outcome<Chosen>& made) {
    out.result("value", value);
    if (!made) {
        return; // no such truss: the chart has a gap
    }
    const Sizing& sizing = made.value().sizing;
    double use = 0;
    for (const SizedGroup& group : sizing.groups) {
        use = std::max(use, group.use);
    }
    out.key("enough");
    out.boolean(sizing.isEnough);
    out.result("mass", sizing.mass);
    out.result("use", use);
    if (sizing.deflection) {
        out.result("deflection", *sizing.deflection);
    }
}

// The truss of another outline, with what else was set in this one.
Outcome<Truss> madeAs(const PhraseBook& book, const Truss& truss, const Outline& outline) {
    Outcome<Truss> made = trussOf(book, outline);
    if (!made) {
        return made;
    }
    Truss other = std::move(made).value();
    other.title = truss.title;
    other.checks = truss.checks;
    other.classSettings = truss.classSettings;
    other.form = outlineText(outline);
    return other;
}

} // namespace

bool isFromOutline(const PhraseBook& book, const Truss& truss) {
    const Outcome<Outline> outline = readOutline(truss);
    return outline && isUntouched(book, truss, outline.value());
}

void writeShape(JsonText& out, const Truss& truss) {
    const FormSpec form = readOutline(truss).value().form;
    const FormChoice& choice = choiceOf(form.kind);
    out.number("rise", form.rise);
    out.text("riseUnit", symbolOf(truss.units.length));
    out.whole("panels", form.panels);
    out.whole("fewestPanels", choice.fewestPanels);
    out.whole("mostPanels", choice.mostPanels);
    out.whole("panelStep", choice.evenPanels ? 2 : 1);
}

std::string varyReply(const PhraseBook& book, const Truss& truss, const JsonValue& request) {
    if (!isFromOutline(book, truss)) {
        return refusal({sentenceIn(book, phrase::kNotFromOutline.english)});
    }
    const Outline outline = readOutline(truss).value();
    const Outcome<VariedRange> range = rangeUnder(request, outline.form);
    if (!range) {
        return refusalOf(book, range.issues());
    }
    JsonText out(Layout::Compact);
    out.beginObject();
    out.objects("points", range.value().values, [&](double value) {
        Outline other = outline;
        if (range.value().ofPanels) {
            other.form.panels = static_cast<int>(value);
        } else {
            other.form.rise = value;
        }
        const Outcome<Truss> made = madeAs(book, truss, other);
        writePoint(out, value,
                   made ? chosenFor(book, made.value(), request) : Outcome<Chosen>(made.issues()));
    });
    out.endObject();
    return out.take();
}

std::string reshapeReply(const PhraseBook& book, const Truss& truss, const JsonValue& request) {
    if (!isFromOutline(book, truss)) {
        return refusal({sentenceIn(book, phrase::kNotFromOutline.english)});
    }
    Outline outline = readOutline(truss).value();
    outline.form.rise = numberUnder(request, "rise", outline.form.rise);
    outline.form.panels = static_cast<int>(
        std::clamp(numberUnder(request, "panels", outline.form.panels), 1.0, kMostPanels));
    const Outcome<Truss> made = madeAs(book, truss, outline);
    if (!made) {
        return refusalOf(book, made.issues());
    }
    return openReply(book, made.value());
}

} // namespace gusset
