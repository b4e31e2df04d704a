#include "support/reading/calculator.hpp"

#include <cmath>
#include <cstdlib>
#include <string_view>
#include <utility>

namespace gusset::support {

namespace {

class Calculator {
public:
    explicit Calculator(std::string text) : text_(std::move(text)) {}

    std::optional<double> value() {
        const double result = sum();
        skip();
        return ok_ && at_ == text_.size() ? std::optional(result) : std::nullopt;
    }

private:
    bool take(std::string_view sign) {
        skip();
        if (text_.compare(at_, sign.size(), sign) != 0) {
            return false;
        }
        at_ += sign.size();
        return true;
    }
    void skip() {
        for (const std::string_view space : {" ", "\u2009"}) {
            while (text_.compare(at_, space.size(), space) == 0 && at_ < text_.size()) {
                at_ += space.size();
            }
        }
    }
    double sum() {
        double total = product();
        for (;;) {
            if (take("+")) {
                total += product();
            } else if (take("\u2212")) {
                total -= product();
            } else {
                return total;
            }
        }
    }
    double product() {
        double total = power();
        for (;;) {
            if (take("\u00B7")) {
                total *= power();
            } else if (take("/")) {
                total /= power();
            } else {
                return total;
            }
        }
    }
    double power() {
        const double base = operand();
        if (take("^")) {
            return std::pow(base, operand());
        }
        return take("\u00B2") ? base * base : base;
    }
    double operand() {
        if (take("(")) {
            const double inside = sum();
            ok_ = take(")") && ok_;
            return inside;
        }
        if (take("\u221A")) {
            return std::sqrt(operand());
        }
        if (take("\u2212")) {
            return -operand();
        }
        char* end = nullptr;
        const char* begin = text_.c_str() + at_;
        const double number = std::strtod(begin, &end);
        ok_ = ok_ && end != begin;
        at_ += static_cast<std::size_t>(end - begin);
        return number;
    }

    std::string text_;
    std::size_t at_ = 0;
    bool ok_ = true;
};

} // namespace

std::optional<double> calculated(const std::string& text) { return Calculator(text).value(); }

} // namespace gusset::support
