#pragma once
// A small reader of DXF release 12 that shares no code with the engine: it judges whether a written
// file keeps the rules, and returns its entities.
// Source: Autodesk, DXF Reference (2024): general structure, group code value types, header,
// tables, blocks and the entities LINE, INSERT, TEXT, CIRCLE.

#include <string>
#include <utility>
#include <vector>

namespace gusset::support {

struct ReadEntity {
    std::string kind;
    std::vector<std::pair<int, std::string>> groups;

    [[nodiscard]] std::string text(int code) const; // "" if there is none
    [[nodiscard]] double real(int code) const;
};

struct ReadDxf {
    std::vector<std::string> faults;
    std::vector<std::string> layers;
    std::vector<ReadEntity> entities; // of ENTITIES
};

[[nodiscard]] ReadDxf readByTheRules(const std::string& text);

} // namespace gusset::support
