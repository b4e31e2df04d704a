#include "cli/working_command.hpp"

#include "cli/names.hpp"
#include "cli/verdicts.hpp"
#include "hand/stages/explain.hpp"
#include "hand/stages/sections.hpp"
#include "phrases/working/paper.hpp"
#include "report/derivation/force_method_text.hpp"
#include "report/derivation/force_polygon_sketch.hpp"
#include "report/derivation/force_polygon_text.hpp"
#include "report/derivation/influence_by_hand_text.hpp"
#include "report/derivation/truss_figures.hpp"
#include "report/derivation/unit_load_text.hpp"
#include "report/derivation/working_text.hpp"
#include "report/paper/document.hpp"
#include "report/results/influence_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"
#include "report/sketch/sketch_svg.hpp"

namespace gusset::cli {

namespace {

constexpr double kBetweenSketches = 24; // px

// What a derivation is made of, before it is written in the form asked for.
struct Derivation {
    Exit exit = Exit::Answered;
    WorkingDocument document{};
    Issues faults{};
    std::string text{}; // where it is not simply that of the passages
};

RichLine namesOf(const Writer& writer, const std::vector<MemberId>& members) {
    std::vector<RichLine> names;
    for (const MemberId member : members) {
        names.push_back(plainLine(memberName(writer.truss, member)));
    }
    return listOf(writer, names);
}

// The truss as given, drawn from a working of it, which knows its supports and loads.
void drawGiven(const Writer& writer, const Working& working, const std::vector<MemberId>& asked,
               WorkingDocument& document) {
    document.given = givenFigure(notationOf(writer, working), asked);
}

// A working's summary is among the results, with a figure of all forces.
void addWorking(const Writer& writer, const Working& working, WorkingDocument& document) {
    document.working = workingPassages(writer, working);
    const bool sums = !working.steps.empty() && working.steps.back().kind == StepKind::Summary;
    if (!sums) {
        return;
    }
    document.results.push_back(std::move(document.working.back()));
    document.working.pop_back();
    const Notation notation = notationOf(writer, working);
    if (const auto forces = finalForces(notation)) {
        document.answer = answerFigure(notation, *forces);
    }
}

// The whole working, or the part asked for.
Outcome<Derivation> stepByStep(const Writer& writer, const Arguments& arguments,
                               const Solution& solution) {
    const Truss& truss = writer.truss;
    const LoadChoice choice = choiceOf(arguments);
    Derivation made{.exit = exitOf(solution)};
    const Working whole = workOut(truss, choice, solution);
    Working working = whole;
    std::vector<MemberId> asked;
    if (arguments.has("--member")) {
        const Outcome<MemberId> member = memberNamed(truss, arguments.valueOf("--member"));
        if (!member) {
            return member.issues();
        }
        asked = {member.value()};
        working = explain(truss, choice, solution, whole,
                          {.kind = SymbolKind::MemberForce, .member = member.value()});
        made.document.sought =
            say(writer, phrase::kSoughtMember, {{"member", namesOf(writer, asked)}});
    } else if (arguments.has("--section")) {
        const auto cut = membersNamed(truss, arguments.valueOf("--section"));
        if (!cut) {
            return cut.issues();
        }
        asked = cut.value();
        working = workCut(truss, choice, solution, asked);
        made.document.sought =
            say(writer, phrase::kSoughtByCut, {{"members", namesOf(writer, asked)}});
    } else {
        made.document.sought = say(writer, phrase::kSoughtAll);
    }
    drawGiven(writer, whole, asked, made.document);
    addWorking(writer, working, made.document);
    return made;
}

Outcome<Derivation> displacement(const Writer& writer, const Arguments& arguments,
                                 const Solution& solution) {
    const Truss& truss = writer.truss;
    const Outcome<JointAxis> asked = jointAxisNamed(truss, arguments.valueOf("--displacement"));
    if (!asked) {
        return asked.issues();
    }
    const auto [joint, axis] = asked.value();
    const LoadChoice choice = choiceOf(arguments);
    Derivation made{.exit = exitOf(solution)};
    const Working working = workOut(truss, choice, solution);
    drawGiven(writer, working, {}, made.document);
    made.document.sought =
        say(writer, axis == DisplacementAxis::X ? phrase::kSoughtAcross : phrase::kSoughtUpright,
            {{"joint", truss.joints[joint.at()].label}});
    made.document.working = {
        unitLoadPassage(writer, unitLoadTable(truss, choice, solution, joint, axis))};
    return made;
}

Derivation ofColumn(const PhraseBook& book, const Truss& truss, const Working& working, Exit exit) {
    Derivation made{.exit = exit};
    made.document.sought = say(book, phrase::kSoughtAll);
    drawGiven({book, truss}, working, {}, made.document);
    addWorking({book, truss}, working, made.document);
    return made;
}

FinalForces finalForcesOf(const ForceMethod& method) {
    FinalForces forces;
    for (const ForceMethodRow& row : method.rows) {
        forces.members.push_back(row.force);
    }
    for (const ForceMethodReaction& reaction : method.reactions) {
        forces.reactions.push_back(reaction.force);
    }
    return forces;
}

// The whole method, or the working behind one column of its table: N0, n1 or n2.
Outcome<Derivation> byForceMethod(const Writer& writer, const Arguments& arguments,
                                  const Solution& solution) {
    const LoadChoice choice = choiceOf(arguments);
    const ForceMethod method = forceMethod(writer.truss, choice, solution);
    const bool complete = method.end == ForceMethodEnd::Complete;
    if (!arguments.has("--released") || !complete) {
        Derivation made{.exit = exitOf(solution)};
        made.document.sought = say(writer, phrase::kSoughtAll);
        made.document.working = forceMethodPassages(writer, method);
        const Working working = workOut(writer.truss, choice, solution);
        drawGiven(writer, working, {}, made.document);
        if (complete) {
            made.document.answer = answerFigure(notationOf(writer, working), finalForcesOf(method));
        }
        return made;
    }
    const std::string column = arguments.valueOf("--released");
    if (column == "N0") {
        return ofColumn(writer, method.givenTruss, method.givenWorking, exitOf(solution));
    }
    for (std::size_t i = 0; i < method.releases.size(); ++i) {
        if (column == "n" + std::to_string(i + 1)) {
            return ofColumn(writer, method.unitTrusses[i], method.unitWorkings[i],
                            exitOf(solution));
        }
    }
    return Issues{
        {IssueCode::UnknownName, column,
         "is no column of the force method here: ask for N0, or n1 of the first redundant"}};
}

bool wantsForceMethod(const Arguments& arguments, const Solution& solution) {
    const bool part = arguments.has("--member") || arguments.has("--section");
    return arguments.has("--force-method") || arguments.has("--released") ||
           (solution.status == Status::Indeterminate && !part);
}

// An SVG has no place for the reason, which goes to standard error.
Answer noPicture(const Writer& writer, const ForcePolygon& polygon) {
    std::string says = forcePolygonText(writer, polygon);
    says.erase(says.find_last_not_of('\n') + 1);
    return {Exit::Mechanism, {}, {{IssueCode::NotComputed, "--polygon", std::move(says)}}};
}

// The force polygon, and the truss with its spaces lettered beside it.
Answer polygonPicture(const Writer& writer, const Arguments& arguments, const Solution& solution) {
    const LoadChoice choice = choiceOf(arguments);
    const ForcePolygon polygon = forcePolygon(writer.truss, choice, solution);
    if (polygon.refusal != PolygonRefusal::None) {
        return noPicture(writer, polygon);
    }
    const Working working = workOut(writer.truss, choice, solution);
    const Sketch spaces = spacesSketch(notationOf(writer, working), polygon);
    const Sketch lines = polygonDrawing(writer, polygon, {}).sketch;
    return {exitOf(solution), svgOf(sideBySide(spaces, lines, kBetweenSketches)), {}};
}

Derivation byPolygon(const Writer& writer, const Arguments& arguments, const Solution& solution) {
    const LoadChoice choice = choiceOf(arguments);
    const ForcePolygon polygon = forcePolygon(writer.truss, choice, solution);
    Derivation made{.exit = exitOf(solution),
                    .document = {},
                    .faults = notesOfMechanism(solution.status, solution.solved),
                    .text = forcePolygonText(writer, polygon)};
    const Working working = workOut(writer.truss, choice, solution);
    const Notation notation = notationOf(writer, working);
    drawGiven(writer, working, {}, made.document);
    made.document.sought = say(writer, phrase::kSoughtPolygon);
    Passage passage = forcePolygonPassage(writer, polygon);
    if (polygon.refusal == PolygonRefusal::None) {
        passage.parts.insert(passage.parts.begin(), {spacesSketch(notation, polygon),
                                                     polygonDrawing(writer, polygon, {}).sketch});
        if (const auto forces = finalForces(notation)) {
            made.document.answer = answerFigure(notation, *forces);
        }
    }
    made.document.working = {std::move(passage)};
    return made;
}

Outcome<Derivation> derivation(const Writer& writer, const Arguments& arguments,
                               const Solution& solution) {
    if (arguments.has("--displacement")) {
        return displacement(writer, arguments, solution);
    }
    if (arguments.has("--polygon")) {
        return byPolygon(writer, arguments, solution);
    }
    return wantsForceMethod(arguments, solution) ? byForceMethod(writer, arguments, solution)
                                                 : stepByStep(writer, arguments, solution);
}

Answer written(const Writer& writer, const Arguments& arguments, Derivation made,
               std::vector<std::string> warnings) {
    WorkingDocument& document = made.document;
    document.resultsFirst = arguments.has("--answers-first");
    if (arguments.has("--html")) {
        document.warnings = std::move(warnings);
        return {made.exit, documentHtml(writer, document), std::move(made.faults)};
    }
    std::vector<Passage>& passages = document.working;
    passages.insert(document.resultsFirst ? passages.begin() : passages.end(),
                    document.results.begin(), document.results.end());
    const std::string text = made.text.empty() ? passagesText(passages) : made.text;
    return withSentences({made.exit, text, std::move(made.faults)}, warnings);
}

// The loads of the model do not act while one of 1 moves along.
Truss withoutLoads(const Truss& truss) {
    Truss bare = truss;
    bare.loads.clear();
    return bare;
}

Derivation ofInfluence(const Writer& writer, const Effect& effect) {
    Derivation made;
    made.document.sought =
        say(writer, phrase::kSoughtInfluence, {{"effect", effectName(writer, effect)}});
    const Truss bare = withoutLoads(writer.truss);
    drawGiven({writer.book, bare}, workOut(bare, {}, solve(bare)), {}, made.document);
    return made;
}

// Bad input, or a truss that moves.
Answer notWorked(const Writer& writer, const Arguments& arguments, const Effect& effect,
                 const Issues& faults) {
    if (exitOf(faults) != Exit::Mechanism || !arguments.has("--html")) {
        return noAnswer(writer.book, arguments, writer.truss, faults);
    }
    Derivation made = ofInfluence(writer, effect);
    made.exit = Exit::Mechanism;
    made.faults = faults;
    return written(writer, arguments, std::move(made), verdict(writer, unsolved(writer.truss)));
}

Answer answerInfluenceByHand(const PhraseBook& book, const Arguments& arguments,
                             const Reading& given) {
    if (!arguments.has("--path")) {
        return {Exit::WrongUse,
                {},
                {{IssueCode::Missing, "--influence", "needs the path of the load: --path A,B,C"}}};
    }
    const Reading reading = withoutLooseJoints(given);
    const Truss& truss = reading.truss;
    const Outcome<std::vector<JointId>> path = pathNamed(truss, arguments.valueOf("--path"));
    if (!path) {
        return {Exit::BadInput, {}, path.issues()};
    }
    const Outcome<Effect> effect = effectNamed(truss, arguments.valueOf("--influence"));
    if (!effect) {
        return {Exit::BadInput, {}, effect.issues()};
    }
    const auto analysis = analysePath(truss, path.value());
    if (!analysis) {
        return notWorked({book, truss}, arguments, effect.value(), analysis.issues());
    }
    const InfluenceByHand line = influenceByHand(truss, path.value(), effect.value());
    const auto own = reading.notes.begin() + static_cast<std::ptrdiff_t>(given.notes.size());
    Derivation made = ofInfluence({book, truss}, effect.value());
    made.faults = {own, reading.notes.end()};
    made.document.working = influencePassages({book, truss}, line);
    return written({book, truss}, arguments, std::move(made),
                   trustSentences({book, truss}, analysis.value().reliance));
}

} // namespace

Answer answerWorking(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Writer writer{book, reading.truss};
    const Solution solution = solved(reading, choiceOf(arguments));
    if (const Exit exit = exitOf(solution); exit == Exit::BadInput) {
        return {exit, {}, solution.errors};
    }
    const bool isDrawn = arguments.has("--svg");
    if (isDrawn && !arguments.has("--polygon")) {
        return {Exit::WrongUse,
                {},
                {{IssueCode::Missing, "working",
                  "draws as SVG with --polygon only: its steps come as --html"}}};
    }
    if (arguments.has("--influence")) { // independent of the model's loads
        return answerInfluenceByHand(book, arguments, reading);
    }
    const std::vector<std::string> warnings =
        solution.solved ? workingSentences(writer, solution) : std::vector<std::string>{};
    if (isDrawn) {
        Answer picture = polygonPicture(writer, arguments, solution);
        if (!picture.text.empty()) {
            picture.faults = joined(std::move(picture.faults), notesOnForces(warnings));
        }
        return picture;
    }
    Outcome<Derivation> made = derivation(writer, arguments, solution);
    if (!made) {
        return {Exit::BadInput, {}, made.issues()};
    }
    return written(writer, arguments, std::move(made).value(), warnings);
}

} // namespace gusset::cli
