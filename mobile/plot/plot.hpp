// A picture as a list of primitives in data coordinates, each with a role and a name; no Qt, no pixels, no colours.
// painter.hpp draws the list on screen and in the PDF, spoken_summary.hpp says it in words: one list, so they agree.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace fleetrung::plot
{

/// What a primitive is, not how it looks. The palette gives each role a colour for shapes and one for text.
enum class Role {
    Axis,      ///< axis lines and ticks
    Grid,      ///< faint help lines, changes of rung
    Label,     ///< quiet text
    Strong,    ///< text that is read first
    Band,      ///< target band
    Taken,     ///< what was done
    Planned,   ///< what was planned (dashed)
    Mark,      ///< a measured value
    Latest,    ///< the newest value
    ScaleBand, ///< sprint contact times, for scale and no goal
    Phase,     ///< stretch of the season
    Race,      ///< competition
    MainRace,  ///< main competition
    Second,    ///< a second series (the right side, a second test)
    Today,     ///< where we are
    Chosen,    ///< round the value that was touched
};

struct Point {
    double x = 0;
    double y = 0;
};

/// Joins points in order; `stepped` goes along x first, then along y.
struct Line {
    Role role = Role::Taken;
    std::string name; ///< spoken, and shown in the legend
    std::vector<Point> points;
    bool stepped = false;
};

/// A shaded stretch of x, of y, or of both; an open side reaches the edge of the picture.
struct Band {
    Role role = Role::Band;
    std::string name; ///< written above or beside it, and spoken
    std::optional<double> xFrom, xTo, yFrom, yTo;
};

/// A thin line across the picture at one x.
struct Rule {
    Role role = Role::Today;
    std::string name;
    double x = 0;
};

enum class Shape { Ring, Dot, Diamond, Cross, Flag };

struct Mark {
    Role role = Role::Mark;
    Shape shape = Shape::Ring;
    Point at;
    std::string label;      ///< written beside it; empty for none
    double uncertainty = 0; ///< standard, along the value axis; 0 draws no bar
    std::string series;     ///< "repetition", "left"; marks of one series are spoken together
    std::string name;       ///< spoken instead of the label: the name of a race
};

/// A stretch of the strip above the picture: a phase, or the rung of that time.
struct StripPart {
    std::string name;
    double xFrom = 0;
    double xTo = 0;
};

using Primitive = std::variant<Line, Band, Rule, Mark>;

struct Tick {
    double at = 0;
    std::string label;
    bool strong = false; ///< the rung of today
};

struct Axis {
    enum class Kind {
        Number,
        Week,    ///< x counts weeks from the season's first day; x 0..1 is week 1
        Category ///< ticks are names at whole numbers
    };
    Kind kind = Kind::Number;
    double from = 0;
    double to = 1;
    bool downwards = false; ///< y only: `from` is at the top
    bool visible = true;    ///< an invisible axis only spreads the marks
    std::vector<Tick> ticks;
    std::string unit;       ///< "ms": written once, at the end of the axis
    std::string spokenUnit; ///< "milliseconds"
    std::string title;      ///< "time from concentric onset"
    int decimals = 0;       ///< of values said
};

struct LegendEntry {
    enum class Sample { Line, Area, Mark };
    Role role = Role::Taken;
    Sample sample = Sample::Line;
    Shape shape = Shape::Ring; ///< of a mark
    std::string text;
};

struct Plot {
    std::string title; ///< spoken first; drawn only where the page has no heading of its own
    Axis x;
    Axis y;
    bool valueIsX = false; ///< uncertainty bars and spoken values run along x (strike line)
    std::vector<StripPart> strip;
    std::vector<Primitive> primitives; ///< drawn in order
    std::vector<LegendEntry> legend;
    std::string note;  ///< one quiet line under the picture
    std::string empty; ///< said instead of the picture when there is nothing to draw yet
};

/// A round step (1, 2 or 5 times a power of ten) that gives at most `most` ticks between from and to.
[[nodiscard]] double niceStep(double from, double to, int most);

/// Ticks at round values from `from` to `to`; decimals follow the step.
[[nodiscard]] std::vector<Tick> niceTicks(double from, double to, int most);

/// Widens [from, to] to round values, at least `least` apart.
void roundOut(double& from, double& to, double least, int mostTicks);

} // namespace fleetrung::plot
