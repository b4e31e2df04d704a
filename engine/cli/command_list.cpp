#include "cli/command_list.hpp"

#include <algorithm>
#include <array>

namespace gusset::cli {

namespace {

constexpr int kLoads = 1;
constexpr int kForm = 2;
constexpr int kPart = 3;

constexpr Option kCase{"--case", "ID", kLoads, "the loads of one case alone"};
constexpr Option kCombination{"--combination", "ID", kLoads, "a combination of the model"};
constexpr Option kWorst{"--worst", "", kLoads,
                        "the worst over all combinations, or over all cases"};
constexpr Option kText{"--text", "", kForm, "as text"};
constexpr Option kJson{"--json", "", kForm, "as JSON, for programs"};
constexpr Option kCsv{"--csv", "", kForm, "as a table for spreadsheets"};
constexpr Option kPaper{"--html", "", kForm, "as a web page of its own, to read or to print"};
constexpr Option kAnswersFirst{"--answers-first", "", 0, "the results before the working"};
constexpr Option kSvg{"--svg", "", kForm, "as a drawing"};
constexpr Option kExact{"--exact", "", 0,
                        "exact forces as well, as 25√5, where they are to be had"};
constexpr Option kPath{"--path", "A,B,C", 0, "the joints that the load passes, in order"};

constexpr Option kWorkMember{"--member", "A-B", kPart, "what leads to the force of one member"};
constexpr Option kDisplacement{"--displacement", "C:y", kPart,
                               "the displacement of a joint along x or y, by a unit load"};
constexpr Option kSection{"--section", "A-B,C-D", kPart, "a cut through these members"};
constexpr Option kForceMethod{"--force-method", "", kPart,
                              "the force method, as an indeterminate truss is worked anyway"};
constexpr Option kReleased{"--released", "N0", kPart,
                           "how one column of its table was found: N0, n1, n2"};
constexpr Option kWorkInfluence{"--influence", "member:A-B", kPart,
                                "an influence line, with --path; named as for influence --of"};
constexpr Option kPolygon{"--polygon", "", kPart, "the force polygon; also as --svg"};
constexpr Option kOf{"--of", "member:A-B", 0,
                     "what the line is of: also reaction:A:y or displacement:C:y"};
constexpr Option kMembers{"--members", "", kPart, "how far each member is used, with the caution"};
constexpr Option kCheckMember{"--member", "A-B", kPart, "how one member is checked, step by step"};

constexpr Option kSheetForm{"--html", "", kForm, "as a web page to print, as is done anyway"};
constexpr Option kSheetTables{"--csv", "", kForm, "its tables for spreadsheets"};
constexpr Option kParts{"--parts", "NAMES", 0,
                        "some of drawing,diagram,model,cases,forces,displacements,checks,working"};
constexpr Option kPaperSize{"--paper", "A4", 0, "or Letter"};
constexpr Option kAcross{"--across", "", 0, "the paper on its side"};
constexpr Option kProject{"--project", "TEXT", 0, "for the head and the foot of the sheet"};
constexpr Option kAuthor{"--author", "TEXT", 0, "for the head"};
constexpr Option kDate{"--date", "TEXT", 0, "for the head and the foot"};
constexpr Option kAddress{"--address", "URL", 0,
                          "where the page is: the truss is then on the sheet as a link and a QR "
                          "code"};

constexpr Option kAsk{
    "--ask", "NAMES", 0,
    "of reactions,forces (both unless said),zero,determinacy,displacement:C:y,steps"};
constexpr Option kAskedMembers{"--members", "A-B,C-D", 0, "whose forces are asked, if not all"};
constexpr Option kWithin{"--within", "PERCENT", 0, "how near is right; 1 unless said"};
constexpr Option kFigures{"--figures", "N", 0, "or how many significant figures must be right"};
constexpr Option kHints{"--hints", "terms", 0,
                        "how far hints go: none, bodies, equations or terms"};
constexpr Option kAtTheEnd{"--check-at-the-end", "", 0, "and not each answer at once"};
constexpr Option kSays{"--says", "TEXT", 0, "what students are told"};
constexpr Option kAsLink{"--link", "", 0, "as the fragment of a link instead of a file"};
constexpr Option kPageAddress{"--address", "URL", 0,
                              "where the page is, with a slash at the end: as the whole link"};

constexpr std::array kExerciseOptions{kAsk,         kAskedMembers, kWithin,     kFigures,
                                      kHints,       kAtTheEnd,     kSays,       kCase,
                                      kCombination, kAsLink,       kPageAddress};

constexpr Option kPlatform{
    "--as", "FORMAT", 0, "moodle, cloze, qti12 (for Canvas), gift, blackboard, qti21, qti3 or csv"};
constexpr Option kPicture{"--picture", "FILE.png", 0,
                          "of the truss, instead of an SVG; gift, blackboard, csv hold neither"};
constexpr std::array kExportOptions{kPlatform, kPicture};

constexpr int kSheetKind = 4;
constexpr Option kKey{"--key", "", kSheetKind,
                      "for the teacher: the answers, and how they are found"};
constexpr Option kAnswersOnly{"--answers", "", kSheetKind, "for the teacher: the answers alone"};
constexpr Option kExerciseAddress{"--address", "URL", 0,
                                  "where the page is, with a slash at the end: its exercise as a "
                                  "QR code"};
constexpr std::array kHandoutOptions{kKey, kAnswersOnly, kPaperSize, kExerciseAddress};

constexpr std::array kSolveOptions{kCase, kCombination, kExact, kText, kJson, kCsv};
constexpr std::array kWorkingOptions{
    kCase,          kCombination, kWorkMember, kDisplacement, kSection, kForceMethod, kReleased,
    kWorkInfluence, kPolygon,     kPath,       kAnswersFirst, kText,    kPaper,       kSvg};
constexpr std::array kInfluenceOptions{kPath, kOf, kText, kJson, kCsv, kSvg};
constexpr Option kMarksOut{"--out", "FILE.csv", 0, "row by row into a file, safe to stop"};
constexpr Option kResume{"--resume", "", 0, "go on with the file of --out: what is in it is kept"};
constexpr Option kProgress{"--progress", "", 0, "say how far it is where no terminal is watched"};
constexpr std::array kMarkOptions{kText, kCsv, kMarksOut, kResume, kProgress};
constexpr std::array kEnvelopeOptions{kText, kJson, kCsv};
constexpr std::array kCheckOptions{kMembers, kCheckMember, kCase, kCombination, kWorst,
                                   kText,    kJson,        kCsv,  kPaper};

constexpr std::array kReportOptions{kCase,   kCombination, kSheetForm, kSheetTables,
                                    kParts,  kPaperSize,   kAcross,    kProject,
                                    kAuthor, kDate,        kAddress};

constexpr Option kCount{"--count", "30", 0, "how many variants; with --class one for each student"};
constexpr Option kSeed{"--seed", "7", 0, "a whole number: the same one gives the same variants"};
constexpr Option kOut{"--out", "FOLDER", 0, "where the files go"};
constexpr Option kVary{"--vary", "NAMES", 0,
                       "some of lengths,rise,loads,directions,places,supports; the first three "
                       "unless asked otherwise"};
constexpr Option kDecimals{"--decimals", "0", 0, "of the answers: 0, or 1"};
constexpr Option kLengthStep{"--length-step", "0.5", 0,
                             "new coordinates are multiples of it from the first joint on, "
                             "length units"};
constexpr Option kLoadStep{"--load-step", "5", 0, "new sizes of loads are multiples of it"};
constexpr Option kAsked{
    "--asked", "A-B,C-D", 0,
    "the members whose forces must be such numbers, all unless asked otherwise"};
constexpr Option kClass{"--class", "LIST.csv", 0,
                        "a class list, for a variant for each line of it"};
constexpr Option kPage{"--address", "URL", 0, "where the page is, for whole links"};
constexpr Option kJoints{"--joints", "7", 0, "instead of a FILE: a simple truss of so many joints"};
constexpr Option kZero{"--zero", "2", 0, "of which so many members carry nothing"};
constexpr Option kHeld{"--held", "ends", 0, "or wall, for a bracket"};
constexpr std::array kVariantOptions{kJoints, kZero,  kHeld,     kCount,      kSeed,
                                     kOut,    kVary,  kDecimals, kLengthStep, kLoadStep,
                                     kAsked,  kClass, kPage,     kCase,       kCombination};

constexpr Option kSlides{"--html", "", kForm, "as slides, one page each, as is done anyway"};
constexpr Option kVtt{"--vtt", "", kForm, "what is said, as captions at a speaker's pace"};
constexpr Option kPictures{"--svg", "FOLDER", kForm, "the slides as numbered drawings"};
constexpr Option kWords{"--text", "", kForm, "what is said, as text"};
constexpr Option kShape{"--shape", "16:9", 0, "or 4:3"};
constexpr Option kByStep{"--by-step", "", 0,
                         "a slide for each step; otherwise one for each equation and each answer"};
constexpr Option kWithWords{"--with-words", "", 0, "what is said below each slide"};
constexpr Option kAnimate{"--animate", "STEP", kForm,
                          "a step, its strokes one after the other, as a drawing that moves"};
constexpr Option kLoop{"--loop", "", 0, "over and over; otherwise it stops at its end"};
constexpr Option kHideValues{"--hide-values", "", 0, "no values on the drawing of the truss"};
constexpr std::array kLessonOptions{
    kCase,    kCombination, kWorkMember, kDisplacement, kSection,   kForceMethod, kWorkInfluence,
    kPolygon, kPath,        kSlides,     kVtt,          kPictures,  kWords,       kAnimate,
    kLoop,    kShape,       kByStep,     kWithWords,    kHideValues};

constexpr Option kDrawnUnit{"--unit", "mm", 0, "in which it was drawn, whatever the file says"};
constexpr Option kTolerance{"--tolerance", "5", 0,
                            "ends this close make one joint, in the drawing's unit"};
constexpr Option kWidth{"--width", "24", 0,
                        "of the whole truss, in its unit, if the drawing is of another scale"};
constexpr Option kLayers{
    "--layers", "A,B", 0,
    "which are read, all that are shown unless said; of an SVG, ids of groups"};
constexpr std::array kTraceOptions{kDrawnUnit, kTolerance, kWidth, kLayers};
constexpr Option kDxf{"--dxf", "", kForm, "as DXF, as is done anyway"};
constexpr Option kJointsCsv{"--csv", "", kForm, "as a table of joints and members"};
constexpr Option kUnitOut{"--unit", "mm", 0, "of the DXF, if not that of the model"};
constexpr std::array kLinesOptions{kDxf, kJointsCsv, kUnitOut};
constexpr Option kShares{"--shares", "", 0,
                         "what each joint gets of each load, as a table for spreadsheets"};
constexpr std::array kFormOptions{kShares};
constexpr Option kRule{"--rule", "NAME", 0,
                       "en-6.10 (unless said), en-6.10ab, asce-lrfd or asce-asd"};
constexpr Option kKinds{"--kinds", "G=permanent,S=snow", 0,
                        "what cases stand for, where the model does not say"};
constexpr std::array kCombineOptions{kRule, kKinds, kCsv};

constexpr Option kLeast{"--from", "KG/M", 0, "those that weigh no less"};
constexpr Option kMost{"--to", "KG/M", 0, "those that weigh no more"};
constexpr Option kOwnList{"--list", "LIST.csv", 0, "those of an own list: name,shape,unit,H,B,t,…"};
constexpr std::array kProfileOptions{kLeast, kMost, kOwnList, kText, kCsv};

constexpr Option kChosenKinds{"--kinds", "shs-hot,rhs-hot", 0,
                              "kinds of profiles to choose from, as gusset profiles lists them"};
constexpr Option kGrade{"--grade", "S355", 0, "of steel, or a class of timber; S235 unless said"};
constexpr Option kDeflection{"--deflection", "250", 0,
                             "no joint moves up or down by more than L/250 in service"};
constexpr Option kWeight{"--weight", "G", 0,
                         "the own weight of the members is added to this load case"};
constexpr std::array kSizeOptions{kChosenKinds, kOwnList, kGrade, kDeflection, kWeight, kText};

constexpr std::array<Command, 20> kCommands{{
    {"solve", "FILE", kSolveOptions, "member forces and reactions, as text unless asked otherwise",
     "gusset solve site/examples/garage_roof.json --combination winter"},
    {"working", "FILE", kWorkingOptions,
     "how a person would find them on paper, as text unless asked otherwise",
     "gusset working site/examples/cottage_roof.json"},
    {"influence", "FILE", kInfluenceOptions,
     "what a load does that moves along a path of joints, as CSV unless asked otherwise",
     "gusset influence site/examples/farm_bridge.json --path A,B,D,F,H,J,L --of reaction:A:y "
     "--text"},
    {"envelope", "FILE", kEnvelopeOptions,
     "the extremes of every member over combinations or cases, as CSV unless asked otherwise",
     "gusset envelope site/examples/garage_roof.json --text"},
    {"check", "FILE", kCheckOptions,
     "what is wrong with a model, and what it is; or how far each member is used",
     "gusset check site/examples/farm_bridge.json --members"},
    {"report", "FILE", kReportOptions,
     "a sheet to print and hand over, under the first combination unless asked otherwise",
     "gusset report site/examples/garage_roof.json --combination winter --project Garage"},
    {"exercise", "FILE", kExerciseOptions,
     "the model with a question for students, whose page is exercise/ on the site",
     "gusset exercise site/examples/footbridge.json --ask reactions,forces --members A-C,C-E"},
    {"lesson", "FILE", kLessonOptions,
     "a derivation as it is shown to a room, step by step, as slides unless asked otherwise",
     "gusset lesson site/examples/cottage_roof.json --text"},
    {"export", "FILE…", kExportOptions,
     "the exercises of models as questions for a learning platform; every QTI is a zip",
     "gusset export site/examples/footbridge.json --as moodle"},
    {"handout", "FILE…", kHandoutOptions,
     "the exercises of models as sheets to print, each of which begins on a new page",
     "gusset handout site/examples/footbridge.json --key"},
    {"mark", "KEY", kMarkOptions,
     "marks with carried errors, for answers to the exercise in KEY or to those of a folder KEY: "
     "files of one student, tables of a class, links, or folders of these",
     "gusset exercise site/examples/footbridge.json --ask reactions,forces | gusset mark - "
     "tests/data/classroom/class.csv",
     "ANSWERS"},
    {"variants",
     "FILE",
     kVariantOptions,
     "the same truss with other numbers and friendly answers, as files with a key and links",
     "gusset variants site/examples/footbridge.json --count 5 --seed 7 --out variants",
     {},
     true},
    {"trace", "FILE", kTraceOptions,
     "the model of a drawing in lines (DXF, SVG) or of a table (CSV); what is doubtful is told",
     "gusset trace <(gusset lines site/examples/footbridge.json --unit mm)"},
    {"lines", "FILE", kLinesOptions, "the centre lines for drawing programs, as DXF R12",
     "gusset lines site/examples/footbridge.json --unit mm"},
    {"form", "FILE", kFormOptions,
     "the truss of the outline in a model: its form and sizes, and its loads as they come",
     "gusset form tests/data/outlines/barn_roof.json"},
    {"combine", "FILE", kCombineOptions,
     "the model with combinations, from what its load cases stand for",
     "gusset combine site/examples/garage_roof.json --kinds dead=permanent,snow=snow --csv"},
    {"size", "FILE", kSizeOptions,
     "the model with the lightest profiles that pass, for chords, posts and diagonals; preliminary",
     "gusset size site/examples/garage_roof.json --kinds chs --text"},
    {"profiles",
     "KIND",
     kProfileOptions,
     "steel and timber sections to choose from: the kinds, one kind, or one profile by its name",
     "gusset profiles rhs-hot --from 5 --to 10",
     {},
     true},
    {"link",
     "FILE",
     {},
     "the model as the fragment of a link",
     "gusset link site/examples/footbridge.json"},
    {"open",
     "LINK",
     {},
     "the model of a link, as JSON",
     "gusset open \"$(gusset link site/examples/footbridge.json)\""},
}};

constexpr std::string_view kInputs =
    "FILE is a path, a link, or - for standard input; behind -- it may begin with a hyphen.\n";
constexpr std::string_view kExits = "Exit status: 0 answered; 1 the truss can move, or its forces "
                                    "are lost in rounding; 2 bad input;\n"
                                    "3 wrong use; 4 the answer could not be written.\n";

std::string withValue(const Option& option) {
    return std::string(option.name) + (option.value.empty() ? "" : " ") + std::string(option.value);
}

// "[--case ID | --combination ID] [--exact]": options of one group share brackets.
std::string optionsOf(const Command& command) {
    std::string text;
    int group = 0;
    for (const Option& option : command.options) {
        const bool isAlternative = option.group != 0 && option.group == group;
        if (isAlternative) {
            text.pop_back();
        }
        text += (isAlternative ? " | " : " [") + withValue(option) + "]";
        group = option.group;
    }
    return text;
}

std::string lineOf(const Command& command) {
    return "  gusset " + std::string(command.name) + " " + std::string(command.input) +
           (command.more.empty() ? "" : " " + std::string(command.more) + "…") +
           optionsOf(command) + "\n";
}

} // namespace

std::span<const Command> commands() { return kCommands; }

std::string usage(std::span<const Command> commands) {
    std::string text = "Usage:\n";
    for (const Command& command : commands) {
        text += lineOf(command) + "      " + std::string(command.says) + "\n";
    }
    text += "  gusset COMMAND --help\n      what one command takes, with an example\n"
            "  gusset --version\n      which version this is, and which formats it reads\n";
    return text + std::string(kInputs) + std::string(kExits);
}

std::string usageOf(const Command& command) {
    return "Usage:\n" + lineOf(command) + "  gusset " + std::string(command.name) + " --help\n";
}

std::string helpOf(const Command& command) {
    std::size_t widest = 0;
    for (const Option& option : command.options) {
        widest = std::max(widest, withValue(option).size());
    }
    std::string text =
        "Usage:\n" + lineOf(command) + "\nGives " + std::string(command.says) + ".\n";
    for (const Option& option : command.options) {
        std::string words = withValue(option);
        words.resize(widest + 2, ' ');
        text += (&option == &command.options.front() ? "\n  " : "  ") + words +
                std::string(option.says) + "\n";
    }
    return text + "\n" + std::string(kInputs) + std::string(kExits) + "\nExample:\n  " +
           std::string(command.example) + "\n";
}

std::string versionText() {
    return "gusset " GUSSET_VERSION "\nReads and writes model files of version 1 and links of form "
           "1.\n";
}

} // namespace gusset::cli
