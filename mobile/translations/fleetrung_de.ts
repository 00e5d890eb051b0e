<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>ArchiveSheet</name>
    <message>
        <source>Archive</source>
        <translation>Archiv</translation>
    </message>
    <message>
        <source>Everything they did is kept. An athlete who comes back goes on where they were.</source>
        <translation>Alles, was war, bleibt erhalten. Wer zurückkommt, macht dort weiter.</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Bring back %1</source>
        <translation>%1 zurückholen</translation>
    </message>
</context>
<context>
    <name>AthleteCard</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>shown on all pages</source>
        <translation>auf allen Seiten gezeigt</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>%1 bearbeiten</translation>
    </message>
</context>
<context>
    <name>AthleteSheet</name>
    <message>
        <source>Add an athlete</source>
        <translation>Athletin oder Athlet hinzufügen</translation>
    </message>
    <message>
        <source>Edit the athlete</source>
        <translation>Angaben bearbeiten</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Body mass, %1 (optional)</source>
        <translation>Körpergewicht, %1 (freiwillig)</translation>
    </message>
    <message>
        <source>Stature, %1 (optional)</source>
        <translation>Körpergröße, %1 (freiwillig)</translation>
    </message>
    <message>
        <source>Years of regular lifting (optional)</source>
        <translation>Jahre mit regelmäßigem Krafttraining (freiwillig)</translation>
    </message>
    <message>
        <source>Event (optional)</source>
        <translation>Disziplin (freiwillig)</translation>
    </message>
    <message>
        <source>200 m, long jump</source>
        <translation>200 m, Weitsprung</translation>
    </message>
    <message>
        <source>Training group (optional)</source>
        <translation>Trainingsgruppe (freiwillig)</translation>
    </message>
    <message>
        <source>sprint 2</source>
        <translation>Sprint 2</translation>
    </message>
    <message>
        <source>Under 18: has a guardian agreed?</source>
        <translation>Unter 18: Haben die Sorgeberechtigten zugestimmt?</translation>
    </message>
    <message>
        <source>No, or not needed</source>
        <translation>Nein, oder nicht nötig</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>Move to the archive</source>
        <translation>Ins Archiv legen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Born, like %1</source>
        <translation>Geboren, wie %1</translation>
    </message>
</context>
<context>
    <name>BarWords</name>
    <message>
        <source>Lighter than the bar of %1: a lighter bar, or dumbbells.</source>
        <translation>Leichter als die Stange mit %1: eine leichtere Stange oder Kurzhanteln.</translation>
    </message>
    <message>
        <source>The bar alone, %1.</source>
        <translation>Die leere Stange, %1.</translation>
    </message>
    <message>
        <source>Each side %1. Bar %2.</source>
        <translation>Je Seite %1. Stange %2.</translation>
    </message>
    <message>
        <source>Nearest with whole plates: %1. %2</source>
        <translation>Am nächsten mit ganzen Scheiben: %1. %2</translation>
    </message>
    <message>
        <source>More than ten possible repetitions say too little of 1RM.</source>
        <translation>Mehr als zehn mögliche Wiederholungen sagen zu wenig über das 1RM.</translation>
    </message>
    <message>
        <source>1RM %1.</source>
        <translation>1RM %1.</translation>
    </message>
    <message>
        <source>1RM about %1; by seven formulas %2 to %3.</source>
        <translation>1RM etwa %1; nach sieben Formeln %2 bis %3.</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1 Wiederholung</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1 Wiederholungen</translation>
    </message>
    <message>
        <source>%1 of 1RM</source>
        <translation>%1 vom 1RM</translation>
    </message>
    <message>
        <source>many left</source>
        <translation>viele übrig</translation>
    </message>
    <message>
        <source>about %1 left (%2 to %3)</source>
        <translation>noch etwa %1 (%2 bis %3)</translation>
    </message>
</context>
<context>
    <name>BestsSheet</name>
    <message>
        <source>Personal bests</source>
        <translation>Bestzeiten</translation>
    </message>
    <message>
        <source>More than 2.0 m/s of wind behind a competition makes its time wind-aided: it is no best. A time by hand is one only where there is no other.</source>
        <translation>Mehr als 2,0 m/s Rückenwind im Wettkampf: Die Zeit gilt als windunterstützt und ist keine Bestzeit. Eine Handzeit ist nur eine, wo es keine andere gibt.</translation>
    </message>
</context>
<context>
    <name>BigNumber</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>BlockSheet</name>
    <message>
        <source>Days away</source>
        <translation>Freie Tage</translation>
    </message>
    <message>
        <source>Change the days away</source>
        <translation>Freie Tage ändern</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>Reise</translation>
    </message>
    <message>
        <source>Exams</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>Krankheit</translation>
    </message>
    <message>
        <source>Injury</source>
        <translation>Verletzung</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>Wo?</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Take these days out of the plan</source>
        <translation>Diese Tage aus dem Plan nehmen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>BottomBar</name>
    <message>
        <source>Bench</source>
        <translation>Bank</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Leiter</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Trends</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Orte</translation>
    </message>
</context>
<context>
    <name>BoxCard</name>
    <message>
        <source>Drop jumps by box</source>
        <translation>Tiefsprünge nach Kasten</translation>
    </message>
    <message>
        <source>best reactive strength within the contact limit</source>
        <translation>beste Reaktivkraft innerhalb der Kontaktgrenze</translation>
    </message>
    <message>
        <source>Contact is longer than 250 ms: a lower box.</source>
        <translation>Der Kontakt dauert länger als 250 ms: ein niedrigerer Kasten.</translation>
    </message>
    <message>
        <source>Medians of the last day on each box. Go up 10 cm while contact stays short, no heel strikes the ground and RSI does not fall. Heels are not kept with a typed jump: watch them.</source>
        <translation>Mediane des letzten Tages je Kasten. Geh 10 cm höher, solange der Kontakt kurz bleibt, keine Ferse aufschlägt und der RSI nicht fällt. Fersen werden bei getippten Sprüngen nicht festgehalten: Achte selbst darauf.</translation>
    </message>
</context>
<context>
    <name>CalibrationSheet</name>
    <message>
        <source>Six sides</source>
        <translation>Sechs Seiten</translation>
    </message>
    <message>
        <source>Lay it on each side, in any order, on something hard and level. Wait for the tick.</source>
        <translation>Lege ihn auf jede Seite, in beliebiger Folge, auf etwas Hartes und Ebenes. Warte auf den Haken.</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>how far gravity was off at worst</source>
        <translation>so weit lag die Schwerkraft höchstens daneben</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>with the six sides measured</source>
        <translation>mit den sechs Seiten gemessen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Start over</source>
        <translation>Von vorn</translation>
    </message>
</context>
<context>
    <name>CautionsSheet</name>
    <message>
        <source>This is not medical advice. Work with a licensed coach or clinician; local rules and facility codes come first.</source>
        <translation>Dies ist kein ärztlicher Rat. Arbeite mit lizenziertem Trainer oder Arzt; Regeln vor Ort und Hausordnungen gehen vor.</translation>
    </message>
    <message>
        <source>Pain, an injury or pregnancy: ask a clinician before you train by this plan.</source>
        <translation>Schmerz, Verletzung oder Schwangerschaft: Frag einen Arzt, bevor du nach diesem Plan trainierst.</translation>
    </message>
    <message>
        <source>Under 18: only with a guardian&apos;s consent and a clearance.</source>
        <translation>Unter 18: nur mit Zustimmung der Sorgeberechtigten und ärztlicher Freigabe.</translation>
    </message>
    <message>
        <source>Heavy lifts over a short range carry more load than you are used to: safety bars set, and a spotter.</source>
        <translation>Schwere Übungen über kurzen Weg tragen mehr Last, als du gewohnt bist: Sicherheitsablagen stellen, und jemand, der sichert.</translation>
    </message>
    <message>
        <source>Drop jumps: few contacts, days between, and none when you are sore.</source>
        <translation>Tiefsprünge: wenige Kontakte, Tage dazwischen, und keine bei Muskelkater.</translation>
    </message>
    <message>
        <source>An estimated one-repetition maximum is an estimate. Never load it to see whether it is right.</source>
        <translation>Ein geschätztes 1RM ist eine Schätzung. Lade es nie auf, um zu sehen, ob es stimmt.</translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation>Bevor du beginnst</translation>
    </message>
    <message>
        <source>That shorter ranges carry over better to sprinting is the working premise of this program. There is evidence on both sides; your own stopwatch decides.</source>
        <translation>Dass kürzere Wege besser auf den Sprint wirken, ist die Arbeitsannahme dieses Programms. Es gibt Belege auf beiden Seiten; deine Stoppuhr entscheidet.</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Ich habe das gelesen</translation>
    </message>
</context>
<context>
    <name>CheckCard</name>
    <message>
        <source>Take it lighter today</source>
        <translation>Heute leichter</translation>
    </message>
    <message>
        <source>If not: why?</source>
        <translation>Wenn nicht: warum?</translation>
    </message>
    <message>
        <source>bar slipped in the warm-up</source>
        <translation>Stange rutschte beim Aufwärmen</translation>
    </message>
    <message>
        <source>Keep the plan</source>
        <translation>Beim Plan bleiben</translation>
    </message>
</context>
<context>
    <name>CompetitionSheet</name>
    <message>
        <source>A new competition</source>
        <translation>Ein neuer Wettkampf</translation>
    </message>
    <message>
        <source>Change the competition</source>
        <translation>Den Wettkampf ändern</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>club championship</source>
        <translation>Vereinsmeisterschaft</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Priority</source>
        <translation>Wichtigkeit</translation>
    </message>
    <message>
        <source>The season is counted back from it</source>
        <translation>Von ihm wird die Saison zurückgerechnet</translation>
    </message>
    <message>
        <source>Main competition</source>
        <translation>Hauptwettkampf</translation>
    </message>
    <message>
        <source>Delete this competition</source>
        <translation>Diesen Wettkampf löschen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>ConsequencesCard</name>
    <message>
        <source>What this does to the plan</source>
        <translation>Was das mit dem Plan macht</translation>
    </message>
</context>
<context>
    <name>CutOffCard</name>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Verwerfen</translation>
    </message>
</context>
<context>
    <name>DayChooser</name>
    <message>
        <source>a week sooner</source>
        <translation>eine Woche früher</translation>
    </message>
    <message>
        <source>− week</source>
        <translation>− Woche</translation>
    </message>
    <message>
        <source>a day sooner</source>
        <translation>einen Tag früher</translation>
    </message>
    <message>
        <source>− day</source>
        <translation>− Tag</translation>
    </message>
    <message>
        <source>a day later</source>
        <translation>einen Tag später</translation>
    </message>
    <message>
        <source>+ day</source>
        <translation>+ Tag</translation>
    </message>
    <message>
        <source>a week later</source>
        <translation>eine Woche später</translation>
    </message>
    <message>
        <source>+ week</source>
        <translation>+ Woche</translation>
    </message>
    <message>
        <source>The month before</source>
        <translation>Der Monat davor</translation>
    </message>
    <message>
        <source>The month after</source>
        <translation>Der Monat danach</translation>
    </message>
    <message>
        <source>%1, today</source>
        <translation>%1, heute</translation>
    </message>
</context>
<context>
    <name>DecideSheet</name>
    <message>
        <source>Decide otherwise</source>
        <translation>Anders entscheiden</translation>
    </message>
    <message>
        <source>Your decision counts. It is kept with the evidence and your reason, so that the season can be read later.</source>
        <translation>Deine Entscheidung gilt. Sie bleibt mit den Belegen und deinem Grund erhalten, damit man die Saison später lesen kann.</translation>
    </message>
    <message>
        <source>What will you do?</source>
        <translation>Was wirst du tun?</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>for example: knee is sore, competition moved</source>
        <translation>zum Beispiel: Knie schmerzt, Wettkampf verlegt</translation>
    </message>
    <message>
        <source>Keep this decision</source>
        <translation>Diese Entscheidung behalten</translation>
    </message>
</context>
<context>
    <name>DemoStrip</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>Cancel making the demo squad</source>
        <translation>Erstellen der Demo-Gruppe abbrechen</translation>
    </message>
    <message>
        <source>Leave the demo squad and remove it</source>
        <translation>Die Demo-Gruppe verlassen und entfernen</translation>
    </message>
</context>
<context>
    <name>DeviceCard</name>
    <message>
        <source>This device</source>
        <translation>Dieses Gerät</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>As the language</source>
        <translation>Wie die Sprache</translation>
    </message>
    <message>
        <source>Point, 1.85</source>
        <translation>Punkt, 1.85</translation>
    </message>
    <message>
        <source>Comma, 1,85</source>
        <translation>Komma, 1,85</translation>
    </message>
    <message>
        <source>Weeks of the calendar begin on</source>
        <translation>Kalenderwochen beginnen am</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>Montag</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>Sonntag</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Lasten</translation>
    </message>
    <message>
        <source>Kilograms</source>
        <translation>Kilogramm</translation>
    </message>
    <message>
        <source>Pounds</source>
        <translation>Pfund</translation>
    </message>
    <message>
        <source>The bar</source>
        <translation>Die Stange</translation>
    </message>
    <message>
        <source>Ranges and boxes</source>
        <translation>Wege und Kästen</translation>
    </message>
    <message>
        <source>Centimetres</source>
        <translation>Zentimeter</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>Sound on Bench</source>
        <translation>Ton auf der Bank</translation>
    </message>
    <message>
        <source>Silent</source>
        <translation>Stumm</translation>
    </message>
    <message>
        <source>Tones</source>
        <translation>Töne</translation>
    </message>
    <message>
        <source>Voice</source>
        <translation>Stimme</translation>
    </message>
    <message>
        <source>Shakes in the hand, where the device can</source>
        <translation>Vibriert in der Hand, wo das Gerät es kann</translation>
    </message>
    <message>
        <source>On</source>
        <translation>An</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>Sets begin when the bar moves, and end when it has rested for 15 s</source>
        <translation>Sätze beginnen, wenn die Stange sich bewegt, und enden, wenn sie 15 s geruht hat</translation>
    </message>
    <message>
        <source>Light or dark</source>
        <translation>Hell oder dunkel</translation>
    </message>
    <message>
        <source>As the device</source>
        <translation>Wie das Gerät</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Textgröße</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>150 %</source>
        <translation>150 %</translation>
    </message>
    <message>
        <source>200 %</source>
        <translation>200 %</translation>
    </message>
</context>
<context>
    <name>DidItWorkCard</name>
    <message>
        <source>Did it work?</source>
        <translation>Hat es gewirkt?</translation>
    </message>
    <message>
        <source>How this is judged</source>
        <translation>Wie das beurteilt wird</translation>
    </message>
</context>
<context>
    <name>DoneSetSheet</name>
    <message>
        <source>Load, %1</source>
        <translation>Last, %1</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>Kind of set</source>
        <translation>Art des Satzes</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Aufwärmen</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>Erhaltung</translation>
    </message>
    <message>
        <source>Effort, 1 easy to 10 all out (optional)</source>
        <translation>Anstrengung, 1 leicht bis 10 alles (freiwillig)</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Strike out</source>
        <translation>Streichen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No evidence</source>
        <translation>Kein Beleg</translation>
    </message>
    <message>
        <source>Is evidence</source>
        <translation>Ist Beleg</translation>
    </message>
    <message>
        <source>Was left</source>
        <translation>War links</translation>
    </message>
    <message>
        <source>Was right</source>
        <translation>War rechts</translation>
    </message>
    <message>
        <source>One repetition is missing</source>
        <translation>Eine Wiederholung fehlt</translation>
    </message>
    <message>
        <source>It is counted as done. Velocity and time only if you measured them otherwise.</source>
        <translation>Sie zählt als gemacht. Geschwindigkeit und Zeit nur, wenn du sie anders gemessen hast.</translation>
    </message>
    <message>
        <source>Velocity, m/s (if measured)</source>
        <translation>Geschwindigkeit, m/s (falls gemessen)</translation>
    </message>
    <message>
        <source>%1, ms (if measured)</source>
        <translation>%1, ms (falls gemessen)</translation>
    </message>
    <message>
        <source>Add the repetition</source>
        <translation>Wiederholung ergänzen</translation>
    </message>
    <message>
        <source>Delete this set</source>
        <translation>Diesen Satz löschen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>DoneSetsSheet</name>
    <message>
        <source>Sets done today</source>
        <translation>Heute gemachte Sätze</translation>
    </message>
    <message>
        <source>Nothing yet. Each set stands here once it is done, to be looked at and put right.</source>
        <translation>Noch nichts. Jeder fertige Satz steht hier, zum Ansehen und Richtigstellen.</translation>
    </message>
</context>
<context>
    <name>EngineWords</name>
    <message>
        <source>Squat</source>
        <translation>Kniebeuge</translation>
    </message>
    <message>
        <source>Step-up</source>
        <translation>Aufsteigen</translation>
    </message>
    <message>
        <source>Clean</source>
        <translation>Umsetzen</translation>
    </message>
    <message>
        <source>Hinge</source>
        <translation>Hüftbeuge</translation>
    </message>
    <message>
        <source>Pull</source>
        <translation>Zug</translation>
    </message>
    <message>
        <source>Drop jump</source>
        <translation>Tiefsprung</translation>
    </message>
    <message>
        <source>Ankle</source>
        <translation>Sprunggelenk</translation>
    </message>
    <message>
        <source>Full squat</source>
        <translation>Tiefe Kniebeuge</translation>
    </message>
    <message>
        <source>Parallel squat</source>
        <translation>Parallele Kniebeuge</translation>
    </message>
    <message>
        <source>Half squat</source>
        <translation>Halbe Kniebeuge</translation>
    </message>
    <message>
        <source>Quarter squat</source>
        <translation>Viertelkniebeuge</translation>
    </message>
    <message>
        <source>Quarter squat from pins</source>
        <translation>Viertelkniebeuge von Ablagen</translation>
    </message>
    <message>
        <source>Short drop squat</source>
        <translation>Kurze Fallkniebeuge</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>Tief</translation>
    </message>
    <message>
        <source>Parallel</source>
        <translation>Parallel</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Halb</translation>
    </message>
    <message>
        <source>Quarter</source>
        <translation>Viertel</translation>
    </message>
    <message>
        <source>Quarter from pins</source>
        <translation>Viertel von Ablagen</translation>
    </message>
    <message>
        <source>Short drop</source>
        <translation>Kurzer Fall</translation>
    </message>
    <message>
        <source>Step-up, %1</source>
        <translation>Aufsteigen, %1</translation>
    </message>
    <message>
        <source>Clean from the floor, caught low</source>
        <translation>Umsetzen vom Boden, tief gefangen</translation>
    </message>
    <message>
        <source>Power clean from the floor</source>
        <translation>Standumsetzen vom Boden</translation>
    </message>
    <message>
        <source>Power clean from blocks at the knee</source>
        <translation>Standumsetzen von Blöcken am Knie</translation>
    </message>
    <message>
        <source>Power clean from the hang</source>
        <translation>Standumsetzen aus dem Hang</translation>
    </message>
    <message>
        <source>Power clean from the hang, fast drop</source>
        <translation>Standumsetzen aus dem Hang, schnelles Senken</translation>
    </message>
    <message>
        <source>Romanian deadlift to mid-shin</source>
        <translation>Rumänisches Kreuzheben bis Mitte Schienbein</translation>
    </message>
    <message>
        <source>Romanian deadlift to the knee</source>
        <translation>Rumänisches Kreuzheben bis zum Knie</translation>
    </message>
    <message>
        <source>Quarter hinge</source>
        <translation>Viertel-Hüftbeuge</translation>
    </message>
    <message>
        <source>Pull from the floor</source>
        <translation>Zug vom Boden</translation>
    </message>
    <message>
        <source>Pull from knee blocks</source>
        <translation>Zug von Blöcken am Knie</translation>
    </message>
    <message>
        <source>Pull from mid-thigh blocks</source>
        <translation>Zug von Blöcken an der Oberschenkelmitte</translation>
    </message>
    <message>
        <source>High pull from mid-thigh</source>
        <translation>Hoher Zug ab Oberschenkelmitte</translation>
    </message>
    <message>
        <source>Drop jump, %1, entry</source>
        <translation>Tiefsprung, %1, Einstieg</translation>
    </message>
    <message>
        <source>Drop jump, %1, on the way up</source>
        <translation>Tiefsprung, %1, aufwärts</translation>
    </message>
    <message>
        <source>Drop jump, %1, on the way down</source>
        <translation>Tiefsprung, %1, abwärts</translation>
    </message>
    <message>
        <source>Drop jump, %1, quickest contact</source>
        <translation>Tiefsprung, %1, kürzester Kontakt</translation>
    </message>
    <message>
        <source>Drop jump, %1</source>
        <translation>Tiefsprung, %1</translation>
    </message>
    <message>
        <source>Calf raise through full range</source>
        <translation>Wadenheben über den ganzen Weg</translation>
    </message>
    <message>
        <source>Calf raise, upper half</source>
        <translation>Wadenheben, obere Hälfte</translation>
    </message>
    <message>
        <source>Loaded ankle hops</source>
        <translation>Sprunggelenkhüpfer mit Last</translation>
    </message>
    <message>
        <source>general preparation</source>
        <translation>allgemeine Vorbereitung</translation>
    </message>
    <message>
        <source>special preparation</source>
        <translation>spezielle Vorbereitung</translation>
    </message>
    <message>
        <source>pre-competition</source>
        <translation>Vorwettkampf</translation>
    </message>
    <message>
        <source>competition</source>
        <translation>Wettkampf</translation>
    </message>
    <message>
        <source>taper</source>
        <translation>Zuspitzung</translation>
    </message>
    <message>
        <source>transition</source>
        <translation>Übergang</translation>
    </message>
    <message>
        <source>time to peak velocity</source>
        <translation>Zeit bis zur Höchstgeschwindigkeit</translation>
    </message>
    <message>
        <source>time to peak</source>
        <translation>Zeit bis zum Gipfel</translation>
    </message>
    <message>
        <source>drop time</source>
        <translation>Fallzeit</translation>
    </message>
    <message>
        <source>contact time</source>
        <translation>Kontaktzeit</translation>
    </message>
    <message>
        <source>sessions on this rung</source>
        <translation>Einheiten auf dieser Sprosse</translation>
    </message>
    <message>
        <source>days on this rung</source>
        <translation>Tage auf dieser Sprosse</translation>
    </message>
    <message>
        <source>days past the latest date</source>
        <translation>Tage nach dem spätesten Tag</translation>
    </message>
    <message>
        <source>days until the next rung&apos;s phase</source>
        <translation>Tage bis zur Phase der nächsten Sprosse</translation>
    </message>
    <message>
        <source>days away from this ladder</source>
        <translation>Tage ohne diese Leiter</translation>
    </message>
    <message>
        <source>days since a heavy ladder stepped</source>
        <translation>Tage, seit eine schwere Leiter weiterging</translation>
    </message>
    <message>
        <source>strength against the first four sessions</source>
        <translation>Kraft gegen die ersten vier Einheiten</translation>
    </message>
    <message>
        <source>probe velocity against entry</source>
        <translation>Probetempo gegen den Einstieg</translation>
    </message>
    <message>
        <source>valid repetitions</source>
        <translation>gültige Wiederholungen</translation>
    </message>
    <message>
        <source>reactive strength index</source>
        <translation>Reaktivkraftindex</translation>
    </message>
    <message>
        <source>sleep</source>
        <translation>Schlaf</translation>
    </message>
    <message>
        <source>pain</source>
        <translation>Schmerz</translation>
    </message>
    <message>
        <source>%1, gain since entry</source>
        <translation>%1, Gewinn seit dem Einstieg</translation>
    </message>
    <message>
        <source>%1, last two sooner than the six before</source>
        <translation>%1, letzte zwei früher als die sechs davor</translation>
    </message>
    <message>
        <source>%1, later than before</source>
        <translation>%1, später als zuvor</translation>
    </message>
    <message>
        <source>slower than usual at %1</source>
        <translation>langsamer als sonst bei %1</translation>
    </message>
    <message>
        <source>days to %1</source>
        <translation>Tage bis %1</translation>
    </message>
    <message>
        <source>%1 sessions</source>
        <translation>%1 Einheiten</translation>
    </message>
    <message>
        <source>%1 session</source>
        <translation>%1 Einheit</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1 Tag</translation>
    </message>
    <message>
        <source>%1 of 10</source>
        <translation>%1 von 10</translation>
    </message>
    <message>
        <source>at least %1, counted as done: strength is up, speed is not</source>
        <translation>mindestens %1, gilt als erfüllt: Kraft stieg, Tempo nicht</translation>
    </message>
    <message>
        <source>at least %1 to be seen, for show</source>
        <translation>ab %1 sichtbar, zur Ansicht</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>above %1, levelled off</source>
        <translation>über %1, abgeflacht</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>mehr als %1</translation>
    </message>
    <message>
        <source>%1, for show</source>
        <translation>%1, zur Ansicht</translation>
    </message>
    <message>
        <source>On %1 time to peak came down from %2 to %3, more than it wanders by itself, and velocity held: go to %4.</source>
        <translation>Auf %1 sank die Zeit bis zum Gipfel von %2 auf %3, mehr als sie von selbst schwankt, und das Tempo hielt: weiter zu %4.</translation>
    </message>
    <message>
        <source>Stay on this box: %1.</source>
        <translation>Bleib auf diesem Kasten: %1.</translation>
    </message>
    <message>
        <source>Stay on %1: %2.</source>
        <translation>Bleib auf %1: %2.</translation>
    </message>
    <message>
        <source>At the latest the next step comes after %1.</source>
        <translation>Spätestens nach dem %1 geht es weiter.</translation>
    </message>
    <message>
        <source>%1 is the last rung: it is kept to the last competition.</source>
        <translation>%1 ist die letzte Sprosse: Sie bleibt bis zum letzten Wettkampf.</translation>
    </message>
    <message>
        <source>No session on this rung yet.</source>
        <translation>Noch keine Einheit auf dieser Sprosse.</translation>
    </message>
    <message>
        <source>Fewer than three sessions with a measured %1 on this rung.</source>
        <translation>Weniger als drei Einheiten mit gemessener %1 auf dieser Sprosse.</translation>
    </message>
    <message>
        <source>The time for %1 ended on %2: go to %3.</source>
        <translation>Die Zeit für %1 endete am %2: weiter zu %3.</translation>
    </message>
    <message>
        <source>No gain is claimed.</source>
        <translation>Ein Gewinn wird nicht behauptet.</translation>
    </message>
    <message>
        <source>Contact is quick and the reactive strength index holds: go to %1.</source>
        <translation>Der Kontakt ist kurz und der Reaktivkraftindex hält: weiter zu %1.</translation>
    </message>
    <message>
        <source>Stay here if heels strike.</source>
        <translation>Bleib hier, wenn Fersen aufschlagen.</translation>
    </message>
    <message>
        <source>The last two sessions came %1 later than the six before: %2 % less load.</source>
        <translation>Die letzten zwei Einheiten kamen %1 später als die sechs davor: %2 % weniger Last.</translation>
    </message>
    <message>
        <source>A very poor night: %1 % fewer sets, no step.</source>
        <translation>Eine sehr schlechte Nacht: %1 % weniger Sätze, nicht weiter.</translation>
    </message>
    <message>
        <source>You chose not to lift today.</source>
        <translation>Du wolltest heute nicht heben.</translation>
    </message>
    <message>
        <source>The rung waits.</source>
        <translation>Die Sprosse wartet.</translation>
    </message>
    <message>
        <source>See a clinician before you go on.</source>
        <translation>Geh zum Arzt, bevor du weitermachst.</translation>
    </message>
    <message>
        <source>Pain of %1 of 10 where this lift loads: it rests today, a lift that does not load that place may stand in.</source>
        <translation>Schmerz %1 von 10, wo diese Übung belastet: Sie ruht heute, eine andere ohne Last dort darf einspringen.</translation>
    </message>
    <message>
        <source>This day lies outside the season.</source>
        <translation>Dieser Tag liegt außerhalb der Saison.</translation>
    </message>
    <message>
        <source>Transition: active rest, no primary lifts.</source>
        <translation>Übergang: aktive Erholung, keine Hauptübungen.</translation>
    </message>
    <message>
        <source>%1 is today: no lifting.</source>
        <translation>%1 ist heute: kein Heben.</translation>
    </message>
    <message>
        <source>%1 is in %2: nothing heavy.</source>
        <translation>%1 ist in %2: nichts Schweres.</translation>
    </message>
    <message>
        <source>A light, fast primer of at most %1 repetitions at %2 or less is allowed.</source>
        <translation>Erlaubt ist eine leichte, schnelle Aktivierung mit höchstens %1 Wiederholungen bei %2 oder weniger.</translation>
    </message>
    <message>
        <source>The step to %1 is ready, but another heavy ladder stepped %2: it waits.</source>
        <translation>Der Schritt zu %1 ist reif, doch eine andere schwere Leiter ging %2 weiter: Er wartet.</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
    <message>
        <source>%1 days ago</source>
        <translation>vor %1 Tagen</translation>
    </message>
    <message>
        <source>%1 more session on this rung</source>
        <translation>noch %1 Einheit auf dieser Sprosse</translation>
    </message>
    <message>
        <source>%1 more sessions on this rung</source>
        <translation>noch %1 Einheiten auf dieser Sprosse</translation>
    </message>
    <message>
        <source>%1 more day on this rung</source>
        <translation>noch %1 Tag auf dieser Sprosse</translation>
    </message>
    <message>
        <source>%1 more days on this rung</source>
        <translation>noch %1 Tage auf dieser Sprosse</translation>
    </message>
    <message>
        <source>%1 until the phase in which %2 begins</source>
        <translation>%1 bis zur Phase, in der %2 beginnt</translation>
    </message>
    <message>
        <source>%1 is no sooner than at entry, and only %2 are more than it wanders by itself</source>
        <translation>%1 ist nicht früher als beim Einstieg, und erst %2 sind mehr, als sie von selbst schwankt</translation>
    </message>
    <message>
        <source>%1 is %2 sooner than at entry, and only %3 are more than it wanders by itself</source>
        <translation>%1 ist %2 früher als beim Einstieg, und erst %3 sind mehr, als sie von selbst schwankt</translation>
    </message>
    <message>
        <source>strength is down by %1 % on this rung; a maintenance set is added</source>
        <translation>die Kraft fiel auf dieser Sprosse um %1 %; ein Erhaltungssatz kommt dazu</translation>
    </message>
    <message>
        <source>only %1 % of the last repetitions kept the full range of this rung</source>
        <translation>nur %1 % der letzten Wiederholungen hielten den ganzen Weg dieser Sprosse</translation>
    </message>
    <message>
        <source>Find a load of effort 7 of 10 for %1 repetitions; about %2 of it is the probe load for the whole stay.</source>
        <translation>Suche eine Last mit Anstrengung 7 von 10 für %1 Wiederholungen; etwa %2 davon sind die Probelast für den ganzen Aufenthalt.</translation>
    </message>
    <message>
        <source>A low day: no heavy lifts without sprints before them.</source>
        <translation>Ein leichter Tag: keine schweren Übungen ohne Sprints davor.</translation>
    </message>
    <message>
        <source>Fleetrung is no medical advice. Work with a licensed coach or clinician; local rules and the facility&apos;s codes come first. Do not train through pain, injury or illness; in pregnancy ask a clinician first.</source>
        <translation>Fleetrung ist kein ärztlicher Rat. Arbeite mit lizenziertem Trainer oder Arzt; Regeln vor Ort und Hausordnung gehen vor. Trainiere nicht durch Schmerz, Verletzung oder Krankheit; in der Schwangerschaft frag zuerst einen Arzt.</translation>
    </message>
    <message>
        <source>A guardian must have agreed and a clinician must have cleared you. Somebody qualified watches every session. Load grows by at most 10 %, on at most three days a week that do not follow each other.</source>
        <translation>Sorgeberechtigte müssen zugestimmt und ein Arzt muss dich freigegeben haben. Jemand Qualifiziertes beaufsichtigt jede Einheit. Die Last wächst um höchstens 10 %, an höchstens drei nicht aufeinanderfolgenden Tagen je Woche.</translation>
    </message>
    <message>
        <source>Use safety bars and a spotter. Technique comes before load: stop the set when it breaks.</source>
        <translation>Nutze Sicherheitsablagen und jemanden, der sichert. Technik geht vor Last: Beende den Satz, wenn sie bricht.</translation>
    </message>
    <message>
        <source>A shorter range lets more weight on your back than you can hold lower down. Set the safety bars just below the lowest point, have a spotter, and stay within the load shown.</source>
        <translation>Ein kürzerer Weg lädt mehr auf den Rücken, als du tiefer halten kannst. Stelle die Ablagen knapp unter den tiefsten Punkt, lass jemanden sichern und bleib bei der gezeigten Last.</translation>
    </message>
    <message>
        <source>Keep the back as it was at the start of the pull. Stop with any pain in the back.</source>
        <translation>Halte den Rücken wie zu Beginn des Zugs. Hör bei jedem Rückenschmerz auf.</translation>
    </message>
    <message>
        <source>Land on the front of the foot on a firm, even surface. Stop when heels strike or contact grows long. No more than the contacts shown, two or three days between.</source>
        <translation>Lande auf dem Vorfuß, auf festem, ebenem Boden. Hör auf, wenn Fersen aufschlagen oder der Kontakt lang wird. Nicht mehr als die gezeigten Kontakte, zwei oder drei Tage dazwischen.</translation>
    </message>
    <message>
        <source>Pain is a reason to stop, not a number to beat. With strong or sharp pain, limping, or new pain in the hamstring see a clinician before you sprint or lift again.</source>
        <translation>Schmerz ist ein Grund aufzuhören, keine Zahl zum Übertreffen. Bei starkem oder stechendem Schmerz, Hinken oder neuem Schmerz hinten im Oberschenkel geh zum Arzt, bevor du wieder sprintest oder hebst.</translation>
    </message>
    <message>
        <source>A 1RM estimated from repetitions or velocity is an estimate. Do not put it on the bar untested.</source>
        <translation>Ein aus Wiederholungen oder Tempo geschätztes 1RM ist eine Schätzung. Lege es nicht ungeprüft auf die Stange.</translation>
    </message>
    <message>
        <source>That strength built through shorter ranges carries over better to sprinting is the working premise, with evidence on both sides (for: Rhea et al. 2016, Human Movement 17(1):43-49; against: Hartmann et al. 2012, J Strength Cond Res 26(12):3243-3261).</source>
        <translation>Dass Kraft aus kürzeren Wegen besser auf den Sprint wirkt, ist die Arbeitsannahme, mit Belegen auf beiden Seiten (dafür: Rhea et al. 2016, Human Movement 17(1):43-49; dagegen: Hartmann et al. 2012, J Strength Cond Res 26(12):3243-3261).</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>gegangen</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>main one</source>
        <translation>Hauptwettkampf</translation>
    </message>
    <message>
        <source>probe set</source>
        <translation>Probesatz</translation>
    </message>
    <message>
        <source>target band</source>
        <translation>Zielband</translation>
    </message>
    <message>
        <source>a run</source>
        <translation>ein Lauf</translation>
    </message>
    <message>
        <source>best of the day</source>
        <translation>Bester des Tages</translation>
    </message>
    <message>
        <source>no evidence</source>
        <translation>kein Beleg</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>Kurve</translation>
    </message>
    <message>
        <source>top speed</source>
        <translation>Höchsttempo</translation>
    </message>
    <message>
        <source>mean speed</source>
        <translation>mittleres Tempo</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>a split</source>
        <translation>eine Zwischenzeit</translation>
    </message>
    <message>
        <source>usual error</source>
        <translation>üblicher Fehler</translation>
    </message>
    <message>
        <source>your line</source>
        <translation>deine Linie</translation>
    </message>
    <message>
        <source>the line</source>
        <translation>die Linie</translation>
    </message>
    <message>
        <source>fastest at a load</source>
        <translation>schnellste je Last</translation>
    </message>
    <message>
        <source>fastest repetition of a day</source>
        <translation>schnellste Wiederholung des Tages</translation>
    </message>
    <message>
        <source>estimated 1RM</source>
        <translation>geschätztes 1RM</translation>
    </message>
    <message>
        <source>chance reaches</source>
        <translation>Zufall erreicht</translation>
    </message>
    <message>
        <source>first steps</source>
        <translation>erste Schritte</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>week %1</source>
        <translation>Woche %1</translation>
    </message>
    <message>
        <source>Above the line: later than fitted.</source>
        <translation>Über der Linie: später als die Kurve.</translation>
    </message>
    <message>
        <source>Above zero: quicker bar, quicker sprint that many weeks later. Whiskers: 95 %, for show.</source>
        <translation>Über null: schnellere Stange, so viele Wochen später schnellerer Sprint. Striche: 95 %, zur Ansicht.</translation>
    </message>
    <message>
        <source>Each mark is a repetition, from concentric onset. Sprint contact times are for scale, not a goal.</source>
        <translation>Jede Marke ist eine Wiederholung, ab Beginn des Hebens. Kontaktzeiten des Sprints sind Maßstab, kein Ziel.</translation>
    </message>
    <message>
        <source>Each mark is a repetition, from concentric onset.</source>
        <translation>Jede Marke ist eine Wiederholung, ab Beginn des Hebens.</translation>
    </message>
    <message>
        <source>Lower is faster. Beside the best of a day: wind in m/s, tail wind positive.</source>
        <translation>Tiefer ist schneller. Neben dem Besten eines Tages: Wind in m/s, Rückenwind positiv.</translation>
    </message>
    <message>
        <source>Lower is faster.</source>
        <translation>Tiefer ist schneller.</translation>
    </message>
    <message>
        <source>Times of different rungs are not to be compared: a shorter range is quicker anyway.</source>
        <translation>Zeiten verschiedener Sprossen sind nicht vergleichbar: Ein kürzerer Weg ist ohnehin schneller.</translation>
    </message>
    <message>
        <source>No fit.</source>
        <translation>Keine Kurve.</translation>
    </message>
    <message>
        <source>No measured loads yet.</source>
        <translation>Noch keine gemessenen Lasten.</translation>
    </message>
    <message>
        <source>No probe sets yet.</source>
        <translation>Noch keine Probesätze.</translation>
    </message>
    <message>
        <source>No runs yet.</source>
        <translation>Noch keine Läufe.</translation>
    </message>
    <message>
        <source>No weeks with both yet.</source>
        <translation>Noch keine Wochen mit beidem.</translation>
    </message>
    <message>
        <source>at least %1 to be seen</source>
        <translation>ab %1 sichtbar</translation>
    </message>
    <message>
        <source>Refused by the athlete</source>
        <translation>Vom Athleten abgelehnt</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Schmerz</translation>
    </message>
    <message>
        <source>Pain: another lift</source>
        <translation>Schmerz: eine andere Übung</translation>
    </message>
    <message>
        <source>Outside the season</source>
        <translation>Außerhalb der Saison</translation>
    </message>
    <message>
        <source>Transition</source>
        <translation>Übergang</translation>
    </message>
    <message>
        <source>Travel, exams, illness or injury</source>
        <translation>Reise, Prüfungen, Krankheit oder Verletzung</translation>
    </message>
    <message>
        <source>A new macrocycle</source>
        <translation>Ein neuer Makrozyklus</translation>
    </message>
    <message>
        <source>Layoff</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Rest before a competition</source>
        <translation>Ruhe vor einem Wettkampf</translation>
    </message>
    <message>
        <source>Ease: later than before</source>
        <translation>Erleichtern: später als zuvor</translation>
    </message>
    <message>
        <source>Ease: a poor night</source>
        <translation>Erleichtern: schlechte Nacht</translation>
    </message>
    <message>
        <source>Step by date</source>
        <translation>Weiter nach Datum</translation>
    </message>
    <message>
        <source>Up to the next box</source>
        <translation>Auf den nächsten Kasten</translation>
    </message>
    <message>
        <source>Step for evidence</source>
        <translation>Weiter wegen Belegen</translation>
    </message>
    <message>
        <source>Step by exposure, by choice</source>
        <translation>Weiter aus Wahl, ohne Beleg</translation>
    </message>
    <message>
        <source>No response</source>
        <translation>Keine Antwort</translation>
    </message>
    <message>
        <source>One heavy step in seven days</source>
        <translation>Ein schwerer Schritt in sieben Tagen</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>rung</source>
        <translation>Sprosse</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>probe</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>set stop</source>
        <translation>Satzende</translation>
    </message>
    <message>
        <source>contacts</source>
        <translation>Kontakte</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation>Erhaltung</translation>
    </message>
    <message>
        <source>%1 is the rung that the plan puts here, in %2.</source>
        <translation>%1 ist die Sprosse, die der Plan hierher setzt: %2.</translation>
    </message>
    <message>
        <source>No load is known on this ladder yet: find one of effort 7 of 10.</source>
        <translation>Auf dieser Leiter ist noch keine Last bekannt: Suche eine mit Anstrengung 7 von 10.</translation>
    </message>
    <message>
        <source>From %1, down to what the plates make.</source>
        <translation>Aus: %1, abgerundet auf ganze Scheiben.</translation>
    </message>
    <message>
        <source>the last work load, never more on a longer range</source>
        <translation>der letzten Arbeitslast, nie mehr auf längerem Weg</translation>
    </message>
    <message>
        <source>the last work load</source>
        <translation>der letzten Arbeitslast</translation>
    </message>
    <message>
        <source>%1 x the full squat&apos;s estimated maximum</source>
        <translation>%1-Faches des geschätzten Maximums der tiefen Kniebeuge</translation>
    </message>
    <message>
        <source>%1 x the last load on the rung before</source>
        <translation>%1-Faches der letzten Last auf der Sprosse davor</translation>
    </message>
    <message>
        <source>the load of effort 7 of 10</source>
        <translation>der Last mit Anstrengung 7 von 10</translation>
    </message>
    <message>
        <source>at most %1 % more under 18</source>
        <translation>höchstens %1 % mehr unter 18</translation>
    </message>
    <message>
        <source>at most %1 % more in 28 days</source>
        <translation>höchstens %1 % mehr in 28 Tagen</translation>
    </message>
    <message>
        <source>at most %1 % more in 7 days</source>
        <translation>höchstens %1 % mehr in 7 Tagen</translation>
    </message>
    <message>
        <source>the load of %1</source>
        <translation>der Last vom %1</translation>
    </message>
    <message>
        <source>First time on this rung: stop adding at effort 7 of 10, whatever the number says.</source>
        <translation>Zum ersten Mal auf dieser Sprosse: Lege ab Anstrengung 7 von 10 nichts mehr auf, was auch immer die Zahl sagt.</translation>
    </message>
    <message>
        <source>%1 less today, by the decision.</source>
        <translation>Heute %1 weniger, durch die Entscheidung.</translation>
    </message>
    <message>
        <source>%1 sets of %2 are the rung&apos;s own; %3 and the competitions near leave %4 of that.</source>
        <translation>%1 Sätze zu %2 gehören zur Sprosse; %3 und nahe Wettkämpfe lassen %4 davon.</translation>
    </message>
    <message>
        <source>%1 sets of %2 are the rung&apos;s own.</source>
        <translation>%1 Sätze zu %2 gehören zur Sprosse.</translation>
    </message>
    <message>
        <source>The decision takes it down to %1.</source>
        <translation>Die Entscheidung senkt es auf %1.</translation>
    </message>
    <message>
        <source>Three repetitions with full intent, at the same load for the whole stay on the rung: the only thing that counts as evidence.</source>
        <translation>Drei Wiederholungen mit voller Absicht, mit derselben Last, solange du auf der Sprosse bist: Nur das zählt als Beleg.</translation>
    </message>
    <message>
        <source>Three jumps with full intent: the only thing that counts as evidence.</source>
        <translation>Drei Sprünge mit voller Absicht: Nur das zählt als Beleg.</translation>
    </message>
    <message>
        <source>In %1 a set ends when velocity has fallen by %2 from its fastest repetition.</source>
        <translation>Phase %1: Ein Satz endet, wenn das Tempo um %2 unter die schnellste Wiederholung fällt.</translation>
    </message>
    <message>
        <source>At most %1 drop-jump contacts today: our limits for a session and for seven days.</source>
        <translation>Heute höchstens %1 Tiefsprungkontakte: unsere Grenzen für eine Einheit und sieben Tage.</translation>
    </message>
    <message>
        <source>%1 was last lifted %2 days ago: two heavy sets keep its strength.</source>
        <translation>%1 wurde zuletzt vor %2 Tagen gehoben: Zwei schwere Sätze erhalten die Kraft.</translation>
    </message>
    <message>
        <source>%1 was last lifted %2 days ago, longer than it should be: two heavy sets keep its strength.</source>
        <translation>%1 wurde zuletzt vor %2 Tagen gehoben, länger als gut: Zwei schwere Sätze erhalten die Kraft.</translation>
    </message>
    <message>
        <source>A heavy lift stands on a sprint day, after the run, so that low days stay low.</source>
        <translation>Eine schwere Übung steht an einem Sprinttag, nach dem Laufen, damit leichte Tage leicht bleiben.</translation>
    </message>
    <message>
        <source>A lifting day of the week.</source>
        <translation>Ein Tag der Woche mit Übungen.</translation>
    </message>
    <message>
        <source>A light, fast ladder: it may stand on any lifting day, before the heavy ones.</source>
        <translation>Eine leichte, schnelle Leiter: Sie darf an jedem Übungstag vor den schweren stehen.</translation>
    </message>
    <message>
        <source>%1 ladders share %2 places a session: it is this one&apos;s turn.</source>
        <translation>%1 Leitern teilen sich %2 Plätze je Einheit: Diese ist an der Reihe.</translation>
    </message>
    <message>
        <source>%1 stands in for %2, which loads the place that hurts.</source>
        <translation>%1 springt für %2 ein, das die schmerzende Stelle belastet.</translation>
    </message>
    <message>
        <source>%1 rests: the contacts of these days are done, and drop jumps need %2 days between.</source>
        <translation>%1 ruht: Die Kontakte dieser Tage sind gemacht, und Tiefsprünge brauchen %2 Tage dazwischen.</translation>
    </message>
    <message>
        <source>%1 rests: %2</source>
        <translation>%1 ruht: %2</translation>
    </message>
    <message>
        <source>A primer, light and fast, by choice. It is no evidence.</source>
        <translation>Eine Aktivierung, leicht und schnell, freiwillig. Sie ist kein Beleg.</translation>
    </message>
    <message>
        <source>In the weeks when the bar was quicker within a rung, %1 were better than the season&apos;s trend %2: %3; %4.</source>
        <translation>In den Wochen, in denen die Hantel auf einer Sprosse schneller war, waren %1 besser als der Trend der Saison, %2: %3; %4.</translation>
    </message>
    <message>
        <source>It shows that they moved together, not that one caused the other.</source>
        <translation>Das zeigt, dass beide zusammen gingen, nicht, dass das eine das andere bewirkt hat.</translation>
    </message>
    <message>
        <source>Not shown: when the bar was quicker within a rung, %1 were not better than the season&apos;s trend by more than chance (at best %2: %3; %4).</source>
        <translation>Nicht gezeigt: war die Hantel auf einer Sprosse schneller, waren %1 nicht über den Zufall hinaus besser als der Trend der Saison (am besten %2: %3; %4).</translation>
    </message>
    <message>
        <source>The strongest relation goes the other way: when the bar was quicker, times were slower %1 (%2).</source>
        <translation>Der stärkste Zusammenhang geht andersherum: war die Hantel schneller, waren die Zeiten langsamer, %1 (%2).</translation>
    </message>
    <message>
        <source>That is no proof that there is no relation.</source>
        <translation>Das beweist nicht, dass es keinen Zusammenhang gibt.</translation>
    </message>
    <message>
        <source>Not shown: beside their trends the bar or the sprint times did not vary.</source>
        <translation>Nicht gezeigt: abseits ihrer Trends schwankten Hantel oder Sprintzeiten nicht.</translation>
    </message>
    <message>
        <source>Not enough: %1, on %2, all in the same conditions.</source>
        <translation>Zu wenig: noch %1, auf %2, alle unter gleichen Bedingungen.</translation>
    </message>
    <message>
        <source>Not enough: %1, all in the same conditions.</source>
        <translation>Zu wenig: noch %1, alle unter gleichen Bedingungen.</translation>
    </message>
    <message>
        <source>Not enough: %1, on %2 (%3).</source>
        <translation>Zu wenig: noch %1, auf %2 (%3).</translation>
    </message>
    <message>
        <source>Not enough: %1 (%2).</source>
        <translation>Zu wenig: noch %1 (%2).</translation>
    </message>
    <message>
        <source>Each counts in a further week, with the bar measured in that week and the four before.</source>
        <translation>Jeder zählt in einer weiteren Woche, wenn die Hantel in ihr und den vier davor gemessen wurde.</translation>
    </message>
    <message>
        <source>rank correlation %1 over %2 and %3</source>
        <translation>Rangkorrelation %1 über %2 und %3</translation>
    </message>
    <message>
        <source>sprint times (each in its own conditions)</source>
        <translation>Sprintzeiten (jede unter ihren Bedingungen)</translation>
    </message>
    <message>
        <source>sprint times (%1)</source>
        <translation>Sprintzeiten (%1)</translation>
    </message>
    <message>
        <source>in the same week</source>
        <translation>in derselben Woche</translation>
    </message>
    <message>
        <source>chance alone gives as much in %1 of 100 such seasons</source>
        <translation>der Zufall allein gibt so viel in %1 von 100 solchen Saisons</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>weniger als %1</translation>
    </message>
    <message>
        <source>%1 weeks later</source>
        <translation>%1 Wochen später</translation>
    </message>
    <message>
        <source>%1 week later</source>
        <translation>%1 Woche später</translation>
    </message>
    <message>
        <source>%1 weeks</source>
        <translation>%1 Wochen</translation>
    </message>
    <message>
        <source>%1 week</source>
        <translation>%1 Woche</translation>
    </message>
    <message>
        <source>%1 rungs</source>
        <translation>%1 Sprossen</translation>
    </message>
    <message>
        <source>%1 rung</source>
        <translation>%1 Sprosse</translation>
    </message>
    <message>
        <source>%1 more tests</source>
        <translation>%1 weitere Tests</translation>
    </message>
    <message>
        <source>%1 more test</source>
        <translation>%1 weiterer Test</translation>
    </message>
    <message>
        <source>%1 more rungs</source>
        <translation>%1 weiteren Sprossen</translation>
    </message>
    <message>
        <source>%1 more rung</source>
        <translation>%1 weiteren Sprosse</translation>
    </message>
    <message>
        <source>That shorter ranges carry over better to sprinting is the working premise of the ladders, with evidence on both sides; one athlete&apos;s season does not settle it.</source>
        <translation>Dass kürzere Wege sich besser auf den Sprint übertragen, ist die Arbeitsannahme der Leitern, mit Belegen auf beiden Seiten; die Saison eines Athleten entscheidet das nicht.</translation>
    </message>
    <message>
        <source>ankle</source>
        <translation>Knöchel</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rücken</translation>
    </message>
    <message>
        <source>calf</source>
        <translation>Wade</translation>
    </message>
    <message>
        <source>elbow</source>
        <translation>Ellbogen</translation>
    </message>
    <message>
        <source>foot</source>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>groin</source>
        <translation>Leiste</translation>
    </message>
    <message>
        <source>hamstring</source>
        <translation>hinterer Oberschenkel</translation>
    </message>
    <message>
        <source>hip</source>
        <translation>Hüfte</translation>
    </message>
    <message>
        <source>knee</source>
        <translation>Knie</translation>
    </message>
    <message>
        <source>neck</source>
        <translation>Nacken</translation>
    </message>
    <message>
        <source>shin</source>
        <translation>Schienbein</translation>
    </message>
    <message>
        <source>shoulder</source>
        <translation>Schulter</translation>
    </message>
    <message>
        <source>thigh</source>
        <translation>Oberschenkel</translation>
    </message>
    <message>
        <source>wrist</source>
        <translation>Handgelenk</translation>
    </message>
    <message>
        <source>milliseconds</source>
        <translation>Millisekunden</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>metres per second</source>
        <translation>Meter pro Sekunde</translation>
    </message>
    <message>
        <source>metres a second</source>
        <translation>Meter pro Sekunde</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>Kilogramm</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>Pfund</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; lies before the season has begun</source>
        <translation>„%1“ liegt vor dem Beginn der Saison</translation>
    </message>
    <message>
        <source>&quot;%1&quot; lies after the season&apos;s end</source>
        <translation>„%1“ liegt nach dem Ende der Saison</translation>
    </message>
    <message>
        <source>a season is at most %1 days long</source>
        <translation>eine Saison ist höchstens %1 Tage lang</translation>
    </message>
    <message>
        <source>a season needs at least one competition</source>
        <translation>eine Saison braucht mindestens einen Wettkampf</translation>
    </message>
    <message>
        <source>mark at least one competition with &quot;main&quot;: true</source>
        <translation>mindestens ein Wettkampf muss der Hauptwettkampf sein (&quot;main&quot;: true)</translation>
    </message>
    <message>
        <source>name at least one day of the week with lifts</source>
        <translation>nenne mindestens einen Wochentag mit Übungen</translation>
    </message>
    <message>
        <source>choose at least one ladder</source>
        <translation>wähle mindestens eine Leiter</translation>
    </message>
    <message>
        <source>no drop jumps under %1; leave this ladder out</source>
        <translation>keine Tiefsprünge unter %1; lass diese Leiter weg</translation>
    </message>
    <message>
        <source>under %1 no lifting is planned: children take part from about that age, when they can follow instructions</source>
        <translation>unter %1 wird kein Krafttraining geplant: Kinder machen etwa ab diesem Alter mit, wenn sie Anweisungen folgen können</translation>
    </message>
    <message>
        <source>under 18 a guardian must have agreed before a plan is made</source>
        <translation>unter 18 muss vor dem Plan ein Erziehungsberechtigter zugestimmt haben</translation>
    </message>
    <message>
        <source>under 18 lifts stand on at most three days a week; choose fewer days</source>
        <translation>unter 18 höchstens drei Tage mit Übungen pro Woche; wähle weniger Tage</translation>
    </message>
    <message>
        <source>under 18 lifting days must not follow each other; leave a day between</source>
        <translation>unter 18 dürfen Tage mit Übungen nicht aufeinander folgen; lass einen Tag dazwischen</translation>
    </message>
    <message>
        <source>the block ends before it begins</source>
        <translation>die Tage enden, bevor sie beginnen</translation>
    </message>
    <message>
        <source>the block must lie inside the season</source>
        <translation>die Tage müssen in der Saison liegen</translation>
    </message>
    <message>
        <source>two blocks of the same kind share days; make one of them</source>
        <translation>zwei Zeiten derselben Art überschneiden sich; mach eine daraus</translation>
    </message>
    <message>
        <source>%1 minutes hold %2 primary lifts; choose fewer, or say why in lifts_per_session_override</source>
        <translation>%1 Minuten fassen %2 Hauptübungen; wähle weniger oder begründe es in lifts_per_session_override</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a longer range than the rung above it; longest range first</source>
        <translation>„%1“ hat einen längeren Weg als die Sprosse darüber; der längste Weg zuerst</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has earlier phases than the rung above it</source>
        <translation>„%1“ hat frühere Phasen als die Sprosse darüber</translation>
    </message>
    <message>
        <source>the latest phase must not come before the earliest</source>
        <translation>die späteste Phase darf nicht vor der frühesten liegen</translation>
    </message>
    <message>
        <source>there is no such rung</source>
        <translation>diese Sprosse gibt es nicht</translation>
    </message>
    <message>
        <source>the ladder must join inside the season</source>
        <translation>die Leiter muss innerhalb der Saison dazukommen</translation>
    </message>
    <message>
        <source>cannot be written: %1</source>
        <translation>kann nicht geschrieben werden: %1</translation>
    </message>
    <message>
        <source>cannot be read: %1</source>
        <translation>kann nicht gelesen werden: %1</translation>
    </message>
    <message>
        <source>the report cannot be written here (%1); choose another folder</source>
        <translation>der Bericht kann hier nicht geschrieben werden (%1); wähle einen anderen Ordner</translation>
    </message>
    <message>
        <source>the report could not be finished (%1); free some space or choose another folder</source>
        <translation>der Bericht konnte nicht fertig werden (%1); schaffe Platz oder wähle einen anderen Ordner</translation>
    </message>
    <message>
        <source>the report could not be set; nothing was written</source>
        <translation>der Bericht konnte nicht gesetzt werden; nichts wurde geschrieben</translation>
    </message>
</context>
<context>
    <name>EvidenceRow</name>
    <message>
        <source>met</source>
        <translation>erfüllt</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>nicht erfüllt</translation>
    </message>
    <message>
        <source>for show</source>
        <translation>zur Ansicht</translation>
    </message>
    <message>
        <source>%1: %2, allowed %3, %4</source>
        <translation>%1: %2, erlaubt %3, %4</translation>
    </message>
</context>
<context>
    <name>ExplainSheet</name>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>How sure: %1</source>
        <translation>Wie sicher: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
</context>
<context>
    <name>FindSensorsSheet</name>
    <message>
        <source>Find a sensor</source>
        <translation>Sensor suchen</translation>
    </message>
    <message>
        <source>Name it</source>
        <translation>Gib ihm einen Namen</translation>
    </message>
    <message>
        <source>Search again</source>
        <translation>Neu suchen</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal</translation>
    </message>
    <message>
        <source>Switch the sensor on.</source>
        <translation>Schalte den Sensor ein.</translation>
    </message>
    <message>
        <source>Shake it: many sleep until they are moved.</source>
        <translation>Schüttle ihn: Viele schlafen, bis sie bewegt werden.</translation>
    </message>
    <message>
        <source>Hold it near this phone.</source>
        <translation>Halte ihn nah an dieses Telefon.</translation>
    </message>
    <message>
        <source>Close other programs that use it.</source>
        <translation>Schließe andere Programme, die ihn nutzen.</translation>
    </message>
    <message>
        <source>Part of its name</source>
        <translation>Teil seines Namens</translation>
    </message>
    <message>
        <source>Where it is worn</source>
        <translation>Wo er sitzt</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Stop searching</source>
        <translation>Suche beenden</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Teach it</source>
        <translation>Einlernen</translation>
    </message>
    <message>
        <source>Listen again</source>
        <translation>Noch einmal hören</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Zurück zur Liste</translation>
    </message>
</context>
<context>
    <name>FormsWords</name>
    <message>
        <source>Type a number.</source>
        <translation>Gib eine Zahl ein.</translation>
    </message>
    <message>
        <source>This is not a number. Digits, with a point or a comma.</source>
        <translation>Das ist keine Zahl. Ziffern, mit Punkt oder Komma.</translation>
    </message>
    <message>
        <source>Between %1 and %2.</source>
        <translation>Zwischen %1 und %2.</translation>
    </message>
    <message>
        <source>A whole number.</source>
        <translation>Eine ganze Zahl.</translation>
    </message>
    <message>
        <source>This cannot stay empty.</source>
        <translation>Das darf nicht leer bleiben.</translation>
    </message>
    <message>
        <source>Type a day, like %1.</source>
        <translation>Gib einen Tag ein, wie %1.</translation>
    </message>
    <message>
        <source>There is no such day. Type it like %1.</source>
        <translation>Diesen Tag gibt es nicht. Schreib ihn wie %1.</translation>
    </message>
</context>
<context>
    <name>FoundRow</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>FoundWords</name>
    <message>
        <source>No name (%1)</source>
        <translation>Ohne Namen (%1)</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Gespeichert</translation>
    </message>
    <message>
        <source>Likely a motion sensor</source>
        <translation>Wohl ein Bewegungssensor</translation>
    </message>
</context>
<context>
    <name>HelpWords</name>
    <message>
        <source>Time to peak velocity</source>
        <translation>Zeit bis zur Höchstgeschwindigkeit</translation>
    </message>
    <message>
        <source>From the instant the bar begins to rise to the instant it is fastest. The season&apos;s evidence: on one rung, at one load, it should come sooner.</source>
        <translation>Vom Augenblick, in dem die Stange zu steigen beginnt, bis sie am schnellsten ist. Der Beleg der Saison: Auf einer Sprosse, bei einer Last, soll sie früher kommen.</translation>
    </message>
    <message>
        <source>instant of peak velocity − instant of concentric start</source>
        <translation>Augenblick der Höchstgeschwindigkeit − Beginn des Hebens</translation>
    </message>
    <message>
        <source>Common practice, no source.</source>
        <translation>Übliche Praxis, keine Quelle.</translation>
    </message>
    <message>
        <source>Target band and contact times</source>
        <translation>Zielband und Kontaktzeiten</translation>
    </message>
    <message>
        <source>The band is where time to peak velocity usually lies on this rung. The pale bands are contact times of a sprint, for scale and no goal.</source>
        <translation>Das Band zeigt, wo die Zeit auf dieser Sprosse meist liegt. Die blassen Bänder sind Kontaktzeiten eines Sprints, als Maßstab und kein Ziel.</translation>
    </message>
    <message>
        <source>A starting value of this project, later your own values.</source>
        <translation>Ein Startwert dieses Projekts, später deine eigenen Werte.</translation>
    </message>
    <message>
        <source>A guide: your own line on the rung counts.</source>
        <translation>Ein Anhalt: Deine eigene Linie auf der Sprosse zählt.</translation>
    </message>
    <message>
        <source>Mean velocity</source>
        <translation>Mittlere Geschwindigkeit</translation>
    </message>
    <message>
        <source>How fast the bar rose on average, from its start to its end.</source>
        <translation>Wie schnell die Stange im Mittel stieg, vom Anfang bis zum Ende.</translation>
    </message>
    <message>
        <source>way of the concentric phase ÷ its duration</source>
        <translation>Weg der Hebephase ÷ ihre Dauer</translation>
    </message>
    <message>
        <source>About 4 mm/s rms in simulated sets; a day&apos;s value wanders by about 0.04 m/s.</source>
        <translation>Etwa 4 mm/s in simulierten Sätzen; ein Tageswert schwankt um etwa 0,04 m/s.</translation>
    </message>
    <message>
        <source>Peak velocity</source>
        <translation>Höchstgeschwindigkeit</translation>
    </message>
    <message>
        <source>The greatest speed of the bar on its way up. Told for lifts that throw or catch.</source>
        <translation>Das größte Tempo der Stange auf dem Weg nach oben. Für Übungen, die werfen oder fangen.</translation>
    </message>
    <message>
        <source>About 7 mm/s rms in simulated sets; against cameras 24 mm/s.</source>
        <translation>Etwa 7 mm/s in simulierten Sätzen; gegen Kameras 24 mm/s.</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>The vertical way of the bar. A rung of the ladder asks for its own range; a repetition well below the set&apos;s median is flagged as partial.</source>
        <translation>Der senkrechte Weg der Stange. Eine Sprosse der Leiter verlangt ihren eigenen Weg; eine Wiederholung weit unter dem Median des Satzes wird als teilweise markiert.</translation>
    </message>
    <message>
        <source>About 3 mm in simulated sets, 15 mm against cameras.</source>
        <translation>Etwa 3 mm in simulierten Sätzen, 15 mm gegen Kameras.</translation>
    </message>
    <message>
        <source>Velocity loss</source>
        <translation>Tempoverlust</translation>
    </message>
    <message>
        <source>How much slower the last repetition was than the fastest of the set. The set ends at the loss that the phase allows, however many repetitions that are.</source>
        <translation>Um wie viel langsamer die letzte Wiederholung war als die schnellste des Satzes. Der Satz endet bei dem Verlust, den die Phase erlaubt, wie viele Wiederholungen das auch sind.</translation>
    </message>
    <message>
        <source>1 − last mean velocity ÷ fastest mean velocity</source>
        <translation>1 − letzte ÷ schnellste mittlere Geschwindigkeit</translation>
    </message>
    <message>
        <source>Common practice, no source; the limits are starting values of this project.</source>
        <translation>Übliche Praxis, keine Quelle; die Grenzen sind Startwerte dieses Projekts.</translation>
    </message>
    <message>
        <source>Two repetitions of the same effort differ by a few hundredths of a metre per second.</source>
        <translation>Zwei gleich gewollte Wiederholungen unterscheiden sich um ein paar Hundertstel Meter je Sekunde.</translation>
    </message>
    <message>
        <source>Repetitions left</source>
        <translation>Verbleibende Wiederholungen</translation>
    </message>
    <message>
        <source>A guess from the loss of velocity: how many more could have been done.</source>
        <translation>Eine Schätzung aus dem Tempoverlust: wie viele noch möglich gewesen wären.</translation>
    </message>
    <message>
        <source>left = done × (1 ÷ share − 1), share = loss ÷ loss at half ÷ 2</source>
        <translation>übrig = gemacht × (1 ÷ Anteil − 1), Anteil = Verlust ÷ Verlust bei der Hälfte ÷ 2</translation>
    </message>
    <message>
        <source>Starting values of this project; with five sets of your own, yours.</source>
        <translation>Startwerte dieses Projekts; mit fünf eigenen Sätzen deine.</translation>
    </message>
    <message>
        <source>Wide: the range is shown. The stop of a set never rests on it.</source>
        <translation>Weit: Die Spanne wird gezeigt. Das Ende eines Satzes beruht nie darauf.</translation>
    </message>
    <message>
        <source>What a decision rests on</source>
        <translation>Worauf eine Entscheidung beruht</translation>
    </message>
    <message>
        <source>Step, hold, step back, ease or rest: each line is one test with its value and what is allowed. A step needs sessions and days on the rung, a time to peak that came down by more than it wanders, and velocity and strength that held.</source>
        <translation>Weiter, bleiben, zurück, erleichtern oder Pause: Jede Zeile ist eine Prüfung mit Wert und Erlaubtem. Weiter geht es mit genug Einheiten und Tagen auf der Sprosse, einer Zeit, die um mehr sank, als sie schwankt, und gehaltener Geschwindigkeit und Kraft.</translation>
    </message>
    <message>
        <source>Rules of this project, each with its origin in the program&apos;s rules.</source>
        <translation>Regeln dieses Projekts, jede mit ihrer Herkunft in den Regeln des Programms.</translation>
    </message>
    <message>
        <source>A rule is no proof. Your answer is kept with it, and counts.</source>
        <translation>Eine Regel ist kein Beweis. Deine Antwort bleibt dabei und zählt.</translation>
    </message>
    <message>
        <source>Typical error</source>
        <translation>Typischer Fehler</translation>
    </message>
    <message>
        <source>How far a session&apos;s value wanders by itself, from one session to the next. A change counts only beyond it.</source>
        <translation>Wie sehr der Wert einer Einheit von selbst schwankt, von einer zur nächsten. Eine Änderung zählt nur darüber hinaus.</translation>
    </message>
    <message>
        <source>standard deviation of differences of successive sessions ÷ √2</source>
        <translation>Standardabweichung der Differenzen aufeinanderfolgender Einheiten ÷ √2</translation>
    </message>
    <message>
        <source>Hopkins, Measures of reliability in sports medicine and science, Sports Med 2000.</source>
        <translation>Hopkins, Measures of reliability in sports medicine and science, Sports Med 2000.</translation>
    </message>
    <message>
        <source>It begins with a prior and becomes yours with the sessions.</source>
        <translation>Er beginnt mit einem Vorwert und wird mit den Einheiten deiner.</translation>
    </message>
    <message>
        <source>A trend over the season</source>
        <translation>Ein Verlauf über die Saison</translation>
    </message>
    <message>
        <source>Each point is a session&apos;s probe set. Only points on the same rung are to be compared: a shorter range is quicker anyway.</source>
        <translation>Jeder Punkt ist der Probesatz einer Einheit. Nur Punkte auf derselben Sprosse sind vergleichbar: Ein kürzerer Weg ist ohnehin schneller.</translation>
    </message>
    <message>
        <source>Lines are Theil-Sen lines (Theil 1950, Sen 1968): one bad day does not move them.</source>
        <translation>Linien sind Theil-Sen-Linien (Theil 1950, Sen 1968): Ein schlechter Tag verschiebt sie nicht.</translation>
    </message>
    <message>
        <source>Look at several weeks, never at one point.</source>
        <translation>Sieh auf mehrere Wochen, nie auf einen Punkt.</translation>
    </message>
    <message>
        <source>Load and velocity</source>
        <translation>Last und Geschwindigkeit</translation>
    </message>
    <message>
        <source>Heavier is slower, nearly along a line that is your own on each lift and rung.</source>
        <translation>Schwerer ist langsamer, fast entlang einer Linie, die auf jeder Übung und Sprosse deine eigene ist.</translation>
    </message>
    <message>
        <source>velocity = a + b × load, least squares and robust</source>
        <translation>Geschwindigkeit = a + b × Last, kleinste Quadrate und robust</translation>
    </message>
    <message>
        <source>Two loads far apart and a third between make it steady.</source>
        <translation>Zwei weit auseinanderliegende Lasten und eine dritte dazwischen machen sie ruhig.</translation>
    </message>
    <message>
        <source>Estimated 1RM</source>
        <translation>Geschätztes 1RM</translation>
    </message>
    <message>
        <source>The load at which the line meets the velocity that is published for one repetition at most. Never load it to see whether it is right.</source>
        <translation>Die Last, bei der die Linie die Geschwindigkeit trifft, die für höchstens eine Wiederholung veröffentlicht ist. Lade sie nie auf, um zu sehen, ob sie stimmt.</translation>
    </message>
    <message>
        <source>load where the line meets the velocity at 1RM; interval after Fieller</source>
        <translation>Last, wo die Linie die Geschwindigkeit beim 1RM trifft; Intervall nach Fieller</translation>
    </message>
    <message>
        <source>Velocities at 1RM: published for a few lifts, named beside the number.</source>
        <translation>Geschwindigkeiten beim 1RM: für wenige Übungen veröffentlicht, neben der Zahl genannt.</translation>
    </message>
    <message>
        <source>Its 95 % interval is shown; people also differ in the velocity itself.</source>
        <translation>Das 95-%-Intervall wird gezeigt; auch in der Geschwindigkeit selbst unterscheiden sich Menschen.</translation>
    </message>
    <message>
        <source>Warm-up check</source>
        <translation>Aufwärmprüfung</translation>
    </message>
    <message>
        <source>The velocity at two warm-up loads against your own at these loads. It can take load or sets off today, never put any on.</source>
        <translation>Die Geschwindigkeit bei zwei Aufwärmlasten gegen deine eigene bei diesen Lasten. Sie kann heute Last oder Sätze wegnehmen, nie etwas dazugeben.</translation>
    </message>
    <message>
        <source>A rule of this project.</source>
        <translation>Eine Regel dieses Projekts.</translation>
    </message>
    <message>
        <source>A loss counts where both loads are slower by more than the typical error.</source>
        <translation>Ein Verlust zählt, wo beide Lasten um mehr als den typischen Fehler langsamer sind.</translation>
    </message>
    <message>
        <source>Contact and flight</source>
        <translation>Kontakt und Flug</translation>
    </message>
    <message>
        <source>How long the foot is on the ground, and how long in the air after it. Contacts up to 250 ms count as fast.</source>
        <translation>Wie lange der Fuß am Boden ist und wie lange danach in der Luft. Kontakte bis 250 ms gelten als schnell.</translation>
    </message>
    <message>
        <source>Schmidtbleicher 1992, in Komi (ed), Strength and Power in Sport; from memory.</source>
        <translation>Schmidtbleicher 1992, in Komi (Hrsg.), Strength and Power in Sport; aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>From video of 240 pictures a second ± 4 ms.</source>
        <translation>Aus Video mit 240 Bildern je Sekunde ± 4 ms.</translation>
    </message>
    <message>
        <source>Jump height</source>
        <translation>Sprunghöhe</translation>
    </message>
    <message>
        <source>How high the body rose, from how long it flew.</source>
        <translation>Wie hoch der Körper stieg, aus der Dauer des Flugs.</translation>
    </message>
    <message>
        <source>height = g × flight² ÷ 8</source>
        <translation>Höhe = g × Flug² ÷ 8</translation>
    </message>
    <message>
        <source>Bosco, Luhtanen, Komi 1983, Eur J Appl Physiol 50:273-282; from memory.</source>
        <translation>Bosco, Luhtanen, Komi 1983, Eur J Appl Physiol 50:273-282; aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>It holds where the body lands as it took off: bent knees make it too high.</source>
        <translation>Es gilt, wo der Körper landet, wie er absprang: Gebeugte Knie machen es zu hoch.</translation>
    </message>
    <message>
        <source>Reactive strength index, RSI</source>
        <translation>Reaktivkraftindex, RSI</translation>
    </message>
    <message>
        <source>Height for the time on the ground: high and quick together.</source>
        <translation>Höhe für die Zeit am Boden: hoch und schnell zugleich.</translation>
    </message>
    <message>
        <source>RSI = height ÷ contact time</source>
        <translation>RSI = Höhe ÷ Kontaktzeit</translation>
    </message>
    <message>
        <source>Healy, Kenny, Harrison 2017, doi:10.1123/ijspp.2017-0511.</source>
        <translation>Healy, Kenny, Harrison 2017, doi:10.1123/ijspp.2017-0511.</translation>
    </message>
    <message>
        <source>A day&apos;s value wanders by about 7 %.</source>
        <translation>Ein Tageswert schwankt um etwa 7 %.</translation>
    </message>
    <message>
        <source>Top speed and time constant</source>
        <translation>Höchsttempo und Zeitkonstante</translation>
    </message>
    <message>
        <source>The speed that the splits point to, and how soon it is reached: after one time constant 63 % of it, after three 95 %.</source>
        <translation>Das Tempo, auf das die Zwischenzeiten weisen, und wie bald es erreicht ist: nach einer Zeitkonstante 63 %, nach drei 95 %.</translation>
    </message>
    <message>
        <source>v(t) = top speed × (1 − exp(−t ÷ τ)), fitted to the splits</source>
        <translation>v(t) = Höchsttempo × (1 − exp(−t ÷ τ)), an die Zwischenzeiten angepasst</translation>
    </message>
    <message>
        <source>Furusawa, Hill, Parkinson 1927; on splits Samozino et al. 2016, doi:10.1111/sms.12490.</source>
        <translation>Furusawa, Hill, Parkinson 1927; mit Zwischenzeiten Samozino et al. 2016, doi:10.1111/sms.12490.</translation>
    </message>
    <message>
        <source>One standard error stands beside it. The model is no exact law.</source>
        <translation>Ein Standardfehler steht daneben. Das Modell ist kein genaues Gesetz.</translation>
    </message>
    <message>
        <source>Force and power of a sprint</source>
        <translation>Kraft und Leistung eines Sprints</translation>
    </message>
    <message>
        <source>Horizontal force and power from the speed curve, your mass and the drag of the air.</source>
        <translation>Waagerechte Kraft und Leistung aus der Tempokurve, deinem Gewicht und dem Luftwiderstand.</translation>
    </message>
    <message>
        <source>F = m × acceleration + k × (v − wind)²; P = F × v</source>
        <translation>F = m × Beschleunigung + k × (v − Wind)²; P = F × v</translation>
    </message>
    <message>
        <source>Samozino et al. 2016, doi:10.1111/sms.12490; equations from memory.</source>
        <translation>Samozino et al. 2016, doi:10.1111/sms.12490; Gleichungen aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>As sure as the curve; what was not typed (air, wind) is assumed and said.</source>
        <translation>So sicher wie die Kurve; was nicht eingegeben wurde (Luft, Wind), ist angenommen und gesagt.</translation>
    </message>
    <message>
        <source>Flying speed</source>
        <translation>Fliegendes Tempo</translation>
    </message>
    <message>
        <source>Mean speed over a zone that is entered at full speed.</source>
        <translation>Mittleres Tempo über eine Zone, die mit vollem Tempo betreten wird.</translation>
    </message>
    <message>
        <source>zone ÷ time</source>
        <translation>Zone ÷ Zeit</translation>
    </message>
    <message>
        <source>By hand a flying 20 m is 7 % off; gates and video are told beside it.</source>
        <translation>Von Hand liegen fliegende 20 m um 7 % daneben; Schranken und Video stehen dabei.</translation>
    </message>
    <message>
        <source>Wind-aided</source>
        <translation>Windunterstützt</translation>
    </message>
    <message>
        <source>More than 2.0 m/s of wind from behind in a competition: the time is no best.</source>
        <translation>Mehr als 2,0 m/s Rückenwind im Wettkampf: Die Zeit ist keine Bestzeit.</translation>
    </message>
    <message>
        <source>World Athletics&apos; technical rules; from memory.</source>
        <translation>Technische Regeln von World Athletics; aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>As the reading of the wind gauge.</source>
        <translation>So genau wie der Windmesser.</translation>
    </message>
    <message>
        <source>Fast metres</source>
        <translation>Schnelle Meter</translation>
    </message>
    <message>
        <source>Metres run at 90 and at 95 % of the best speed of the last 12 months, or above.</source>
        <translation>Meter mit mindestens 90 und 95 % des besten Tempos der letzten 12 Monate.</translation>
    </message>
    <message>
        <source>Common practice, no source; the shares are this project&apos;s.</source>
        <translation>Übliche Praxis, keine Quelle; die Anteile sind die dieses Projekts.</translation>
    </message>
    <message>
        <source>&quot;About&quot; stands where part of it is estimated from distance and time, or from effort.</source>
        <translation>„Etwa“ steht, wo ein Teil aus Strecke und Zeit oder aus der Anstrengung geschätzt ist.</translation>
    </message>
    <message>
        <source>Did it work?</source>
        <translation>Hat es gewirkt?</translation>
    </message>
    <message>
        <source>Whether the bar&apos;s quickness and the sprint times moved together beyond their trends. Never called cause.</source>
        <translation>Ob die Schnelligkeit der Stange und die Sprintzeiten über ihre Trends hinaus miteinander gingen. Nie Ursache genannt.</translation>
    </message>
    <message>
        <source>Spearman&apos;s rank correlation at five lags, against turned seasons</source>
        <translation>Rangkorrelation nach Spearman bei fünf Verschiebungen, gegen gedrehte Saisons</translation>
    </message>
    <message>
        <source>Spearman 1904, Am J Psychol 15:72-101; the test is this project&apos;s.</source>
        <translation>Spearman 1904, Am J Psychol 15:72-101; die Prüfung ist von diesem Projekt.</translation>
    </message>
    <message>
        <source>Without any relation it speaks in about 3 of 100 seasons.</source>
        <translation>Ohne jeden Zusammenhang spricht es in etwa 3 von 100 Saisons.</translation>
    </message>
    <message>
        <source>About 2 to 6 ms rms in simulated sets. A repetition with two peaks is no evidence. It is not a stance&apos;s force peak.</source>
        <translation>Etwa 2 bis 6 ms (quadratisches Mittel) in simulierten Sätzen. Eine Wiederholung mit zwei Gipfeln ist kein Beleg. Es ist nicht der Kraftgipfel eines Bodenkontakts.</translation>
    </message>
</context>
<context>
    <name>ImportLook</name>
    <message>
        <source>As it will be read</source>
        <translation>So wird es gelesen</translation>
    </message>
    <message>
        <source>Athletes</source>
        <translation>Athletinnen und Athleten</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Übungen</translation>
    </message>
    <message>
        <source>Rows that cannot be read</source>
        <translation>Zeilen, die nicht lesbar sind</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>Day of all rows, like %1</source>
        <translation>Tag aller Zeilen, wie %1</translation>
    </message>
</context>
<context>
    <name>ImportPickSheet</name>
    <message>
        <source>The gate stands at, m</source>
        <translation>Die Schranke steht bei, m</translation>
    </message>
    <message>
        <source>Between 0 and 1000 m.</source>
        <translation>Zwischen 0 und 1000 m.</translation>
    </message>
    <message>
        <source>Take this distance</source>
        <translation>Diese Strecke nehmen</translation>
    </message>
</context>
<context>
    <name>ImportSheet</name>
    <message>
        <source>Import sets</source>
        <translation>Sätze importieren</translation>
    </message>
    <message>
        <source>Import runs</source>
        <translation>Läufe importieren</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Aus %1</translation>
    </message>
    <message>
        <source>Put the table as a CSV file into %1, then look again.</source>
        <translation>Lege die Tabelle als CSV-Datei in %1, dann sieh noch einmal nach.</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Noch einmal nachsehen</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Andere Datei wählen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
</context>
<context>
    <name>ImportWords</name>
    <message>
        <source>Not read</source>
        <translation>Nicht gelesen</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athletin oder Athlet</translation>
    </message>
    <message>
        <source>Athlete&apos;s identifier</source>
        <translation>Kennung der Person</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Effort, 1 to 10</source>
        <translation>Anstrengung, 1 bis 10</translation>
    </message>
    <message>
        <source>Key of the row</source>
        <translation>Schlüssel der Zeile</translation>
    </message>
    <message>
        <source>Number of the run or set</source>
        <translation>Nummer des Laufs oder Satzes</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Zwischenzeit</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Strecke</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>Gestoppt mit</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Run-in</source>
        <translation>Anlauf</translation>
    </message>
    <message>
        <source>Reaction</source>
        <translation>Reaktion</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Belag</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Schuhe</translation>
    </message>
    <message>
        <source>Name of the test</source>
        <translation>Name des Tests</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Competition, yes or no</source>
        <translation>Wettkampf, ja oder nein</translation>
    </message>
    <message>
        <source>Trial of a test day, yes or no</source>
        <translation>Versuch eines Testtags, ja oder nein</translation>
    </message>
    <message>
        <source>Contact time</source>
        <translation>Kontaktzeit</translation>
    </message>
    <message>
        <source>Step length</source>
        <translation>Schrittlänge</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>Time to peak velocity</source>
        <translation>Zeit bis zur Höchstgeschwindigkeit</translation>
    </message>
    <message>
        <source>Mean velocity</source>
        <translation>Mittlere Geschwindigkeit</translation>
    </message>
    <message>
        <source>Peak velocity</source>
        <translation>Höchstgeschwindigkeit</translation>
    </message>
    <message>
        <source>Range of motion</source>
        <translation>Bewegungsweg</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Rung</source>
        <translation>Sprosse</translation>
    </message>
    <message>
        <source>Kind of set</source>
        <translation>Art des Satzes</translation>
    </message>
    <message>
        <source>Height of the box</source>
        <translation>Kastenhöhe</translation>
    </message>
    <message>
        <source>Split at %1</source>
        <translation>Zwischenzeit bei %1</translation>
    </message>
    <message>
        <source>Split, distance not known</source>
        <translation>Zwischenzeit, Strecke unbekannt</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, in %2</translation>
    </message>
    <message>
        <source>Nothing to add is known in this file yet. Tap the columns below and say what they mean.</source>
        <translation>In dieser Datei ist noch nichts zum Übernehmen bekannt. Tippe unten auf die Spalten und sage, was sie bedeuten.</translation>
    </message>
    <message>
        <source>“%1” can be read in two ways. What is the decimal mark?</source>
        <translation>„%1“ kann man auf zwei Arten lesen. Was ist das Dezimalzeichen?</translation>
    </message>
    <message>
        <source>“%1” can be read in two ways. What comes first?</source>
        <translation>„%1“ kann man auf zwei Arten lesen. Was kommt zuerst?</translation>
    </message>
    <message>
        <source>The file has no dates. On which day was it?</source>
        <translation>Die Datei hat keine Daten. An welchem Tag war es?</translation>
    </message>
    <message>
        <source>At how many metres stands the gate of “%1”? Tap the column below.</source>
        <translation>Bei wie vielen Metern steht die Schranke von „%1“? Tippe unten auf die Spalte.</translation>
    </message>
    <message>
        <source>In which unit are the loads of “%1”?</source>
        <translation>In welcher Einheit sind die Lasten von „%1“?</translation>
    </message>
    <message>
        <source>Rows above the header, left out: %1.</source>
        <translation>Zeilen über der Kopfzeile, ausgelassen: %1.</translation>
    </message>
    <message>
        <source>The file has no header: its first row is read like the others.</source>
        <translation>Die Datei hat keine Kopfzeile: Die erste Zeile wird wie die anderen gelesen.</translation>
    </message>
    <message>
        <source>The decimal mark is a comma, as in %1.</source>
        <translation>Das Dezimalzeichen ist ein Komma, wie in %1.</translation>
    </message>
    <message>
        <source>Times are in milliseconds, by their size: %1.</source>
        <translation>Die Zeiten sind in Millisekunden, nach ihrer Größe: %1.</translation>
    </message>
    <message>
        <source>The times do not rise (%1): each counts from the gate before.</source>
        <translation>Die Zeiten steigen nicht (%1): Jede zählt ab der Schranke davor.</translation>
    </message>
    <message>
        <source>The times rise (%1): each counts from the start.</source>
        <translation>Die Zeiten steigen (%1): Jede zählt ab dem Start.</translation>
    </message>
    <message>
        <source>Several rows make one run.</source>
        <translation>Mehrere Zeilen ergeben einen Lauf.</translation>
    </message>
    <message>
        <source>The day comes before the month, as in %1.</source>
        <translation>Der Tag steht vor dem Monat, wie in %1.</translation>
    </message>
    <message>
        <source>The month comes before the day, as in %1.</source>
        <translation>Der Monat steht vor dem Tag, wie in %1.</translation>
    </message>
    <message>
        <source>More cells than the header has.</source>
        <translation>Mehr Zellen als die Kopfzeile.</translation>
    </message>
    <message>
        <source>“%1” is not a number.</source>
        <translation>„%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>“%1” cannot be. Check the number and the unit.</source>
        <translation>„%1“ kann nicht sein. Prüfe Zahl und Einheit.</translation>
    </message>
    <message>
        <source>The day is missing.</source>
        <translation>Der Tag fehlt.</translation>
    </message>
    <message>
        <source>“%1” is not a day.</source>
        <translation>„%1“ ist kein Tag.</translation>
    </message>
    <message>
        <source>“%1” has not come yet. Check the order of day and month.</source>
        <translation>„%1“ ist noch nicht gewesen. Prüfe die Reihenfolge von Tag und Monat.</translation>
    </message>
    <message>
        <source>“%1” is not a time of day.</source>
        <translation>„%1“ ist keine Uhrzeit.</translation>
    </message>
    <message>
        <source>The time is missing.</source>
        <translation>Die Zeit fehlt.</translation>
    </message>
    <message>
        <source>The time has no distance.</source>
        <translation>Die Zeit hat keine Strecke.</translation>
    </message>
    <message>
        <source>The times do not rise with the distance.</source>
        <translation>Die Zeiten steigen nicht mit der Strecke.</translation>
    </message>
    <message>
        <source>That is faster than anyone has run. Check distance and time.</source>
        <translation>So schnell ist noch niemand gelaufen. Prüfe Strecke und Zeit.</translation>
    </message>
    <message>
        <source>A time before this one is missing.</source>
        <translation>Eine Zeit davor fehlt.</translation>
    </message>
    <message>
        <source>A split lies behind the end of the run.</source>
        <translation>Eine Zwischenzeit liegt hinter dem Ende des Laufs.</translation>
    </message>
    <message>
        <source>The split at the end says another time.</source>
        <translation>Die Zwischenzeit am Ende sagt eine andere Zeit.</translation>
    </message>
    <message>
        <source>The lift is missing.</source>
        <translation>Die Übung fehlt.</translation>
    </message>
    <message>
        <source>The repetitions are missing.</source>
        <translation>Die Wiederholungen fehlen.</translation>
    </message>
</context>
<context>
    <name>JumpSheet</name>
    <message>
        <source>Add jumps</source>
        <translation>Sprünge hinzufügen</translation>
    </message>
    <message>
        <source>Kind of jump</source>
        <translation>Art des Sprungs</translation>
    </message>
    <message>
        <source>Drop jump</source>
        <translation>Tiefsprung</translation>
    </message>
    <message>
        <source>Counter-movement</source>
        <translation>Counter-Movement</translation>
    </message>
    <message>
        <source>Squat jump</source>
        <translation>Squat-Jump</translation>
    </message>
    <message>
        <source>Standing long</source>
        <translation>Standweitsprung</translation>
    </message>
    <message>
        <source>Bounds</source>
        <translation>Sprunglauf</translation>
    </message>
    <message>
        <source>Box height, %1</source>
        <translation>Kastenhöhe, %1</translation>
    </message>
    <message>
        <source>How many in a row</source>
        <translation>Wie viele hintereinander</translation>
    </message>
    <message>
        <source>Contact time, ms</source>
        <translation>Kontaktzeit, ms</translation>
    </message>
    <message>
        <source>Flight time, ms (or the height below)</source>
        <translation>Flugzeit, ms (oder unten die Höhe)</translation>
    </message>
    <message>
        <source>Height, %1</source>
        <translation>Höhe, %1</translation>
    </message>
    <message>
        <source>Distance, m</source>
        <translation>Weite, m</translation>
    </message>
    <message>
        <source>Trials</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>Take the last trial off</source>
        <translation>Den letzten Versuch streichen</translation>
    </message>
    <message>
        <source>Add another trial</source>
        <translation>Weiteren Versuch hinzufügen</translation>
    </message>
    <message>
        <source>Is it one of these?</source>
        <translation>Ist es eines davon?</translation>
    </message>
    <message>
        <source>Trial of a test day</source>
        <translation>Versuch eines Testtags</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Surface, shoes, note</source>
        <translation>Belag, Schuhe, Notiz</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Belag</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Indoor</source>
        <translation>Halle</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>Rasen</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Schuhe</translation>
    </message>
    <message>
        <source>Spikes</source>
        <translation>Spikes</translation>
    </message>
    <message>
        <source>Flats</source>
        <translation>Flache Schuhe</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Nicht gesagt</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Save the jumps</source>
        <translation>Die Sprünge speichern</translation>
    </message>
    <message>
        <source>Day, like %1</source>
        <translation>Tag, wie %1</translation>
    </message>
</context>
<context>
    <name>LadderPage</name>
    <message>
        <source>Ladder</source>
        <translation>Leiter</translation>
    </message>
    <message>
        <source>Steps and their evidence</source>
        <translation>Stufen und ihre Belege</translation>
    </message>
    <message>
        <source>Plan a season</source>
        <translation>Saison planen</translation>
    </message>
    <message>
        <source>Go to Squad</source>
        <translation>Zur Gruppe</translation>
    </message>
    <message>
        <source>Change the season</source>
        <translation>Saison ändern</translation>
    </message>
    <message>
        <source>Season report as PDF</source>
        <translation>Saisonbericht als PDF</translation>
    </message>
    <message>
        <source>All numbers as CSV tables</source>
        <translation>Alle Zahlen als CSV-Tabellen</translation>
    </message>
    <message>
        <source>Hand out as a calendar</source>
        <translation>Als Kalender ausgeben</translation>
    </message>
    <message>
        <source>Why shorter ranges? Both sides</source>
        <translation>Warum kürzere Wege? Beide Seiten</translation>
    </message>
    <message>
        <source>Follow</source>
        <translation>Folgen</translation>
    </message>
    <message>
        <source>Decide otherwise</source>
        <translation>Anders entscheiden</translation>
    </message>
    <message>
        <source>Both sides of the evidence</source>
        <translation>Beide Seiten der Belege</translation>
    </message>
</context>
<context>
    <name>LadderRow</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>%1 one place up</source>
        <translation>%1 einen Platz nach oben</translation>
    </message>
</context>
<context>
    <name>LoadChartSheet</name>
    <message>
        <source>Loads by the chart</source>
        <translation>Lasten nach Tabelle</translation>
    </message>
    <message>
        <source>1RM, %1</source>
        <translation>1RM, %1</translation>
    </message>
    <message>
        <source>Type what you can lift once. A set of up to ten repetitions typed in tells it roughly.</source>
        <translation>Gib ein, was du einmal heben kannst. Ein getippter Satz bis zehn Wiederholungen sagt es ungefähr.</translation>
    </message>
    <message>
        <source>Source: NSCA training load chart. At 80 % of 1RM people differ by many repetitions, so the plan goes by how fast the bar moves, not by this.</source>
        <translation>Quelle: NSCA-Lasttabelle. Bei 80 % des 1RM unterscheiden sich Menschen um viele Wiederholungen; darum richtet sich der Plan danach, wie schnell die Stange ist.</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Fleetrung</source>
        <translation>Fleetrung</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>MapSheet</name>
    <message>
        <source>Take in a file</source>
        <translation>Datei übernehmen</translation>
    </message>
    <message>
        <source>How it is read</source>
        <translation>Wie er gelesen wird</translation>
    </message>
    <message>
        <source>A sensor map says what each byte means. It was chosen by itself; choose another only where the numbers look wrong.</source>
        <translation>Eine Sensorbeschreibung sagt, was jedes Byte bedeutet. Sie wurde von selbst gewählt; wähle nur dann eine andere, wenn die Zahlen falsch aussehen.</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Aus %1</translation>
    </message>
    <message>
        <source>Put the file of the sensor map (its name ends in .json) into %1, then look again.</source>
        <translation>Lege die Datei der Sensorbeschreibung (ihr Name endet auf .json) in %1, dann sieh noch einmal nach.</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Noch einmal nachsehen</translation>
    </message>
    <message>
        <source>Hand out this map as a file</source>
        <translation>Diese Beschreibung als Datei ausgeben</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Zurück zur Liste</translation>
    </message>
</context>
<context>
    <name>MarkedLine</name>
    <message>
        <source>Caution: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
</context>
<context>
    <name>NothingLeft</name>
    <message>
        <source>Clear the filters</source>
        <translation>Filter aufheben</translation>
    </message>
</context>
<context>
    <name>NoticeBar</name>
    <message>
        <source>Close the message</source>
        <translation>Meldung schließen</translation>
    </message>
</context>
<context>
    <name>NumberRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
</context>
<context>
    <name>OtherSetSheet</name>
    <message>
        <source>Load, %1 (0 for body mass)</source>
        <translation>Last, %1 (0 für Körpergewicht)</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>Effort, 1 easy to 10 all out (optional)</source>
        <translation>Anstrengung, 1 leicht bis 10 alles (freiwillig)</translation>
    </message>
    <message>
        <source>Save the set</source>
        <translation>Satz speichern</translation>
    </message>
</context>
<context>
    <name>OwnLadderSheet</name>
    <message>
        <source>A ladder of your own</source>
        <translation>Eine eigene Leiter</translation>
    </message>
    <message>
        <source>Change the ladder</source>
        <translation>Leiter ändern</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Rungs, longest range first</source>
        <translation>Sprossen, längster Weg zuerst</translation>
    </message>
    <message>
        <source>Add a rung</source>
        <translation>Sprosse hinzufügen</translation>
    </message>
    <message>
        <source>What kind of lift it is</source>
        <translation>Was für eine Übung es ist</translation>
    </message>
    <message>
        <source>Heavy: one such ladder steps in seven days</source>
        <translation>Schwer: eine solche Leiter geht in sieben Tagen weiter</translation>
    </message>
    <message>
        <source>Left and right apart</source>
        <translation>Links und rechts getrennt</translation>
    </message>
    <message>
        <source>What it loads: pain there rests this ladder</source>
        <translation>Was sie belastet: Schmerz dort lässt sie ruhen</translation>
    </message>
    <message>
        <source>Ranges and times of your own rest on no source. The rules of loads, age and pain hold for them all the same.</source>
        <translation>Eigene Wege und Zeiten ruhen auf keiner Quelle. Die Regeln für Last, Alter und Schmerz gelten trotzdem.</translation>
    </message>
    <message>
        <source>Delete this ladder</source>
        <translation>Diese Leiter löschen</translation>
    </message>
    <message>
        <source>Put it into the season</source>
        <translation>In die Saison aufnehmen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>PageFrame</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>PagesWords</name>
    <message>
        <source>week %1 of %2</source>
        <translation>Woche %1 von %2</translation>
    </message>
    <message>
        <source>Sprints first, the lifts after the run.</source>
        <translation>Zuerst die Sprints, die Übungen nach dem Laufen.</translation>
    </message>
    <message>
        <source>No lifts today</source>
        <translation>Heute keine Übungen</translation>
    </message>
    <message>
        <source>Today belongs to the track.</source>
        <translation>Heute gehört der Bahn.</translation>
    </message>
    <message>
        <source>Rest is part of the plan. The next lifts stand on Ladder.</source>
        <translation>Ruhe gehört zum Plan. Die nächsten Übungen stehen auf der Leiter.</translation>
    </message>
    <message>
        <source>Go to Ladder</source>
        <translation>Zur Leiter</translation>
    </message>
    <message>
        <source>No season yet</source>
        <translation>Noch keine Saison</translation>
    </message>
    <message>
        <source>Plan a season on Ladder: it starts from the main competition and counts backwards. From then on, each day&apos;s lifts, loads and sets stand here.</source>
        <translation>Plane auf der Leiter eine Saison: Sie geht vom Hauptwettkampf aus und zählt rückwärts. Von da an stehen hier jeden Tag Übungen, Lasten und Sätze.</translation>
    </message>
    <message>
        <source>Plan a season on Ladder</source>
        <translation>Saison auf der Leiter planen</translation>
    </message>
    <message>
        <source>A season is planned backwards</source>
        <translation>Eine Saison wird rückwärts geplant</translation>
    </message>
    <message>
        <source>Say when the main competition is and which lifts you keep for the whole season. As it comes nearer, each lift goes down its ladder to a shorter range.</source>
        <translation>Sage, wann der Hauptwettkampf ist und welche Übungen du die ganze Saison behältst. Kommt er näher, geht jede Übung ihre Leiter hinunter zu einem kürzeren Weg.</translation>
    </message>
    <message>
        <source>Nobody trains here yet</source>
        <translation>Hier trainiert noch niemand</translation>
    </message>
    <message>
        <source>Add an athlete on Squad, then plan a season on Ladder.</source>
        <translation>Füge unter Gruppe jemanden hinzu, dann plane auf der Leiter eine Saison.</translation>
    </message>
    <message>
        <source>Go to Squad</source>
        <translation>Zur Gruppe</translation>
    </message>
    <message>
        <source>No athlete, no season</source>
        <translation>Ohne Athlet keine Saison</translation>
    </message>
    <message>
        <source>Add an athlete on Squad first.</source>
        <translation>Füge zuerst unter Gruppe jemanden hinzu.</translation>
    </message>
</context>
<context>
    <name>PlatesSheet</name>
    <message>
        <source>Plates on the bar</source>
        <translation>Scheiben auf der Stange</translation>
    </message>
    <message>
        <source>Load: %1</source>
        <translation>Last: %1</translation>
    </message>
    <message>
        <source>Take the last plates off</source>
        <translation>Die letzten Scheiben abnehmen</translation>
    </message>
    <message>
        <source>A plate of %1 on each side</source>
        <translation>Je Seite eine Scheibe %1</translation>
    </message>
    <message>
        <source>Take all off</source>
        <translation>Alle abnehmen</translation>
    </message>
    <message>
        <source>This is on the bar</source>
        <translation>Das ist auf der Stange</translation>
    </message>
</context>
<context>
    <name>PoseTile</name>
    <message>
        <source>%1: taken</source>
        <translation>%1: erfasst</translation>
    </message>
    <message>
        <source>%1: next</source>
        <translation>%1: als Nächstes</translation>
    </message>
    <message>
        <source>%1: open</source>
        <translation>%1: offen</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>erfasst</translation>
    </message>
    <message>
        <source>next</source>
        <translation>als Nächstes</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
</context>
<context>
    <name>RadioTroubleWords</name>
    <message>
        <source>Bluetooth is off. Switch it on: the sensor then connects by itself.</source>
        <translation>Bluetooth ist aus. Schalte es ein: Der Sensor verbindet sich dann von selbst.</translation>
    </message>
    <message>
        <source>No Bluetooth was found on this device. Switch it on in the system&apos;s settings, or plug a Bluetooth adapter in.</source>
        <translation>Auf diesem Gerät wurde kein Bluetooth gefunden. Schalte es in den Systemeinstellungen ein oder stecke einen Bluetooth-Adapter an.</translation>
    </message>
    <message>
        <source>Fleetrung may not use Bluetooth. Allow it in the system&apos;s settings for Fleetrung; on older phones location must be on, too.</source>
        <translation>Fleetrung darf Bluetooth nicht benutzen. Erlaube es in den Systemeinstellungen für Fleetrung; auf älteren Telefonen muss auch der Standort an sein.</translation>
    </message>
    <message>
        <source>%1 is not in reach. Switch it on and bring it near: it then connects by itself.</source>
        <translation>%1 ist nicht in Reichweite. Schalte ihn ein und bring ihn näher: Er verbindet sich dann von selbst.</translation>
    </message>
    <message>
        <source>%1 is near but did not let us in. Disconnect it from any other phone, or switch it off and on.</source>
        <translation>%1 ist nah, ließ uns aber nicht herein. Trenne ihn von anderen Telefonen, oder schalte ihn aus und ein.</translation>
    </message>
    <message>
        <source>The connection to %1 was lost and is being made again. Keep the phone within a few metres of it.</source>
        <translation>Die Verbindung zu %1 ging verloren und wird neu aufgebaut. Bleib mit dem Telefon in wenigen Metern Abstand.</translation>
    </message>
    <message>
        <source>%1 answers, but it is not the kind of sensor it was saved as. Choose another description for it, or teach it anew.</source>
        <translation>%1 antwortet, ist aber nicht die Art Sensor, als die er gespeichert wurde. Wähle eine andere Beschreibung oder lerne ihn neu ein.</translation>
    </message>
    <message>
        <source>%1 asks for pairing, and the pairing with this device does not work. Open the system&apos;s Bluetooth settings, forget (remove) %1 there, and connect again.</source>
        <translation>%1 verlangt Kopplung, und die Kopplung mit diesem Gerät geht nicht. Öffne die Bluetooth-Einstellungen des Systems, vergiss (entferne) %1 dort und verbinde neu.</translation>
    </message>
    <message>
        <source>%1 is connected but sends nothing; it is being asked again. If this stays, switch it off and on.</source>
        <translation>%1 ist verbunden, sendet aber nichts; er wird erneut gefragt. Bleibt das so, schalte ihn aus und ein.</translation>
    </message>
    <message>
        <source>%1 sends data that its description does not fit. Choose another description for it, or teach it anew.</source>
        <translation>%1 sendet Daten, zu denen seine Beschreibung nicht passt. Wähle eine andere Beschreibung oder lerne ihn neu ein.</translation>
    </message>
    <message>
        <source>%1 sends more than this connection may carry, and samples can be lost. Set a lower rate on the sensor if you can.</source>
        <translation>%1 sendet mehr, als diese Verbindung tragen kann; es können Werte verloren gehen. Stelle am Sensor eine niedrigere Rate ein, wenn du kannst.</translation>
    </message>
    <message>
        <source>The sensor</source>
        <translation>Der Sensor</translation>
    </message>
</context>
<context>
    <name>ReportWords</name>
    <message>
        <source>SEASON REPORT</source>
        <translation>SAISONBERICHT</translation>
    </message>
    <message>
        <source>Season report</source>
        <translation>Saisonbericht</translation>
    </message>
    <message>
        <source>no medical advice</source>
        <translation>kein medizinischer Rat</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>Seite %1</translation>
    </message>
    <message>
        <source>born %1</source>
        <translation>geboren %1</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>weeks of the season</source>
        <translation>Wochen der Saison</translation>
    </message>
    <message>
        <source>planned training days done</source>
        <translation>geplante Trainingstage gemacht</translation>
    </message>
    <message>
        <source>sessions in the log</source>
        <translation>Einheiten im Protokoll</translation>
    </message>
    <message>
        <source>repetitions in the log</source>
        <translation>Wiederholungen im Protokoll</translation>
    </message>
    <message>
        <source>days lost</source>
        <translation>verlorene Tage</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>The season ran %1, from %2 to %3.</source>
        <translation>Die Saison lief %1, vom %2 bis zum %3.</translation>
    </message>
    <message>
        <source>Week %1 of %2: the season began on %3 and is planned to %4.</source>
        <translation>Woche %1 von %2: die Saison begann am %3 und ist bis zum %4 geplant.</translation>
    </message>
    <message>
        <source>%1 of %2 planned training days were done.</source>
        <translation>%1 von %2 geplanten Trainingstagen wurden gemacht.</translation>
    </message>
    <message>
        <source>%1 of 1 planned training day was done.</source>
        <translation>%1 von 1 geplanten Trainingstag wurde gemacht.</translation>
    </message>
    <message>
        <source>%1 days were lost: %2.</source>
        <translation>%1 Tage gingen verloren: %2.</translation>
    </message>
    <message>
        <source>1 day was lost: %1.</source>
        <translation>1 Tag ging verloren: %1.</translation>
    </message>
    <message>
        <source>%1 with %2 and %3 are in the log, all measured by a sensor.</source>
        <translation>%1 mit %2 und %3 stehen im Protokoll, alle vom Sensor gemessen.</translation>
    </message>
    <message>
        <source>%1 with %2 and %3 are in the log, all typed in.</source>
        <translation>%1 mit %2 und %3 stehen im Protokoll, alle eingetippt.</translation>
    </message>
    <message>
        <source>%1 with %2 and %3 are in the log, %4 of them measured by a sensor.</source>
        <translation>%1 mit %2 und %3 stehen im Protokoll, %4 davon vom Sensor gemessen.</translation>
    </message>
    <message>
        <source>%1: from %2 to %3 in %4; on %5 since %6.</source>
        <translation>%1: von %2 zu %3 mit %4; auf %5 seit %6.</translation>
    </message>
    <message>
        <source>%1: on %2 since %3.</source>
        <translation>%1: auf %2 seit %3.</translation>
    </message>
    <message>
        <source>%1 became shorter on %2.</source>
        <translation>%1 wurde kürzer auf %2.</translation>
    </message>
    <message>
        <source>%1 became longer on %2.</source>
        <translation>%1 wurde länger auf %2.</translation>
    </message>
    <message>
        <source>No change of %1 beyond its day-to-day error on %2.</source>
        <translation>Keine Änderung über den Tagesfehler hinaus (%1) auf %2.</translation>
    </message>
    <message>
        <source>%1: %2; best %3 s on %4 (wind %5 m/s), best of the first day %6 s.</source>
        <translation>%1: %2; Bestzeit %3 s am %4 (Wind %5 m/s), Bestzeit des ersten Tags %6 s.</translation>
    </message>
    <message>
        <source>%1: %2; best %3 s on %4, best of the first day %5 s.</source>
        <translation>%1: %2; Bestzeit %3 s am %4, Bestzeit des ersten Tags %5 s.</translation>
    </message>
    <message>
        <source>%1 decisions were taken (%2); %3 followed, %4 changed by the athlete; of those that are no hold, %5 still open.</source>
        <translation>%1 Entscheidungen fielen (%2); %3 befolgt, %4 vom Athleten geändert; von denen, die kein Bleiben sind, sind %5 noch offen.</translation>
    </message>
    <message>
        <source>1 decision was taken (%1); %2 followed, %3 changed by the athlete; of those that are no hold, %4 still open.</source>
        <translation>1 Entscheidung fiel (%1); %2 befolgt, %3 vom Athleten geändert; von denen, die kein Bleiben sind, sind %4 noch offen.</translation>
    </message>
    <message>
        <source>Pain of 3 or more out of 10 was noted on %1 (%2).</source>
        <translation>Schmerz von 3 oder mehr von 10 wurde an %1 notiert (%2).</translation>
    </message>
    <message>
        <source>Pain of 3 or more out of 10 was noted on %1.</source>
        <translation>Schmerz von 3 oder mehr von 10 wurde an %1 notiert.</translation>
    </message>
    <message>
        <source>%1 (%2 to %3 ms, typical error %4 ms)</source>
        <translation>%1 (%2 auf %3 ms, typischer Fehler %4 ms)</translation>
    </message>
    <message>
        <source>%1, left</source>
        <translation>%1, links</translation>
    </message>
    <message>
        <source>%1, right</source>
        <translation>%1, rechts</translation>
    </message>
    <message>
        <source>%1 sets</source>
        <translation>%1 Sätzen</translation>
    </message>
    <message>
        <source>1 set</source>
        <translation>1 Satz</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1 Wiederholungen</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1 Wiederholung</translation>
    </message>
    <message>
        <source>%1 changes of rung</source>
        <translation>%1 Sprossenwechseln</translation>
    </message>
    <message>
        <source>1 change of rung</source>
        <translation>1 Sprossenwechsel</translation>
    </message>
    <message>
        <source>%1 runs</source>
        <translation>%1 Läufe</translation>
    </message>
    <message>
        <source>1 run</source>
        <translation>1 Lauf</translation>
    </message>
    <message>
        <source>%1 hold</source>
        <translation>%1 × bleiben</translation>
    </message>
    <message>
        <source>%1 step</source>
        <translation>%1 × weiter</translation>
    </message>
    <message>
        <source>%1 step back</source>
        <translation>%1 × zurück</translation>
    </message>
    <message>
        <source>%1 ease</source>
        <translation>%1 × erleichtern</translation>
    </message>
    <message>
        <source>%1 rest</source>
        <translation>%1 × Pause</translation>
    </message>
    <message>
        <source>illness %1</source>
        <translation>Krankheit %1</translation>
    </message>
    <message>
        <source>travel %1</source>
        <translation>Reise %1</translation>
    </message>
    <message>
        <source>exams %1</source>
        <translation>Prüfungen %1</translation>
    </message>
    <message>
        <source>injury %1</source>
        <translation>Verletzung %1</translation>
    </message>
    <message>
        <source>no reason given %1</source>
        <translation>ohne Grund %1</translation>
    </message>
    <message>
        <source>Competitions</source>
        <translation>Wettkämpfe</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Competition</source>
        <translation>Wettkampf</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>main</source>
        <translation>Haupt</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation>steht bevor</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>This report is no medical advice.</source>
        <translation>Dieser Bericht ist kein medizinischer Rat.</translation>
    </message>
    <message>
        <source>Work with a licensed coach or clinician; local rules and facility codes come first.</source>
        <translation>Arbeite mit einem lizenzierten Trainer oder Arzt; örtliche Regeln und Hausordnungen gehen vor.</translation>
    </message>
    <message>
        <source>Pain, injury, pregnancy: clear it with a clinician before training on.</source>
        <translation>Schmerz, Verletzung, Schwangerschaft: vor dem Weitertrainieren ärztlich klären.</translation>
    </message>
    <message>
        <source>Under 18: with a guardian&apos;s consent and clearance.</source>
        <translation>Unter 18: mit Zustimmung der Erziehungsberechtigten und Freigabe.</translation>
    </message>
    <message>
        <source>Heavy lifts over a short range: safety bars set and a spotter there.</source>
        <translation>Schwere Übungen über kurzen Weg: Ablagen eingestellt, eine Hilfe dabei.</translation>
    </message>
    <message>
        <source>Landings are limited: keep to the contacts planned for a session.</source>
        <translation>Landungen sind begrenzt: bleib bei den Kontakten der Einheit.</translation>
    </message>
    <message>
        <source>Estimates of the one-repetition maximum are estimates.</source>
        <translation>Schätzungen des Einerwiederholungsmaximums sind Schätzungen.</translation>
    </message>
    <message>
        <source>Target bands are starting values, for show: where a rung should lead, not a mark to be forced.</source>
        <translation>Zielbänder sind Startwerte zur Ansicht: wohin eine Sprosse führen soll, keine Marke zum Erzwingen.</translation>
    </message>
    <message>
        <source>That strength over shorter ranges carries over better to sprinting is the working premise, with evidence on both sides.</source>
        <translation>Dass Kraft über kürzere Wege sich besser auf den Sprint überträgt, ist die Arbeitsannahme, mit Belegen auf beiden Seiten.</translation>
    </message>
    <message>
        <source>Nothing here shows cause.</source>
        <translation>Nichts hier zeigt eine Ursache.</translation>
    </message>
    <message>
        <source>%1 ladder</source>
        <translation>Leiter %1</translation>
    </message>
    <message>
        <source>Rung</source>
        <translation>Sprosse</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Gegangen</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>Körpergewicht</translation>
    </message>
    <message>
        <source>%1 against the target band</source>
        <translation>%1 gegen das Zielband</translation>
    </message>
    <message>
        <source>Within each rung</source>
        <translation>Auf jeder Sprosse</translation>
    </message>
    <message>
        <source>Entry: mean of the first three sessions; latest: mean of the last three; a change is called one from 1.35 typical errors on.</source>
        <translation>Beginn: Mittel der ersten drei Einheiten; zuletzt: Mittel der letzten drei; als Änderung gilt sie ab 1,35 typischen Fehlern.</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>Latest</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Typical error</source>
        <translation>Typischer Fehler</translation>
    </message>
    <message>
        <source>Target band</source>
        <translation>Zielband</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>quicker</source>
        <translation>schneller</translation>
    </message>
    <message>
        <source>slower</source>
        <translation>langsamer</translation>
    </message>
    <message>
        <source>no clear change</source>
        <translation>keine klare Änderung</translation>
    </message>
    <message>
        <source>%1: load and velocity</source>
        <translation>%1: Last und Geschwindigkeit</translation>
    </message>
    <message>
        <source>No line: %1.</source>
        <translation>Keine Gerade: %1.</translation>
    </message>
    <message>
        <source>The fastest repetition at each load of %1 sessions on this rung, %2 points, a robust line.</source>
        <translation>Die schnellste Wiederholung je Last aus %1 Einheiten auf dieser Sprosse, %2 Punkte, eine robuste Gerade.</translation>
    </message>
    <message>
        <source>The fastest repetition at each load of 1 session on this rung, %1 points, a robust line.</source>
        <translation>Die schnellste Wiederholung je Last aus 1 Einheit auf dieser Sprosse, %1 Punkte, eine robuste Gerade.</translation>
    </message>
    <message>
        <source>No velocity at 1RM is published for this lift: it points to no 1RM.</source>
        <translation>Für diese Übung ist keine Geschwindigkeit bei 1RM veröffentlicht: sie weist auf kein 1RM.</translation>
    </message>
    <message>
        <source>Estimated 1RM %1 (95 %: %2 to %3), where the line meets %4 m/s (%5).</source>
        <translation>Geschätztes 1RM %1 (95 %: %2 bis %3), wo die Gerade %4 m/s erreicht (%5).</translation>
    </message>
    <message>
        <source>Estimated 1RM %1, where the line meets %2 m/s (%3).</source>
        <translation>Geschätztes 1RM %1, wo die Gerade %2 m/s erreicht (%3).</translation>
    </message>
    <message>
        <source>An estimate is an estimate.</source>
        <translation>Eine Schätzung ist eine Schätzung.</translation>
    </message>
    <message>
        <source>Decisions and their reasons</source>
        <translation>Entscheidungen und ihre Gründe</translation>
    </message>
    <message>
        <source>Holds and rests in a row stand in one line, with the reason of the last; of a hold only what was not met is shown.</source>
        <translation>Aufeinander folgendes Bleiben und Pausen stehen in einer Zeile mit dem letzten Grund; beim Bleiben steht nur, was nicht erfüllt war.</translation>
    </message>
    <message>
        <source>Every decision with all its numbers stands in the tables.</source>
        <translation>Jede Entscheidung mit allen Zahlen steht in den Tabellen.</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Leiter</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>Reason and evidence</source>
        <translation>Grund und Beleg</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>Evidence: %1.</source>
        <translation>Beleg: %1.</translation>
    </message>
    <message>
        <source>%1: met</source>
        <translation>%1: erfüllt</translation>
    </message>
    <message>
        <source>%1: not met</source>
        <translation>%1: nicht erfüllt</translation>
    </message>
    <message>
        <source>%1 followed, %2 open</source>
        <translation>%1 befolgt, %2 offen</translation>
    </message>
    <message>
        <source>followed</source>
        <translation>befolgt</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>%1 (%2 times)</source>
        <translation>%1 (%2-mal)</translation>
    </message>
    <message>
        <source>Hold at %1</source>
        <translation>Bleiben: %1</translation>
    </message>
    <message>
        <source>Ease at %1</source>
        <translation>Erleichtern: %1</translation>
    </message>
    <message>
        <source>Rest at %1</source>
        <translation>Pause: %1</translation>
    </message>
    <message>
        <source>Step, %1 to %2</source>
        <translation>Weiter, von %1 zu %2</translation>
    </message>
    <message>
        <source>Step back, %1 to %2</source>
        <translation>Zurück, von %1 zu %2</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Bleiben</translation>
    </message>
    <message>
        <source>Ease</source>
        <translation>Erleichtern</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Sprint times</source>
        <translation>Sprintzeiten</translation>
    </message>
    <message>
        <source>Only times of the same test are comparable; wind, surface and shoes stand beside each.</source>
        <translation>Nur Zeiten desselben Tests sind vergleichbar; Wind, Belag und Schuhe stehen daneben.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Best</source>
        <translation>Best</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Belag</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Schuhe</translation>
    </message>
    <message>
        <source>Timing</source>
        <translation>Zeitnahme</translation>
    </message>
    <message>
        <source>Run-in</source>
        <translation>Anlauf</translation>
    </message>
    <message>
        <source>Other times (wind, m/s)</source>
        <translation>Andere Zeiten (Wind, m/s)</translation>
    </message>
    <message>
        <source>%1, race</source>
        <translation>%1, Wettkampf</translation>
    </message>
    <message>
        <source>flying %1 m</source>
        <translation>%1 m fliegend</translation>
    </message>
    <message>
        <source>%1: speed by the splits</source>
        <translation>%1: Geschwindigkeit nach Zwischenzeiten</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>Top speed, m/s</source>
        <translation>Höchsttempo, m/s</translation>
    </message>
    <message>
        <source>Fit within, ms</source>
        <translation>Passung, ms</translation>
    </message>
    <message>
        <source>Power, W/kg</source>
        <translation>Leistung, W/kg</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Weggelassen</translation>
    </message>
    <message>
        <source>Speed over the way on %1, and how far each split lies from the curve</source>
        <translation>Geschwindigkeit über die Strecke am %1, und wie weit jede Zwischenzeit von der Kurve liegt</translation>
    </message>
    <message>
        <source>%1: no curve, %2</source>
        <translation>%1: keine Kurve, %2</translation>
    </message>
    <message>
        <source>Without force and power: %1</source>
        <translation>Ohne Kraft und Leistung: %1</translation>
    </message>
    <message>
        <source>The run with the greatest top speed stands for its time.</source>
        <translation>Der Lauf mit dem höchsten Tempo steht für seine Zeit.</translation>
    </message>
    <message>
        <source>± is one standard error.</source>
        <translation>± ist ein Standardfehler.</translation>
    </message>
    <message>
        <source>F0 and power: greatest horizontal force and power for each kilogram, with the drag of the air.</source>
        <translation>F0 und Leistung: größte waagerechte Kraft und Leistung je Kilogramm, mit Luftwiderstand.</translation>
    </message>
    <message>
        <source>A flying start gives none of these.</source>
        <translation>Ein fliegender Start gibt nichts davon.</translation>
    </message>
    <message>
        <source>Track by week</source>
        <translation>Bahn nach Wochen</translation>
    </message>
    <message>
        <source>Fast metres: metres at 90 and 95 % of the best speed of the 12 months before.</source>
        <translation>Schnelle Meter: Meter bei 90 und 95 % des besten Tempos der 12 Monate davor.</translation>
    </message>
    <message>
        <source>A week above 1.3 times the mean of the four before it is said.</source>
        <translation>Eine Woche über dem 1,3-Fachen des Mittels der vier davor wird genannt.</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Woche</translation>
    </message>
    <message>
        <source>week %1, %2</source>
        <translation>Woche %1, %2</translation>
    </message>
    <message>
        <source>week %1</source>
        <translation>Woche %1</translation>
    </message>
    <message>
        <source>Sprint days</source>
        <translation>Sprinttage</translation>
    </message>
    <message>
        <source>Metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>At 90 %</source>
        <translation>Bei 90 %</translation>
    </message>
    <message>
        <source>At 95 %</source>
        <translation>Bei 95 %</translation>
    </message>
    <message>
        <source>Resisted</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>Hill</source>
        <translation>Berg</translation>
    </message>
    <message>
        <source>Contacts</source>
        <translation>Kontakte</translation>
    </message>
    <message>
        <source>More than usual</source>
        <translation>Mehr als üblich</translation>
    </message>
    <message>
        <source>* Part of it is estimated: runs without splits, or work counted by its effort.</source>
        <translation>* Ein Teil ist geschätzt: Läufe ohne Zwischenzeiten oder nach Anstrengung gezählte Arbeit.</translation>
    </message>
    <message>
        <source>Work on the track</source>
        <translation>Arbeit auf der Bahn</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Anstrengung</translation>
    </message>
    <message>
        <source>sled %1</source>
        <translation>Schlitten %1</translation>
    </message>
    <message>
        <source>slope %1 %</source>
        <translation>Steigung %1 %</translation>
    </message>
    <message>
        <source>best %1 s</source>
        <translation>beste %1 s</translation>
    </message>
    <message>
        <source>best %1 s %2</source>
        <translation>beste %1 s %2</translation>
    </message>
    <message>
        <source>wind %1 m/s</source>
        <translation>Wind %1 m/s</translation>
    </message>
    <message>
        <source>run-in %1 m</source>
        <translation>Anlauf %1 m</translation>
    </message>
    <message>
        <source>sprints</source>
        <translation>Sprints</translation>
    </message>
    <message>
        <source>flying</source>
        <translation>fliegend</translation>
    </message>
    <message>
        <source>resisted</source>
        <translation>mit Widerstand</translation>
    </message>
    <message>
        <source>hill</source>
        <translation>Berg</translation>
    </message>
    <message>
        <source>easy</source>
        <translation>locker</translation>
    </message>
    <message>
        <source>track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>indoor</source>
        <translation>Halle</translation>
    </message>
    <message>
        <source>grass</source>
        <translation>Rasen</translation>
    </message>
    <message>
        <source>spikes</source>
        <translation>Spikes</translation>
    </message>
    <message>
        <source>flats</source>
        <translation>flache Schuhe</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>gates</source>
        <translation>Schranken</translation>
    </message>
    <message>
        <source>video</source>
        <translation>Video</translation>
    </message>
    <message>
        <source>electronic</source>
        <translation>elektronisch</translation>
    </message>
    <message>
        <source>Jumps</source>
        <translation>Sprünge</translation>
    </message>
    <message>
        <source>Jump</source>
        <translation>Sprung</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Kasten</translation>
    </message>
    <message>
        <source>Contact, median</source>
        <translation>Kontakt, Median</translation>
    </message>
    <message>
        <source>Best height or distance</source>
        <translation>Beste Höhe oder Weite</translation>
    </message>
    <message>
        <source>Best reactive strength</source>
        <translation>Beste Reaktivkraft</translation>
    </message>
    <message>
        <source>Reactive strength: jump height over contact time.</source>
        <translation>Reaktivkraft: Sprunghöhe durch Kontaktzeit.</translation>
    </message>
    <message>
        <source>drop jump</source>
        <translation>Tiefsprung</translation>
    </message>
    <message>
        <source>standing long jump</source>
        <translation>Standweitsprung</translation>
    </message>
    <message>
        <source>standing triple jump</source>
        <translation>Dreisprung aus dem Stand</translation>
    </message>
    <message>
        <source>counter-movement jump</source>
        <translation>Sprung mit Ausholbewegung</translation>
    </message>
    <message>
        <source>%1 bounds</source>
        <translation>%1 Sprungschritte</translation>
    </message>
    <message>
        <source>Did it work?</source>
        <translation>Hat es gewirkt?</translation>
    </message>
    <message>
        <source>Not judged: %1</source>
        <translation>Nicht beurteilt: %1</translation>
    </message>
    <message>
        <source>The bar within each rung beside the sprint against the season&apos;s trend, week by week.</source>
        <translation>Die Hantel auf jeder Sprosse neben dem Sprint gegen den Trend der Saison, Woche für Woche.</translation>
    </message>
    <message>
        <source>Times as they are would always go together: ranges grow shorter and summer comes.</source>
        <translation>Rohe Zeiten gingen immer zusammen: die Wege werden kürzer, und der Sommer kommt.</translation>
    </message>
    <message>
        <source>Sprint</source>
        <translation>Sprint</translation>
    </message>
    <message>
        <source>Weeks with both</source>
        <translation>Wochen mit beidem</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>Rungs</source>
        <translation>Sprossen</translation>
    </message>
    <message>
        <source>Rank correlation</source>
        <translation>Rangkorrelation</translation>
    </message>
    <message>
        <source>95 %, for show</source>
        <translation>95 %, zur Ansicht</translation>
    </message>
    <message>
        <source>Chance reaches</source>
        <translation>Zufall erreicht</translation>
    </message>
    <message>
        <source>the same week</source>
        <translation>in derselben Woche</translation>
    </message>
    <message>
        <source>This is no proof of cause.</source>
        <translation>Das ist kein Beweis einer Ursache.</translation>
    </message>
    <message>
        <source>Planned against done</source>
        <translation>Geplant und gemacht</translation>
    </message>
    <message>
        <source>Phase</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>From – to</source>
        <translation>Von – bis</translation>
    </message>
    <message>
        <source>Days planned</source>
        <translation>Tage geplant</translation>
    </message>
    <message>
        <source>Days done</source>
        <translation>Tage gemacht</translation>
    </message>
    <message>
        <source>Sets planned</source>
        <translation>Sätze geplant</translation>
    </message>
    <message>
        <source>Sets done</source>
        <translation>Sätze gemacht</translation>
    </message>
    <message>
        <source>Days lost</source>
        <translation>Verlorene Tage</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>illness</source>
        <translation>Krankheit</translation>
    </message>
    <message>
        <source>travel</source>
        <translation>Reise</translation>
    </message>
    <message>
        <source>exams</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>injury</source>
        <translation>Verletzung</translation>
    </message>
    <message>
        <source>Pain noted</source>
        <translation>Notierter Schmerz</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Schmerz</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 m from blocks</source>
        <translation>%1 m aus dem Block</translation>
    </message>
    <message>
        <source>%1 m standing</source>
        <translation>%1 m aus dem Stand</translation>
    </message>
    <message>
        <source>%1 m falling</source>
        <translation>%1 m aus dem Fallen</translation>
    </message>
    <message>
        <source>%1 m rolling</source>
        <translation>%1 m aus dem Antraben</translation>
    </message>
    <message>
        <source>block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>falling</source>
        <translation>Fallen</translation>
    </message>
    <message>
        <source>rolling</source>
        <translation>Antraben</translation>
    </message>
    <message>
        <source>race</source>
        <translation>Wettkampf</translation>
    </message>
    <message>
        <source>%1 % more fast metres than the mean of the four weeks before</source>
        <translation>%1 % mehr schnelle Meter als das Mittel der vier Wochen davor</translation>
    </message>
    <message>
        <source>%1 % more metres than the mean of the four weeks before</source>
        <translation>%1 % mehr Meter als das Mittel der vier Wochen davor</translation>
    </message>
    <message>
        <source>fast metres after four weeks without</source>
        <translation>schnelle Meter nach vier Wochen ohne</translation>
    </message>
    <message>
        <source>metres after four weeks without</source>
        <translation>Meter nach vier Wochen ohne</translation>
    </message>
    <message>
        <source>lift at two loads at least 10 % apart; a third and a fourth steady the line</source>
        <translation>hebe mit zwei Lasten, die mindestens 10 % auseinander liegen; eine dritte und vierte festigen die Gerade</translation>
    </message>
    <message>
        <source>Hold, %1 to %2</source>
        <translation>Bleiben, von %1 zu %2</translation>
    </message>
</context>
<context>
    <name>RowButton</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>RunFilter</name>
    <message>
        <source>Personal bests</source>
        <translation>Bestzeiten</translation>
    </message>
    <message>
        <source>Best</source>
        <translation>Best</translation>
    </message>
</context>
<context>
    <name>RunFitSheet</name>
    <message>
        <source>Touch a split to read it.</source>
        <translation>Tippe auf eine Zwischenzeit, um sie zu lesen.</translation>
    </message>
    <message>
        <source>Splits that were left out</source>
        <translation>Ausgelassene Zwischenzeiten</translation>
    </message>
    <message>
        <source>Use them anyway</source>
        <translation>Trotzdem verwenden</translation>
    </message>
    <message>
        <source>Splits against the fit</source>
        <translation>Zwischenzeiten gegen die Kurve</translation>
    </message>
    <message>
        <source>Force and power</source>
        <translation>Kraft und Leistung</translation>
    </message>
</context>
<context>
    <name>RunFormWords</name>
    <message>
        <source>That day has not come yet.</source>
        <translation>Dieser Tag ist noch nicht gekommen.</translation>
    </message>
    <message>
        <source>The split at %1 says %2. Take one of them out.</source>
        <translation>Die Zwischenzeit bei %1 sagt %2. Nimm eine von beiden heraus.</translation>
    </message>
    <message>
        <source>It must be later than the last split.</source>
        <translation>Sie muss nach der letzten Zwischenzeit liegen.</translation>
    </message>
    <message>
        <source>A split lies at %1.</source>
        <translation>Eine Zwischenzeit liegt bei %1.</translation>
    </message>
    <message>
        <source>That is faster than anyone has run. Check distance and time.</source>
        <translation>So schnell ist noch niemand gelaufen. Prüfe Strecke und Zeit.</translation>
    </message>
</context>
<context>
    <name>RunRow</name>
    <message>
        <source>%1, %2. %3</source>
        <translation>%1, %2. %3</translation>
    </message>
    <message>
        <source>Delete %1, %2</source>
        <translation>%1, %2 löschen</translation>
    </message>
</context>
<context>
    <name>RunRowsWords</name>
    <message>
        <source>competition</source>
        <translation>Wettkampf</translation>
    </message>
    <message>
        <source>test day</source>
        <translation>Testtag</translation>
    </message>
    <message>
        <source>wind %1</source>
        <translation>Wind %1</translation>
    </message>
    <message>
        <source>wind-aided</source>
        <translation>windunterstützt</translation>
    </message>
    <message>
        <source>best</source>
        <translation>Best</translation>
    </message>
    <message>
        <source>run-in %1</source>
        <translation>Anlauf %1</translation>
    </message>
    <message>
        <source>%1 splits</source>
        <translation>%1 Zwischenzeiten</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>run once</source>
        <translation>einmal gelaufen</translation>
    </message>
    <message>
        <source>%1 runs</source>
        <translation>%1 Läufe</translation>
    </message>
    <message>
        <source>wind-aided %1 (%2)</source>
        <translation>windunterstützt %1 (%2)</translation>
    </message>
</context>
<context>
    <name>RunSheet</name>
    <message>
        <source>Add a run</source>
        <translation>Lauf hinzufügen</translation>
    </message>
    <message>
        <source>Zone, m</source>
        <translation>Zone, m</translation>
    </message>
    <message>
        <source>Distance, m</source>
        <translation>Weite, m</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Stehend</translation>
    </message>
    <message>
        <source>Falling</source>
        <translation>Fallend</translation>
    </message>
    <message>
        <source>Rolling</source>
        <translation>Rollend</translation>
    </message>
    <message>
        <source>Flying</source>
        <translation>Fliegend</translation>
    </message>
    <message>
        <source>Run-in before the zone, m</source>
        <translation>Anlauf vor der Zone, m</translation>
    </message>
    <message>
        <source>Splits</source>
        <translation>Zwischenzeiten</translation>
    </message>
    <message>
        <source>Time, s (if no split stands at the end)</source>
        <translation>Zeit, s (wenn am Ende keine Zwischenzeit steht)</translation>
    </message>
    <message>
        <source>Time, s</source>
        <translation>Zeit, s</translation>
    </message>
    <message>
        <source>Wind, m/s, tail wind positive (optional)</source>
        <translation>Wind, m/s, Rückenwind positiv (freiwillig)</translation>
    </message>
    <message>
        <source>+0,8 or -1.2</source>
        <translation>+0,8 oder -1.2</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>Gestoppt mit</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Hand</translation>
    </message>
    <message>
        <source>Gates</source>
        <translation>Schranken</translation>
    </message>
    <message>
        <source>Video</source>
        <translation>Video</translation>
    </message>
    <message>
        <source>Electronic</source>
        <translation>Elektronisch</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Belag</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Indoor</source>
        <translation>Halle</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>Rasen</translation>
    </message>
    <message>
        <source>Is it one of these?</source>
        <translation>Ist es eines davon?</translation>
    </message>
    <message>
        <source>Trial of a test day</source>
        <translation>Versuch eines Testtags</translation>
    </message>
    <message>
        <source>Competition</source>
        <translation>Wettkampf</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Shoes, reaction, air, steps from video, note</source>
        <translation>Schuhe, Reaktion, Luft, Schritte aus Video, Notiz</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Schuhe</translation>
    </message>
    <message>
        <source>Spikes</source>
        <translation>Spikes</translation>
    </message>
    <message>
        <source>Flats</source>
        <translation>Flache Schuhe</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Nicht gesagt</translation>
    </message>
    <message>
        <source>Reaction from the gun, s, where it was timed</source>
        <translation>Reaktion ab dem Schuss, s, wo sie gemessen wurde</translation>
    </message>
    <message>
        <source>Start line to the beam that starts the clock, m; the splits count from the beam</source>
        <translation>Startlinie bis zur Schranke, die die Uhr startet, m; die Zwischenzeiten zählen ab der Schranke</translation>
    </message>
    <message>
        <source>Air temperature, °C</source>
        <translation>Lufttemperatur, °C</translation>
    </message>
    <message>
        <source>Height above the sea, m</source>
        <translation>Höhe über dem Meer, m</translation>
    </message>
    <message>
        <source>Ground contact near top speed, ms: from video at 240 pictures a second, ± 4 ms</source>
        <translation>Bodenkontakt nahe Höchsttempo, ms: aus Video mit 240 Bildern je Sekunde, ± 4 ms</translation>
    </message>
    <message>
        <source>Step length near top speed, %1, from video</source>
        <translation>Schrittlänge nahe Höchsttempo, %1, aus Video</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Save the run</source>
        <translation>Lauf speichern</translation>
    </message>
    <message>
        <source>Day, like %1</source>
        <translation>Tag, wie %1</translation>
    </message>
</context>
<context>
    <name>RungFormWords</name>
    <message>
        <source>This is no height of a box.</source>
        <translation>Das ist keine Kastenhöhe.</translation>
    </message>
    <message>
        <source>leads to %1</source>
        <translation>führt zu %1</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>The longer range stands here.</source>
        <translation>Hier steht der längere Weg.</translation>
    </message>
    <message>
        <source>The later time stands here.</source>
        <translation>Hier steht die spätere Zeit.</translation>
    </message>
    <message>
        <source>It ends before it begins.</source>
        <translation>Sie endet, bevor sie beginnt.</translation>
    </message>
</context>
<context>
    <name>RungSheet</name>
    <message>
        <source>A new rung</source>
        <translation>Neue Sprosse</translation>
    </message>
    <message>
        <source>Change the rung</source>
        <translation>Sprosse ändern</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Range from, %1</source>
        <translation>Weg von, %1</translation>
    </message>
    <message>
        <source>to, %1</source>
        <translation>bis, %1</translation>
    </message>
    <message>
        <source>Should lead to, from ms</source>
        <translation>Soll führen zu, von ms</translation>
    </message>
    <message>
        <source>to, ms</source>
        <translation>bis, ms</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>Rest, seconds</source>
        <translation>Pause, Sekunden</translation>
    </message>
    <message>
        <source>Box, %1 (optional)</source>
        <translation>Kasten, %1 (freiwillig)</translation>
    </message>
    <message>
        <source>Begins, at the earliest, in</source>
        <translation>Beginnt frühestens in</translation>
    </message>
    <message>
        <source>Is left, at the latest, at the end of</source>
        <translation>Endet spätestens am Ende von</translation>
    </message>
    <message>
        <source>First load here, % of the last load on the rung before</source>
        <translation>Erste Last hier, % der letzten Last auf der Sprosse davor</translation>
    </message>
    <message>
        <source>Probe load, % of what the rung allows (0 for body mass)</source>
        <translation>Probelast, % dessen, was die Sprosse zulässt (0: Körpergewicht)</translation>
    </message>
    <message>
        <source>How the bar moves: what the sensor looks for</source>
        <translation>Wie sich die Hantel bewegt: was der Sensor sucht</translation>
    </message>
    <message>
        <source>What it needs</source>
        <translation>Was sie braucht</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Stange</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Gestell</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Ablagen</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>Take this rung out</source>
        <translation>Diese Sprosse entfernen</translation>
    </message>
    <message>
        <source>Some of it cannot be taken yet: look above.</source>
        <translation>Einiges geht so noch nicht: schau oben.</translation>
    </message>
    <message>
        <source>Keep the rung</source>
        <translation>Sprosse behalten</translation>
    </message>
</context>
<context>
    <name>SeasonChangesWords</name>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: %2 bis %3</translation>
    </message>
    <message>
        <source>, %1 longer</source>
        <translation>, %1 länger</translation>
    </message>
    <message>
        <source>, %1 shorter</source>
        <translation>, %1 kürzer</translation>
    </message>
    <message>
        <source>, new</source>
        <translation>, neu</translation>
    </message>
    <message>
        <source>No more %1</source>
        <translation>Kein %1 mehr</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3</source>
        <translation>%1: %2 statt %3</translation>
    </message>
    <message>
        <source>%1: %2, new</source>
        <translation>%1: %2, neu</translation>
    </message>
    <message>
        <source>%1, %2: no longer planned</source>
        <translation>%1, %2: nicht mehr geplant</translation>
    </message>
</context>
<context>
    <name>SeasonEditSheet</name>
    <message>
        <source>Change the season</source>
        <translation>Saison ändern</translation>
    </message>
    <message>
        <source>Competitions</source>
        <translation>Wettkämpfe</translation>
    </message>
    <message>
        <source>Add a competition</source>
        <translation>Wettkampf hinzufügen</translation>
    </message>
    <message>
        <source>Travel, exams, illness, injury</source>
        <translation>Reise, Prüfungen, Krankheit, Verletzung</translation>
    </message>
    <message>
        <source>Add days away</source>
        <translation>Freie Tage hinzufügen</translation>
    </message>
    <message>
        <source>The week</source>
        <translation>Die Woche</translation>
    </message>
    <message>
        <source>Days with lifts</source>
        <translation>Tage mit Übungen</translation>
    </message>
    <message>
        <source>Days with sprints</source>
        <translation>Tage mit Sprints</translation>
    </message>
    <message>
        <source>Length of a session with lifts, minutes</source>
        <translation>Dauer einer Einheit mit Übungen, Minuten</translation>
    </message>
    <message>
        <source>Keep this length</source>
        <translation>Diese Dauer behalten</translation>
    </message>
    <message>
        <source>The weight room</source>
        <translation>Der Kraftraum</translation>
    </message>
    <message>
        <source>What it has</source>
        <translation>Was er hat</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Stange</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Gestell</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Ablagen</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>Boxes</source>
        <translation>Kästen</translation>
    </message>
    <message>
        <source>A height that you do not have is never planned. It stays as you type it.</source>
        <translation>Eine Höhe, die du nicht hast, wird nie geplant. Sie bleibt, wie du sie eingibst.</translation>
    </message>
    <message>
        <source>Remove the box of %1</source>
        <translation>Den Kasten mit %1 entfernen</translation>
    </message>
    <message>
        <source>Height of another box, %1</source>
        <translation>Höhe eines weiteren Kastens, %1</translation>
    </message>
    <message>
        <source>Add this box</source>
        <translation>Diesen Kasten hinzufügen</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Übungen</translation>
    </message>
    <message>
        <source>Ladders and other lifts</source>
        <translation>Leitern und andere Übungen</translation>
    </message>
</context>
<context>
    <name>SeasonFormWords</name>
    <message>
        <source>&quot;%1&quot; is no height of a box.</source>
        <translation>„%1“ ist keine Kastenhöhe.</translation>
    </message>
    <message>
        <source>Choose at least one day.</source>
        <translation>Wähle mindestens einen Tag.</translation>
    </message>
    <message>
        <source>Choose at least one lift.</source>
        <translation>Wähle mindestens eine Übung.</translation>
    </message>
    <message>
        <source>The competition comes after the season&apos;s first day.</source>
        <translation>Der Wettkampf kommt nach dem ersten Tag der Saison.</translation>
    </message>
</context>
<context>
    <name>SeasonLiftsSheet</name>
    <message>
        <source>Lifts of the season</source>
        <translation>Übungen der Saison</translation>
    </message>
    <message>
        <source>A ladder of your own</source>
        <translation>Eine eigene Leiter</translation>
    </message>
    <message>
        <source>Beside the ladders</source>
        <translation>Neben den Leitern</translation>
    </message>
    <message>
        <source>Hip thrusts, hamstring work, upper body, throws: logged and counted as load, never stepped.</source>
        <translation>Hüftheben, Beinbeuger, Oberkörper, Würfe: notiert und als Last gezählt, ohne Stufen.</translation>
    </message>
    <message>
        <source>Add a lift beside the ladders</source>
        <translation>Übung neben den Leitern hinzufügen</translation>
    </message>
    <message>
        <source>Begin with a copy of</source>
        <translation>Beginnen mit einer Kopie von</translation>
    </message>
    <message>
        <source>Everything in it can be changed: names, ranges, boxes, times, phases.</source>
        <translation>Alles darin lässt sich ändern: Namen, Wege, Kästen, Zeiten, Phasen.</translation>
    </message>
</context>
<context>
    <name>SeasonSheet</name>
    <message>
        <source>Plan a season</source>
        <translation>Saison planen</translation>
    </message>
    <message>
        <source>Main competition</source>
        <translation>Hauptwettkampf</translation>
    </message>
    <message>
        <source>club championship</source>
        <translation>Vereinsmeisterschaft</translation>
    </message>
    <message>
        <source>First day of the season</source>
        <translation>Erster Tag der Saison</translation>
    </message>
    <message>
        <source>Days with lifts</source>
        <translation>Tage mit Übungen</translation>
    </message>
    <message>
        <source>Days with sprints</source>
        <translation>Tage mit Sprints</translation>
    </message>
    <message>
        <source>Lifts you keep for the whole season, a few</source>
        <translation>Übungen, die du die ganze Saison behältst, wenige</translation>
    </message>
    <message>
        <source>What the weight room has</source>
        <translation>Was der Kraftraum hat</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Stange</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Gestell</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Ablagen</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>Heights of boxes, %1, with spaces between</source>
        <translation>Höhen der Kästen, %1, mit Leerzeichen dazwischen</translation>
    </message>
    <message>
        <source>20 30 45</source>
        <translation>20 30 45</translation>
    </message>
    <message>
        <source>Lay out the season</source>
        <translation>Saison anlegen</translation>
    </message>
    <message>
        <source>Day of the main competition</source>
        <translation>Tag des Hauptwettkampfs</translation>
    </message>
</context>
<context>
    <name>SecondarySheet</name>
    <message>
        <source>A lift beside the ladders</source>
        <translation>Eine Übung neben den Leitern</translation>
    </message>
    <message>
        <source>Change the lift</source>
        <translation>Übung ändern</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>hip thrust</source>
        <translation>Hüftheben</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>What it loads: pain there rests it</source>
        <translation>Was sie belastet: Schmerz dort lässt sie ruhen</translation>
    </message>
    <message>
        <source>Moves like</source>
        <translation>Bewegt sich wie</translation>
    </message>
    <message>
        <source>Take it out of the plan</source>
        <translation>Aus dem Plan nehmen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>Sensor</name>
    <message>
        <source>Bar sensor</source>
        <translation>Stangensensor</translation>
    </message>
    <message>
        <source>Started with --no-radio: no sensor is looked for.</source>
        <translation>Mit --no-radio gestartet: Es wird kein Sensor gesucht.</translation>
    </message>
</context>
<context>
    <name>SensorPill</name>
    <message>
        <source>%1. %2 Show the sensors</source>
        <translation>%1. %2 Sensoren zeigen</translation>
    </message>
</context>
<context>
    <name>SensorSheet</name>
    <message>
        <source>Try now</source>
        <translation>Jetzt versuchen</translation>
    </message>
    <message>
        <source>Where it is worn</source>
        <translation>Wo er sitzt</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Save the name</source>
        <translation>Namen speichern</translation>
    </message>
    <message>
        <source>Measure its six sides</source>
        <translation>Seine sechs Seiten messen</translation>
    </message>
    <message>
        <source>As soon as it streams.</source>
        <translation>Sobald er sendet.</translation>
    </message>
    <message>
        <source>How it is read</source>
        <translation>Wie er gelesen wird</translation>
    </message>
    <message>
        <source>Teach it anew</source>
        <translation>Neu einlernen</translation>
    </message>
    <message>
        <source>Three minutes, where its numbers look wrong.</source>
        <translation>Drei Minuten, wenn seine Zahlen falsch aussehen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Forget this sensor</source>
        <translation>Diesen Sensor vergessen</translation>
    </message>
</context>
<context>
    <name>SensorWords</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>On the bar</source>
        <translation>An der Stange</translation>
    </message>
    <message>
        <source>On the shoe</source>
        <translation>Am Schuh</translation>
    </message>
    <message>
        <source>At the waist</source>
        <translation>An der Hüfte</translation>
    </message>
    <message>
        <source>Bar sensor</source>
        <translation>Stangensensor</translation>
    </message>
    <message>
        <source>Shoe sensor</source>
        <translation>Schuhsensor</translation>
    </message>
    <message>
        <source>Waist sensor</source>
        <translation>Hüftsensor</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Stange</translation>
    </message>
    <message>
        <source>Shoe</source>
        <translation>Schuh</translation>
    </message>
    <message>
        <source>Waist</source>
        <translation>Hüfte</translation>
    </message>
    <message>
        <source>Not looked for</source>
        <translation>Nicht gesucht</translation>
    </message>
    <message>
        <source>Looking for it</source>
        <translation>Er wird gesucht</translation>
    </message>
    <message>
        <source>Connecting</source>
        <translation>Verbinden</translation>
    </message>
    <message>
        <source>Streaming</source>
        <translation>Sendet</translation>
    </message>
    <message>
        <source>Lost, looking for it</source>
        <translation>Verloren, er wird gesucht</translation>
    </message>
    <message>
        <source>Far away</source>
        <translation>Weit weg</translation>
    </message>
    <message>
        <source>Across the room</source>
        <translation>Am anderen Ende des Raums</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Nah</translation>
    </message>
    <message>
        <source>Very close</source>
        <translation>Sehr nah</translation>
    </message>
    <message>
        <source>Signal not told</source>
        <translation>Signal unbekannt</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>gerade eben</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>vor %1 min</translation>
    </message>
    <message>
        <source>%1 h ago</source>
        <translation>vor %1 h</translation>
    </message>
    <message>
        <source>%1 Hz</source>
        <translation>%1 Hz</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Rate</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>Lost on the way</source>
        <translation>Unterwegs verloren</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>Lateness</source>
        <translation>Verspätung</translation>
    </message>
    <message>
        <source>Longest pause</source>
        <translation>Längste Pause</translation>
    </message>
    <message>
        <source>Battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>Zeroed</source>
        <translation>Genullt</translation>
    </message>
    <message>
        <source>within 10 min</source>
        <translation>innerhalb von 10 min</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>lay it still</source>
        <translation>lege ihn still hin</translation>
    </message>
    <message>
        <source>Turning</source>
        <translation>Drehung</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>wider ± values</source>
        <translation>breitere ±-Werte</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Unreadable</source>
        <translation>Nicht lesbar</translation>
    </message>
    <message>
        <source>Times lost</source>
        <translation>Wie oft verloren</translation>
    </message>
    <message>
        <source>since it was found</source>
        <translation>seit er gefunden wurde</translation>
    </message>
    <message>
        <source>battery %1 %</source>
        <translation>Batterie %1 %</translation>
    </message>
    <message>
        <source>%1 lost</source>
        <translation>%1 verloren</translation>
    </message>
</context>
<context>
    <name>SensorsCard</name>
    <message>
        <source>Sensors</source>
        <translation>Sensoren</translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation>Sensor hinzufügen</translation>
    </message>
    <message>
        <source>Show the sensors</source>
        <translation>Sensoren zeigen</translation>
    </message>
</context>
<context>
    <name>SensorsSheet</name>
    <message>
        <source>Sensors</source>
        <translation>Sensoren</translation>
    </message>
    <message>
        <source>No sensor yet</source>
        <translation>Noch kein Sensor</translation>
    </message>
    <message>
        <source>Any motion sensor that speaks Bluetooth Low Energy will do. Add it once; from then on it is found by itself.</source>
        <translation>Jeder Bewegungssensor mit Bluetooth Low Energy taugt. Füge ihn einmal hinzu; danach wird er von selbst gefunden.</translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation>Sensor hinzufügen</translation>
    </message>
</context>
<context>
    <name>SessionView</name>
    <message>
        <source>How are you today?</source>
        <translation>Wie geht es dir heute?</translation>
    </message>
    <message>
        <source>Sleep, soreness, pain: the day is decided with it.</source>
        <translation>Schlaf, Muskelkater, Schmerz: Danach wird der Tag entschieden.</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4, %5</source>
        <translation>%1, %2, %3, %4, %5</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>Why %1 today?</source>
        <translation>Warum heute %1?</translation>
    </message>
    <message>
        <source>Other lifts</source>
        <translation>Andere Übungen</translation>
    </message>
    <message>
        <source>Several athletes on this sensor</source>
        <translation>Mehrere an diesem Sensor</translation>
    </message>
</context>
<context>
    <name>SetActions</name>
    <message>
        <source>Undo</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Undo the last repetition</source>
        <translation>Letzte Wiederholung zurücknehmen</translation>
    </message>
    <message>
        <source>End set</source>
        <translation>Satz beenden</translation>
    </message>
</context>
<context>
    <name>SetView</name>
    <message>
        <source>Last set</source>
        <translation>Letzter Satz</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Aufwärmen</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>Erhaltung</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>velocity loss</source>
        <translation>Tempoverlust</translation>
    </message>
    <message>
        <source>Type a set in</source>
        <translation>Satz eintippen</translation>
    </message>
    <message>
        <source>Why this today?</source>
        <translation>Warum heute das?</translation>
    </message>
    <message>
        <source>Loads by the chart</source>
        <translation>Lasten nach Tabelle</translation>
    </message>
    <message>
        <source>Stands large</source>
        <translation>Groß angezeigt</translation>
    </message>
</context>
<context>
    <name>SharerStrip</name>
    <message>
        <source>Who lifts next?</source>
        <translation>Wer hebt als Nächstes?</translation>
    </message>
    <message>
        <source>Who lifts next? End this set first.</source>
        <translation>Wer hebt als Nächstes? Beende zuerst diesen Satz.</translation>
    </message>
    <message>
        <source>%1 lifts now</source>
        <translation>%1 hebt jetzt</translation>
    </message>
    <message>
        <source>%1 lifts next</source>
        <translation>%1 hebt als Nächstes</translation>
    </message>
</context>
<context>
    <name>SharingSheet</name>
    <message>
        <source>Who shares this sensor?</source>
        <translation>Wer teilt sich diesen Sensor?</translation>
    </message>
    <message>
        <source>Picked by hand. They stand above the set; one tap changes who lifts next.</source>
        <translation>Von Hand gewählt. Sie stehen über dem Satz; ein Tipp wechselt, wer dran ist.</translation>
    </message>
    <message>
        <source>Those of the same rack and round, as Squad shares them out. Tap names to pick by hand.</source>
        <translation>Die vom selben Gestell und Durchgang, wie die Gruppe sie aufteilt. Tippe auf Namen, um selbst zu wählen.</translation>
    </message>
    <message>
        <source>Back to those of the rack</source>
        <translation>Zurück zu denen vom Gestell</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>Nah</translation>
    </message>
</context>
<context>
    <name>SplitSheet</name>
    <message>
        <source>Splits</source>
        <translation>Zwischenzeiten</translation>
    </message>
    <message>
        <source>Take the last split off: %1</source>
        <translation>Letzte Zwischenzeit streichen: %1</translation>
    </message>
    <message>
        <source>Split at, m</source>
        <translation>Zwischenzeit bei, m</translation>
    </message>
    <message>
        <source>Time, s</source>
        <translation>Zeit, s</translation>
    </message>
    <message>
        <source>Time: %1 s</source>
        <translation>Zeit: %1 s</translation>
    </message>
    <message>
        <source>Decimal point</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Erase a digit</source>
        <translation>Eine Ziffer löschen</translation>
    </message>
    <message>
        <source>Add the split</source>
        <translation>Zwischenzeit hinzufügen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>SpokenWords</name>
    <message>
        <source>week %1</source>
        <translation>Woche %1</translation>
    </message>
    <message>
        <source>week %1 to %2</source>
        <translation>Woche %1 bis %2</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 von %2 bis %3</translation>
    </message>
    <message>
        <source>Across: %1.</source>
        <translation>Waagerecht: %1.</translation>
    </message>
    <message>
        <source>Up: %1.</source>
        <translation>Senkrecht: %1.</translation>
    </message>
    <message>
        <source>%1: %2 to %3.</source>
        <translation>%1: %2 bis %3.</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 ab %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: lowest %2, highest %3.</source>
        <translation>%1: niedrigster Wert %2, höchster %3.</translation>
    </message>
    <message>
        <source>%1 (no evidence)</source>
        <translation>%1 (kein Beleg)</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>%1, 1 mark: %2.</source>
        <translation>%1, 1 Punkt: %2.</translation>
    </message>
    <message>
        <source>%1, %2 marks: %3.</source>
        <translation>%1, %2 Punkte: %3.</translation>
    </message>
    <message>
        <source>first %1; last %2; lowest %3, highest %4</source>
        <translation>erster %1; letzter %2; niedrigster %3, höchster %4</translation>
    </message>
    <message>
        <source>Now on %1.</source>
        <translation>Jetzt auf %1.</translation>
    </message>
    <message>
        <source>Latest: %1.</source>
        <translation>Zuletzt: %1.</translation>
    </message>
    <message>
        <source>Latest: %1, inside the target band.</source>
        <translation>Zuletzt: %1, im Zielband.</translation>
    </message>
    <message>
        <source>Latest: %1, outside the target band.</source>
        <translation>Zuletzt: %1, außerhalb des Zielbands.</translation>
    </message>
    <message>
        <source>In %1: %2.</source>
        <translation>In %1: %2.</translation>
    </message>
    <message>
        <source>Chosen: %1 in %2.</source>
        <translation>Gewählt: %1 in %2.</translation>
    </message>
</context>
<context>
    <name>SprintTrendCard</name>
    <message>
        <source>Sprint times</source>
        <translation>Sprintzeiten</translation>
    </message>
    <message>
        <source>Which runs count</source>
        <translation>Welche Läufe zählen</translation>
    </message>
</context>
<context>
    <name>SquadPage</name>
    <message>
        <source>Squad</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Who trains here?</source>
        <translation>Wer trainiert hier?</translation>
    </message>
    <message>
        <source>Add yourself, or each athlete you coach. Lifts, sprints and decisions are kept for each athlete apart, on this device only.</source>
        <translation>Füge dich hinzu, oder alle, die du trainierst. Übungen, Sprints und Entscheidungen werden für jeden getrennt und nur auf diesem Gerät aufbewahrt.</translation>
    </message>
    <message>
        <source>Add an athlete</source>
        <translation>Athletin oder Athlet hinzufügen</translation>
    </message>
    <message>
        <source>Look around with a demo squad</source>
        <translation>Mit einer Demo-Gruppe umsehen</translation>
    </message>
    <message>
        <source>Look at the demo squad</source>
        <translation>Demo-Gruppe ansehen</translation>
    </message>
    <message>
        <source>Archive</source>
        <translation>Archiv</translation>
    </message>
    <message>
        <source>Import sets from a file</source>
        <translation>Sätze aus einer Datei importieren</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>What to know before you lift heavy, or jump from a box.</source>
        <translation>Was du wissen solltest, bevor du schwer hebst oder vom Kasten springst.</translation>
    </message>
    <message>
        <source>Read the cautions</source>
        <translation>Warnhinweise lesen</translation>
    </message>
</context>
<context>
    <name>SquadParts</name>
    <message>
        <source>Athletes</source>
        <translation>Athletinnen und Athleten</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>This device</source>
        <translation>Dieses Gerät</translation>
    </message>
</context>
<context>
    <name>SquadToday</name>
    <message>
        <source>Squad</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Training group</source>
        <translation>Trainingsgruppe</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Who lifts what</source>
        <translation>Wer hebt was</translation>
    </message>
    <message>
        <source>Racks and rounds</source>
        <translation>Gestelle und Durchgänge</translation>
    </message>
    <message>
        <source>One rack less</source>
        <translation>Ein Gestell weniger</translation>
    </message>
    <message>
        <source>One rack more</source>
        <translation>Ein Gestell mehr</translation>
    </message>
    <message>
        <source>Nobody is due</source>
        <translation>Niemand ist dran</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
</context>
<context>
    <name>StairStepsWords</name>
    <message>
        <source>The first rung of this part of the season.</source>
        <translation>Die erste Sprosse dieses Saisonteils.</translation>
    </message>
    <message>
        <source>%1 days on %2 come first.</source>
        <translation>Zuerst kommen %1 Tage auf %2.</translation>
    </message>
    <message>
        <source>Not before %1, which begins on %2.</source>
        <translation>Nicht vor %1, das am %2 beginnt.</translation>
    </message>
    <message>
        <source>The rungs below it need the time that is left before the main competition.</source>
        <translation>Die Sprossen darunter brauchen die Zeit, die bis zum Hauptwettkampf bleibt.</translation>
    </message>
</context>
<context>
    <name>StatusPill</name>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>StepList</name>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>StepsSheet</name>
    <message>
        <source>Steps of the ladder</source>
        <translation>Stufen der Leiter</translation>
    </message>
</context>
<context>
    <name>StopSign</name>
    <message>
        <source>Stop the set</source>
        <translation>Satz beenden</translation>
    </message>
</context>
<context>
    <name>SureRow</name>
    <message>
        <source>%1: %2, %3. %4</source>
        <translation>%1: %2, %3. %4</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>TeachSheet</name>
    <message>
        <source>Teach %1</source>
        <translation>%1 einlernen</translation>
    </message>
    <message>
        <source>Connecting. Keep it near.</source>
        <translation>Verbinden. Halte ihn nah.</translation>
    </message>
    <message>
        <source>Learning</source>
        <translation>Es wird gelernt</translation>
    </message>
    <message>
        <source>Keep what was learned as</source>
        <translation>Das Gelernte behalten als</translation>
    </message>
    <message>
        <source>So high</source>
        <translation>So hoch</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>The step before again</source>
        <translation>Den Schritt davor noch einmal</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Start over</source>
        <translation>Von vorn</translation>
    </message>
</context>
<context>
    <name>Tile</name>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
</context>
<context>
    <name>TouchedPoint</name>
    <message>
        <source>Touch a point to see its session.</source>
        <translation>Tippe auf einen Punkt, um seine Einheit zu sehen.</translation>
    </message>
    <message>
        <source>The point before</source>
        <translation>Der Punkt davor</translation>
    </message>
    <message>
        <source>The next point</source>
        <translation>Der nächste Punkt</translation>
    </message>
    <message>
        <source>Close the session</source>
        <translation>Einheit schließen</translation>
    </message>
    <message>
        <source>The session&apos;s sets</source>
        <translation>Die Sätze der Einheit</translation>
    </message>
</context>
<context>
    <name>TrackPage</name>
    <message>
        <source>Track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Sprints</source>
        <translation>Sprints</translation>
    </message>
    <message>
        <source>Jumps</source>
        <translation>Sprünge</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Pensum</translation>
    </message>
    <message>
        <source>Add a run</source>
        <translation>Lauf hinzufügen</translation>
    </message>
    <message>
        <source>Add jumps</source>
        <translation>Sprünge hinzufügen</translation>
    </message>
    <message>
        <source>Add work</source>
        <translation>Pensum hinzufügen</translation>
    </message>
    <message>
        <source>Delete %1, %2</source>
        <translation>%1, %2 löschen</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Frühere zeigen</translation>
    </message>
    <message>
        <source>Import runs from a file</source>
        <translation>Läufe aus einer Datei importieren</translation>
    </message>
    <message>
        <source>Go to Squad</source>
        <translation>Zur Gruppe</translation>
    </message>
</context>
<context>
    <name>TrackWords</name>
    <message>
        <source>blocks</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>standing start</source>
        <translation>stehender Start</translation>
    </message>
    <message>
        <source>flying</source>
        <translation>fliegend</translation>
    </message>
    <message>
        <source>falling start</source>
        <translation>fallender Start</translation>
    </message>
    <message>
        <source>rolling start</source>
        <translation>rollender Start</translation>
    </message>
    <message>
        <source>hand timed</source>
        <translation>Handzeit</translation>
    </message>
    <message>
        <source>gates</source>
        <translation>Schranken</translation>
    </message>
    <message>
        <source>video</source>
        <translation>Video</translation>
    </message>
    <message>
        <source>electronic</source>
        <translation>elektronisch</translation>
    </message>
    <message>
        <source>track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>indoor</source>
        <translation>Halle</translation>
    </message>
    <message>
        <source>grass</source>
        <translation>Rasen</translation>
    </message>
    <message>
        <source>Sprints</source>
        <translation>Sprints</translation>
    </message>
    <message>
        <source>Flying sprints</source>
        <translation>Fliegende Sprints</translation>
    </message>
    <message>
        <source>Resisted sprints</source>
        <translation>Zugwiderstandsläufe</translation>
    </message>
    <message>
        <source>Hill sprints</source>
        <translation>Bergsprints</translation>
    </message>
    <message>
        <source>Easy runs</source>
        <translation>Lockere Läufe</translation>
    </message>
    <message>
        <source>Drop jump</source>
        <translation>Tiefsprung</translation>
    </message>
    <message>
        <source>Counter-movement jump</source>
        <translation>Counter-Movement-Jump</translation>
    </message>
    <message>
        <source>Squat jump</source>
        <translation>Squat-Jump</translation>
    </message>
    <message>
        <source>Standing long jump</source>
        <translation>Standweitsprung</translation>
    </message>
    <message>
        <source>Long jump</source>
        <translation>Weitsprung</translation>
    </message>
    <message>
        <source>Bounds</source>
        <translation>Sprunglauf</translation>
    </message>
    <message>
        <source>spikes</source>
        <translation>Spikes</translation>
    </message>
    <message>
        <source>flats</source>
        <translation>flache Schuhe</translation>
    </message>
    <message>
        <source>Flying %1</source>
        <translation>Fliegende %1</translation>
    </message>
    <message>
        <source>%1 from blocks</source>
        <translation>%1 aus dem Block</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>TrendsPage</name>
    <message>
        <source>Trends</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Nothing measured yet</source>
        <translation>Noch nichts gemessen</translation>
    </message>
    <message>
        <source>Each session begins with a probe set: three repetitions with full intent at the same load. From the third session on, this page shows whether you reach peak velocity sooner.</source>
        <translation>Jede Einheit beginnt mit einem Probesatz: drei Wiederholungen mit voller Absicht bei gleicher Last. Ab der dritten Einheit zeigt diese Seite, ob du die Höchstgeschwindigkeit früher erreichst.</translation>
    </message>
</context>
<context>
    <name>TrendsWords</name>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>Körpergewicht</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Aufwärmen</translation>
    </message>
    <message>
        <source>Probe set</source>
        <translation>Probesatz</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>Erhaltung</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>hand timed</source>
        <translation>Handzeit</translation>
    </message>
    <message>
        <source> Note: %1</source>
        <translation> Notiz: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source> × %1</source>
        <translation> × %1</translation>
    </message>
    <message>
        <source>fastest %1</source>
        <translation>schnellste %1</translation>
    </message>
    <message>
        <source>loss %1</source>
        <translation>Verlust %1</translation>
    </message>
    <message>
        <source>effort %1</source>
        <translation>Anstrengung %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>contact %1</source>
        <translation>Kontakt %1</translation>
    </message>
    <message>
        <source>flight %1</source>
        <translation>Flug %1</translation>
    </message>
    <message>
        <source>RSI %1</source>
        <translation>RSI %1</translation>
    </message>
    <message>
        <source>Drop jump %1.</source>
        <translation>Tiefsprung %1.</translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>wind %1 m/s</source>
        <translation>Wind %1 m/s</translation>
    </message>
    <message>
        <source>run-in %1</source>
        <translation>Anlauf %1</translation>
    </message>
    <message>
        <source>race</source>
        <translation>Wettkampf</translation>
    </message>
</context>
<context>
    <name>TypedSetSheet</name>
    <message>
        <source>A set without a sensor</source>
        <translation>Ein Satz ohne Sensor</translation>
    </message>
    <message>
        <source>Load and repetitions are enough. Velocity and time count only if you measured them.</source>
        <translation>Last und Wiederholungen genügen. Geschwindigkeit und Zeit zählen nur, wenn du sie gemessen hast.</translation>
    </message>
    <message>
        <source>Kind of set</source>
        <translation>Art des Satzes</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Aufwärmen</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>Erhaltung</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Last, %1</translation>
    </message>
    <message>
        <source>By plates</source>
        <translation>Nach Scheiben</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>%1, ms (if measured)</source>
        <translation>%1, ms (falls gemessen)</translation>
    </message>
    <message>
        <source>Effort, 1 easy to 10 all out (tells 1RM)</source>
        <translation>Anstrengung, 1 leicht bis 10 alles (sagt das 1RM)</translation>
    </message>
    <message>
        <source>Save the set</source>
        <translation>Satz speichern</translation>
    </message>
    <message>
        <source>%1, m/s (if measured)</source>
        <translation>%1, m/s (falls gemessen)</translation>
    </message>
</context>
<context>
    <name>UnitsWords</name>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>ms</source>
        <translation>ms</translation>
    </message>
    <message>
        <source>m/s</source>
        <translation>m/s</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
</context>
<context>
    <name>WaitingForSet</name>
    <message>
        <source>By plates</source>
        <translation>Nach Scheiben</translation>
    </message>
</context>
<context>
    <name>WellnessSheet</name>
    <message>
        <source>How are you today?</source>
        <translation>Wie geht es dir heute?</translation>
    </message>
    <message>
        <source>Pain, 0 none to 10 the worst</source>
        <translation>Schmerz, 0 keiner bis 10 der schlimmste</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>Wo?</translation>
    </message>
    <message>
        <source>Any of these?</source>
        <translation>Etwas davon?</translation>
    </message>
    <message>
        <source>Sharp pain</source>
        <translation>Stechender Schmerz</translation>
    </message>
    <message>
        <source>Limping</source>
        <translation>Hinken</translation>
    </message>
    <message>
        <source>New hamstring pain</source>
        <translation>Neuer Schmerz hinten im Oberschenkel</translation>
    </message>
    <message>
        <source>No sprinting and no hinge today. See a clinician before you sprint or lift heavy again.</source>
        <translation>Heute kein Sprint und keine Hüftstreckübung. Geh zum Arzt, bevor du wieder sprintest oder schwer hebst.</translation>
    </message>
    <message>
        <source>Soreness, 0 none to 10 very sore</source>
        <translation>Muskelkater, 0 keiner bis 10 sehr stark</translation>
    </message>
    <message>
        <source>Sleep, hours</source>
        <translation>Schlaf, Stunden</translation>
    </message>
    <message>
        <source>Body mass, %1 (optional)</source>
        <translation>Körpergewicht, %1 (freiwillig)</translation>
    </message>
    <message>
        <source>Your word counts before every rule</source>
        <translation>Dein Wort zählt vor jeder Regel</translation>
    </message>
    <message>
        <source>I do not want to lift today</source>
        <translation>Ich möchte heute nicht heben</translation>
    </message>
    <message>
        <source>Keep this</source>
        <translation>Übernehmen</translation>
    </message>
</context>
<context>
    <name>WellnessWords</name>
    <message>
        <source>somewhere else</source>
        <translation>woanders</translation>
    </message>
    <message>
        <source>Say where it hurts.</source>
        <translation>Sage, wo es schmerzt.</translation>
    </message>
    <message>
        <source>does not want to lift</source>
        <translation>möchte nicht heben</translation>
    </message>
    <message>
        <source>slept %1 h</source>
        <translation>%1 h geschlafen</translation>
    </message>
    <message>
        <source>soreness %1</source>
        <translation>Muskelkater %1</translation>
    </message>
    <message>
        <source>no pain</source>
        <translation>kein Schmerz</translation>
    </message>
    <message>
        <source>pain %1</source>
        <translation>Schmerz %1</translation>
    </message>
    <message>
        <source>pain %1, %2</source>
        <translation>Schmerz %1, %2</translation>
    </message>
    <message>
        <source>sharp pain</source>
        <translation>stechender Schmerz</translation>
    </message>
    <message>
        <source>limping</source>
        <translation>Hinken</translation>
    </message>
    <message>
        <source>new hamstring pain</source>
        <translation>neuer Schmerz hinten im Oberschenkel</translation>
    </message>
</context>
<context>
    <name>WhySheet</name>
    <message>
        <source>Why this today?</source>
        <translation>Warum heute das?</translation>
    </message>
</context>
<context>
    <name>WorkFormWords</name>
    <message>
        <source>That is faster than anyone has run. Check distance and time.</source>
        <translation>So schnell ist noch niemand gelaufen. Prüfe Strecke und Zeit.</translation>
    </message>
    <message>
        <source>That is slower than walking. Check distance and time.</source>
        <translation>Das ist langsamer als Gehen. Prüfe Strecke und Zeit.</translation>
    </message>
    <message>
        <source>That day has not come yet.</source>
        <translation>Dieser Tag ist noch nicht gekommen.</translation>
    </message>
</context>
<context>
    <name>WorkPart</name>
    <message>
        <source>Delete %1, %2</source>
        <translation>%1, %2 löschen</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Frühere zeigen</translation>
    </message>
    <message>
        <source>No work counted yet</source>
        <translation>Noch kein Pensum gezählt</translation>
    </message>
    <message>
        <source>Sprints without a clock, runs behind a sled, up a hill or easy: how many of how many metres. The weeks then tell how many metres were run, and how many of them fast.</source>
        <translation>Sprints ohne Uhr, Läufe mit Schlitten, bergauf oder locker: wie viele von wie vielen Metern. Die Wochen sagen dann, wie viele Meter gelaufen wurden und wie viele davon schnell.</translation>
    </message>
</context>
<context>
    <name>WorkSheet</name>
    <message>
        <source>Add work</source>
        <translation>Pensum hinzufügen</translation>
    </message>
    <message>
        <source>Kind of work</source>
        <translation>Art des Pensums</translation>
    </message>
    <message>
        <source>Sprints</source>
        <translation>Sprints</translation>
    </message>
    <message>
        <source>Flying</source>
        <translation>Fliegend</translation>
    </message>
    <message>
        <source>Resisted</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>Hill</source>
        <translation>Berg</translation>
    </message>
    <message>
        <source>Easy</source>
        <translation>Locker</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>Zone of each, m</source>
        <translation>Zone je Lauf, m</translation>
    </message>
    <message>
        <source>Metres of each</source>
        <translation>Meter je Lauf</translation>
    </message>
    <message>
        <source>Load on the sled, %1 (optional)</source>
        <translation>Last auf dem Schlitten, %1 (freiwillig)</translation>
    </message>
    <message>
        <source>Slope, % (optional)</source>
        <translation>Steigung, % (freiwillig)</translation>
    </message>
    <message>
        <source>Effort, 1 to 10. From 9 on untimed sprints count as fast metres</source>
        <translation>Anstrengung, 1 bis 10. Ab 9 zählen ungestoppte Sprints als schnelle Meter</translation>
    </message>
    <message>
        <source>Best time of one run, s (optional)</source>
        <translation>Beste Zeit eines Laufs, s (freiwillig)</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>Gestoppt mit</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Hand</translation>
    </message>
    <message>
        <source>Gates</source>
        <translation>Schranken</translation>
    </message>
    <message>
        <source>Video</source>
        <translation>Video</translation>
    </message>
    <message>
        <source>Electronic</source>
        <translation>Elektronisch</translation>
    </message>
    <message>
        <source>Rest between runs, minutes (optional)</source>
        <translation>Pause zwischen den Läufen, Minuten (freiwillig)</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Surface, shoes, wind, note</source>
        <translation>Belag, Schuhe, Wind, Notiz</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Belag</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Indoor</source>
        <translation>Halle</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>Rasen</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Schuhe</translation>
    </message>
    <message>
        <source>Spikes</source>
        <translation>Spikes</translation>
    </message>
    <message>
        <source>Flats</source>
        <translation>Flache Schuhe</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Nicht gesagt</translation>
    </message>
    <message>
        <source>Wind, m/s, tail wind positive (optional)</source>
        <translation>Wind, m/s, Rückenwind positiv (freiwillig)</translation>
    </message>
    <message>
        <source>+0,8 or -1.2</source>
        <translation>+0,8 oder -1.2</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Save the work</source>
        <translation>Pensum speichern</translation>
    </message>
    <message>
        <source>Day, like %1</source>
        <translation>Tag, wie %1</translation>
    </message>
</context>
<context>
    <name>WorkWeeks</name>
    <message>
        <source>Metres by week</source>
        <translation>Meter je Woche</translation>
    </message>
    <message>
        <source>Fast: at 90 % of best speed or above. A week is marked above 1.3 times the mean of the four weeks before it: a starting value of this program; the worth of such ratios is disputed.</source>
        <translation>Schnell: ab 90 % des besten Tempos. Eine Woche wird über dem 1,3-Fachen des Mittels der vier Wochen davor markiert: ein Startwert dieses Programms; der Wert solcher Verhältnisse ist umstritten.</translation>
    </message>
</context>
<context>
    <name>fleetrung::ui::PoseDrawing</name>
    <message>
        <source>Main side up</source>
        <translation>Hauptseite oben</translation>
    </message>
    <message>
        <source>Main side down</source>
        <translation>Hauptseite unten</translation>
    </message>
    <message>
        <source>On a long edge</source>
        <translation>Auf einer langen Kante</translation>
    </message>
    <message>
        <source>On the other long edge</source>
        <translation>Auf der anderen langen Kante</translation>
    </message>
    <message>
        <source>On a short end</source>
        <translation>Auf einem kurzen Ende</translation>
    </message>
    <message>
        <source>On the other short end</source>
        <translation>Auf dem anderen kurzen Ende</translation>
    </message>
    <message>
        <source>Main side up, one turn to the left</source>
        <translation>Hauptseite oben, einmal links herum</translation>
    </message>
    <message>
        <source>On a long edge, one turn to the left</source>
        <translation>Auf einer langen Kante, einmal links herum</translation>
    </message>
    <message>
        <source>On a short end, one turn to the left</source>
        <translation>Auf einem kurzen Ende, einmal links herum</translation>
    </message>
    <message>
        <source>Raised straight up</source>
        <translation>Gerade angehoben</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::AppViewModel</name>
    <message>
        <source>Stored recording</source>
        <translation>Gespeicherte Aufnahme</translation>
    </message>
    <message>
        <source>The set is saved.</source>
        <translation>Der Satz ist gespeichert.</translation>
    </message>
    <message>
        <source>Kept. The day is decided anew.</source>
        <translation>Übernommen. Der Tag wird neu entschieden.</translation>
    </message>
    <message>
        <source>The lift is lighter today.</source>
        <translation>Die Übung ist heute leichter.</translation>
    </message>
    <message>
        <source>Kept: you keep the plan.</source>
        <translation>Übernommen: Du bleibst beim Plan.</translation>
    </message>
    <message>
        <source>The calendar is in %1</source>
        <translation>Der Kalender liegt in %1</translation>
    </message>
    <message>
        <source>The demo squad is not made.</source>
        <translation>Die Demo-Gruppe wurde nicht erstellt.</translation>
    </message>
    <message>
        <source>A set is under way. End it first.</source>
        <translation>Ein Satz läuft. Beende ihn zuerst.</translation>
    </message>
    <message>
        <source>Playing an invented squad&apos;s seasons: %1 %</source>
        <translation>Die Saisons einer erfundenen Gruppe werden gespielt: %1 %</translation>
    </message>
    <message>
        <source>Demo squad: everything here is invented.</source>
        <translation>Demo-Gruppe: Hier ist alles erfunden.</translation>
    </message>
    <message>
        <source>The set is changed.</source>
        <translation>Der Satz ist geändert.</translation>
    </message>
    <message>
        <source>The set is deleted.</source>
        <translation>Der Satz ist gelöscht.</translation>
    </message>
    <message>
        <source>The repetition is struck out.</source>
        <translation>Die Wiederholung ist gestrichen.</translation>
    </message>
    <message>
        <source>The repetition counts again.</source>
        <translation>Die Wiederholung zählt wieder.</translation>
    </message>
    <message>
        <source>The repetition is evidence again.</source>
        <translation>Die Wiederholung gilt wieder als Beleg.</translation>
    </message>
    <message>
        <source>The repetition is no evidence.</source>
        <translation>Die Wiederholung ist kein Beleg.</translation>
    </message>
    <message>
        <source>The side is changed.</source>
        <translation>Die Seite ist geändert.</translation>
    </message>
    <message>
        <source>The repetition is added.</source>
        <translation>Die Wiederholung ist ergänzt.</translation>
    </message>
    <message>
        <source>1 run is added.</source>
        <translation>1 Lauf ist übernommen.</translation>
    </message>
    <message>
        <source>1 set is added.</source>
        <translation>1 Satz ist übernommen.</translation>
    </message>
    <message>
        <source>%1 runs are added.</source>
        <translation>%1 Läufe sind übernommen.</translation>
    </message>
    <message>
        <source>%1 sets are added.</source>
        <translation>%1 Sätze sind übernommen.</translation>
    </message>
    <message>
        <source>A set was cut off, and what it was is not known.</source>
        <translation>Ein Satz wurde abgebrochen, und was es war, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>%1: the set was cut off too early to be read.</source>
        <translation>%1: Der Satz brach zu früh ab, um ihn zu lesen.</translation>
    </message>
    <message>
        <source>1 repetition is kept</source>
        <translation>1 Wiederholung ist erhalten</translation>
    </message>
    <message>
        <source>%1 repetitions are kept</source>
        <translation>%1 Wiederholungen sind erhalten</translation>
    </message>
    <message>
        <source>%1: the set was cut off. %2.</source>
        <translation>%1: Der Satz wurde abgebrochen. %2.</translation>
    </message>
    <message>
        <source>What was left of the set is dropped.</source>
        <translation>Der Rest des Satzes ist verworfen.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>season, athlete</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The report is being written …</source>
        <translation>Der Bericht wird geschrieben …</translation>
    </message>
    <message>
        <source>The report is in %1</source>
        <translation>Der Bericht liegt in %1</translation>
    </message>
    <message>
        <source>The tables are being written …</source>
        <translation>Die Tabellen werden geschrieben …</translation>
    </message>
    <message>
        <source>%1 tables in %2; data_dictionary.csv explains each column</source>
        <translation>%1 Tabellen in %2; data_dictionary.csv erklärt jede Spalte</translation>
    </message>
    <message>
        <source>%1 is forgotten.</source>
        <translation>%1 ist vergessen.</translation>
    </message>
    <message>
        <source>The sensor map is in %1</source>
        <translation>Die Sensorbeschreibung liegt in %1</translation>
    </message>
    <message>
        <source>%1 can be chosen now.</source>
        <translation>%1 kann jetzt gewählt werden.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The run is saved.</source>
        <translation>Der Lauf ist gespeichert.</translation>
    </message>
    <message>
        <source>The run is deleted.</source>
        <translation>Der Lauf ist gelöscht.</translation>
    </message>
    <message>
        <source>The jump is deleted.</source>
        <translation>Der Sprung ist gelöscht.</translation>
    </message>
    <message>
        <source>The jump is saved.</source>
        <translation>Der Sprung ist gespeichert.</translation>
    </message>
    <message>
        <source>%1 jumps are saved.</source>
        <translation>%1 Sprünge sind gespeichert.</translation>
    </message>
    <message>
        <source>The work is saved.</source>
        <translation>Das Pensum ist gespeichert.</translation>
    </message>
    <message>
        <source>The work is deleted.</source>
        <translation>Das Pensum ist gelöscht.</translation>
    </message>
    <message>
        <source>%1 is saved.</source>
        <translation>%1 ist gespeichert.</translation>
    </message>
    <message>
        <source>%1 is in the archive, with all that was done.</source>
        <translation>%1 ist im Archiv, mit allem, was war.</translation>
    </message>
    <message>
        <source>%1 is back.</source>
        <translation>%1 ist wieder da.</translation>
    </message>
    <message>
        <source>A set is under way and stays with who began it. End it first.</source>
        <translation>Ein Satz läuft und bleibt bei dem, der ihn begann. Beende ihn zuerst.</translation>
    </message>
    <message>
        <source>Kept: you follow this.</source>
        <translation>Übernommen: Du folgst.</translation>
    </message>
    <message>
        <source>Kept: you decided otherwise.</source>
        <translation>Übernommen: Du hast anders entschieden.</translation>
    </message>
    <message>
        <source>The season is laid out.</source>
        <translation>Die Saison ist angelegt.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::BenchFeedback</name>
    <message>
        <source>Stop the set</source>
        <translation>Satz beenden</translation>
    </message>
    <message>
        <source>no evidence</source>
        <translation>kein Beleg</translation>
    </message>
    <message>
        <source>%1, sooner</source>
        <translation>%1, früher</translation>
    </message>
    <message>
        <source>%1, later</source>
        <translation>%1, später</translation>
    </message>
    <message>
        <source>Sensor lost</source>
        <translation>Sensor verloren</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Los</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::BenchViewModel</name>
    <message>
        <source>load to be found</source>
        <translation>Last wird noch gesucht</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>Körpergewicht</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 ladder, rung %2 of %3</source>
        <translation>Leiter %1, Sprosse %2 von %3</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>Ziel %1</translation>
    </message>
    <message>
        <source>done, %1 sets</source>
        <translation>fertig, %1 Sätze</translation>
    </message>
    <message>
        <source>%1 of %2 sets done</source>
        <translation>%1 von %2 Sätzen fertig</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>nicht begonnen</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Bank</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1 Wiederholung</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1 Wiederholungen</translation>
    </message>
    <message>
        <source>Drop time</source>
        <translation>Fallzeit</translation>
    </message>
    <message>
        <source>Contact time</source>
        <translation>Kontaktzeit</translation>
    </message>
    <message>
        <source>Time to peak velocity</source>
        <translation>Zeit bis zur Höchstgeschwindigkeit</translation>
    </message>
    <message>
        <source>ms from the quickest descent to rest</source>
        <translation>ms vom schnellsten Senken bis zum Stillstand</translation>
    </message>
    <message>
        <source>ms to peak velocity</source>
        <translation>ms bis zum Höchsttempo</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>inside the band  %1</source>
        <translation>im Zielband  %1</translation>
    </message>
    <message>
        <source>%1 ms sooner than the band</source>
        <translation>%1 ms früher als das Zielband</translation>
    </message>
    <message>
        <source>%1 ms later than the band</source>
        <translation>%1 ms später als das Zielband</translation>
    </message>
    <message>
        <source>two peaks: no evidence</source>
        <translation>zwei Gipfel: kein Beleg</translation>
    </message>
    <message>
        <source>peak velocity</source>
        <translation>Höchsttempo</translation>
    </message>
    <message>
        <source>mean velocity</source>
        <translation>mittleres Tempo</translation>
    </message>
    <message>
        <source>range to peak</source>
        <translation>Weg bis Gipfel</translation>
    </message>
    <message>
        <source>range</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>rung %1</source>
        <translation>Sprosse %1</translation>
    </message>
    <message>
        <source>stop at %1</source>
        <translation>Ende bei %1</translation>
    </message>
    <message>
        <source>By the loss %1: a guess. The stop rests on the loss.</source>
        <translation>Nach dem Verlust %1: geschätzt. Das Satzende richtet sich nach dem Verlust.</translation>
    </message>
    <message>
        <source>Velocity has fallen by %1; this set ends at %2.</source>
        <translation>Die Geschwindigkeit ist um %1 gefallen; dieser Satz endet bei %2.</translation>
    </message>
    <message>
        <source>Warm-up: %1</source>
        <translation>Aufwärmen: %1</translation>
    </message>
    <message>
        <source>Probe: %1, full intent</source>
        <translation>Probe: %1, volle Absicht</translation>
    </message>
    <message>
        <source>Work: %1 sets of %2</source>
        <translation>Arbeit: %1 Sätze zu %2</translation>
    </message>
    <message>
        <source>rested</source>
        <translation>ausgeruht</translation>
    </message>
    <message>
        <source>rest %1:%2</source>
        <translation>Pause %1:%2</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>zuletzt %1</translation>
    </message>
    <message>
        <source>No sprinting today: pain forbids it.</source>
        <translation>Heute kein Sprint: Schmerz verbietet es.</translation>
    </message>
    <message>
        <source>%1 at a load to be found</source>
        <translation>%1 mit einer Last, die noch gesucht wird</translation>
    </message>
    <message>
        <source>%1 at body mass</source>
        <translation>%1 mit Körpergewicht</translation>
    </message>
    <message>
        <source>Primer: light and fast, no probe set</source>
        <translation>Aktivierung: leicht und schnell, ohne Probesatz</translation>
    </message>
    <message>
        <source>Box %1</source>
        <translation>Kasten %1</translation>
    </message>
    <message>
        <source>%1 contacts; at most %2 today</source>
        <translation>%1 Kontakte; heute höchstens %2</translation>
    </message>
    <message>
        <source>Maintenance: %1 × %2, %3</source>
        <translation>Erhaltung: %1 × %2, %3</translation>
    </message>
    <message>
        <source>Warm-up check</source>
        <translation>Aufwärmprüfung</translation>
    </message>
    <message>
        <source>Warm-up check: not enough to compare with</source>
        <translation>Aufwärmprüfung: zu wenig zum Vergleichen</translation>
    </message>
    <message>
        <source>Warm-up check: as usual</source>
        <translation>Aufwärmprüfung: wie sonst</translation>
    </message>
    <message>
        <source>Warm-up check: slower than usual</source>
        <translation>Aufwärmprüfung: langsamer als sonst</translation>
    </message>
    <message>
        <source>Warm-up check: less today</source>
        <translation>Aufwärmprüfung: heute weniger</translation>
    </message>
    <message>
        <source>Warm-up check: you keep the plan</source>
        <translation>Aufwärmprüfung: Du bleibst beim Plan</translation>
    </message>
    <message>
        <source>Lift the last two warm-up loads with full intent, as warm-up sets: %1 and %2. Their velocity is then compared with your own at these loads. It can take load or sets off today, never put any on.</source>
        <translation>Hebe die letzten zwei Aufwärmlasten mit voller Absicht als Aufwärmsätze: %1 und %2. Ihre Geschwindigkeit wird dann mit deiner eigenen bei diesen Lasten verglichen. Das kann heute Last oder Sätze wegnehmen, nie etwas dazugeben.</translation>
    </message>
    <message>
        <source>%1 less load</source>
        <translation>%1 weniger Last</translation>
    </message>
    <message>
        <source>one set less</source>
        <translation>ein Satz weniger</translation>
    </message>
    <message>
        <source>%1 sets less</source>
        <translation>%1 Sätze weniger</translation>
    </message>
    <message>
        <source>%1 of the sets</source>
        <translation>%1 der Sätze</translation>
    </message>
    <message>
        <source>Proposed: %1. %2</source>
        <translation>Vorschlag: %1. %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Say why, in a few words.</source>
        <translation>Sag mit wenigen Worten, warum.</translation>
    </message>
    <message>
        <source>probe set</source>
        <translation>Probesatz</translation>
    </message>
    <message>
        <source>warm-up</source>
        <translation>Aufwärmen</translation>
    </message>
    <message>
        <source>maintenance set</source>
        <translation>Erhaltungssatz</translation>
    </message>
    <message>
        <source>set %1 of %2</source>
        <translation>Satz %1 von %2</translation>
    </message>
    <message>
        <source>extra set %1</source>
        <translation>Zusatzsatz %1</translation>
    </message>
    <message>
        <source>%1 planned</source>
        <translation>%1 geplant</translation>
    </message>
    <message>
        <source>rung %1 of %2</source>
        <translation>Sprosse %1 von %2</translation>
    </message>
    <message>
        <source>Load on the bar, %1</source>
        <translation>Last auf der Stange, %1</translation>
    </message>
    <message>
        <source>No sensor</source>
        <translation>Kein Sensor</translation>
    </message>
    <message>
        <source>%1 ready</source>
        <translation>%1 bereit</translation>
    </message>
    <message>
        <source>%1 streaming</source>
        <translation>%1 sendet</translation>
    </message>
    <message>
        <source>%1 lost. The set goes on when it is back.</source>
        <translation>%1 verloren. Der Satz geht weiter, wenn er wieder da ist.</translation>
    </message>
    <message>
        <source>%1 has ended</source>
        <translation>%1 ist zu Ende</translation>
    </message>
    <message>
        <source>%1 Hz</source>
        <translation>%1 Hz</translation>
    </message>
    <message>
        <source>Not by the bar sensor</source>
        <translation>Nicht mit dem Stangensensor</translation>
    </message>
    <message>
        <source>Start the set</source>
        <translation>Satz beginnen</translation>
    </message>
    <message>
        <source>Enter the load first</source>
        <translation>Gib erst die Last ein</translation>
    </message>
    <message>
        <source>Replay the last recording</source>
        <translation>Letzte Aufnahme abspielen</translation>
    </message>
    <message>
        <source>No sensor to start</source>
        <translation>Kein Sensor zum Beginnen</translation>
    </message>
    <message>
        <source>Jumps go by contact and flight</source>
        <translation>Sprünge gehen nach Kontakt und Flug</translation>
    </message>
    <message>
        <source>No sensor on the bar</source>
        <translation>Kein Sensor an der Stange</translation>
    </message>
    <message>
        <source>The sensor was lost</source>
        <translation>Der Sensor ist weg</translation>
    </message>
    <message>
        <source>Waiting for the first repetition</source>
        <translation>Warten auf die erste Wiederholung</translation>
    </message>
    <message>
        <source>Ready when you are</source>
        <translation>Bereit, wenn du es bist</translation>
    </message>
    <message>
        <source>Enter contact and flight of each jump under Track, Jumps. Type the set in here when it is done.</source>
        <translation>Gib Kontakt und Flug jedes Sprungs unter Bahn, Sprünge ein. Den Satz tippst du hier ein, wenn er fertig ist.</translation>
    </message>
    <message>
        <source>Type the set in, or watch the last recording of this lift again. The plan works without a sensor, too.</source>
        <translation>Tippe den Satz ein oder sieh dir die letzte Aufnahme dieser Übung an. Der Plan geht auch ohne Sensor.</translation>
    </message>
    <message>
        <source>Type the set in when it is done: load and repetitions are enough. The plan works without a sensor, too.</source>
        <translation>Tippe den Satz ein, wenn er fertig ist: Last und Wiederholungen genügen. Der Plan geht auch ohne Sensor.</translation>
    </message>
    <message>
        <source>It is looked for. Repetitions seen so far are kept.</source>
        <translation>Er wird gesucht. Bisher erkannte Wiederholungen bleiben erhalten.</translation>
    </message>
    <message>
        <source>Stand still for a moment, then lift with full intent: the set begins by itself, and ends when the bar has rested for 15 s. Check the load first.</source>
        <translation>Steh kurz still, dann hebe mit voller Absicht: Der Satz beginnt von selbst und endet, wenn die Stange 15 s geruht hat. Prüfe erst die Last.</translation>
    </message>
    <message>
        <source>Stand still for a moment, then lift with full intent. Each repetition is announced as it ends.</source>
        <translation>Steh kurz still, dann hebe mit voller Absicht. Jede Wiederholung wird angesagt, sobald sie endet.</translation>
    </message>
    <message>
        <source>m/s, %1</source>
        <translation>m/s, %1</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::CalibrationViewModel</name>
    <message>
        <source>The sides do not fit together. Start over, and lay it quite flat each time.</source>
        <translation>Die Seiten passen nicht zusammen. Beginne von vorn und lege ihn jedes Mal ganz flach hin.</translation>
    </message>
    <message>
        <source>%1 of 6 sides</source>
        <translation>%1 von 6 Seiten</translation>
    </message>
    <message>
        <source>All six sides are measured.</source>
        <translation>Alle sechs Seiten sind gemessen.</translation>
    </message>
    <message>
        <source>Lay it down on any side, and let go.</source>
        <translation>Lege ihn auf eine Seite und lass los.</translation>
    </message>
    <message>
        <source>Hands off: it is being measured.</source>
        <translation>Hände weg: Es wird gemessen.</translation>
    </message>
    <message>
        <source>Taken. Now another side.</source>
        <translation>Erfasst. Jetzt eine andere Seite.</translation>
    </message>
    <message>
        <source>This side is taken. Lay it on another.</source>
        <translation>Diese Seite ist erfasst. Lege ihn auf eine andere.</translation>
    </message>
    <message>
        <source>It lies slanted: lay it flat.</source>
        <translation>Er liegt schräg: Lege ihn flach hin.</translation>
    </message>
    <message>
        <source>%1 m/s²</source>
        <translation>%1 m/s²</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::DidItWorkViewModel</name>
    <message>
        <source>Not judged</source>
        <translation>Nicht beurteilt</translation>
    </message>
    <message>
        <source>Not enough yet</source>
        <translation>Noch nicht genug</translation>
    </message>
    <message>
        <source>Not shown</source>
        <translation>Nicht gezeigt</translation>
    </message>
    <message>
        <source>They moved together</source>
        <translation>Sie gingen miteinander</translation>
    </message>
    <message>
        <source>For it to speak: begin each lift with its probe set, and time a sprint in each week, always in the same way: distance, run-in, start, timing, surface and shoes, wind within 1 m/s.</source>
        <translation>Damit es etwas sagen kann: Beginne jede Übung mit dem Probesatz, und stoppe jede Woche einen Sprint, immer auf gleiche Art: Strecke, Anlauf, Start, Zeitnahme, Belag und Schuhe, Wind innerhalb 1 m/s.</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>weniger als %1</translation>
    </message>
    <message>
        <source>Chance alone gives as much in %1 of 100 turned seasons; up to %2 it counts as moved together.</source>
        <translation>Zufall allein bringt so viel in %1 von 100 gedrehten Saisons; bis %2 gilt es als gemeinsam bewegt.</translation>
    </message>
    <message>
        <source>Same week</source>
        <translation>Gleiche Woche</translation>
    </message>
    <message>
        <source>1 week later</source>
        <translation>1 Woche später</translation>
    </message>
    <message>
        <source>%1 weeks later</source>
        <translation>%1 Wochen später</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>weeks with both; rungs: %1, needed %2</source>
        <translation>Wochen mit beidem; Sprossen: %1, nötig %2</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>%1 weeks with both, %2 rungs</source>
        <translation>%1 Wochen mit beidem, %2 Sprossen</translation>
    </message>
    <message>
        <source>, chance reaches %1</source>
        <translation>, Zufall erreicht %1</translation>
    </message>
    <message>
        <source>This is no proof of cause.</source>
        <translation>Das ist kein Beweis einer Ursache.</translation>
    </message>
    <message>
        <source>What is compared: how much quicker than that stay&apos;s own line the bar reached peak velocity, in the weeks of each stay on a rung; and how much better than the season&apos;s own line the sprints in the same conditions were, in the same week and one to four weeks later.

Why no plain correlation is shown: time to peak velocity falls because the plan shortens the range, and sprint times fall because summer comes. As they are, the two always go together, whether the lifts did anything or not. So both trends are taken out first.

How it is judged: the weeks of the bar are cut into three blocks, and each is turned round on itself in all combinations. Chance is the share of these turned seasons in which the strongest of all five lags is as strong as yours.

What it cannot see: in simulated seasons with a realistic relation it spoke in 6 of 100, with a very large one in 76. Not shown does not mean not there. And that two things move together does not say that one made the other: sleep, school or weather can move both.</source>
        <translation>Was verglichen wird: um wie viel schneller als die eigene Linie jedes Aufenthalts die Stange ihre Höchstgeschwindigkeit erreichte, in den Wochen jedes Aufenthalts auf einer Sprosse; und um wie viel besser als die eigene Linie der Saison die Sprints unter gleichen Bedingungen waren, in derselben Woche und eine bis vier Wochen später.

Warum keine einfache Korrelation gezeigt wird: Die Zeit bis zur Höchstgeschwindigkeit fällt, weil der Plan den Weg verkürzt, und Sprintzeiten fallen, weil der Sommer kommt. So gehen beide immer zusammen, ob die Übungen etwas bewirkten oder nicht. Darum werden beide Trends zuerst herausgenommen.

Wie geurteilt wird: Die Wochen der Stange werden in drei Blöcke geschnitten, und jeder wird in allen Kombinationen in sich gedreht. Zufall ist der Anteil dieser gedrehten Saisons, in denen die stärkste aller fünf Verschiebungen so stark ist wie deine.

Was es nicht sehen kann: In simulierten Saisons mit einem realistischen Zusammenhang sprach es in 6 von 100, mit einem sehr großen in 76. Nicht gezeigt heißt nicht, dass nichts da ist. Und dass zwei Dinge zusammengehen, sagt nicht, dass eines das andere machte: Schlaf, Schule oder Wetter können beide bewegen.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::DoneSetsViewModel</name>
    <message>
        <source>probe set</source>
        <translation>Probesatz</translation>
    </message>
    <message>
        <source>warm-up</source>
        <translation>Aufwärmen</translation>
    </message>
    <message>
        <source>maintenance set</source>
        <translation>Erhaltungssatz</translation>
    </message>
    <message>
        <source>work set</source>
        <translation>Arbeitssatz</translation>
    </message>
    <message>
        <source>1 set done today</source>
        <translation>1 Satz heute fertig</translation>
    </message>
    <message>
        <source>%1 sets done today</source>
        <translation>%1 Sätze heute fertig</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1 Wiederholung</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1 Wiederholungen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>nothing measured</source>
        <translation>nichts gemessen</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>two peaks</source>
        <translation>zwei Gipfel</translation>
    </message>
    <message>
        <source>short of its range</source>
        <translation>zu kurzer Weg</translation>
    </message>
    <message>
        <source>struck out</source>
        <translation>gestrichen</translation>
    </message>
    <message>
        <source>no evidence</source>
        <translation>kein Beleg</translation>
    </message>
    <message>
        <source>Repetition %1</source>
        <translation>Wiederholung %1</translation>
    </message>
    <message>
        <source>Measured. What you say here is kept beside the recording.</source>
        <translation>Gemessen. Was du hier sagst, wird neben der Aufnahme festgehalten.</translation>
    </message>
    <message>
        <source>Typed in.</source>
        <translation>Getippt.</translation>
    </message>
    <message>
        <source>Drop time</source>
        <translation>Fallzeit</translation>
    </message>
    <message>
        <source>Time to peak velocity</source>
        <translation>Zeit bis zur Höchstgeschwindigkeit</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::FindSensorsViewModel</name>
    <message>
        <source>%1 of %2 shown: the others have another name.</source>
        <translation>%1 von %2 gezeigt: Die anderen heißen anders.</translation>
    </message>
    <message>
        <source>Searching</source>
        <translation>Es wird gesucht</translation>
    </message>
    <message>
        <source>%1 found, still searching</source>
        <translation>%1 gefunden, Suche läuft</translation>
    </message>
    <message>
        <source>%1 found</source>
        <translation>%1 gefunden</translation>
    </message>
    <message>
        <source>Fits what it sends</source>
        <translation>Passt zu dem, was er sendet</translation>
    </message>
    <message>
        <source>May fit</source>
        <translation>Könnte passen</translation>
    </message>
    <message>
        <source>Does not fit what it offers</source>
        <translation>Passt nicht zu dem, was er bietet</translation>
    </message>
    <message>
        <source>Connecting. Keep it near, lying still.</source>
        <translation>Verbinden. Lass ihn nah und still liegen.</translation>
    </message>
    <message>
        <source>It sends. Finding how to read it.</source>
        <translation>Er sendet. Es wird gesucht, wie man ihn liest.</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Gelesen als: %1</translation>
    </message>
    <message>
        <source>It sends nothing by itself. Choose how it is read, if you know it; shake it awake and try again, if not.</source>
        <translation>Von selbst sendet er nichts. Wähle, wie er gelesen wird, wenn du es weißt; sonst schüttle ihn wach und versuche es noch einmal.</translation>
    </message>
    <message>
        <source>It sends, but nothing here can read it yet. Teach it: three minutes, no tools.</source>
        <translation>Er sendet, aber noch nichts hier kann ihn lesen. Lerne ihn ein: drei Minuten, kein Werkzeug.</translation>
    </message>
    <message>
        <source>Give it a name, such as &quot;Bar sensor&quot;.</source>
        <translation>Gib ihm einen Namen, etwa „Stangensensor“.</translation>
    </message>
    <message>
        <source>%1 letters are enough.</source>
        <translation>%1 Buchstaben genügen.</translation>
    </message>
    <message>
        <source>Another sensor has that name.</source>
        <translation>Ein anderer Sensor heißt schon so.</translation>
    </message>
    <message>
        <source>Choose first how it is read.</source>
        <translation>Wähle zuerst, wie er gelesen wird.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::Help</name>
    <message>
        <source>What is this: %1?</source>
        <translation>Was ist das: %1?</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::ImportViewModel</name>
    <message>
        <source>Not in the squad: left out. Tap to choose.</source>
        <translation>Nicht in der Gruppe: ausgelassen. Zum Wählen tippen.</translation>
    </message>
    <message>
        <source>Will be added to the squad</source>
        <translation>Wird in die Gruppe aufgenommen</translation>
    </message>
    <message>
        <source>Rows without a name</source>
        <translation>Zeilen ohne Namen</translation>
    </message>
    <message>
        <source>Not known: left out. Tap to choose.</source>
        <translation>Unbekannt: ausgelassen. Zum Wählen tippen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>Line %1, %2</source>
        <translation>Zeile %1, %2</translation>
    </message>
    <message>
        <source>And %1 more</source>
        <translation>Und %1 weitere</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Point, 1.85</source>
        <translation>Punkt, 1.85</translation>
    </message>
    <message>
        <source>Comma, 1,85</source>
        <translation>Komma, 1,85</translation>
    </message>
    <message>
        <source>Days are written</source>
        <translation>Tage sind geschrieben</translation>
    </message>
    <message>
        <source>Day, month</source>
        <translation>Tag, Monat</translation>
    </message>
    <message>
        <source>Month, day</source>
        <translation>Monat, Tag</translation>
    </message>
    <message>
        <source>Loads are in</source>
        <translation>Lasten sind in</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>One row is</source>
        <translation>Eine Zeile ist</translation>
    </message>
    <message>
        <source>A run</source>
        <translation>Ein Lauf</translation>
    </message>
    <message>
        <source>A split</source>
        <translation>Ein Abschnitt</translation>
    </message>
    <message>
        <source>Times count</source>
        <translation>Zeiten zählen</translation>
    </message>
    <message>
        <source>From the start</source>
        <translation>Ab dem Start</translation>
    </message>
    <message>
        <source>From the gate before</source>
        <translation>Ab der Schranke davor</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Stehend</translation>
    </message>
    <message>
        <source>Falling</source>
        <translation>Fallend</translation>
    </message>
    <message>
        <source>Rolling</source>
        <translation>Rollend</translation>
    </message>
    <message>
        <source>Flying</source>
        <translation>Fliegend</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>Gestoppt mit</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Hand</translation>
    </message>
    <message>
        <source>Gates</source>
        <translation>Schranken</translation>
    </message>
    <message>
        <source>Video</source>
        <translation>Video</translation>
    </message>
    <message>
        <source>Electronic</source>
        <translation>Elektronisch</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>Add to the squad</source>
        <translation>In die Gruppe aufnehmen</translation>
    </message>
    <message>
        <source>Who is this?</source>
        <translation>Wer ist das?</translation>
    </message>
    <message>
        <source>Which lift is this?</source>
        <translation>Welche Übung ist das?</translation>
    </message>
    <message>
        <source>Stopped. Nothing was added.</source>
        <translation>Angehalten. Nichts wurde übernommen.</translation>
    </message>
    <message>
        <source>Read as the last file of this kind was.</source>
        <translation>Gelesen wie die letzte Datei dieser Art.</translation>
    </message>
    <message>
        <source>1 is there already</source>
        <translation>1 ist schon da</translation>
    </message>
    <message>
        <source>%1 are there already</source>
        <translation>%1 sind schon da</translation>
    </message>
    <message>
        <source>1 is left out</source>
        <translation>1 wird ausgelassen</translation>
    </message>
    <message>
        <source>%1 are left out</source>
        <translation>%1 werden ausgelassen</translation>
    </message>
    <message>
        <source>1 bad row</source>
        <translation>1 fehlerhafte Zeile</translation>
    </message>
    <message>
        <source>%1 bad rows</source>
        <translation>%1 fehlerhafte Zeilen</translation>
    </message>
    <message>
        <source>Counting</source>
        <translation>Es wird gezählt</translation>
    </message>
    <message>
        <source>Answer the question first</source>
        <translation>Beantworte zuerst die Frage</translation>
    </message>
    <message>
        <source>Nothing to add</source>
        <translation>Nichts zu übernehmen</translation>
    </message>
    <message>
        <source>Add 1 set</source>
        <translation>1 Satz übernehmen</translation>
    </message>
    <message>
        <source>Add %1 sets</source>
        <translation>%1 Sätze übernehmen</translation>
    </message>
    <message>
        <source>Add 1 run</source>
        <translation>1 Lauf übernehmen</translation>
    </message>
    <message>
        <source>Add %1 runs</source>
        <translation>%1 Läufe übernehmen</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Es wird gelesen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>There is no such day. Type it like %1.</source>
        <translation>Diesen Tag gibt es nicht. Schreib ihn wie %1.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::JumpEntry</name>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>RSI %1</source>
        <translation>RSI %1</translation>
    </message>
    <message>
        <source>contact %1</source>
        <translation>Kontakt %1</translation>
    </message>
    <message>
        <source>flight %1</source>
        <translation>Flug %1</translation>
    </message>
    <message>
        <source>Type the flight time, or the height.</source>
        <translation>Gib die Flugzeit oder die Höhe ein.</translation>
    </message>
    <message>
        <source>That day has not come yet.</source>
        <translation>Dieser Tag ist noch nicht gekommen.</translation>
    </message>
    <message>
        <source>Save these first.</source>
        <translation>Speichere zuerst diese.</translation>
    </message>
    <message>
        <source>Best %1, mean %2</source>
        <translation>Best %1, Mittel %2</translation>
    </message>
    <message>
        <source>At most %1 contacts in a session and %2 in seven days. Under 18: at most %3, from at most %4. Heavier than %5: no box above %6.</source>
        <translation>Höchstens %1 Kontakte je Einheit und %2 in sieben Tagen. Unter 18: höchstens %3, von höchstens %4. Schwerer als %5: kein Kasten über %6.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::LadderViewModel</name>
    <message>
        <source>planned for %1</source>
        <translation>geplant ab %1</translation>
    </message>
    <message>
        <source>since %1, you stand here</source>
        <translation>seit %1 stehst du hier</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 ladder</source>
        <translation>Leiter %1</translation>
    </message>
    <message>
        <source>week %1 of %2</source>
        <translation>Woche %1 von %2</translation>
    </message>
    <message>
        <source>the main competition is over</source>
        <translation>der Hauptwettkampf ist vorbei</translation>
    </message>
    <message>
        <source>the main competition is today</source>
        <translation>der Hauptwettkampf ist heute</translation>
    </message>
    <message>
        <source>1 day to the main competition</source>
        <translation>1 Tag bis zum Hauptwettkampf</translation>
    </message>
    <message>
        <source>%1 days to the main competition</source>
        <translation>%1 Tage bis zum Hauptwettkampf</translation>
    </message>
    <message>
        <source>%1 weeks to the main competition</source>
        <translation>%1 Wochen bis zum Hauptwettkampf</translation>
    </message>
    <message>
        <source>Step to %1 today</source>
        <translation>Heute weiter zu %1</translation>
    </message>
    <message>
        <source>Hold at %1 today</source>
        <translation>Heute bei %1 bleiben</translation>
    </message>
    <message>
        <source>Step back to %1 today</source>
        <translation>Heute zurück zu %1</translation>
    </message>
    <message>
        <source>Ease %1 today</source>
        <translation>Heute %1 erleichtern</translation>
    </message>
    <message>
        <source>Rest from %1 today</source>
        <translation>Heute Pause von %1</translation>
    </message>
    <message>
        <source>Next step: week %1, at the latest week %2</source>
        <translation>Nächste Stufe: Woche %1, spätestens Woche %2</translation>
    </message>
    <message>
        <source>Next step: week %1</source>
        <translation>Nächste Stufe: Woche %1</translation>
    </message>
    <message>
        <source>Choose what you will do.</source>
        <translation>Wähle, was du tun wirst.</translation>
    </message>
    <message>
        <source>Say why, in a few words.</source>
        <translation>Sag mit wenigen Worten, warum.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::LiftTrendViewModel</name>
    <message>
        <source>Both sides</source>
        <translation>Beide Seiten</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 on %3, the first on this rung here.</source>
        <translation>%1: %2 am %3, das erste hier auf dieser Sprosse.</translation>
    </message>
    <message>
        <source>%1: %2 on %3, from %4 on %5.</source>
        <translation>%1: %2 am %3, von %4 am %5.</translation>
    </message>
    <message>
        <source>Nothing measured on this ladder since %1.</source>
        <translation>Auf dieser Leiter seit %1 nichts gemessen.</translation>
    </message>
    <message>
        <source>Nothing measured of this side.</source>
        <translation>Auf dieser Seite nichts gemessen.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::LoadVelocityViewModel</name>
    <message>
        <source>%1: load and velocity</source>
        <translation>%1: Last und Geschwindigkeit</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Both sides</source>
        <translation>Beide Seiten</translation>
    </message>
    <message>
        <source>Estimated 1RM %1</source>
        <translation>Geschätztes 1RM %1</translation>
    </message>
    <message>
        <source>Estimated 1RM %1 (95 %: %2 to %3)</source>
        <translation>Geschätztes 1RM %1 (95 %: %2 bis %3)</translation>
    </message>
    <message>
        <source>From 1 session</source>
        <translation>Aus 1 Einheit</translation>
    </message>
    <message>
        <source>From %1 sessions</source>
        <translation>Aus %1 Einheiten</translation>
    </message>
    <message>
        <source>%1 of this season on this rung, the fastest repetition at each load: %2 points.</source>
        <translation>%1 dieser Saison auf dieser Sprosse, die schnellste Wiederholung jeder Last: %2 Punkte.</translation>
    </message>
    <message>
        <source>%1 No velocity at 1RM is published for this lift, so the line points to no 1RM.</source>
        <translation>%1 Für diese Übung ist keine Geschwindigkeit beim 1RM veröffentlicht, also zeigt die Linie auf kein 1RM.</translation>
    </message>
    <message>
        <source>%1 1RM is where the line meets %2 (%3). An estimate is an estimate.</source>
        <translation>%1 Das 1RM liegt, wo die Linie %2 trifft (%3). Eine Schätzung bleibt eine Schätzung.</translation>
    </message>
    <message>
        <source>No line yet: %1.</source>
        <translation>Noch keine Linie: %1.</translation>
    </message>
    <message>
        <source>Nothing measured on this rung yet. With a sensor at the warm-up loads: %1.</source>
        <translation>Auf dieser Sprosse noch nichts gemessen. Mit Sensor bei den Aufwärmlasten: %1.</translation>
    </message>
    <message>
        <source>%1, %2, %3.</source>
        <translation>%1, %2, %3.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::OwnLadderViewModel</name>
    <message>
        <source>A ladder needs a rung.</source>
        <translation>Eine Leiter braucht eine Sprosse.</translation>
    </message>
    <message>
        <source>Training has been done on this rung. It stays.</source>
        <translation>Auf dieser Sprosse wurde trainiert. Sie bleibt.</translation>
    </message>
    <message>
        <source>Give the ladder a name.</source>
        <translation>Gib der Leiter einen Namen.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::PlateEntry</name>
    <message>
        <source>The bar alone, %1.</source>
        <translation>Die leere Stange, %1.</translation>
    </message>
    <message>
        <source>Each side %1. Bar %2.</source>
        <translation>Je Seite %1. Stange %2.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::Preferences</name>
    <message>
        <source>As the device</source>
        <translation>Wie das Gerät</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::RunFitViewModel</name>
    <message>
        <source>competition</source>
        <translation>Wettkampf</translation>
    </message>
    <message>
        <source>test day</source>
        <translation>Testtag</translation>
    </message>
    <message>
        <source>wind %1 m/s</source>
        <translation>Wind %1 m/s</translation>
    </message>
    <message>
        <source>run-in %1</source>
        <translation>Anlauf %1</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>%1 m above the sea</source>
        <translation>%1 m über dem Meer</translation>
    </message>
    <message>
        <source>Ground contact near top speed %1, ± 4 ms from video</source>
        <translation>Bodenkontakt nahe Höchsttempo %1, ± 4 ms aus Video</translation>
    </message>
    <message>
        <source>Step length near top speed %1</source>
        <translation>Schrittlänge nahe Höchsttempo %1</translation>
    </message>
    <message>
        <source>Without splits a run has one time and no curve. Three to five splits, the first within 10 m and the last at 30 m or further, give top speed and acceleration.</source>
        <translation>Ohne Zwischenzeiten hat ein Lauf eine Zeit und keine Kurve. Drei bis fünf Zwischenzeiten, die erste bis 10 m, die letzte bei 30 m oder weiter, geben Höchsttempo und Beschleunigung.</translation>
    </message>
    <message>
        <source>No answer was found. %1</source>
        <translation>Es wurde keine Lösung gefunden. %1</translation>
    </message>
    <message>
        <source>No fit. %1</source>
        <translation>Keine Kurve. %1</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>error not known</source>
        <translation>Fehler nicht bekannt</translation>
    </message>
    <message>
        <source>Top speed</source>
        <translation>Höchsttempo</translation>
    </message>
    <message>
        <source>Time constant τ: the shorter, the quicker it is reached</source>
        <translation>Zeitkonstante τ: je kürzer, desto schneller ist es erreicht</translation>
    </message>
    <message>
        <source>Acceleration at the start</source>
        <translation>Beschleunigung am Start</translation>
    </message>
    <message>
        <source>%1 m/s²</source>
        <translation>%1 m/s²</translation>
    </message>
    <message>
        <source>First movement after the clock began (fitted)</source>
        <translation>Erste Bewegung nach Beginn der Uhr (geschätzt)</translation>
    </message>
    <message>
        <source>Splits lie from the fit by</source>
        <translation>Zwischenzeiten liegen von der Kurve um</translation>
    </message>
    <message>
        <source>root mean square</source>
        <translation>quadratisches Mittel</translation>
    </message>
    <message>
        <source>Flying speed</source>
        <translation>Fliegendes Tempo</translation>
    </message>
    <message>
        <source>Of the best so far</source>
        <translation>Vom Besten bisher</translation>
    </message>
    <message>
        <source>this is the best</source>
        <translation>das ist das Beste</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>Greatest force F0</source>
        <translation>Größte Kraft F0</translation>
    </message>
    <message>
        <source>%1 N/kg</source>
        <translation>%1 N/kg</translation>
    </message>
    <message>
        <source>%1 N</source>
        <translation>%1 N</translation>
    </message>
    <message>
        <source>Greatest power</source>
        <translation>Größte Leistung</translation>
    </message>
    <message>
        <source>%1 W/kg</source>
        <translation>%1 W/kg</translation>
    </message>
    <message>
        <source>%1 W</source>
        <translation>%1 W</translation>
    </message>
    <message>
        <source>Speed at which force ends, v0</source>
        <translation>Tempo, bei dem die Kraft endet, v0</translation>
    </message>
    <message>
        <source>Greatest share of force forwards</source>
        <translation>Größter Kraftanteil nach vorn</translation>
    </message>
    <message>
        <source>from 0.3 s on</source>
        <translation>ab 0,3 s</translation>
    </message>
    <message>
        <source>Its loss with speed (DRF)</source>
        <translation>Sein Verlust mit dem Tempo (DRF)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>for each m/s</source>
        <translation>je m/s</translation>
    </message>
    <message>
        <source>Force and power are not available: a flying start shows no acceleration.</source>
        <translation>Kraft und Leistung gibt es nicht: Ein fliegender Start zeigt keine Beschleunigung.</translation>
    </message>
    <message>
        <source>Force and power are not available: %1.</source>
        <translation>Kraft und Leistung gibt es nicht: %1.</translation>
    </message>
    <message>
        <source>20 °C</source>
        <translation>20 °C</translation>
    </message>
    <message>
        <source>the height of the sea</source>
        <translation>Meereshöhe</translation>
    </message>
    <message>
        <source>still air</source>
        <translation>Windstille</translation>
    </message>
    <message>
        <source>For %1, from the fit and the drag of the air.</source>
        <translation>Für %1, aus der Kurve und dem Luftwiderstand.</translation>
    </message>
    <message>
        <source> Not typed, and taken as: %1.</source>
        <translation> Nicht eingegeben und angenommen: %1.</translation>
    </message>
    <message>
        <source>The clock began with the gun, the reaction of %1 s is known.</source>
        <translation>Die Uhr begann mit dem Schuss, die Reaktion von %1 s ist bekannt.</translation>
    </message>
    <message>
        <source>The clock is taken to begin with the first movement. If it began at a beam, type the way to it.</source>
        <translation>Die Uhr begann wohl mit der ersten Bewegung. Begann sie an einer Schranke, gib den Weg bis dorthin ein.</translation>
    </message>
    <message>
        <source>The clock began at a beam %1 in front of the start.</source>
        <translation>Die Uhr begann an einer Schranke %1 vor dem Start.</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>When the clock began is not known against the first movement, so it was fitted too.</source>
        <translation>Wann die Uhr gegenüber der ersten Bewegung begann, ist nicht bekannt; es wurde mit geschätzt.</translation>
    </message>
    <message>
        <source>The best top speed so far from this start.</source>
        <translation>Das beste Höchsttempo bisher von diesem Start.</translation>
    </message>
    <message>
        <source>The first fit of this start: later ones are compared with it.</source>
        <translation>Die erste Kurve von diesem Start: Spätere werden mit ihr verglichen.</translation>
    </message>
    <message>
        <source>Best top speed from this start: %1 on %2.</source>
        <translation>Bestes Höchsttempo von diesem Start: %1 am %2.</translation>
    </message>
    <message>
        <source>the run before</source>
        <translation>den Lauf davor</translation>
    </message>
    <message>
        <source>the median of the last %1</source>
        <translation>den Median der letzten %1</translation>
    </message>
    <message>
        <source>%1 m/s against %2 (%3).</source>
        <translation>%1 m/s gegen %2 (%3).</translation>
    </message>
    <message>
        <source>That is more than timing explains (%1). Days differ too: what lasts counts.</source>
        <translation>Das ist mehr, als die Zeitnahme erklärt (%1). Auch Tage sind verschieden: Was bleibt, zählt.</translation>
    </message>
    <message>
        <source>Timing explains it (%1): no change is shown.</source>
        <translation>Die Zeitnahme erklärt es (%1): Eine Änderung ist nicht gezeigt.</translation>
    </message>
    <message>
        <source>%1 to %2: %3 on average. At %4 s the split is %5 the curve.</source>
        <translation>%1 bis %2: im Mittel %3. Bei %4 s liegt die Zwischenzeit %5 die Kurve.</translation>
    </message>
    <message>
        <source>%1 later than</source>
        <translation>%1 später als</translation>
    </message>
    <message>
        <source>%1 sooner than</source>
        <translation>%1 früher als</translation>
    </message>
    <message>
        <source>It is left out: %1.</source>
        <translation>Sie ist ausgelassen: %1.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SeasonLiftsViewModel</name>
    <message>
        <source>%1 × %2 · %3</source>
        <translation>%1 × %2 · %3</translation>
    </message>
    <message>
        <source>%1 rungs, from %2 to %3</source>
        <translation>%1 Sprossen, von %2 bis %3</translation>
    </message>
    <message>
        <source>rung %1 of %2: %3</source>
        <translation>Sprosse %1 von %2: %3</translation>
    </message>
    <message>
        <source>A session holds %1 of them; they take turns. A few that stay all season bring more than many.</source>
        <translation>Eine Einheit fasst %1 davon; sie wechseln sich ab. Wenige, die die ganze Saison bleiben, bringen mehr als viele.</translation>
    </message>
    <message>
        <source>A session holds %1 of them.</source>
        <translation>Eine Einheit fasst %1 davon.</translation>
    </message>
    <message>
        <source>%1 is out of the season. Its sets stay in the log.</source>
        <translation>%1 ist nicht mehr in der Saison. Die Sätze bleiben im Protokoll.</translation>
    </message>
    <message>
        <source>%1 is in the season from today on.</source>
        <translation>%1 ist ab heute in der Saison.</translation>
    </message>
    <message>
        <source>The order of the ladders is changed.</source>
        <translation>Die Reihenfolge der Leitern ist geändert.</translation>
    </message>
    <message>
        <source>%1, own</source>
        <translation>%1, eigene</translation>
    </message>
    <message>
        <source>%1 is changed.</source>
        <translation>%1 ist geändert.</translation>
    </message>
    <message>
        <source>%1 is deleted. Its sets stay in the log.</source>
        <translation>%1 ist gelöscht. Die Sätze bleiben im Protokoll.</translation>
    </message>
    <message>
        <source>Choose at least one day.</source>
        <translation>Wähle mindestens einen Tag.</translation>
    </message>
    <message>
        <source>%1 is added.</source>
        <translation>%1 ist hinzugefügt.</translation>
    </message>
    <message>
        <source>%1 is taken out of the plan.</source>
        <translation>%1 ist aus dem Plan genommen.</translation>
    </message>
    <message>
        <source>Nothing the sensor knows</source>
        <translation>Nichts, was der Sensor kennt</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SeasonViewModel</name>
    <message>
        <source>Travel</source>
        <translation>Reise</translation>
    </message>
    <message>
        <source>Exams</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>Krankheit</translation>
    </message>
    <message>
        <source>Injury</source>
        <translation>Verletzung</translation>
    </message>
    <message>
        <source>priority %1</source>
        <translation>Wichtigkeit %1</translation>
    </message>
    <message>
        <source>main</source>
        <translation>Haupt</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>in %1 days</source>
        <translation>in %1 Tagen</translation>
    </message>
    <message>
        <source>in %1 weeks</source>
        <translation>in %1 Wochen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 to %2 · %3</source>
        <translation>%1 bis %2 · %3</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>A: volume falls over the two weeks before it, intensity stays.</source>
        <translation>A: In den zwei Wochen davor sinkt der Umfang, die Intensität bleibt.</translation>
    </message>
    <message>
        <source>B: a little less volume over the four days before it.</source>
        <translation>B: In den vier Tagen davor etwas weniger Umfang.</translation>
    </message>
    <message>
        <source>C: trained through, with two lighter days before it.</source>
        <translation>C: durchtrainiert, mit zwei leichteren Tagen davor.</translation>
    </message>
    <message>
        <source>Give it a name.</source>
        <translation>Gib ihm einen Namen.</translation>
    </message>
    <message>
        <source>Nothing else in the plan moves.</source>
        <translation>Sonst ändert sich im Plan nichts.</translation>
    </message>
    <message>
        <source>%1 is added.</source>
        <translation>%1 ist hinzugefügt.</translation>
    </message>
    <message>
        <source>%1 is changed.</source>
        <translation>%1 ist geändert.</translation>
    </message>
    <message>
        <source>%1 is deleted.</source>
        <translation>%1 ist gelöscht.</translation>
    </message>
    <message>
        <source>No lifts on these days.</source>
        <translation>An diesen Tagen keine Übungen.</translation>
    </message>
    <message>
        <source>Training goes on, with less of it.</source>
        <translation>Das Training geht weiter, mit weniger davon.</translation>
    </message>
    <message>
        <source>No lifts. Come back only when you are well; the plan steps back after a long break.</source>
        <translation>Keine Übungen. Komm erst zurück, wenn du gesund bist; nach einer langen Pause geht der Plan zurück.</translation>
    </message>
    <message>
        <source>Lifts that load the injured place rest. See a clinician; this is not medical advice.</source>
        <translation>Übungen, die die verletzte Stelle belasten, ruhen. Geh zum Arzt; dies ist kein ärztlicher Rat.</translation>
    </message>
    <message>
        <source>%1 is in the plan.</source>
        <translation>%1 ist im Plan.</translation>
    </message>
    <message>
        <source>%1 is taken out of the plan.</source>
        <translation>%1 ist aus dem Plan genommen.</translation>
    </message>
    <message>
        <source>Type the height of a box, in %1.</source>
        <translation>Gib die Höhe eines Kastens ein, in %1.</translation>
    </message>
    <message>
        <source>This box is there already.</source>
        <translation>Diesen Kasten gibt es schon.</translation>
    </message>
    <message>
        <source>The box of %1 is added.</source>
        <translation>Der Kasten mit %1 ist hinzugefügt.</translation>
    </message>
    <message>
        <source>The box of %1 is gone.</source>
        <translation>Der Kasten mit %1 ist weg.</translation>
    </message>
    <message>
        <source>The days with lifts are changed.</source>
        <translation>Die Tage mit Übungen sind geändert.</translation>
    </message>
    <message>
        <source>The days with sprints are changed.</source>
        <translation>Die Tage mit Sprints sind geändert.</translation>
    </message>
    <message>
        <source>What the weight room has is changed.</source>
        <translation>Was der Kraftraum hat, ist geändert.</translation>
    </message>
    <message>
        <source>The length of a session is changed.</source>
        <translation>Die Dauer einer Einheit ist geändert.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SensorDesk</name>
    <message>
        <source>The sensor is lost. It goes on when it is back.</source>
        <translation>Der Sensor ist weg. Es geht weiter, wenn er wieder da ist.</translation>
    </message>
    <message>
        <source>It is called %1.</source>
        <translation>Er heißt %1.</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Gelesen als: %1</translation>
    </message>
    <message>
        <source>The six sides are saved.</source>
        <translation>Die sechs Seiten sind gespeichert.</translation>
    </message>
    <message>
        <source>%1 is saved. It is found by itself from now on.</source>
        <translation>%1 ist gespeichert. Ab jetzt wird er von selbst gefunden.</translation>
    </message>
    <message>
        <source>%1 is kept.</source>
        <translation>%1 ist behalten.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SensorsViewModel</name>
    <message>
        <source>Choose how it is read</source>
        <translation>Wähle, wie er gelesen wird</translation>
    </message>
    <message>
        <source>Ask again</source>
        <translation>Noch einmal fragen</translation>
    </message>
    <message>
        <source>Try now</source>
        <translation>Jetzt versuchen</translation>
    </message>
    <message>
        <source>None yet. One is added in two minutes, and found by itself from then on.</source>
        <translation>Noch keiner. In zwei Minuten ist einer da und wird danach von selbst gefunden.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Measured. Do it again after a fall, or each season.</source>
        <translation>Gemessen. Wiederhole es nach einem Sturz oder jede Saison.</translation>
    </message>
    <message>
        <source>Not measured yet: two minutes, and speeds get truer.</source>
        <translation>Noch nicht gemessen: zwei Minuten, und die Geschwindigkeiten werden genauer.</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Firmware</source>
        <translation>Firmware</translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation>Hardware</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Adresse</translation>
    </message>
    <message>
        <source>Yours</source>
        <translation>Deine</translation>
    </message>
    <message>
        <source>Comes with the program</source>
        <translation>Kommt mit dem Programm</translation>
    </message>
    <message>
        <source>Give it a name, such as &quot;Bar sensor&quot;.</source>
        <translation>Gib ihm einen Namen, etwa „Stangensensor“.</translation>
    </message>
    <message>
        <source>%1 letters are enough.</source>
        <translation>%1 Buchstaben genügen.</translation>
    </message>
    <message>
        <source>Another sensor has that name.</source>
        <translation>Ein anderer Sensor heißt schon so.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SplitEntry</name>
    <message>
        <source>A distance from the start line, up to 400 m.</source>
        <translation>Eine Strecke ab der Startlinie, bis 400 m.</translation>
    </message>
    <message>
        <source>It must lie beyond the last split.</source>
        <translation>Sie muss hinter der letzten Zwischenzeit liegen.</translation>
    </message>
    <message>
        <source>It lies beyond the run.</source>
        <translation>Sie liegt hinter dem Lauf.</translation>
    </message>
    <message>
        <source>Press the digits of the watch.</source>
        <translation>Drücke die Ziffern der Uhr.</translation>
    </message>
    <message>
        <source>It must be later than the last split.</source>
        <translation>Sie muss nach der letzten Zwischenzeit liegen.</translation>
    </message>
    <message>
        <source>That is faster than 15 m/s. Check distance and time.</source>
        <translation>Das ist schneller als 15 m/s. Prüfe Strecke und Zeit.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>Counted from the start line, as the watch shows them.</source>
        <translation>Gezählt ab der Startlinie, wie die Uhr sie zeigt.</translation>
    </message>
    <message>
        <source>None: with five, top speed and acceleration can be seen</source>
        <translation>Keine: Mit fünf sieht man Höchsttempo und Beschleunigung</translation>
    </message>
    <message>
        <source>%1 splits, the last %2</source>
        <translation>%1 Zwischenzeiten, die letzte %2</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SprintTrendViewModel</name>
    <message>
        <source>Without hand timing</source>
        <translation>Ohne Handzeiten</translation>
    </message>
    <message>
        <source>Wind ±2 m/s</source>
        <translation>Wind ±2 m/s</translation>
    </message>
    <message>
        <source>%1 (wind %2 m/s)</source>
        <translation>%1 (Wind %2 m/s)</translation>
    </message>
    <message>
        <source>Best %1 on %2, latest %3 on %4.</source>
        <translation>Best %1 am %2, zuletzt %3 am %4.</translation>
    </message>
    <message>
        <source>%1 of %2 runs are shown.</source>
        <translation>%1 von %2 Läufen sind gezeigt.</translation>
    </message>
    <message>
        <source>%1 Outdoors a run without a wind reading is left out.</source>
        <translation>%1 Im Freien wird ein Lauf ohne Windmessung ausgelassen.</translation>
    </message>
    <message>
        <source>No run of this test since %1.</source>
        <translation>Seit %1 kein Lauf dieses Tests.</translation>
    </message>
    <message>
        <source>The filters leave out every run of this test.</source>
        <translation>Die Filter lassen jeden Lauf dieses Tests aus.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SquadDayViewModel</name>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Durchgang %1</translation>
    </message>
    <message>
        <source>No rack: %1</source>
        <translation>Ohne Gestell: %1</translation>
    </message>
    <message>
        <source>Rack %1: %2</source>
        <translation>Gestell %1: %2</translation>
    </message>
    <message>
        <source>no lifts today</source>
        <translation>heute keine Übungen</translation>
    </message>
    <message>
        <source>1 athlete lifts today</source>
        <translation>1 hebt heute</translation>
    </message>
    <message>
        <source>%1 athletes lift today</source>
        <translation>%1 heben heute</translation>
    </message>
    <message>
        <source>Nobody has lifts today. Each athlete&apos;s next session stands on Ladder.</source>
        <translation>Heute hat niemand Übungen. Die nächste Einheit steht bei jedem auf der Leiter.</translation>
    </message>
    <message>
        <source>The plans are being read.</source>
        <translation>Die Pläne werden gelesen.</translation>
    </message>
    <message>
        <source>1 rack</source>
        <translation>1 Gestell</translation>
    </message>
    <message>
        <source>%1 racks</source>
        <translation>%1 Gestelle</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SquadViewModel</name>
    <message>
        <source>%1 years</source>
        <translation>%1 Jahre</translation>
    </message>
    <message>
        <source>group %1</source>
        <translation>Gruppe %1</translation>
    </message>
    <message>
        <source>1 athlete</source>
        <translation>1 Person</translation>
    </message>
    <message>
        <source>%1 athletes</source>
        <translation>%1 Personen</translation>
    </message>
    <message>
        <source>Check the year.</source>
        <translation>Prüfe das Jahr.</translation>
    </message>
    <message>
        <source>Under 18, a guardian&apos;s consent is needed first.</source>
        <translation>Unter 18 braucht es zuerst die Zustimmung der Sorgeberechtigten.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::StepViewModel</name>
    <message>
        <source>Step</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Bleiben</translation>
    </message>
    <message>
        <source>Step back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Ease</source>
        <translation>Erleichtern</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>You follow this.</source>
        <translation>Du folgst.</translation>
    </message>
    <message>
        <source>You decided otherwise: %1. %2</source>
        <translation>Du hast anders entschieden: %1. %2</translation>
    </message>
    <message>
        <source> ± %1</source>
        <translation> ± %1</translation>
    </message>
    <message>
        <source>planned for %1, week %2</source>
        <translation>geplant ab %1, Woche %2</translation>
    </message>
    <message>
        <source>since %1, week %2</source>
        <translation>seit %1, Woche %2</translation>
    </message>
    <message>
        <source>%1 to %2, from week %3</source>
        <translation>%1 bis %2, ab Woche %3</translation>
    </message>
    <message>
        <source>Phase: %1</source>
        <translation>Phase: %1</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>First planned for %1: %2 later</source>
        <translation>Zuerst geplant für %1: %2 später</translation>
    </message>
    <message>
        <source>First planned for %1: %2 sooner</source>
        <translation>Zuerst geplant für %1: %2 früher</translation>
    </message>
    <message>
        <source>Earliest: %1</source>
        <translation>Frühestens: %1</translation>
    </message>
    <message>
        <source>At the latest: %1</source>
        <translation>Spätestens: %1</translation>
    </message>
    <message>
        <source>1 session of evidence</source>
        <translation>1 Einheit mit Belegen</translation>
    </message>
    <message>
        <source>%1 sessions of evidence</source>
        <translation>%1 Einheiten mit Belegen</translation>
    </message>
    <message>
        <source>Probe load %1</source>
        <translation>Probelast %1</translation>
    </message>
    <message>
        <source>Probe load %1, later %2</source>
        <translation>Probelast %1, später %2</translation>
    </message>
    <message>
        <source>The ladder began here</source>
        <translation>Hier begann die Leiter</translation>
    </message>
    <message>
        <source>The plan&apos;s first rung on this ladder: no evidence is needed to begin.</source>
        <translation>Die erste Sprosse des Plans auf dieser Leiter: Zum Beginnen braucht es keinen Beleg.</translation>
    </message>
    <message>
        <source>The rungs before it come first; what it needs is known once you stand on the one before.</source>
        <translation>Die Sprossen davor kommen zuerst; was sie braucht, weiß man, sobald du auf der davor stehst.</translation>
    </message>
    <message>
        <source>Nothing is measured on the rung before it yet. Each session&apos;s probe set counts.</source>
        <translation>Auf der Sprosse davor ist noch nichts gemessen. Der Probesatz jeder Einheit zählt.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>No number is missing.</source>
        <translation>Es fehlt keine Zahl.</translation>
    </message>
    <message>
        <source>Still missing: %1</source>
        <translation>Noch fehlt: %1</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TeachViewModel</name>
    <message>
        <source>Acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>Turning</source>
        <translation>Drehung</translation>
    </message>
    <message>
        <source>Counting of samples</source>
        <translation>Zählung der Werte</translation>
    </message>
    <message>
        <source>Its own time</source>
        <translation>Seine eigene Zeit</translation>
    </message>
    <message>
        <source>Samples in a second</source>
        <translation>Werte je Sekunde</translation>
    </message>
    <message>
        <source>Form of its messages</source>
        <translation>Form seiner Nachrichten</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sicher</translation>
    </message>
    <message>
        <source>fairly sure</source>
        <translation>ziemlich sicher</translation>
    </message>
    <message>
        <source>not sure</source>
        <translation>nicht sicher</translation>
    </message>
    <message>
        <source>Nothing came from the sensor. Shake it awake, then do this step again.</source>
        <translation>Vom Sensor kam nichts. Schüttle ihn wach und mach diesen Schritt noch einmal.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>Von %1 bis %2.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Give it a name, to know it by later.</source>
        <translation>Gib ihm einen Namen, um ihn später zu kennen.</translation>
    </message>
    <message>
        <source>%1 letters are enough.</source>
        <translation>%1 Buchstaben genügen.</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>Lay it flat, main side up.</source>
        <translation>Lege ihn flach hin, Hauptseite oben.</translation>
    </message>
    <message>
        <source>Turn it over, main side down.</source>
        <translation>Dreh ihn um, Hauptseite unten.</translation>
    </message>
    <message>
        <source>Stand it on a long edge.</source>
        <translation>Stelle ihn auf eine lange Kante.</translation>
    </message>
    <message>
        <source>Stand it on the other long edge.</source>
        <translation>Stelle ihn auf die andere lange Kante.</translation>
    </message>
    <message>
        <source>Stand it on a short end.</source>
        <translation>Stelle ihn auf ein kurzes Ende.</translation>
    </message>
    <message>
        <source>Stand it on the other short end.</source>
        <translation>Stelle ihn auf das andere kurze Ende.</translation>
    </message>
    <message>
        <source>Main side up: turn it once to the left.</source>
        <translation>Hauptseite oben: Dreh ihn einmal links herum.</translation>
    </message>
    <message>
        <source>On a long edge: turn it once to the left.</source>
        <translation>Auf einer langen Kante: Dreh ihn einmal links herum.</translation>
    </message>
    <message>
        <source>On a short end: turn it once to the left.</source>
        <translation>Auf einem kurzen Ende: Dreh ihn einmal links herum.</translation>
    </message>
    <message>
        <source>Raise it straight up by %1, and hold it there.</source>
        <translation>Hebe ihn gerade um %1 an und halte ihn dort.</translation>
    </message>
    <message>
        <source>Back down, then raise it by %1 once more.</source>
        <translation>Wieder hinunter, dann noch einmal um %1 anheben.</translation>
    </message>
    <message>
        <source>The main side has the button or the lamp. It has neither? Pick a side and stay with it.</source>
        <translation>Auf der Hauptseite ist der Knopf oder das Licht. Beides fehlt? Nimm eine Seite und bleib dabei.</translation>
    </message>
    <message>
        <source>Lean it on something if it will not stand. Then hands off.</source>
        <translation>Lehne ihn an, wenn er nicht steht. Dann Hände weg.</translation>
    </message>
    <message>
        <source>From the floor to the top of a box or bench. Start and end still.</source>
        <translation>Vom Boden auf die Höhe eines Kastens oder einer Bank. Beginne und ende still.</translation>
    </message>
    <message>
        <source>All the way round on the table, as the arrow shows. Start and end still.</source>
        <translation>Ganz herum auf dem Tisch, wie der Pfeil zeigt. Beginne und ende still.</translation>
    </message>
    <message>
        <source>How high will you raise it? (%1)</source>
        <translation>Wie hoch wirst du ihn heben? (%1)</translation>
    </message>
    <message>
        <source>Keep it still</source>
        <translation>Halte ihn still</translation>
    </message>
    <message>
        <source>Hold it still</source>
        <translation>Still halten</translation>
    </message>
    <message>
        <source>Hold it still again</source>
        <translation>Noch einmal still halten</translation>
    </message>
    <message>
        <source>Now raise it</source>
        <translation>Jetzt anheben</translation>
    </message>
    <message>
        <source>Now turn it once</source>
        <translation>Jetzt einmal drehen</translation>
    </message>
    <message>
        <source>It cannot be read yet</source>
        <translation>Er ist noch nicht lesbar</translation>
    </message>
    <message>
        <source>Learned</source>
        <translation>Gelernt</translation>
    </message>
    <message>
        <source>Learned, but check it</source>
        <translation>Gelernt, aber prüfe es</translation>
    </message>
    <message>
        <source>%1 % sure of the whole. Lift once and look whether the height is right.</source>
        <translation>%1 % sicher im Ganzen. Hebe einmal und sieh nach, ob die Höhe stimmt.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TrackViewModel</name>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>box %1</source>
        <translation>Kasten %1</translation>
    </message>
    <message>
        <source>test day</source>
        <translation>Testtag</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>number and kind of jumps</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>contact %1</source>
        <translation>Kontakt %1</translation>
    </message>
    <message>
        <source>flight %1</source>
        <translation>Flug %1</translation>
    </message>
    <message>
        <source>height %1</source>
        <translation>Höhe %1</translation>
    </message>
    <message>
        <source>jumps: %1</source>
        <translation>Sprünge: %1</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>zuletzt %1</translation>
    </message>
    <message>
        <source>Box %1</source>
        <translation>Kasten %1</translation>
    </message>
    <message>
        <source>RSI %1</source>
        <translation>RSI %1</translation>
    </message>
    <message>
        <source>Nobody to time yet</source>
        <translation>Noch niemand zu stoppen</translation>
    </message>
    <message>
        <source>No jumps yet</source>
        <translation>Noch keine Sprünge</translation>
    </message>
    <message>
        <source>No runs yet</source>
        <translation>Noch keine Läufe</translation>
    </message>
    <message>
        <source>Add an athlete on Squad. Runs and jumps are kept for each athlete apart.</source>
        <translation>Füge unter Gruppe jemanden hinzu. Läufe und Sprünge werden für jeden getrennt aufbewahrt.</translation>
    </message>
    <message>
        <source>Type in drop jumps with contact and flight time, or a standing long jump. On the same day, under the same conditions, they tell whether strength arrives in time.</source>
        <translation>Gib Tiefsprünge mit Kontakt- und Flugzeit ein oder einen Standweitsprung. Am selben Tag, unter gleichen Bedingungen, sagen sie, ob Kraft rechtzeitig ankommt.</translation>
    </message>
    <message>
        <source>The stopwatch says whether the plan works. Repeat the same test every three to four weeks: same zone, same run-in, same shoes, and write the wind beside it.</source>
        <translation>Die Stoppuhr sagt, ob der Plan wirkt. Wiederhole alle drei bis vier Wochen denselben Test: gleiche Zone, gleicher Anlauf, gleiche Schuhe, und schreibe den Wind dazu.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TrackWorkViewModel</name>
    <message>
        <source>best %1</source>
        <translation>Best %1</translation>
    </message>
    <message>
        <source>effort %1 of 10</source>
        <translation>Anstrengung %1 von 10</translation>
    </message>
    <message>
        <source>sled %1</source>
        <translation>Schlitten %1</translation>
    </message>
    <message>
        <source>slope %1 %</source>
        <translation>Steigung %1 %</translation>
    </message>
    <message>
        <source>rest %1 min</source>
        <translation>Pause %1 min</translation>
    </message>
    <message>
        <source>wind %1</source>
        <translation>Wind %1</translation>
    </message>
    <message>
        <source>fast: about %1 m</source>
        <translation>schnell: etwa %1 m</translation>
    </message>
    <message>
        <source>fast: %1 m</source>
        <translation>schnell: %1 m</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>runs and metres of one</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>fast: about %1 m, of them %2 m at 95 %</source>
        <translation>schnell: etwa %1 m, davon %2 m mit 95 %</translation>
    </message>
    <message>
        <source>fast: %1 m, of them %2 m at 95 %</source>
        <translation>schnell: %1 m, davon %2 m mit 95 %</translation>
    </message>
    <message>
        <source>resisted %1 m</source>
        <translation>Widerstand %1 m</translation>
    </message>
    <message>
        <source>hill %1 m</source>
        <translation>Berg %1 m</translation>
    </message>
    <message>
        <source>contacts of jumps: %1</source>
        <translation>Sprungkontakte: %1</translation>
    </message>
    <message>
        <source>%1 more fast metres than the mean of the four weeks before</source>
        <translation>%1 mehr schnelle Meter als im Mittel der vier Wochen davor</translation>
    </message>
    <message>
        <source>%1 more metres than the mean of the four weeks before</source>
        <translation>%1 mehr Meter als im Mittel der vier Wochen davor</translation>
    </message>
    <message>
        <source>This week</source>
        <translation>Diese Woche</translation>
    </message>
    <message>
        <source>Week of %1</source>
        <translation>Woche vom %1</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TrendsViewModel</name>
    <message>
        <source>This season</source>
        <translation>Diese Saison</translation>
    </message>
    <message>
        <source>Last %1 weeks</source>
        <translation>Letzte %1 Wochen</translation>
    </message>
    <message>
        <source>All seasons</source>
        <translation>Alle Saisons</translation>
    </message>
    <message>
        <source>Weeks are counted from %1.</source>
        <translation>Wochen zählen ab %1.</translation>
    </message>
</context>
</TS>
