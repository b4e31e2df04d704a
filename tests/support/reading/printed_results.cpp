#include "support/reading/printed_reader.hpp"

#include "core/signs.hpp"

#include <algorithm>
#include <cmath>

namespace gusset::support {

namespace {

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
std::string wordBehind(const PrintedReader& reader, const PrintedLine& line) {
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

void compareWithSolver(PrintedReader& reader, const PrintedLine& line, const Truth& truth,
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

void takeKnown(PrintedReader& reader, const PrintedLine& line, const std::string& name,
               Rounded value) {
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
std::optional<Rounded> quotientOf(const PrintedReader& reader, const PrintedPart& part) {
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
PrintedLine withoutQuotient(PrintedReader& reader, PrintedLine line) {
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

} // namespace

void takeGuess(PrintedReader& reader, const std::string& sentence) {
    for (const bool pushes : {true, false}) {
        const std::string words = pushes ? " is drawn pushing." : " is drawn pulling.";
        const std::size_t at = sentence.find(words);
        if (at != std::string::npos && at + words.size() == sentence.size()) {
            (pushes ? reader.pushing : reader.pulling).insert(sentence.substr(0, at));
        }
    }
}

namespace {

// Drawn pushing, a positive answer is compression.
void compareWithGuess(PrintedReader& reader, const PrintedLine& line, const std::string& name,
                      Rounded printed) {
    const bool pushes = reader.pushing.count(name) > 0;
    if ((!pushes && reader.pulling.count(name) == 0) || printed.value == 0) {
        return;
    }
    const bool compression = wordBehind(reader, line) == "(compression)";
    if (compression != (pushes == (printed.value > 0))) {
        reader.object("a result is not in the sense that was drawn", line.text);
    }
    ++reader.reading.guesses;
}

} // namespace

void readResult(PrintedReader& reader, const PrintedLine& printedLine) {
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
    if (reader.title != "All forces") {
        compareWithGuess(reader, line, name, printed);
    }
    if (!reader.numbers.carriesRounded()) {
        compareWithSolver(reader, line, truth->second, printed);
    }
}

void takeZero(PrintedReader& reader, const PrintedLine& line) {
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

} // namespace gusset::support
