#include "app/page/typed_outline.hpp"

#include "app/fields/typed_text.hpp"
#include "exchange/forms/outline_file.hpp"
#include "exchange/json/json_value.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/design/loading.hpp"

#include <algorithm>
#include <array>

namespace gusset {
namespace {

constexpr auto kLengths = std::to_array<std::string_view>(
    {"span", "rise", "heel", "tie", "overhang", "depth", "top", "spacing"});
constexpr auto kLoadSizes = std::to_array<std::string_view>({"size", "left", "right"});
// What the page calls them, by their keys in an outline.
struct FieldName {
    std::string_view key;
    Phrase<> says;
};
constexpr std::array kFieldNames{FieldName{"span", phrase::kFieldSpan},
                                 FieldName{"rise", phrase::kFieldRise},
                                 FieldName{"pitch", phrase::kFieldRise},
                                 FieldName{"heel", phrase::kSizeHeel},
                                 FieldName{"tie", phrase::kSizeTie},
                                 FieldName{"overhang", phrase::kSizeOverhang},
                                 FieldName{"depth", phrase::kSizeDepth},
                                 FieldName{"top", phrase::kSizeTopWidth},
                                 FieldName{"spacing", phrase::kFieldSpacing},
                                 FieldName{"size", phrase::kFieldLoad},
                                 FieldName{"left", phrase::kFieldLoad},
                                 FieldName{"right", phrase::kFieldLoadRight},
                                 FieldName{"permanent", phrase::kFactorPermanentUp},
                                 FieldName{"favourable", phrase::kFactorPermanentDown},
                                 FieldName{"variable", phrase::kFactorVariable},
                                 FieldName{"xi", phrase::kFactorXi}};
constexpr std::string_view kPsi = "ψ";

Statement nameOfField(std::string_view key) {
    const auto found = std::find_if(kFieldNames.begin(), kFieldNames.end(),
                                    [&](const FieldName& it) { return it.key == key; });
    return found == kFieldNames.end() ? Statement(key) : Statement(found->says);
}

constexpr std::string_view kDegree = "°";

template <class Words>
bool isAmong(const Words& words, std::string_view word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

std::string unspaced(std::string_view text) {
    const std::size_t from = text.find_first_not_of(' ');
    const std::size_t to = text.find_last_not_of(' ');
    return from == std::string_view::npos ? "" : std::string(text.substr(from, to - from + 1));
}

class Typed {
public:
    explicit Typed(const Truss& board) : board_(board) {}

    // The same with numbers; what can't be read is left out, and said in faults().
    JsonValue read(const JsonValue& typed) {
        JsonValue form = typed;
        form.members.clear();
        for (const auto& [key, value] : typed.members) {
            if (key == "loads") {
                form.members.emplace_back(key, readLoads(value));
            } else if (key == "rule") {
                form.members.emplace_back(key, readFactors(value));
            } else if (isAmong(kLengths, key) && value.kind == JsonValue::Kind::Text) {
                readSize(form, key, unspaced(value.text));
            } else {
                form.members.emplace_back(key, value);
            }
        }
        return form;
    }
    [[nodiscard]] const Issues& faults() const { return faults_; }

private:
    void readSize(JsonValue& form, const std::string& key, const std::string& text) {
        const bool isNeeded = key == "span" || key == "rise";
        if (text.empty() && !isNeeded) {
            return;
        }
        if (key == "rise" && text.ends_with(kDegree)) {
            const std::string degrees = unspaced(text.substr(0, text.size() - kDegree.size()));
            put(form, "pitch", readNumber(withPoints(board_, degrees)));
            return;
        }
        put(form, key, readLength(withPoints(board_, text), board_.units.length));
    }

    // Factors and national values of combinations: texts in place of numbers, at any depth; its
    // name is none, and what is empty is left out.
    JsonValue readFactors(const JsonValue& typed) {
        JsonValue read = typed;
        read.members.clear();
        for (const auto& [key, value] : typed.members) {
            if (value.kind != JsonValue::Kind::Text || key == "by") {
                read.members.emplace_back(key, readFactors(value));
            } else if (!unspaced(value.text).empty()) {
                put(read, key, readNumber(withPoints(board_, value.text)));
            }
        }
        for (JsonValue& item : read.items) {
            if (item.kind == JsonValue::Kind::Text) {
                const Outcome<double> number = readNumber(withPoints(board_, item.text));
                keepFaults(number, kPsi);
                item = numberValue(number ? number.value() : 0);
            }
        }
        return read;
    }

    JsonValue readLoads(const JsonValue& typed) {
        JsonValue loads = typed;
        for (JsonValue& load : loads.items) {
            const std::string as = textUnder(load, "as");
            JsonValue read = load;
            read.members.clear();
            for (const auto& [key, value] : load.members) {
                if (isAmong(kLoadSizes, key) && value.kind == JsonValue::Kind::Text) {
                    put(read, key, readLoad(as, unspaced(value.text)));
                } else if (value.kind != JsonValue::Kind::Text || !value.text.empty()) {
                    read.members.emplace_back(key, value);
                }
            }
            load = std::move(read);
        }
        return loads;
    }

    // A number is in the unit of the board; a typed unit may be of another force, but of its
    // length.
    Outcome<double> readLoad(const std::string& as, const std::string& text) const {
        LoadSpread spread = LoadSpread::PerJoint;
        for (int i = 0; i <= int(LoadSpread::PerJoint); ++i) {
            spread = wordOf(LoadSpread(i)) == as ? LoadSpread(i) : spread;
        }
        if (spread == LoadSpread::PerJoint) {
            return readForce(withPoints(board_, text), board_.units.force);
        }
        const std::string unit = unitOf(spread, board_.units);
        const std::size_t slash = text.find('/');
        std::string per = slash == std::string::npos ? "" : text.substr(slash);
        for (const std::string_view two : {"^2", "2"}) {
            if (per.ends_with(two)) {
                per = per.substr(0, per.size() - two.size()) + "²";
            }
        }
        if (!per.empty() && (unit.empty() || per != unit.substr(unit.find('/')))) {
            return Issue{IssueCode::OutOfRange, "loads",
                         statement(phrase::kLoadInUnit, {{"typed", text}, {"unit", unit}})};
        }
        return readForce(withPoints(board_, text.substr(0, slash)), board_.units.force);
    }

    void put(JsonValue& into, const std::string& key, const Outcome<double>& number) {
        if (number) {
            into.members.emplace_back(key, numberValue(number.value()));
        }
        keepFaults(number, nameOfField(key));
    }
    void keepFaults(const Outcome<double>& number, const Statement& field) {
        if (number) {
            return;
        }
        for (Issue issue : number.issues()) {
            issue.says = statement(phrase::kFieldFault, {{"field", field}, {"fault", issue.says}});
            faults_.push_back(std::move(issue));
        }
    }

    const Truss& board_;
    Issues faults_{};
};

} // namespace

Outcome<Outline> typedOutline(const Truss& board, std::string_view typed) {
    const Outcome<JsonValue> value = parseJson(typed);
    if (!value) {
        return value.issues();
    }
    Typed reader(board);
    Truss truss;
    truss.units = board.units;
    truss.form = jsonText(reader.read(value.value()));
    return reader.faults().empty() ? readOutline(truss) : Outcome<Outline>(reader.faults());
}

} // namespace gusset
