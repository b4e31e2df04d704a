// The program of the instructor's page: the course (engine/course), likewise. It runs in a worker,
// whose script hears of progress.

#include "course/course.hpp"
#include "reply.hpp"

#include <emscripten.h>

EM_JS(void, tellProgress, (int done, int all), { Module['told']({done, all}); });

extern "C" {

EMSCRIPTEN_KEEPALIVE char* gussetCourse(const char* request) {
    const auto told = [](const gusset::Progress& progress) {
        tellProgress(static_cast<int>(progress.done), static_cast<int>(progress.all));
    };
    return gusset::forScript(gusset::courseReply(gusset::englishPhrases(), request, told));
}

} // extern "C"
