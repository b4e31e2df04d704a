#include "report/sheet/sheet.hpp"

#include "phrases/results/checks.hpp"
#include "phrases/results/lists.hpp"
#include "phrases/results/sheet.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/paper.hpp"
#include "report/derivation/forces_passages.hpp"
#include "report/derivation/truss_figures.hpp"
#include "report/paper/page_html.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"
#include "report/sheet/sheet_head.hpp"
#include "report/sheet/sheet_model.hpp"
#include "report/sheet/sheet_results.hpp"
#include "report/sheet/sheet_table.hpp"
#include "report/sketch/sketch_svg.hpp"
#include "report/text/html.hpp"

#include <algorithm>
#include <optional>

namespace gusset {

namespace {

// In force units; 0 for what is zero to working accuracy.
FinalForces forcesOf(const Truss& truss, const Solution& solution) {
    const double newton = toNewton(truss.units.force);
    const auto inUnits = [&](const std::vector<double>& forces) {
        std::vector<double> values;
        for (const double force : forces) {
            values.push_back(isZero(solution, force) ? 0 : force / newton);
        }
        return values;
    };
    return {inUnits(solution.forces), inUnits(solution.reactions)};
}

// A drawing needs no steps of a working, only its truss and its loads.
Working drawnFrom(const Truss& truss, const LoadChoice& choice) {
    Working working;
    working.structure = structureOf(truss);
    working.loads = jointLoads(truss, working.structure, choice);
    for (Vec2& load : working.loads) {
        load = (1 / toNewton(truss.units.force)) * load;
    }
    return working;
}

// "1: AB, 16.67 C", for each member.
std::string numbersHtml(const Writer& writer, const Solution& solution) {
    std::string html = "<ul class=\"numbers\">\n";
    int number = 0;
    for (const ForceRow& row : forceRows(writer, solution)) {
        const RichLine force = row.sense == Sense::Zero
                                   ? plainLine(row.letter)
                                   : say(writer, phrase::kForceWithLetter,
                                         {{"value", row.size}, {"letter", row.letter}});
        html +=
            "<li>" +
            escapeHtml(sayPlain(writer, phrase::kNumberOfMember,
                                {{"number", ++number}, {"member", row.name}, {"force", force}})) +
            "</li>\n";
    }
    return html + "</ul>\n";
}

// A drawing, or the reason why there is none.
struct SheetFigure {
    std::string caption;
    std::optional<FullFigure> figure;
    std::string below{}; // what its numbers mean
};

std::string figurePart(const Writer& writer, const SheetFigure& it, bool half) {
    if (!it.figure) {
        return paragraphsHtml({sayPlain(writer, writer.truss.joints.empty() ? phrase::kNothingToDraw
                                                                            : phrase::kNotDrawn)});
    }
    std::string says = escapeHtml(it.caption);
    if (it.figure->numbered) {
        says += " " + escapeHtml(sayPlain(writer, phrase::kDrawnNumbers));
    }
    if (!it.figure->complete) {
        says += " " + escapeHtml(sayPlain(writer, phrase::kDrawnIncomplete));
    }
    return (half ? "<figure class=\"half\">\n" : "<figure>\n") + std::string("<figcaption>") +
           says + "</figcaption>\n" + svgOf(it.figure->sketch) + "</figure>\n" + it.below;
}

SheetFigure loadDrawing(const Writer& writer, const LoadChoice& choice, const Notation& notation,
                        const FigureSpace& space) {
    return {sayPlain(writer, phrase::kDrawnLoads, {{"loads", loadsName(writer, choice)}}),
            loadsFigure(notation, space)};
}

SheetFigure forceDrawing(const Writer& writer, const SheetLoads& loads, const Notation& notation,
                         const FigureSpace& space) {
    const std::string unit = symbolOf(writer.truss.units.force);
    const std::string signs = unit.empty() ? sayPlain(writer, phrase::kForcesSigns)
                                           : sayPlain(writer, phrase::kForcesIn, {{"unit", unit}});
    SheetFigure made{sayPlain(writer, phrase::kDrawnForces,
                              {{"loads", loadsName(writer, loads.shown)}, {"signs", signs}}),
                     forcesFigure(notation, forcesOf(writer.truss, loads.solution), space)};
    if (made.figure && made.figure->numbered) {
        made.below = numbersHtml(writer, loads.solution);
    }
    return made;
}

std::vector<SheetFigure> figuresIn(const Writer& writer, const SheetChoices& choices,
                                   const SheetLoads& loads, const FigureSpace& space) {
    const Working working = drawnFrom(writer.truss, choices.loads);
    Notation notation = notationOf(writer, working);
    std::vector<SheetFigure> figures;
    if (choices.has(SheetPart::LoadDrawing)) {
        figures.push_back(loadDrawing(writer, choices.loads, notation, space));
    }
    if (choices.has(SheetPart::ForceDrawing) && loads.solution.solved) {
        notation.numbers = drawingStyleOf(writer.truss, loads.solution);
        figures.push_back(forceDrawing(writer, loads, notation, space));
    }
    return figures;
}

// Letters of 13 px come out as 6 pt or more.
bool canBeReadWithin(const SheetFigure& it, double width) {
    constexpr double kMostShrunk = 1.6;
    return it.figure && it.figure->complete && !it.figure->numbered &&
           it.figure->sketch.width <= kMostShrunk * width;
}

// Across the paper two drawings stand beside each other, if they can still be read.
std::string drawings(const Writer& writer, const SheetChoices& choices, const SheetLoads& loads) {
    if (loads.solution.status == Status::Invalid) {
        return {}; // the verdict says what is wrong
    }
    constexpr double kBetween = 6 * 96 / 25.4; // px, as in sheet.css
    const double half = (widthOf(choices) - kBetween) / 2;
    std::vector<SheetFigure> figures;
    bool beside = choices.across;
    if (beside) {
        figures = figuresIn(writer, choices, loads, {half, half});
        beside = std::all_of(figures.begin(), figures.end(),
                             [&](const SheetFigure& it) { return canBeReadWithin(it, half); });
    }
    if (!beside) {
        constexpr double kHigh = 215; // px, so that a page has room for two
        figures = figuresIn(writer, choices, loads, {widthOf(choices), kHigh});
    }
    std::string html;
    for (const SheetFigure& figure : figures) {
        html += figurePart(writer, figure, beside);
    }
    return html;
}

std::string workingPart(const Writer& writer, const SheetLoads& loads) {
    return "<p>" + escapeHtml(loadsName(writer, loads.shown)) + "</p>\n" +
           passagesHtml(passagesOfForces(writer, loads.shown, loads.solution));
}

std::string part(const PhraseBook& book, Phrase<> heading, const std::string& html) {
    return html.empty()
               ? html
               : "<div class=\"part\">\n" + sheetHeading(book, heading) + html + "</div>\n";
}

std::string resultParts(const Writer& writer, const SheetChoices& choices,
                        const SheetLoads& loads) {
    std::string html;
    if (choices.has(SheetPart::Forces)) {
        html += part(writer, phrase::kSheetForces, forcesHtml(writer, loads, choices.across));
    }
    if (choices.has(SheetPart::Displacements)) {
        html += part(writer, phrase::kHeadDisplacements, displacementsHtml(writer, loads));
    }
    if (choices.has(SheetPart::Checks)) {
        html += part(writer, phrase::kCheckCaption, checksPartHtml(writer, loads, choices.across));
    }
    if (choices.has(SheetPart::Working)) {
        html += part(writer, phrase::kPartWorking, workingPart(writer, loads));
    }
    return html;
}

// What kind of truss it is; then, as it may depend on the loads, under which the rest holds.
std::vector<std::string> verdictUnder(const Writer& writer, const SheetLoads& loads) {
    const std::vector<std::string> says = verdict(writer, loads.solution);
    std::string rest;
    for (std::size_t i = 1; i < says.size(); ++i) {
        rest += (rest.empty() ? "" : " ") + says[i];
    }
    std::vector<std::string> lines{says.front()};
    if (!rest.empty()) {
        lines.push_back(sayPlain(writer, phrase::kSaidUnder,
                                 {{"loads", loadsName(writer, loads.shown)}, {"says", rest}}));
    }
    if (!loads.solution.solved && !writer.truss.joints.empty()) {
        lines.push_back(sayPlain(writer, phrase::kHenceNoForces));
    }
    return lines;
}

std::string bodyOf(const Writer& writer, const SheetChoices& choices) {
    const SheetLoads loads = sheetLoads(writer.truss, choices.loads);
    const bool isRead = loads.solution.status != Status::Invalid;
    std::string html = sheetHead(writer, choices) + paragraphsHtml(verdictUnder(writer, loads)) +
                       "</header>\n" + drawings(writer, choices, loads);
    if (choices.has(SheetPart::Model)) {
        html += part(writer, phrase::kSheetModel, sheetTablesHtml(writer, modelTables(writer)));
    }
    if (choices.has(SheetPart::Combinations)) {
        html += part(writer, phrase::kSheetLoads, combinationsHtml(writer, choices.outline));
    }
    return html +
           (isRead && loads.solution.solved ? resultParts(writer, choices, loads) : std::string{});
}

} // namespace

std::string sheetHtml(const Writer& writer, const SheetChoices& choices,
                      const SheetStyles& styles) {
    return pageHtml(writer, {styles.typeface, styles.sheet, pageRule(writer, choices),
                             bodyOf(writer, choices)});
}

} // namespace gusset
