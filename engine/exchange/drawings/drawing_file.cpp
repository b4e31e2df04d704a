#include "exchange/drawings/drawing_file.hpp"

#include "exchange/drawings/drawn_number.hpp"
#include "exchange/drawings/dxf_reader.hpp"
#include "exchange/drawings/svg_reader.hpp"
#include "exchange/drawings/truss_table.hpp"
#include "phrases/faults/drawings.hpp"
#include "phrases/faults/reading.hpp"

#include <algorithm>
#include <array>

namespace gusset {

namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
// At the start of binary DXF, behind the name of the program that made the format.
constexpr std::string_view kBinaryDxf = "Binary DXF";
constexpr std::size_t kBinaryStart = 22;
constexpr std::array<std::string_view, 6> kOtherFiles{"%PDF",       "\x89PNG", "\xFF\xD8\xFF",
                                                      "PK\x03\x04", "GIF8",    "{"};

bool isDwg(std::string_view text) { // "AC1032": the release
    constexpr std::string_view kDigits = "0123456789";
    return text.size() > 6 && text.starts_with("AC10") && kDigits.find(text[4]) != kDigits.npos &&
           kDigits.find(text[5]) != kDigits.npos && text[6] == '\0';
}

// UTF-16, or something else that is not read as text here.
bool isOtherText(std::string_view text) {
    return text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF") ||
           text.find('\0') != text.npos;
}

// A group code 0 or 999 on the first line, and a word on the second.
bool isDxf(std::string_view text) {
    const std::size_t end = text.find_first_of("\r\n");
    const std::optional<int> code = drawnWhole(text.substr(0, end));
    return end != text.npos && code && (*code == 0 || *code == 999);
}

std::optional<Issue> refusalOf(std::string_view text) {
    const auto refused = [](IssueCode code, Statement says) {
        return Issue{code, phrase::kPlaceFile, std::move(says)};
    };
    const std::string_view body =
        text.substr(text.starts_with(kByteOrderMark) ? kByteOrderMark.size() : 0);
    if (body.find_first_not_of(" \t\r\n") == body.npos) {
        return refused(IssueCode::Missing, phrase::kDrawingEmpty);
    }
    if (text.size() > kLargestDrawing) {
        return refused(IssueCode::TooLarge,
                       statement(phrase::kDrawingTooLarge, {{"size", kLargestDrawing >> 20}}));
    }
    if (text.substr(0, kBinaryStart).find(kBinaryDxf) != text.npos) {
        return refused(IssueCode::WrongType, phrase::kDxfBinary);
    }
    if (isDwg(text)) {
        return refused(IssueCode::WrongType, phrase::kIsDwg);
    }
    const auto isOther = [&](std::string_view start) { return text.starts_with(start); };
    if (std::any_of(kOtherFiles.begin(), kOtherFiles.end(), isOther)) {
        return refused(IssueCode::WrongType, phrase::kNotADrawing);
    }
    if (isOtherText(text)) {
        return refused(IssueCode::WrongType, phrase::kDrawingUtf16);
    }
    return std::nullopt;
}

Outcome<Traced> traced(const Outcome<LinesFound>& found, const DrawingWishes& wishes) {
    return found ? trussOfLines(found.value(), wishes) : found.issues();
}

} // namespace

Outcome<Traced> readDrawing(std::string_view text, const DrawingWishes& wishes) {
    if (std::optional<Issue> why = refusalOf(text)) {
        return *why;
    }
    text.remove_prefix(text.starts_with(kByteOrderMark) ? kByteOrderMark.size() : 0);
    const std::string_view start = text.substr(text.find_first_not_of(" \t\r\n"));
    if (start.starts_with('<')) {
        return traced(readSvg(text, wishes.layers), wishes);
    }
    if (isDxf(start)) {
        return traced(readDxf(text, wishes.layers), wishes);
    }
    if (wishes.tolerance || wishes.width || !wishes.layers.empty()) {
        return Issue{IssueCode::OutOfRange, phrase::kPlaceFile, phrase::kNotForTables};
    }
    return readTrussTable(text, wishes);
}

} // namespace gusset
