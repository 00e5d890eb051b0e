// Choices of the forms in the order in which they stand there, as the log keeps them.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

namespace fleetrung::views
{

inline const std::vector<std::string> timingKeys{"hand", "gates", "video", "electronic"};
inline const std::vector<std::string> surfaceKeys{"track", "indoor", "grass"};
inline const std::vector<std::string> roomKeys{"bar", "rack", "pins", "blocks"}; ///< what a weight room has
inline const std::vector<std::string> shoeKeys{"spikes", "flats", ""};

/// The key of a choice; the nearest one where the index is none.
template <class Key> [[nodiscard]] Key chosenKey(const std::vector<Key>& keys, int index)
{
    return keys[static_cast<std::size_t>(std::clamp(index, 0, static_cast<int>(keys.size()) - 1))];
}

/// The choice of a key; `otherwise` where it is not among them.
template <class Key> [[nodiscard]] int indexOfKey(const std::vector<Key>& keys, const Key& key, int otherwise = 0)
{
    const auto found = std::ranges::find(keys, key);
    return found == keys.end() ? otherwise : static_cast<int>(found - keys.begin());
}

} // namespace fleetrung::views
