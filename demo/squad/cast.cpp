#include "demo/squad/performer.hpp"

namespace fleetrung::squad
{
namespace
{

using season::Priority;

CivilDate on(int year, unsigned month, unsigned day)
{
    return std::chrono::sys_days{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{day}};
}

const std::vector<double> squatFactors{1.0, 1.07, 1.22, 1.48, 1.34, 0.80};
const std::vector<double> cleanFactors{1.0, 0.97, 0.94, 0.92, 0.88};
const std::vector<double> hingeFactors{1.0, 1.10, 1.22};
const std::vector<double> stepFactors{1.0, 1.10, 1.20, 1.30, 1.36};

season::SeasonSetup commonSetup()
{
    season::SeasonSetup setup;
    setup.trainingDays = {1, 3, 5};
    setup.sprintDays = {1, 3, 5};
    setup.equipment = {"bar", "rack", "pins", "blocks"};
    setup.boxHeights = season::boxesOf({10, 15, 20, 25, 30, 35, 40, 45});
    return setup;
}

Performer longJumper()
{
    Performer imani;
    imani.athlete.name = "Imani Vesterholt";
    imani.athlete.event = "long jump";
    imani.athlete.born = on(2002, 3, 4);
    imani.athlete.statureM = 1.74;
    imani.athlete.bodyMassKg = 63;
    imani.athlete.trainingYears = 6;
    imani.setup = commonSetup();
    imani.setup.name = "Outdoor 2026";
    imani.setup.start = on(2025, 11, 24);
    imani.setup.end = on(2026, 6, 28);
    imani.setup.sessionMinutes = 100;
    imani.setup.ladders = {"squat", "clean", "hinge", "drop-jump"};
    imani.setup.competitions = {
        {on(2026, 1, 24), "Winter meeting, Kalmere", Priority::C, false},
        {on(2026, 2, 14), "Regional indoor championships, Tarnholt", Priority::B, false},
        {on(2026, 5, 9), "Opening meeting, Kalmere", Priority::C, false},
        {on(2026, 5, 23), "Harbour evening, Ostrenna", Priority::C, false},
        {on(2026, 6, 6), "Regional championships, Tarnholt", Priority::B, false},
        {on(2026, 6, 20), "National championships, Veldmar", Priority::A, true},
        {on(2026, 6, 28), "Closing meeting, Kalmere", Priority::C, false},
    };
    imani.playedTo = on(2026, 6, 23);
    imani.abilities = {{"squat", 112, squatFactors}, {"clean", 76, cleanFactors}, {"hinge", 125, hingeFactors}};
    imani.strengthGain = 0.10;
    imani.response = 0.22;
    imani.speed = {9.05, 1.15, 0.030, 100};
    imani.standingLongJump = 2.52;
    imani.longJump = 6.12;
    imani.dropContact = 0.205;
    imani.dropFlight = 0.505;
    imani.away = {{on(2026, 3, 2), on(2026, 3, 8), "illness"}};
    imani.complaints = {{on(2026, 4, 15), 3, "knee"}, {on(2026, 4, 17), 2, "knee"}};
    imani.seed = 2400;
    return imani;
}

Performer youngRunner()
{
    Performer noor;
    noor.athlete.name = "Noor Hadad-Lind";
    noor.athlete.event = "200 m";
    noor.athlete.born = on(2009, 2, 18);
    noor.athlete.statureM = 1.69;
    noor.athlete.bodyMassKg = 57;
    noor.athlete.trainingYears = 1.5;
    noor.athlete.guardianConsent = true;
    noor.setup = commonSetup();
    noor.setup.name = "Late summer 2026";
    noor.setup.start = on(2026, 5, 11);
    noor.setup.sessionMinutes = 75;
    noor.setup.ladders = {"squat", "step-up"};
    noor.setup.competitions = {
        {on(2026, 6, 6), "Schools meeting, Kalmere", Priority::C, false},
        {on(2026, 8, 15), "Youth regionals, Tarnholt", Priority::B, false},
        {on(2026, 9, 19), "Youth championships, Veldmar", Priority::A, true},
    };
    noor.playedTo = on(2026, 6, 23);
    noor.abilities = {{"squat", 74, squatFactors}, {"step-up", 46, stepFactors}};
    noor.strengthGain = 0.16;
    noor.response = 0.22;
    noor.speed = {8.35, 1.20, 0.035, 200};
    noor.standingLongJump = 2.21;
    noor.longJump = 0;
    noor.dropContact = 0.215;
    noor.dropFlight = 0.46;
    noor.seed = 1700;
    return noor;
}

Performer mastersSprinter()
{
    Performer rafael;
    rafael.athlete.name = "Rafael Tanaka";
    rafael.athlete.event = "60 m";
    rafael.athlete.born = on(1984, 9, 30);
    rafael.athlete.statureM = 1.78;
    rafael.athlete.bodyMassKg = 79;
    rafael.athlete.trainingYears = 18;
    rafael.setup = commonSetup();
    rafael.setup.name = "Masters sprints 2026";
    rafael.setup.start = on(2026, 4, 27);
    rafael.setup.trainingDays = {2, 5};
    rafael.setup.sprintDays = {2, 5};
    rafael.setup.sessionMinutes = 90;
    rafael.setup.ladders = {"squat", "clean", "step-up"};
    rafael.setup.competitions = {
        {on(2026, 6, 14), "Open evening, Ostrenna", Priority::C, false},
        {on(2026, 10, 3), "Masters games, Veldmar", Priority::A, true},
    };
    rafael.playedTo = on(2026, 6, 23);
    rafael.abilities = {{"squat", 150, squatFactors}, {"clean", 98, cleanFactors}, {"step-up", 84, stepFactors}};
    rafael.strengthGain = 0.05;
    rafael.response = 0.18;
    rafael.speed = {9.20, 1.18, 0.015, 60};
    rafael.standingLongJump = 2.63;
    rafael.longJump = 0;
    rafael.dropContact = 0.21;
    rafael.dropFlight = 0.48;
    rafael.complaints = {{on(2026, 5, 29), 2, "back"}};
    rafael.seed = 4100;
    return rafael;
}

} // namespace

std::vector<Performer> cast()
{
    return {longJumper(), youngRunner(), mastersSprinter()};
}

} // namespace fleetrung::squad
