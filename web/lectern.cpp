// The program of the lesson's page: the lectern (engine/lectern) and nothing that draws on a board.
// A request and its answer are JSON; the answer is the caller's to free.

#include "lectern/lectern.hpp"

#include <cstdlib>
#include <cstring>
#include <emscripten.h>

extern "C" {

EMSCRIPTEN_KEEPALIVE char* gussetLectern(const char* request) {
    // The page has one lesson; its derivations stay between requests.
    static gusset::Lectern lectern(gusset::englishPhrases());
    const std::string reply = lectern.reply(request);
    auto* copy = static_cast<char*>(std::malloc(reply.size() + 1));
    if (copy) {
        std::memcpy(copy, reply.c_str(), reply.size() + 1);
    }
    return copy;
}

} // extern "C"
