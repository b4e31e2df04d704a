// The program of the classroom's pages: the desk (engine/desk) and nothing that draws. A request
// and its answer are JSON; the answer is the caller's to free.

#include "desk/desk.hpp"

#include <cstdlib>
#include <cstring>
#include <emscripten.h>

extern "C" {

EMSCRIPTEN_KEEPALIVE char* gussetDesk(const char* request) {
    const std::string reply = gusset::deskReply(gusset::englishPhrases(), request);
    auto* copy = static_cast<char*>(std::malloc(reply.size() + 1));
    if (copy) {
        std::memcpy(copy, reply.c_str(), reply.size() + 1);
    }
    return copy;
}

} // extern "C"
