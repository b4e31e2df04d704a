#include "exchange/links/base64url.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;

namespace {

Bytes bytesOf(const char* text) {
    Bytes bytes;
    for (; *text != '\0'; ++text) {
        bytes.push_back(static_cast<std::uint8_t>(*text));
    }
    return bytes;
}

} // namespace

TEST_CASE("Bytes become the letters that RFC 4648 gives, without padding") {
    // RFC 4648 §10, test vectors, without their "=".
    CHECK(toBase64Url(bytesOf("")).empty());
    CHECK(toBase64Url(bytesOf("f")) == "Zg");
    CHECK(toBase64Url(bytesOf("fo")) == "Zm8");
    CHECK(toBase64Url(bytesOf("foo")) == "Zm9v");
    CHECK(toBase64Url(bytesOf("foob")) == "Zm9vYg");
    CHECK(toBase64Url(bytesOf("fooba")) == "Zm9vYmE");
    CHECK(toBase64Url(bytesOf("foobar")) == "Zm9vYmFy");
    CHECK(toBase64Url({0xFB, 0xFF}) == "-_8"); // §5: the two letters that differ from base64
}

TEST_CASE("Letters become the bytes that they were made of") {
    Bytes bytes;
    for (int size = 0; size < 300; ++size) {
        CHECK(fromBase64Url(toBase64Url(bytes)) == bytes);
        CHECK(toBase64Url(bytes).size() == base64UrlLength(bytes.size()));
        bytes.push_back(static_cast<std::uint8_t>(size * 37));
    }
}

TEST_CASE("Letters that no bytes make are refused") {
    CHECK_FALSE(fromBase64Url("Zg==").has_value());
    CHECK_FALSE(fromBase64Url("Z+8").has_value());
    CHECK_FALSE(fromBase64Url("Z").has_value());  // six bits don't make a byte
    CHECK_FALSE(fromBase64Url("Zh").has_value()); // four bits too many, not zero
}
