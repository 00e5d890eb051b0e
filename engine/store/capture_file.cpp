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

Expected<void> CaptureFile::begin(const Identifier& recording, const std::string& facts)
{
    return guarded(connection_->path(), [&]() -> Expected<void> {
        connection_->run("DELETE FROM unfinished WHERE recording NOT IN (SELECT recording FROM piece)");
        auto write = connection_->prepared("INSERT INTO unfinished VALUES (?, ?, '') ON CONFLICT DO NOTHING");
        bindCell(*write, 1, recording);
        write->bind(2, facts);
        write->exec();
        return {};
    });
}

Expected<void> CaptureFile::keepClockFit(const Identifier& recording, const std::string& clockFit)
{
    return guarded(connection_->path(), [&]() -> Expected<void> {
        auto write = connection_->prepared("INSERT INTO unfinished VALUES (?, '', ?) ON CONFLICT DO UPDATE"
                                           " SET clock_fit = excluded.clock_fit WHERE clock_fit <> excluded.clock_fit");
        bindCell(*write, 1, recording);
        write->bind(2, clockFit);
        write->exec();
        return {};
    });
}

Expected<std::vector<UnfinishedRecording>> CaptureFile::unfinished()
{
    return guarded(connection_->path(), [&]() -> Expected<std::vector<UnfinishedRecording>> {
        auto read = connection_->prepared(
            "SELECT piece.recording, coalesce(max(facts), ''), coalesce(max(clock_fit), '') FROM piece"
            " LEFT JOIN unfinished ON unfinished.recording = piece.recording GROUP BY piece.recording"
            " ORDER BY piece.recording");
        std::vector<UnfinishedRecording> found;
        while (read->executeStep()) {
            auto& one = found.emplace_back();
            RowReader reader(*read);
            reader("recording", one.recording);
            reader("facts", one.facts);
            reader("clock_fit", one.clockFit);
        }
        return found;
    });
}

Expected<void> CaptureFile::dropPieces(const Identifier& recording)
{
    return guarded(connection_->path(), [&]() -> Expected<void> {
        for (const auto* text :
             {"DELETE FROM piece WHERE recording = ?", "DELETE FROM unfinished WHERE recording = ?"}) {
            auto drop = connection_->prepared(text);
            bindCell(*drop, 1, recording);
            drop->exec();
        }
        return {};
    });
}

} // namespace fleetrung::store
