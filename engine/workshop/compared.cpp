#include "workshop/compared.hpp"

#include "core/number.hpp"
#include "design/sizing/sizing.hpp"
#include "desk/given.hpp"
#include "exchange/json/json_text.hpp"
#include "exchange/links/link.hpp"
#include "model/edit/edit.hpp"
#include "model/truss/limits.hpp"
#include "phrases/design/compared.hpp"
#include "phrases/design/workshop.hpp"
#include "report/classroom/question_figure.hpp"
#include "report/derivation/truss_figures.hpp"
#include "report/results/measures.hpp"
#include "report/results/results_text.hpp"
#include "report/sheet/sheet_choices.hpp"
#include "report/sketch/sketch_svg.hpp"
#include "workshop/differences.hpp"
#include "workshop/matched.hpp"
#include "workshop/opened.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace gusset {

namespace {

struct Figure { // of one truss, in its units
    std::optional<double> value{};
    std::string of{}; // the member that has it
};

struct Weighed {
    Figure tension{};
    Figure compression{};
    Figure use{};
    Figure mass{};        // in the unit of measuresOf
    Figure movement{};    // displacement units
    std::string whyNot{}; // there are no forces
};

Figure greatest(const Truss& truss, const Envelope& envelope, bool pulled) {
    Figure figure;
    for (std::size_t i = 0; i < envelope.members.size(); ++i) {
        const double force =
            pulled ? envelope.members[i].tension.force : -envelope.members[i].compression.force;
        if (!figure.value || force > *figure.value) {
            figure = {force, memberName(truss, {static_cast<int>(i)})};
        }
    }
    if (figure.value) {
        *figure.value /= toNewton(truss.units.force);
    }
    return figure;
}

Figure greatestUse(const Truss& truss, const MemberChecks& checks) {
    const bool all = checks.unchecked == 0 && checks.worst.valid();
    return all ? Figure{checks.members[checks.worst.at()].use, memberName(truss, checks.worst)}
               : Figure{};
}

Figure massOfMembers(const Truss& truss) {
    const std::vector<double> masses = massesOf(truss);
    const bool all = !masses.empty() && std::all_of(masses.begin(), masses.end(),
                                                    [](double mass) { return mass > 0; });
    const double sum = std::accumulate(masses.begin(), masses.end(), 0.0);
    return all ? Figure{sum * measuresOf(truss).perKilogram} : Figure{};
}

Weighed weighed(const PhraseBook& book, const Truss& truss) {
    Weighed it;
    it.mass = massOfMembers(truss);
    const std::vector<LoadChoice> choices = strengthChoices(truss);
    const Outcome<Envelope> envelope = envelopeOf(truss, choices);
    if (!envelope) {
        it.whyNot = faultSentences(book, envelope.issues()).front();
        return it;
    }
    it.tension = greatest(truss, envelope.value(), true);
    it.compression = greatest(truss, envelope.value(), false);
    it.use = greatestUse(truss, checkMembers(truss, envelope.value(), choices));
    if (const auto moved = deflectionOf(truss, serviceChoices(truss))) {
        it.movement.value = *moved / toMetre(truss.units.displacement);
    }
    return it;
}

double lengthOfMembers(const Truss& truss) {
    double sum = 0;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        sum += length(memberVector(truss, {static_cast<int>(i)}));
    }
    return sum;
}

constexpr int kDigits = 4;

class Table {
public:
    Table(JsonText& out, const Writer& writer) : out_(out), writer_(writer) {}

    void row(Phrase<> name, const std::string& unit, const Figure& first, const Figure& second,
             int digits = kDigits) {
        out_.beginObject();
        out_.text("name", headedBy(name, unit));
        out_.text("first", text(first, digits));
        out_.text("second", text(second, digits));
        const bool both = first.value && second.value;
        out_.text("more", both ? difference(asPrinted(*second.value, digits) -
                                            asPrinted(*first.value, digits))
                               : std::string());
        out_.endObject();
    }

private:
    std::string headedBy(Phrase<> name, const std::string& unit) const {
        const std::string says = sayPlain(writer_, name);
        return unit.empty() ? says : says + ", " + unit;
    }
    std::string number(double value, int digits) const {
        return formatMeasured(asPrinted(value, digits), writer_.truss.classSettings.decimalSign);
    }
    // So that a reader who subtracts finds the same.
    static double asPrinted(double value, int digits) {
        if (value == 0) {
            return 0;
        }
        const double place = std::pow(10, digits - 1 - std::floor(std::log10(std::abs(value))));
        return std::round(value * place) / place;
    }
    std::string text(const Figure& figure, int digits) const {
        if (!figure.value) {
            return "–";
        }
        return figure.of.empty() || *figure.value == 0
                   ? number(*figure.value, digits)
                   : sayPlain(writer_, phrase::kInMember,
                              {{"value", number(*figure.value, digits)}, {"member", figure.of}});
    }
    std::string difference(double value) const {
        constexpr int kOfDifference = 8; // beyond that is the rounding of the subtraction
        constexpr double kNone = 1e-9;
        return std::abs(value) < kNone
                   ? "0"
                   : (value > 0 ? "+" : "−") + number(std::abs(value), kOfDifference);
    }

    JsonText& out_;
    const Writer& writer_;
};

double wideOf(const Truss& truss) {
    const Extent box = extent(truss);
    return box.high.x - box.low.x;
}
double highOf(const Truss& truss) {
    const Extent box = extent(truss);
    return box.high.y - box.low.y;
}

void writeTable(JsonText& out, const Writer& writer, const Truss& second, const Weighed& a,
                const Weighed& b) {
    const Truss& first = writer.truss;
    const std::string length = symbolOf(first.units.length);
    const std::string force = symbolOf(first.units.force);
    const auto count = [](const auto& things) { return Figure{double(things.size())}; };
    Table table(out, writer);
    out.key("rows");
    out.beginArray();
    table.row(phrase::kRowWidth, length, {wideOf(first)}, {wideOf(second)});
    table.row(phrase::kRowHeight, length, {highOf(first)}, {highOf(second)});
    table.row(phrase::kRowJoints, "", count(first.joints), count(second.joints));
    table.row(phrase::kRowMembers, "", count(first.members), count(second.members));
    table.row(phrase::kRowLength, length, {lengthOfMembers(first)}, {lengthOfMembers(second)});
    table.row(phrase::kRowTension, force, a.tension, b.tension);
    table.row(phrase::kRowCompression, force, a.compression, b.compression);
    table.row(phrase::kRowMass, measuresOf(first).mass, a.mass, b.mass);
    constexpr int kOfUse = 3;
    table.row(phrase::kRowUse, "", a.use, b.use, kOfUse);
    table.row(phrase::kRowMovement, symbolOf(first.units.displacement), a.movement, b.movement);
    out.endArray();
}

// Both to one scale, the larger as wide as the page shows it.
constexpr double kWidest = 420; // px
constexpr double kHighest = 260;
constexpr double kAround = 140; // px for what stands beside a truss

struct ScaledFigure {
    std::string svg{};
    double scale = 0; // px per length unit, as drawn: letters may want more room
};

ScaledFigure figureTo(const PhraseBook& book, const Truss& truss, double scale) {
    const Writer writer{book, truss};
    const Working nothing = workingOfNothing(truss, usualLoads(truss));
    const FigureSpace space{scale * wideOf(truss) + kAround,
                            std::max(scale * highOf(truss), kAround)};
    const std::optional<FullFigure> figure = loadsFigure(notationOf(writer, nothing), space);
    if (!figure || truss.members.empty()) {
        return {};
    }
    const SketchLine& member = figure->sketch.lines.front(); // the first lines are the members
    return {svgToPointAt(figure->sketch),
            length(member.b - member.a) / length(memberVector(truss, MemberId{0}))};
}

double scaleOf(const Truss& first, const Truss& second) {
    const double wide = std::max({wideOf(first), wideOf(second), 1e-300});
    const double high = std::max({highOf(first), highOf(second), 1e-300});
    return std::min((kWidest - kAround) / wide, kHighest / high);
}

// The members, by their numbers, that the other has not, or with another section.
void writeMarked(JsonText& out, const Truss& first, const Truss& second,
                 const std::vector<MemberId>& matched) {
    std::vector<bool> ofSecond(second.members.size(), true);
    out.key("marked");
    out.beginArray();
    out.beginArray();
    for (std::size_t i = 0; i < matched.size(); ++i) {
        const bool same = matched[i].valid() &&
                          first.members[i].section == second.members[matched[i].at()].section;
        if (!same) {
            out.whole(static_cast<long>(i));
        } else {
            ofSecond[matched[i].at()] = false;
        }
    }
    out.endArray();
    out.beginArray();
    for (std::size_t i = 0; i < ofSecond.size(); ++i) {
        if (ofSecond[i]) {
            out.whole(static_cast<long>(i));
        }
    }
    out.endArray();
    out.endArray();
}

std::vector<std::string> remarks(const Writer& writer, const Weighed& a, const Weighed& b,
                                 bool otherUnits) {
    std::vector<std::string> lines;
    if (otherUnits) {
        lines.push_back(sayPlain(writer, phrase::kOtherUnits));
    }
    if (!a.whyNot.empty()) {
        lines.push_back(sayPlain(writer, phrase::kFirstHasNoForces, {{"why", a.whyNot}}));
    }
    if (!b.whyNot.empty()) {
        lines.push_back(sayPlain(writer, phrase::kSecondHasNoForces, {{"why", b.whyNot}}));
    }
    if (!a.mass.value || !b.mass.value) {
        lines.push_back(sayPlain(writer, phrase::kNotAllWeighed));
    }
    const bool unchecked = (a.whyNot.empty() && !a.use.value) || (b.whyNot.empty() && !b.use.value);
    if (unchecked) {
        lines.push_back(sayPlain(writer, phrase::kNotAllChecked));
    }
    return lines;
}

} // namespace

std::string compareReply(const PhraseBook& book, const Truss& first, const JsonValue& request) {
    const Outcome<Reading> other = readModelOrLink(textUnder(request, "other"));
    if (!other) {
        return refusalOf(book, other.issues());
    }
    const Truss& given = other.value().truss;
    const Outcome<Truss> converted = apply(given, Edit(SetUnits{first.units, true}));
    if (!converted) {
        return refusalOf(book, converted.issues());
    }
    const Truss& second = converted.value();
    if (first.joints.empty() || second.joints.empty()) {
        return refusal({sentenceIn(book, phrase::kNothingToCompare.english)});
    }
    const Writer writer{book, first};
    const Weighed a = weighed(book, first);
    const Weighed b = weighed(book, second);
    const Matched alike = matched(first, second);
    std::vector<std::string> lines = differences(writer, second, alike);
    if (lines.empty()) {
        lines.push_back(sayPlain(writer, phrase::kSameTruss));
    }
    JsonText out(Layout::Compact);
    out.beginObject();
    const double scale = scaleOf(first, second);
    const ScaledFigure one = figureTo(book, first, scale);
    const ScaledFigure two = figureTo(book, second, scale);
    out.texts("titles", {first.title, second.title});
    out.texts("figures", {one.svg, two.svg});
    out.key("scales");
    out.beginArray();
    out.number(one.scale);
    out.number(two.scale);
    out.endArray();
    writeMarked(out, first, second, alike.members);
    writeTable(out, writer, second, a, b);
    out.texts("lines", lines);
    out.allTexts("remarks", remarks(writer, a, b, given.units != first.units));
    out.text("link", linkOrNothing(given));
    out.endObject();
    return out.take();
}

std::string moveReply(const PhraseBook& book, const Truss& truss, const JsonValue& request) {
    const std::string label = textUnder(request, "joint");
    const auto found = std::find_if(truss.joints.begin(), truss.joints.end(),
                                    [&](const Joint& joint) { return joint.label == label; });
    const Vec2 to{numberUnder(request, "x", NAN), numberUnder(request, "y", NAN)};
    if (found == truss.joints.end()) {
        return refusal({said(book, statement(phrase::kNoSuchJoint, {{"joint", label}}))});
    }
    if (!(std::abs(to.x) <= kLargestNumber && std::abs(to.y) <= kLargestNumber)) {
        return refusal({sentenceIn(book, phrase::kPlaceIsNumbers.english)});
    }
    const JointId joint{static_cast<int>(found - truss.joints.begin())};
    const double near = nearnessOf(truss, truss);
    for (const Joint& other : truss.joints) {
        if (&other != &*found && length(other.at - to) <= near) {
            return refusal({said(book, statement(phrase::kPlaceIsTaken,
                                                 {{"joint", label}, {"other", other.label}}))});
        }
    }
    const Outcome<Truss> moved = apply(truss, Edit(MoveJoint{joint, to, {}}));
    return moved ? openReply(book, moved.value()) : refusalOf(book, moved.issues());
}

} // namespace gusset
