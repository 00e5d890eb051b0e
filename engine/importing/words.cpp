#include "engine/importing/words.hpp"

#include <algorithm>
#include <array>
#include <span>

#include "engine/base/numbers.hpp"

namespace fleetrung::importing
{
namespace
{

struct Letter {
    std::string_view accented;
    char plain;
};
// The letters of German, Spanish and French in UTF-8.
constexpr std::array<Letter, 32> letters{
    {{"\xC3\xA4", 'a'}, {"\xC3\x84", 'a'}, {"\xC3\xB6", 'o'}, {"\xC3\x96", 'o'}, {"\xC3\xBC", 'u'}, {"\xC3\x9C", 'u'},
     {"\xC3\xA1", 'a'}, {"\xC3\x81", 'a'}, {"\xC3\xA0", 'a'}, {"\xC3\x80", 'a'}, {"\xC3\xA2", 'a'}, {"\xC3\x82", 'a'},
     {"\xC3\xA9", 'e'}, {"\xC3\x89", 'e'}, {"\xC3\xA8", 'e'}, {"\xC3\x88", 'e'}, {"\xC3\xAA", 'e'}, {"\xC3\x8A", 'e'},
     {"\xC3\xAD", 'i'}, {"\xC3\x8D", 'i'}, {"\xC3\xAE", 'i'}, {"\xC3\xAF", 'i'}, {"\xC3\xB3", 'o'}, {"\xC3\x93", 'o'},
     {"\xC3\xB4", 'o'}, {"\xC3\xBA", 'u'}, {"\xC3\x9A", 'u'}, {"\xC3\xBB", 'u'}, {"\xC3\xB1", 'n'}, {"\xC3\x91", 'n'},
     {"\xC3\xA7", 'c'}, {"\xC3\x87", 'c'}}};
constexpr std::string_view sharpS = "\xC3\x9F";

struct UnitWord {
    std::string_view word;
    Unit unit;
};
constexpr std::array<UnitWord, 38> unitWords{{{"s", Unit::Second},
                                              {"sec", Unit::Second},
                                              {"secs", Unit::Second},
                                              {"sek", Unit::Second},
                                              {"seg", Unit::Second},
                                              {"seconds", Unit::Second},
                                              {"sekunden", Unit::Second},
                                              {"segundos", Unit::Second},
                                              {"secondes", Unit::Second},
                                              {"ms", Unit::Millisecond},
                                              {"msec", Unit::Millisecond},
                                              {"millisekunden", Unit::Millisecond},
                                              {"milliseconds", Unit::Millisecond},
                                              {"m", Unit::Metre},
                                              {"meter", Unit::Metre},
                                              {"metre", Unit::Metre},
                                              {"meters", Unit::Metre},
                                              {"metres", Unit::Metre},
                                              {"metros", Unit::Metre},
                                              {"metro", Unit::Metre},
                                              {"cm", Unit::Centimetre},
                                              {"yd", Unit::Yard},
                                              {"yds", Unit::Yard},
                                              {"yard", Unit::Yard},
                                              {"yards", Unit::Yard},
                                              {"y", Unit::Yard},
                                              {"kg", Unit::Kilogram},
                                              {"kgs", Unit::Kilogram},
                                              {"kilo", Unit::Kilogram},
                                              {"kilos", Unit::Kilogram},
                                              {"lb", Unit::Pound},
                                              {"lbs", Unit::Pound},
                                              {"pounds", Unit::Pound},
                                              {"mps", Unit::MetrePerSecond},
                                              {"ms 1", Unit::MetrePerSecond},
                                              {"m s", Unit::MetrePerSecond},
                                              {"m s 1", Unit::MetrePerSecond},
                                              {"m per s", Unit::MetrePerSecond}}};

Unit unitOfWord(std::string_view word)
{
    const auto found = std::ranges::find(unitWords, word, &UnitWord::word);
    return found == unitWords.end() ? Unit::None : found->unit;
}

struct MeaningWord {
    std::string_view words;
    Meaning meaning;
};
constexpr MeaningWord bothWords[] = {{"athlete id", Meaning::AthleteKey},
                                     {"athlete", Meaning::Athlete},
                                     {"athlete name", Meaning::Athlete},
                                     {"name", Meaning::Athlete},
                                     {"full name", Meaning::Athlete},
                                     {"player", Meaning::Athlete},
                                     {"player name", Meaning::Athlete},
                                     {"runner", Meaning::Athlete},
                                     {"subject", Meaning::Athlete},
                                     {"lifter", Meaning::Athlete},
                                     {"id", Meaning::Athlete},
                                     {"athletin", Meaning::Athlete},
                                     {"athlet", Meaning::Athlete},
                                     {"sportler", Meaning::Athlete},
                                     {"sportlerin", Meaning::Athlete},
                                     {"laufer", Meaning::Athlete},
                                     {"lauferin", Meaning::Athlete},
                                     {"atleta", Meaning::Athlete},
                                     {"nombre", Meaning::Athlete},
                                     {"deportista", Meaning::Athlete},
                                     {"nom", Meaning::Athlete},
                                     {"coureur", Meaning::Athlete},
                                     {"sportif", Meaning::Athlete},
                                     {"training day", Meaning::Date},
                                     {"date", Meaning::Date},
                                     {"day", Meaning::Date},
                                     {"datum", Meaning::Date},
                                     {"tag", Meaning::Date},
                                     {"fecha", Meaning::Date},
                                     {"dia", Meaning::Date},
                                     {"jour", Meaning::Date},
                                     {"date time", Meaning::Date},
                                     {"datetime", Meaning::Date},
                                     {"timestamp", Meaning::Date},
                                     {"zeitstempel", Meaning::Date},
                                     {"clock", Meaning::Clock},
                                     {"time of day", Meaning::Clock},
                                     {"start time", Meaning::Clock},
                                     {"at", Meaning::Clock},
                                     {"started", Meaning::Clock},
                                     {"uhrzeit", Meaning::Clock},
                                     {"hora", Meaning::Clock},
                                     {"heure", Meaning::Clock},
                                     {"note", Meaning::Note},
                                     {"notes", Meaning::Note},
                                     {"comment", Meaning::Note},
                                     {"comments", Meaning::Note},
                                     {"remarks", Meaning::Note},
                                     {"notiz", Meaning::Note},
                                     {"notizen", Meaning::Note},
                                     {"bemerkung", Meaning::Note},
                                     {"kommentar", Meaning::Note},
                                     {"nota", Meaning::Note},
                                     {"notas", Meaning::Note},
                                     {"comentario", Meaning::Note},
                                     {"commentaire", Meaning::Note},
                                     {"remarque", Meaning::Note},
                                     {"effort", Meaning::Effort},
                                     {"rpe", Meaning::Effort},
                                     {"anstrengung", Meaning::Effort},
                                     {"esfuerzo", Meaning::Effort},
                                     {"borg", Meaning::Effort}};
constexpr MeaningWord runWords[] = {{"sprint id", Meaning::Key},
                                    {"run id", Meaning::Key},
                                    {"run", Meaning::Attempt},
                                    {"run number", Meaning::Attempt},
                                    {"run no", Meaning::Attempt},
                                    {"attempt", Meaning::Attempt},
                                    {"rep", Meaning::Attempt},
                                    {"lap", Meaning::Attempt},
                                    {"no", Meaning::Attempt},
                                    {"nr", Meaning::Attempt},
                                    {"lauf", Meaning::Attempt},
                                    {"lauf nr", Meaning::Attempt},
                                    {"versuch", Meaning::Attempt},
                                    {"carrera", Meaning::Attempt},
                                    {"intento", Meaning::Attempt},
                                    {"serie", Meaning::Attempt},
                                    {"course", Meaning::Attempt},
                                    {"essai", Meaning::Attempt},
                                    {"distance", Meaning::Distance},
                                    {"dist", Meaning::Distance},
                                    {"gate", Meaning::Distance},
                                    {"strecke", Meaning::Distance},
                                    {"distanz", Meaning::Distance},
                                    {"distancia", Meaning::Distance},
                                    {"time", Meaning::Time},
                                    {"t", Meaning::Time},
                                    {"total", Meaning::Time},
                                    {"total time", Meaning::Time},
                                    {"split time", Meaning::Time},
                                    {"split", Meaning::Time},
                                    {"result", Meaning::Time},
                                    {"finish", Meaning::Time},
                                    {"t from gun", Meaning::Time},
                                    {"zeit", Meaning::Time},
                                    {"laufzeit", Meaning::Time},
                                    {"endzeit", Meaning::Time},
                                    {"gesamtzeit", Meaning::Time},
                                    {"zwischenzeit", Meaning::Time},
                                    {"tiempo", Meaning::Time},
                                    {"parcial", Meaning::Time},
                                    {"tiempo total", Meaning::Time},
                                    {"temps", Meaning::Time},
                                    {"temps total", Meaning::Time},
                                    {"chrono", Meaning::Time},
                                    {"wind", Meaning::Wind},
                                    {"wind speed", Meaning::Wind},
                                    {"windgeschwindigkeit", Meaning::Wind},
                                    {"viento", Meaning::Wind},
                                    {"vent", Meaning::Wind},
                                    {"timing", Meaning::Timing},
                                    {"timed by", Meaning::Timing},
                                    {"timing system", Meaning::Timing},
                                    {"zeitnahme", Meaning::Timing},
                                    {"zeitmessung", Meaning::Timing},
                                    {"cronometraje", Meaning::Timing},
                                    {"chronometrage", Meaning::Timing},
                                    {"start", Meaning::Start},
                                    {"start type", Meaning::Start},
                                    {"startart", Meaning::Start},
                                    {"startposition", Meaning::Start},
                                    {"start kind", Meaning::Start},
                                    {"salida", Meaning::Start},
                                    {"depart", Meaning::Start},
                                    {"run in", Meaning::RunIn},
                                    {"runin", Meaning::RunIn},
                                    {"anlauf", Meaning::RunIn},
                                    {"elan", Meaning::RunIn},
                                    {"reaction", Meaning::Reaction},
                                    {"reaction time", Meaning::Reaction},
                                    {"rt", Meaning::Reaction},
                                    {"reaktion", Meaning::Reaction},
                                    {"reaktionszeit", Meaning::Reaction},
                                    {"reaccion", Meaning::Reaction},
                                    {"tiempo de reaccion", Meaning::Reaction},
                                    {"temps de reaction", Meaning::Reaction},
                                    {"surface", Meaning::Surface},
                                    {"belag", Meaning::Surface},
                                    {"untergrund", Meaning::Surface},
                                    {"bahn", Meaning::Surface},
                                    {"superficie", Meaning::Surface},
                                    {"pista", Meaning::Surface},
                                    {"piste", Meaning::Surface},
                                    {"shoes", Meaning::Shoes},
                                    {"footwear", Meaning::Shoes},
                                    {"schuhe", Meaning::Shoes},
                                    {"calzado", Meaning::Shoes},
                                    {"zapatillas", Meaning::Shoes},
                                    {"chaussures", Meaning::Shoes},
                                    {"test", Meaning::Test},
                                    {"test name", Meaning::Test},
                                    {"exercise", Meaning::Test},
                                    {"drill", Meaning::Test},
                                    {"ubung", Meaning::Test},
                                    {"disziplin", Meaning::Test},
                                    {"prueba", Meaning::Test},
                                    {"epreuve", Meaning::Test},
                                    {"temperature", Meaning::Temperature},
                                    {"temperature degc", Meaning::Temperature},
                                    {"temperatur", Meaning::Temperature},
                                    {"temperatura", Meaning::Temperature},
                                    {"competition", Meaning::Competition},
                                    {"wettkampf", Meaning::Competition},
                                    {"competicion", Meaning::Competition},
                                    {"test trial", Meaning::Trial},
                                    {"contact time", Meaning::Contact},
                                    {"contact", Meaning::Contact},
                                    {"bodenkontakt", Meaning::Contact},
                                    {"step length", Meaning::StepLength},
                                    {"schrittlange", Meaning::StepLength}};
constexpr MeaningWord setWords[] = {{"set id", Meaning::Key},
                                    {"set", Meaning::Attempt},
                                    {"set number", Meaning::Attempt},
                                    {"number", Meaning::Attempt},
                                    {"set no", Meaning::Attempt},
                                    {"satz", Meaning::Attempt},
                                    {"serie", Meaning::Attempt},
                                    {"lift", Meaning::Lift},
                                    {"exercise", Meaning::Lift},
                                    {"movement", Meaning::Lift},
                                    {"ubung", Meaning::Lift},
                                    {"ejercicio", Meaning::Lift},
                                    {"exercice", Meaning::Lift},
                                    {"mouvement", Meaning::Lift},
                                    {"load", Meaning::Load},
                                    {"weight", Meaning::Load},
                                    {"mass", Meaning::Load},
                                    {"bar load", Meaning::Load},
                                    {"last", Meaning::Load},
                                    {"gewicht", Meaning::Load},
                                    {"carga", Meaning::Load},
                                    {"peso", Meaning::Load},
                                    {"charge", Meaning::Load},
                                    {"poids", Meaning::Load},
                                    {"reps", Meaning::Repetitions},
                                    {"repetitions", Meaning::Repetitions},
                                    {"repetitions done", Meaning::Repetitions},
                                    {"reps done", Meaning::Repetitions},
                                    {"wdh", Meaning::Repetitions},
                                    {"wiederholungen", Meaning::Repetitions},
                                    {"repeticiones", Meaning::Repetitions},
                                    {"rep", Meaning::Repetitions},
                                    {"tpv", Meaning::TimeToPeak},
                                    {"time to peak velocity", Meaning::TimeToPeak},
                                    {"time to peak", Meaning::TimeToPeak},
                                    {"zeit bis vmax", Meaning::TimeToPeak},
                                    {"tiempo hasta velocidad maxima", Meaning::TimeToPeak},
                                    {"temps jusqu a la vitesse maximale", Meaning::TimeToPeak},
                                    {"mean velocity", Meaning::MeanVelocity},
                                    {"average velocity", Meaning::MeanVelocity},
                                    {"avg velocity", Meaning::MeanVelocity},
                                    {"mv", Meaning::MeanVelocity},
                                    {"mcv", Meaning::MeanVelocity},
                                    {"velocity", Meaning::MeanVelocity},
                                    {"mittlere geschwindigkeit", Meaning::MeanVelocity},
                                    {"velocidad media", Meaning::MeanVelocity},
                                    {"vitesse moyenne", Meaning::MeanVelocity},
                                    {"peak velocity", Meaning::PeakVelocity},
                                    {"max velocity", Meaning::PeakVelocity},
                                    {"pv", Meaning::PeakVelocity},
                                    {"spitzengeschwindigkeit", Meaning::PeakVelocity},
                                    {"maximale geschwindigkeit", Meaning::PeakVelocity},
                                    {"velocidad maxima", Meaning::PeakVelocity},
                                    {"velocidad pico", Meaning::PeakVelocity},
                                    {"vitesse maximale", Meaning::PeakVelocity},
                                    {"vitesse de pointe", Meaning::PeakVelocity},
                                    {"range", Meaning::Range},
                                    {"rom", Meaning::Range},
                                    {"range of motion", Meaning::Range},
                                    {"bewegungsumfang", Meaning::Range},
                                    {"side", Meaning::Side},
                                    {"leg", Meaning::Side},
                                    {"seite", Meaning::Side},
                                    {"lado", Meaning::Side},
                                    {"cote", Meaning::Side},
                                    {"rung", Meaning::Rung},
                                    {"kind", Meaning::SetKind},
                                    {"set kind", Meaning::SetKind},
                                    {"type", Meaning::SetKind},
                                    {"box height", Meaning::BoxHeight},
                                    {"box", Meaning::BoxHeight},
                                    {"kasten", Meaning::BoxHeight},
                                    {"cajon", Meaning::BoxHeight}};

// What may stand beside a distance in the header of a split.
constexpr std::array<std::string_view, 33> splitWords{
    "t",         "time",     "times",        "split",   "splits",   "sprint",  "gate",
    "lap",       "at",       "to",           "run",     "dash",     "zeit",    "zeiten",
    "bei",       "nach",     "zwischenzeit", "bis",     "lauf",     "tor",     "tiempo",
    "parcial",   "a",        "en",           "de",      "temps",    "passage", "intermediaire",
    "intervall", "interval", "tramo",        "section", "abschnitt"};

bool isSplitWord(std::string_view word)
{
    return std::ranges::find(splitWords, word) != splitWords.end();
}

std::vector<std::string> wordsOf(std::string_view text)
{
    std::vector<std::string> words;
    while (!text.empty()) {
        const auto end = std::min(text.find(' '), text.size());
        if (end > 0)
            words.emplace_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

/// "t_10.5m" as t, 10.5, m: numbers whole, words folded.
std::vector<std::string> tokensOf(std::string_view text)
{
    const auto digitAt = [&text](std::size_t at) { return at < text.size() && text[at] >= '0' && text[at] <= '9'; };
    std::vector<std::string> tokens;
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = at;
        if (digitAt(at)) {
            while (digitAt(end) || (end < text.size() && (text[end] == '.' || text[end] == ',') && digitAt(end + 1)))
                ++end;
            tokens.emplace_back(text.substr(at, end - at));
            std::ranges::replace(tokens.back(), ',', '.');
        } else {
            while (end < text.size() && !digitAt(end))
                ++end;
            for (auto& word : foldedWords(text.substr(at, end - at)))
                tokens.push_back(std::move(word));
        }
        at = end;
    }
    return tokens;
}

/// A distance: a number of up to four digits before the mark.
std::optional<double> distanceIn(const std::string& token)
{
    return token.find('.') > 4 && token.size() > 4 ? std::nullopt : parseNumber(token);
}

std::string joinedWords(std::span<const std::string> words)
{
    std::string text;
    for (const auto& word : words)
        text += (text.empty() ? "" : " ") + word;
    return text;
}

/// A split: distances, perhaps with their unit, and only words that may stand beside one. `unit` of the times.
std::optional<HeaderMeaning> splitMeaning(std::string_view header)
{
    HeaderMeaning found;
    found.meaning = Meaning::Split;
    const auto words = tokensOf(header);
    std::vector<double> distances;
    bool named = false;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const auto& word = words[i];
        if (auto distance = distanceIn(word)) {
            const Unit unit = i + 1 < words.size() ? unitOfWord(words[i + 1]) : Unit::None;
            if (unit == Unit::Metre || unit == Unit::Yard) {
                named = true;
                *distance *= siFactor(unit);
                ++i;
            }
            distances.push_back(*distance);
        } else if (i + 1 == words.size() && (word == "s" || word == "ms" || word == "sec")) {
            found.unit = unitOfWord(word);
        } else if (!isSplitWord(word)) {
            return std::nullopt;
        }
    }
    constexpr double farthest = 1000; // m: "2026" is no gate
    if (distances.empty() || distances.size() > 2 || distances.back() > farthest)
        return std::nullopt;
    found.distance = distances.back();
    found.from = distances.size() == 2 ? distances.front() : 0;
    if (distances.size() == 2 && found.from >= found.distance)
        return std::nullopt;
    found.sureness = named || distances.size() == 2 ? 3 : 1;
    return found;
}

void takeBracketedUnit(std::string& header, Unit& unit)
{
    const auto open = header.find_last_of("([");
    if (open == std::string::npos)
        return;
    const auto close = header.find_first_of(")]", open);
    unit = unitNamed(std::string_view(header).substr(open + 1, close == std::string::npos ? close : close - open - 1));
    if (unit != Unit::None)
        header.erase(open, close == std::string::npos ? close : close - open + 1);
}

void takeLastUnit(std::vector<std::string>& words, Unit& unit)
{
    for (std::size_t count = 3; count > 0; --count) {
        if (words.size() <= count)
            continue;
        const auto tail = std::span(words).last(count);
        const Unit found = unitOfWord(joinedWords(tail));
        if (found == Unit::None)
            continue;
        unit = found;
        words.resize(words.size() - count);
        return;
    }
}

/// 3 where the words are the whole header, 2 where they stand in it; longer words beat shorter ones.
void look(std::span<const MeaningWord> table, const std::string& header, HeaderMeaning& best, std::size_t& length)
{
    for (const auto& [words, meaning] : table) {
        const bool whole = header == words;
        const std::string within = " " + header + " ";
        const bool part = words.size() > 2 && within.find(" " + std::string(words) + " ") != std::string::npos;
        const int sureness = whole ? 3 : part ? 2 : 0;
        if (sureness > best.sureness || (sureness == best.sureness && sureness > 0 && words.size() > length)) {
            best.meaning = meaning;
            best.sureness = sureness;
            length = words.size();
        }
    }
}

struct KeyWord {
    std::string_view word;
    std::string_view key;
};

/// The key of the first word that stands in the cell, alone or at the beginning of a word of it.
std::string keyIn(std::string_view cell, std::span<const KeyWord> table)
{
    const std::string text = " " + folded(cell);
    for (const auto& [word, key] : table)
        if (text.find(" " + std::string(word)) != std::string::npos)
            return std::string(key);
    return {};
}

} // namespace

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view space = "\xC2\xA0"; // no-break
    const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; };
    for (bool more = true; more;) {
        more = false;
        while (!text.empty() && blank(text.front()))
            text.remove_prefix(1);
        while (!text.empty() && blank(text.back()))
            text.remove_suffix(1);
        if (text.starts_with(space)) {
            text.remove_prefix(space.size());
            more = true;
        }
        if (text.ends_with(space)) {
            text.remove_suffix(space.size());
            more = true;
        }
    }
    return text;
}

std::string folded(std::string_view text)
{
    std::string plain;
    const auto gap = [&plain] {
        if (!plain.empty() && plain.back() != ' ')
            plain += ' ';
    };
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
            plain += c;
        } else if (c >= 'A' && c <= 'Z') {
            plain += static_cast<char>(c - 'A' + 'a');
        } else if (static_cast<unsigned char>(c) < 0x80) {
            gap();
        } else if (text.substr(i).starts_with(sharpS)) {
            plain += "ss";
            ++i;
        } else if (const auto letter = std::ranges::find(letters, text.substr(i, 2), &Letter::accented);
                   letter != letters.end()) {
            plain += letter->plain;
            ++i;
        } else if ((static_cast<unsigned char>(c) >= 0xC3 && static_cast<unsigned char>(c) <= 0xDF) ||
                   (static_cast<unsigned char>(c) & 0xC0U) == 0x80) {
            plain += c; // another alphabet: kept as it is, so that its words still differ
        } else {
            gap(); // dashes, quotes, signs
            while (i + 1 < text.size() && (static_cast<unsigned char>(text[i + 1]) & 0xC0U) == 0x80)
                ++i;
        }
    }
    if (plain.ends_with(' '))
        plain.pop_back();
    return plain;
}

std::vector<std::string> foldedWords(std::string_view text)
{
    return wordsOf(folded(text));
}

Unit unitNamed(std::string_view text)
{
    return unitOfWord(folded(text));
}

HeaderMeaning headerMeaning(std::string_view header, Kind kind)
{
    std::string text(header);
    HeaderMeaning best;
    Unit unit = Unit::None;
    takeBracketedUnit(text, unit);
    auto words = foldedWords(text);
    if (kind == Kind::Runs)
        if (auto split = splitMeaning(text)) {
            if (unit != Unit::None)
                split->unit = unit;
            return *split;
        }
    std::size_t length = 0;
    const auto lookAll = [&] {
        const std::string whole = joinedWords(words);
        look(bothWords, whole, best, length);
        look(kind == Kind::Runs ? std::span<const MeaningWord>(runWords) : std::span<const MeaningWord>(setWords),
             whole, best, length);
    };
    lookAll();
    if (best.sureness < 3) { // "wind_mps" is wind, but "date" is no "dat" in "e"
        auto last = unit;
        takeLastUnit(words, last);
        if (last != unit || unit == Unit::None)
            unit = last;
        best = {};
        length = 0;
        lookAll();
    }
    best.unit = unit;
    return best;
}

std::string startKey(std::string_view cell)
{
    constexpr KeyWord table[] = {
        {"fly", "flying"},           {"flieg", "flying"},       {"lanzad", "flying"},    {"lance", "flying"},
        {"block", "block"},          {"startblock", "block"},   {"blocks", "block"},     {"tief", "block"},
        {"taco", "block"},           {"standing", "standing"},  {"stand", "standing"},   {"hochstart", "standing"},
        {"pie", "standing"},         {"debout", "standing"},    {"2 point", "standing"}, {"3 point", "standing"},
        {"three point", "standing"}, {"two point", "standing"}, {"fall", "falling"},     {"caida", "falling"},
        {"chute", "falling"},        {"roll", "rolling"}};
    return keyIn(cell, table);
}

std::string timingKey(std::string_view cell)
{
    constexpr KeyWord table[] = {{"hand", "hand"},         {"manual", "hand"},   {"manuel", "hand"},
                                 {"stop", "hand"},         {"gate", "gates"},    {"licht", "gates"},
                                 {"beam", "gates"},        {"celul", "gates"},   {"fotoce", "gates"},
                                 {"cellule", "gates"},     {"photo", "gates"},   {"video", "video"},
                                 {"kamera", "video"},      {"camera", "video"},  {"electr", "electronic"},
                                 {"elektr", "electronic"}, {"fat", "electronic"}};
    return keyIn(cell, table);
}

std::string surfaceKey(std::string_view cell)
{
    constexpr KeyWord table[] = {{"indoor", "indoor"},   {"halle", "indoor"}, {"interior", "indoor"},
                                 {"salle", "indoor"},    {"grass", "grass"},  {"rasen", "grass"},
                                 {"gras", "grass"},      {"cesped", "grass"}, {"hierba", "grass"},
                                 {"herbe", "grass"},     {"gazon", "grass"},  {"track", "track"},
                                 {"tartan", "track"},    {"bahn", "track"},   {"kunststoff", "track"},
                                 {"synthetic", "track"}, {"pista", "track"},  {"piste", "track"}};
    return keyIn(cell, table);
}

std::string shoesKey(std::string_view cell)
{
    constexpr KeyWord table[] = {{"spike", "spikes"}, {"clavos", "spikes"},  {"pointes", "spikes"},
                                 {"flat", "flats"},   {"trainer", "flats"},  {"turnschuh", "flats"},
                                 {"basket", "flats"}, {"zapatilla", "flats"}};
    return keyIn(cell, table);
}

std::string sideKey(std::string_view cell)
{
    constexpr KeyWord table[] = {{"both", "both"},   {"beid", "both"},   {"ambos", "both"}, {"deux", "both"},
                                 {"left", "left"},   {"link", "left"},   {"izq", "left"},   {"gauche", "left"},
                                 {"right", "right"}, {"recht", "right"}, {"der", "right"},  {"droit", "right"}};
    const std::string text = folded(cell);
    if (text == "l" || text == "g")
        return "left";
    if (text == "r" || text == "d")
        return "right";
    return keyIn(cell, table);
}

std::string setKindKey(std::string_view cell)
{
    constexpr KeyWord table[] = {{"warm", "warm-up"},       {"aufw", "warm-up"}, {"calent", "warm-up"},
                                 {"echauff", "warm-up"},    {"probe", "probe"},  {"work", "work"},
                                 {"arbeit", "work"},        {"trabajo", "work"}, {"travail", "work"},
                                 {"mainten", "maintenance"}};
    return keyIn(cell, table);
}

std::optional<bool> yesOrNo(std::string_view cell)
{
    constexpr std::array<std::string_view, 9> yes{"yes", "y", "true", "1", "ja", "si", "oui", "x", "j"};
    constexpr std::array<std::string_view, 6> no{"no", "n", "false", "0", "nein", "non"};
    const std::string text = folded(cell);
    if (std::ranges::find(yes, text) != yes.end())
        return true;
    return std::ranges::find(no, text) != no.end() ? std::optional(false) : std::nullopt;
}

TestWords testWords(std::string_view cell)
{
    TestWords found;
    found.start = startKey(cell);
    const auto words = tokensOf(cell);
    for (std::size_t i = 0; i + 1 < words.size(); ++i) {
        const Unit unit = unitOfWord(words[i + 1]);
        const auto distance = distanceIn(words[i]);
        if (distance && (unit == Unit::Metre || unit == Unit::Yard))
            found.distance = *distance * siFactor(unit);
    }
    return found;
}

} // namespace fleetrung::importing
