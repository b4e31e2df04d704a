#include "desk/given.hpp"

#include "classroom/exercise/answer_names.hpp"
#include "exchange/files/model_file.hpp"
#include "report/classroom/question_figure.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/table.hpp"
#include "report/sheet/sheet_model.hpp"
#include "report/sketch/sketch_svg.hpp"

#include <optional>

namespace gusset {

namespace {

void writeFigure(JsonText& out, const Writer& writer, const LoadChoice& loads,
                 const std::vector<Question>& questions) {
    const std::optional<Sketch> figure = questionFigure(writer, loads, questions);
    out.text("figure", figure ? svgToPointAt(*figure) : std::string());
    std::string tables;
    for (const TextTable& table : modelTables(writer)) {
        tables += table.rows.empty() ? std::string() : tableHtml(table);
    }
    out.text("given", tables);
}

void writeMembers(JsonText& out, const Truss& truss) {
    const std::vector<std::string> names = answerNames(truss);
    out.key("members");
    out.beginArray();
    for (std::size_t i = 0; i < names.size(); ++i) {
        const Member& member = truss.members[i];
        out.beginObject();
        out.text("of", names[i]);
        out.text("label", memberName(truss, {static_cast<int>(i)}));
        out.texts("ends", {truss.joints[member.a.at()].label, truss.joints[member.b.at()].label});
        out.endObject();
    }
    out.endArray();
}

} // namespace

void writeGiven(JsonText& out, const Writer& writer, const LoadChoice& loads,
                const std::vector<Question>& questions) {
    const Truss& truss = writer.truss;
    out.text("title", truss.title);
    out.text("model", writeModel(truss, Layout::Compact));
    writeFigure(out, writer, loads, questions);
    writeMembers(out, truss);
    std::vector<std::string> joints;
    for (const Joint& joint : truss.joints) {
        joints.push_back(joint.label);
    }
    out.allTexts("joints", joints);
    out.text("forceUnit", symbolOf(truss.units.force));
    out.text("lengthUnit", symbolOf(truss.units.displacement));
}

std::string refusal(const std::vector<std::string>& faults) {
    JsonText out(Layout::Compact);
    out.beginObject();
    out.texts("faults", faults);
    out.endObject();
    return out.take();
}

std::vector<std::string> faultSentences(const PhraseBook& book, const Issues& issues) {
    std::vector<std::string> sentences;
    for (const Issue& issue : issues) {
        sentences.push_back(faultSentence(book, issue));
    }
    return sentences;
}

std::string refusalOf(const PhraseBook& book, const Issues& issues) {
    return refusal(faultSentences(book, issues));
}

} // namespace gusset
