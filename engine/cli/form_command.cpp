#include "cli/form_command.hpp"

#include "cli/verdicts.hpp"
#include "core/csv.hpp"
#include "core/number.hpp"
#include "exchange/forms/outline_file.hpp"

#include <algorithm>

namespace gusset::cli {

namespace {

// "G=permanent,S=snow" on top of what the model says.
Outcome<std::vector<LoadCase>> kindsOf(const Arguments& arguments, std::vector<LoadCase> cases) {
    const std::string typed = arguments.valueOf("--kinds");
    for (std::size_t at = 0; at < typed.size();) {
        const std::size_t end = std::min(typed.find(',', at), typed.size());
        const std::string part = typed.substr(at, end - at);
        at = end + 1;
        const std::size_t equals = part.rfind('=');
        const std::string word = equals == std::string::npos ? "" : part.substr(equals + 1);
        if (!actionNamed(word)) {
            return Issue{IssueCode::OutOfRange, "--kinds",
                         "takes cases and what they stand for: G=permanent,S=snow; kinds are "
                         "permanent, imposed-a to imposed-h, snow, snow-high and wind"};
        }
        std::erase_if(cases, [&](const LoadCase& it) { return it.id == part.substr(0, equals); });
        cases.push_back({part.substr(0, equals), word, {}});
    }
    return cases;
}

// One line a combination, one column a case.
std::string tableOf(const Truss& truss, const std::vector<bool>& governs) {
    const std::vector<std::string> cases = caseNames(truss);
    std::string head = "combination,rule";
    for (const std::string& id : cases) {
        head += "," + csvTextCell(id);
    }
    std::string table = csvHead(head + ",governs a member");
    for (std::size_t i = 0; i < truss.combinations.size(); ++i) {
        const Combination& one = truss.combinations[i];
        table += csvTextCell(one.id) + "," + csvTextCell(one.by);
        for (const std::string& id : cases) {
            const auto found = std::find_if(one.factors.begin(), one.factors.end(),
                                            [&](const auto& it) { return it.first == id; });
            table += "," + (found == one.factors.end() ? "0" : significantNumber(found->second, 6));
        }
        table += governs.empty() ? ",\r\n" : governs[i] ? ",yes\r\n" : ",no\r\n";
    }
    return table;
}

// What each joint gets of each load, to be checked by hand.
std::string sharesTable(const PhraseBook& book, const Truss& truss, const Outline& outline) {
    std::string table = csvHead("case,joint,on plan,along the slope,fx,fy");
    const auto all = sharesOf(book, outline);
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (const ChordShare& share : all[i]) {
            table += csvTextCell(outline.loads[i].load.caseId) + "," +
                     csvTextCell(truss.joints[share.joint.at()].label);
            for (const double value : {share.plan, share.slope, share.force.x, share.force.y}) {
                table += "," + significantNumber(value, 6);
            }
            table += "\r\n";
        }
    }
    return table;
}

} // namespace

Answer answerForm(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Outcome<Outline> outline = readOutline(reading.truss);
    if (!outline) {
        return {Exit::BadInput, {}, outline.issues()};
    }
    Outcome<Truss> made = trussOf(book, outline.value());
    if (!made) {
        return {Exit::BadInput, {}, made.issues()};
    }
    Truss truss = std::move(made).value();
    if (arguments.has("--shares")) {
        return {Exit::Answered, sharesTable(book, truss, outline.value()), {}};
    }
    truss.form = reading.truss.form;
    truss.title = reading.truss.title.empty() ? truss.title : reading.truss.title;
    truss.classSettings = reading.truss.classSettings;
    truss.checks = reading.truss.checks;
    return {Exit::Answered, writeModel(truss), {}};
}

Answer answerCombine(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const std::string word = arguments.has("--rule") ? arguments.valueOf("--rule") : "en-6.10";
    const std::optional<CombinationRule> rule = ruleNamed(word);
    Truss truss = reading.truss;
    Outcome<std::vector<LoadCase>> kinds = kindsOf(arguments, truss.cases);
    if (!rule || !kinds) {
        return {Exit::WrongUse,
                {},
                rule ? kinds.issues()
                     : Issues{{IssueCode::OutOfRange, "--rule",
                               "is one of en-6.10, en-6.10ab, asce-lrfd and asce-asd"}}};
    }
    truss.cases = std::move(kinds).value();
    CombinationWish wish;
    wish.rule = *rule;
    Outcome<CombinationsMade> made = combinationsOf(book, truss, wish);
    if (!made) {
        return {Exit::BadInput, {}, made.issues()};
    }
    Answer answer;
    for (const std::string& id : made.value().leftOut) {
        answer.faults.push_back(
            {IssueCode::NotComputed, "cases", "left out, as it has no known kind: " + id});
    }
    truss.combinations = std::move(made).value().combinations;
    if (arguments.has("--csv")) {
        const Outcome<std::vector<bool>> governs = governing(truss);
        answer.text = tableOf(truss, governs ? governs.value() : std::vector<bool>{});
        answer.faults = governs ? answer.faults : joined(answer.faults, governs.issues());
    } else {
        answer.text = writeModel(truss);
    }
    return answer;
}

} // namespace gusset::cli
