// The program of the student's page: the desk (engine/desk) and nothing that draws. A request and
// its answer are JSON; the answer is the caller's to free.

#include "desk/desk.hpp"
#include "reply.hpp"

#include <emscripten.h>

extern "C" {

EMSCRIPTEN_KEEPALIVE char* gussetDesk(const char* request) {
    return gusset::forScript(gusset::deskReply(gusset::englishPhrases(), request));
}

} // extern "C"
