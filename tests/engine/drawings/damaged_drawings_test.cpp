// Every reader of drawings, on damaged files: a sound truss or words, never a crash.
#include "exchange/drawings/drawing_file.hpp"
#include "exchange/drawings/dxf_writer.hpp"
#include "exchange/drawings/truss_table.hpp"
#include "model/validate/findings.hpp"
#include "support/drawing/written_drawing.hpp"
#include "support/english.hpp"
#include "support/mutation.hpp"
#include "support/trusses/random_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cstdio>
#include <string>
#include <vector>

using namespace gusset;
using namespace gusset::support;

namespace {

struct DamagedTally {
    int read = 0;
    int refused = 0;
};

void judgeDamaged(const std::string& text, DamagedTally& tally) {
    const Outcome<Traced> traced = readDrawing(text, {});
    const Issues& words = traced ? traced.value().notes : traced.issues();
    for (const Issue& issue : words) {
        if (issue.says.english == nullptr || english(issue.at).empty()) {
            FAIL_CHECK("no words: " << english(issue) << "\n" << text);
        }
    }
    if (!traced) {
        ++tally.refused;
        return;
    }
    ++tally.read;
    if (!errorsOf(traced.value().truss).empty() || traced.value().truss.members.empty()) {
        FAIL_CHECK("no sound truss: " << text);
    }
}

using Files = std::vector<std::string>;

DamagedTally damaged(const Files& files, std::uint64_t seed) {
    DamagedTally tally;
    Random random(seed);
    for (int i = 0; i < 4'000; ++i) {
        const std::string& file = random.pick(files);
        judgeDamaged(mutated(file, random.pick(files), random), tally);
    }
    std::printf("damaged drawings of one kind: %d read with notes, %d refused with words\n",
                tally.read, tally.refused);
    CHECK(tally.read + tally.refused == 4'000);
    CHECK(tally.read > 500);
    CHECK(tally.refused > 20);
    return tally;
}

template <class Write>
Files filesOf(const Write& write) {
    Files files;
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        Random random(seed);
        files.push_back(write(randomDeterminateTruss(seed), random));
    }
    return files;
}

} // namespace

TEST_CASE("Damaged DXF files become sound trusses or are refused with words") {
    Files files = filesOf([](const Truss& truss, Random& random) {
        return strokesAsDxf(drawnStrokes(truss, 0.001, random), 1, random);
    });
    files.push_back(writeDxf(englishPhrases(), randomDeterminateTruss(7), LengthUnit::mm));
    damaged(files, 1);
}

TEST_CASE("Damaged SVG files become sound trusses or are refused with words") {
    damaged(filesOf([](const Truss& truss, Random& random) {
                return strokesAsSvg(drawnStrokes(truss, 0.001, random), 40, random);
            }),
            2);
}

TEST_CASE("Damaged tables become sound trusses or are refused with words") {
    damaged(filesOf([](const Truss& truss, Random&) { return trussTable(truss); }), 3);
}
