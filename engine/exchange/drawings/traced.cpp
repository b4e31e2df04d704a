#include "exchange/drawings/traced.hpp"

#include "core/index.hpp"
#include "exchange/drawings/doubts.hpp"
#include "exchange/drawings/drawn_number.hpp"
#include "exchange/drawings/net.hpp"
#include "exchange/drawings/some_of_each.hpp"
#include "model/validate/findings.hpp"
#include "phrases/faults/drawings.hpp"
#include "phrases/faults/reading.hpp"
#include "phrases/faults/traced.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace gusset {

namespace {

// The longest trusses span some 550 m; one below a hand's width is drawn in another unit.
constexpr double kHugeTruss = 1000;                // m
constexpr double kTinyTruss = 0.1;                 // m
constexpr const char* kUnitPlace = "units.length"; // of the model
constexpr int kKeptDigits = 10; // of the size of a truss that was moved or scaled

Extent boxOf(const Net& net) {
    Extent box{net.joints.front().at, net.joints.front().at};
    for (const NetJoint& joint : net.joints) {
        box.low = {std::min(box.low.x, joint.at.x), std::min(box.low.y, joint.at.y)};
        box.high = {std::max(box.high.x, joint.at.x), std::max(box.high.y, joint.at.y)};
    }
    return box;
}

// How drawing units become the truss's.
class Scale {
public:
    Scale(const Net& net, const LinesFound& found, const DrawingWishes& wishes) {
        const Extent box = boxOf(net);
        drawn_ = wishes.unit.value_or(found.unit.value_or(kUnstatedUnit));
        kept_ = wishes.width ? drawn_ : keptUnit(drawn_);
        across_ = box.high.x - box.low.x;
        isMoved_ = found.movesToCorner || wishes.width;
        if (isMoved_) {
            corner_ = box.low;
        }
        if (wishes.width && across_ > 0) {
            factor_ = *wishes.width / across_;
        }
        const double size = factor_ * std::max(across_, box.high.y - box.low.y);
        const int digits = kKeptDigits - static_cast<int>(std::floor(std::log10(size)));
        step_ = std::pow(10.0, std::clamp(digits, -300, 300));
    }

    [[nodiscard]] bool hasWidth() const { return across_ > 0; }
    [[nodiscard]] LengthUnit unit() const { return kept_; }
    [[nodiscard]] double factor() const { return factor_; }
    [[nodiscard]] double size(double drawn) const {
        return converted(drawn * factor_, drawn_, kept_);
    }
    [[nodiscard]] Vec2 at(Vec2 drawn) const {
        return {coordinate(drawn.x - corner_.x), coordinate(drawn.y - corner_.y)};
    }

private:
    // What was subtracted or multiplied leaves digits that nobody drew.
    [[nodiscard]] double coordinate(double drawn) const {
        const double value = isMoved_ ? std::round(drawn * factor_ * step_) / step_ : drawn;
        return converted(value, drawn_, kept_);
    }

    LengthUnit drawn_ = kUnstatedUnit;
    LengthUnit kept_ = kUnstatedUnit;
    bool isMoved_ = false;
    Vec2 corner_;
    double across_ = 0;
    double factor_ = 1;
    double step_ = 1;
};

// Places closer than this along x count as one above another.
std::vector<int> readingOrder(const Net& net, double tolerance) {
    std::vector<int> order(net.joints.size());
    std::iota(order.begin(), order.end(), 0);
    const auto place = [&](int joint) { return net.joints[at(joint)].at; };
    std::sort(order.begin(), order.end(), [&](int a, int b) {
        return place(a).x != place(b).x ? place(a).x < place(b).x : place(a).y < place(b).y;
    });
    for (std::size_t first = 0; first < order.size();) {
        std::size_t end = first + 1;
        while (end < order.size() && place(order[end]).x - place(order[first]).x <= tolerance) {
            ++end;
        }
        std::sort(order.begin() + static_cast<long>(first), order.begin() + static_cast<long>(end),
                  [&](int a, int b) { return place(a).y < place(b).y; });
        first = end;
    }
    return order;
}

struct Numbered {
    Truss truss;
    std::vector<int> now; // the number of each joint of the net
};

Numbered numbered(const Net& net, const Scale& scale, double tolerance) {
    Numbered made;
    made.truss.units.length = scale.unit();
    made.now.resize(net.joints.size());
    for (const int joint : readingOrder(net, tolerance)) {
        const int number = toInt(made.truss.joints.size());
        made.now[at(joint)] = number;
        made.truss.joints.push_back({defaultLabel(number), scale.at(net.joints[at(joint)].at), {}});
    }
    std::vector<std::pair<int, int>> ends;
    for (const NetMember& member : net.members) {
        ends.emplace_back(std::minmax(made.now[at(member.a)], made.now[at(member.b)]));
    }
    std::sort(ends.begin(), ends.end());
    for (const auto& [a, b] : ends) {
        made.truss.members.push_back({JointId{a}, JointId{b}, {}, 0, 0, {}});
    }
    return made;
}

// What was done to the lines on the way.
class Telling {
public:
    Telling(const Net& net, const Scale& scale, const Numbered& made, double tolerance,
            SomeOfEach& notes)
        : net_(net), scale_(scale), made_(made), tolerance_(tolerance), notes_(notes),
          unit_(symbolOf(scale.unit())) {}

    void tell() {
        tellMoved();
        for (const DrawnLine& line : net_.tooShort) {
            add(IssueCode::Suspicious, "members",
                statement(phrase::kLineTooShort, {{"place", placeAt(scale_.at(line.from))}}));
        }
        for (const DividedLine& line : net_.divided) {
            add(IssueCode::Suspicious, "members",
                statement(
                    phrase::kLineDivided,
                    {{"a", label(line.a)}, {"b", label(line.b)}, {"joints", labels(line.at)}}));
        }
        tellDoubled();
        if (!net_.looseMarks.empty()) {
            add(IssueCode::Suspicious, "joints",
                statement(phrase::kMarksAlone,
                          {{"n", net_.looseMarks.size()},
                           {"place", placeAt(scale_.at(net_.looseMarks.front()))}}));
        }
    }

private:
    void add(IssueCode code, Statement place, Statement says) {
        notes_.add({code, std::move(place), std::move(says)});
    }
    [[nodiscard]] std::size_t number(int joint) const { return at(made_.now[at(joint)]); }
    [[nodiscard]] const std::string& label(int joint) const {
        return made_.truss.joints[number(joint)].label;
    }
    [[nodiscard]] std::string labels(const std::vector<int>& joints) const {
        std::string list;
        for (const int joint : joints) {
            list += (list.empty() ? "" : ", ") + label(joint);
        }
        return list;
    }

    void tellMoved() {
        std::size_t moved = 0;
        double most = 0;
        for (std::size_t i = 0; i < net_.joints.size(); ++i) {
            const NetJoint& joint = net_.joints[i];
            moved += joint.moved;
            most = std::max(most, joint.farthest);
            if (joint.across > 2 * tolerance_) {
                add(IssueCode::Suspicious, placeOf("joints", number(toInt(i))),
                    statement(phrase::kEndsInARow, {{"joint", label(toInt(i))},
                                                    {"place", placeAt(scale_.at(joint.at))},
                                                    {"most", measured(scale_.size(joint.across))},
                                                    {"unit", unit_}}));
            }
        }
        if (moved > 0) {
            add(IssueCode::Suspicious, "joints",
                statement(phrase::kEndsMoved,
                          {{"n", moved}, {"most", measured(scale_.size(most))}, {"unit", unit_}}));
        }
    }

    void tellDoubled() {
        for (const NetMember& member : net_.members) {
            if (member.times > 1) {
                const auto [a, b] = std::minmax(made_.now[at(member.a)], made_.now[at(member.b)]);
                const MemberId id = findMember(made_.truss, JointId{a}, JointId{b});
                add(IssueCode::Suspicious, placeOf("members", id.at()),
                    statement(phrase::kDrawnTwice,
                              {{"member", memberName(made_.truss, id)}, {"n", member.times}}));
            }
        }
    }

    const Net& net_;
    const Scale& scale_;
    const Numbered& made_;
    double tolerance_;
    SomeOfEach& notes_;
    std::string unit_;
};

std::optional<Issue> refusal(const LinesFound& found) {
    if (found.lines.empty()) {
        return Issue{IssueCode::Missing, phrase::kPlaceFile, phrase::kNoLines};
    }
    if (found.lines.size() > kMostDrawnLines) {
        return Issue{IssueCode::TooLarge, phrase::kPlaceFile,
                     statement(phrase::kTooManyLines,
                               {{"n", found.lines.size()}, {"most", kMostDrawnLines}})};
    }
    return std::nullopt;
}

std::optional<Issue> refusal(const Net& net, double tolerance) {
    if (net.isTooLarge) {
        return Issue{IssueCode::TooLarge, phrase::kPlaceFile,
                     statement(phrase::kTooManyLines,
                               {{"n", net.members.size()}, {"most", kMostNetMembers}})};
    }
    if (net.members.empty()) {
        return Issue{IssueCode::OutOfRange, phrase::kPlaceFile,
                     statement(phrase::kToleranceTooLarge, {{"tolerance", measured(tolerance)}})};
    }
    return std::nullopt;
}

void tellScale(const Scale& scale, const LinesFound& found, const DrawingWishes& wishes,
               Issues& notes) {
    if (wishes.width) {
        notes.push_back(
            {IssueCode::NotComputed, kUnitPlace,
             statement(phrase::kScaledToWidth, {{"width", measured(*wishes.width)},
                                                {"unit", std::string(symbolOf(scale.unit()))},
                                                {"one", measured(scale.factor())}})});
        return;
    }
    tellUnit(found.unit, wishes.unit, kUnstatedUnit, notes);
}

} // namespace

LengthUnit keptUnit(LengthUnit drawn) {
    return drawn == LengthUnit::mm || drawn == LengthUnit::cm ? LengthUnit::m : drawn;
}

void tellUnit(const std::optional<LengthUnit>& stated, const std::optional<LengthUnit>& typed,
              LengthUnit otherwise, Issues& notes) {
    const auto named = [](LengthUnit unit) { return Statement(std::string(symbolOf(unit))); };
    const auto add = [&](Statement says) {
        notes.push_back({IssueCode::NotComputed, kUnitPlace, std::move(says)});
    };
    if (!stated && !typed) {
        add(statement(phrase::kUnitNotStated, {{"unit", named(otherwise)}}));
    } else if (stated && typed && *stated != *typed) {
        add(statement(phrase::kUnitOverruled,
                      {{"stated", named(*stated)}, {"unit", named(*typed)}}));
    } else if (!typed) {
        add(statement(phrase::kUnitStated, {{"unit", named(*stated)}}));
    }
}

void tellUnlikelySize(const Truss& truss, Issues& notes) {
    const Extent box = extent(truss);
    const double side = std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    const double metres = converted(side, truss.units.length, LengthUnit::m);
    const std::string unit = symbolOf(truss.units.length);
    if (metres > kHugeTruss) {
        notes.push_back(
            {IssueCode::Suspicious, kUnitPlace,
             statement(phrase::kTrussHuge, {{"size", measured(side)}, {"unit", unit}})});
    } else if (metres < kTinyTruss) {
        notes.push_back(
            {IssueCode::Suspicious, kUnitPlace,
             statement(phrase::kTrussTiny, {{"size", measured(side)}, {"unit", unit}})});
    }
}

void tellNoSupports(Issues& notes) {
    notes.push_back({IssueCode::Missing, "supports", phrase::kNoSupportsYet});
}

Outcome<Traced> trussOfLines(const LinesFound& found, const DrawingWishes& wishes) {
    if (const std::optional<Issue> why = refusal(found)) {
        Issues all{*why};
        all.insert(all.end(), found.notes.begin(), found.notes.end());
        return all;
    }
    const double chosen = chosenTolerance(found.lines);
    const double tolerance = wishes.tolerance.value_or(chosen);
    const Net net = netOf(found, tolerance);
    if (const std::optional<Issue> why = refusal(net, tolerance)) {
        return *why;
    }
    const Scale scale(net, found, wishes);
    if (wishes.width && !scale.hasWidth()) {
        return Issue{IssueCode::OutOfRange, phrase::kPlaceFile, phrase::kNoWidth};
    }
    const Numbered made = numbered(net, scale, tolerance);
    Traced traced{made.truss, found.notes};
    tellScale(scale, found, wishes, traced.notes);
    tellUnlikelySize(made.truss, traced.notes);
    const auto sentence = wishes.tolerance ? phrase::kToleranceTyped : phrase::kToleranceChosen;
    traced.notes.push_back({IssueCode::NotComputed, "joints",
                            statement(sentence, {{"tolerance", measured(tolerance)}})});
    SomeOfEach notes;
    Telling(net, scale, made, tolerance, notes).tell();
    tellDoubts(made.truss, scale.size(std::max(tolerance, chosen)), notes);
    for (Issue& note : notes.take()) {
        traced.notes.push_back(std::move(note));
    }
    traced.notes.push_back({IssueCode::NotComputed, "joints", phrase::kLettered});
    tellNoSupports(traced.notes);
    if (Issues errors = errorsOf(made.truss); !errors.empty()) {
        return errors;
    }
    return traced;
}

} // namespace gusset
