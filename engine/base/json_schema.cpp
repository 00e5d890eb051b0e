#include "engine/base/json_schema.hpp"

#include <exception>
#include <vector>

#define VALIJSON_USE_EXCEPTIONS 1
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include "engine/base/numbers.hpp"

namespace fleetrung
{
namespace
{

using PlainJson = nlohmann::json; // the library knows only the kind whose keys are sorted
using Adapter = valijson::adapters::NlohmannJsonAdapter;

void removePatterns(Json& schema)
{
    if (schema.is_object()) {
        const auto pattern = schema.find("pattern");
        if (pattern != schema.end() && pattern->is_string())
            schema.erase(pattern);
    }
    if (schema.is_structured())
        for (auto& part : schema)
            removePatterns(part);
}

/// The library's "<root>", "[streams]", "[0]", "[rate]" as "streams[0].rate".
std::string pathOf(const std::vector<std::string>& context)
{
    std::string path;
    for (std::size_t i = 1; i < context.size(); ++i) {
        const auto& part = context[i];
        const auto name = std::string_view(part).substr(1, part.size() < 2 ? 0 : part.size() - 2);
        if (parseInteger(name))
            path += part;
        else
            path.append(path.empty() ? "" : ".").append(name);
    }
    return path;
}

/// Walks the schema as the document was walked.
class Expectation
{
public:
    explicit Expectation(const Json& schema) : root_(schema), at_(&schema) {}

    void descend(std::string_view part)
    {
        resolve();
        const auto name = std::string(part.substr(1, part.size() < 2 ? 0 : part.size() - 2));
        at_ = parseInteger(name) ? member(at_, "items") : member(member(at_, "properties"), name);
        resolve();
    }

    [[nodiscard]] std::string words() const
    {
        if (const auto* choices = member(at_, "enum")) {
            std::string all;
            for (const auto& choice : *choices)
                all += (all.empty() ? "" : ", ") + (choice.is_string() ? choice.get<std::string>() : jsonText(choice));
            return "one of these is needed here: " + all;
        }
        const auto* type = member(at_, "type");
        const auto name = type != nullptr && type->is_string() ? type->get<std::string>() : "";
        if (name == "object")
            return "an object { ... } is needed here";
        if (name == "boolean")
            return "true or false is needed here";
        if (name == "array")
            return "a list [ ... ]" + limits("minItems", "maxItems", " entries") + " is needed here";
        if (name == "string")
            return "text" + limits("minLength", "maxLength", " characters") + " is needed here";
        if (name == "integer")
            return "a whole number" + limits("minimum", "maximum", "") + " is needed here";
        if (name == "number")
            return "a number" + limits("minimum", "maximum", "") + " is needed here";
        return "";
    }

private:
    static const Json* member(const Json* object, const std::string& key)
    {
        if (object == nullptr || !object->is_object())
            return nullptr;
        const auto found = object->find(key);
        return found == object->end() ? nullptr : &*found;
    }

    void resolve()
    {
        constexpr std::string_view definitions = "#/definitions/";
        const auto* reference = member(at_, "$ref");
        if (reference != nullptr && reference->is_string())
            at_ = member(member(&root_, "definitions"), reference->get<std::string>().substr(definitions.size()));
    }

    [[nodiscard]] std::string limits(const std::string& least, const std::string& most, std::string_view unit) const
    {
        const auto* low = member(at_, least);
        const auto* high = member(at_, most);
        std::string words;
        if (low != nullptr && low->is_number())
            words += " from " + shortestText(low->get<double>());
        if (high != nullptr && high->is_number())
            words += (words.empty() ? " of at most " : " to ") + shortestText(high->get<double>());
        return words.empty() ? words : words.append(unit);
    }

    const Json& root_;
    const Json* at_;
};

} // namespace

struct JsonSchema::Parsed {
    Json text;
    valijson::Schema schema;
    std::optional<Error> unsound;
};

JsonSchema::JsonSchema(std::string_view text) : parsed_(std::make_unique<Parsed>())
{
    auto read = parseJson(text);
    if (!read) {
        parsed_->unsound = read.error();
        return;
    }
    parsed_->text = *read;
    removePatterns(*read);
    try {
        const PlainJson plain(*read);
        valijson::SchemaParser(valijson::SchemaParser::kDraft7).populateSchema(Adapter(plain), parsed_->schema);
    } catch (const std::exception& error) {
        parsed_->unsound = Error{Code::InvalidArgument, "", std::string("the schema is not sound: ") + error.what()};
    }
}

JsonSchema::~JsonSchema() = default;
JsonSchema::JsonSchema(JsonSchema&&) noexcept = default;
JsonSchema& JsonSchema::operator=(JsonSchema&&) noexcept = default;

std::optional<Error> JsonSchema::check(const Json& document) const
{
    if (parsed_->unsound)
        return parsed_->unsound;
    try {
        const PlainJson plain(document);
        valijson::Validator validator;
        // The first pass stops at the first breach: a document of a million breaches must not cost a million messages.
        if (validator.validate(parsed_->schema, Adapter(plain), nullptr))
            return std::nullopt;
        valijson::ValidationResults results;
        validator.validate(parsed_->schema, Adapter(plain), &results);
        valijson::ValidationResults::Error first;
        if (!results.popError(first))
            return Error{Code::InvalidInput, "", "this does not fit the schema"};
        auto place = pathOf(first.context);
        constexpr std::string_view missing = "Missing required property '";
        if (first.description.starts_with(missing)) {
            const auto name = first.description.substr(missing.size());
            place += (place.empty() ? "" : ".") + name.substr(0, name.find('\''));
            return Error{Code::InvalidInput, place, "this key is missing"};
        }
        Expectation expectation(parsed_->text);
        for (std::size_t i = 1; i < first.context.size(); ++i)
            expectation.descend(first.context[i]);
        const auto words = expectation.words();
        return Error{Code::InvalidInput, place, words.empty() ? first.description : words};
    } catch (const std::exception& error) {
        return Error{Code::InvalidInput, "", error.what()};
    }
}

} // namespace fleetrung
