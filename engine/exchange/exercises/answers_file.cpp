#include "exchange/exercises/answers_file.hpp"

#include "classroom/exercise/answer_names.hpp"
#include "exchange/exercises/equations_file.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/files/object_reader.hpp"
#include "exchange/json/json_text.hpp"
#include "exchange/links/deflated.hpp"
#include "exchange/links/link_text.hpp"
#include "phrases/faults/exercises.hpp"
#include "phrases/faults/links.hpp"

#include <algorithm>

namespace gusset {

namespace {

constexpr int kAnswersVersion = 1;
constexpr std::size_t kLargestAnswers = 1u << 20;                 // bytes
constexpr std::array<std::string_view, 3> kSenses{"C", "0", "T"}; // −1, 0, +1
constexpr std::array<std::string_view, 3> kSigns{"-", "0", "+"};

using SignWords = std::array<std::string_view, 3>;

class AnswersReader {
public:
    AnswersReader(const Truss& truss, const Exercise& exercise, IssueList& issues)
        : truss_(truss), reactions_(reactionNames(truss)), members_(answerNames(truss)),
          mark_(exerciseMark(truss)), issues_(issues), answers_(blankAnswers(truss, exercise)) {}

    Answers read(const JsonValue& value) {
        ObjectReader object(value, "", issues_);
        if (!isOurs(object)) {
            return std::move(answers_);
        }
        double variant = 0;
        object.read("variant", false, variant);
        answers_.variant = variant >= 0 && variant < 1e9 ? static_cast<int>(variant) : 0;
        object.read("code", false, answers_.code);
        readForces(object, "reactions", "sign", kSigns, phrase::kSignIsOneOf, reactions_,
                   answers_.reactions);
        readForces(object, "forces", "sense", kSenses, phrase::kSenseIsOneOf, members_,
                   answers_.forces);
        readZeros(object, "zero", true);
        readZeros(object, "notZero", false);
        std::optional<double> degree;
        object.read("degree", false, degree);
        if (degree && *degree > -1e6 && *degree < 1e6) {
            answers_.degree = static_cast<int>(*degree);
        }
        readValues(object);
        answers_.equations = readEquations(truss_, object);
        return std::move(answers_);
    }

private:
    bool isOurs(ObjectReader& object) {
        double version = 0;
        object.read("gussetAnswers", false, version);
        object.read("exercise", false, answers_.exercise);
        if (version == kAnswersVersion && answers_.exercise == mark_) {
            return true;
        }
        Statement says = phrase::kNotAnswers;
        if (version == kAnswersVersion) {
            says = phrase::kAnswersOfAnother;
        } else if (version > kAnswersVersion) {
            says = phrase::kAnswersOfLater;
        }
        issues_.error(IssueCode::WrongType, phrase::kPlaceAnswers, std::move(says));
        return false;
    }

    // The position of a name in a list; none if it is not there, which is then said.
    std::optional<std::size_t> indexOf(const std::vector<std::string>& names,
                                       const std::string& name, const std::string& place) {
        const auto found = std::find(names.begin(), names.end(), name);
        if (found == names.end()) {
            issues_.error(IssueCode::UnknownName, place,
                          statement(phrase::kNoSuchAnswer, {{"name", name}}));
            return std::nullopt;
        }
        return static_cast<std::size_t>(found - names.begin());
    }

    void readForces(ObjectReader& object, const std::string& key, std::string_view signKey,
                    const SignWords& words, Phrase<> oneOf, const std::vector<std::string>& names,
                    std::vector<WrittenForce>& into) {
        const std::vector<JsonValue>& items = object.list(key);
        for (std::size_t i = 0; i < items.size() && !issues_.isFull(); ++i) {
            ObjectReader item(items[i], key + "[" + std::to_string(i) + "]", issues_);
            std::string name;
            item.read("of", true, name);
            const std::optional<std::size_t> at = indexOf(names, name, item.placeOf("of"));
            WrittenForce written;
            item.read("size", false, written.size);
            if (written.size && *written.size < 0) {
                issues_.error(IssueCode::OutOfRange, item.placeOf("size"),
                              phrase::kSizeNotNegative);
            }
            written.sign = signOf(item, signKey, words, oneOf);
            if (at) {
                into[*at] = written;
            }
        }
    }

    std::optional<int> signOf(ObjectReader& item, std::string_view key, const SignWords& words,
                              Phrase<> oneOf) {
        std::string word;
        item.read(key, false, word);
        if (word.empty()) {
            return std::nullopt;
        }
        const auto found = std::find(words.begin(), words.end(), word);
        if (found == words.end()) {
            issues_.error(IssueCode::OutOfRange, item.placeOf(key), oneOf);
            return std::nullopt;
        }
        return static_cast<int>(found - words.begin()) - 1;
    }

    void readZeros(ObjectReader& object, const std::string& key, bool isZero) {
        for (const JsonValue& name : object.list(key)) {
            if (const std::optional<std::size_t> at = indexOf(members_, name.text, key)) {
                answers_.zeros[*at] = isZero;
            }
        }
    }

    void readValues(ObjectReader& object) {
        const std::vector<JsonValue>& items = object.list("values");
        for (std::size_t i = 0; i < items.size() && i < answers_.values.size(); ++i) {
            if (items[i].kind == JsonValue::Kind::Number) {
                answers_.values[i] = items[i].number;
            }
        }
    }

    const Truss& truss_;
    std::vector<std::string> reactions_;
    std::vector<std::string> members_;
    std::string mark_;
    IssueList& issues_;
    Answers answers_;
};

void writeForces(JsonText& out, std::string_view key, std::string_view signKey,
                 const SignWords& words, const std::vector<std::string>& names,
                 const std::vector<WrittenForce>& forces) {
    out.key(key);
    out.beginArray();
    for (std::size_t i = 0; i < forces.size(); ++i) {
        if (isBlank(forces[i])) {
            continue;
        }
        out.beginObject();
        out.text("of", names[i]);
        if (forces[i].size) {
            out.number("size", *forces[i].size);
        }
        if (forces[i].sign) {
            out.text(signKey, words[static_cast<std::size_t>(*forces[i].sign + 1)]);
        }
        out.endObject();
    }
    out.endArray();
}

std::vector<std::string> judged(const std::vector<std::string>& names,
                                const std::vector<std::optional<bool>>& zeros, bool isZero) {
    std::vector<std::string> chosen;
    for (std::size_t i = 0; i < zeros.size(); ++i) {
        if (zeros[i] == isZero) {
            chosen.push_back(names[i]);
        }
    }
    return chosen;
}

} // namespace

Outcome<Answers> readAnswers(const Truss& truss, const Exercise& exercise, std::string_view json) {
    const Outcome<JsonValue> value = parseJson(json);
    if (!value) {
        return value.issues();
    }
    IssueList issues;
    Answers answers = AnswersReader(truss, exercise, issues).read(value.value());
    if (!issues.errors().empty()) {
        return issues.errors();
    }
    return answers;
}

Outcome<std::string> exerciseOfAnswers(std::string_view json) {
    const Outcome<JsonValue> value = parseJson(json);
    if (!value) {
        return value.issues();
    }
    const JsonValue* exercise = value.value().find("exercise");
    return exercise ? exercise->text : std::string();
}

std::string answersText(const Truss& truss, const Answers& answers) {
    const std::vector<std::string> members = answerNames(truss);
    JsonText out(Layout::Compact);
    out.beginObject();
    out.whole("gussetAnswers", kAnswersVersion);
    out.text("exercise", exerciseMark(truss));
    if (answers.variant != 0) {
        out.whole("variant", answers.variant);
    }
    out.text("code", answers.code);
    writeForces(out, "reactions", "sign", kSigns, reactionNames(truss), answers.reactions);
    writeForces(out, "forces", "sense", kSenses, members, answers.forces);
    out.texts("zero", judged(members, answers.zeros, true));
    out.texts("notZero", judged(members, answers.zeros, false));
    if (answers.degree) {
        out.whole("degree", *answers.degree);
    }
    out.key("values");
    out.beginArray();
    for (const std::optional<double>& value : answers.values) {
        value ? out.number(*value) : out.null();
    }
    out.endArray();
    writeEquations(truss, answers.equations, out);
    out.endObject();
    return out.take();
}

std::string answersLink(std::string_view json) {
    std::string link = sealedLink(deflated(json));
    link.front() = kAnswersLink.front();
    return link;
}

Outcome<std::string> linkedAnswers(std::string_view link) {
    const std::size_t start = link.find(kAnswersLink);
    if (start == std::string_view::npos) {
        return Issue{IssueCode::Syntax, phrase::kPlaceAnswers, phrase::kNoAnswersInLink};
    }
    std::string fragment(link.substr(start));
    fragment.erase(fragment.find_last_not_of(" \t\r\n)>.,;\"'*") + 1); // what mail programs add
    fragment.front() = 'm';
    const Outcome<Bytes> bytes = unsealedLink(fragment);
    if (!bytes) {
        return bytes.issues();
    }
    Inflated content = inflated(bytes.value(), kLargestAnswers);
    if (content.fault) {
        return Issue{IssueCode::Damaged, phrase::kPlaceAnswers, phrase::kLinkDoesNotUnpack};
    }
    return std::move(content.text);
}

} // namespace gusset
