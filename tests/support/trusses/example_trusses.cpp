#include "support/trusses/example_trusses.hpp"

#include "exchange/files/model_file.hpp"
#include "exchange/json/json_value.hpp"
#include "support/files.hpp"

#include <string>

namespace gusset::support {

std::vector<Truss> exampleTrusses() {
    std::vector<Truss> trusses;
    const JsonValue index = parseJson(repositoryFile("site/examples/index.json")).value();
    for (const JsonValue& item : index.find("examples")->items) {
        const std::string file = "site/examples/" + item.find("file")->text;
        trusses.push_back(readModel(repositoryFile(file)).value().truss);
    }
    return trusses;
}

} // namespace gusset::support
