#include "cli/size_command.hpp"

#include "cli/input.hpp"
#include "cli/verdicts.hpp"
#include "design/sizing/stock.hpp"
#include "model/profiles/catalogue.hpp"
#include "model/quantity/quantity_input.hpp"
#include "report/results/sizing_text.hpp"

#include <algorithm>

namespace gusset::cli {

namespace {

Issue wrong(const char* option, const char* says) {
    return Issue{IssueCode::OutOfRange, option, says};
}

Outcome<std::vector<Profile>> profilesAsked(const Arguments& arguments) {
    std::vector<Profile> all;
    if (arguments.has("--list")) {
        const Outcome<std::string> text = readTextOf(arguments.valueOf("--list"));
        if (!text) {
            return text.issues();
        }
        Outcome<ProfileList> list = readProfileList(text.value());
        if (!list) {
            return list.issues();
        }
        all = std::move(list).value().profiles;
    }
    const std::string kinds = arguments.valueOf("--kinds");
    for (std::size_t at = 0; at < kinds.size();) {
        const std::size_t end = std::min(kinds.find(',', at), kinds.size());
        const ProfileKind* kind = findProfileKind(kinds.substr(at, end - at));
        if (!kind) {
            return wrong("--kinds", "names kinds of profiles as gusset profiles lists them: "
                                    "shs-hot,rhs-hot");
        }
        const ProfileList list = profilesOf(*kind);
        all.insert(all.end(), list.profiles.begin(), list.profiles.end());
        at = end + 1;
    }
    if (all.empty()) {
        return wrong("--kinds", "says what to choose from: kinds of profiles, or --list");
    }
    return all;
}

// m; 0: no limit.
Outcome<double> limitOf(const Arguments& arguments, const Truss& truss) {
    if (!arguments.has("--deflection")) {
        return 0.0;
    }
    const Outcome<double> x = readNumber(arguments.valueOf("--deflection"));
    if (!x || !(x.value() >= 10 && x.value() <= 10000)) {
        return wrong("--deflection", "is the x of a limit L/x, from 10 to 10000: 250");
    }
    return deflectionLimit(truss, x.value());
}

} // namespace

Answer answerSize(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Outcome<std::vector<Profile>> profiles = profilesAsked(arguments);
    if (!profiles) {
        return {Exit::WrongUse, {}, profiles.issues()};
    }
    Truss truss = reading.truss;
    const std::string grade = arguments.has("--grade") ? arguments.valueOf("--grade") : "S235";
    if (arguments.has("--weight") && !addOwnWeight(truss, arguments.valueOf("--weight"))) {
        return {Exit::WrongUse,
                {},
                {wrong("--weight", "names a load case of the model, to which the own weight of the "
                                   "members is added")}};
    }
    const Outcome<Stock> stock = stockOf(grade, profiles.value(), truss.units);
    const Outcome<double> limit = limitOf(arguments, truss);
    if (!stock || !limit) {
        return {Exit::WrongUse, {}, stock ? limit.issues() : stock.issues()};
    }
    putMaterials(truss, stock.value().materials);
    SizingWish wish;
    wish.groups = groupsByRole(book, truss, stock.value().sections);
    wish.deflection = limit.value();
    Outcome<Sizing> sizing = lightest(truss, wish);
    if (!sizing) {
        return {exitOf(sizing.issues()), {}, sizing.issues()};
    }
    Sizing made = std::move(sizing).value();
    dropUnused(made.truss, stock.value().materials);
    const Writer writer{book, made.truss};
    Answer answer{Exit::Answered,
                  arguments.has("--text") ? sizingText(writer, made, wish) : writeModel(made.truss),
                  {}};
    if (stock.value().leftOut > 0) {
        answer.faults.push_back({IssueCode::NotComputed, "--grade",
                                 "left out, as this grade is not made so thick, or not for them: " +
                                     std::to_string(stock.value().leftOut) + " profiles"});
    }
    return answer;
}

} // namespace gusset::cli
