// cereal archives over bytes in memory that believe no count: cereal makes room for a container before it has read it,
// so a count is checked here, at the one place through which all of them pass. Little-endian on every machine.
//
// They throw cereal::Exception: for use inside engine/store only, where it is caught.
#pragma once

#include <bit>
#include <cstring>
#include <span>
#include <vector>

#include <cereal/cereal.hpp>

namespace fleetrung::store
{

template <class T>
concept Plain = std::is_arithmetic_v<T>;

class WireWriter : public cereal::OutputArchive<WireWriter, cereal::AllowEmptyClassElision>
{
public:
    WireWriter() : OutputArchive(this) {}

    template <Plain T> void write(T value)
    {
        auto bytes = std::bit_cast<std::array<std::uint8_t, sizeof(T)>>(value);
        if constexpr (std::endian::native == std::endian::big)
            std::reverse(bytes.begin(), bytes.end());
        bytes_.insert(bytes_.end(), bytes.begin(), bytes.end());
    }

    [[nodiscard]] std::vector<std::uint8_t> take() { return std::move(bytes_); }

private:
    std::vector<std::uint8_t> bytes_;
};

class WireReader : public cereal::InputArchive<WireReader, cereal::AllowEmptyClassElision>
{
public:
    explicit WireReader(std::span<const std::uint8_t> bytes) : InputArchive(this), left_(bytes) {}

    template <Plain T> void read(T& value)
    {
        std::array<std::uint8_t, sizeof(T)> bytes{};
        if (left_.size() < bytes.size())
            throw cereal::Exception("ends too early");
        std::memcpy(bytes.data(), left_.data(), bytes.size());
        if constexpr (std::endian::native == std::endian::big)
            std::reverse(bytes.begin(), bytes.end());
        value = std::bit_cast<T>(bytes);
        left_ = left_.subspan(bytes.size());
    }

    /// An element takes one byte at least, so no honest count is larger than what is left.
    void checkCount(cereal::size_type count) const
    {
        if (count > left_.size())
            throw cereal::Exception("claims more than it holds");
    }

    [[nodiscard]] bool atEnd() const { return left_.empty(); }

private:
    std::span<const std::uint8_t> left_;
};

template <Plain T> void CEREAL_SAVE_FUNCTION_NAME(WireWriter& archive, const T& value)
{
    archive.write(value);
}
template <Plain T> void CEREAL_LOAD_FUNCTION_NAME(WireReader& archive, T& value)
{
    archive.read(value);
}
template <class T> void CEREAL_SAVE_FUNCTION_NAME(WireWriter& archive, const cereal::SizeTag<T>& tag)
{
    archive.write(static_cast<std::uint64_t>(tag.size));
}
template <class T> void CEREAL_LOAD_FUNCTION_NAME(WireReader& archive, cereal::SizeTag<T>& tag)
{
    std::uint64_t count = 0;
    archive.read(count);
    archive.checkCount(count);
    tag.size = count;
}

} // namespace fleetrung::store

CEREAL_REGISTER_ARCHIVE(fleetrung::store::WireWriter)
CEREAL_REGISTER_ARCHIVE(fleetrung::store::WireReader)
CEREAL_SETUP_ARCHIVE_TRAITS(fleetrung::store::WireReader, fleetrung::store::WireWriter)
