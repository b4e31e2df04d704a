#pragma once
// Files packed into one: the ZIP format of PKWARE's APPNOTE.TXT 6.3.4, sections 4.3.7 (local file
// header), 4.3.12 (central directory) and 4.3.16 (its end). Stored, not compressed: the files are
// small, and every reader takes it. The same files always give the same bytes.

#include <string>
#include <vector>

namespace gusset {

struct PackedFile {
    std::string path; // with '/', ASCII
    std::string bytes;
};
// Precondition: fewer than 65 536 files, together less than 4 GiB.
[[nodiscard]] std::string zipOf(const std::vector<PackedFile>&);

} // namespace gusset
