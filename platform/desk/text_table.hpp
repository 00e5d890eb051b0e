// A table for people: columns aligned in a terminal, numbers to the right.
#pragma once

#include <string>
#include <vector>

namespace fleetrung::desk
{

class TextTable
{
public:
    enum class Align { Left, Right };

    void addColumn(std::string name, std::string unit, Align align = Align::Right);
    void addRow(std::vector<std::string> cells); ///< as many as there are columns

    /// Names, units and rows, each line ended. A column whose cells are all empty is left out.
    [[nodiscard]] std::string text() const;

private:
    struct Column {
        std::string name;
        std::string unit;
        Align align;
    };
    std::vector<Column> columns_;
    std::vector<std::vector<std::string>> rows_;
};

} // namespace fleetrung::desk
