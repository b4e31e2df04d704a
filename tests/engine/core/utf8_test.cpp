#include "core/utf8.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;

// Ill-formed sequences after the Unicode Standard, section 3.9, tables 3-7 to 3-11: overlong forms,
// surrogates, what lies beyond U+10FFFF, and sequences cut short, each maximal subpart one U+FFFD.
TEST_CASE("Only what the standard calls well-formed is UTF-8") {
    for (const std::string_view text :
         {"", "A", "\u00E9", "\u20AC", "\U0001F309", "\uFFFF", "\U0010FFFF"}) {
        CHECK_FALSE(faultOfUtf8(text));
    }
    for (const std::string_view text :
         {"\xC0\xAF", "\xC1\xBF", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xF0\x8F\xBF\xBF",
          "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\x80", "\xFF", "\xE2\x82", "\xC3("}) {
        CHECK(faultOfUtf8(text) == 0);
    }
    CHECK(faultOfUtf8("beam \xE9") == 5);
}

TEST_CASE("What is no UTF-8 becomes U+FFFD, a maximal subpart each, and the rest stays") {
    CHECK(soundUtf8("A\xC3(B") == "A\uFFFD(B");
    CHECK(soundUtf8("\x61\xF1\x80\x80\xE1\x80\xC2\x62\x80\x63\x80\xBF\x64") ==
          "a\uFFFD\uFFFD\uFFFDb\uFFFDc\uFFFD\uFFFDd"); // table 3-8 and figure of section 3.9
    CHECK(soundUtf8("\xED\xA0\x80") == "\uFFFD\uFFFD\uFFFD");
    CHECK(soundUtf8("桁") == "桁");
}

TEST_CASE("Every character is read back as it was written") {
    for (char32_t code = 0; code <= 0x10FFFF; ++code) {
        if (code >= 0xD800 && code <= 0xDFFF) {
            continue;
        }
        std::string text;
        appendCharacter(text, code);
        const Character character = firstCharacter(text);
        if (!character.sound || character.code != code || character.bytes != text.size()) {
            FAIL("U+" << std::hex << static_cast<unsigned long>(code));
        }
    }
    SUCCEED();
}
