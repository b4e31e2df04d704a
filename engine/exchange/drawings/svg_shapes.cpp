#include "exchange/drawings/svg_shapes.hpp"

#include "exchange/drawings/drawn_number.hpp"
#include "exchange/drawings/lines_found.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace gusset {

namespace {

constexpr std::string_view kSvgSpaces = " \t\r\n\f";
constexpr std::size_t kQuotedPath = 20;

bool isDigit(char c) { return c >= '0' && c <= '9'; }

class SvgScanner {
public:
    explicit SvgScanner(std::string_view text) : text_(text) {}

    void skipSpaces() { at_ = std::min(text_.find_first_not_of(kSvgSpaces, at_), text_.size()); }
    void skipComma() {
        skipSpaces();
        if (at_ < text_.size() && text_[at_] == ',') {
            ++at_;
            skipSpaces();
        }
    }
    [[nodiscard]] bool isAtEnd() {
        skipSpaces();
        return at_ == text_.size();
    }
    [[nodiscard]] char peek() const { return at_ < text_.size() ? text_[at_] : '\0'; }
    char take() { return text_[at_++]; }
    [[nodiscard]] std::string_view rest() const { return text_.substr(at_); }

    [[nodiscard]] bool isNumberNext() {
        skipComma();
        return isDigit(peek()) || peek() == '.' || peek() == '-' || peek() == '+';
    }
    // As in "1-2.5.5e3", where each number ends as soon as it can't go on.
    std::optional<double> number() {
        skipComma();
        const std::size_t start = at_;
        at_ += peek() == '-' || peek() == '+' ? 1 : 0;
        skipDigits();
        if (peek() == '.') {
            ++at_;
            skipDigits();
        }
        if (peek() == 'e' || peek() == 'E') {
            const std::size_t before = at_++;
            at_ += peek() == '-' || peek() == '+' ? 1 : 0;
            if (isDigit(peek())) {
                skipDigits();
            } else {
                at_ = before;
            }
        }
        const std::optional<double> value = drawnNumber(text_.substr(start, at_ - start));
        at_ = value ? at_ : start;
        return value;
    }
    // 0 or 1, which may stand without a space behind it.
    bool flag() {
        skipComma();
        if (peek() != '0' && peek() != '1') {
            return false;
        }
        ++at_;
        return true;
    }
    std::string_view word() {
        skipSpaces();
        const std::size_t start = at_;
        while ((peek() >= 'a' && peek() <= 'z') || (peek() >= 'A' && peek() <= 'Z')) {
            ++at_;
        }
        return text_.substr(start, at_ - start);
    }

private:
    void skipDigits() {
        while (isDigit(peek())) {
            ++at_;
        }
    }

    std::string_view text_;
    std::size_t at_ = 0;
};

double inRadians(double degrees) { return degrees * std::numbers::pi / 180; }

// sine and cosine, exact for quarter turns
SvgMatrix rotation(double degrees) {
    const double turn = std::fmod(degrees, 360);
    const bool isQuarter = std::fmod(turn, 90) == 0;
    const double c = isQuarter ? std::round(std::cos(inRadians(turn))) : std::cos(inRadians(turn));
    const double s = isQuarter ? std::round(std::sin(inRadians(turn))) : std::sin(inRadians(turn));
    return {c, s, -s, c, 0, 0};
}

SvgMatrix shift(double x, double y) { return {1, 0, 0, 1, x, y}; }

std::optional<SvgMatrix> oneTransform(std::string_view name, const std::vector<double>& by) {
    const std::size_t n = by.size();
    if (name == "matrix" && n == 6) {
        return SvgMatrix{by[0], by[1], by[2], by[3], by[4], by[5]};
    }
    if (name == "translate" && (n == 1 || n == 2)) {
        return shift(by[0], n == 2 ? by[1] : 0);
    }
    if (name == "scale" && (n == 1 || n == 2)) {
        return SvgMatrix{by[0], 0, 0, n == 2 ? by[1] : by[0], 0, 0};
    }
    if (name == "rotate" && n == 1) {
        return rotation(by[0]);
    }
    if (name == "rotate" && n == 3) {
        return shift(by[1], by[2]).times(rotation(by[0])).times(shift(-by[1], -by[2]));
    }
    if (name == "skewX" && n == 1) {
        return SvgMatrix{1, 0, std::tan(inRadians(by[0])), 1, 0, 0};
    }
    if (name == "skewY" && n == 1) {
        return SvgMatrix{1, std::tan(inRadians(by[0])), 0, 1, 0, 0};
    }
    return std::nullopt;
}

class PathReader {
public:
    explicit PathReader(std::string_view d) : scan_(d) {}

    SvgPath read() {
        while (!scan_.isAtEnd()) {
            const char next = scan_.peek();
            const std::string_view from = scan_.rest();
            const bool isLetter = (next >= 'a' && next <= 'z') || (next >= 'A' && next <= 'Z');
            if (isLetter) {
                command_ = scan_.take();
                isFirst_ = true;
            }
            const bool canGoOn =
                isLetter || (command_ != 0 && lowerCase() != 'z' && scan_.isNumberNext());
            if (!canGoOn || !step()) {
                path_.unread = std::string(from.substr(0, kQuotedPath));
                break;
            }
            isFirst_ = false;
        }
        return std::move(path_);
    }

private:
    [[nodiscard]] char lowerCase() const {
        return command_ >= 'A' && command_ <= 'Z' ? static_cast<char>(command_ - 'A' + 'a')
                                                  : command_;
    }
    [[nodiscard]] bool isRelative() const { return command_ == lowerCase(); }

    std::optional<Vec2> point() {
        const std::optional<double> x = scan_.number();
        const std::optional<double> y = x ? scan_.number() : std::nullopt;
        if (!y) {
            return std::nullopt;
        }
        return isRelative() ? pen_ + Vec2{*x, *y} : Vec2{*x, *y};
    }

    bool step() {
        const char command = lowerCase();
        if (!isBegun_ && command != 'm') {
            return false;
        }
        switch (command) {
        case 'm':
            return move();
        case 'l':
            return lineTo(point());
        case 'h':
        case 'v':
            return alongAxis(command == 'h');
        case 'z':
            lineTo(start_);
            return true;
        case 'c':
            return curve(3);
        case 's':
        case 'q':
            return curve(2);
        case 't':
            return curve(1);
        case 'a':
            return arc();
        default:
            return false;
        }
    }

    // Pairs behind the first of a move are lines.
    bool move() {
        const std::optional<Vec2> to = point();
        if (!to) {
            return false;
        }
        if (!isFirst_) {
            return lineTo(to);
        }
        pen_ = start_ = *to;
        isBegun_ = true;
        return true;
    }
    bool lineTo(const std::optional<Vec2>& to) {
        if (to && *to != pen_) {
            path_.strokes.push_back({pen_, *to});
        }
        pen_ = to.value_or(pen_);
        return to.has_value();
    }
    bool alongAxis(bool isAcross) {
        const std::optional<double> by = scan_.number();
        if (!by) {
            return false;
        }
        Vec2 to = pen_;
        double& changed = isAcross ? to.x : to.y;
        changed = isRelative() ? changed + *by : *by;
        return lineTo(to);
    }
    bool curve(int points) {
        std::optional<Vec2> to;
        for (int i = 0; i < points; ++i) {
            to = point();
            if (!to) {
                return false;
            }
        }
        ++path_.curves;
        pen_ = *to;
        return true;
    }
    bool arc() {
        for (int i = 0; i < 3; ++i) { // two radii and the turn of the axes
            if (!scan_.number()) {
                return false;
            }
        }
        return scan_.flag() && scan_.flag() && curve(1);
    }

    SvgScanner scan_;
    SvgPath path_;
    char command_ = 0;
    bool isFirst_ = false; // numbers behind a letter
    bool isBegun_ = false;
    Vec2 pen_;
    Vec2 start_;
};

} // namespace

SvgMatrix SvgMatrix::times(const SvgMatrix& inner) const {
    return {a * inner.a + c * inner.b,     b * inner.a + d * inner.b,
            a * inner.c + c * inner.d,     b * inner.c + d * inner.d,
            a * inner.e + c * inner.f + e, b * inner.e + d * inner.f + f};
}

std::optional<SvgMatrix> svgTransform(std::string_view text) {
    SvgScanner scan(text);
    SvgMatrix all;
    while (!scan.isAtEnd()) {
        const std::string_view name = scan.word();
        scan.skipSpaces();
        if (scan.peek() != '(') {
            return std::nullopt;
        }
        scan.take();
        std::vector<double> by;
        while (scan.isNumberNext()) {
            const std::optional<double> number = scan.number();
            if (!number) {
                return std::nullopt;
            }
            by.push_back(*number);
        }
        const std::optional<SvgMatrix> one = oneTransform(name, by);
        if (!one || scan.peek() != ')') {
            return std::nullopt;
        }
        scan.take();
        scan.skipComma();
        all = all.times(*one);
    }
    return all;
}

SvgPath svgPath(std::string_view d) { return PathReader(d).read(); }

std::optional<std::vector<Vec2>> svgPoints(std::string_view text) {
    SvgScanner scan(text);
    std::vector<Vec2> points;
    while (!scan.isAtEnd()) {
        const std::optional<double> x = scan.number();
        const std::optional<double> y = x ? scan.number() : std::nullopt;
        if (!y) {
            return std::nullopt;
        }
        points.push_back({*x, *y});
        scan.skipComma();
    }
    return points;
}

std::optional<double> svgLength(std::string_view text) {
    struct Unit {
        std::string_view name;
        double pixels;
    };
    // CSS Values and Units 3, 5.2
    constexpr std::array<Unit, 7> kUnits{{{"", 1},
                                          {"px", 1},
                                          {"in", 96},
                                          {"cm", 96 / 2.54},
                                          {"mm", 96 / 25.4},
                                          {"pt", 96 / 72.0},
                                          {"pc", 16}}};
    SvgScanner scan(text);
    const std::optional<double> number = scan.number();
    const std::string_view name = scan.word();
    const auto unit = std::find_if(kUnits.begin(), kUnits.end(),
                                   [&](const Unit& each) { return each.name == name; });
    return number && unit != kUnits.end() && scan.isAtEnd() ? std::optional(*number * unit->pixels)
                                                            : std::nullopt;
}

} // namespace gusset
