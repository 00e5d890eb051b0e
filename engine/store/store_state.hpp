// What a Store holds open (private to engine/store).
#pragma once

#include "engine/store/capture_file.hpp"
#include "engine/store/store.hpp"

namespace fleetrung::store
{

struct Store::State {
    std::unique_ptr<Connection> rows;
    std::unique_ptr<CaptureFile> captures;
    Identifier device;

    bool inside = false;         ///< a transaction is open
    bool capturesInside = false; ///< the captures file has joined it
    bool spoiled = false;        ///< a write inside it failed: it cannot be kept any more
    std::int64_t counter = 0;    ///< of the open transaction; 0 until something was written in it

    /// Samples put inside a transaction are written with it: first they, then the rows that name them, so that a crash
    /// in between leaves samples without a row (harmless), never a row without its samples.
    void joinCaptures()
    {
        if (inside && !capturesInside) {
            captures->connection().run("BEGIN IMMEDIATE");
            capturesInside = true;
        }
    }
    void endCaptures(const char* how)
    {
        if (!capturesInside)
            return;
        captures->connection().run(how); // where this throws the transaction is still open: the caller rolls it back
        capturesInside = false;
    }

    /// One counter a transaction: everything in it happened at once. Throws what SQLiteCpp throws.
    std::int64_t stampCounter()
    {
        if (counter == 0)
            counter = rows->number("UPDATE lamport SET counter = counter + 1 RETURNING counter");
        return counter;
    }
};

} // namespace fleetrung::store
