#include "exchange/platforms/canvas.hpp"

#include "exchange/platforms/quiz_parts.hpp"

#include "core/markup.hpp"
#include "exchange/platforms/xml_text.hpp"

#include <string>

namespace gusset {

namespace {

constexpr const char* kInstance = "http://www.w3.org/2001/XMLSchema-instance";
constexpr const char* kWrongFeedback = "general_incorrect_fb"; // Canvas's own identifier

std::string canvasPicture(const Quiz& quiz, const std::string& name) {
    return "images/" + name + "." + pictureEnding(quiz.picture);
}

class CanvasWriter {
public:
    CanvasWriter(const Quiz& quiz, const std::string& name) : quiz_(quiz), name_(name) {}

    std::string questions() {
        xml_.open("questestinterop",
                  {{"xmlns", "http://www.imsglobal.org/xsd/ims_qtiasiv1p2"},
                   {"xmlns:xsi", kInstance},
                   {"xsi:schemaLocation", "http://www.imsglobal.org/xsd/ims_qtiasiv1p2 "
                                          "http://www.imsglobal.org/xsd/ims_qtiasiv1p2p1.xsd"}});
        xml_.open("assessment", {{"ident", name_}, {"title", onOneLine(quiz_.title)}});
        xml_.open("section", {{"ident", "root_section"}});
        int count = 0;
        for (const QuizItem& item : separateItems(quiz_)) {
            question(item, name_ + "_" + std::to_string(++count));
        }
        xml_.close();
        xml_.close();
        xml_.close();
        return xml_.take();
    }

private:
    void question(const QuizItem& item, const std::string& ident) {
        const auto* number = std::get_if<NumberField>(&item.fields.front());
        const auto* choice = std::get_if<ChoiceField>(&item.fields.front());
        xml_.open("item", {{"ident", ident}, {"title", onOneLine(item.name)}});
        metadata(number ? "numerical_question" : "multiple_choice_question", pointsOf(item));
        xml_.open("presentation");
        material(questionHtml(quiz_, item.text, source()));
        if (number) {
            askNumber();
        } else {
            askChoice(*choice);
        }
        xml_.close();
        xml_.open("resprocessing");
        xml_.open("outcomes");
        xml_.leaf(
            "decvar",
            {{"maxvalue", "100"}, {"minvalue", "0"}, {"varname", "SCORE"}, {"vartype", "Decimal"}});
        xml_.close();
        wrongFeedback();
        if (number) {
            rightNumber(*number);
        } else {
            rightChoice(*choice);
        }
        xml_.close();
        xml_.open("itemfeedback", {{"ident", kWrongFeedback}});
        xml_.open("flow_mat");
        material("<p>" + escapeHtml(number ? number->wrong : choice->wrong) + "</p>");
        xml_.close();
        xml_.close();
        xml_.close();
    }

    // Canvas puts the address of the course's files in place of $IMS-CC-FILEBASE$.
    std::string source() const {
        return hasPicture(quiz_.picture) ? "$IMS-CC-FILEBASE$/" + canvasPicture(quiz_, name_)
                                         : std::string();
    }

    void metadata(const std::string& type, double points) {
        xml_.open("itemmetadata");
        xml_.open("qtimetadata");
        metadataField("question_type", type);
        metadataField("points_possible", answerNumber(points));
        xml_.close();
        xml_.close();
    }

    void metadataField(const std::string& label, const std::string& entry) {
        xml_.open("qtimetadatafield");
        xml_.element("fieldlabel", label);
        xml_.element("fieldentry", entry);
        xml_.close();
    }

    void material(const std::string& html) {
        xml_.open("material");
        xml_.element("mattext", html, {{"texttype", "text/html"}});
        xml_.close();
    }

    void askNumber() {
        xml_.open("response_str", {{"ident", "response1"}, {"rcardinality", "Single"}});
        xml_.open("render_fib", {{"fibtype", "Decimal"}});
        xml_.leaf("response_label", {{"ident", "answer1"}});
        xml_.close();
        xml_.close();
    }

    void askChoice(const ChoiceField& field) { // Canvas wants positive numbers as identifiers
        xml_.open("response_lid", {{"ident", "response1"}, {"rcardinality", "Single"}});
        xml_.open("render_choice");
        for (std::size_t i = 0; i < field.options.size(); ++i) {
            xml_.open("response_label", {{"ident", std::to_string(i + 1)}});
            material(escapeHtml(field.options[i]));
            xml_.close();
        }
        xml_.close();
        xml_.close();
    }

    void wrongFeedback() {
        xml_.open("respcondition", {{"continue", "Yes"}});
        xml_.open("conditionvar");
        xml_.leaf("other");
        xml_.close();
        xml_.leaf("displayfeedback", {{"feedbacktype", "Response"}, {"linkrefid", kWrongFeedback}});
        xml_.close();
    }

    void fullScore() { xml_.element("setvar", "100", {{"action", "Set"}, {"varname", "SCORE"}}); }

    void rightNumber(const NumberField& field) {
        const XmlAttributes response{{"respident", "response1"}};
        xml_.open("respcondition", {{"continue", "No"}});
        xml_.open("conditionvar");
        xml_.open("or");
        xml_.element("varequal", answerNumber(field.value), response);
        xml_.open("and");
        xml_.element("vargte", answerNumber(field.value - field.tolerance), response);
        xml_.element("varlte", answerNumber(field.value + field.tolerance), response);
        xml_.close();
        xml_.close();
        xml_.close();
        fullScore();
        xml_.close();
    }

    void rightChoice(const ChoiceField& field) {
        xml_.open("respcondition", {{"continue", "No"}});
        xml_.open("conditionvar");
        xml_.element("varequal", std::to_string(field.answer + 1), {{"respident", "response1"}});
        xml_.close();
        fullScore();
        xml_.close();
    }

    const Quiz& quiz_;
    const std::string& name_;
    XmlText xml_;
};

std::string canvasMeta(const Quiz& quiz, const std::string& name) {
    double points = 0;
    for (const QuizItem& item : quiz.items) {
        points += pointsOf(item);
    }
    XmlText xml;
    xml.open("quiz",
             {{"identifier", name}, {"xmlns", "http://canvas.instructure.com/xsd/cccv1p0"}});
    xml.element("title", onOneLine(quiz.title));
    xml.element("quiz_type", "assignment");
    xml.element("points_possible", answerNumber(points));
    xml.close();
    return xml.take();
}

std::string canvasManifest(const std::vector<Quiz>& quizzes) {
    XmlText xml;
    xml.open("manifest", {{"identifier", "gusset"},
                          {"xmlns", "http://www.imsglobal.org/xsd/imsccv1p1/imscp_v1p1"}});
    xml.open("metadata");
    xml.element("schema", "IMS Content");
    xml.element("schemaversion", "1.1.3");
    xml.close();
    xml.leaf("organizations");
    xml.open("resources");
    for (std::size_t i = 0; i < quizzes.size(); ++i) {
        const std::string name = "quiz" + std::to_string(i + 1);
        const std::string meta = name + "/assessment_meta.xml";
        xml.open("resource", {{"identifier", name}, {"type", "imsqti_xmlv1p2"}});
        xml.leaf("file", {{"href", name + "/" + name + ".xml"}});
        xml.leaf("dependency", {{"identifierref", name + "_meta"}});
        xml.close();
        xml.open("resource",
                 {{"identifier", name + "_meta"},
                  {"type", "associatedcontent/imscc_xmlv1p1/learning-application-resource"},
                  {"href", meta}});
        xml.leaf("file", {{"href", meta}});
        xml.close();
        if (hasPicture(quizzes[i].picture)) {
            const std::string picture = canvasPicture(quizzes[i], name);
            xml.open(
                "resource",
                {{"identifier", name + "_picture"}, {"type", "webcontent"}, {"href", picture}});
            xml.leaf("file", {{"href", picture}});
            xml.close();
        }
    }
    xml.close();
    xml.close();
    return xml.take();
}

} // namespace

std::vector<PackedFile> canvasPackage(const std::vector<Quiz>& quizzes) {
    std::vector<PackedFile> files{{"imsmanifest.xml", canvasManifest(quizzes)}};
    for (std::size_t i = 0; i < quizzes.size(); ++i) {
        const std::string name = "quiz" + std::to_string(i + 1);
        files.push_back({name + "/" + name + ".xml", CanvasWriter(quizzes[i], name).questions()});
        files.push_back({name + "/assessment_meta.xml", canvasMeta(quizzes[i], name)});
        if (hasPicture(quizzes[i].picture)) {
            files.push_back({canvasPicture(quizzes[i], name), pictureBytes(quizzes[i].picture)});
        }
    }
    return files;
}

} // namespace gusset
