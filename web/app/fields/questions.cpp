#include "app/fields/questions.hpp"

#include "app/fields/cell_text.hpp"
#include "app/state/thing.hpp"
#include "phrases/model.hpp"
#include "phrases/page_text.hpp"
#include "phrases/picked.hpp"
#include "phrases/results.hpp"
#include "phrases/working.hpp"
#include "report/text/phrases.hpp"

#include <algorithm>
#include <array>
#include <type_traits>

namespace gusset {
namespace {

constexpr std::array<Phrase<>, 2> kTurns{phrase::kClockwise, phrase::kAnticlockwise};
constexpr std::array<Phrase<>, 3> kAngles{phrase::kByOneAngle, phrase::kByCosines,
                                          phrase::kBySlopes};
constexpr std::array<Phrase<>, 2> kAxes{phrase::kAxesHV, phrase::kAxesXY};
constexpr std::array<Phrase<>, 3> kSymbols{phrase::kAsForceBelow, phrase::kAsEnds,
                                           phrase::kAsNumbered};
constexpr std::array<Phrase<>, 2> kSenses{phrase::kDrawnAway, phrase::kDrawnExpected};
constexpr std::array<Phrase<>, 2> kEquations{phrase::kSymbolsFirst, phrase::kNumbersOnly};
constexpr std::array<Phrase<>, 3> kForms{phrase::kExactNumbers, phrase::kDecimals,
                                         phrase::kSignificant};
constexpr std::array<Phrase<>, 2> kSigns{phrase::kPoint, phrase::kComma};
constexpr std::array<Phrase<>, 2> kCarried{phrase::kInFull, phrase::kRounded};

template <auto Setting>
int settingOf(const ClassSettings& settings) {
    return static_cast<int>(settings.*Setting);
}
template <auto Setting>
void setTo(ClassSettings& settings, int value) {
    using Value = std::remove_reference_t<decltype(settings.*Setting)>;
    settings.*Setting = static_cast<Value>(value);
    settings.digits = std::max(settings.digits, leastFigures(settings));
}
template <auto Setting>
constexpr ClassQuestion asked(Phrase<> asks, std::span<const Phrase<>> answers) {
    return {asks, answers, settingOf<Setting>, setTo<Setting>};
}
int signOf(const ClassSettings& settings) { return settings.decimalSign == ',' ? 1 : 0; }
void setSign(ClassSettings& settings, int value) { settings.decimalSign = value == 1 ? ',' : '.'; }

constexpr std::array kClassQuestions{
    asked<&ClassSettings::moments>(phrase::kMomentsPositive, kTurns),
    asked<&ClassSettings::angles>(phrase::kResolvedBy, kAngles),
    asked<&ClassSettings::axes>(phrase::kDirectionsCalled, kAxes),
    asked<&ClassSettings::symbols>(phrase::kForceWritten, kSymbols),
    asked<&ClassSettings::senses>(phrase::kUnknownDrawn, kSenses),
    asked<&ClassSettings::equations>(phrase::kEquationsBegin, kEquations),
    asked<&ClassSettings::form>(phrase::kNumbersGiven, kForms),
    ClassQuestion{phrase::kDecimalsFollow, kSigns, signOf, setSign},
    asked<&ClassSettings::carry>(phrase::kValuesGo, kCarried),
};

constexpr std::array kForceUnits{ForceUnit::kN,  ForceUnit::N,   ForceUnit::MN,
                                 ForceUnit::kip, ForceUnit::lbf, ForceUnit::Plain};
constexpr std::array kLengthUnits{LengthUnit::m,  LengthUnit::cm, LengthUnit::mm,
                                  LengthUnit::ft, LengthUnit::in, LengthUnit::Plain};

struct Asking {
    const AppState& state;
    Choices answers{};

    [[nodiscard]] std::string words(Phrase<> phrase) const { return sayPlain(*state.book, phrase); }
    void add(std::string name, bool isNow, Actions does) {
        answers.push_back({std::move(name), isNow, std::move(does)});
    }
    // Two answers, stored as false and true; `more` is done with either.
    template <class Owner>
    void addEither(const std::array<Phrase<>, 2>& names, const Owner& owner, bool Owner::*setting,
                   const Actions& more = {}) {
        for (const bool on : {false, true}) {
            Actions does{Set{setting, on}};
            does.insert(does.end(), more.begin(), more.end());
            add(words(names[on ? 1 : 0]), owner.*setting == on, std::move(does));
        }
    }
};

// The kinds of things that the page's parts are about, all in one list: the selection is one.
void addThings(Asking& asking) {
    const AppState& state = asking.state;
    const Truss& truss = state.truss;
    const Hit now = onlyOne(state.selection);
    asking.add(asking.words(phrase::kNone), !now, {SetSelection{}});
    const auto add = [&](const ThingId& thing, std::string name) {
        asking.add(std::move(name), now == thing, {SetSelection{thingsOf(thing)}});
    };
    const int members = static_cast<int>(std::min(truss.members.size(), kMostAsked));
    for (int i = 0; i < members; ++i) {
        add(MemberId{i}, sayPlain(*state.book, phrase::kThatMember,
                                  {{"member", memberName(truss, MemberId{i})}}));
    }
    for (std::size_t i = 0; i < truss.supports.size(); ++i) {
        add(SupportId{static_cast<int>(i)},
            sayPlain(*state.book, phrase::kSupportAt,
                     {{"joint", jointLabel(truss, truss.supports[i].joint)}}));
    }
    const int joints = static_cast<int>(std::min(truss.joints.size(), kMostAsked));
    for (int i = 0; i < joints; ++i) {
        add(JointId{i},
            sayPlain(*state.book, phrase::kTheJoint, {{"joint", jointLabel(truss, JointId{i})}}));
    }
}

// Choices that change one setting of the checks.
template <class Value, class Names>
void addSettings(Asking& asking, Value CheckSettings::*setting, const Names& names) {
    for (std::size_t i = 0; i < names.size(); ++i) {
        CheckSettings settings = asking.state.truss.checks;
        const bool isNow = static_cast<std::size_t>(settings.*setting) == i;
        settings.*setting = static_cast<Value>(i);
        asking.add(names[i], isNow, {Commit{SetChecks{settings}}});
    }
}

void addWorkings(Asking& asking) {
    constexpr std::array<Phrase<>, 4> kPages{phrase::kPageTruss, phrase::kPageForce,
                                             phrase::kPageDisplacement, phrase::kPagePolygon};
    for (std::size_t i = 0; i < kPages.size(); ++i) {
        const auto page = static_cast<WorkingPage>(i);
        asking.add(asking.words(kPages[i]), asking.state.notebook.working == page,
                   {Set{&NotebookState::working, page}, Set{&NotebookState::step, 0}});
    }
}

template <class Unit>
void addUnits(Asking& asking, std::span<const Unit> units, Unit Units::*which) {
    const Units& now = asking.state.truss.units;
    for (const Unit unit : units) {
        Units wanted = now;
        wanted.*which = unit;
        asking.add(unit == Unit::Plain ? asking.words(phrase::kNone) : symbolOf(unit),
                   now.*which == unit, {Commit{unitsEdit(now, wanted, false)}});
    }
}

void addFigures(Asking& asking) {
    const ClassSettings& now = asking.state.truss.classSettings;
    for (int digits = leastFigures(now); digits <= kMostFigures; ++digits) {
        ClassSettings settings = now;
        settings.digits = digits;
        asking.add(std::to_string(digits), now.digits == digits,
                   {Commit{SetClassSettings{settings}}});
    }
}

void addClassAnswers(Asking& asking, std::size_t which) {
    if (which >= kClassQuestions.size()) {
        return;
    }
    const ClassQuestion& question = kClassQuestions[which];
    const ClassSettings& now = asking.state.truss.classSettings;
    for (std::size_t i = 0; i < question.answers.size(); ++i) {
        ClassSettings settings = now;
        question.set(settings, static_cast<int>(i));
        asking.add(asking.words(question.answers[i]), question.now(now) == static_cast<int>(i),
                   {Commit{SetClassSettings{settings}}});
    }
}

} // namespace

Choices loadAnswers(const AppState& state) {
    Asking asking{state};
    const auto add = [&](std::string name, const LoadChoice& choice) {
        asking.add(std::move(name), state.choice == choice, {SetChoice{choice}});
    };
    add(asking.words(phrase::kAllLoads), {});
    const std::vector<std::string> cases = caseNames(state.truss);
    if (cases.size() + state.truss.combinations.size() < 2) {
        return asking.answers;
    }
    for (const std::string& name : cases) {
        add(name, OneCase{name});
    }
    for (const Combination& combination : state.truss.combinations) {
        add(combination.id, OneCombination{combination.id});
    }
    return asking.answers;
}

std::span<const ClassQuestion> classQuestions() { return kClassQuestions; }

int leastFigures(const ClassSettings& settings) {
    return settings.form == NumberForm::Significant ? 1 : 0;
}

std::array<std::string, 3> checkFormulas(const PhraseBook& book) {
    return {sayPlain(book, phrase::kByEuler), "EN 1993-1-1", "AISC 360-16"};
}

std::span<const ForceUnit> forceUnits() { return kForceUnits; }
std::span<const LengthUnit> lengthUnits() { return kLengthUnits; }

SetUnits unitsEdit(const Units& now, const Units& wanted, bool keepsNumbers) {
    const bool plain = wanted.force == ForceUnit::Plain || now.force == ForceUnit::Plain ||
                       wanted.length == LengthUnit::Plain || now.length == LengthUnit::Plain;
    return {wanted, !keepsNumbers && !plain};
}

Phrase<> questionOf(PageQuestion question) {
    constexpr std::array<Phrase<>, 14> kAsked{
        phrase::kUnder,        phrase::kWhatAbout,     phrase::kOver,      phrase::kUnder,
        phrase::kCheckedBy,    phrase::kBucklingCurve, phrase::kSafetyBy,  phrase::kEffectCounts,
        phrase::kWhichWorking, phrase::kForceFoundBy,  phrase::kAlongAxis, phrase::kForcesIn,
        phrase::kLengthsIn,    phrase::kHowManyFigures};
    const auto at = static_cast<std::size_t>(question);
    return at < kAsked.size() ? kAsked[at] : kClassQuestions[at - kAsked.size()].asks;
}

Choices answersTo(const AppState& state, PageQuestion question) {
    Asking asking{state};
    const NotebookState& notebook = state.notebook;
    switch (question) {
    case PageQuestion::Loads:
        return loadAnswers(state);
    case PageQuestion::About:
        addThings(asking);
        break;
    case PageQuestion::EnvelopeOf:
        asking.addEither({phrase::kOverCombinations, phrase::kOverCases}, notebook,
                         &NotebookState::envelopeOfCases);
        break;
    case PageQuestion::CheckedLoads:
        asking.addEither({phrase::kLoadsShown, phrase::kWorstOfAll}, notebook,
                         &NotebookState::checksOfAll);
        break;
    case PageQuestion::Formula:
        addSettings(asking, &CheckSettings::formula, checkFormulas(*state.book));
        break;
    case PageQuestion::Curve:
        addSettings(asking, &CheckSettings::curve, kCurves);
        break;
    case PageQuestion::Safety:
        addSettings(asking, &CheckSettings::safety, kSafeties);
        break;
    case PageQuestion::Way:
        asking.addEither({phrase::kEffectUp, phrase::kEffectRight}, notebook.influence,
                         &InfluenceView::horizontal,
                         {Set{&InfluenceView::at, std::optional<double>()}});
        break;
    case PageQuestion::Working:
        addWorkings(asking);
        break;
    case PageQuestion::ForceBy:
        asking.addEither({phrase::kShortestWay, phrase::kByASection}, notebook,
                         &NotebookState::bySection, {Set{&NotebookState::step, 0}});
        break;
    case PageQuestion::Axis:
        asking.addEither({phrase::kVertical, phrase::kHorizontal}, notebook,
                         &NotebookState::horizontal, {Set{&NotebookState::step, 0}});
        break;
    case PageQuestion::ForceUnits:
        addUnits(asking, forceUnits(), &Units::force);
        break;
    case PageQuestion::LengthUnits:
        addUnits(asking, lengthUnits(), &Units::length);
        break;
    case PageQuestion::Figures:
        addFigures(asking);
        break;
    default:
        addClassAnswers(asking, static_cast<std::size_t>(question) -
                                    static_cast<std::size_t>(PageQuestion::FirstOfClass));
    }
    return asking.answers;
}

} // namespace gusset
