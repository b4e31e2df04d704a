#include "workshop/drawn.hpp"

#include "desk/given.hpp"
#include "exchange/drawings/drawing_file.hpp"
#include "exchange/drawings/dxf_writer.hpp"
#include "exchange/drawings/truss_table.hpp"
#include "exchange/json/json_text.hpp"
#include "phrases/design/workshop.hpp"
#include "workshop/opened.hpp"

namespace gusset {

std::string traceReply(const PhraseBook& book, const JsonValue& request) {
    DrawingWishes wishes{};
    if (const std::string unit = textUnder(request, "unit"); !unit.empty()) {
        wishes.unit = lengthUnitNamed(unit);
    }
    const double width = numberUnder(request, "width");
    if (!(width >= 0 && width <= kLargestDrawn)) {
        return refusal({sentenceIn(book, phrase::kDrawingWidth.english)});
    }
    if (width > 0) {
        wishes.width = width;
    }
    const Outcome<Traced> traced = readDrawing(textUnder(request, "drawing"), wishes);
    if (!traced) {
        return refusalOf(book, traced.issues());
    }
    return openReply(book, traced.value().truss, faultSentences(book, traced.value().notes));
}

std::string linesReply(const PhraseBook& book, const Truss& truss, const JsonValue& request) {
    JsonText out(Layout::Compact);
    out.beginObject();
    out.text("text", textUnder(request, "as") == "csv" ? trussTable(truss)
                                                       : writeDxf(book, truss, truss.units.length));
    out.endObject();
    return out.take();
}

} // namespace gusset
