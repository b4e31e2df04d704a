#include "cli/asked.hpp"

namespace gusset::cli {

std::string exercisePage(const Arguments& arguments) {
    const std::string site = arguments.valueOf("--address");
    return site.empty() ? site : site + "exercise/";
}

std::string exerciseAddress(const Arguments& arguments, const std::string& link) {
    return exercisePage(arguments) + "#" + link;
}

} // namespace gusset::cli
