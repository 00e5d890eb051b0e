// The rules as people and programs read them.
#include <algorithm>

#include "engine/base/numbers.hpp"
#include "engine/season/rules.hpp"

namespace fleetrung::season
{
namespace
{

std::string groupTitle(std::string_view group)
{
    if (group == "decision")
        return "Decisions, by precedence: the first that applies is taken";
    return group == "evidence" ? "What they rest on" : "The day";
}

std::string numberLine(const NumberText& number)
{
    return "       " + number.key + " = " + shortestText(number.value) + " " + number.unit + " (" + number.origin +
           "): " + number.about + "\n";
}

} // namespace

const RuleText* findRule(const Rules& rules, std::string_view key)
{
    const auto found =
        std::find_if(rules.texts.begin(), rules.texts.end(), [&](const RuleText& rule) { return rule.key == key; });
    return found == rules.texts.end() ? nullptr : &*found;
}

const NumberText* findNumber(const Rules& rules, std::string_view key)
{
    const auto found = std::find_if(rules.numbers.begin(), rules.numbers.end(),
                                    [&](const NumberText& number) { return number.key == key; });
    return found == rules.numbers.end() ? nullptr : &*found;
}

std::string numberText(const NumberText& number)
{
    if (number.unit == "share")
        return shortestText(roundTo(number.value * 100, 1000)) + " %";
    if (number.unit == "s")
        return shortestText(roundTo(number.value * 1000, 1000)) + " ms";
    if (number.unit == "m")
        return shortestText(roundTo(number.value * 100, 1000)) + " cm";
    if (number.unit == "m/month")
        return shortestText(roundTo(number.value * 100, 1000)) + " cm a month";
    if (number.unit == "m/s" || number.unit == "kg")
        return shortestText(number.value) + " " + number.unit;
    return shortestText(number.value);
}

std::string explainRules(const Rules& rules)
{
    std::string text, group;
    int place = 0;
    for (const auto& rule : rules.texts) {
        if (rule.group != group) {
            text += (group.empty() ? "" : "\n") + groupTitle(rule.group) + "\n";
            group = rule.group;
            place = 0;
        }
        text += "\n  " + (rule.group == "decision" ? integerText(++place) + ". " : std::string()) + rule.title + " [" +
                rule.key + "]\n     " + rule.text + "\n";
        for (const auto& key : rule.numbers)
            if (const auto* number = findNumber(rules, key))
                text += numberLine(*number);
    }
    return text;
}

Json rulesJson(const Rules& rules)
{
    Json json = Json::object();
    json["rules"] = Json::array();
    for (const auto& rule : rules.texts)
        json["rules"].push_back({{"key", rule.key},
                                 {"group", rule.group},
                                 {"title", rule.title},
                                 {"text", rule.text},
                                 {"numbers", rule.numbers}});
    json["numbers"] = Json::array();
    for (const auto& number : rules.numbers)
        json["numbers"].push_back({{"key", number.key},
                                   {"value", number.value},
                                   {"unit", number.unit},
                                   {"origin", number.origin},
                                   {"about", number.about}});
    return json;
}

} // namespace fleetrung::season
