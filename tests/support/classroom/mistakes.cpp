#include "support/classroom/mistakes.hpp"

#include "core/number.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <functional>
#include <string>

namespace gusset::support {

namespace {

// Cramer's rule, as by hand.
double determinant(const Table& m) {
    if (m.size() == 1) {
        return m[0][0];
    }
    if (m.size() == 2) {
        return m[0][0] * m[1][1] - m[0][1] * m[1][0];
    }
    return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) -
           m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0]) +
           m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
}

// With this right side, by Cramer's rule.
std::vector<double> solvedWith(const Table& matrix, const std::vector<double>& rest) {
    std::vector<double> values;
    for (std::size_t c = 0; c < matrix.size(); ++c) {
        Table changed = matrix;
        for (std::size_t r = 0; r < matrix.size(); ++r) {
            changed[r][c] = rest[r];
        }
        values.push_back(determinant(changed) / determinant(matrix));
    }
    return values;
}

} // namespace

std::optional<Result> solved(const std::vector<Pull>& pulls, const Table& table) {
    Table matrix(table.size());
    std::vector<double> rest(table.size());
    for (std::size_t r = 0; r < table.size(); ++r) {
        for (std::size_t p = 0; p < pulls.size(); ++p) {
            if (pulls[p].isKnown) {
                rest[r] -= table[r][p] * pulls[p].value;
            } else {
                matrix[r].push_back(table[r][p]);
            }
        }
    }
    if (std::abs(determinant(matrix)) < 1e-3) {
        return std::nullopt;
    }
    Result result{solvedWith(matrix, rest), std::vector<double>(table.size())};
    for (std::size_t p = 0; p < pulls.size(); ++p) {
        if (pulls[p].of && pulls[p].isKnown) {
            for (std::size_t r = 0; r < table.size(); ++r) {
                rest[r] = table[r][p] * halfUnit(pulls[p].value, kWrittenFigures);
            }
            const std::vector<double> change = solvedWith(matrix, rest);
            for (std::size_t i = 0; i < change.size(); ++i) {
                result.blurs[i] += std::abs(change[i]);
            }
        }
    }
    return result;
}

namespace {

bool leans(Vec2 along) {
    return std::abs(along.x) > kFlat * length(along) && std::abs(along.y) > kFlat * length(along);
}
Vec2 exchanged(Vec2 v) {
    return {std::copysign(std::abs(v.y), v.x), std::copysign(std::abs(v.x), v.y)};
}
bool differs(double a, double b) { return std::abs(a - b) > 0.05 * std::abs(b); }
double exchangedDigits(double value) {
    std::string text = significantNumber(std::abs(value), 4);
    for (std::size_t i = 0; i + 1 < text.size(); ++i) {
        if (text[i] != '.' && text[i + 1] != '.' && text[i] != text[i + 1]) {
            std::swap(text[i], text[i + 1]);
            break;
        }
    }
    return std::copysign(std::strtod(text.c_str(), nullptr), value);
}

class Mistaker {
public:
    Mistaker(const std::vector<Pull>& pulls, const std::vector<Row>& rows, StudentStep& step,
             const Structure& structure)
        : pulls_(pulls), rows_(rows), step_(step), structure_(structure) {
        for (const Row& row : rows) {
            std::vector<double>& shares = table_.emplace_back();
            for (const Pull& pull : pulls) {
                shares.push_back(row.share(pull.along, pull.at));
            }
        }
    }

    void all() {
        for (std::size_t p = 0; p < pulls_.size(); ++p) {
            if (!pulls_[p].isKnown || pulls_[p].value != 0) {
                ofTerm(p);
            }
        }
        for (std::size_t i = 0; i < step_.unknowns.size(); ++i) {
            ofValue(i);
        }
        taken();
    }

private:
    void put(SlipKind kind, const std::optional<Result>& result) {
        if (result) {
            step_.slips.push_back({kind, *result});
        }
    }
    void with(SlipKind kind, std::size_t p, std::optional<std::size_t> only,
              const std::function<double(const Row&, double)>& change) {
        Table table = table_;
        for (std::size_t r = 0; r < rows_.size(); ++r) {
            if (!only || *only == r) {
                table[r][p] = change(rows_[r], table[r][p]);
            }
        }
        put(kind, solved(pulls_, table));
    }
    void ofTerm(std::size_t p) {
        const Pull& pull = pulls_[p];
        std::size_t holding = 0;
        for (const auto& row : table_) {
            holding += std::abs(row[p]) > kFlat ? 1 : 0;
        }
        const auto none = [](const Row&, double) { return 0.0; };
        const auto turned = [](const Row&, double share) { return -share; };
        for (std::size_t r = 0; r < rows_.size(); ++r) {
            if (std::abs(table_[r][p]) <= kFlat) {
                continue;
            }
            if (pull.isKnown || holding > 1) {
                with(SlipKind::LeftOut, p, r, none);
                with(SlipKind::WrongSign, p, r, turned);
            }
            if (leans(pull.along) && !rows_[r].isMoment) {
                with(SlipKind::NotResolved, p, r, [&](const Row&, double share) {
                    return std::copysign(length(pull.along), share);
                });
            }
            if (leans(pull.along)) {
                with(SlipKind::SineForCosine, p, r, [&](const Row& row, double) {
                    return row.share(exchanged(pull.along), pull.at);
                });
            }
            if (rows_[r].isMoment) {
                ofArm(p, r);
            }
        }
        if (pull.isKnown && holding > 1) {
            with(SlipKind::LeftOut, p, {}, none);
            with(pull.of ? SlipKind::EarlierSign : SlipKind::WrongSign, p, {}, turned);
        }
        if (leans(pull.along)) {
            with(SlipKind::SineForCosine, p, {},
                 [&](const Row& row, double) { return row.share(exchanged(pull.along), pull.at); });
        }
    }
    // The whole distance for the one across the force, or the arm of a joint next to it.
    void ofArm(std::size_t p, std::size_t r) {
        const Pull& pull = pulls_[p];
        with(SlipKind::WrongArm, p, r, [&](const Row& row, double share) {
            return std::copysign(length(pull.along) * length(pull.at - row.centre), share);
        });
        for (const Bar& bar : structure_.bars) {
            const Vec2 a = structure_.joints[static_cast<std::size_t>(bar.a)];
            const Vec2 b = structure_.joints[static_cast<std::size_t>(bar.b)];
            if (a == pull.at || b == pull.at) {
                const double share = rows_[r].share(pull.along, a == pull.at ? b : a);
                if (share * table_[r][p] > 0) {
                    with(SlipKind::WrongArm, p, r, [&](const Row&, double) { return share; });
                }
            }
        }
    }
    // A slip in one value, with the others as they follow from the equations, or from all but one
    // of these with the wrong value in them.
    void ofValue(std::size_t i) {
        const bool isReaction = step_.unknowns[i] < structure_.restraints.size();
        const auto becomes = [&](SlipKind kind, double factor, double value) {
            Result alone = step_.right;
            alone.values[i] = value;
            alone.blurs[i] *= std::abs(factor);
            put(kind, alone);
            for (std::size_t r = 0; rows_.size() > 1 && r < rows_.size(); ++r) {
                put(kind, carriedWithout(r, i, alone));
            }
        };
        const double right = step_.right.values[i];
        becomes(isReaction ? SlipKind::ReactionTurned : SlipKind::WrongSense, -1, -right);
        if (!isReaction) {
            becomes(SlipKind::ZeroMisjudged, 0, 0);
        }
        for (const double factor : {2.0, 10.0, 1000.0, 9.81}) {
            becomes(SlipKind::WrongFactor, factor, right * factor);
            becomes(SlipKind::WrongFactor, 1 / factor, right / factor);
        }
        becomes(SlipKind::DigitsSwapped, 1, exchangedDigits(right));
    }
    // The other unknowns from all rows but one, with this value for unknown i.
    std::optional<Result> carriedWithout(std::size_t row, std::size_t i,
                                         const Result& alone) const {
        std::vector<Pull> pulls = pulls_;
        std::size_t unknown = 0;
        for (Pull& pull : pulls) {
            if (!pull.isKnown && unknown++ == i) {
                pull.isKnown = true;
                pull.value = alone.values[i];
            }
        }
        Table table = table_;
        table.erase(table.begin() + static_cast<std::ptrdiff_t>(row));
        std::optional<Result> result = solved(pulls, table);
        if (result) {
            const auto at = static_cast<std::ptrdiff_t>(i);
            result->values.insert(result->values.begin() + at, alone.values[i]);
            result->blurs.insert(result->blurs.begin() + at, alone.blurs[i]);
        }
        return result;
    }
    void taken() {
        if (rows_.size() == 2) { // of a joint
            alone(0);
            alone(1);
        } else if (rows_.size() == 3) {
            halved();
        }
    }
    // Both members of a joint from the same sum, each without the other.
    void alone(std::size_t r) {
        Result both;
        for (std::size_t p = 0; p < pulls_.size(); ++p) {
            std::vector<Pull> pulls = pulls_;
            for (std::size_t other = 0; other < pulls.size(); ++other) {
                if (!pulls[other].isKnown && other != p) {
                    pulls[other] = {{}, {}, pulls[other].at, 0, true};
                }
            }
            const std::optional<Result> one =
                pulls_[p].isKnown ? std::nullopt : solved(pulls, {table_[r]});
            if (one) {
                both.values.push_back(one->values[0]);
                both.blurs.push_back(one->blurs[0]);
            }
        }
        // If one of the two stands alone in that sum anyway, the other's term is merely left out.
        if (both.values.size() == 2 && differs(both.values[0], step_.right.values[0]) &&
            differs(both.values[1], step_.right.values[1])) {
            put(SlipKind::ToOneBar, both);
        }
    }
    void halved() {
        double total = 0;
        Result halves = step_.right;
        std::vector<std::size_t> upright;
        std::vector<double> directions; // of each unknown, upward
        for (const Pull& pull : pulls_) {
            total += pull.of ? 0 : pull.along.y;
            if (pull.of && !pull.isKnown) {
                if (std::abs(pull.along.y) > 1 - kFlat) {
                    upright.push_back(directions.size());
                }
                directions.push_back(pull.along.y);
            }
        }
        if (upright.size() == 2 && total != 0) {
            for (const std::size_t k : upright) {
                halves.values[k] = -total / 2 / directions[k];
                halves.blurs[k] = 0;
            }
            put(SlipKind::BySymmetry, halves);
        }
    }

    const std::vector<Pull>& pulls_;
    const std::vector<Row>& rows_;
    StudentStep& step_;
    const Structure& structure_;
    Table table_;
};

} // namespace

void listSlips(const std::vector<Pull>& pulls, const std::vector<Row>& rows,
               const Structure& structure, StudentStep& step) {
    Mistaker(pulls, rows, step, structure).all();
}

} // namespace gusset::support
