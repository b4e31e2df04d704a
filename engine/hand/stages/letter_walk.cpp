#include "hand/stages/letter_walk.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {
namespace {

// Relative to the largest term: an equation to spare whose letters nearly cancel gives them too
// poorly, if it gives them at all.
constexpr double kGivesLetter = 1e-3;
// Factors of letters that have grown beyond this lose figures, and no one would go on with them.
constexpr double kLargestFactor = 1e3;
// Of unknowns: beyond this, not all pairs of letters are tried.
constexpr std::size_t kMostForPairs = 60;

double lettersSize(const LinearForm& form) {
    return std::max(std::fabs(form.letters[0]), std::fabs(form.letters[1]));
}

// A row with the forms put in: what remains of it, and the sizes that entered it.
struct Reduced {
    EquationKind axis = EquationKind::SumX;
    LinearForm sum{};
    double largest = 0; // factor of a letter
    std::vector<std::pair<std::size_t, double>> open{};
};

class Walker {
public:
    Walker(const OpenSums& sums, const std::vector<std::size_t>& letters)
        : sums_(sums), count_(letters.size()), forms_(sums.unknowns.size()),
          done_(sums.rows.size()) {
        for (std::size_t i = 0; i < letters.size(); ++i) {
            LinearForm form;
            form.letters[i] = 1;
            give(letters[i], form);
        }
    }

    // Whether it comes to as many equations to spare as there are letters, within so many joints.
    bool walk(std::size_t most) {
        while (!waiting_.empty() && spare_.size() < count_ && order_.size() < most && sound_) {
            const JointId joint = waiting_.back();
            waiting_.pop_back();
            if (!done_[joint.at()]) {
                take(joint);
            }
        }
        return sound_ && spare_.size() == count_;
    }
    // The same with a given order.
    void follow(const std::vector<JointId>& joints) {
        for (const JointId joint : joints) {
            take(joint);
        }
    }

    [[nodiscard]] const std::vector<JointId>& order() const { return order_; }
    [[nodiscard]] WalkedForms result() const {
        WalkedForms walked{joints_, forms_, {}};
        if (count_ == 1) {
            walked.letters[0] = -spare_[0].constant / spare_[0].letters[0];
            return walked;
        }
        const LinearForm& a = spare_[0];
        const LinearForm& b = spare_[1];
        const double determinant = a.letters[0] * b.letters[1] - a.letters[1] * b.letters[0];
        walked.letters[0] = (a.letters[1] * b.constant - b.letters[1] * a.constant) / determinant;
        walked.letters[1] = (b.letters[0] * a.constant - a.letters[0] * b.constant) / determinant;
        return walked;
    }

private:
    void give(std::size_t unknown, const LinearForm& form) {
        sound_ = sound_ && lettersSize(form) <= kLargestFactor;
        forms_[unknown] = form;
        for (const JointId joint : sums_.jointsOf[unknown]) {
            waiting_.push_back(joint);
        }
    }

    [[nodiscard]] Reduced reduced(const OpenRow& row) const {
        Reduced left{.axis = row.axis};
        left.sum.constant = row.constant;
        double constants = std::fabs(row.constant);
        for (const auto& [unknown, factor] : row.factors) {
            if (!forms_[unknown]) {
                left.open.push_back({unknown, factor});
                continue;
            }
            const LinearForm part = factor * *forms_[unknown];
            left.sum = left.sum + part;
            left.largest = std::max(left.largest, lettersSize(part));
            constants = std::max(constants, std::fabs(part.constant));
        }
        const LinearForm letters = cleaned({0, left.sum.letters}, left.largest);
        left.sum = {cleaned({left.sum.constant, {}}, constants).constant, letters.letters};
        return left;
    }

    // Takes the joint if its unknowns and equations allow.
    void take(JointId joint) {
        std::vector<Reduced> rows;
        std::vector<std::size_t> open;
        for (const OpenRow& row : sums_.rows[joint.at()]) {
            rows.push_back(reduced(row));
            for (const auto& [unknown, factor] : rows.back().open) {
                if (std::find(open.begin(), open.end(), unknown) == open.end()) {
                    open.push_back(unknown);
                }
            }
        }
        if (rows.empty() || open.size() > rows.size() || (open.size() == 2 && !giveTwo(rows))) {
            return;
        }
        done_[joint.at()] = true;
        WalkedJoint taken{joint, open};
        if (open.size() == 1) {
            giveOne(rows, open.front());
        }
        for (std::size_t i = 0; i < rows.size(); ++i) {
            if (i < open.size()) {
                taken.by.push_back(rows[i].axis);
            } else if (isToSpare(rows[i])) {
                spare_.push_back(rows[i].sum);
                taken.spare.push_back(rows[i].axis);
            }
        }
        if (!open.empty() || !taken.spare.empty()) {
            order_.push_back(joint);
            joints_.push_back(std::move(taken));
        }
    }

    // By the row with the larger factor; the other one, if any, is then to spare and stands second.
    void giveOne(std::vector<Reduced>& rows, std::size_t unknown) {
        const auto factorIn = [](const Reduced& row) {
            return row.open.empty() ? 0 : row.open.front().second;
        };
        if (rows.size() == 2 && std::fabs(factorIn(rows[1])) > std::fabs(factorIn(rows[0]))) {
            std::swap(rows[0], rows[1]);
        }
        const LinearForm form = (-1 / factorIn(rows[0])) * rows[0].sum;
        give(unknown, form);
        if (rows.size() == 2) {
            const LinearForm part = factorIn(rows[1]) * form;
            rows[1].largest = std::max(rows[1].largest, lettersSize(part));
            const LinearForm sum = rows[1].sum + part;
            rows[1].sum = {sum.constant, cleaned({0, sum.letters}, rows[1].largest).letters};
        }
    }

    bool giveTwo(const std::vector<Reduced>& rows) {
        const std::size_t first =
            rows[0].open.empty() ? rows[1].open.front().first : rows[0].open.front().first;
        std::array<std::array<double, 2>, 2> f{};
        std::size_t second = first;
        for (const std::size_t i : {0u, 1u}) {
            for (const auto& [unknown, factor] : rows[i].open) {
                second = unknown == first ? second : unknown;
                f[i][unknown == first ? 0 : 1] = factor;
            }
        }
        const double determinant = f[0][0] * f[1][1] - f[0][1] * f[1][0];
        // Two lines less than a tenth of a degree apart would give poor factors.
        constexpr double kFarEnough = 2e-3;
        if (std::fabs(determinant) < kFarEnough) {
            return false;
        }
        const LinearForm& a = rows[0].sum;
        const LinearForm& b = rows[1].sum;
        give(first, (1 / determinant) * (f[0][1] * b + (-f[1][1]) * a));
        give(second, (1 / determinant) * (f[1][0] * a + (-f[0][0]) * b));
        return true;
    }

    // Whether it gives a letter, or the second one beside an equation that is to spare already.
    [[nodiscard]] bool isToSpare(const Reduced& row) const {
        if (spare_.size() == count_ ||
            lettersSize(row.sum) <= kGivesLetter * std::max(row.largest, kGivesLetter)) {
            return false;
        }
        if (spare_.empty()) {
            return true;
        }
        const LinearForm& a = spare_[0];
        const double turn = a.letters[0] * row.sum.letters[1] - a.letters[1] * row.sum.letters[0];
        return std::fabs(turn) > kGivesLetter * lettersSize(a) * lettersSize(row.sum);
    }

    const OpenSums& sums_;
    std::size_t count_; // of letters
    std::vector<std::optional<LinearForm>> forms_;
    std::vector<bool> done_;
    std::vector<JointId> waiting_; // the last one is looked at first
    std::vector<JointId> order_;
    std::vector<WalkedJoint> joints_;
    std::vector<LinearForm> spare_;
    bool sound_ = true;
};

std::size_t numberOf(const OpenSums& sums, const Symbol& symbol) {
    const auto at = std::find(sums.unknowns.begin(), sums.unknowns.end(), symbol);
    return static_cast<std::size_t>(at - sums.unknowns.begin());
}

struct BestWalk {
    const OpenSums& sums;
    std::size_t most;
    std::optional<LetterWalk> walk{};

    void tryLetters(const std::vector<std::size_t>& letters) {
        Walker walker(sums, letters);
        if (!walker.walk(most)) {
            return;
        }
        walk.emplace();
        for (const std::size_t letter : letters) {
            walk->letters.push_back(sums.unknowns[letter]);
        }
        walk->joints = walker.order();
        most = walk->joints.size() - 1; // only a shorter one would be better
    }
};

} // namespace

OpenSums openSums(const Sheet& sheet) {
    OpenSums sums;
    sums.rows.resize(sheet.truss.joints.size());
    std::vector<std::size_t> numbers(sheet.forces.size() + sheet.reactions.size(), SIZE_MAX);
    const auto numbered = [&](const Symbol& symbol) {
        const std::size_t at = symbol.kind == SymbolKind::Reaction
                                   ? sheet.forces.size() + symbol.restraint.at()
                                   : symbol.member.at();
        if (numbers[at] == SIZE_MAX) {
            numbers[at] = sums.unknowns.size();
            sums.unknowns.push_back(symbol);
            sums.jointsOf.emplace_back();
        }
        return numbers[at];
    };
    for (std::size_t i = 0; i < sums.rows.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        const Body body = bodyOf(sheet, {joint});
        if (body.unknowns.empty()) {
            continue;
        }
        for (const EquationKind axis : unusedAxes(sheet, joint)) {
            const Equation equation = sumOf(sheet, body, axis);
            OpenRow row{axis, constantOf(equation)};
            for (const Symbol& symbol : unknownsOf(equation)) {
                row.factors.push_back({numbered(symbol), coefficientOf(equation, symbol)});
            }
            sums.rows[i].push_back(std::move(row));
        }
        for (const Acting& force : body.unknowns) {
            sums.jointsOf[numbered(force.symbol)].push_back(joint);
        }
    }
    return sums;
}

std::optional<LetterWalk> findWalk(const OpenSums& sums) {
    const std::size_t n = sums.unknowns.size();
    BestWalk best{sums, sums.rows.size()};
    for (std::size_t i = 0; i < n; ++i) {
        best.tryLetters({i});
    }
    for (std::size_t i = 0; !best.walk && n <= kMostForPairs && i < n; ++i) {
        for (std::size_t k = i + 1; k < n; ++k) {
            best.tryLetters({i, k});
        }
    }
    return best.walk;
}

WalkedForms walked(const OpenSums& sums, const LetterWalk& walk) {
    std::vector<std::size_t> letters;
    for (const Symbol& letter : walk.letters) {
        letters.push_back(numberOf(sums, letter));
    }
    Walker walker(sums, letters);
    walker.follow(walk.joints);
    return walker.result();
}

} // namespace gusset
