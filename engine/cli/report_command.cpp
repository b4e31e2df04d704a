#include "cli/report_command.hpp"

#include "cli/names.hpp"
#include "cli/verdicts.hpp"
#include "exchange/forms/outline_file.hpp"
#include "exchange/links/link.hpp"
#include "report/sheet/sheet.hpp"

namespace gusset::cli {

namespace {

Issue notOne(std::string_view option, std::string says) {
    return {IssueCode::UnknownName, std::string(option), std::move(says)};
}

Outcome<SheetChoices> sheetChoicesOf(const PhraseBook& book, const Arguments& arguments,
                                     const Truss& truss) {
    SheetChoices choices;
    const bool chosen = arguments.has("--case") || arguments.has("--combination");
    choices.loads = chosen ? choiceOf(arguments) : usualLoads(truss);
    if (arguments.has("--parts")) {
        const auto parts = partsNamed(arguments.valueOf("--parts"));
        if (!parts) {
            return Issues{notOne("--parts", "takes some of " + partNames())};
        }
        choices.parts = *parts;
    }
    if (arguments.has("--paper")) {
        const auto size = sizeNamed(arguments.valueOf("--paper"));
        if (!size) {
            return Issues{notOne("--paper", "is A4 or Letter")};
        }
        choices.size = *size;
    }
    choices.across = arguments.has("--across");
    choices.project = arguments.valueOf("--project");
    choices.author = arguments.valueOf("--author");
    choices.date = arguments.valueOf("--date");
    choices.outline = standingOutline(book, truss);
    if (arguments.has("--address")) {
        const Outcome<std::string> link = openableLink(truss, choices.loads);
        if (!link) {
            return link.issues();
        }
        choices.link = arguments.valueOf("--address") + "#" + link.value();
    }
    return choices;
}

} // namespace

Answer answerReport(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Truss& truss = reading.truss;
    const Outcome<SheetChoices> choices = sheetChoicesOf(book, arguments, truss);
    if (!choices) {
        return {Exit::BadInput, {}, choices.issues()};
    }
    const Solution solution = solve(truss, choices.value().loads);
    const Exit exit = exitOf(solution);
    if (exit == Exit::BadInput) {
        return {exit, {}, solution.errors};
    }
    const std::string text = arguments.has("--csv") ? sheetCsv({book, truss}, choices.value())
                                                    : sheetHtml({book, truss}, choices.value(),
                                                                embeddedStyles(choices.value()));
    return {exit, text, notesOfMechanism(solution.status, solution.solved)};
}

} // namespace gusset::cli
