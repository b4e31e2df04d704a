// The program of the lesson's page: the lectern (engine/lectern), likewise.

#include "lectern/lectern.hpp"
#include "reply.hpp"

#include <emscripten.h>

extern "C" {

EMSCRIPTEN_KEEPALIVE char* gussetLectern(const char* request) {
    // The page has one lesson; its derivations stay between requests.
    static gusset::Lectern lectern(gusset::englishPhrases());
    return gusset::forScript(lectern.reply(request));
}

} // extern "C"
