#include "platform/desk/input_file.hpp"

#include <array>
#include <cerrno>
#include <filesystem>
#include <fstream>

namespace fleetrung::desk
{
namespace
{

const std::string tooLarge = ": larger than 256 MB; split it, or export less of it";

} // namespace

Result<void> checkReadable(const std::string& path)
{
    std::error_code error;
    const auto status = std::filesystem::status(path, error);
    if (status.type() == std::filesystem::file_type::not_found)
        return refuse(path + ": there is no such file; check the name and the folder");
    if (error == std::errc::permission_denied)
        return refuse(path + ": no permission to look into its folder; ask its owner, or copy the file");
    if (error)
        return refuse(path + ": cannot be looked at (" + error.message() + ")");
    if (status.type() == std::filesystem::file_type::directory) // it opens like a file on some systems
        return refuse(path + ": is a folder; name one file in it");
    errno = 0;
    if (!std::ifstream(path, std::ios::binary))
        return refuse(path + (errno == EACCES ? ": no permission to read it; ask its owner, or copy it"
                                              : ": cannot be opened; check that no other program holds it"));
    return {};
}

Result<std::string> readFile(const std::string& path)
{
    if (auto readable = checkReadable(path); !readable)
        return tl::unexpected(readable.error());
    std::error_code notRegular; // a pipe has no size: it is measured while reading
    if (const auto size = std::filesystem::file_size(path, notRegular); !notRegular && size > largestFile)
        return refuse(path + tooLarge);

    std::ifstream file(path, std::ios::binary);
    std::string bytes;
    std::array<char, 1U << 16U> block{};
    while (file.read(block.data(), block.size()) || file.gcount() > 0) {
        bytes.append(block.data(), static_cast<std::size_t>(file.gcount()));
        if (bytes.size() > largestFile)
            return refuse(path + tooLarge);
    }
    if (file.bad())
        return tl::unexpected(
            Failure{failed, path + ": reading it failed half-way; copy it to another disk and retry"});
    return bytes;
}

} // namespace fleetrung::desk
