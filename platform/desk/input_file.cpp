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

/// Empty where the file may be opened. A directory opens like a file on some systems, so it is told apart first.
std::string reasonAgainst(const std::string& path)
{
    std::error_code error;
    const auto status = std::filesystem::status(path, error);
    if (status.type() == std::filesystem::file_type::not_found)
        return path + ": there is no such file; check the name and the folder";
    if (error == std::errc::permission_denied)
        return path + ": no permission to look into its folder; ask its owner, or copy the file";
    if (error)
        return path + ": cannot be looked at (" + error.message() + ")";
    if (status.type() == std::filesystem::file_type::directory)
        return path + ": is a folder; name one file in it";
    if (status.type() == std::filesystem::file_type::regular && std::filesystem::file_size(path, error) > largestFile)
        return path + tooLarge;
    return {};
}

} // namespace

Result<std::string> readFile(const std::string& path)
{
    if (auto reason = reasonAgainst(path); !reason.empty())
        return refuse(std::move(reason));
    errno = 0;
    std::ifstream file(path, std::ios::binary);
    if (!file)
        return refuse(path + (errno == EACCES ? ": no permission to read it; ask its owner, or copy it"
                                              : ": cannot be opened; check that no other program holds it"));
    std::string bytes;
    std::array<char, 1U << 16U> block{};
    while (file.read(block.data(), block.size()) || file.gcount() > 0) {
        bytes.append(block.data(), static_cast<std::size_t>(file.gcount()));
        if (bytes.size() > largestFile) // a pipe or a growing file
            return refuse(path + tooLarge);
    }
    if (file.bad())
        return tl::unexpected(
            Failure{failed, path + ": reading it failed half-way; copy it to another disk and retry"});
    return bytes;
}

} // namespace fleetrung::desk
