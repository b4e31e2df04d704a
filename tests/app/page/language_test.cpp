// The page uses one language, given by its state, and writes decimals as the class does.

#include "app/board.hpp"
#include "app/derived/shown_working.hpp"
#include "app/fields/cell_text.hpp"
#include "app/fields/cells.hpp"
#include "app/fields/fields.hpp"
#include "app/fields/load_cells.hpp"
#include "app/fields/paste.hpp"
#include "app/fields/typed_text.hpp"
#include "app/page/page_tables.hpp"
#include "app/page/page_text.hpp"
#include "canvas/hands/arrange.hpp"
#include "canvas/hands/board_menu.hpp"
#include "canvas/hands/several_field.hpp"
#include "canvas/hands/strokes.hpp"
#include "canvas/scene/figures.hpp"
#include "exchange/files/model_file.hpp"
#include "exchange/links/link.hpp"
#include "model/catalogue/section_shapes.hpp"
#include "phrases/page_text.hpp"
#include "report/derivation/working_text.hpp"
#include "report/sketch/qr_code.hpp"
#include "support/reading/mock_language.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>
#include <utility>
#include <vector>

using namespace gusset;
using namespace gusset::support;

namespace {

Board mockBoard(Truss truss) {
    truss.classSettings.decimalSign = ',';
    Board board;
    board.state = startWith(truss);
    board.state.book = &mockPhrases();
    return board;
}

void check(const Board& board, const char* what, const std::string& text) {
    INFO(board.state.truss.title << ", " << what << ":\n" << text);
    CHECK(foreignWords(text, board.state.truss) == std::vector<std::string>{});
    CHECK_FALSE(hasDecimalPoint(text));
}

// What a screen reader says of the buttons.
std::string labelsIn(const std::string& html) {
    constexpr std::string_view kLabel = "aria-label=\"";
    std::string labels;
    for (std::size_t at = html.find(kLabel); at != std::string::npos; at = html.find(kLabel, at)) {
        at += kLabel.size();
        labels += html.substr(at, html.find('"', at) - at) + '\n';
    }
    return textOfHtml(labels);
}

// Envelope, influence line, checks and exact values, as they are read away from the board.
std::string partsOf(Board& board) {
    for (const auto part :
         {&PageParts::envelope, &PageParts::influence, &PageParts::checks, &PageParts::exact}) {
        board.act(Set{part, true});
    }
    board.act(Set{&InfluenceView::byHand, true});
    board.act(Set{&InfluenceView::members, true});
    board.finish(deriveEnvelope);
    board.finish(deriveChecks);
    board.finish(deriveExact);
    if (board.derived.solution.status != Status::Mechanism) {
        (void)board.line(400);
    }
    return partsHtml(board.state, board.derived);
}

void showResults(Board& board, ResultPage page) {
    board.act(Set{&NotebookState::tab, NotebookTab::Forces});
    board.act(Set{&NotebookState::results, page});
    board.act(Set{&InfluenceView::byHand, true});
    board.act(Set{&InfluenceView::members, true});
    derive(board.state, board.derived);
}

void checkScene(Board& board) {
    for (const ResultPage page : {ResultPage::Forces, ResultPage::Movement}) {
        showResults(board, page);
        for (const LabelMark& label : buildScene(board.state, board.derived, measure).labels) {
            check(board, "on the board", label.text);
        }
    }
}

void checkUse(Board& board) {
    for (const MemberFigure figure : {MemberFigure::Stress, MemberFigure::Use}) {
        board.act(Set{&View::memberFigure, figure});
        showResults(board, ResultPage::Checks);
        board.finish(deriveChecks);
        for (const LabelMark& label : buildScene(board.state, board.derived, measure).labels) {
            check(board, "stress or use", label.text);
        }
        check(board, "page of checks", textOfHtml(movingHtml(board.state, board.derived)));
    }
    board.act(Set{&View::memberFigure, MemberFigure::Force});
}

void checkWorkings(Board& board) {
    for (const WorkingPage page : {WorkingPage::Truss, WorkingPage::OneForce,
                                   WorkingPage::Displacement, WorkingPage::Polygon}) {
        board.act(Set{&NotebookState::tab, NotebookTab::Working});
        board.act(Set{&NotebookState::working, page});
        board.finish(deriveWorking);
        const ShownWorking& shown = board.derived.working;
        check(board, "working", passagesText(shown.passages) + shown.asks);
        check(board, "page", textOfHtml(workingHtml(board.state, board.derived)));
        check(board, "spaces", shown.spaces.says + shown.drawing.sketch.says);
    }
}

} // namespace

TEST_CASE("in a language made up for it, what the page shows of a truss keeps no English word") {
    for (const Truss& truss : exampleTrusses()) {
        Board board = mockBoard(truss);
        showResults(board, ResultPage::Forces);
        const std::string text = pageTextHtml(board.state, board.derived);
        check(board, "page", textOfHtml(text));
        REQUIRE_FALSE(labelsIn(text).empty());
        check(board, "buttons of the page", labelsIn(text));
        const std::string parts = partsOf(board);
        check(board, "parts of the page", textOfHtml(parts));
        check(board, "buttons of the parts", labelsIn(parts));
        check(board, "summary", boardSummary(board.state, board.derived));
        showResults(board, ResultPage::Envelope);
        board.finish(deriveEnvelope);
        check(board, "envelope", textOfHtml(movingHtml(board.state, board.derived)));
        if (board.derived.solution.status != Status::Mechanism) {
            showResults(board, ResultPage::Influence);
            (void)board.line(400);
            check(board, "influence", textOfHtml(movingHtml(board.state, board.derived)));
            for (const PathOption& path : board.derived.influence.paths) {
                check(board, "path", path.name);
            }
            check(board, "by hand", passagesText(board.derived.influence.byHand.passages));
        }
        checkScene(board);
        checkUse(board);
        checkWorkings(board);
    }
}

namespace {

std::vector<Phrase<>> phrasesOf(const CellColumn& column) {
    std::vector<Phrase<>> phrases{column.name, column.notebook.heading};
    for (const auto& phrase : {column.more.hint, column.more.onPage, column.more.picked}) {
        if (phrase) {
            phrases.push_back(*phrase);
        }
    }
    return phrases;
}

} // namespace

TEST_CASE("in a language made up for it, the notebook's tables of the model keep no English word") {
    const Board board = mockBoard(roof());
    for (std::size_t table = 0; table < kCellTables; ++table) {
        const ModelTable& of = modelTable(static_cast<CellTable>(table));
        for (const Phrase<> phrase : {of.name, of.newRow, of.find}) {
            check(board, "table", sayPlain(mockPhrases(), phrase));
        }
        for (const CellColumn& column : of.columns) {
            for (const Phrase<> phrase : phrasesOf(column)) {
                check(board, "column", sayPlain(mockPhrases(), phrase));
            }
        }
    }
}

TEST_CASE("in a language made up for it, fields of combinations and moving loads keep no English "
          "word, nor does the name of a new load") {
    Truss truss = stripWithCart();
    truss.combinations.push_back({"ULS", {{"loads", 1.5}}, {}});
    Board board = mockBoard(truss);
    const Writer writer{mockPhrases(), board.state.truss};
    for (const ListFieldKind kind :
         {ListFieldKind::CombinationName, ListFieldKind::Factor, ListFieldKind::MovingName,
          ListFieldKind::AxleAt, ListFieldKind::AxleForce, ListFieldKind::SpreadForce,
          ListFieldKind::SpreadLength}) {
        check(board, "field", listName(writer, {kind, 0, 0}));
    }
    check(board, "new combination", listName(writer, {ListFieldKind::CombinationName, 1, 0}));
    board.act(Commit{addMovingLoad(writer, truss.moving[0].path)});
    Board without = mockBoard(truss);
    check(without, "new moving load", board.state.truss.moving.back().id);
}

TEST_CASE("in a language made up for it, a QR code's title keeps no English word") {
    const std::string svg = qrCodeSvg(mockPhrases(), *qrCodeOf("truss"));
    CHECK(foreignWords(textOfHtml(svg), {}) == std::vector<std::string>{});
    CHECK(svg.find("QR") == std::string::npos); // in the other letters too
}

TEST_CASE("a class with a decimal comma sees it in the cells of the model, and types either sign") {
    Truss truss = roof();
    truss.classSettings.decimalSign = ',';
    truss.joints[0].at.x = 0.25;
    truss.supports.front().settle = {0.5, -1.25};
    const Cell x{CellTable::Joints, 0, column::kJointX};
    CHECK(cellLook(truss, x) == "0,25");
    CHECK(cellText(truss, x) == "0,25"); // the text when typing begins
    CHECK(cellEdit(truss, x, "0,75").ok());
    CHECK(cellEdit(truss, x, "0.75").ok());
    CHECK(cellLook(truss, {CellTable::Supports, 0, column::kSupportSettle}) == "0,5; -1,25");
}

// The text when typing begins, in every kind of field that holds numbers, for a class that writes a
// decimal comma; typed back unchanged, it changes nothing.
TEST_CASE("with a decimal comma, fields begin with a comma and read back the same") {
    Truss truss = roof();
    truss.classSettings.decimalSign = ',';
    truss.joints[0].at = {0.25, -1.5e-7};
    truss.joints[1].at.x = 1.234; // here 1,234 is not a thousand
    truss.supports.front().settle = {0.5, -1.25};
    Section section;
    section.id = "S";
    section.area = 1200.5;
    section.radius = 25.25;
    truss.sections.push_back(section);
    truss.members[0].warming = 12.5;
    for (const CellTable table : {CellTable::Joints, CellTable::Members, CellTable::Supports,
                                  CellTable::Loads, CellTable::Sections}) {
        for (int row = 0; row < rowsOf(truss, table); ++row) {
            for (int column = 0; column < columnsOf(table); ++column) {
                const Cell cell{table, row, column};
                const std::string text = cellText(truss, cell);
                CAPTURE(cellName({englishPhrases(), truss}, cell), text);
                CHECK(text.find('.') == std::string::npos);
                if (text.empty() || !canType(truss, cell)) {
                    continue;
                }
                const Outcome<Edit> edit = cellEdit(truss, cell, text);
                REQUIRE(edit.ok());
                const Outcome<Truss> after = gusset::apply(truss, edit.value());
                if (after.ok()) { // two unchanged labels: there is such a member already
                    CHECK(after.value() == truss);
                } else {
                    CHECK(cell == Cell{CellTable::Members, row, column::kMemberEnds});
                }
            }
        }
    }
    CHECK(cellText(truss, {CellTable::Sections, 0, column::kSectionMake}) == "A 1200,5; r 25,25");
    CHECK(typedNumber(truss, 2.5) == "2,5");
    CHECK(withPoints(truss, "1,234 @ 30,5°") == "1.234 @ 30.5°");
    CHECK(withPoints(truss, "3, -4") == "3, -4"); // parts
    CHECK(withPoints(truss, "3,5; -4,25") == "3.5; -4.25");
    CHECK_FALSE(cellEdit(truss, {CellTable::Joints, 1, column::kJointX}, "1.234,5").ok());
    CHECK(typedNumbers(truss, "0, -5.5") == "0; -5,5");
    truss.classSettings.decimalSign = '.';
    CHECK(typedNumber(truss, 2.5) == "2.5");
    CHECK(withPoints(truss, "1,234") == "1,234"); // ambiguous, asked back
    CHECK_FALSE(cellEdit(truss, {CellTable::Joints, 1, column::kJointX}, "1,234").ok());
    CHECK(cellEdit(truss, {CellTable::Joints, 1, column::kJointX}, "1,5").ok());
}

TEST_CASE("with a decimal comma, page's tables, dimensions and steps are typed with one too") {
    Truss truss = roof(); // A (0, 0), B (6, 0), C (3, 4)
    truss.classSettings.decimalSign = ',';
    truss.joints[2].at.x = 3.5;
    CHECK(modelTablesHtml({englishPhrases(), truss}).find("data-text=\"3,5\"") !=
          std::string::npos);
    AppState state = startWith(truss);
    state.selection.joints = {JointId{0}, JointId{1}, JointId{2}};
    state.selection.members = {MemberId{0}, MemberId{1}, MemberId{2}};
    CHECK(severalText(state, SeveralKind::Repeat).find('.') == std::string::npos);
    state.truss.members[0].warming = -7.5;
    CHECK(severalText(state, SeveralKind::Warm) == "-7,5");
}

TEST_CASE("with a decimal comma, equations on one line are parted by semicolons") {
    Truss truss = roof(); // its legs have a rise of 4 in 5
    CHECK(workingText({englishPhrases(), truss}, workOut(truss, {}, solve(truss)))
              .find("sin\u2009\u03B1 = 0.8, cos\u2009\u03B1 = 0.6") != std::string::npos);
    truss.classSettings.decimalSign = ',';
    CHECK(workingText({englishPhrases(), truss}, workOut(truss, {}, solve(truss)))
              .find("sin\u2009\u03B1 = 0,8; cos\u2009\u03B1 = 0,6") != std::string::npos);
}

TEST_CASE("an empty board and one without supports say so in the page's language") {
    Board board = mockBoard({});
    showResults(board, ResultPage::Influence);
    (void)board.line(400);
    check(board, "empty board", board.derived.influence.says);
    check(board, "summary", boardSummary(board.state, board.derived));
    Truss loose = roof();
    loose.supports.clear();
    board = mockBoard(loose);
    showResults(board, ResultPage::Influence);
    (void)board.line(400);
    check(board, "no support", board.derived.influence.says);
}

namespace {

void openMenu(Board& board, const Hit& under) {
    board.state.menu.open = true;
    board.state.menu.under = under;
    check(board, "title of a menu", boardMenuTitle(board.state));
    const std::vector<MenuLine> lines = boardMenuLines(board.state);
    CHECK_FALSE(lines.empty());
    for (const MenuLine& line : lines) {
        check(board, "line of a menu", line.label);
    }
}

// The message after a tap that hits nothing, or a text that can't be read as what it is for.
void checkSaid(Board& board, const Actions& actions) {
    board.state.message = {};
    update(board.state, actions);
    CHECK_FALSE(board.state.message.text.empty());
    check(board, "message", board.state.message.text);
}

} // namespace

TEST_CASE(
    "in a language made up for it, menus, tools and typed fields of the board keep no English "
    "word") {
    Board board = mockBoard(roof());
    for (const SupportKind kind : {SupportKind::Pin, SupportKind::Roller}) {
        board.state.truss.supports.front().kind = kind;
        for (const Hit& under :
             {Hit{JointId{0}}, Hit{MemberId{0}}, Hit{SupportId{0}}, Hit{LoadId{0}}, Hit{}}) {
            openMenu(board, under);
        }
    }
    board.state.menu.under = MemberId{0};
    board.state.menu.page = MenuPage::Sections;
    check(board, "title of the list", boardMenuTitle(board.state));
    board.state.menu = {};
    for (const auto tap : {tapPin, tapRoller, tapLoad}) {
        Actions actions;
        tap(board.state, {}, actions);
        checkSaid(board, actions);
    }
    for (const char* end : {"= 6", "0"}) {
        check(board, "end of a member",
              said(*board.state.book, typedEnd(board.state, {1, 1}, end).issues().front().says));
    }
    board.press(Key::SelectAll);
    check(board, "what is picked", selectionText(board.state));
    for (const auto& [kind, text] :
         {std::pair{SeveralKind::Copy, "0, 0"}, std::pair{SeveralKind::Repeat, "2.5"},
          std::pair{SeveralKind::Repeat, "2 × 0"}}) {
        Actions actions;
        REQUIRE(finishSeveral(board.state, {kind, text, FieldEnd::Below}, actions));
        checkSaid(board, actions);
    }
    for (const SeveralKind kind : {SeveralKind::Move, SeveralKind::Copy, SeveralKind::Turn,
                                   SeveralKind::Repeat, SeveralKind::Warm}) {
        check(board, "typed for several", sayPlain(*board.state.book, severalName(kind)));
        check(board, "its example", sayPlain(*board.state.book, severalExample(kind)));
    }
    const Writer writer{*board.state.book, board.state.truss};
    check(board, "no dimension",
          said(writer.book, stretched(writer, {false, 0, 3}, -1).issues().front().says));
    for (const bool upright : {false, true}) {
        for (const double to : {2.0, 6.0}) { // several joints move, or only one
            check(board, "dimension", stretched(writer, {upright, 0, to}, 7).value().says);
        }
    }
}

TEST_CASE("in a language made up for it, messages about what was opened or typed keep no English "
          "word") {
    Truss truss = roof();
    truss.title = "joints members id"; // words of places in a file, and its own
    Board board = mockBoard(truss);
    const std::string link = "#" + writeLink(truss);
    for (const std::string& text :
         {std::string("{"), std::string("{\"gusset\": 1}"), std::string("#m=1.AB"),
          link.substr(0, link.size() / 2), link + "&case=X"}) {
        checkSaid(board, {OpenText{text}});
    }
    checkSaid(board, {SeePen{}});
    checkSaid(board, {Commit{RenameJoint{JointId{0}, "B"}}});
    checkSaid(board, {ShowEdit{RenameJoint{JointId{0}, "B"}}, EndGesture{}});

    const auto faultOf = [&](const auto& outcome) {
        REQUIRE_FALSE(outcome.ok());
        check(board, "what was typed", said(*board.state.book, outcome.issues().front().says));
    };
    faultOf(readJoint(truss, "X"));
    faultOf(readEnds(truss, "X"));
    for (const SectionShape& shape : sectionShapes()) {
        board.state.truss.title = std::string(shape.name) +
                                  " round chs shs rhs angle double-angle channel i flat timber gap";
        faultOf(madeOf({}, std::string(shape.name)));
    }
    faultOf(madeOf({}, "X"));
    faultOf(madeOf({}, "X 1"));
    faultOf(settled(truss, truss.supports[0], "X"));
    faultOf(pasteRows(truss, {CellTable::Joints, 0, 1}, "0\t0\nX\tX", {0, 1, 2}));
    faultOf(pasteRows(truss, {CellTable::Joints, 0, 1}, "0\t0\n1\t1", {0, 1}));

    Truss large;
    large.joints.resize(10'001);
    board = mockBoard(large);
    deriveLink(board.state, board.derived);
    check(board, "why there is no link", board.derived.linkFault);
}

TEST_CASE("in a language made up for it, the steps of the history keep no English word") {
    for (const bool all : {true, false}) {
        Board board = mockBoard(roof());
        if (all) {
            board.press(Key::SelectAll);
        } else {
            board.state.selection.joints = {JointId{0}};
        }
        for (const std::optional<Edit>& edit :
             {mirrorSelection(board.state, Side::Right), turnSelection(board.state, 30),
              repeatSelection(board.state, {1, 0}, 1), copySelection(board.state, {0, 9})}) {
            REQUIRE(edit);
            check(board, "edit", said(*board.state.book, describe(board.state.truss, *edit)));
        }
    }
    Board board = mockBoard(roof());
    const Writer writer{*board.state.book, board.state.truss};
    board.act(Commit{stretched(writer, {false, 0, 3}, 7).value().edit});
    check(board, "dimension", undoText(board.state));
    board.state = typedIn(board.state, "joint.0.x", "1\n2");
    check(board, "rows", undoText(board.state));
    for (const OpenText& opened :
         {OpenText{writeLink(gable()), OpenedFrom::Link}, OpenText{writeModel(roof())},
          OpenText{writeModel(gable()), OpenedFrom::File, "Q1"},
          OpenText{writeModel(roof()), OpenedFrom::Example},
          OpenText{writeModel(gable()), OpenedFrom::Before},
          OpenText{writeModel(roof()), OpenedFrom::New},
          OpenText{writeModel(gable()), OpenedFrom::Form}}) {
        board.act(opened);
        check(board, "opened", undoText(board.state));
    }
}
