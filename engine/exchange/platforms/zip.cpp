#include "exchange/platforms/zip.hpp"

#include <cstdint>
#include <zlib.h>

namespace gusset {

namespace {

void putBytes(std::string& out, std::uint64_t value, int count) { // little-endian
    for (int i = 0; i < count; ++i) {
        out += static_cast<char>(value >> (8 * i) & 0xFFU);
    }
}

// What the local header and the central directory say alike, from "version needed" to the length of
// the extra field (4.3.7).
std::string fileHeader(const PackedFile& file) {
    constexpr unsigned kVersion = 10;                   // 4.4.3: the default
    constexpr unsigned kFirstDay = 0 << 9 | 1 << 5 | 1; // 1 January 1980, so that bytes repeat
    const auto size = static_cast<std::uint64_t>(file.bytes.size());
    const auto* bytes = reinterpret_cast<const Bytef*>(file.bytes.data());
    std::string out;
    putBytes(out, kVersion, 2);
    putBytes(out, 0, 2); // flags
    putBytes(out, 0, 2); // method: stored
    putBytes(out, 0, 2); // time
    putBytes(out, kFirstDay, 2);
    putBytes(out, crc32(0, bytes, static_cast<uInt>(size)), 4);
    putBytes(out, size, 4); // compressed
    putBytes(out, size, 4);
    putBytes(out, file.path.size(), 2);
    putBytes(out, 0, 2); // no extra field
    return out;
}

std::string directoryEntry(const PackedFile& file, std::size_t offset) {
    std::string out = "PK\x01\x02";
    putBytes(out, 10, 2); // made by: as needed to read it
    out += fileHeader(file);
    putBytes(out, 0, 2); // comment
    putBytes(out, 0, 2); // disk
    putBytes(out, 0, 2); // internal attributes
    putBytes(out, 0, 4); // external attributes
    putBytes(out, offset, 4);
    return out + file.path;
}

} // namespace

std::string zipOf(const std::vector<PackedFile>& files) {
    std::string out;
    std::string directory;
    for (const PackedFile& file : files) {
        directory += directoryEntry(file, out.size());
        out += "PK\x03\x04" + fileHeader(file) + file.path + file.bytes;
    }
    const std::size_t start = out.size();
    out += directory + "PK\x05\x06";
    putBytes(out, 0, 4); // disks
    putBytes(out, files.size(), 2);
    putBytes(out, files.size(), 2);
    putBytes(out, directory.size(), 4);
    putBytes(out, start, 4);
    putBytes(out, 0, 2); // comment
    return out;
}

} // namespace gusset
