#include "engine/store/capture_file.hpp"

#include "engine/store/cell.hpp"

namespace fleetrung::store
{
namespace
{

std::span<const std::uint8_t> bytesOf(const SQLite::Column& column)
{
    return {static_cast<const std::uint8_t*>(column.getBlob()), static_cast<std::size_t>(column.getBytes())};
}

void bindBytes(SQLite::Statement& statement, int index, const std::vector<std::uint8_t>& bytes)
{
    statement.bind(index, bytes.data(), static_cast<int>(bytes.size()));
}

} // namespace

Expected<std::string> CaptureFile::put(const CaptureSamples& samples, const CountScales& scales)
{
    const auto encoded = encodeCapture(samples, scales);
    if (!encoded)
        return tl::unexpected(encoded.error());
    return guarded(connection_->path(), [&]() -> Expected<std::string> {
        auto write = connection_->prepared("INSERT INTO samples VALUES (?, ?) ON CONFLICT DO NOTHING");
        write->bind(1, encoded->contentHash);
        bindBytes(*write, 2, encoded->bytes);
        write->exec();
        return encoded->contentHash;
    });
}

Expected<CaptureSamples> CaptureFile::get(const std::string& contentHash)
{
    return guarded(connection_->path(), [&]() -> Expected<CaptureSamples> {
        auto read = connection_->prepared("SELECT bytes FROM samples WHERE content_hash = ?");
        read->bind(1, contentHash);
        if (!read->executeStep())
            return fail(Code::NotFound, connection_->path(), "the recording is not in the captures file");
        auto decoded = decodeCapture(bytesOf(read->getColumn(0)));
        if (!decoded)
            return tl::unexpected(decoded.error());
        if (decoded->contentHash != contentHash)
            return fail(Code::StoreCorrupt, connection_->path(),
                        "the recording is not the one that was kept; restore the captures file from a backup");
        return std::move(decoded->samples);
    });
}

Expected<void> CaptureFile::putPiece(const Identifier& recording, int ordinal, const CaptureSamples& samples)
{
    const auto encoded = encodeCapture(samples);
    if (!encoded)
        return tl::unexpected(encoded.error());
    return guarded(connection_->path(), [&]() -> Expected<void> {
        auto write = connection_->prepared("INSERT INTO piece VALUES (?, ?, ?) ON CONFLICT DO NOTHING");
        bindCell(*write, 1, recording);
        write->bind(2, ordinal);
        bindBytes(*write, 3, encoded->bytes);
        write->exec();
        return {};
    });
}

Expected<std::vector<CaptureSamples>> CaptureFile::pieces(const Identifier& recording)
{
    return guarded(connection_->path(), [&]() -> Expected<std::vector<CaptureSamples>> {
        auto read = connection_->prepared("SELECT bytes FROM piece WHERE recording = ? ORDER BY ordinal");
        bindCell(*read, 1, recording);
        std::vector<CaptureSamples> pieces;
        while (read->executeStep()) {
            auto decoded = decodeCapture(bytesOf(read->getColumn(0)));
            if (!decoded)
                return tl::unexpected(decoded.error());
            pieces.push_back(std::move(decoded->samples));
        }
        return pieces;
    });
}

Expected<std::vector<Identifier>> CaptureFile::unfinished()
{
    return guarded(connection_->path(), [&]() -> Expected<std::vector<Identifier>> {
        auto read = connection_->prepared("SELECT DISTINCT recording FROM piece ORDER BY recording");
        std::vector<Identifier> found;
        while (read->executeStep()) {
            RowReader reader(*read);
            reader("recording", found.emplace_back());
        }
        return found;
    });
}

Expected<void> CaptureFile::dropPieces(const Identifier& recording)
{
    return guarded(connection_->path(), [&]() -> Expected<void> {
        auto drop = connection_->prepared("DELETE FROM piece WHERE recording = ?");
        bindCell(*drop, 1, recording);
        drop->exec();
        return {};
    });
}

} // namespace fleetrung::store
