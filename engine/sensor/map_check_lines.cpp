// What a schema cannot say of lines of text.
#include "engine/sensor/map_check_parts.hpp"
#include "engine/sensor/map_words.hpp"

namespace fleetrung::sensor
{
namespace
{

bool parts(char separator)
{
    constexpr std::string_view ofNumbers = "0123456789+-.eE=\n\r";
    const bool plain = separator == '\t' || (separator >= ' ' && separator <= '~');
    return plain && ofNumbers.find(separator) == std::string_view::npos;
}

bool canBeKey(const std::string& key, char separator)
{
    return key.find_first_of(std::string("=\r\n") + separator) == std::string::npos && !key.starts_with(' ') &&
           !key.ends_with(' ');
}

} // namespace

void checkLines(const StreamForm& form, const std::string& place, ChannelCheck& channels, MapProblem& problem)
{
    const auto& columns = form.lines.columns;
    if (!parts(form.lines.separator))
        problem.refuse(place + ".separator",
                       "a character that stands in no number is needed: a comma, semicolon or tab");
    const bool byKey = !columns.empty() && !columns.front().key.empty();
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const auto& column = columns[i];
        const auto at = place + '.' + indexed("columns", i);
        const auto where = at + (byKey ? ".key" : ".column");
        channels.add(column.channel, column.offset, column.scale, at);
        if (column.channel == Channel::Count || column.channel == Channel::StampDelta)
            problem.refuse(at + ".channel", "a line is one sample; the channel " +
                                                std::string(wordOf(channelWords, column.channel)) + " has no use here");
        if (byKey == column.key.empty())
            problem.refuse(where, "number all columns or name all by key");
        if (column.column < 0)
            problem.refuse(where, "columns count from 0");
        if (!canBeKey(column.key, form.lines.separator))
            problem.refuse(at + ".key", "a key has no separator, '=' or blank at its ends");
        for (std::size_t j = 0; j < i; ++j)
            if (byKey ? columns[j].key == column.key : columns[j].column == column.column)
                problem.refuse(where, "it overlaps " + indexed("columns", j));
    }
    if (form.lines.prefix.find_first_of("\r\n") != std::string::npos)
        problem.refuse(place + ".prefix", "a prefix stands in one line");
    if (form.counts == Counts::Packets)
        problem.refuse(place + ".counts", "a line is one sample; write samples");
    checkWraps(form, place, problem);
}

} // namespace fleetrung::sensor
