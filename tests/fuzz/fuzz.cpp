// Gives each command the input of one seed after another, and counts:
//     fuzz [--from SEED] [--count N] [--seconds S] [--now FILE]
//     fuzz --input FILE      judges one file
//     fuzz --write SEED      prints the input of a seed
// Each failure is printed with its seed; the last line is JSON. FILE of --now always holds the
// current seed, so that tests/fuzz/run knows it if this program dies.
#include "fuzz/judge.hpp"

#include <cstdio>
#include <cstdlib>
#include <ctime>

namespace {

using namespace gusset::support;

struct Options {
    std::uint64_t from = 1;
    long count = 1'000'000'000;
    double seconds = 1e9;
    std::string now;
    std::string input;
    bool writes = false;
};

struct Tally {
    long inputs = 0;
    long opened = 0;
    long runs = 0;
    long broken = 0;
};

constexpr long kSettled = 500;          // inputs after which memory should grow no more
constexpr long kMostGrowth = 64 * 1024; // KB beyond that: tables that are filled once, and noise
constexpr long kMostTold = 100;         // failures printed

bool readOptions(int count, char** words, Options& options) {
    for (int i = 1; i + 1 < count; i += 2) {
        const std::string name = words[i];
        const char* value = words[i + 1];
        if (name == "--from" || name == "--write") {
            options.from = std::strtoull(value, nullptr, 10);
            options.writes = name == "--write";
        } else if (name == "--count") {
            options.count = std::atol(value);
        } else if (name == "--seconds") {
            options.seconds = std::atof(value);
        } else if (name == "--now") {
            options.now = value;
        } else if (name == "--input") {
            options.input = value;
        } else {
            return false;
        }
    }
    return count % 2 == 1;
}

std::string contents(const std::string& path) {
    std::string text;
    if (std::FILE* file = std::fopen(path.c_str(), "rb")) {
        char piece[4096];
        for (std::size_t size = 1; size > 0;) {
            size = std::fread(piece, 1, sizeof piece, file);
            text.append(piece, size);
        }
        std::fclose(file);
    }
    return text;
}

// KB that the program has in memory; 0 where the system does not say.
long residentMemory() {
    const std::string statm = contents("/proc/self/statm");
    const std::size_t space = statm.find(' ');
    return space == std::string::npos ? 0 : std::atol(statm.c_str() + space) * 4;
}

// The file stays open and is overwritten: one small write per input.
class SeedAtWork {
public:
    explicit SeedAtWork(const std::string& path)
        : file_(path.empty() ? nullptr : std::fopen(path.c_str(), "wb")) {}
    ~SeedAtWork() {
        if (file_) {
            std::fclose(file_);
        }
    }
    SeedAtWork(const SeedAtWork&) = delete;
    SeedAtWork& operator=(const SeedAtWork&) = delete;

    // With the counts so far, so that a run that dies is counted too.
    void say(std::uint64_t seed, const Tally& tally) {
        if (file_) {
            std::rewind(file_);
            std::fprintf(file_, "%020llu %020ld %020ld %020ld\n",
                         static_cast<unsigned long long>(seed), tally.inputs, tally.opened,
                         tally.runs);
            std::fflush(file_);
        }
    }

private:
    std::FILE* file_;
};

void count(const Judged& judged, const std::string& what, Tally& tally) {
    ++tally.inputs;
    tally.opened += judged.opened ? 1 : 0;
    tally.runs += judged.runs;
    for (const auto* faults : {&judged.broken, &judged.slow}) {
        for (const std::string& fault : *faults) {
            if (++tally.broken <= kMostTold) {
                std::printf("BROKEN %s: %s\n", what.c_str(), fault.c_str());
                std::fflush(stdout);
            }
        }
    }
}

int judgeSeeds(const Options& options) {
    Tally tally;
    SeedAtWork now(options.now);
    const std::time_t start = std::time(nullptr);
    long memory = residentMemory();
    long growth = 0;
    std::uint64_t seed = options.from;
    for (; tally.inputs < options.count; ++seed) {
        if (std::difftime(std::time(nullptr), start) >= options.seconds) {
            break;
        }
        now.say(seed, tally);
        count(judgeInput(inputOf(seed), seed), "seed " + std::to_string(seed), tally);
        if (tally.inputs == kSettled) {
            memory = residentMemory();
        }
    }
    growth = tally.inputs > kSettled ? residentMemory() - memory : 0;
    if (growth > kMostGrowth) {
        std::printf("BROKEN memory: grew by %ld KB over %ld inputs\n", growth, tally.inputs);
        ++tally.broken;
    }
    now.say(seed, tally);
    std::printf("{\"from\": %llu, \"next\": %llu, \"inputs\": %ld, \"opened\": %ld, \"runs\": %ld, "
                "\"broken\": %ld, \"growthKB\": %ld}\n",
                static_cast<unsigned long long>(options.from),
                static_cast<unsigned long long>(seed), tally.inputs, tally.opened, tally.runs,
                tally.broken, growth);
    return tally.broken == 0 ? 0 : 1;
}

} // namespace

int main(int argc, char** words) {
    Options options;
    if (!readOptions(argc, words, options)) {
        std::fputs("usage: fuzz [--from SEED] [--count N] [--seconds S] [--now FILE]\n"
                   "       fuzz --input FILE | --write SEED\n",
                   stderr);
        return 3;
    }
    if (options.writes) {
        const std::string text = inputOf(options.from);
        std::fwrite(text.data(), 1, text.size(), stdout);
        return 0;
    }
    if (options.input.empty()) {
        return judgeSeeds(options);
    }
    Tally tally;
    count(judgeInput(contents(options.input), options.from), options.input, tally);
    return tally.broken == 0 ? 0 : 1;
}
