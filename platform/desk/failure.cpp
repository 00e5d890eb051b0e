#include "platform/desk/failure.hpp"

namespace fleetrung::desk
{
namespace
{

int exitCodeOf(Code code)
{
    switch (code) {
    case Code::NotConverged:
    case Code::Cancelled:
    case Code::StoreBusy:
    case Code::StoreFailed:
        return failed;
    default:
        return badInput;
    }
}

} // namespace

Failure inFile(const std::string& file, const Error& error)
{
    const bool placed =
        !error.place.empty() && error.place != file; // the store's own errors name the file as their place
    return {exitCodeOf(error.code), file + ":" + (placed ? error.place + ": " : " ") + error.message};
}

tl::unexpected<Failure> refuse(std::string text)
{
    return tl::unexpected(Failure{badInput, std::move(text)});
}

} // namespace fleetrung::desk
