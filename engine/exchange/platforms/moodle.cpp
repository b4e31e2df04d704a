#include "exchange/platforms/moodle.hpp"

#include "exchange/platforms/quiz_parts.hpp"

#include "core/base64.hpp"
#include "core/markup.hpp"
#include "exchange/platforms/xml_text.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

std::string moodlePicture(const Quiz& quiz) {
    return std::string("truss.") + pictureEnding(quiz.picture);
}

class MoodleWriter {
public:
    MoodleWriter() { xml_.open("quiz"); }

    std::string take() {
        xml_.close();
        return xml_.take();
    }

    void category(const Quiz& quiz) {
        xml_.open("question", {{"type", "category"}});
        texts("category", "$course$/" + categoryOf(quiz));
        xml_.close();
    }

    void separate(const Quiz& quiz, const QuizItem& item) {
        const QuizField& field = item.fields.front();
        const auto* number = std::get_if<NumberField>(&field);
        begin(number ? "numerical" : "multichoice", quiz, item.name,
              questionHtml(quiz, item.text, source(quiz)));
        xml_.element("defaultgrade", answerNumber(pointsOf(field)));
        settings();
        if (number) {
            numbers(*number);
        } else {
            choices(std::get<ChoiceField>(field));
        }
        xml_.close();
    }

    void cloze(const Quiz& quiz, const QuizItem& item, double smallest) {
        begin("cloze", quiz, item.name,
              questionHtml(quiz, item.text, source(quiz)) + clozeFields(item, smallest));
        settings();
        xml_.close();
    }

private:
    static std::string source(const Quiz& quiz) {
        return hasPicture(quiz.picture) ? "@@PLUGINFILE@@/" + moodlePicture(quiz) : "";
    }

    void texts(const std::string& name, const std::string& text, const XmlAttributes& with = {}) {
        xml_.open(name, with);
        xml_.element("text", text);
        xml_.close();
    }

    void begin(const std::string& type, const Quiz& quiz, const std::string& name,
               const std::string& html) {
        xml_.open("question", {{"type", type}});
        texts("name", onOneLine(name));
        xml_.open("questiontext", {{"format", "html"}});
        xml_.element("text", html);
        if (hasPicture(quiz.picture)) {
            const std::string& bytes = pictureBytes(quiz.picture);
            xml_.element(
                "file", base64({reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size()}),
                {{"name", moodlePicture(quiz)}, {"path", "/"}, {"encoding", "base64"}});
        }
        xml_.close();
        texts("generalfeedback", "", {{"format", "html"}});
    }

    void settings() {
        xml_.element("penalty", "0.3333333");
        xml_.element("hidden", "0");
        xml_.element("idnumber", "");
    }

    void answer(const std::string& fraction, const std::string& format, const std::string& text,
                const std::string& says, const std::string& tolerance = {}) {
        xml_.open("answer", {{"fraction", fraction}, {"format", format}});
        xml_.element("text", text);
        texts("feedback", escapeHtml(says), {{"format", "html"}});
        if (!tolerance.empty()) {
            xml_.element("tolerance", tolerance);
        }
        xml_.close();
    }

    void numbers(const NumberField& field) {
        const std::string tolerance = answerNumber(field.tolerance);
        answer("100", "plain_text", answerNumber(field.value), field.right, tolerance);
        if (tellsSign(field)) {
            answer("50", "plain_text", answerNumber(-field.value), field.sign, tolerance);
        }
        answer("0", "plain_text", "*", field.wrong, "0"); // any other answer
    }

    void choices(const ChoiceField& field) {
        xml_.element("single", "true");
        xml_.element("shuffleanswers", "false");
        xml_.element("answernumbering", "none");
        for (std::size_t i = 0; i < field.options.size(); ++i) {
            const bool right = i == field.answer;
            answer(right ? "100" : "0", "html", escapeHtml(field.options[i]),
                   right ? field.right : field.wrong);
        }
    }

    // Within a field of a cloze question these end an answer or the field.
    static std::string clozeText(const std::string& text) {
        std::string escaped;
        for (const char c : text) {
            escaped += std::string_view("~#}\\/\"").find(c) == std::string_view::npos
                           ? std::string(1, c)
                           : std::string("\\") + c;
        }
        return escapeHtml(escaped);
    }

    static std::string clozeAnswers(const NumberField& field) {
        const std::string tolerance = ":" + answerNumber(field.tolerance) + "#";
        std::string text =
            ":NUMERICAL:=" + answerNumber(field.value) + tolerance + clozeText(field.right);
        if (tellsSign(field)) {
            text += "~%50%" + answerNumber(-field.value) + tolerance + clozeText(field.sign);
        }
        return text + "~*#" + clozeText(field.wrong);
    }

    static std::string clozeAnswers(const ChoiceField& field) {
        std::string text = ":MULTICHOICE:";
        for (std::size_t i = 0; i < field.options.size(); ++i) {
            const bool right = i == field.answer;
            text += (i == 0 ? "" : "~") + std::string(right ? "=" : "") +
                    clozeText(field.options[i]) + "#" +
                    clozeText(right ? field.right : field.wrong);
        }
        return text;
    }

    // A cloze question's weights are whole numbers: in units of the smallest of the quiz.
    static std::string clozeFields(const QuizItem& item, double smallest) {
        std::string html;
        for (const QuizField& field : item.fields) {
            const long weight = std::max(1L, std::lround(pointsOf(field) / smallest));
            const auto* number = std::get_if<NumberField>(&field);
            html += "<p>" + escapeHtml(labelOf(field)) + " {" + std::to_string(weight) +
                    std::visit([](const auto& it) { return clozeAnswers(it); }, field) + "}" +
                    (number && !number->unit.empty() ? " " + escapeHtml(number->unit) : "") +
                    "</p>";
        }
        return html;
    }

    XmlText xml_;
};

double smallestPoints(const Quiz& quiz) {
    double smallest = 0;
    for (const QuizItem& item : quiz.items) {
        for (const QuizField& field : item.fields) {
            const double points = pointsOf(field);
            smallest = smallest == 0 ? points : std::min(smallest, points);
        }
    }
    return smallest;
}

} // namespace

std::string moodleXml(const std::vector<Quiz>& quizzes) {
    MoodleWriter writer;
    for (const Quiz& quiz : quizzes) {
        writer.category(quiz);
        for (const QuizItem& item : separateItems(quiz)) {
            writer.separate(quiz, item);
        }
    }
    return writer.take();
}

std::string moodleClozeXml(const std::vector<Quiz>& quizzes) {
    MoodleWriter writer;
    for (const Quiz& quiz : quizzes) {
        writer.category(quiz);
        for (const QuizItem& item : quiz.items) {
            writer.cloze(quiz, item, smallestPoints(quiz));
        }
    }
    return writer.take();
}

} // namespace gusset
