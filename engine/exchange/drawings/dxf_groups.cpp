// Source for the format: Autodesk, DXF Reference (2024), "About the DXF Format", "Group Code Value
// Types" and "Object and Entity Codes".

#include "exchange/drawings/dxf_groups.hpp"

#include "core/utf8.hpp"
#include "exchange/drawings/drawn_number.hpp"
#include "model/validate/characters.hpp"
#include "phrases/faults/drawings.hpp"

#include <algorithm>
#include <charconv>

namespace gusset {

namespace {

constexpr int kLowestCode = -5;
constexpr int kHighestCode = 1071;
constexpr int kComment = 999;
constexpr std::size_t kQuotedLetters = 40;

// Lines that end in CR LF, LF or CR.
class FileLines {
public:
    explicit FileLines(std::string_view text) : rest_(text) {}

    [[nodiscard]] std::optional<std::string_view> next() {
        if (rest_.empty()) {
            return std::nullopt;
        }
        ++number_;
        const std::size_t end = std::min(rest_.find_first_of("\r\n"), rest_.size());
        const std::string_view line = rest_.substr(0, end);
        rest_.remove_prefix(end);
        rest_.remove_prefix(rest_.starts_with("\r\n") ? 2 : rest_.empty() ? 0 : 1);
        return line;
    }
    [[nodiscard]] std::size_t number() const { return number_; } // of the line given last
    [[nodiscard]] bool isBlankFromHere() const {
        return rest_.find_first_not_of(" \t\r\n\x1A") == rest_.npos;
    }

private:
    std::string_view rest_;
    std::size_t number_ = 0;
};

Issue noGroupCode(std::size_t line, std::string_view text) {
    return {IssueCode::Damaged, statement(phrase::kPlaceLineOfFile, {{"line", line}}),
            statement(phrase::kNoGroupCode, {{"text", spelled(text.substr(0, kQuotedLetters))}})};
}

std::optional<char32_t> writtenCode(std::string_view text) { // "00E4"
    unsigned code = 0;
    const auto [stop, error] = std::from_chars(text.data(), text.data() + text.size(), code, 16);
    const bool isWhole = error == std::errc() && stop == text.data() + text.size();
    return isWhole && text.size() == 4 && code > 0 ? std::optional(static_cast<char32_t>(code))
                                                   : std::nullopt;
}

} // namespace

const DxfGroup* DxfRecord::find(int code) const {
    const auto found = std::find_if(groups.begin(), groups.end(),
                                    [&](const DxfGroup& group) { return group.code == code; });
    return found == groups.end() ? nullptr : &*found;
}

std::string_view DxfRecord::textOf(int code) const {
    const DxfGroup* group = find(code);
    return group ? group->value : std::string_view();
}

int DxfRecord::wholeOf(int code) const { return drawnWhole(textOf(code)).value_or(0); }

Outcome<DxfRecords> dxfRecords(std::string_view text) {
    DxfRecords read;
    read.isCutOff = true;
    FileLines lines(text);
    std::size_t blank = 0;
    while (!lines.isBlankFromHere()) {
        const std::string_view codeLine = *lines.next();
        const std::size_t number = lines.number();
        if (number == blank + 1 && withoutSpaces(codeLine).empty()) {
            ++blank; // before the first group
            continue;
        }
        const std::optional<int> code = drawnWhole(codeLine);
        if (!code || *code < kLowestCode || *code > kHighestCode) {
            return noGroupCode(number, codeLine);
        }
        const std::optional<std::string_view> value = lines.next();
        if (!value) {
            break;
        }
        const DxfGroup group{*code, withoutSpaces(*value), number};
        if (group.code == 0 && group.value == "EOF") {
            read.isCutOff = false;
            break;
        }
        if (group.code == 0) {
            read.records.push_back({group.value, number, {}});
        } else if (group.code != kComment && !read.records.empty()) {
            read.records.back().groups.push_back(group);
        }
    }
    return read;
}

std::string dxfName(std::string_view written) {
    constexpr std::string_view kByNumber = "\\U+";
    constexpr std::size_t kDigits = 4;
    const std::string text = asUtf8(written);
    std::string name;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const std::string_view rest = std::string_view(text).substr(i);
        const std::optional<char32_t> code =
            rest.starts_with(kByNumber) ? writtenCode(rest.substr(kByNumber.size(), kDigits))
                                        : std::nullopt;
        if (code) {
            appendCharacter(name, *code);
            i += kByNumber.size() + kDigits - 1;
        } else {
            name += text[i];
        }
    }
    return soundUtf8(name);
}

} // namespace gusset
