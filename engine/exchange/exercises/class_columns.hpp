#pragma once
// What the headings of a table of answers mean. Private to exchange/exercises.

#include "classroom/exercise/exercise.hpp"
#include "model/truss/truss.hpp"

#include <map>
#include <optional>
#include <string>

namespace gusset {

enum class ClassColumn { Other, Code, Variant, Exercise, Reaction, Force, Zeros, Degree, Value };
struct ColumnPlace {
    ClassColumn kind = ClassColumn::Other;
    std::size_t index = 0; // of the reaction, the member, the question

    bool operator==(const ColumnPlace&) const = default;
};

class ColumnNames {
public:
    ColumnNames(const Truss&, const Exercise&, const Structure&);

    [[nodiscard]] ColumnPlace placeOf(const std::string& heading) const; // Other: none
    // The member of a cell that names one.
    [[nodiscard]] std::optional<std::size_t> memberNamed(const std::string&) const;
    // Whether a heading is meant as an answer, though there is none such.
    [[nodiscard]] static bool looksLikeAnswer(const std::string& heading);

private:
    void nameMembers(const Truss&);
    void nameReactions(const Truss&, const Structure&);

    std::map<std::string, ColumnPlace> names_;
};

} // namespace gusset
