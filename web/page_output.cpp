#include "page_output.hpp"

#include "app/page/file_name.hpp"
#include "app/state/update.hpp"
#include "board_picture.hpp"
#include "exchange/files/model_file.hpp"
#include "phrases/heard.hpp"
#include "phrases/share.hpp"
#include "report/results/results_text.hpp"

#include <algorithm>
#include <string>

namespace gusset {

namespace {

void sendLink(Page& page, const PageRequests& requests) {
    deriveLink(page.state, page.derived);
    if (page.derived.link.empty()) {
        update(page.state, {Say{MessageKind::Problem, page.derived.linkFault}});
        page.framesWanted = std::max(page.framesWanted, 2);
        return;
    }
    const std::string address = page.address + "#" + page.derived.link;
    setAddress(page.derived.link);
    if (requests.copyLink) {
        copyText(address, sayPlain(*page.state.book, phrase::kLinkCopied));
    } else {
        shareLink(page.state.committed.title, address);
    }
}

void saveFiles(const Page& page, const PageRequests& requests) {
    const Truss& truss = page.state.committed;
    if (requests.saveCode && page.linkCode) {
        saveFile(fileNameFor(truss.title, "-code.svg"),
                 qrCodeSvg(*page.state.book, *page.linkCode));
    }
    if (requests.savePicture) {
        saveFile(fileNameFor(truss.title, ".svg"), pictureOf(page));
    }
    if (requests.savePixels) {
        savePicture(fileNameFor(truss.title, ".png"), pictureOf(page));
    }
    if (requests.saveResults) {
        saveFile(fileNameFor(truss.title, ".csv"),
                 resultsCsv(page.state.truss, page.derived.solution));
    }
}

} // namespace

void saveBoard(Page& page) {
    const Truss& truss = page.state.committed;
    const std::string name = fileNameFor(truss.title, ".json");
    saveFile(name, writeModel(truss));
    update(page.state, {Say{MessageKind::Info, statement(phrase::kFileSaved, {{"file", name}})}});
    page.framesWanted = std::max(page.framesWanted, 2);
}

void carryOut(Page& page, const PageRequests& requests) {
    if (requests.copyLink || requests.shareLink) {
        sendLink(page, requests);
    }
    if (requests.saveFile) {
        saveBoard(page);
    }
    saveFiles(page, requests);
    if (requests.readAsPage) {
        showPageText();
    }
    if (!requests.leaveFor.empty()) {
        leaveFor(requests.leaveFor, page.derived.link);
    }
    if (!requests.announce.empty()) {
        announce(requests.announce);
    }
    if (requests.showStart) {
        showStart();
    }
}

} // namespace gusset
