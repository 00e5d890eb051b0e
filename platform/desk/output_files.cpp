#include "platform/desk/output_files.hpp"

#include <filesystem>
#include <fstream>

namespace fleetrung::desk
{

Result<void> writeFile(const std::string& path, std::string_view bytes)
{
    const std::string unfinished = path + ".unfinished";
    std::error_code error;
    {
        std::ofstream file(unfinished, std::ios::binary | std::ios::trunc);
        file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        file.close();
        if (file)
            std::filesystem::rename(unfinished, path, error);
        else
            error = std::make_error_code(std::errc::io_error);
    }
    if (!error)
        return {};
    std::error_code ignored;
    std::filesystem::remove(unfinished, ignored);
    return tl::unexpected(
        Failure{failed, path + ": cannot be written; check the folder, its permissions and the space on the disk"});
}

Result<void> makeFolder(const std::string& path)
{
    std::error_code error;
    if (std::filesystem::exists(path, error) && !std::filesystem::is_directory(path, error))
        return refuse(path + ": is a file; name a folder for the tables");
    std::filesystem::create_directories(path, error);
    if (error)
        return tl::unexpected(
            Failure{failed, path + ": the folder cannot be made; check the path and its permissions"});
    return {};
}

} // namespace fleetrung::desk
