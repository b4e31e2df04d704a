#include "exchange/links/deflated.hpp"

#include <zlib.h>

#include <algorithm>
#include <array>
#include <cassert>

namespace gusset {

namespace {

// Text that occurs often in links, the most frequent last. Part of link form 1: never change a
// character of it.
constexpr std::string_view kDictionary =
    R"("exercise":{"moving":[{"id":"cart","path":["A","B","C","D","E","F","G","H"],"axles":[{"at":0,)"
    R"("force":-8},{"at":1.8,"force":-)"
    R"("combinations":[{"id":"strength","factors":{"dead":1.35,"live":1.5,"snow":1.5,"wind":1.5}},{"id":")"
    R"("sections":[{"id":"chord","material":"timber","shape":"angle","H":,"B":"rhs","shs","chs","D":60.3,"t":)"
    R"(3.2},{"id":"web","material":"steel","A":1200,"r":21},{"id":"diagonal","bottom","top","post")"
    R"("materials":[{"id":"steel","E":210000,"strength":235,"density":7850,"alpha":1.2e-5}])"
    R"("class":{"moments":"clockwise","angles":"slopes","cosines","axes":"H-V","symbols":"AB","S1","senses":)"
    R"("guessed","numbers":{"form":"exact","significant","digits":3,"carry":"rounded"}})"
    R"("units":{"force":"N","lbf","length":"mm","section":"cm","stress":"MPa","displacement":"mm"})"
    R"("units":{"force":"kip","length":"ft","section":"in","stress":"ksi","displacement":"in"})"
    R"("live","snow","wind","dead","deck","loads")"
    R"([2,125,250,375,-25,[1,5,15,25,75,-5,-15],[[0,1,1,1,1,1,-5,1,1,1],[[0,2,0,2,0,2],[0,6,6,6,6,)"
    R"([0,4,4,4,4,-12,4,4],[0,0,0,0,0,4,0,0]],[0,0,1,0,1,0,1,0,0,1,0],[1,2,1,1,2,-1,3,1,2,1]],)"
    R"(],[[0,4],["pin","roller"],[0,null,90]],[[1,1,1],[0,10],[0,-10,0,0]],[[2],0,[0,-20,0,0]],)"
    R"([[0,0,3,3,3,3,-9,3,3],[0,0,0,0,0,4,0,0]],[[0,0,0,1,0,1,0,1,0],[{"title":"Roof truss, span 12 m"}])";

struct DeflateStream {
    z_stream stream{};
    DeflateStream() {
        constexpr int kRawWindow = -15;
        constexpr int kMemory = 9;
        [[maybe_unused]] const int made =
            deflateInit2(&stream, 9, Z_DEFLATED, kRawWindow, kMemory, Z_DEFAULT_STRATEGY);
        assert(made == Z_OK);
    }
    ~DeflateStream() { deflateEnd(&stream); }
    DeflateStream(const DeflateStream&) = delete;
    DeflateStream& operator=(const DeflateStream&) = delete;
};

struct InflateStream {
    z_stream stream{};
    InflateStream() {
        constexpr int kRawWindow = -15;
        [[maybe_unused]] const int made = inflateInit2(&stream, kRawWindow);
        assert(made == Z_OK);
    }
    ~InflateStream() { inflateEnd(&stream); }
    InflateStream(const InflateStream&) = delete;
    InflateStream& operator=(const InflateStream&) = delete;
};

const Bytef* bytesOf(std::string_view text) { return reinterpret_cast<const Bytef*>(text.data()); }

} // namespace

Bytes deflated(std::string_view text) {
    DeflateStream deflate;
    z_stream& stream = deflate.stream;
    deflateSetDictionary(&stream, bytesOf(kDictionary), static_cast<uInt>(kDictionary.size()));
    Bytes out(deflateBound(&stream, static_cast<uLong>(text.size())));
    stream.next_in = const_cast<Bytef*>(bytesOf(text)); // zlib only reads it
    stream.avail_in = static_cast<uInt>(text.size());
    stream.next_out = out.data();
    stream.avail_out = static_cast<uInt>(out.size());
    [[maybe_unused]] const int ended = ::deflate(&stream, Z_FINISH);
    assert(ended == Z_STREAM_END);
    out.resize(stream.total_out);
    return out;
}

Inflated inflated(const Bytes& bytes, std::size_t largest) {
    InflateStream inflate;
    z_stream& stream = inflate.stream;
    inflateSetDictionary(&stream, bytesOf(kDictionary), static_cast<uInt>(kDictionary.size()));
    stream.next_in = const_cast<Bytef*>(bytes.data());
    stream.avail_in = static_cast<uInt>(bytes.size());
    Inflated out;
    std::array<char, 16 << 10> piece;
    int state = Z_OK;
    while (state == Z_OK) {
        stream.next_out = reinterpret_cast<Bytef*>(piece.data());
        stream.avail_out = static_cast<uInt>(piece.size());
        state = ::inflate(&stream, Z_NO_FLUSH);
        const std::size_t count = piece.size() - stream.avail_out;
        if (out.text.size() + count > largest) {
            return {{}, InflateFault::TooLarge};
        }
        out.text.append(piece.data(), count);
    }
    if (state != Z_STREAM_END || stream.avail_in != 0) {
        return {{}, InflateFault::Damaged};
    }
    return out;
}

} // namespace gusset
