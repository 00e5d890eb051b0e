#include "mobile/views/new_identifier.hpp"

#include <QRandomGenerator>

namespace fleetrung::views
{

Identifier newIdentifier()
{
    Identifier id;
    for (std::size_t i = 0; i < id.bytes.size(); i += 4) {
        const quint32 word = QRandomGenerator::system()->generate();
        for (std::size_t byte = 0; byte < 4; ++byte)
            id.bytes[i + byte] = static_cast<std::uint8_t>(word >> (8 * byte));
    }
    return id;
}

} // namespace fleetrung::views
