#pragma once

#include <cmath>
#include <string>
#include <vector>

#include <Eigen/Core>
#include <catch2/catch.hpp>
#include <tl/expected.hpp>
