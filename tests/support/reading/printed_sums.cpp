#include "support/reading/printed_reader.hpp"

#include "core/signs.hpp"

#include <algorithm>
#include <cmath>

namespace gusset::support {

namespace {

bool opensTerm(const Formula& formula, std::size_t i) {
    const auto sign = [&](std::size_t k) {
        return isOperator(formula[k], "+") || isOperator(formula[k], kMinus) ||
               isOperator(formula[k], "(");
    };
    return !sign(i) && (i == 0 || sign(i - 1));
}

} // namespace

void readTerms(PrintedReader& reader, const PrintedLine& line, const Formula& terms) {
    int depth = 0; // of brackets
    for (std::size_t i = 0; i < terms.size(); ++i) {
        depth += isOperator(terms[i], "(") ? 1 : isOperator(terms[i], ")") ? -1 : 0;
        if (terms[i].kind == TokenKind::Variable &&
            (i == 0 || terms[i - 1].kind != TokenKind::Function)) {
            const std::string name = printedName(terms[i]);
            reader.unsupported.erase(name);
            const bool letter = isLetter(name) && !reader.solving.empty();
            if (!letter && (reader.here.count(name) == 0 || reader.found.count(name) > 0)) {
                reader.object("a force that is not found here stands as a name", line.text);
            }
        }
        const std::string number = opensTerm(terms, i) ? numberAt(terms, i) : std::string{};
        if (depth > 0 && reader.numbers.slopes.count(number) > 0) {
            continue; // products of ratios
        }
        if (!number.empty() && number != "0" && reader.numbers.loads.count(number) == 0 &&
            reader.numbers.results.count(number) == 0 &&
            reader.numbers.solving.count(number) == 0) {
            reader.object("a number comes from nowhere", line.text);
        }
    }
}

void readSum(PrintedReader& reader, const PrintedLine& line) {
    const PrintedEquation parts = equationsOf(line.formula).front();
    if (parts.size() != 2) {
        reader.object("a sum without its value", line.text);
        return;
    }
    readTerms(reader, line, parts[0].formula);
    Names names = reader.angles;
    names.insert(reader.here.begin(), reader.here.end());
    names.merge(lettersOf(reader.solving, reader.here));
    const auto left = worthOf(parts[0].formula, names, termReader(reader.numbers));
    auto right = worthOf(parts[1].formula, names, resultReader(reader.numbers));
    if (!left || !right) {
        reader.object("an equation can't be worked out", line.text);
        return;
    }
    ++reader.reading.equations;
    const double extent = reader.solution.counting.joints; // arms may be longer than a member
    // The text before the colon states the same sum: then it must be exactly zero, not only to the
    // printed digits.
    const auto colon = std::find_if(line.formula.begin(), line.formula.end(),
                                    [](const Token& token) { return isOperator(token, ":"); });
    const Token& said = *(colon - 1);
    const bool says = said.kind == TokenKind::Number;
    right->slack = says ? 0 : right->slack;
    right->slack += kNoise * reader.scale * std::max(1.0, extent);
    if (!agree(*left, *right)) {
        reader.object("an equation does not balance", line.text);
    }
    const bool mayMiss = reader.numbers.carriesRounded() && reader.title == "Check";
    if (says ? said.text != "0" || right->value != 0 : !mayMiss) {
        reader.object("a sum is announced as another", line.text);
    }
}

namespace {

// The terms of a sum, each with the sign before it.
std::vector<Formula> termsOf(const Formula& sum) {
    std::vector<Formula> terms(1);
    int depth = 0;
    for (std::size_t i = 0; i < sum.size(); ++i) {
        const bool sign = isOperator(sum[i], "+") || isOperator(sum[i], kMinus);
        if (sign && depth == 0 && !terms.back().empty()) {
            terms.emplace_back();
        }
        depth += isOperator(sum[i], "(") ? 1 : isOperator(sum[i], ")") ? -1 : 0;
        terms.back().push_back(sum[i]);
    }
    return terms;
}

} // namespace

void readSymbols(PrintedReader& reader, const PrintedLine& symbols, const PrintedLine& numbers) {
    const auto left = termsOf(equationsOf(symbols.formula).front().front().formula);
    const auto right = termsOf(equationsOf(numbers.formula).front().front().formula);
    Names names = reader.angles;
    names.insert(reader.loads.begin(), reader.loads.end());
    names.insert(reader.found.begin(), reader.found.end());
    names.insert(reader.here.begin(), reader.here.end());
    for (std::size_t i = 0; i < std::min(left.size(), right.size()); ++i) {
        const auto named = worthOf(left[i], names, termReader(reader.numbers));
        const auto given = worthOf(right[i], names, termReader(reader.numbers));
        if (!named || !given || !agree(*named, *given)) {
            reader.object("a term in symbols is not the one in numbers", symbols.text);
        }
    }
    if (left.size() != right.size()) {
        reader.object("symbols and numbers have not the same terms", symbols.text);
    }
    ++reader.reading.inSymbols;
}

} // namespace gusset::support
