#include "exchange/platforms/qti_item.hpp"

#include "exchange/platforms/quiz_parts.hpp"

#include "exchange/platforms/xml_text.hpp"

namespace gusset {

namespace {

std::string hyphenated(const std::string& name) {
    std::string text;
    for (const char c : name) {
        const bool upper = c >= 'A' && c <= 'Z';
        text += upper ? std::string("-") + static_cast<char>(c - 'A' + 'a') : std::string(1, c);
    }
    return text;
}

std::string optionName(std::size_t index) { return "option" + std::to_string(index + 1); }

class QtiItemWriter {
public:
    QtiItemWriter(QtiVersion version, const Quiz& quiz, const QuizItem& item,
                  const QtiItemPlace& place)
        : version_(version), quiz_(quiz), item_(item), place_(place) {}

    std::string write() {
        const bool three = version_ == QtiVersion::Three;
        const std::string space = three ? "http://www.imsglobal.org/xsd/imsqtiasi_v3p0"
                                        : "http://www.imsglobal.org/xsd/imsqti_v2p1";
        const std::string schema =
            three ? "https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd"
                  : "http://www.imsglobal.org/xsd/qti/qtiv2p1/imsqti_v2p1.xsd";
        open("assessmentItem", {{"xmlns", space},
                                {"xmlns:xsi", "http://www.w3.org/2001/XMLSchema-instance"},
                                {"xsi:schemaLocation", space + " " + schema},
                                {"identifier", place_.identifier},
                                {"title", onOneLine(item_.name)},
                                {"adaptive", "false"},
                                {"timeDependent", "false"}});
        for (std::size_t i = 0; i < item_.fields.size(); ++i) {
            declareResponse(i);
        }
        declareOutcomes();
        body();
        processing();
        xml_.close();
        return xml_.take();
    }

private:
    XmlAttributes named(const XmlAttributes& attributes) const {
        XmlAttributes made;
        for (const auto& attribute : attributes) {
            const bool isXml = attribute.first.find(':') != std::string::npos;
            made.emplace_back(isXml ? attribute.first : qtiAttribute(version_, attribute.first),
                              attribute.second);
        }
        return made;
    }
    void open(const std::string& name, const XmlAttributes& with = {}) {
        xml_.open(qtiElement(version_, name), named(with));
    }
    void leaf(const std::string& name, const XmlAttributes& with) {
        xml_.leaf(qtiElement(version_, name), named(with));
    }
    void element(const std::string& name, const std::string& text, const XmlAttributes& with = {}) {
        xml_.element(qtiElement(version_, name), text, named(with));
    }

    static std::string response(std::size_t i) { return "RESPONSE" + std::to_string(i + 1); }
    static std::string feedback(std::size_t i) { return "FEEDBACK" + std::to_string(i + 1); }

    void declareResponse(std::size_t i) {
        const auto* number = std::get_if<NumberField>(&item_.fields[i]);
        open("responseDeclaration", {{"identifier", response(i)},
                                     {"cardinality", "single"},
                                     {"baseType", number ? "float" : "identifier"}});
        open("correctResponse");
        element("value", number ? answerNumber(number->value)
                                : optionName(std::get<ChoiceField>(item_.fields[i]).answer));
        xml_.close();
        xml_.close();
    }

    void declareOutcome(const std::string& name, const std::string& value) {
        open("outcomeDeclaration",
             {{"identifier", name}, {"cardinality", "single"}, {"baseType", "float"}});
        open("defaultValue");
        element("value", value);
        xml_.close();
        xml_.close();
    }

    void declareOutcomes() {
        declareOutcome("SCORE", "0");
        declareOutcome("MAXSCORE", answerNumber(pointsOf(item_)));
        for (std::size_t i = 0; i < item_.fields.size(); ++i) {
            leaf("outcomeDeclaration", {{"identifier", feedback(i)},
                                        {"cardinality", "single"},
                                        {"baseType", "identifier"}});
        }
    }

    void body() {
        open("itemBody");
        xml_.raw(questionHtml(quiz_, item_.text, place_.picture));
        for (std::size_t i = 0; i < item_.fields.size(); ++i) {
            field(i);
        }
        for (std::size_t i = 0; i < item_.fields.size(); ++i) {
            std::visit([&](const auto& it) { feedbacks(i, it); }, item_.fields[i]);
        }
        xml_.close();
    }

    // The label of a field is a text beside it: neither version allows <label for="…">.
    void field(std::size_t i) {
        const std::string label = "label" + std::to_string(i + 1);
        xml_.open("p");
        xml_.element("span", labelOf(item_.fields[i]), {{"id", label}});
        XmlAttributes with{{"responseIdentifier", response(i)}};
        if (version_ == QtiVersion::Three) {
            with.emplace_back("aria-labelledby", label);
        }
        if (const auto* number = std::get_if<NumberField>(&item_.fields[i])) {
            with.emplace_back("expectedLength", "10");
            leaf("textEntryInteraction", with);
            if (!number->unit.empty()) {
                xml_.element("span", number->unit);
            }
        } else {
            with.emplace_back("shuffle", "false");
            choice(std::get<ChoiceField>(item_.fields[i]), with);
        }
        xml_.close();
    }

    void choice(const ChoiceField& field, const XmlAttributes& with) {
        open("inlineChoiceInteraction", with);
        for (std::size_t i = 0; i < field.options.size(); ++i) {
            element("inlineChoice", field.options[i], {{"identifier", optionName(i)}});
        }
        xml_.close();
    }

    void feedbackBlock(std::size_t i, const std::string& when, const std::string& says) {
        if (says.empty()) {
            return;
        }
        open("feedbackBlock",
             {{"outcomeIdentifier", feedback(i)}, {"identifier", when}, {"showHide", "show"}});
        if (version_ == QtiVersion::Three) {
            open("contentBody");
        }
        xml_.element("p", says);
        if (version_ == QtiVersion::Three) {
            xml_.close();
        }
        xml_.close();
    }

    void feedbacks(std::size_t i, const NumberField& field) {
        feedbackBlock(i, "RIGHT", field.right);
        if (tellsSign(field)) {
            feedbackBlock(i, "SIGN", field.sign);
        }
        feedbackBlock(i, "WRONG", field.wrong);
    }
    void feedbacks(std::size_t i, const ChoiceField& field) {
        feedbackBlock(i, "RIGHT", field.right);
        feedbackBlock(i, "WRONG", field.wrong);
    }

    void processing() {
        open("responseProcessing");
        for (std::size_t i = 0; i < item_.fields.size(); ++i) {
            open("responseCondition");
            std::visit([&](const auto& it) { conditions(i, it); }, item_.fields[i]);
            xml_.close();
        }
        xml_.close();
    }

    void conditions(std::size_t i, const NumberField& field) {
        open("responseIf");
        equals(i, field.value, field.tolerance);
        outcome(i, "RIGHT", field.points);
        xml_.close();
        if (tellsSign(field)) {
            open("responseElseIf");
            equals(i, -field.value, field.tolerance);
            outcome(i, "SIGN", field.points / 2);
            xml_.close();
        }
        otherwise(i);
    }

    void conditions(std::size_t i, const ChoiceField& field) {
        open("responseIf");
        open("match");
        leaf("variable", {{"identifier", response(i)}});
        leaf("correct", {{"identifier", response(i)}});
        xml_.close();
        outcome(i, "RIGHT", field.points);
        xml_.close();
        otherwise(i);
    }

    void equals(std::size_t i, double value, double tolerance) {
        const std::string about = answerNumber(tolerance);
        open("equal", {{"toleranceMode", "absolute"}, {"tolerance", about + " " + about}});
        leaf("variable", {{"identifier", response(i)}});
        element("baseValue", answerNumber(value), {{"baseType", "float"}});
        xml_.close();
    }

    void otherwise(std::size_t i) {
        open("responseElse");
        outcome(i, "WRONG", 0);
        xml_.close();
    }

    void outcome(std::size_t i, const std::string& when, double points) {
        if (points != 0) {
            open("setOutcomeValue", {{"identifier", "SCORE"}});
            open("sum");
            leaf("variable", {{"identifier", "SCORE"}});
            element("baseValue", answerNumber(points), {{"baseType", "float"}});
            xml_.close();
            xml_.close();
        }
        open("setOutcomeValue", {{"identifier", feedback(i)}});
        element("baseValue", when, {{"baseType", "identifier"}});
        xml_.close();
    }

    QtiVersion version_;
    const Quiz& quiz_;
    const QuizItem& item_;
    const QtiItemPlace& place_;
    XmlText xml_;
};

} // namespace

std::string qtiElement(QtiVersion version, const std::string& name) {
    return version == QtiVersion::Three ? "qti-" + hyphenated(name) : name;
}

std::string qtiAttribute(QtiVersion version, const std::string& name) {
    return version == QtiVersion::Three ? hyphenated(name) : name;
}

std::string qtiItem(QtiVersion version, const Quiz& quiz, const QuizItem& item,
                    const QtiItemPlace& place) {
    return QtiItemWriter(version, quiz, item, place).write();
}

} // namespace gusset
