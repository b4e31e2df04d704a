#include "workshop/varied.hpp"

#include "desk/given.hpp"
#include "exchange/forms/outline_file.hpp"
#include "exchange/json/json_text.hpp"
#include "phrases/design/workshop.hpp"
#include "workshop/chosen.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr int kMostPoints = 24;

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
    out.result("deflection", sizing.deflection);
}

} // namespace

bool isFromOutline(const PhraseBook& book, const Truss& truss) {
    const Outcome<Outline> outline = readOutline(truss);
    return outline && isUntouched(book, truss, outline.value());
}

std::string varyReply(const PhraseBook& book, const Truss& truss, const JsonValue& request) {
    const Outcome<Outline> outline = readOutline(truss);
    if (!outline || !isUntouched(book, truss, outline.value())) {
        return refusal({sentenceIn(book, phrase::kNotFromOutline.english)});
    }
    const Outcome<VariedRange> range = rangeUnder(request, outline.value().form);
    if (!range) {
        return refusalOf(book, range.issues());
    }
    JsonText out(Layout::Compact);
    out.beginObject();
    out.objects("points", range.value().values, [&](double value) {
        Outline other = outline.value();
        if (range.value().ofPanels) {
            other.form.panels = static_cast<int>(value);
        } else {
            other.form.rise = value;
        }
        Outcome<Truss> made = trussOf(book, other);
        if (!made) {
            return writePoint(out, value, made.issues());
        }
        Truss varied = std::move(made).value();
        varied.checks = truss.checks;
        writePoint(out, value, chosenFor(book, varied, request));
    });
    out.endObject();
    return out.take();
}

} // namespace gusset
