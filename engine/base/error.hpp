// The one error type of the engine, and the value-or-error that its public functions return.
#pragma once

#include <string>
#include <tl/expected.hpp>
#include <utility>

namespace fleetrung
{

/// What kind of failure it was: decide on this, never on the text.
enum class Code {
    InvalidArgument, ///< the caller broke a documented precondition
    InvalidInput,    ///< a file, a form or a packet holds something that cannot be used
    Refused,         ///< the request is understood and not allowed (a limit, a caution); the message says why
    NotFound,        ///< no such row, file or name
    NotAvailable,    ///< the data given do not carry the quantity asked for
    NotConverged,    ///< an iteration found no answer
    Cancelled,       ///< the caller's cancel token was set
    StoreBusy,       ///< another writer holds the store; trying again is safe
    StoreCorrupt,    ///< the file is no store, or damaged; nothing was deleted
    StoreTooNew,     ///< the file was written by a later version; nothing was touched
    StoreFailed,     ///< any other failure of the store (disk full, no permission)
};

/// A failure: a code for programs, the place at fault ("line 12, column acc_x_mps2"; may be empty), and a sentence
/// that says what to do. The sentence is English; the interface maps code and place to its own language.
struct Error {
    Code code;
    std::string place;
    std::string message;
};

template <class T> using Expected = tl::expected<T, Error>;

/// Shorthand for `return fail(Code::InvalidInput, "line 3", "...")`.
[[nodiscard]] inline tl::unexpected<Error> fail(Code code, std::string place, std::string message)
{
    return tl::unexpected<Error>(Error{code, std::move(place), std::move(message)});
}

/// "place: message", or the message alone where there is no place.
[[nodiscard]] inline std::string describe(const Error& error)
{
    return error.place.empty() ? error.message : error.place + ": " + error.message;
}

} // namespace fleetrung
