#include "cli/variants_command.hpp"

#include "classroom/variants/forms.hpp"
#include "classroom/variants/variants.hpp"
#include "cli/asked.hpp"
#include "cli/input.hpp"
#include "cli/names.hpp"
#include "cli/verdicts.hpp"
#include "exchange/exercises/series.hpp"
#include "exchange/exercises/student_list.hpp"
#include "model/quantity/quantity_input.hpp"

#include <algorithm>
#include <charconv>
#include <optional>
#include <string_view>
#include <utility>

namespace gusset::cli {

namespace {

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
    for (const auto& [option, step] : {std::pair{"--length-step", &wishes.lengthStep},
                                       std::pair{"--load-step", &wishes.loadStep}}) {
        const Outcome<double> read =
            arguments.has(option) ? readNumber(arguments.valueOf(option)) : 0;
        if (!read || read.value() < 0) {
            return Issue{IssueCode::OutOfRange, option, "takes a number that is not negative"};
        }
        *step = read.value();
    }
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

Outcome<std::vector<NamedFile>> filesOf(const Arguments& arguments, const Truss& truss,
                                        const Series& series,
                                        const std::vector<Variant>& variants) {
    const Outcome<SeriesPapers> papers = papersOf(truss, series, variants, exercisePage(arguments));
    if (!papers) {
        return papers.issues();
    }
    std::vector<NamedFile> files;
    for (const VariantPaper& paper : papers.value().variants) {
        files.push_back({paper.file, writeModel(paper.truss)});
    }
    files.push_back({"key.csv", papers.value().key});
    files.push_back({"links.csv", papers.value().links});
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
