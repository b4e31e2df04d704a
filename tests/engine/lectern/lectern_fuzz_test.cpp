// The lectern under requests that are broken, out of range or enormous, about trusses of every
// kind: each is answered or refused in words, and the lesson goes on.

#include "exchange/json/json_value.hpp"
#include "fuzz/lectern_requests.hpp"
#include "fuzz/soundness.hpp"
#include "lectern/lectern.hpp"
#include "support/english.hpp"
#include "support/mutation.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/random_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

// Drawings and documents in a reply are sound.
std::string faultOfReply(const std::string& reply) {
    if (std::string fault = faultOfJson(reply); !fault.empty()) {
        return fault;
    }
    const JsonValue value = parseJson(reply).value();
    if (const JsonValue* faults = value.find("faults")) {
        return faults->items.empty() || faults->items.front().text.empty() ? "refused without words"
                                                                           : std::string();
    }
    for (const char* key : {"svg", "html"}) {
        const std::string text = textUnder(value, key);
        if (std::string fault = text.empty() ? text : faultOfMarkup(text); !fault.empty()) {
            return key + (": " + fault);
        }
    }
    return {};
}

Truss anyTruss(std::uint64_t seed) {
    switch (seed % 3) {
    case 0:
        return randomMechanism(seed);
    case 1:
        return randomIndeterminateTruss(seed);
    default:
        return randomDeterminateTruss(seed);
    }
}

} // namespace

TEST_CASE("whatever is asked, the lectern answers or says what is wrong") {
    long answered = 0;
    long refused = 0;
    for (std::uint64_t seed = 0; seed < 30; ++seed) {
        Random random(seed);
        Lectern lectern(englishPhrases());
        for (const std::string& request : lecternRequests(anyTruss(seed), random)) {
            const std::string reply = lectern.reply(request);
            INFO("seed " << seed << ": " << request.substr(0, 200) << "\n" << reply.substr(0, 200));
            CHECK(faultOfReply(reply) == "");
            ++(reply.find("\"faults\"") == std::string::npos ? answered : refused);
        }
    }
    CHECK(answered > 100);
    CHECK(refused > 50);
}

TEST_CASE("a request that is damaged does no harm, and the lesson that is open stays open") {
    const std::vector<Truss> trusses = exampleTrusses();
    Lectern lectern(englishPhrases());
    Random random(1);
    const std::vector<std::string> requests = lecternRequests(trusses.front(), random);
    REQUIRE(lectern.reply(requests.front()).find("\"lessons\"") != std::string::npos);
    const std::string place =
        R"({"do":"stage","item":0,"step":0,"stroke":0,"width":800,"height":600})";
    for (int i = 0; i < 400; ++i) {
        const std::string& request = requests[static_cast<std::size_t>(
            random.integer(2, static_cast<int>(requests.size()) - 1))];
        const std::string damaged = random.oneIn(2) ? mutated(request, requests.back(), random)
                                                    : withOtherTokens(request, random);
        INFO(damaged.substr(0, 300));
        CHECK(faultOfReply(lectern.reply(damaged)) == "");
        CHECK(lectern.reply(place).find("\"svg\"") != std::string::npos);
    }
}

TEST_CASE("enormous requests are refused, or laid out within bounds") {
    Lectern lectern(englishPhrases());
    Random random(2);
    (void)lectern.reply(lecternRequests(exampleTrusses().front(), random).front());
    CHECK(faultOfReply(lectern.reply(std::string(100000, '['))) == "");
    CHECK(faultOfReply(lectern.reply(R"({"do":")" + std::string(1000000, 'x') + "\"}")) == "");
    const std::string wide = lectern.reply(
        R"({"do":"stage","item":0,"step":0,"stroke":0,"width":1e300,"height":-1e300})");
    CHECK(wide.find("viewBox=\\\"0 0 8192 120\\\"") != std::string::npos);
    std::string files;
    for (int i = 0; i < 10001; ++i) {
        files += (files.empty() ? "" : ",") + std::string(R"({"name":"a","text":""})");
    }
    CHECK(lectern.reply(R"({"do":"zip","files":[)" + files + "]}").find("\"faults\"") !=
          std::string::npos);
}
