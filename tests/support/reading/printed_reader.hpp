#pragma once
// What a reader of a printed working knows so far. Private to support/reading: the reader of the
// whole is printed_working, that of results printed_results, that of sums printed_sums.

#include "support/reading/formula_value.hpp"
#include "support/reading/printed_numbers.hpp"
#include "support/reading/printed_solving.hpp"
#include "support/reading/printed_truth.hpp"
#include "support/reading/printed_working.hpp"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace gusset::support {

enum class LineKind { Title, Sentence, Formula };
struct PrintedLine {
    LineKind kind = LineKind::Title;
    std::string text;
    Formula formula{};
};

// What a reader of the text knows so far, and the passage being read.
struct PrintedReader {
    const Truss& truss;
    const Solution& solution;
    PrintedExtent extent = PrintedExtent::Whole;
    std::map<std::string, Truth> truths{};
    double scale = 1; // class units
    Names angles{};   // "sin α"
    Names found{};
    Names loads{};                   // "P_A"
    std::set<std::string> pushing{}; // guessed to be in compression
    std::set<std::string> pulling{};
    PrintedNumbers numbers{};
    PrintedReading reading{};

    std::string title{};
    std::vector<std::string> sloping{};   // what the last sentence says a slope belongs to
    bool announced = false;               // the last line was an equation in symbols
    std::vector<PrintedLine> symbols{};   // before its numbers, each at the same place as in
    std::vector<PrintedLine> equations{}; // with its announcement
    std::vector<SolvingText> solving{};
    Names here{};                        // results of this passage
    std::set<std::string> unsupported{}; // those that appear in no equation of the passage

    void object(const std::string& what, const std::string& line) {
        if (reading.objection.empty()) {
            reading.objection = what + ": " + line;
        }
    }
    [[nodiscard]] bool guessed() const {
        return truss.classSettings.senses == AssumedSense::Guessed;
    }
};

inline bool begins(const std::string& text, const char* with) { return text.rfind(with, 0) == 0; }
// "F_AB is drawn pushing."
void takeGuess(PrintedReader&, const std::string& sentence);
// F_AB = 60/12 = 5.00 kN (tension)
void readResult(PrintedReader&, const PrintedLine&);
// ΣF_x = 0: A_x = 0 gives its result at once, which is not written a second time.
void takeZero(PrintedReader&, const PrintedLine&);
// ΣF_x = 0:  16.67 cos α + F_AB = 0
void readSum(PrintedReader&, const PrintedLine&);
// ΣF_x = 0:  F_AC cos α − P_C = 0 before 16.67 cos α − 10 = 0: the same terms, with names known by
// now instead of numbers.
void readSymbols(PrintedReader&, const PrintedLine& symbols, const PrintedLine& numbers);
// Names and numbers must have been found before, or here.
void readTerms(PrintedReader&, const PrintedLine&, const Formula& terms);

} // namespace gusset::support
