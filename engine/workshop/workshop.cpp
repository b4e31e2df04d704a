#include "workshop/workshop.hpp"

#include "desk/given.hpp"
#include "exchange/json/json_value.hpp"
#include "exchange/links/link.hpp"
#include "phrases/design/workshop.hpp"
#include "workshop/chosen.hpp"
#include "workshop/compared.hpp"
#include "workshop/drawn.hpp"
#include "workshop/opened.hpp"
#include "workshop/varied.hpp"

namespace gusset {

std::string workshopReply(const PhraseBook& book, std::string_view request) {
    const Outcome<JsonValue> parsed = parseJson(request);
    if (!parsed) {
        return refusalOf(book, parsed.issues());
    }
    const JsonValue& value = parsed.value();
    const std::string wants = textUnder(value, "do");
    if (wants == "trace") {
        return traceReply(book, value);
    }
    const Outcome<Reading> reading = readModelOrLink(textUnder(value, "model"));
    if (!reading) {
        return refusalOf(book, reading.issues());
    }
    const Truss& truss = reading.value().truss;
    if (wants == "open") {
        return openReply(book, truss);
    }
    if (wants == "size") {
        return sizeReply(book, truss, value);
    }
    if (wants == "lines") {
        return linesReply(book, truss, value);
    }
    if (wants == "reshape") {
        return reshapeReply(book, truss, value);
    }
    if (wants == "move") {
        return moveReply(book, truss, value);
    }
    if (wants == "compare") {
        return compareReply(book, truss, value);
    }
    if (wants == "vary") {
        return varyReply(book, truss, value);
    }
    return refusal({sentenceIn(book, phrase::kNothingToDo.english)});
}

} // namespace gusset
