#include "support/mutation.hpp"

#include "exchange/links/compact_model.hpp"
#include "exchange/links/deflated.hpp"
#include "exchange/links/link.hpp"
#include "exchange/links/link_text.hpp"
#include "exchange/results/json_results.hpp"
#include "model/validate/findings.hpp"
#include "statics/solve/solution.hpp"
#include "support/files.hpp"
#include "support/trusses/rich_model.hpp"

#include <algorithm>

namespace gusset::support {

namespace {

std::size_t placeIn(const std::string& text, Random& random) {
    return static_cast<std::size_t>(random.integer(0, static_cast<int>(text.size())));
}

std::string pieceOf(const std::string& text, Random& random) {
    const std::size_t start = placeIn(text, random);
    return text.substr(start, static_cast<std::size_t>(random.integer(1, 24)));
}

const std::vector<std::string>& tellingPieces() {
    static const std::vector<std::string> kPieces{"0",
                                                  "-1",
                                                  "1e308",
                                                  "1e999",
                                                  "-0",
                                                  "0.1",
                                                  "null",
                                                  "true",
                                                  "[]",
                                                  "{}",
                                                  "\"\"",
                                                  "[",
                                                  "]",
                                                  "{",
                                                  "}",
                                                  ",",
                                                  ":",
                                                  "\"",
                                                  "\\",
                                                  "\\u0000",
                                                  "NaN",
                                                  "1e-320",
                                                  "99999999999999999999",
                                                  "\"A\"",
                                                  "\"K\"",
                                                  "\"x\":1",
                                                  "\"case\":\"\"",
                                                  "\xff",
                                                  "\xC3",
                                                  std::string(1, '\0'),
                                                  "[[[["};
    return kPieces;
}

// Every kind of text of one model.
struct Seed {
    std::string file;
    std::string link;
    std::string compact;
    std::string deflatedBytes;
};

std::string textOf(const Bytes& bytes) { return {bytes.begin(), bytes.end()}; }
Bytes bytesOf(const std::string& text) { return {text.begin(), text.end()}; }

Seed seedOf(const Truss& truss) {
    const std::string compact = compactModel(truss);
    return {writeModel(truss), writeLink(truss), compact, textOf(deflated(compact))};
}

std::vector<Seed> seeds() {
    std::vector<Seed> list;
    for (const char* file :
         {"site/examples/footbridge.json", "site/examples/farm_bridge.json",
          "site/examples/garage_roof.json", "tests/data/formats/links/every_key.json"}) {
        list.push_back(seedOf(readModel(repositoryFile(file)).value().truss));
    }
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        list.push_back(seedOf(randomRichTruss(seed)));
    }
    return list;
}

// A failure is reported once, with what caused it.
void demand(bool holds, const std::string& what, const std::string& text, FuzzTally& tally) {
    if (!holds && tally.broken.size() < 10) {
        tally.broken.push_back(what + ": " + text);
    }
}

void judge(const Outcome<Reading>& read, const std::string& text, FuzzTally& tally) {
    if (!read) {
        ++tally.refused;
        const bool hasWords = !read.issues().empty() && read.issues().front().says.english &&
                              !read.issues().front().at.empty();
        demand(hasWords, "an issue without place or words", text, tally);
        return;
    }
    ++tally.opened;
    const Truss& truss = read.value().truss;
    const Outcome<Reading> fromFile = readModel(writeModel(truss));
    demand(fromFile.ok() && fromFile.value().truss == truss, "file changes", text, tally);
    const Outcome<Reading> fromLink = readLink(writeLink(truss));
    demand(fromLink.ok() && fromLink.value().truss == truss, "link changes", text, tally);
    const Solution solution = solve(truss);
    demand(errorsOf(truss).empty(), "opens and is invalid", text, tally);
    demand(solution.status != Status::Invalid || !solution.errors.empty(),
           "is not solved, without a reason", text, tally);
    demand(!writeResults(englishPhrases(), truss, solution).empty(), "no results", text, tally);
}

} // namespace

std::string mutated(std::string text, const std::string& spare, Random& random) {
    for (int left = random.oneIn(2) ? 1 : 3; left > 0; --left) {
        const std::size_t at = placeIn(text, random);
        switch (random.integer(0, 9)) {
        case 0:
            text.resize(at);
            break;
        case 1:
            text.erase(at, static_cast<std::size_t>(random.integer(1, 12)));
            break;
        case 2:
            text.insert(at, pieceOf(text, random));
            break;
        case 3:
            text.insert(at, pieceOf(spare, random));
            break;
        case 4:
            text.insert(at, random.pick(tellingPieces()));
            break;
        case 5: {
            const std::string& piece = random.pick(tellingPieces());
            text.replace(at, piece.size(), piece);
            break;
        }
        case 6:
        case 7: // still a number, but a different one
            if (const std::size_t digit = text.find_first_of("0123456789", at);
                digit != std::string::npos) {
                text[digit] = static_cast<char>('0' + random.integer(0, 9));
            }
            break;
        default:
            if (at < text.size()) {
                text[at] = static_cast<char>(text[at] ^ (1 << random.integer(0, 7)));
            }
        }
    }
    return text;
}

void fuzzOnce(Random& random, FuzzTally& tally) {
    static const std::vector<Seed> kSeeds = seeds();
    const Seed& seed = random.pick(kSeeds);
    const Seed& other = random.pick(kSeeds);
    std::string text;
    switch (random.integer(0, 3)) {
    case 0:
        text = mutated(seed.file, other.file, random);
        judge(readModel(text), text, tally);
        return;
    case 1:
        text = mutated(seed.link, other.link, random);
        break;
    case 2:
        text = sealedLink(deflated(mutated(seed.compact, other.compact, random)));
        break;
    default:
        text = sealedLink(bytesOf(mutated(seed.deflatedBytes, other.deflatedBytes, random)));
    }
    judge(readLink(text), text, tally);
}

} // namespace gusset::support
