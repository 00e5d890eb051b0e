// The fonts that come with the program: Inter for Latin and Greek, Noto Sans CJK JP for Japanese. For screen and PDF.
#pragma once

namespace fleetrung::fonts
{

/// Makes them known to Qt; needs a QGuiApplication. A second call does nothing.
void bring();

} // namespace fleetrung::fonts
