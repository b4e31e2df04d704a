#pragma once
// Files of the repository, for tests, natively and in node.

#include <string>

namespace gusset::support {

// `path` from the root of the repository. Exits the test program if the file does not exist.
[[nodiscard]] std::string repositoryFile(const std::string& path);

} // namespace gusset::support
