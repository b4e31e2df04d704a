// The program of the page that chooses profiles: the workshop (engine/workshop), in a worker.

#include "workshop/workshop.hpp"
#include "reply.hpp"

#include <emscripten.h>

extern "C" {

EMSCRIPTEN_KEEPALIVE char* gussetWorkshop(const char* request) {
    return gusset::forScript(gusset::workshopReply(gusset::englishPhrases(), request));
}

} // extern "C"
