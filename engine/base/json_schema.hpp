// JSON Schema (draft 7) through valijson, with its exceptions caught here.
#pragma once

#include <memory>
#include <optional>
#include <string_view>

#include "engine/base/error.hpp"
#include "engine/base/json.hpp"

namespace fleetrung
{

/// `pattern` is not looked at: it is published for other programs, and the reader of the document checks the same by
/// itself (the library's regular expressions follow the locale, and call themselves once a character).
class JsonSchema
{
public:
    /// `text` must be a sound schema; where it is not, `check` refuses every document.
    explicit JsonSchema(std::string_view text);
    ~JsonSchema();
    JsonSchema(JsonSchema&&) noexcept;
    JsonSchema& operator=(JsonSchema&&) noexcept;

    /// The first breach: InvalidInput, the place as a key path ("streams[0].rate"), what is needed there.
    [[nodiscard]] std::optional<Error> check(const Json& document) const;

private:
    struct Parsed;
    std::unique_ptr<Parsed> parsed_;
};

} // namespace fleetrung
