// Two characteristics, one for each sensor: the angular rate at the accelerometer's instants, by linear interpolation.
// Memory is asked for in the constructor only. Private to engine/sensor.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include <Eigen/Core>

#include "engine/motion/sample.hpp"

namespace fleetrung::sensor
{

class GyroscopeMerge
{
public:
    GyroscopeMerge();

    /// A sample whose angular rate is still missing. `key` [s]: the instant on a clock that both streams share.
    struct Waiting {
        double key;
        motion::Sample sample;
        motion::Receipt receipt;
    };
    void addAcceleration(const Waiting& sample);
    void addRate(double key, const Eigen::Vector3d& rate);
    /// The next sample that is complete, in order. One that no angular rate came near to is left out and counted.
    [[nodiscard]] std::optional<Waiting> next();
    [[nodiscard]] std::int64_t leftOut() const { return leftOut_; }
    void clear();

private:
    struct Rate {
        double key;
        Eigen::Vector3d value;
    };
    /// A queue of fixed room; a full one drops its oldest.
    template <class T> class Queue
    {
    public:
        explicit Queue(std::size_t room) : items_(room) {}
        [[nodiscard]] std::size_t size() const { return size_; }
        [[nodiscard]] const T& operator[](std::size_t i) const { return items_[(first_ + i) % items_.size()]; }
        [[nodiscard]] T& front() { return items_[first_]; }
        [[nodiscard]] const T& back() const { return (*this)[size_ - 1]; }
        void pop()
        {
            first_ = (first_ + 1) % items_.size();
            --size_;
        }
        bool push(const T& item)
        {
            const bool full = size_ == items_.size();
            if (full)
                pop();
            items_[(first_ + size_) % items_.size()] = item;
            ++size_;
            return !full;
        }
        void clear() { size_ = 0; }

    private:
        std::vector<T> items_;
        std::size_t first_ = 0, size_ = 0;
    };

    enum class Found { Yes, Wait, Never };
    Found rateAt(double key, Eigen::Vector3d& rate);

    Queue<Waiting> accelerations_;
    Queue<Rate> rates_;
    std::int64_t leftOut_ = 0;
};

} // namespace fleetrung::sensor
