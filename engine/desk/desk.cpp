#include "desk/desk.hpp"

#include "classroom/exercise/answer_names.hpp"
#include "classroom/exercise/key.hpp"
#include "classroom/exercise/typed_answer.hpp"
#include "desk/building.hpp"
#include "desk/given.hpp"
#include "desk/guidance.hpp"
#include "desk/judgement.hpp"
#include "desk/request.hpp"
#include "exchange/exercises/answers_file.hpp"
#include "exchange/exercises/equations_file.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/json/json_text.hpp"
#include "report/classroom/question_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/sketch/sketch_svg.hpp"
#include "report/text/math_ml.hpp"

#include <algorithm>

namespace gusset {

namespace {

// The words of the page for each kind of question, in the order of the variant.
constexpr std::array<std::string_view, 7> kKinds{"reactions",    "forces",    "zero", "determinacy",
                                                 "displacement", "influence", "steps"};

// Of a model without a question there is no more to show than what is given.
std::string openedForLooking(const PhraseBook& book, const Truss& truss) {
    JsonText out(Layout::Compact);
    out.beginObject();
    out.yes("asksNothing");
    writeGiven(out, {book, truss}, EveryLoad{}, {});
    out.endObject();
    return out.take();
}

class Desk {
public:
    Desk(const PhraseBook& book, const DeskRequest& request)
        : writer_{book, request.truss}, request_(request) {}

    Outcome<std::string> reply() {
        out_.beginObject();
        Issues faults;
        if (request_.wants == "open") {
            faults = open();
        } else if (request_.wants == "answers") {
            const std::string answers = answersText(request_.truss, request_.answers);
            out_.text("answers", answers);
            out_.text("link", answersLink(answers));
        } else if (request_.wants == "typed") {
            faults = writeTyped();
        } else if (request_.wants == "cut") {
            writeCut();
        } else if (request_.wants == "check") {
            faults = check();
        } else if (request_.wants == "equations") {
            faults = writeKept();
        } else if (const std::optional<BodyWork> work = bodyWork()) {
            const Outcome<DeskBody> body = deskBody(request_, request_.body);
            faults = body ? (this->**work)(body.value()) : body.issues();
        }
        if (!faults.empty()) {
            return faults;
        }
        out_.endObject();
        return out_.take();
    }

private:
    Issues open() {
        writeGiven(out_, writer_, request_.exercise->loads, request_.exercise->questions);
        writeReactions();
        if (request_.truss.classSettings.moments == MomentSense::Clockwise) {
            out_.yes("clockwise");
        }
        const Outcome<AnswerKey> key = keyOf(request_.truss, *request_.exercise);
        if (!key) {
            return key.issues(); // a question without an answer is not put to anyone
        }
        out_.text("mark", exerciseMark(request_.truss));
        out_.whole("variant", request_.exercise->variant);
        out_.text("text", request_.exercise->text);
        out_.text("hints", kHintWords[static_cast<std::size_t>(request_.exercise->hints)]);
        if (request_.exercise->checking == Checking::AtOnce) {
            out_.yes("checksAtOnce");
        }
        writeQuestions();
        return {};
    }

    void writeReactions() {
        Working nothing;
        nothing.structure = structureOf(request_.truss);
        const Notation notation = notationOf(writer_, nothing);
        const std::vector<std::string> reactions = reactionNames(request_.truss);
        out_.key("reactions");
        out_.beginArray();
        for (std::size_t i = 0; i < reactions.size(); ++i) {
            const Restraint& restraint = nothing.structure.restraints[i];
            Symbol symbol;
            symbol.kind = SymbolKind::Reaction;
            symbol.restraint = {static_cast<int>(i)};
            symbol.joint = restraint.joint;
            out_.beginObject();
            out_.text("of", reactions[i]);
            out_.text("joint", request_.truss.joints[restraint.joint.at()].label);
            out_.text("label", htmlOf(symbolRuns(notation, symbol)));
            out_.text("plus", directionArrow(restraint.along));
            out_.text("minus", directionArrow(-1.0 * restraint.along));
            out_.endObject();
        }
        out_.endArray();
    }

    void writeQuestions() {
        const std::vector<std::string> names = answerNames(request_.truss);
        out_.objects("questions", request_.exercise->questions, [&](const Question& question) {
            out_.text("what", kKinds[question.what.index()]);
            out_.text("says", questionText(writer_, question));
            if (question.marks != 0) {
                out_.number("marks", question.marks);
            }
            if (const auto* forces = std::get_if<AskForces>(&question.what)) {
                std::vector<std::string> members;
                for (const MemberId member : forces->members) {
                    members.push_back(names[member.at()]);
                }
                out_.texts("members", members);
            }
        });
    }

    Outcome<WrittenForce> writtenFor(std::string_view what) const {
        if (what == "displacement") {
            return readWrittenLength(request_.typed, request_.truss.units.displacement);
        }
        return what == "influence" ? readWrittenNumber(request_.typed)
                                   : readWritten(request_.typed, request_.truss.units.force);
    }

    Issues writeTyped() {
        if (request_.typedFor == "determinacy") {
            const Outcome<int> count = readWrittenCount(request_.typed);
            if (!count) {
                return count.issues();
            }
            out_.whole("count", count.value());
            return {};
        }
        const Outcome<WrittenForce> written = writtenFor(request_.typedFor);
        if (!written) {
            return written.issues();
        }
        if (written.value().size) {
            out_.number("size", *written.value().size);
        }
        if (written.value().sign) {
            out_.whole("sign", *written.value().sign);
        }
        return {};
    }

    // Only as the exercise allows it, and nothing that gives an answer away.
    Issues check() {
        if (request_.exercise->checking == Checking::AtTheEnd) {
            return {};
        }
        const Outcome<AnswerKey> key = keyOf(request_.truss, *request_.exercise);
        if (!key) {
            return key.issues();
        }
        const Marking marking =
            MarkingScheme(request_.truss, *request_.exercise, key.value()).mark(request_.answers);
        const std::vector<MarkedForce>& forces = marking.forces;
        const std::vector<std::string> names = allNames();
        std::vector<WrittenForce> written = request_.answers.reactions;
        written.insert(written.end(), request_.answers.forces.begin(),
                       request_.answers.forces.end());
        out_.key("rows");
        out_.beginArray();
        for (std::size_t i = 0; i < forces.size(); ++i) {
            const std::string says = checkText(writer_, forces[i], written[i], request_.answers);
            if (!says.empty() && !isBlank(written[i])) {
                out_.beginObject();
                out_.text("of", names[i]);
                out_.text("says", says);
                if (isRight(forces[i].verdict)) {
                    out_.yes("right");
                }
                out_.endObject();
            }
        }
        out_.endArray();
        out_.objects("questions", checkedQuestions(writer_, request_, key.value(), marking),
                     [&](const CheckedQuestion& checked) {
                         out_.whole("question", static_cast<int>(checked.question));
                         out_.text("says", checked.says);
                         if (checked.isRight) {
                             out_.yes("right");
                         }
                     });
        return {};
    }

    // What is asked of a body.
    using BodyWork = Issues (Desk::*)(const DeskBody&);
    std::optional<BodyWork> bodyWork() const {
        return request_.wants == "stand"      ? std::optional<BodyWork>(&Desk::writeStanding)
               : request_.wants == "hint"     ? std::optional<BodyWork>(&Desk::writeHint)
               : request_.wants == "body"     ? std::optional<BodyWork>(&Desk::writeBody)
               : request_.wants == "equation" ? std::optional<BodyWork>(&Desk::judgeEquation)
                                              : std::nullopt;
    }

    Issues writeStanding(const DeskBody& body) {
        out_.text("says", standingText(writer_, request_, body));
        return {};
    }

    Issues writeBody(const DeskBody& body) {
        const std::optional<Sketch> sketch =
            practiceSketch(notationOf(writer_, body), body.part, body.own,
                           request_.isNarrow ? SketchPaper::Column : SketchPaper::Page);
        out_.text("figure", sketch ? svgToPointAt(*sketch) : std::string());
        out_.objects("forces", forcesSaid(writer_, body), [&](const ForceSaid& force) {
            out_.text("says", force.says);
            out_.text("html", force.html);
            out_.text("name", force.name);
            out_.text("label", force.label);
            if (!force.angle.empty()) {
                out_.text("angle", force.angle);
            }
        });
        return {};
    }

    void writeCut() {
        const CutSaid cut = cutSaid(writer_, request_);
        out_.text("says", cut.says);
        out_.objects("parts", cut.parts, [&](const CutSaid::Part& part) {
            out_.text("part", part.joint);
            out_.text("says", part.says);
        });
    }

    // Those that came with the answers.
    Issues writeKept() {
        out_.key("equations");
        out_.beginArray();
        for (const WrittenEquation& written : request_.answers.equations) {
            const Outcome<KeptEquation> kept = keptEquation(writer_, request_, written);
            if (!kept) {
                return kept.issues();
            }
            out_.beginObject();
            out_.text("body", kept.value().body);
            out_.text("html", kept.value().html);
            out_.endObject();
        }
        out_.endArray();
        return {};
    }

    Issues judgeEquation(const DeskBody& body) {
        const Outcome<EquationSaid> said = equationSaid(writer_, request_, body);
        if (!said) {
            return said.issues();
        }
        out_.texts("html", said.value().html);
        writeEquations(request_.truss, {said.value().written}, out_);
        out_.text("says", said.value().says);
        out_.objects("terms", said.value().terms, [&](const TermSaid& term) {
            out_.text("says", term.says);
            if (term.right) {
                out_.yes("right");
            }
        });
        return {};
    }

    // Of reactions, then members: as a marking has them.
    std::vector<std::string> allNames() const {
        std::vector<std::string> names = reactionNames(request_.truss);
        const std::vector<std::string> members = answerNames(request_.truss);
        names.insert(names.end(), members.begin(), members.end());
        return names;
    }

    // Never more than the exercise allows.
    Issues writeHint(const DeskBody& body) {
        const int most = static_cast<int>(request_.exercise->hints);
        const int level = std::min(request_.level, most);
        out_.texts("lines", level > 0 ? hintHtml(writer_, request_, body, level)
                                      : std::vector<std::string>{});
        if (level < most) {
            out_.yes("more");
        }
        return {};
    }

    Writer writer_;
    const DeskRequest& request_;
    JsonText out_{Layout::Compact};
};

} // namespace

std::string deskReply(const PhraseBook& book, std::string_view json) {
    const Outcome<DeskRequest> request = readRequest(json);
    if (!request) {
        return refusalOf(book, request.issues());
    }
    if (!request.value().exercise) {
        return request.value().wants == "open"
                   ? openedForLooking(book, request.value().truss)
                   : refusalOf(book, readExercise(request.value().truss).issues());
    }
    const Outcome<std::string> reply = Desk(book, request.value()).reply();
    return reply ? reply.value() : refusalOf(book, reply.issues());
}

} // namespace gusset
