#include "cli/profiles_command.hpp"

#include "cli/input.hpp"
#include "core/csv.hpp"
#include "core/number.hpp"
#include "model/catalogue/section_properties.hpp"
#include "model/profiles/catalogue.hpp"
#include "model/quantity/quantity_input.hpp"
#include "report/results/table.hpp"

namespace gusset::cli {

namespace {

constexpr int kFigures = 4;

std::string figures(double value) { return significantNumber(value, kFigures); }

std::vector<std::string> rowOf(const Profile& profile) {
    const SectionFigure it = figureOf(profile.section).value();
    return {profile.section.id, figures(nominalMassOf(profile)),
            figures(it.area),   figures(it.yy),
            figures(it.zz),     figures(it.weak)};
}

// Lengths are in the unit of the profiles, which is one in every list of the catalogue; in an own
// list of several it stands beside each.
TextTable tableOf(const std::vector<Profile>& profiles, const std::string& caption) {
    TextTable table{caption,
                    {plainLine("profile"), plainLine("kg/m"), plainLine("A"), plainLine("i_y"),
                     plainLine("i_z"), plainLine("i_min"), plainLine("unit")},
                    {},
                    {false, true, true, true, true, true, false}};
    for (const Profile& profile : profiles) {
        std::vector<Words> row;
        for (const std::string& cell : rowOf(profile)) {
            row.emplace_back(cell);
        }
        row.emplace_back(symbolOf(profile.unit));
        table.rows.push_back(std::move(row));
    }
    return table;
}

std::string csvOf(const std::vector<Profile>& profiles) {
    std::string text = csvHead("profile,kg/m,A,i_y,i_z,i_min,unit");
    for (const Profile& profile : profiles) {
        const std::vector<std::string> row = rowOf(profile);
        text += csvTextCell(row.front());
        for (std::size_t i = 1; i < row.size(); ++i) {
            text += ',' + row[i];
        }
        text += std::string(",") + symbolOf(profile.unit) + "\r\n";
    }
    return text;
}

std::string kindsText(const PhraseBook& book) {
    std::string text;
    for (const ProfileKind& kind : profileKinds()) {
        const ProfileList list = profilesOf(kind);
        text += std::string(kind.key) + ": " + sentenceIn(book, kind.says.english) + ", " +
                std::to_string(list.profiles.size()) + ". " + list.source + ".\n";
    }
    return text;
}

Outcome<MassRange> rangeOf(const Arguments& arguments) {
    MassRange range;
    for (const auto& [option, value] :
         {std::pair{"--from", &range.least}, std::pair{"--to", &range.most}}) {
        if (!arguments.has(option)) {
            continue;
        }
        const Outcome<double> mass = readNumber(arguments.valueOf(option));
        if (!mass) {
            return Issue{IssueCode::WrongType, option, "must be a number of kg/m"};
        }
        *value = mass.value();
    }
    return range;
}

Outcome<ProfileList> ownList(const Arguments& arguments, const MassRange& range) {
    const Outcome<std::string> text = readTextOf(arguments.valueOf("--list"));
    if (!text) {
        return text.issues();
    }
    Outcome<ProfileList> list = readProfileList(text.value());
    if (!list) {
        return list.issues();
    }
    ProfileList kept = std::move(list).value();
    std::erase_if(kept.profiles, [&](const Profile& profile) {
        const double mass = nominalMassOf(profile);
        return mass < range.least || mass > range.most;
    });
    return kept;
}

Outcome<ProfileList> askedFor(const Arguments& arguments, const MassRange& range) {
    if (arguments.has("--list")) {
        return ownList(arguments, range);
    }
    if (const ProfileKind* kind = findProfileKind(arguments.input)) {
        return profilesOf(*kind, range);
    }
    if (std::optional<Profile> profile = findProfile(arguments.input)) {
        return ProfileList{{}, {std::move(*profile)}, {}};
    }
    return Issue{IssueCode::UnknownName, arguments.input,
                 "is no kind of profiles and no profile: without a name, gusset profiles says "
                 "which kinds there are"};
}

} // namespace

Answer answerProfiles(const PhraseBook& book, const Arguments& arguments) {
    if (arguments.input.empty() && !arguments.has("--list")) {
        return {Exit::Answered, kindsText(book), {}};
    }
    const Outcome<MassRange> range = rangeOf(arguments);
    if (!range) {
        return {Exit::WrongUse, {}, range.issues()};
    }
    const Outcome<ProfileList> list = askedFor(arguments, range.value());
    if (!list) {
        return {Exit::BadInput, {}, list.issues()};
    }
    const ProfileList& it = list.value();
    const std::string text =
        arguments.has("--csv") ? csvOf(it.profiles) : tableText(tableOf(it.profiles, it.source));
    return {Exit::Answered, text, it.notes};
}

} // namespace gusset::cli
