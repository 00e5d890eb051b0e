#include "engine/base/identifier.hpp"

#include <catch2/catch.hpp>

#include <vector>

using namespace fleetrung;

namespace
{

std::string hashed(std::vector<std::string_view> parts)
{
    return identifierText(hashIdentifier(parts));
}

} // namespace

TEST_CASE("an identifier is 32 hexadecimal digits, there and back", "[identifier]")
{
    const std::string text = "00112233445566778899aabbccddeeff";
    const auto id = parseIdentifier(text);
    REQUIRE(id);
    CHECK(id->bytes[1] == 0x11);
    CHECK(id->bytes[15] == 0xff);
    CHECK(identifierText(*id) == text);
    for (const auto* wrong : {"", "00", "00112233445566778899AABBCCDDEEFF", "00112233445566778899aabbccddeefg",
                              "00112233445566778899aabbccddeeff0"}) {
        CAPTURE(wrong);
        CHECK_FALSE(parseIdentifier(wrong));
    }
}

// Expected digests: Python 3.11 hashlib.blake2b(digest_size=16), each part preceded by struct.pack('<Q', len(part)).
TEST_CASE("an identifier hashed from parts is BLAKE2b over lengths and parts", "[identifier]")
{
    CHECK(hashed({"ab", "c"}) == "4826ed043ab3cdec576d8541fa5d5a80");
    CHECK(hashed({"a", "bc"}) == "f14abc19c330e936bb9c8506d69bac9b");
    CHECK(hashed({}) == "cae66941d9efbd404e4d88758ea67670");
    CHECK(hashed({""}) == "c804ce198ec337e3dc762bdd1a09aece");
    CHECK(hashed({"M\xC3\xA4rta", "17"}) == "8fc6e88af2777eaf5ffb29f5dc6daf83");
}

// Expected digests: Python 3.11 hashlib.blake2b(b"abc", digest_size=32) and of b"". The algorithm is RFC 7693.
TEST_CASE("the name of a content is its BLAKE2b-256", "[identifier]")
{
    const std::vector<std::uint8_t> abc{'a', 'b', 'c'};
    CHECK(contentHash(abc) == "bddd813c634239723171ef3fee98579b94964e3bb1cb3e427262c8c068d52319");
    CHECK(contentHash({}) == "0e5751c026e543b2e8ab2eb06099daa1d1e5df47778f7787faab45cdf12fe3a8");
}
