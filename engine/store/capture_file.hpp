// The second file: samples by content hash, and the pieces of recordings under way. Large, written once, never merged:
// kept apart so that the rows stay small to back up and to read.
#pragma once

#include "engine/base/identifier.hpp"
#include "engine/store/capture_codec.hpp"
#include "engine/store/connection.hpp"
#include "engine/store/store.hpp"

namespace fleetrung::store
{

class CaptureFile
{
public:
    explicit CaptureFile(std::unique_ptr<Connection> connection) : connection_(std::move(connection)) {}

    [[nodiscard]] Expected<std::string> put(const CaptureSamples& samples, const CountScales& scales);
    [[nodiscard]] Expected<CaptureSamples> get(const std::string& contentHash);
    [[nodiscard]] Expected<void> putPiece(const Identifier& recording, int ordinal, const CaptureSamples& samples);
    [[nodiscard]] Expected<std::vector<CaptureSamples>> pieces(const Identifier& recording);
    [[nodiscard]] Expected<void> begin(const Identifier& recording, const std::string& facts);
    [[nodiscard]] Expected<void> keepClockFit(const Identifier& recording, const std::string& clockFit);
    [[nodiscard]] Expected<std::vector<UnfinishedRecording>> unfinished();
    [[nodiscard]] Expected<void> dropPieces(const Identifier& recording);

    [[nodiscard]] Connection& connection() { return *connection_; }

private:
    std::unique_ptr<Connection> connection_;
};

} // namespace fleetrung::store
