#include "cli/size_command.hpp"

#include "cli/input.hpp"
#include "cli/verdicts.hpp"
#include "design/sizing/roles.hpp"
#include "design/sizing/sizing.hpp"
#include "model/catalogue/grades.hpp"
#include "model/catalogue/section_shapes.hpp"
#include "model/profiles/catalogue.hpp"
#include "model/quantity/quantity_input.hpp"
#include "report/results/sizing_text.hpp"

#include <algorithm>
#include <array>
#include <map>

namespace gusset::cli {

namespace {

Issue wrong(const char* option, const char* says) {
    return Issue{IssueCode::OutOfRange, option, says};
}

// mm: of the walls, or of a bar.
double thicknessOf(const Section& section, LengthUnit unit) {
    double thickest = 0;
    for (const char* key : {"t", "s"}) {
        thickest = std::max(thickest, dimensionOf(section, key).value_or(0));
    }
    if (section.shape == "round") {
        thickest = dimensionOf(section, "D").value_or(0);
    }
    return converted(thickest, unit, LengthUnit::mm);
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

struct Stock {
    std::vector<Section> sections;
    std::size_t leftOut = 0; // too thick for the strength of the others
};

// All of one material, of the strength that its grade has for the thinnest; those for which it has
// less are left out.
Outcome<Stock> stockOf(const std::string& grade, const std::vector<Profile>& profiles,
                       Truss& truss) {
    const SteelGrade* steel = findSteelGrade(grade);
    const TimberClass* timber = findTimberClass(grade);
    if (!steel && !timber) {
        return wrong("--grade", "is a grade of steel or a class of timber: S235, S355, A992, C24");
    }
    const Material material =
        steel ? *steelOf(*steel, 0, truss.units) : timberOf(*timber, truss.units);
    std::erase_if(truss.materials, [&](const Material& it) { return it.id == material.id; });
    truss.materials.push_back(material);
    Stock stock;
    for (const Profile& profile : profiles) {
        const std::optional<Material> own =
            steel ? steelOf(*steel, thicknessOf(profile.section, profile.unit), truss.units)
                  : std::optional(material);
        if (!own || own->strength != material.strength || own->ultimate != material.ultimate) {
            ++stock.leftOut;
            continue;
        }
        stock.sections.push_back(sectionOf(profile, truss.units.section));
        stock.sections.back().material = material.id;
    }
    return stock;
}

std::vector<SizingGroup> groupsOf(const PhraseBook& book, const Truss& truss,
                                  const std::vector<Section>& sections) {
    std::map<MemberRole, SizingGroup> groups;
    const std::vector<MemberRole> roles = rolesOf(truss);
    for (std::size_t i = 0; i < roles.size(); ++i) {
        SizingGroup& group = groups[roles[i]];
        group.name = sentenceIn(book, nameOf(roles[i]).english);
        group.members.push_back(MemberId{static_cast<int>(i)});
        group.profiles = sections;
    }
    std::vector<SizingGroup> all;
    for (auto& [role, group] : groups) {
        all.push_back(std::move(group));
    }
    return all;
}

// m; 0: no limit. L/x, where L is the distance of the supports that are farthest apart.
Outcome<double> limitOf(const Arguments& arguments, const Truss& truss) {
    if (!arguments.has("--deflection")) {
        return 0.0;
    }
    const Outcome<double> x = readNumber(arguments.valueOf("--deflection"));
    if (!x || !(x.value() >= 10 && x.value() <= 10000)) {
        return wrong("--deflection", "is the x of a limit L/x, from 10 to 10000: 250");
    }
    double span = 0;
    for (const Support& a : truss.supports) {
        for (const Support& b : truss.supports) {
            const Vec2 way = truss.joints[a.joint.at()].at - truss.joints[b.joint.at()].at;
            span = std::max(span, std::abs(way.x));
        }
    }
    return span * toMetre(truss.units.length) / x.value();
}

} // namespace

Answer answerSize(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Outcome<std::vector<Profile>> profiles = profilesAsked(arguments);
    if (!profiles) {
        return {Exit::WrongUse, {}, profiles.issues()};
    }
    Truss truss = reading.truss;
    const std::string grade = arguments.has("--grade") ? arguments.valueOf("--grade") : "S235";
    const Outcome<Stock> stock = stockOf(grade, profiles.value(), truss);
    const Outcome<double> limit = limitOf(arguments, truss);
    if (!stock || !limit) {
        return {Exit::WrongUse, {}, stock ? limit.issues() : stock.issues()};
    }
    SizingWish wish;
    wish.groups = groupsOf(book, truss, stock.value().sections);
    wish.deflection = limit.value();
    const Outcome<Sizing> sizing = lightest(truss, wish);
    if (!sizing) {
        return {exitOf(sizing.issues()), {}, sizing.issues()};
    }
    const Writer writer{book, sizing.value().truss};
    Answer answer{Exit::Answered,
                  arguments.has("--text") ? sizingText(writer, sizing.value(), wish)
                                          : writeModel(sizing.value().truss),
                  {}};
    if (stock.value().leftOut > 0) {
        answer.faults.push_back({IssueCode::NotComputed, "--grade",
                                 "left out, as this grade is weaker or not made so thick: " +
                                     std::to_string(stock.value().leftOut) + " profiles"});
    }
    return answer;
}

} // namespace gusset::cli
