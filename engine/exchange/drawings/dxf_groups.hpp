#pragma once
// An ASCII DXF as pairs of lines, a group code and its value, gathered into records that begin with
// code 0. Private to exchange/drawings.

#include "core/outcome.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

struct DxfGroup {
    int code = 0;
    std::string_view value; // without spaces around it
    std::size_t line = 0;   // of the code in the file, from 1
};

struct DxfRecord {
    std::string_view name; // the value of its group 0
    std::size_t line = 0;
    std::vector<DxfGroup> groups; // the others

    [[nodiscard]] const DxfGroup* find(int code) const; // the first of them, or null
    [[nodiscard]] std::string_view textOf(int code) const;
    [[nodiscard]] int wholeOf(int code) const; // 0 if there is none
};

struct DxfRecords {
    std::vector<DxfRecord> records; // up to EOF, which is not among them
    bool isCutOff = false;          // no EOF
};

// Fails at the first line that should be a group code and is none.
[[nodiscard]] Outcome<DxfRecords> dxfRecords(std::string_view text);

// A name as it is meant: \U+00E4 as its letter, bytes that are not UTF-8 as letters of ISO 8859-1.
[[nodiscard]] std::string dxfName(std::string_view);

} // namespace gusset
