#pragma once
// Files of the repository, for tests, natively and in node.

#include <string>

namespace gusset::support {

// `path` from the root of the repository. Ends the test program when the file is not there.
[[nodiscard]] std::string repositoryFile(const std::string& path);

} // namespace gusset::support
