#include "cli/variants_command.hpp"

#include "classroom/variants/forms.hpp"
#include "classroom/variants/variants.hpp"
#include "cli/asked.hpp"
#include "cli/class_list.hpp"
#include "cli/input.hpp"
#include "cli/names.hpp"
#include "cli/verdicts.hpp"
#include "core/csv.hpp"
#include "core/number.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/links/link.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>
#include <string_view>
#include <utility>

namespace gusset::cli {

namespace {

struct VaryWord {
    std::string_view word;
    bool Vary::*what;
};
constexpr std::array kVaryWords{
    VaryWord{"lengths", &Vary::lengths}, VaryWord{"rise", &Vary::rise},
    VaryWord{"loads", &Vary::loads},     VaryWord{"directions", &Vary::directions},
    VaryWord{"places", &Vary::places},   VaryWord{"supports", &Vary::supports},
};

template <class Number>
Outcome<Number> wholeNumber(const Arguments& arguments, std::string_view option, Number otherwise) {
    const std::string text = arguments.valueOf(option);
    if (text.empty()) {
        return otherwise;
    }
    Number number = 0;
    const char* end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, number);
    if (error != std::errc() || stop != end) {
        return Issue{IssueCode::OutOfRange, std::string(option),
                     "is no whole number of usual size: write digits alone"};
    }
    return number;
}

Outcome<Vary> varyNamed(std::string_view names) {
    Vary vary{false, false, false, false, false, false};
    while (true) {
        const std::size_t comma = names.find(',');
        const std::string_view name = names.substr(0, comma);
        bool isKnown = false;
        for (const VaryWord& word : kVaryWords) {
            vary.*word.what = vary.*word.what || name == word.word;
            isKnown = isKnown || name == word.word;
        }
        if (!isKnown) {
            return Issue{IssueCode::UnknownName, "--vary",
                         "\"" + std::string(name) +
                             "\" can't vary: name some of "
                             "lengths,rise,loads,directions,places,supports"};
        }
        if (comma == std::string_view::npos) {
            return vary;
        }
        names.remove_prefix(comma + 1);
    }
}

// What is asked for on the command line.
struct Series {
    VariantWishes wishes;
    std::vector<std::string> students; // empty without a class list
    int count = 0;
    std::uint64_t seed = 0;
};

Outcome<VariantWishes> wishesOf(const Arguments& arguments, const Truss& truss) {
    VariantWishes wishes;
    wishes.loads = choiceOf(arguments);
    if (!isThere(truss, wishes.loads)) {
        return Issue{IssueCode::UnknownName, choiceName(wishes.loads),
                     "there is no such case or combination: name one of the model"};
    }
    if (arguments.has("--vary")) {
        const Outcome<Vary> vary = varyNamed(arguments.valueOf("--vary"));
        if (!vary) {
            return vary.issues();
        }
        wishes.vary = vary.value();
    }
    if (arguments.has("--asked")) {
        const auto members = membersNamed(truss, arguments.valueOf("--asked"));
        if (!members) {
            return members.issues();
        }
        wishes.asked = members.value();
    }
    const Outcome<int> decimals = wholeNumber(arguments, "--decimals", 0);
    if (!decimals) {
        return decimals.issues();
    }
    wishes.decimals = decimals.value();
    const Outcome<int> zeros = wholeNumber(arguments, "--zero", 0);
    if (arguments.has("--zero") && zeros) {
        wishes.zeros = zeros.value();
    }
    return wishes;
}

Outcome<Truss> formNamed(const Arguments& arguments, std::uint64_t seed) {
    const Outcome<int> joints = wholeNumber(arguments, "--joints", 0);
    const Outcome<int> zeros = wholeNumber(arguments, "--zero", 0);
    if (!joints || !zeros) {
        return !joints ? joints.issues() : zeros.issues();
    }
    const std::string held = arguments.valueOf("--held");
    if (!held.empty() && held != "ends" && held != "wall") {
        return Issue{IssueCode::OutOfRange, "--held", "must be ends or wall"};
    }
    FormWishes wishes{joints.value(), std::nullopt, held == "wall" ? Held::AtWall : Held::AtEnds};
    if (arguments.has("--zero")) {
        wishes.zeros = zeros.value();
    }
    return makeForm(wishes, seed);
}

Outcome<Series> seriesOf(const Arguments& arguments, const Truss& truss) {
    const Outcome<VariantWishes> wishes = wishesOf(arguments, truss);
    const Outcome<int> count = wholeNumber(arguments, "--count", 1);
    const Outcome<std::uint64_t> seed = wholeNumber<std::uint64_t>(arguments, "--seed", 1);
    if (!wishes || !count || !seed) {
        return !wishes ? wishes.issues() : !count ? count.issues() : seed.issues();
    }
    Series series{wishes.value(), {}, count.value(), seed.value()};
    if (!arguments.has("--class")) {
        return series;
    }
    const std::string path = arguments.valueOf("--class");
    const Outcome<std::string> list = readTextOf(path);
    if (!list) {
        return list.issues();
    }
    series.students = studentsOf(list.value());
    if (series.students.empty()) {
        return Issue{IssueCode::Missing, path, "holds no student: write one on each line"};
    }
    series.count = static_cast<int>(series.students.size());
    return series;
}

// "variant_007.json": the same name whatever the count.
std::string fileNameOf(int number) {
    const std::string digits = std::to_string(number);
    return "variant_" + std::string(3 - std::min<std::size_t>(3, digits.size()), '0') + digits +
           ".json";
}

std::string studentCell(const Series& series, const Variant& variant) {
    return series.students.empty()
               ? std::string()
               : csvTextCell(series.students[static_cast<std::size_t>(variant.number) - 1]);
}

std::string keyHead(const Truss& truss) {
    std::string columns = "variant,student,file,steps";
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        columns += "," + csvTextCell(memberName(truss, MemberId{static_cast<int>(i)}));
    }
    for (const Support& support : truss.supports) {
        const std::string& label = truss.joints[support.joint.at()].label;
        columns += "," + csvTextCell(label + " x") + "," + csvTextCell(label + " y");
    }
    return csvHead(columns);
}

// Reactions by components in the order of the head, which names joints: supports may change places.
std::string keyLine(const Truss& truss, const Series& series, const Variant& variant) {
    const ExactSolution exact = solveExactly(variant.truss, series.wishes.loads);
    std::string line = std::to_string(variant.number) + "," + studentCell(series, variant) + "," +
                       fileNameOf(variant.number) + "," + std::to_string(variant.steps.steps);
    for (const Surd& force : exact.forces) {
        line += "," + fileNumber(force.value);
    }
    for (const Support& support : truss.supports) {
        const ExactSolution::Reaction& reaction = exact.jointReactions[support.joint.at()];
        line += "," + fileNumber(reaction.x.value) + "," + fileNumber(reaction.y.value);
    }
    return line + "\r\n";
}

// A variant with its question: the model's own, or its reactions and forces.
Outcome<Truss> askedTruss(const Series& series, const Variant& variant) {
    Truss truss = variant.truss;
    Outcome<Exercise> asked = askedOf(truss);
    if (!asked) {
        return asked.issues();
    }
    Exercise exercise = std::move(asked).value();
    if (truss.exercise.empty()) {
        exercise.loads = series.wishes.loads;
    }
    exercise.variant = variant.number;
    exercise.seed = series.seed;
    truss.exercise = exerciseText(truss, exercise);
    return truss;
}

Outcome<std::vector<NamedFile>> filesOf(const Arguments& arguments, const Truss& truss,
                                        const Series& series,
                                        const std::vector<Variant>& variants) {
    std::vector<NamedFile> files;
    NamedFile key{"key.csv", keyHead(truss)};
    NamedFile links{"links.csv", csvHead("variant,student,link")};
    for (const Variant& variant : variants) {
        const Outcome<Truss> asked = askedTruss(series, variant);
        if (!asked) {
            return asked.issues();
        }
        const Outcome<std::string> link = exerciseLink(asked.value());
        if (!link) {
            return link.issues();
        }
        files.push_back({fileNameOf(variant.number), writeModel(asked.value())});
        key.content += keyLine(truss, series, variant);
        links.content += std::to_string(variant.number) + "," + studentCell(series, variant) + "," +
                         csvTextCell(exerciseAddress(arguments, link.value())) + "\r\n";
    }
    files.push_back(std::move(key));
    files.push_back(std::move(links));
    return files;
}

Answer refusal(const Issues& issues) { return {exitOf(issues), {}, issues}; }

Answer variantsOf(const Arguments& arguments, const Truss& truss) {
    const Outcome<Series> series = seriesOf(arguments, truss);
    if (!series) {
        return refusal(series.issues());
    }
    const Outcome<std::vector<Variant>> variants =
        makeVariants(truss, series.value().wishes, series.value().count, series.value().seed);
    if (!variants) {
        return refusal(variants.issues());
    }
    const Outcome<std::vector<NamedFile>> files =
        filesOf(arguments, truss, series.value(), variants.value());
    if (!files) {
        return refusal(files.issues());
    }
    const std::string folder = arguments.valueOf("--out");
    const std::string said = std::to_string(variants.value().size()) + " variants, key.csv and " +
                             "links.csv are in " + folder + "\n";
    return {Exit::Answered, said, {}, folder, files.value()};
}

std::optional<Issue> misuseOf(const Arguments& arguments) {
    const bool hasFile = !arguments.input.empty();
    const bool hasForm = arguments.has("--joints");
    if (hasFile == hasForm) {
        return Issue{IssueCode::Missing, "variants", "needs a FILE or --joints, and not both"};
    }
    if (hasFile && (arguments.has("--zero") || arguments.has("--held"))) {
        return Issue{IssueCode::OutOfRange, arguments.has("--zero") ? "--zero" : "--held",
                     "goes with --joints: leave it out for a FILE"};
    }
    if (!arguments.has("--out")) {
        return Issue{IssueCode::Missing, "--out", "is missing: name a folder for the files"};
    }
    if (arguments.has("--count") && arguments.has("--class")) {
        return Issue{IssueCode::OutOfRange, "--count",
                     "follows from the class list: leave it out, or --class"};
    }
    return std::nullopt;
}

} // namespace

Answer answerVariants(const Arguments& arguments, const Reading& reading) {
    if (std::optional<Issue> misuse = misuseOf(arguments)) {
        return {Exit::WrongUse, {}, {*misuse}};
    }
    if (!arguments.input.empty()) {
        return variantsOf(arguments, reading.truss);
    }
    const Outcome<std::uint64_t> seed = wholeNumber<std::uint64_t>(arguments, "--seed", 1);
    if (!seed) {
        return refusal(seed.issues());
    }
    const Outcome<Truss> form = formNamed(arguments, seed.value());
    return form ? variantsOf(arguments, form.value()) : refusal(form.issues());
}

} // namespace gusset::cli
