// Names and sentences of the engine, which is English, in the language of the user. The engine stays free of languages:
// what it writes is recognised here, whole or sentence by sentence; what is not known stays as it is.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>

#include <vector>

#include <QString>

#include "engine/base/error.hpp"

namespace fleetrung::views
{

/// English phrases with values as %1, %2 and their translations in one context. Of two that fit the first counts.
class Phrases
{
public:
    Phrases(const char* context, std::span<const char* const> english);
    ~Phrases();

    /// The whole text in the user's language, its values told by `value`; nothing where no phrase fits it.
    [[nodiscard]] std::optional<QString> told(const QString& english,
                                              const std::function<QString(const QString&)>& value) const;

private:
    struct Pattern;

    const char* context_;
    std::vector<Pattern> patterns_;
};

/// What the engine and the picture builders write.
[[nodiscard]] const Phrases& enginePhrases();

[[nodiscard]] QString engineText(const std::string& english);
[[nodiscard]] QString engineText(const QString& english);
/// Where it is, and what is wrong.
[[nodiscard]] QString errorText(const Error& error);

} // namespace fleetrung::views
