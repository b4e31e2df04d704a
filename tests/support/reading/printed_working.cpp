#include "support/reading/printed_working.hpp"

#include "core/signs.hpp"

#include "support/reading/formula_value.hpp"
#include "support/reading/printed_numbers.hpp"
#include "support/reading/printed_reader.hpp"
#include "support/reading/printed_slopes.hpp"
#include "support/reading/printed_solving.hpp"
#include "support/reading/printed_truth.hpp"
#include "support/reading/text_formula.hpp"

#include "core/number.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace gusset::support {

namespace {

PrintedReader readerOf(const Truss& truss, const Solution& solution) {
    PrintedReader reader{truss, solution};
    reader.truths = printedTruths(truss, solution);
    reader.numbers.settings = truss.classSettings;
    reader.scale = std::max(solution.largest / toNewton(truss.units.force), 1e-300);
    if (reader.truths.size() != solution.reactions.size() + solution.forces.size()) {
        reader.object("two forces have one name", truss.title);
    }
    return reader;
}

void readCount(PrintedReader& reader, const PrintedLine& line) {
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

// The lines on the way to the answers.
void readSolving(PrintedReader& reader) {
    AnswerValues values{reader.here, {}};
    if (!reader.numbers.carriesRounded()) {
        for (const auto& [name, printed] : reader.here) {
            const double size = std::fabs(reader.truths.at(name).value);
            values.exact[name] = {std::copysign(size, printed.value), 0};
        }
    }
    for (Names* names : {&values.printed, &values.exact}) {
        names->merge(lettersOf(reader.solving, *names));
    }
    const std::string objection =
        objectionToSolving(reader.solving, values, resultReader(reader.numbers));
    if (!objection.empty()) {
        reader.object(objection, reader.title);
    }
    for (const SolvingText& line : reader.solving) {
        reader.reading.equations += line.formula.empty() ? 0 : 1;
        for (const Token& token : line.formula) {
            reader.unsupported.erase(printedName(token));
        }
    }
}

void closePassage(PrintedReader& reader) {
    for (const PrintedLine& line : reader.equations) {
        takeZero(reader, line);
    }
    readSolving(reader);
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
    reader.solving.clear();
    reader.numbers.solving.clear();
    reader.here.clear();
    reader.unsupported.clear();
}

// "F_AB ≈ …", "A_x = …".
bool isResult(const Formula& formula) {
    return formula.size() > 2 && formula[0].kind == TokenKind::Variable &&
           (isOperator(formula[1], "=") || isOperator(formula[1], kAlmost));
}

bool holdsKnownNames(const PrintedReader& reader, const Formula& formula) {
    return std::any_of(formula.begin(), formula.end(), [&](const Token& token) {
        const std::string name = printedName(token);
        return token.kind == TokenKind::Variable &&
               (reader.found.count(name) > 0 || reader.loads.count(name) > 0);
    });
}

// The equation in numbers, under its symbols: announced by them.
void takeNumbersLine(PrintedReader& reader, const PrintedLine& line) {
    PrintedLine& last = reader.equations.back();
    reader.symbols.back() = last;
    const auto colon = std::find_if(last.formula.begin(), last.formula.end(),
                                    [](const Token& token) { return isOperator(token, ":"); });
    last.formula.erase(colon + 1, last.formula.end());
    last.formula.insert(last.formula.end(), line.formula.begin(), line.formula.end());
    last.text = line.text;
}

// "Load at A: P_Ax = 3 kN to the right and P_Ay = 4 kN down."
void takeLoadNames(PrintedReader& reader, const Formula& sentence) {
    for (std::size_t i = 0; i + 2 < sentence.size(); ++i) {
        if (isResult({sentence.begin() + static_cast<std::ptrdiff_t>(i), sentence.end()})) {
            const auto size = termReader(reader.numbers)(sentence[i + 2].text, NumberPlace::Value);
            if (size) {
                reader.loads[printedName(sentence[i])] = *size;
            }
        }
    }
}

// F_AB ≈ 8.00 − 0.6 X ≈ −2.00 kN (compression): what gives a result, and the result.
std::pair<PrintedLine, PrintedLine> resultWithBy(const PrintedLine& line) {
    const auto relates = [](const Token& token) {
        return isOperator(token, "=") || isOperator(token, kAlmost);
    };
    const Formula& formula = line.formula;
    const auto end = std::find_if(formula.begin() + 2, formula.end(), relates);
    const bool letters = std::any_of(formula.begin() + 2, end, [](const Token& token) {
        return token.kind == TokenKind::Variable && isLetter(printedName(token));
    });
    if (!letters || end == formula.end()) {
        return {};
    }
    PrintedLine result{LineKind::Formula, line.text, {formula.front()}};
    result.formula.insert(result.formula.end(), end, formula.end());
    return {{LineKind::Formula, line.text, {formula.begin(), end}}, result};
}

void readFormula(PrintedReader& reader, const PrintedLine& line) {
    const auto has = [&](const char* sign) {
        return std::any_of(line.formula.begin(), line.formula.end(),
                           [&](const Token& token) { return isOperator(token, sign); });
    };
    if (reader.title == "Count") {
        readCount(reader, line);
    } else if (reader.announced && !has(":") && !isResult(line.formula)) {
        takeNumbersLine(reader, line);
        reader.announced = false;
    } else if (isSolvingLine(line.formula)) {
        takeNumbers(reader.numbers.solving, line.formula);
        reader.solving.push_back({line.text, line.formula});
    } else if (has(":")) {
        reader.symbols.push_back({});
        reader.equations.push_back(line);
        reader.announced = holdsKnownNames(reader, line.formula);
    } else if (reader.title == "Slopes" || reader.title == "The whole truss") {
        const std::string objection =
            objectionToSlope(line.formula, reader.sloping, reader.truss, reader.angles);
        if (!objection.empty()) {
            reader.object(objection, line.text);
        }
        takeNumbers(reader.numbers.slopes, line.formula);
        ++reader.reading.slopes;
    } else if (const auto [by, result] = resultWithBy(line); !by.formula.empty()) {
        takeNumbers(reader.numbers.solving, by.formula);
        reader.solving.push_back({by.text, by.formula});
        readResult(reader, result);
        takeNumbers(reader.numbers.results, result.formula);
    } else {
        readResult(reader, line);
        takeNumbers(reader.numbers.results, line.formula);
    }
}

// "… makes the angle α + β ≈ 77.09° with …"
void readTurned(PrintedReader& reader, const std::string& text, const PrintedWords& words) {
    const std::string before = " makes the angle ";
    const std::size_t at = text.find(before);
    const std::size_t end = text.find(" with ", at == std::string::npos ? 0 : at);
    if (at == std::string::npos || end == std::string::npos) {
        return;
    }
    const std::size_t from = at + before.size();
    const PrintedEquation parts =
        equationsOf(formulaOfText(text.substr(from, end - from), words)).front();
    const auto sum = worthOf(parts.front().formula, reader.angles, resultReader(reader.numbers));
    const auto degrees = parts.size() == 2
                             ? worthOf(parts[1].formula, {}, resultReader(reader.numbers))
                             : std::nullopt;
    const double slack = parts.back().isExact || !degrees ? kNoise : degrees->slack;
    if (!sum || !degrees || std::fabs(sum->value - degrees->value) > slack) {
        reader.object("an angle is not the sum of the others", text);
    }
}

PrintedReading read(PrintedReader reader, const std::vector<PrintedLine>& lines,
                    const PrintedWords& words) {
    for (const PrintedLine& line : lines) {
        switch (line.kind) {
        case LineKind::Title:
            closePassage(reader);
            reader.title = line.text;
            break;
        case LineKind::Sentence:
            reader.announced = false;
            reader.sloping = slopingIn(line.text);
            takeGuess(reader, line.text);
            if (begins(line.text, "With numbers for all that is known")) {
                reader.solving.emplace_back(); // a new pair of equations
            }
            readTurned(reader, line.text, words);
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

void takeLoads(PrintedReader& reader) {
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

PrintedWords wordsOf(const PrintedReader& reader) {
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
    PrintedReader reader = readerOf(truss, solution);
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
        const bool table = line.find("   ", 4) != std::string::npos; // between its columns
        if (begins(line, "    ") && !table) {
            lines.push_back({LineKind::Formula, line, formulaOfText(line, words)});
        } else if (!line.empty() && !table) {
            const bool sentence = begins(line, "  ");
            lines.push_back({sentence ? LineKind::Sentence : LineKind::Title,
                             sentence ? line.substr(2) : line});
        }
    }
    return read(reader, lines, words);
}

PrintedReading readPrintedPassages(const std::vector<Passage>& passages, const Truss& truss,
                                   const Solution& solution) {
    const PrintedReader reader = readerOf(truss, solution);
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
