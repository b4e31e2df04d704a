// Which board the page starts with.
#include "app/state/session.hpp"
#include "app/state/update.hpp"
#include "demo.hpp"
#include "exchange/files/model_file.hpp"
#include "exchange/json/language_file.hpp"
#include "page.hpp"
#include "phrases/frame.hpp"

namespace gusset {

void putFirstBoard(Page& page, std::string_view newer, std::string_view older) {
    for (const std::string_view text : {newer, older}) {
        if (text.empty()) {
            continue;
        }
        if (std::optional<AppState> saved = readSession(text)) {
            page.state = *std::move(saved);
            page.boardIsStored = true;
            break;
        }
    }
    if (!page.boardIsStored) {
        const auto bytes = demoModel();
        Outcome<Reading> demo =
            readModel({reinterpret_cast<const char*>(bytes.data()), bytes.size()});
        page.state = startWith(demo ? std::move(demo).value().truss : Truss{});
        page.addressRevision = page.state.revision; // only looking keeps the plain address
    }
    page.storedRevision = page.state.revision;
}

void putBoardBack(Page& page, std::string_view newer, std::string_view older, Return how) {
    if (how == Return::Empty) {
        page.state = startWith({});
    } else {
        putFirstBoard(page, newer, older);
    }
    if (how == Return::BeforeLastStep) {
        update(page.state, {Undo{}});
    }
    page.state.notebook.tab = NotebookTab::Model;
    page.state.view.memberFigure = MemberFigure::Force;
    page.state.view.showMovement = false;
    page.storedRevision = page.state.revision; // nothing to store until it is changed here
    page.addressRevision = 0;
}

void speak(Page& page, std::string_view language) {
    Outcome<PhraseBook> book = readLanguage(language);
    if (!book) {
        const Issue& fault = book.issues().front();
        update(page.state,
               {Say{MessageKind::Problem,
                    statement(phrase::kNoLanguage, {{"place", fault.at}, {"fault", fault.says}})}});
        return;
    }
    page.language = std::move(book).value();
    page.state.book = &page.language;
}

} // namespace gusset
