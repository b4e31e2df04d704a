#pragma once
// The allowed error of a number in a printed working, by its place and what the class writes.

#include "support/reading/formula_value.hpp"

#include "model/truss/class_settings.hpp"

#include <set>
#include <string>

namespace gusset::support {

struct PrintedNumbers {
    ClassSettings settings{};
    std::set<std::string> loads{};   // as printed for them, without sign
    std::set<std::string> results{}; // likewise
    std::set<std::string> slopes{};  // ratios of slopes
    std::set<std::string> solving{}; // numbers on the way to answers, of the passage being read

    [[nodiscard]] bool carriesRounded() const { return settings.carry == CarriedValues::Rounded; }
};

[[nodiscard]] std::string withoutSign(const std::string&);
// "26.67", "25√5/3": the number that begins at a token, without its sign; empty if there is none.
[[nodiscard]] std::string numberAt(const Formula&, std::size_t at);
void takeNumbers(std::set<std::string>&, const Formula&);

// For results and the values of equations. The numbers must outlive the reader.
[[nodiscard]] NumberReader resultReader(const PrintedNumbers&);
// Within equations, where loads are given numbers and previously rounded values are carried as
// written.
[[nodiscard]] NumberReader termReader(const PrintedNumbers&);

} // namespace gusset::support
