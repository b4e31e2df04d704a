#include "support/reading/printed_working.hpp"

#include "core/signs.hpp"

#include "support/reading/formula_value.hpp"
#include "support/reading/printed_numbers.hpp"
#include "support/reading/printed_slopes.hpp"
#include "support/reading/printed_truth.hpp"
#include "support/reading/text_formula.hpp"

#include "core/number.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace gusset::support {

namespace {

enum class LineKind { Title, Sentence, Formula };
struct PrintedLine {
    LineKind kind = LineKind::Title;
    std::string text;
    Formula formula{};
};

// What a reader of the text knows so far, and the passage being read.
struct Reader {
    const Truss& truss;
    const Solution& solution;
    PrintedExtent extent = PrintedExtent::Whole;
    std::map<std::string, Truth> truths{};
    double scale = 1; // class units
    Names angles{};   // "sin α"
    Names found{};
    Names loads{}; // "P_A"
    PrintedNumbers numbers{};
    PrintedReading reading{};

    std::string title{};
    std::vector<std::string> sloping{};   // what the last sentence says a slope belongs to
    std::vector<PrintedLine> symbols{};   // before its numbers, each at the same place as in
    std::vector<PrintedLine> equations{}; // with its announcement
    Names here{};                         // results of this passage
    std::set<std::string> unsupported{};  // those that appear in no equation of the passage

    void object(const std::string& what, const std::string& line) {
        if (reading.objection.empty()) {
            reading.objection = what + ": " + line;
        }
    }
    [[nodiscard]] bool guessed() const {
        return truss.classSettings.senses == AssumedSense::Guessed;
    }
};

bool begins(const std::string& text, const char* with) { return text.rfind(with, 0) == 0; }

Reader readerOf(const Truss& truss, const Solution& solution) {
    Reader reader{truss, solution};
    reader.truths = printedTruths(truss, solution);
    reader.numbers.settings = truss.classSettings;
    reader.scale = std::max(solution.largest / toNewton(truss.units.force), 1e-300);
    if (reader.truths.size() != solution.reactions.size() + solution.forces.size()) {
        reader.object("two forces have one name", truss.title);
    }
    return reader;
}

// "↖" for up and to the left.
std::string arrowOf(Vec2 along) {
    const auto sign = [](double part) { return part > kNoise ? 1 : part < -kNoise ? -1 : 0; };
    const std::map<std::pair<int, int>, std::string> arrows{
        {{0, 1}, "↑"},  {{0, -1}, "↓"}, {{-1, 0}, "←"},  {{1, 0}, "→"},
        {{-1, 1}, "↖"}, {{1, 1}, "↗"},  {{-1, -1}, "↙"}, {{1, -1}, "↘"}};
    const auto arrow = arrows.find({sign(along.x), sign(along.y)});
    return arrow == arrows.end() ? "" : arrow->second;
}

// The word behind the number; empty if there is none, or only a unit.
std::string wordBehind(const Reader& reader, const PrintedLine& line) {
    const Token& last = line.formula.back();
    const bool unit = last.text == symbolOf(reader.truss.units.force);
    return last.kind == TokenKind::Word && !unit ? last.text : "";
}

// A reaction that is found to act against its drawn sense is negative, without an arrow: its
// sentence says where it acts, and the sign may be lost in rounding. Everything else says its
// sense.
bool saysSense(const Truth& truth, double printed, const std::string& word) {
    if (length(truth.along) == 0) {
        return word == (truth.value < 0 ? "(compression)" : "(tension)");
    }
    const bool isLost = printed == 0 && truth.value < 0;
    return printed < 0 ? word.empty() : word == arrowOf(truth.along) || (isLost && word.empty());
}

void compareWithSolver(Reader& reader, const PrintedLine& line, const Truth& truth,
                       Rounded printed) {
    const std::string word = wordBehind(reader, line);
    const bool zero = std::fabs(truth.value) <= kNoise * reader.scale;
    if (!zero && !saysSense(truth, printed.value, word)) {
        reader.object("a result has the wrong sense", line.text);
    }
    const bool isReaction = length(truth.along) > 0;
    const bool sizeOnly = isReaction ? !word.empty() : reader.guessed();
    const Rounded known{sizeOnly ? std::fabs(truth.value) : truth.value, kNoise * reader.scale};
    if (sizeOnly) {
        printed.value = std::fabs(printed.value);
    }
    if (equationsOf(line.formula).front()[1].isExact) {
        printed.slack = kNoise * reader.scale;
    }
    ++reader.reading.results;
    if (!agree(printed, known)) {
        reader.object("a result is not the solver's", line.text);
    }
}

// The forms of a result: 50/3 kN ≈ 16.67 kN (tension).
std::vector<Formula> waysOfWriting(const Formula& worth) {
    std::vector<Formula> ways(1);
    for (const Token& token : worth) {
        if (isOperator(token, kAlmost)) {
            ways.emplace_back();
        } else {
            ways.back().push_back(token);
        }
    }
    return ways;
}

void takeKnown(Reader& reader, const PrintedLine& line, const std::string& name, Rounded value) {
    const auto before = reader.found.find(name);
    const bool summary = reader.title == "All forces";
    if (summary) {
        const bool nothingActs = reader.found.empty() && value.value == 0;
        const bool same = before != reader.found.end() &&
                          std::fabs(before->second.value) == std::fabs(value.value);
        if (!same && !nothingActs) {
            reader.object("the summary says another value", line.text);
        }
        return;
    }
    if (before != reader.found.end()) {
        reader.object("a force is found twice", line.text);
    }
    const bool byRule = begins(reader.title, "Symmetry") ||
                        (begins(reader.title, "Zero force") && value.value == 0);
    if (!byRule) {
        reader.unsupported.insert(name);
    }
}

int figuresOf(const Digits& digits) { return digits.leading + digits.decimals + 1; }

// "≈ −33.79/0.6402 ≈": what is divided is a computed number, and the divisor is written to four
// figures or decimals at least, unless all of both is written.
std::optional<Rounded> quotientOf(const Reader& reader, const PrintedPart& part) {
    const Token& token = part.formula.back();
    const double sign = part.formula.size() > 1 ? -1 : 1;
    const auto above = resultReader(reader.numbers)(token.text, NumberPlace::Value);
    const auto below = resultReader(reader.numbers)(token.below, NumberPlace::Factor);
    if (!above || !below) {
        return std::nullopt;
    }
    const auto digits = digitsOf(token.below);
    const bool full = part.isExact || (digits->decimals < 4 && figuresOf(*digits) < 4);
    const double divisor = full ? 0 : 0.5 * digits->step();
    const double dividend = part.isExact ? 0 : above->slack;
    const double slack = (dividend + divisor * std::fabs(above->value / below->value)) /
                         (std::fabs(below->value) - divisor);
    return Rounded{sign * above->value / below->value, slack + kNoise * reader.scale};
}

// Takes "= 60/12" out of "E_y = 60/12 = 5.00 kN ↑". An exact number such as 50/3 has a unit behind
// it.
PrintedLine withoutQuotient(Reader& reader, PrintedLine line) {
    const PrintedEquation parts = equationsOf(line.formula).front();
    const Formula& second = parts[1].formula;
    const bool signedOne = second.size() == 2 && isOperator(second.front(), kMinus);
    if (parts.size() < 3 || !(second.size() == 1 || signedOne) ||
        second.back().kind != TokenKind::Fraction || !second.back().rootAbove.empty()) {
        return line;
    }
    const bool whole =
        (second.back().text + second.back().below).find_first_of(".,") == std::string::npos;
    if (reader.truss.classSettings.form == NumberForm::Exact && whole &&
        !reader.numbers.carriesRounded() && !parts[2].isExact) {
        return line; // −5/6 ≈ −0.83, of which the fraction is the value
    }
    const auto quotient = quotientOf(reader, parts[1]);
    const auto value = worthOf(parts[2].formula, {}, resultReader(reader.numbers));
    if (!quotient || !value || !agree(*quotient, *value)) {
        reader.object("a quotient is not its result", line.text);
    }
    const auto truth = reader.truths.find(printedName(line.formula.front()));
    const bool known = truth != reader.truths.end() && !reader.numbers.carriesRounded();
    if (quotient && known && parts[1].isExact &&
        std::fabs(std::fabs(quotient->value) - std::fabs(truth->second.value)) >
            kNoise * reader.scale) {
        reader.object("a rounded quotient is said to be equal", line.text);
    }
    ++reader.reading.quotients;
    line.formula.erase(line.formula.begin() + 1,
                       line.formula.begin() + 2 + static_cast<std::ptrdiff_t>(second.size()));
    return line;
}

void readResult(Reader& reader, const PrintedLine& printedLine) {
    const PrintedLine line = withoutQuotient(reader, printedLine);
    const std::string name = printedName(line.formula.front());
    const auto truth = reader.truths.find(name);
    const std::vector<Formula> ways = waysOfWriting({line.formula.begin() + 2, line.formula.end()});
    const auto numbers = resultReader(reader.numbers);
    const auto value = worthOf(ways.front(), {}, numbers);
    if (truth == reader.truths.end() || !value) {
        reader.object("a result can't be read", line.text);
        return;
    }
    const bool nothing =
        line.formula.size() == 3 && value->value == 0 && !reader.numbers.carriesRounded();
    const Rounded printed{value->value, nothing ? kNoise * reader.scale : value->slack};
    for (const Formula& way : ways) {
        const auto other = worthOf(way, {}, numbers);
        if (!other || !agree(printed, *other)) {
            reader.object("two ways of writing a result differ", line.text);
        }
    }
    if (reader.here.count(name) > 0) {
        reader.object("a force is given twice", line.text);
    }
    takeKnown(reader, line, name, printed);
    reader.here[name] = printed;
    if (!reader.numbers.carriesRounded()) {
        compareWithSolver(reader, line, truth->second, printed);
    }
}

bool opensTerm(const Formula& formula, std::size_t i) {
    const auto sign = [&](std::size_t k) {
        return isOperator(formula[k], "+") || isOperator(formula[k], kMinus) ||
               isOperator(formula[k], "(");
    };
    return !sign(i) && (i == 0 || sign(i - 1));
}

void readTerms(Reader& reader, const PrintedLine& line, const Formula& terms) {
    for (std::size_t i = 0; i < terms.size(); ++i) {
        if (terms[i].kind == TokenKind::Variable &&
            (i == 0 || terms[i - 1].kind != TokenKind::Function)) {
            const std::string name = printedName(terms[i]);
            reader.unsupported.erase(name);
            if (reader.here.count(name) == 0 || reader.found.count(name) > 0) {
                reader.object("a force that is not found here stands as a name", line.text);
            }
        }
        const std::string number = opensTerm(terms, i) ? numberAt(terms, i) : std::string{};
        if (!number.empty() && number != "0" && reader.numbers.loads.count(number) == 0 &&
            reader.numbers.results.count(number) == 0) {
            reader.object("a number comes from nowhere", line.text);
        }
    }
}

// ΣF_x = 0:  16.67 cos α + F_AB = 0
void readSum(Reader& reader, const PrintedLine& line) {
    const PrintedEquation parts = equationsOf(line.formula).front();
    if (parts.size() != 2) {
        reader.object("a sum without its value", line.text);
        return;
    }
    readTerms(reader, line, parts[0].formula);
    Names names = reader.angles;
    names.insert(reader.here.begin(), reader.here.end());
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

// ΣF_x = 0:  F_AC cos α − P_C = 0 before 16.67 cos α − 10 = 0: the same terms, with names known by
// now instead of numbers.
void readSymbols(Reader& reader, const PrintedLine& symbols, const PrintedLine& numbers) {
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

void readCount(Reader& reader, const PrintedLine& line) {
    const Counting& count = reader.solution.counting;
    const Names names{{"m", {double(count.members)}},
                      {"r", {double(count.reactions)}},
                      {"j", {double(count.joints)}}};
    const auto exact = [](const std::string& text, NumberPlace) -> std::optional<Rounded> {
        const auto digits = digitsOf(text);
        return digits ? std::optional(Rounded{digits->value}) : std::nullopt;
    };
    for (const PrintedEquation& equation : equationsOf(line.formula)) {
        const auto first = worthOf(equation.front().formula, names, exact);
        for (const PrintedPart& part : equation) {
            const auto value = worthOf(part.formula, names, exact);
            if (!first || !value || !agree(*first, *value)) {
                reader.object("the count is wrong", line.text);
            }
        }
    }
}

// ΣF_x = 0: A_x = 0 gives its result at once, which is not written a second time.
void takeZero(Reader& reader, const PrintedLine& line) {
    const PrintedEquation parts = equationsOf(line.formula).front();
    const Formula& left = parts.front().formula;
    if (parts.size() != 2 || left.size() != 1 || left.front().kind != TokenKind::Variable ||
        numberAt(parts[1].formula, 0) != "0") {
        return;
    }
    const std::string name = printedName(left.front());
    const auto truth = reader.truths.find(name);
    if (reader.here.count(name) > 0 || reader.found.count(name) > 0 ||
        truth == reader.truths.end()) {
        return;
    }
    takeKnown(reader, line, name, {0, kNoise * reader.scale});
    reader.here[name] = {0, kNoise * reader.scale};
    if (!reader.numbers.carriesRounded() &&
        std::fabs(truth->second.value) > kNoise * reader.scale) {
        reader.object("a result is not the solver's", line.text);
    }
    ++reader.reading.results;
}

void closePassage(Reader& reader) {
    for (const PrintedLine& line : reader.equations) {
        takeZero(reader, line);
    }
    for (std::size_t i = 0; i < reader.equations.size(); ++i) {
        readSum(reader, reader.equations[i]);
        if (!reader.symbols[i].formula.empty()) {
            readSymbols(reader, reader.symbols[i], reader.equations[i]);
        }
    }
    if (!reader.unsupported.empty()) {
        reader.object("no equation gives " + *reader.unsupported.begin(), reader.title);
    }
    reader.found.insert(reader.here.begin(), reader.here.end());
    reader.symbols.clear();
    reader.equations.clear();
    reader.here.clear();
    reader.unsupported.clear();
}

// "F_AB ≈ …", "A_x = …".
bool isResult(const Formula& formula) {
    return formula.size() > 2 && formula[0].kind == TokenKind::Variable &&
           (isOperator(formula[1], "=") || isOperator(formula[1], kAlmost));
}

// The equation in numbers, under its symbols: announced by them.
void takeNumbersLine(Reader& reader, const PrintedLine& line) {
    PrintedLine& last = reader.equations.back();
    reader.symbols.back() = last;
    const auto colon = std::find_if(last.formula.begin(), last.formula.end(),
                                    [](const Token& token) { return isOperator(token, ":"); });
    last.formula.erase(colon + 1, last.formula.end());
    last.formula.insert(last.formula.end(), line.formula.begin(), line.formula.end());
    last.text = line.text;
}

// "Load at A: P_Ax = 3 kN to the right and P_Ay = 4 kN down."
void takeLoadNames(Reader& reader, const Formula& sentence) {
    for (std::size_t i = 0; i + 2 < sentence.size(); ++i) {
        if (isResult({sentence.begin() + static_cast<std::ptrdiff_t>(i), sentence.end()})) {
            const auto size = termReader(reader.numbers)(sentence[i + 2].text, NumberPlace::Value);
            if (size) {
                reader.loads[printedName(sentence[i])] = *size;
            }
        }
    }
}

void readFormula(Reader& reader, const PrintedLine& line) {
    const auto has = [&](const char* sign) {
        return std::any_of(line.formula.begin(), line.formula.end(),
                           [&](const Token& token) { return isOperator(token, sign); });
    };
    if (reader.title == "Count") {
        readCount(reader, line);
    } else if (has(":")) {
        reader.symbols.push_back({});
        reader.equations.push_back(line);
    } else if (!reader.equations.empty() && !isResult(line.formula)) {
        takeNumbersLine(reader, line);
    } else if (reader.title == "Slopes" || reader.title == "The whole truss") {
        const std::string objection =
            objectionToSlope(line.formula, reader.sloping, reader.truss, reader.angles);
        if (!objection.empty()) {
            reader.object(objection, line.text);
        }
        ++reader.reading.slopes;
    } else {
        readResult(reader, line);
        takeNumbers(reader.numbers.results, line.formula);
    }
}

PrintedReading read(Reader reader, const std::vector<PrintedLine>& lines,
                    const PrintedWords& words) {
    for (const PrintedLine& line : lines) {
        switch (line.kind) {
        case LineKind::Title:
            closePassage(reader);
            reader.title = line.text;
            break;
        case LineKind::Sentence:
            reader.sloping = slopingIn(line.text);
            if (reader.title == "The whole truss" && begins(line.text, "Load at ")) {
                const Formula sentence = formulaOfText(line.text, words);
                takeNumbers(reader.numbers.loads, sentence);
                takeLoadNames(reader, sentence);
            }
            break;
        case LineKind::Formula:
            readFormula(reader, line);
        }
    }
    closePassage(reader);
    if (reader.extent == PrintedExtent::Whole && reader.found.size() != reader.truths.size()) {
        reader.object("a force is not found", reader.title);
    }
    return reader.reading;
}

void takeLoads(Reader& reader) {
    const double newton = toNewton(reader.truss.units.force);
    const NumberStyle style{.form = reader.truss.classSettings.form,
                            .digits = reader.truss.classSettings.digits};
    for (const Vec2 load : jointLoads(reader.truss, {})) {
        for (const double part : {load.x, load.y, length(load)}) {
            reader.numbers.loads.insert(formatGiven(std::fabs(part / newton), style));
        }
    }
    for (const auto& [name, size] : printedLoads(reader.truss)) {
        reader.loads[name] = {size, kNoise * size};
    }
}

PrintedWords wordsOf(const Reader& reader) {
    PrintedWords words{{}, symbolOf(reader.truss.units.force)};
    for (const auto& [name, truth] : reader.truths) {
        words.names.push_back(name);
    }
    for (const auto& [name, size] : printedLoads(reader.truss)) {
        words.names.push_back(name);
    }
    return words;
}

} // namespace

PrintedReading readPrintedText(const std::string& text, const Truss& truss,
                               const Solution& solution, PrintedExtent extent) {
    Reader reader = readerOf(truss, solution);
    reader.extent = extent;
    if (extent == PrintedExtent::Chain) {
        takeLoads(reader);
    }
    const PrintedWords words = wordsOf(reader);
    std::vector<PrintedLine> lines;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::string line = text.substr(at, end - at);
        at = end + 1;
        if (begins(line, "    ")) {
            lines.push_back({LineKind::Formula, line, formulaOfText(line, words)});
        } else if (!line.empty()) {
            const bool sentence = begins(line, "  ");
            lines.push_back({sentence ? LineKind::Sentence : LineKind::Title,
                             sentence ? line.substr(2) : line});
        }
    }
    return read(reader, lines, words);
}

PrintedReading readPrintedPassages(const std::vector<Passage>& passages, const Truss& truss,
                                   const Solution& solution) {
    const Reader reader = readerOf(truss, solution);
    std::vector<PrintedLine> lines;
    for (const Passage& passage : passages) {
        lines.push_back({LineKind::Title, plainText(passage.title)});
        for (const auto& part : passage.parts) {
            if (const auto* line = std::get_if<WorkingLine>(&part)) {
                const bool formula = !line->formula.empty();
                lines.push_back({formula ? LineKind::Formula : LineKind::Sentence,
                                 plainText(line->runs), line->formula});
            }
        }
    }
    return read(reader, lines, wordsOf(reader));
}

} // namespace gusset::support
