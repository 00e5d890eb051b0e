#include "engine/sensor/teach_words.hpp"

#include <array>

namespace fleetrung::sensor::teaching
{

std::string nameOf(TeachStep step)
{
    constexpr std::array<const char*, teachSteps> names{"face one",   "face two",  "face three", "face four",
                                                        "face five",  "face six",  "turn one",   "turn two",
                                                        "turn three", "raise one", "raise two"};
    return names.at(static_cast<std::size_t>(step));
}

Taught repeatStep(std::size_t step, std::string why)
{
    Taught taught;
    taught.repeat = stepOf(step);
    taught.why = std::move(why);
    return taught;
}

Taught notTeachable(std::string why)
{
    Taught taught;
    taught.why = std::move(why);
    return taught;
}

} // namespace fleetrung::sensor::teaching
