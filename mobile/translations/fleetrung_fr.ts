<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>ArchiveSheet</name>
    <message>
        <source>Archive</source>
        <translation>Archives</translation>
    </message>
    <message>
        <source>Everything they did is kept. An athlete who comes back goes on where they were.</source>
        <translation>Tout ce qui a été fait est gardé. Un athlète qui revient reprend là où il en était.</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Réintégrer</translation>
    </message>
    <message>
        <source>Bring back %1</source>
        <translation>Réintégrer %1</translation>
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
        <translation>affiché sur toutes les pages</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>Modifier %1</translation>
    </message>
</context>
<context>
    <name>AthleteSheet</name>
    <message>
        <source>Add an athlete</source>
        <translation>Ajouter un athlète</translation>
    </message>
    <message>
        <source>Edit the athlete</source>
        <translation>Modifier l&apos;athlète</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Body mass, %1 (optional)</source>
        <translation>Poids du corps, %1 (facultatif)</translation>
    </message>
    <message>
        <source>Stature, %1 (optional)</source>
        <translation>Taille, %1 (facultatif)</translation>
    </message>
    <message>
        <source>Years of regular lifting (optional)</source>
        <translation>Années de musculation régulière (facultatif)</translation>
    </message>
    <message>
        <source>Event (optional)</source>
        <translation>Discipline (facultatif)</translation>
    </message>
    <message>
        <source>200 m, long jump</source>
        <translation>200 m, saut en longueur</translation>
    </message>
    <message>
        <source>Training group (optional)</source>
        <translation>Groupe d&apos;entraînement (facultatif)</translation>
    </message>
    <message>
        <source>sprint 2</source>
        <translation>sprint 2</translation>
    </message>
    <message>
        <source>Under 18: has a guardian agreed?</source>
        <translation>Moins de 18 ans : un responsable légal a-t-il donné son accord ?</translation>
    </message>
    <message>
        <source>No, or not needed</source>
        <translation>Non, ou pas nécessaire</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>Move to the archive</source>
        <translation>Archiver</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Born, like %1</source>
        <translation>Né(e) le, p. ex. %1</translation>
    </message>
</context>
<context>
    <name>BarWords</name>
    <message>
        <source>Lighter than the bar of %1: a lighter bar, or dumbbells.</source>
        <translation>Plus léger que la barre de %1 : une barre plus légère, ou des haltères.</translation>
    </message>
    <message>
        <source>The bar alone, %1.</source>
        <translation>La barre seule, %1.</translation>
    </message>
    <message>
        <source>Each side %1. Bar %2.</source>
        <translation>De chaque côté %1. Barre %2.</translation>
    </message>
    <message>
        <source>Nearest with whole plates: %1. %2</source>
        <translation>Au plus près avec des disques entiers : %1. %2</translation>
    </message>
    <message>
        <source>More than ten possible repetitions say too little of 1RM.</source>
        <translation>Plus de dix répétitions possibles disent trop peu du 1RM.</translation>
    </message>
    <message>
        <source>1RM %1.</source>
        <translation>1RM %1.</translation>
    </message>
    <message>
        <source>1RM about %1; by seven formulas %2 to %3.</source>
        <translation>1RM environ %1 ; selon sept formules, %2 à %3.</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1 répétition</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1 répétitions</translation>
    </message>
    <message>
        <source>%1 of 1RM</source>
        <translation>%1 du 1RM</translation>
    </message>
    <message>
        <source>many left</source>
        <translation>il en reste beaucoup</translation>
    </message>
    <message>
        <source>about %1 left (%2 to %3)</source>
        <translation>il en reste environ %1 (%2 à %3)</translation>
    </message>
</context>
<context>
    <name>BestsSheet</name>
    <message>
        <source>Personal bests</source>
        <translation>Records personnels</translation>
    </message>
    <message>
        <source>More than 2.0 m/s of wind behind a competition makes its time wind-aided: it is no best. A time by hand is one only where there is no other.</source>
        <translation>Plus de 2,0 m/s de vent dans le dos en compétition : le temps est dit avec vent favorable et ne compte pas comme record. Un temps manuel n&apos;en est un que s&apos;il n&apos;y en a pas d&apos;autre.</translation>
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
        <translation>Jours d&apos;absence</translation>
    </message>
    <message>
        <source>Change the days away</source>
        <translation>Modifier les jours d&apos;absence</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Pourquoi ?</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>Voyage</translation>
    </message>
    <message>
        <source>Exams</source>
        <translation>Examens</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>Maladie</translation>
    </message>
    <message>
        <source>Injury</source>
        <translation>Blessure</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>Où ?</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Premier jour</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Dernier jour</translation>
    </message>
    <message>
        <source>Take these days out of the plan</source>
        <translation>Retirer ces jours du plan</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
</context>
<context>
    <name>BottomBar</name>
    <message>
        <source>Bench</source>
        <translation>Banc</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Échelle</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Piste</translation>
    </message>
    <message>
        <source>Trends</source>
        <translation>Tendances</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation>Groupe</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Sections</translation>
    </message>
</context>
<context>
    <name>BoxCard</name>
    <message>
        <source>Drop jumps by box</source>
        <translation>Sauts en contrebas par caisse</translation>
    </message>
    <message>
        <source>best reactive strength within the contact limit</source>
        <translation>meilleure force réactive dans la limite de contact</translation>
    </message>
    <message>
        <source>Contact is longer than 250 ms: a lower box.</source>
        <translation>Le contact dépasse 250 ms : une caisse plus basse.</translation>
    </message>
    <message>
        <source>Medians of the last day on each box. Go up 10 cm while contact stays short, no heel strikes the ground and RSI does not fall. Heels are not kept with a typed jump: watch them.</source>
        <translation>Médianes du dernier jour sur chaque caisse. Monte de 10 cm tant que le contact reste court, qu&apos;aucun talon ne frappe le sol et que le RSI ne baisse pas. Les talons ne sont pas notés pour un saut saisi à la main : surveille-les.</translation>
    </message>
</context>
<context>
    <name>CalibrationSheet</name>
    <message>
        <source>Six sides</source>
        <translation>Six faces</translation>
    </message>
    <message>
        <source>Lay it on each side, in any order, on something hard and level. Wait for the tick.</source>
        <translation>Pose-le sur chaque face, dans n&apos;importe quel ordre, sur du dur et plat. Attends la coche.</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>how far gravity was off at worst</source>
        <translation>le plus grand écart de la pesanteur</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Maintenant</translation>
    </message>
    <message>
        <source>with the six sides measured</source>
        <translation>avec les six faces mesurées</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Start over</source>
        <translation>Recommencer</translation>
    </message>
</context>
<context>
    <name>CautionsSheet</name>
    <message>
        <source>This is not medical advice. Work with a licensed coach or clinician; local rules and facility codes come first.</source>
        <translation>Ceci n&apos;est pas un avis médical. Travaille avec un entraîneur ou un médecin diplômé ; les règles locales et celles de l&apos;établissement priment.</translation>
    </message>
    <message>
        <source>Pain, an injury or pregnancy: ask a clinician before you train by this plan.</source>
        <translation>Douleur, blessure ou grossesse : demande à un médecin avant de suivre ce plan.</translation>
    </message>
    <message>
        <source>Under 18: only with a guardian&apos;s consent and a clearance.</source>
        <translation>Moins de 18 ans : seulement avec l&apos;accord d&apos;un responsable légal et un feu vert médical.</translation>
    </message>
    <message>
        <source>Heavy lifts over a short range carry more load than you are used to: safety bars set, and a spotter.</source>
        <translation>Les exercices lourds à courte amplitude portent plus de charge que celle dont tu as l&apos;habitude : barres de sécurité réglées, et un pareur.</translation>
    </message>
    <message>
        <source>Drop jumps: few contacts, days between, and none when you are sore.</source>
        <translation>Sauts en contrebas : peu de contacts, des jours entre, et aucun avec des courbatures.</translation>
    </message>
    <message>
        <source>An estimated one-repetition maximum is an estimate. Never load it to see whether it is right.</source>
        <translation>Un 1RM estimé est une estimation. Ne le charge jamais pour voir s&apos;il est juste.</translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation>Avant de commencer</translation>
    </message>
    <message>
        <source>That shorter ranges carry over better to sprinting is the working premise of this program. There is evidence on both sides; your own stopwatch decides.</source>
        <translation>Que les amplitudes courtes se transfèrent mieux au sprint est l&apos;hypothèse de travail de ce programme. Il y a des preuves dans les deux sens ; ton chronomètre décide.</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>J&apos;ai lu ceci</translation>
    </message>
</context>
<context>
    <name>CheckCard</name>
    <message>
        <source>Take it lighter today</source>
        <translation>Plus léger aujourd&apos;hui</translation>
    </message>
    <message>
        <source>If not: why?</source>
        <translation>Sinon : pourquoi ?</translation>
    </message>
    <message>
        <source>bar slipped in the warm-up</source>
        <translation>la barre a glissé à l&apos;échauffement</translation>
    </message>
    <message>
        <source>Keep the plan</source>
        <translation>Garder le plan</translation>
    </message>
</context>
<context>
    <name>CompetitionSheet</name>
    <message>
        <source>A new competition</source>
        <translation>Une nouvelle compétition</translation>
    </message>
    <message>
        <source>Change the competition</source>
        <translation>Modifier la compétition</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>club championship</source>
        <translation>championnat du club</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Priority</source>
        <translation>Priorité</translation>
    </message>
    <message>
        <source>The season is counted back from it</source>
        <translation>La saison se compte à rebours depuis elle</translation>
    </message>
    <message>
        <source>Main competition</source>
        <translation>Compétition principale</translation>
    </message>
    <message>
        <source>Delete this competition</source>
        <translation>Supprimer cette compétition</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
</context>
<context>
    <name>ConsequencesCard</name>
    <message>
        <source>What this does to the plan</source>
        <translation>Effet sur le plan</translation>
    </message>
</context>
<context>
    <name>CutOffCard</name>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Jeter</translation>
    </message>
</context>
<context>
    <name>DayChooser</name>
    <message>
        <source>a week sooner</source>
        <translation>une semaine plus tôt</translation>
    </message>
    <message>
        <source>− week</source>
        <translation>− semaine</translation>
    </message>
    <message>
        <source>a day sooner</source>
        <translation>un jour plus tôt</translation>
    </message>
    <message>
        <source>− day</source>
        <translation>− jour</translation>
    </message>
    <message>
        <source>a day later</source>
        <translation>un jour plus tard</translation>
    </message>
    <message>
        <source>+ day</source>
        <translation>+ jour</translation>
    </message>
    <message>
        <source>a week later</source>
        <translation>une semaine plus tard</translation>
    </message>
    <message>
        <source>+ week</source>
        <translation>+ semaine</translation>
    </message>
    <message>
        <source>The month before</source>
        <translation>Le mois d&apos;avant</translation>
    </message>
    <message>
        <source>The month after</source>
        <translation>Le mois d&apos;après</translation>
    </message>
    <message>
        <source>%1, today</source>
        <translation>%1, aujourd&apos;hui</translation>
    </message>
</context>
<context>
    <name>DecideSheet</name>
    <message>
        <source>Decide otherwise</source>
        <translation>Décider autrement</translation>
    </message>
    <message>
        <source>Your decision counts. It is kept with the evidence and your reason, so that the season can be read later.</source>
        <translation>Ta décision compte. Elle est gardée avec les preuves et ta raison, pour relire la saison plus tard.</translation>
    </message>
    <message>
        <source>What will you do?</source>
        <translation>Que vas-tu faire ?</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Pourquoi ?</translation>
    </message>
    <message>
        <source>for example: knee is sore, competition moved</source>
        <translation>par exemple : genou sensible, compétition déplacée</translation>
    </message>
    <message>
        <source>Keep this decision</source>
        <translation>Garder cette décision</translation>
    </message>
</context>
<context>
    <name>DemoStrip</name>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Quitter</translation>
    </message>
    <message>
        <source>Cancel making the demo squad</source>
        <translation>Annuler la création du groupe de démonstration</translation>
    </message>
    <message>
        <source>Leave the demo squad and remove it</source>
        <translation>Quitter le groupe de démonstration et le supprimer</translation>
    </message>
</context>
<context>
    <name>DeviceCard</name>
    <message>
        <source>This device</source>
        <translation>Cet appareil</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Séparateur décimal</translation>
    </message>
    <message>
        <source>As the language</source>
        <translation>Comme la langue</translation>
    </message>
    <message>
        <source>Point, 1.85</source>
        <translation>Point, 1.85</translation>
    </message>
    <message>
        <source>Comma, 1,85</source>
        <translation>Virgule, 1,85</translation>
    </message>
    <message>
        <source>Weeks of the calendar begin on</source>
        <translation>Les semaines du calendrier commencent le</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>Lundi</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>Dimanche</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Charges</translation>
    </message>
    <message>
        <source>Kilograms</source>
        <translation>Kilogrammes</translation>
    </message>
    <message>
        <source>Pounds</source>
        <translation>Livres</translation>
    </message>
    <message>
        <source>The bar</source>
        <translation>La barre</translation>
    </message>
    <message>
        <source>Ranges and boxes</source>
        <translation>Amplitudes et caisses</translation>
    </message>
    <message>
        <source>Centimetres</source>
        <translation>Centimètres</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Pouces</translation>
    </message>
    <message>
        <source>Sound on Bench</source>
        <translation>Son sur Banc</translation>
    </message>
    <message>
        <source>Silent</source>
        <translation>Muet</translation>
    </message>
    <message>
        <source>Tones</source>
        <translation>Bips</translation>
    </message>
    <message>
        <source>Voice</source>
        <translation>Voix</translation>
    </message>
    <message>
        <source>Shakes in the hand, where the device can</source>
        <translation>Vibre dans la main, si l&apos;appareil le peut</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>Sets begin when the bar moves, and end when it has rested for 15 s</source>
        <translation>Les séries commencent quand la barre bouge et finissent quand elle est restée immobile 15 s</translation>
    </message>
    <message>
        <source>Light or dark</source>
        <translation>Clair ou sombre</translation>
    </message>
    <message>
        <source>As the device</source>
        <translation>Comme l&apos;appareil</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Sombre</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Clair</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Taille du texte</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>Normale</translation>
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
        <translation>Cela a-t-il marché ?</translation>
    </message>
    <message>
        <source>How this is judged</source>
        <translation>Comment on juge</translation>
    </message>
</context>
<context>
    <name>DoneSetSheet</name>
    <message>
        <source>Load, %1</source>
        <translation>Charge, %1</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Répétitions</translation>
    </message>
    <message>
        <source>Kind of set</source>
        <translation>Type de série</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>Témoin</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Échauffement</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>Entretien</translation>
    </message>
    <message>
        <source>Effort, 1 easy to 10 all out (optional)</source>
        <translation>Effort, 1 facile à 10 à fond (facultatif)</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Rétablir</translation>
    </message>
    <message>
        <source>Strike out</source>
        <translation>Rayer</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>No evidence</source>
        <translation>Pas une preuve</translation>
    </message>
    <message>
        <source>Is evidence</source>
        <translation>Compte comme preuve</translation>
    </message>
    <message>
        <source>Was left</source>
        <translation>C&apos;était la gauche</translation>
    </message>
    <message>
        <source>Was right</source>
        <translation>C&apos;était la droite</translation>
    </message>
    <message>
        <source>One repetition is missing</source>
        <translation>Il manque une répétition</translation>
    </message>
    <message>
        <source>It is counted as done. Velocity and time only if you measured them otherwise.</source>
        <translation>Elle compte comme faite. Vitesse et temps seulement si tu les as mesurés autrement.</translation>
    </message>
    <message>
        <source>Velocity, m/s (if measured)</source>
        <translation>Vitesse, m/s (si mesurée)</translation>
    </message>
    <message>
        <source>%1, ms (if measured)</source>
        <translation>%1, ms (si mesuré)</translation>
    </message>
    <message>
        <source>Add the repetition</source>
        <translation>Ajouter la répétition</translation>
    </message>
    <message>
        <source>Delete this set</source>
        <translation>Supprimer cette série</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
</context>
<context>
    <name>DoneSetsSheet</name>
    <message>
        <source>Sets done today</source>
        <translation>Séries faites aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Nothing yet. Each set stands here once it is done, to be looked at and put right.</source>
        <translation>Rien encore. Chaque série apparaît ici une fois faite, pour être revue et corrigée.</translation>
    </message>
</context>
<context>
    <name>EngineWords</name>
    <message>
        <source>Squat</source>
        <translation>Squat</translation>
    </message>
    <message>
        <source>Step-up</source>
        <translation>Montée sur caisse</translation>
    </message>
    <message>
        <source>Clean</source>
        <translation>Épaulé</translation>
    </message>
    <message>
        <source>Hinge</source>
        <translation>Charnière de hanche</translation>
    </message>
    <message>
        <source>Pull</source>
        <translation>Tirage</translation>
    </message>
    <message>
        <source>Drop jump</source>
        <translation>Saut en contrebas</translation>
    </message>
    <message>
        <source>Ankle</source>
        <translation>Cheville</translation>
    </message>
    <message>
        <source>Full squat</source>
        <translation>Squat complet</translation>
    </message>
    <message>
        <source>Parallel squat</source>
        <translation>Squat parallèle</translation>
    </message>
    <message>
        <source>Half squat</source>
        <translation>Demi-squat</translation>
    </message>
    <message>
        <source>Quarter squat</source>
        <translation>Quart de squat</translation>
    </message>
    <message>
        <source>Quarter squat from pins</source>
        <translation>Quart de squat depuis les taquets</translation>
    </message>
    <message>
        <source>Short drop squat</source>
        <translation>Squat à chute courte</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>Complet</translation>
    </message>
    <message>
        <source>Parallel</source>
        <translation>Parallèle</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Demi</translation>
    </message>
    <message>
        <source>Quarter</source>
        <translation>Quart</translation>
    </message>
    <message>
        <source>Quarter from pins</source>
        <translation>Quart depuis les taquets</translation>
    </message>
    <message>
        <source>Short drop</source>
        <translation>Chute courte</translation>
    </message>
    <message>
        <source>Step-up, %1</source>
        <translation>Montée sur caisse, %1</translation>
    </message>
    <message>
        <source>Clean from the floor, caught low</source>
        <translation>Épaulé depuis le sol, réception basse</translation>
    </message>
    <message>
        <source>Power clean from the floor</source>
        <translation>Épaulé en puissance depuis le sol</translation>
    </message>
    <message>
        <source>Power clean from blocks at the knee</source>
        <translation>Épaulé en puissance depuis plots, au genou</translation>
    </message>
    <message>
        <source>Power clean from the hang</source>
        <translation>Épaulé en puissance, en suspension</translation>
    </message>
    <message>
        <source>Power clean from the hang, fast drop</source>
        <translation>Épaulé en puissance, en suspension, chute rapide</translation>
    </message>
    <message>
        <source>Romanian deadlift to mid-shin</source>
        <translation>Soulevé de terre roumain à mi-tibia</translation>
    </message>
    <message>
        <source>Romanian deadlift to the knee</source>
        <translation>Soulevé de terre roumain au genou</translation>
    </message>
    <message>
        <source>Quarter hinge</source>
        <translation>Quart de charnière</translation>
    </message>
    <message>
        <source>Pull from the floor</source>
        <translation>Tirage depuis le sol</translation>
    </message>
    <message>
        <source>Pull from knee blocks</source>
        <translation>Tirage depuis plots, au genou</translation>
    </message>
    <message>
        <source>Pull from mid-thigh blocks</source>
        <translation>Tirage depuis plots, à mi-cuisse</translation>
    </message>
    <message>
        <source>High pull from mid-thigh</source>
        <translation>Tirage haut depuis mi-cuisse</translation>
    </message>
    <message>
        <source>Drop jump, %1, entry</source>
        <translation>Saut en contrebas, %1, entrée</translation>
    </message>
    <message>
        <source>Drop jump, %1, on the way up</source>
        <translation>Saut en contrebas, %1, en montant</translation>
    </message>
    <message>
        <source>Drop jump, %1, on the way down</source>
        <translation>Saut en contrebas, %1, en descendant</translation>
    </message>
    <message>
        <source>Drop jump, %1, quickest contact</source>
        <translation>Saut en contrebas, %1, contact le plus bref</translation>
    </message>
    <message>
        <source>Drop jump, %1</source>
        <translation>Saut en contrebas, %1</translation>
    </message>
    <message>
        <source>Calf raise through full range</source>
        <translation>Extension des mollets complète</translation>
    </message>
    <message>
        <source>Calf raise, upper half</source>
        <translation>Extension des mollets, moitié haute</translation>
    </message>
    <message>
        <source>Loaded ankle hops</source>
        <translation>Sautillements de cheville lestés</translation>
    </message>
    <message>
        <source>general preparation</source>
        <translation>préparation générale</translation>
    </message>
    <message>
        <source>special preparation</source>
        <translation>préparation spécifique</translation>
    </message>
    <message>
        <source>pre-competition</source>
        <translation>pré-compétition</translation>
    </message>
    <message>
        <source>competition</source>
        <translation>compétition</translation>
    </message>
    <message>
        <source>taper</source>
        <translation>affûtage</translation>
    </message>
    <message>
        <source>transition</source>
        <translation>transition</translation>
    </message>
    <message>
        <source>time to peak velocity</source>
        <translation>temps jusqu&apos;à la vitesse maximale</translation>
    </message>
    <message>
        <source>time to peak</source>
        <translation>temps jusqu&apos;au pic</translation>
    </message>
    <message>
        <source>drop time</source>
        <translation>temps de descente</translation>
    </message>
    <message>
        <source>contact time</source>
        <translation>temps de contact</translation>
    </message>
    <message>
        <source>sessions on this rung</source>
        <translation>séances sur cet échelon</translation>
    </message>
    <message>
        <source>days on this rung</source>
        <translation>jours sur cet échelon</translation>
    </message>
    <message>
        <source>days past the latest date</source>
        <translation>jours après la date limite</translation>
    </message>
    <message>
        <source>days until the next rung&apos;s phase</source>
        <translation>jours jusqu&apos;à la phase du prochain échelon</translation>
    </message>
    <message>
        <source>days away from this ladder</source>
        <translation>jours sans cette échelle</translation>
    </message>
    <message>
        <source>days since a heavy ladder stepped</source>
        <translation>jours depuis qu&apos;une échelle lourde a avancé</translation>
    </message>
    <message>
        <source>strength against the first four sessions</source>
        <translation>force face aux quatre premières séances</translation>
    </message>
    <message>
        <source>probe velocity against entry</source>
        <translation>vitesse témoin face à l&apos;entrée</translation>
    </message>
    <message>
        <source>valid repetitions</source>
        <translation>répétitions valides</translation>
    </message>
    <message>
        <source>reactive strength index</source>
        <translation>indice de force réactive</translation>
    </message>
    <message>
        <source>sleep</source>
        <translation>sommeil</translation>
    </message>
    <message>
        <source>pain</source>
        <translation>douleur</translation>
    </message>
    <message>
        <source>%1, gain since entry</source>
        <translation>%1, gain depuis l&apos;entrée</translation>
    </message>
    <message>
        <source>%1, last two sooner than the six before</source>
        <translation>%1, deux dernières plus tôt que les six d&apos;avant</translation>
    </message>
    <message>
        <source>%1, later than before</source>
        <translation>%1, plus tard qu&apos;avant</translation>
    </message>
    <message>
        <source>slower than usual at %1</source>
        <translation>plus lent que d&apos;habitude à %1</translation>
    </message>
    <message>
        <source>days to %1</source>
        <translation>jours avant %1</translation>
    </message>
    <message>
        <source>%1 sessions</source>
        <translation>%1 séances</translation>
    </message>
    <message>
        <source>%1 session</source>
        <translation>%1 séance</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1 jour</translation>
    </message>
    <message>
        <source>%1 of 10</source>
        <translation>%1 sur 10</translation>
    </message>
    <message>
        <source>at least %1, counted as done: strength is up, speed is not</source>
        <translation>au moins %1, compté comme fait : la force monte, pas la vitesse</translation>
    </message>
    <message>
        <source>at least %1 to be seen, for show</source>
        <translation>visible dès %1, pour information</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>above %1, levelled off</source>
        <translation>au-dessus de %1, stabilisée</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>au-dessus de %1</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>plus de %1</translation>
    </message>
    <message>
        <source>%1, for show</source>
        <translation>%1, pour information</translation>
    </message>
    <message>
        <source>On %1 time to peak came down from %2 to %3, more than it wanders by itself, and velocity held: go to %4.</source>
        <translation>Sur %1, le temps jusqu&apos;au pic est passé de %2 à %3, plus qu&apos;il ne varie de lui-même, et la vitesse a tenu : passe à %4.</translation>
    </message>
    <message>
        <source>Stay on this box: %1.</source>
        <translation>Reste sur cette caisse : %1.</translation>
    </message>
    <message>
        <source>Stay on %1: %2.</source>
        <translation>Reste sur %1 : %2.</translation>
    </message>
    <message>
        <source>At the latest the next step comes after %1.</source>
        <translation>Au plus tard, l&apos;étape suivante vient après le %1.</translation>
    </message>
    <message>
        <source>%1 is the last rung: it is kept to the last competition.</source>
        <translation>%1 est le dernier échelon : il est gardé jusqu&apos;à la dernière compétition.</translation>
    </message>
    <message>
        <source>No session on this rung yet.</source>
        <translation>Pas encore de séance sur cet échelon.</translation>
    </message>
    <message>
        <source>Fewer than three sessions with a measured %1 on this rung.</source>
        <translation>Moins de trois séances avec %1 mesuré sur cet échelon.</translation>
    </message>
    <message>
        <source>The time for %1 ended on %2: go to %3.</source>
        <translation>Le temps prévu pour %1 a pris fin le %2 : passe à %3.</translation>
    </message>
    <message>
        <source>No gain is claimed.</source>
        <translation>Aucun gain n&apos;est affirmé.</translation>
    </message>
    <message>
        <source>Contact is quick and the reactive strength index holds: go to %1.</source>
        <translation>Le contact est bref et l&apos;indice de force réactive tient : passe à %1.</translation>
    </message>
    <message>
        <source>Stay here if heels strike.</source>
        <translation>Reste ici si les talons frappent le sol.</translation>
    </message>
    <message>
        <source>The last two sessions came %1 later than the six before: %2 % less load.</source>
        <translation>Aux deux dernières séances, le temps était plus long de %1 qu&apos;aux six d&apos;avant : %2 % de charge en moins.</translation>
    </message>
    <message>
        <source>A very poor night: %1 % fewer sets, no step.</source>
        <translation>Une très mauvaise nuit : %1 % de séries en moins, sans avancer.</translation>
    </message>
    <message>
        <source>You chose not to lift today.</source>
        <translation>Tu as choisi de ne pas soulever aujourd&apos;hui.</translation>
    </message>
    <message>
        <source>The rung waits.</source>
        <translation>L&apos;échelon attend.</translation>
    </message>
    <message>
        <source>See a clinician before you go on.</source>
        <translation>Consulte un médecin avant de continuer.</translation>
    </message>
    <message>
        <source>Pain of %1 of 10 where this lift loads: it rests today, a lift that does not load that place may stand in.</source>
        <translation>Douleur de %1 sur 10 là où cet exercice charge : il est au repos aujourd&apos;hui ; un autre qui ne charge pas cet endroit peut le remplacer.</translation>
    </message>
    <message>
        <source>This day lies outside the season.</source>
        <translation>Ce jour est hors de la saison.</translation>
    </message>
    <message>
        <source>Transition: active rest, no primary lifts.</source>
        <translation>Transition : repos actif, pas d&apos;exercices principaux.</translation>
    </message>
    <message>
        <source>%1 is today: no lifting.</source>
        <translation>%1 a lieu aujourd&apos;hui : pas d&apos;exercices de force.</translation>
    </message>
    <message>
        <source>%1 is in %2: nothing heavy.</source>
        <translation>%1 a lieu dans %2 : rien de lourd.</translation>
    </message>
    <message>
        <source>A light, fast primer of at most %1 repetitions at %2 or less is allowed.</source>
        <translation>Une activation légère et rapide d&apos;au plus %1 répétitions à %2 ou moins est permise.</translation>
    </message>
    <message>
        <source>The step to %1 is ready, but another heavy ladder stepped %2: it waits.</source>
        <translation>Le passage à %1 est prêt, mais une autre échelle lourde a avancé %2 : il attend.</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd&apos;hui</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>%1 days ago</source>
        <translation>il y a %1 jours</translation>
    </message>
    <message>
        <source>%1 more session on this rung</source>
        <translation>encore %1 séance sur cet échelon</translation>
    </message>
    <message>
        <source>%1 more sessions on this rung</source>
        <translation>encore %1 séances sur cet échelon</translation>
    </message>
    <message>
        <source>%1 more day on this rung</source>
        <translation>encore %1 jour sur cet échelon</translation>
    </message>
    <message>
        <source>%1 more days on this rung</source>
        <translation>encore %1 jours sur cet échelon</translation>
    </message>
    <message>
        <source>%1 until the phase in which %2 begins</source>
        <translation>%1 jusqu&apos;à la phase où commence %2</translation>
    </message>
    <message>
        <source>%1 is no sooner than at entry, and only %2 are more than it wanders by itself</source>
        <translation>%1 n&apos;est pas plus court qu&apos;à l&apos;entrée ; il faut plus de %2 pour dépasser sa variation propre</translation>
    </message>
    <message>
        <source>%1 is %2 sooner than at entry, and only %3 are more than it wanders by itself</source>
        <translation>%1 est plus court de %2 qu&apos;à l&apos;entrée ; il faut plus de %3 pour dépasser sa variation propre</translation>
    </message>
    <message>
        <source>strength is down by %1 % on this rung; a maintenance set is added</source>
        <translation>la force a baissé de %1 % sur cet échelon ; une série d&apos;entretien s&apos;ajoute</translation>
    </message>
    <message>
        <source>only %1 % of the last repetitions kept the full range of this rung</source>
        <translation>seulement %1 % des dernières répétitions ont gardé l&apos;amplitude de l&apos;échelon</translation>
    </message>
    <message>
        <source>Find a load of effort 7 of 10 for %1 repetitions; about %2 of it is the probe load for the whole stay.</source>
        <translation>Trouve une charge d&apos;effort 7 sur 10 pour %1 répétitions ; environ %2 de celle-ci est la charge témoin pour tout le séjour.</translation>
    </message>
    <message>
        <source>A low day: no heavy lifts without sprints before them.</source>
        <translation>Un jour léger : pas d&apos;exercices lourds sans sprints avant.</translation>
    </message>
    <message>
        <source>Fleetrung is no medical advice. Work with a licensed coach or clinician; local rules and the facility&apos;s codes come first. Do not train through pain, injury or illness; in pregnancy ask a clinician first.</source>
        <translation>Fleetrung n&apos;est pas un avis médical. Travaille avec un entraîneur ou un médecin diplômé ; les règles locales et celles de l&apos;établissement priment. Ne t&apos;entraîne pas avec une douleur, une blessure ou une maladie ; enceinte, demande d&apos;abord à un médecin.</translation>
    </message>
    <message>
        <source>A guardian must have agreed and a clinician must have cleared you. Somebody qualified watches every session. Load grows by at most 10 %, on at most three days a week that do not follow each other.</source>
        <translation>Un responsable légal doit avoir donné son accord et un médecin son feu vert. Une personne qualifiée surveille chaque séance. La charge croît d&apos;au plus 10 %, au plus trois jours non consécutifs par semaine.</translation>
    </message>
    <message>
        <source>Use safety bars and a spotter. Technique comes before load: stop the set when it breaks.</source>
        <translation>Utilise des barres de sécurité et un pareur. La technique passe avant la charge : arrête la série quand elle se dégrade.</translation>
    </message>
    <message>
        <source>A shorter range lets more weight on your back than you can hold lower down. Set the safety bars just below the lowest point, have a spotter, and stay within the load shown.</source>
        <translation>Une amplitude courte permet de mettre sur le dos plus que ce que tu tiens plus bas. Règle les barres de sécurité juste sous le point le plus bas, prends un pareur et ne dépasse pas la charge indiquée.</translation>
    </message>
    <message>
        <source>Keep the back as it was at the start of the pull. Stop with any pain in the back.</source>
        <translation>Garde le dos comme au début du tirage. Arrête à la moindre douleur au dos.</translation>
    </message>
    <message>
        <source>Land on the front of the foot on a firm, even surface. Stop when heels strike or contact grows long. No more than the contacts shown, two or three days between.</source>
        <translation>Atterris sur l&apos;avant du pied, sur un sol ferme et plat. Arrête quand les talons frappent le sol ou que le contact s&apos;allonge. Pas plus que les contacts indiqués, avec deux ou trois jours entre.</translation>
    </message>
    <message>
        <source>Pain is a reason to stop, not a number to beat. With strong or sharp pain, limping, or new pain in the hamstring see a clinician before you sprint or lift again.</source>
        <translation>La douleur est une raison d&apos;arrêter, pas un nombre à battre. Avec une douleur forte ou vive, une boiterie ou une nouvelle douleur aux ischio-jambiers, consulte un médecin avant de sprinter ou de soulever à nouveau.</translation>
    </message>
    <message>
        <source>A 1RM estimated from repetitions or velocity is an estimate. Do not put it on the bar untested.</source>
        <translation>Un 1RM estimé d&apos;après répétitions ou vitesse est une estimation. Ne le mets pas sur la barre sans l&apos;avoir vérifié.</translation>
    </message>
    <message>
        <source>That strength built through shorter ranges carries over better to sprinting is the working premise, with evidence on both sides (for: Rhea et al. 2016, Human Movement 17(1):43-49; against: Hartmann et al. 2012, J Strength Cond Res 26(12):3243-3261).</source>
        <translation>Que la force des amplitudes courtes se transfère mieux au sprint est l&apos;hypothèse de travail, avec des preuves dans les deux sens (pour : Rhea et al. 2016, Human Movement 17(1):43-49 ; contre : Hartmann et al. 2012, J Strength Cond Res 26(12):3243-3261).</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>suivi</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>prévu</translation>
    </message>
    <message>
        <source>main one</source>
        <translation>principale</translation>
    </message>
    <message>
        <source>probe set</source>
        <translation>série témoin</translation>
    </message>
    <message>
        <source>target band</source>
        <translation>bande cible</translation>
    </message>
    <message>
        <source>a run</source>
        <translation>une course</translation>
    </message>
    <message>
        <source>best of the day</source>
        <translation>meilleur du jour</translation>
    </message>
    <message>
        <source>no evidence</source>
        <translation>pas une preuve</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>courbe</translation>
    </message>
    <message>
        <source>top speed</source>
        <translation>vitesse de pointe</translation>
    </message>
    <message>
        <source>mean speed</source>
        <translation>vitesse moyenne</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>laissé de côté</translation>
    </message>
    <message>
        <source>a split</source>
        <translation>un intermédiaire</translation>
    </message>
    <message>
        <source>usual error</source>
        <translation>erreur habituelle</translation>
    </message>
    <message>
        <source>your line</source>
        <translation>ta droite</translation>
    </message>
    <message>
        <source>the line</source>
        <translation>la droite</translation>
    </message>
    <message>
        <source>fastest at a load</source>
        <translation>plus rapide par charge</translation>
    </message>
    <message>
        <source>fastest repetition of a day</source>
        <translation>répétition la plus rapide du jour</translation>
    </message>
    <message>
        <source>estimated 1RM</source>
        <translation>1RM estimé</translation>
    </message>
    <message>
        <source>chance reaches</source>
        <translation>le hasard atteint</translation>
    </message>
    <message>
        <source>first steps</source>
        <translation>premières foulées</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>week %1</source>
        <translation>semaine %1</translation>
    </message>
    <message>
        <source>Above the line: later than fitted.</source>
        <translation>Au-dessus de la ligne : plus tard que la courbe.</translation>
    </message>
    <message>
        <source>Above zero: quicker bar, quicker sprint that many weeks later. Whiskers: 95 %, for show.</source>
        <translation>Au-dessus de zéro : barre plus rapide, sprint plus rapide tant de semaines après. Moustaches : 95 %, pour information.</translation>
    </message>
    <message>
        <source>Each mark is a repetition, from concentric onset. Sprint contact times are for scale, not a goal.</source>
        <translation>Chaque point est une répétition, depuis le début de la montée. Les temps de contact du sprint servent d&apos;échelle, non de but.</translation>
    </message>
    <message>
        <source>Each mark is a repetition, from concentric onset.</source>
        <translation>Chaque point est une répétition, depuis le début de la montée.</translation>
    </message>
    <message>
        <source>Lower is faster. Beside the best of a day: wind in m/s, tail wind positive.</source>
        <translation>Plus bas est plus rapide. À côté du meilleur du jour : vent en m/s, positif dans le dos.</translation>
    </message>
    <message>
        <source>Lower is faster.</source>
        <translation>Plus bas est plus rapide.</translation>
    </message>
    <message>
        <source>Times of different rungs are not to be compared: a shorter range is quicker anyway.</source>
        <translation>Les temps d&apos;échelons différents ne se comparent pas : une amplitude plus courte est de toute façon plus rapide.</translation>
    </message>
    <message>
        <source>No fit.</source>
        <translation>Pas de courbe.</translation>
    </message>
    <message>
        <source>No measured loads yet.</source>
        <translation>Pas encore de charges mesurées.</translation>
    </message>
    <message>
        <source>No probe sets yet.</source>
        <translation>Pas encore de séries témoins.</translation>
    </message>
    <message>
        <source>No runs yet.</source>
        <translation>Pas encore de courses.</translation>
    </message>
    <message>
        <source>No weeks with both yet.</source>
        <translation>Pas encore de semaines avec les deux.</translation>
    </message>
    <message>
        <source>at least %1 to be seen</source>
        <translation>visible dès %1</translation>
    </message>
    <message>
        <source>Refused by the athlete</source>
        <translation>Refusé par l&apos;athlète</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Douleur</translation>
    </message>
    <message>
        <source>Pain: another lift</source>
        <translation>Douleur : un autre exercice</translation>
    </message>
    <message>
        <source>Outside the season</source>
        <translation>Hors saison</translation>
    </message>
    <message>
        <source>Transition</source>
        <translation>Transition</translation>
    </message>
    <message>
        <source>Travel, exams, illness or injury</source>
        <translation>Voyage, examens, maladie ou blessure</translation>
    </message>
    <message>
        <source>A new macrocycle</source>
        <translation>Un nouveau macrocycle</translation>
    </message>
    <message>
        <source>Layoff</source>
        <translation>Interruption</translation>
    </message>
    <message>
        <source>Rest before a competition</source>
        <translation>Repos avant une compétition</translation>
    </message>
    <message>
        <source>Ease: later than before</source>
        <translation>Alléger : plus tard qu&apos;avant</translation>
    </message>
    <message>
        <source>Ease: a poor night</source>
        <translation>Alléger : mauvaise nuit</translation>
    </message>
    <message>
        <source>Step by date</source>
        <translation>Avancer par date</translation>
    </message>
    <message>
        <source>Up to the next box</source>
        <translation>À la caisse suivante</translation>
    </message>
    <message>
        <source>Step for evidence</source>
        <translation>Avancer sur preuves</translation>
    </message>
    <message>
        <source>Step by exposure, by choice</source>
        <translation>Avancer par exposition, par choix</translation>
    </message>
    <message>
        <source>No response</source>
        <translation>Pas de réponse</translation>
    </message>
    <message>
        <source>One heavy step in seven days</source>
        <translation>Une étape lourde en sept jours</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>exercice</translation>
    </message>
    <message>
        <source>rung</source>
        <translation>échelon</translation>
    </message>
    <message>
        <source>load</source>
        <translation>charge</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>séries</translation>
    </message>
    <message>
        <source>probe</source>
        <translation>témoin</translation>
    </message>
    <message>
        <source>set stop</source>
        <translation>arrêt de série</translation>
    </message>
    <message>
        <source>contacts</source>
        <translation>contacts</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation>entretien</translation>
    </message>
    <message>
        <source>%1 is the rung that the plan puts here, in %2.</source>
        <translation>%1 est l&apos;échelon que le plan met ici, en %2.</translation>
    </message>
    <message>
        <source>No load is known on this ladder yet: find one of effort 7 of 10.</source>
        <translation>Aucune charge n&apos;est encore connue sur cette échelle : trouves-en une d&apos;effort 7 sur 10.</translation>
    </message>
    <message>
        <source>From %1, down to what the plates make.</source>
        <translation>D&apos;après : %1, arrondi vers le bas à ce que permettent les disques.</translation>
    </message>
    <message>
        <source>the last work load, never more on a longer range</source>
        <translation>la dernière charge de travail, jamais plus sur une amplitude plus longue</translation>
    </message>
    <message>
        <source>the last work load</source>
        <translation>la dernière charge de travail</translation>
    </message>
    <message>
        <source>%1 x the full squat&apos;s estimated maximum</source>
        <translation>%1 fois le maximum estimé du squat complet</translation>
    </message>
    <message>
        <source>%1 x the last load on the rung before</source>
        <translation>%1 fois la dernière charge de l&apos;échelon d&apos;avant</translation>
    </message>
    <message>
        <source>the load of effort 7 of 10</source>
        <translation>la charge d&apos;effort 7 sur 10</translation>
    </message>
    <message>
        <source>at most %1 % more under 18</source>
        <translation>au plus %1 % de plus avant 18 ans</translation>
    </message>
    <message>
        <source>at most %1 % more in 28 days</source>
        <translation>au plus %1 % de plus en 28 jours</translation>
    </message>
    <message>
        <source>at most %1 % more in 7 days</source>
        <translation>au plus %1 % de plus en 7 jours</translation>
    </message>
    <message>
        <source>the load of %1</source>
        <translation>la charge du %1</translation>
    </message>
    <message>
        <source>First time on this rung: stop adding at effort 7 of 10, whatever the number says.</source>
        <translation>Première fois sur cet échelon : n&apos;ajoute plus de charge une fois à l&apos;effort 7 sur 10, quoi que dise le nombre.</translation>
    </message>
    <message>
        <source>%1 less today, by the decision.</source>
        <translation>%1 de moins aujourd&apos;hui, par la décision.</translation>
    </message>
    <message>
        <source>%1 sets of %2 are the rung&apos;s own; %3 and the competitions near leave %4 of that.</source>
        <translation>%1 séries de %2 sont celles de l&apos;échelon ; la phase (%3) et les compétitions proches en laissent %4.</translation>
    </message>
    <message>
        <source>%1 sets of %2 are the rung&apos;s own.</source>
        <translation>%1 séries de %2 sont celles de l&apos;échelon.</translation>
    </message>
    <message>
        <source>The decision takes it down to %1.</source>
        <translation>La décision le ramène à %1.</translation>
    </message>
    <message>
        <source>Three repetitions with full intent, at the same load for the whole stay on the rung: the only thing that counts as evidence.</source>
        <translation>Trois répétitions à fond, à la même charge pendant tout le séjour sur l&apos;échelon : la seule chose qui compte comme preuve.</translation>
    </message>
    <message>
        <source>Three jumps with full intent: the only thing that counts as evidence.</source>
        <translation>Trois sauts à fond : la seule chose qui compte comme preuve.</translation>
    </message>
    <message>
        <source>In %1 a set ends when velocity has fallen by %2 from its fastest repetition.</source>
        <translation>En %1, une série finit quand la vitesse a baissé de %2 depuis sa répétition la plus rapide.</translation>
    </message>
    <message>
        <source>At most %1 drop-jump contacts today: our limits for a session and for seven days.</source>
        <translation>Au plus %1 contacts de sauts en contrebas aujourd&apos;hui : nos limites pour une séance et sept jours.</translation>
    </message>
    <message>
        <source>%1 was last lifted %2 days ago: two heavy sets keep its strength.</source>
        <translation>%1 : dernière fois il y a %2 jours ; deux séries lourdes entretiennent sa force.</translation>
    </message>
    <message>
        <source>%1 was last lifted %2 days ago, longer than it should be: two heavy sets keep its strength.</source>
        <translation>%1 : dernière fois il y a %2 jours, plus qu&apos;il ne faut ; deux séries lourdes entretiennent sa force.</translation>
    </message>
    <message>
        <source>A heavy lift stands on a sprint day, after the run, so that low days stay low.</source>
        <translation>Un exercice lourd se place un jour de sprint, après la course, pour que les jours légers le restent.</translation>
    </message>
    <message>
        <source>A lifting day of the week.</source>
        <translation>Un jour d&apos;exercices de la semaine.</translation>
    </message>
    <message>
        <source>A light, fast ladder: it may stand on any lifting day, before the heavy ones.</source>
        <translation>Une échelle légère et rapide : elle peut se placer n&apos;importe quel jour d&apos;exercices, avant les lourdes.</translation>
    </message>
    <message>
        <source>%1 ladders share %2 places a session: it is this one&apos;s turn.</source>
        <translation>%1 échelles partagent %2 places par séance : c&apos;est le tour de celle-ci.</translation>
    </message>
    <message>
        <source>%1 stands in for %2, which loads the place that hurts.</source>
        <translation>%1 remplace %2, qui charge l&apos;endroit douloureux.</translation>
    </message>
    <message>
        <source>%1 rests: the contacts of these days are done, and drop jumps need %2 days between.</source>
        <translation>%1 est au repos : les contacts de ces jours sont faits, et les sauts en contrebas demandent %2 jours entre.</translation>
    </message>
    <message>
        <source>%1 rests: %2</source>
        <translation>%1 est au repos : %2</translation>
    </message>
    <message>
        <source>A primer, light and fast, by choice. It is no evidence.</source>
        <translation>Une activation, légère et rapide, au choix. Elle ne compte pas comme preuve.</translation>
    </message>
    <message>
        <source>In the weeks when the bar was quicker within a rung, %1 were better than the season&apos;s trend %2: %3; %4.</source>
        <translation>Les semaines où la barre était plus rapide sur un échelon, les %1 étaient meilleurs que la tendance de la saison, %2 : %3 ; %4.</translation>
    </message>
    <message>
        <source>It shows that they moved together, not that one caused the other.</source>
        <translation>Cela montre qu&apos;ils ont évolué ensemble, non que l&apos;un a causé l&apos;autre.</translation>
    </message>
    <message>
        <source>Not shown: when the bar was quicker within a rung, %1 were not better than the season&apos;s trend by more than chance (at best %2: %3; %4).</source>
        <translation>Non démontré : quand la barre était plus rapide sur un échelon, les %1 ne dépassaient pas la tendance de la saison plus que par hasard (au mieux %2 : %3 ; %4).</translation>
    </message>
    <message>
        <source>The strongest relation goes the other way: when the bar was quicker, times were slower %1 (%2).</source>
        <translation>La relation la plus forte va dans l&apos;autre sens : quand la barre était plus rapide, les temps étaient moins bons, %1 (%2).</translation>
    </message>
    <message>
        <source>That is no proof that there is no relation.</source>
        <translation>Cela ne prouve pas qu&apos;il n&apos;y a pas de relation.</translation>
    </message>
    <message>
        <source>Not shown: beside their trends the bar or the sprint times did not vary.</source>
        <translation>Non démontré : hors de leurs tendances, la barre ou les temps de sprint n&apos;ont pas varié.</translation>
    </message>
    <message>
        <source>Not enough: %1, on %2, all in the same conditions.</source>
        <translation>Pas assez : il faut %1, sur %2, tous dans les mêmes conditions.</translation>
    </message>
    <message>
        <source>Not enough: %1, all in the same conditions.</source>
        <translation>Pas assez : il faut %1, tous dans les mêmes conditions.</translation>
    </message>
    <message>
        <source>Not enough: %1, on %2 (%3).</source>
        <translation>Pas assez : il faut %1, sur %2 (%3).</translation>
    </message>
    <message>
        <source>Not enough: %1 (%2).</source>
        <translation>Pas assez : il faut %1 (%2).</translation>
    </message>
    <message>
        <source>Each counts in a further week, with the bar measured in that week and the four before.</source>
        <translation>Chacun compte dans une semaine de plus, la barre étant mesurée cette semaine et les quatre d&apos;avant.</translation>
    </message>
    <message>
        <source>rank correlation %1 over %2 and %3</source>
        <translation>corrélation des rangs %1 sur %2 et %3</translation>
    </message>
    <message>
        <source>sprint times (each in its own conditions)</source>
        <translation>temps de sprint (chacun dans ses conditions)</translation>
    </message>
    <message>
        <source>sprint times (%1)</source>
        <translation>temps de sprint (%1)</translation>
    </message>
    <message>
        <source>in the same week</source>
        <translation>la même semaine</translation>
    </message>
    <message>
        <source>chance alone gives as much in %1 of 100 such seasons</source>
        <translation>le hasard seul en donne autant dans %1 saisons sur 100</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>%1 weeks later</source>
        <translation>%1 semaines plus tard</translation>
    </message>
    <message>
        <source>%1 week later</source>
        <translation>%1 semaine plus tard</translation>
    </message>
    <message>
        <source>%1 weeks</source>
        <translation>%1 semaines</translation>
    </message>
    <message>
        <source>%1 week</source>
        <translation>%1 semaine</translation>
    </message>
    <message>
        <source>%1 rungs</source>
        <translation>%1 échelons</translation>
    </message>
    <message>
        <source>%1 rung</source>
        <translation>%1 échelon</translation>
    </message>
    <message>
        <source>%1 more tests</source>
        <translation>%1 tests de plus</translation>
    </message>
    <message>
        <source>%1 more test</source>
        <translation>%1 test de plus</translation>
    </message>
    <message>
        <source>%1 more rungs</source>
        <translation>%1 échelons de plus</translation>
    </message>
    <message>
        <source>%1 more rung</source>
        <translation>%1 échelon de plus</translation>
    </message>
    <message>
        <source>That shorter ranges carry over better to sprinting is the working premise of the ladders, with evidence on both sides; one athlete&apos;s season does not settle it.</source>
        <translation>Que des amplitudes plus courtes se transfèrent mieux au sprint est l&apos;hypothèse de travail des échelles, avec des preuves dans les deux sens ; la saison d&apos;un athlète ne tranche pas.</translation>
    </message>
    <message>
        <source>ankle</source>
        <translation>cheville</translation>
    </message>
    <message>
        <source>back</source>
        <translation>dos</translation>
    </message>
    <message>
        <source>calf</source>
        <translation>mollet</translation>
    </message>
    <message>
        <source>elbow</source>
        <translation>coude</translation>
    </message>
    <message>
        <source>foot</source>
        <translation>pied</translation>
    </message>
    <message>
        <source>groin</source>
        <translation>aine</translation>
    </message>
    <message>
        <source>hamstring</source>
        <translation>ischio-jambiers</translation>
    </message>
    <message>
        <source>hip</source>
        <translation>hanche</translation>
    </message>
    <message>
        <source>knee</source>
        <translation>genou</translation>
    </message>
    <message>
        <source>neck</source>
        <translation>cou</translation>
    </message>
    <message>
        <source>shin</source>
        <translation>tibia</translation>
    </message>
    <message>
        <source>shoulder</source>
        <translation>épaule</translation>
    </message>
    <message>
        <source>thigh</source>
        <translation>cuisse</translation>
    </message>
    <message>
        <source>wrist</source>
        <translation>poignet</translation>
    </message>
    <message>
        <source>milliseconds</source>
        <translation>millisecondes</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>secondes</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>mètres</translation>
    </message>
    <message>
        <source>metres per second</source>
        <translation>mètres par seconde</translation>
    </message>
    <message>
        <source>metres a second</source>
        <translation>mètres par seconde</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>kilogrammes</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>livres</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>semaines</translation>
    </message>
    <message>
        <source>&quot;%1&quot; lies before the season has begun</source>
        <translation>« %1 » tombe avant le début de la saison</translation>
    </message>
    <message>
        <source>&quot;%1&quot; lies after the season&apos;s end</source>
        <translation>« %1 » tombe après la fin de la saison</translation>
    </message>
    <message>
        <source>a season is at most %1 days long</source>
        <translation>une saison dure au plus %1 jours</translation>
    </message>
    <message>
        <source>a season needs at least one competition</source>
        <translation>une saison demande au moins une compétition</translation>
    </message>
    <message>
        <source>mark at least one competition with &quot;main&quot;: true</source>
        <translation>au moins une compétition doit être la principale (&quot;main&quot;: true)</translation>
    </message>
    <message>
        <source>name at least one day of the week with lifts</source>
        <translation>choisis au moins un jour de la semaine avec exercices</translation>
    </message>
    <message>
        <source>choose at least one ladder</source>
        <translation>choisis au moins une échelle</translation>
    </message>
    <message>
        <source>no drop jumps under %1; leave this ladder out</source>
        <translation>pas de sauts en contrebas avant %1 ans ; laisse cette échelle de côté</translation>
    </message>
    <message>
        <source>under %1 no lifting is planned: children take part from about that age, when they can follow instructions</source>
        <translation>avant %1 ans aucune musculation n&apos;est planifiée : les enfants y prennent part vers cet âge, quand ils savent suivre des consignes</translation>
    </message>
    <message>
        <source>under 18 a guardian must have agreed before a plan is made</source>
        <translation>avant 18 ans un responsable légal doit avoir consenti avant tout plan</translation>
    </message>
    <message>
        <source>under 18 lifts stand on at most three days a week; choose fewer days</source>
        <translation>avant 18 ans, au plus trois jours d&apos;exercices par semaine ; choisis moins de jours</translation>
    </message>
    <message>
        <source>under 18 lifting days must not follow each other; leave a day between</source>
        <translation>avant 18 ans les jours d&apos;exercices ne doivent pas se suivre ; laisse un jour entre eux</translation>
    </message>
    <message>
        <source>the block ends before it begins</source>
        <translation>les jours finissent avant de commencer</translation>
    </message>
    <message>
        <source>the block must lie inside the season</source>
        <translation>les jours doivent être dans la saison</translation>
    </message>
    <message>
        <source>two blocks of the same kind share days; make one of them</source>
        <translation>deux périodes de même sorte ont des jours communs ; fais-en une seule</translation>
    </message>
    <message>
        <source>%1 minutes hold %2 primary lifts; choose fewer, or say why in lifts_per_session_override</source>
        <translation>%1 minutes contiennent %2 exercices principaux ; choisis-en moins ou dis pourquoi dans lifts_per_session_override</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a longer range than the rung above it; longest range first</source>
        <translation>« %1 » a plus d&apos;amplitude que l&apos;échelon du dessus ; la plus longue d&apos;abord</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has earlier phases than the rung above it</source>
        <translation>« %1 » a des phases plus tôt que l&apos;échelon du dessus</translation>
    </message>
    <message>
        <source>the latest phase must not come before the earliest</source>
        <translation>la dernière phase ne peut précéder la première</translation>
    </message>
    <message>
        <source>there is no such rung</source>
        <translation>cet échelon n&apos;existe pas</translation>
    </message>
    <message>
        <source>the ladder must join inside the season</source>
        <translation>l&apos;échelle doit entrer pendant la saison</translation>
    </message>
    <message>
        <source>cannot be written: %1</source>
        <translation>ne peut être écrit : %1</translation>
    </message>
    <message>
        <source>cannot be read: %1</source>
        <translation>ne peut être lu : %1</translation>
    </message>
    <message>
        <source>the report cannot be written here (%1); choose another folder</source>
        <translation>le rapport ne peut être écrit ici (%1) ; choisis un autre dossier</translation>
    </message>
    <message>
        <source>the report could not be finished (%1); free some space or choose another folder</source>
        <translation>le rapport n&apos;a pu être achevé (%1) ; libère de la place ou choisis un autre dossier</translation>
    </message>
    <message>
        <source>the report could not be set; nothing was written</source>
        <translation>le rapport n&apos;a pu être composé ; rien n&apos;a été écrit</translation>
    </message>
</context>
<context>
    <name>EvidenceRow</name>
    <message>
        <source>met</source>
        <translation>atteint</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>pas atteint</translation>
    </message>
    <message>
        <source>for show</source>
        <translation>pour information</translation>
    </message>
    <message>
        <source>%1: %2, allowed %3, %4</source>
        <translation>%1 : %2, permis %3, %4</translation>
    </message>
</context>
<context>
    <name>ExplainSheet</name>
    <message>
        <source>What it is</source>
        <translation>Ce que c&apos;est</translation>
    </message>
    <message>
        <source>How sure: %1</source>
        <translation>Fiabilité : %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Source : %1</translation>
    </message>
</context>
<context>
    <name>FindSensorsSheet</name>
    <message>
        <source>Find a sensor</source>
        <translation>Chercher un capteur</translation>
    </message>
    <message>
        <source>Name it</source>
        <translation>Donne-lui un nom</translation>
    </message>
    <message>
        <source>Search again</source>
        <translation>Chercher à nouveau</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Réessayer</translation>
    </message>
    <message>
        <source>Switch the sensor on.</source>
        <translation>Allume le capteur.</translation>
    </message>
    <message>
        <source>Shake it: many sleep until they are moved.</source>
        <translation>Secoue-le : beaucoup dorment jusqu&apos;à ce qu&apos;on les bouge.</translation>
    </message>
    <message>
        <source>Hold it near this phone.</source>
        <translation>Tiens-le près de ce téléphone.</translation>
    </message>
    <message>
        <source>Close other programs that use it.</source>
        <translation>Ferme les autres programmes qui s&apos;en servent.</translation>
    </message>
    <message>
        <source>Part of its name</source>
        <translation>Une partie de son nom</translation>
    </message>
    <message>
        <source>Where it is worn</source>
        <translation>Où il se porte</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Stop searching</source>
        <translation>Arrêter la recherche</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>Teach it</source>
        <translation>Lancer l&apos;apprentissage</translation>
    </message>
    <message>
        <source>Listen again</source>
        <translation>Écouter à nouveau</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Retour à la liste</translation>
    </message>
</context>
<context>
    <name>FormsWords</name>
    <message>
        <source>Type a number.</source>
        <translation>Saisis un nombre.</translation>
    </message>
    <message>
        <source>This is not a number. Digits, with a point or a comma.</source>
        <translation>Ce n&apos;est pas un nombre. Des chiffres, avec un point ou une virgule.</translation>
    </message>
    <message>
        <source>Between %1 and %2.</source>
        <translation>Entre %1 et %2.</translation>
    </message>
    <message>
        <source>A whole number.</source>
        <translation>Un nombre entier.</translation>
    </message>
    <message>
        <source>This cannot stay empty.</source>
        <translation>Cela ne peut rester vide.</translation>
    </message>
    <message>
        <source>Type a day, like %1.</source>
        <translation>Saisis une date, comme %1.</translation>
    </message>
    <message>
        <source>There is no such day. Type it like %1.</source>
        <translation>Cette date n&apos;existe pas. Écris-la comme %1.</translation>
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
        <translation>Sans nom (%1)</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Enregistré</translation>
    </message>
    <message>
        <source>Likely a motion sensor</source>
        <translation>Sans doute un capteur de mouvement</translation>
    </message>
</context>
<context>
    <name>HelpWords</name>
    <message>
        <source>Time to peak velocity</source>
        <translation>Temps jusqu&apos;à la vitesse maximale</translation>
    </message>
    <message>
        <source>From the instant the bar begins to rise to the instant it is fastest. The season&apos;s evidence: on one rung, at one load, it should come sooner.</source>
        <translation>De l&apos;instant où la barre commence à monter à celui où elle est la plus rapide. La preuve de la saison : sur un échelon, à une charge, il doit venir plus tôt.</translation>
    </message>
    <message>
        <source>instant of peak velocity − instant of concentric start</source>
        <translation>instant de la vitesse maximale − début de la montée</translation>
    </message>
    <message>
        <source>Common practice, no source.</source>
        <translation>Pratique courante, sans source.</translation>
    </message>
    <message>
        <source>Target band and contact times</source>
        <translation>Bande cible et temps de contact</translation>
    </message>
    <message>
        <source>The band is where time to peak velocity usually lies on this rung. The pale bands are contact times of a sprint, for scale and no goal.</source>
        <translation>La bande est là où le temps se situe d&apos;ordinaire sur cet échelon. Les bandes pâles sont des temps de contact d&apos;un sprint, comme échelle et non comme but.</translation>
    </message>
    <message>
        <source>A starting value of this project, later your own values.</source>
        <translation>Une valeur de départ de ce projet, puis les tiennes.</translation>
    </message>
    <message>
        <source>A guide: your own line on the rung counts.</source>
        <translation>Un repère : c&apos;est ta propre ligne sur l&apos;échelon qui compte.</translation>
    </message>
    <message>
        <source>Mean velocity</source>
        <translation>Vitesse moyenne</translation>
    </message>
    <message>
        <source>How fast the bar rose on average, from its start to its end.</source>
        <translation>La vitesse moyenne de montée de la barre, du début à la fin.</translation>
    </message>
    <message>
        <source>way of the concentric phase ÷ its duration</source>
        <translation>distance de la montée ÷ sa durée</translation>
    </message>
    <message>
        <source>About 4 mm/s rms in simulated sets; a day&apos;s value wanders by about 0.04 m/s.</source>
        <translation>Environ 4 mm/s dans des séries simulées ; la valeur d&apos;un jour varie d&apos;environ 0,04 m/s.</translation>
    </message>
    <message>
        <source>Peak velocity</source>
        <translation>Vitesse maximale</translation>
    </message>
    <message>
        <source>The greatest speed of the bar on its way up. Told for lifts that throw or catch.</source>
        <translation>La plus grande vitesse de la barre à la montée. Pour les exercices où l&apos;on lance ou réceptionne.</translation>
    </message>
    <message>
        <source>About 7 mm/s rms in simulated sets; against cameras 24 mm/s.</source>
        <translation>Environ 7 mm/s dans des séries simulées ; face à des caméras 24 mm/s.</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Amplitude</translation>
    </message>
    <message>
        <source>The vertical way of the bar. A rung of the ladder asks for its own range; a repetition well below the set&apos;s median is flagged as partial.</source>
        <translation>La distance verticale parcourue par la barre. Chaque échelon demande la sienne ; une répétition bien en dessous de la médiane de la série est marquée partielle.</translation>
    </message>
    <message>
        <source>About 3 mm in simulated sets, 15 mm against cameras.</source>
        <translation>Environ 3 mm dans des séries simulées, 15 mm face à des caméras.</translation>
    </message>
    <message>
        <source>Velocity loss</source>
        <translation>Perte de vitesse</translation>
    </message>
    <message>
        <source>How much slower the last repetition was than the fastest of the set. The set ends at the loss that the phase allows, however many repetitions that are.</source>
        <translation>De combien la dernière répétition était plus lente que la plus rapide de la série. La série finit à la perte que la phase permet, quel que soit le nombre de répétitions.</translation>
    </message>
    <message>
        <source>1 − last mean velocity ÷ fastest mean velocity</source>
        <translation>1 − dernière ÷ plus grande vitesse moyenne</translation>
    </message>
    <message>
        <source>Common practice, no source; the limits are starting values of this project.</source>
        <translation>Pratique courante, sans source ; les limites sont des valeurs de départ de ce projet.</translation>
    </message>
    <message>
        <source>Two repetitions of the same effort differ by a few hundredths of a metre per second.</source>
        <translation>Deux répétitions de même effort diffèrent de quelques centièmes de mètre par seconde.</translation>
    </message>
    <message>
        <source>Repetitions left</source>
        <translation>Répétitions qui restent</translation>
    </message>
    <message>
        <source>A guess from the loss of velocity: how many more could have been done.</source>
        <translation>Une estimation d&apos;après la perte de vitesse : combien de plus auraient été possibles.</translation>
    </message>
    <message>
        <source>left = done × (1 ÷ share − 1), share = loss ÷ loss at half ÷ 2</source>
        <translation>reste = faites × (1 ÷ part − 1), part = perte ÷ perte à la moitié ÷ 2</translation>
    </message>
    <message>
        <source>Starting values of this project; with five sets of your own, yours.</source>
        <translation>Valeurs de départ de ce projet ; avec cinq séries à toi, les tiennes.</translation>
    </message>
    <message>
        <source>Wide: the range is shown. The stop of a set never rests on it.</source>
        <translation>Faible : l&apos;intervalle est affiché. L&apos;arrêt d&apos;une série n&apos;en dépend jamais.</translation>
    </message>
    <message>
        <source>What a decision rests on</source>
        <translation>Sur quoi repose une décision</translation>
    </message>
    <message>
        <source>Step, hold, step back, ease or rest: each line is one test with its value and what is allowed. A step needs sessions and days on the rung, a time to peak that came down by more than it wanders, and velocity and strength that held.</source>
        <translation>Avancer, tenir, reculer, alléger ou repos : chaque ligne est un test avec sa valeur et ce qui est permis. Avancer demande des séances et des jours sur l&apos;échelon, un temps baissé de plus qu&apos;il ne varie, et une vitesse et une force qui ont tenu.</translation>
    </message>
    <message>
        <source>Rules of this project, each with its origin in the program&apos;s rules.</source>
        <translation>Règles de ce projet, chacune avec son origine dans les règles du programme.</translation>
    </message>
    <message>
        <source>A rule is no proof. Your answer is kept with it, and counts.</source>
        <translation>Une règle n&apos;est pas une preuve. Ta réponse est gardée avec elle, et compte.</translation>
    </message>
    <message>
        <source>Typical error</source>
        <translation>Erreur typique</translation>
    </message>
    <message>
        <source>How far a session&apos;s value wanders by itself, from one session to the next. A change counts only beyond it.</source>
        <translation>De combien la valeur d&apos;une séance varie d&apos;elle-même, de l&apos;une à l&apos;autre. Un changement ne compte qu&apos;au-delà.</translation>
    </message>
    <message>
        <source>standard deviation of differences of successive sessions ÷ √2</source>
        <translation>écart type des différences de séances successives ÷ √2</translation>
    </message>
    <message>
        <source>Hopkins, Measures of reliability in sports medicine and science, Sports Med 2000.</source>
        <translation>Hopkins, Measures of reliability in sports medicine and science, Sports Med 2000.</translation>
    </message>
    <message>
        <source>It begins with a prior and becomes yours with the sessions.</source>
        <translation>Elle part d&apos;une valeur a priori et devient la tienne avec les séances.</translation>
    </message>
    <message>
        <source>A trend over the season</source>
        <translation>Une tendance sur la saison</translation>
    </message>
    <message>
        <source>Each point is a session&apos;s probe set. Only points on the same rung are to be compared: a shorter range is quicker anyway.</source>
        <translation>Chaque point est la série témoin d&apos;une séance. Seuls les points d&apos;un même échelon se comparent : une amplitude plus courte est de toute façon plus rapide.</translation>
    </message>
    <message>
        <source>Lines are Theil-Sen lines (Theil 1950, Sen 1968): one bad day does not move them.</source>
        <translation>Les lignes sont de Theil-Sen (Theil 1950, Sen 1968) : un mauvais jour ne les déplace pas.</translation>
    </message>
    <message>
        <source>Look at several weeks, never at one point.</source>
        <translation>Regarde plusieurs semaines, jamais un seul point.</translation>
    </message>
    <message>
        <source>Load and velocity</source>
        <translation>Charge et vitesse</translation>
    </message>
    <message>
        <source>Heavier is slower, nearly along a line that is your own on each lift and rung.</source>
        <translation>Plus lourd est plus lent, presque le long d&apos;une droite qui t&apos;est propre pour chaque exercice et échelon.</translation>
    </message>
    <message>
        <source>velocity = a + b × load, least squares and robust</source>
        <translation>vitesse = a + b × charge, moindres carrés et robuste</translation>
    </message>
    <message>
        <source>Two loads far apart and a third between make it steady.</source>
        <translation>Deux charges éloignées et une troisième entre elles la rendent stable.</translation>
    </message>
    <message>
        <source>Estimated 1RM</source>
        <translation>1RM estimé</translation>
    </message>
    <message>
        <source>The load at which the line meets the velocity that is published for one repetition at most. Never load it to see whether it is right.</source>
        <translation>La charge où la droite atteint la vitesse publiée pour une seule répétition au maximum. Ne la charge jamais pour voir si elle est juste.</translation>
    </message>
    <message>
        <source>load where the line meets the velocity at 1RM; interval after Fieller</source>
        <translation>charge où la droite atteint la vitesse au 1RM ; intervalle de Fieller</translation>
    </message>
    <message>
        <source>Velocities at 1RM: published for a few lifts, named beside the number.</source>
        <translation>Vitesses au 1RM : publiées pour peu d&apos;exercices, nommées à côté du nombre.</translation>
    </message>
    <message>
        <source>Its 95 % interval is shown; people also differ in the velocity itself.</source>
        <translation>Son intervalle à 95 % est montré ; les gens diffèrent aussi par cette vitesse.</translation>
    </message>
    <message>
        <source>Warm-up check</source>
        <translation>Contrôle d&apos;échauffement</translation>
    </message>
    <message>
        <source>The velocity at two warm-up loads against your own at these loads. It can take load or sets off today, never put any on.</source>
        <translation>La vitesse à deux charges d&apos;échauffement face à la tienne à ces charges. Il peut retirer de la charge ou des séries aujourd&apos;hui, jamais en ajouter.</translation>
    </message>
    <message>
        <source>A rule of this project.</source>
        <translation>Une règle de ce projet.</translation>
    </message>
    <message>
        <source>A loss counts where both loads are slower by more than the typical error.</source>
        <translation>Une perte compte si, aux deux charges, la vitesse baisse de plus que l&apos;erreur typique.</translation>
    </message>
    <message>
        <source>Contact and flight</source>
        <translation>Contact et vol</translation>
    </message>
    <message>
        <source>How long the foot is on the ground, and how long in the air after it. Contacts up to 250 ms count as fast.</source>
        <translation>Combien de temps le pied est au sol, puis en l&apos;air. Jusqu&apos;à 250 ms, un contact est rapide.</translation>
    </message>
    <message>
        <source>Schmidtbleicher 1992, in Komi (ed), Strength and Power in Sport; from memory.</source>
        <translation>Schmidtbleicher 1992, dans Komi (dir.), Strength and Power in Sport ; de mémoire.</translation>
    </message>
    <message>
        <source>From video of 240 pictures a second ± 4 ms.</source>
        <translation>D&apos;une vidéo à 240 images par seconde ± 4 ms.</translation>
    </message>
    <message>
        <source>Jump height</source>
        <translation>Hauteur du saut</translation>
    </message>
    <message>
        <source>How high the body rose, from how long it flew.</source>
        <translation>De combien le corps est monté, d&apos;après son temps de vol.</translation>
    </message>
    <message>
        <source>height = g × flight² ÷ 8</source>
        <translation>hauteur = g × vol² ÷ 8</translation>
    </message>
    <message>
        <source>Bosco, Luhtanen, Komi 1983, Eur J Appl Physiol 50:273-282; from memory.</source>
        <translation>Bosco, Luhtanen, Komi 1983, Eur J Appl Physiol 50:273-282 ; de mémoire.</translation>
    </message>
    <message>
        <source>It holds where the body lands as it took off: bent knees make it too high.</source>
        <translation>Cela vaut si le corps retombe comme il est parti : genoux fléchis, la hauteur est surestimée.</translation>
    </message>
    <message>
        <source>Reactive strength index, RSI</source>
        <translation>Indice de force réactive, RSI</translation>
    </message>
    <message>
        <source>Height for the time on the ground: high and quick together.</source>
        <translation>La hauteur pour le temps au sol : haut et vif ensemble.</translation>
    </message>
    <message>
        <source>RSI = height ÷ contact time</source>
        <translation>RSI = hauteur ÷ temps de contact</translation>
    </message>
    <message>
        <source>Healy, Kenny, Harrison 2017, doi:10.1123/ijspp.2017-0511.</source>
        <translation>Healy, Kenny, Harrison 2017, doi:10.1123/ijspp.2017-0511.</translation>
    </message>
    <message>
        <source>A day&apos;s value wanders by about 7 %.</source>
        <translation>La valeur d&apos;un jour varie d&apos;environ 7 %.</translation>
    </message>
    <message>
        <source>Top speed and time constant</source>
        <translation>Vitesse de pointe et constante de temps</translation>
    </message>
    <message>
        <source>The speed that the splits point to, and how soon it is reached: after one time constant 63 % of it, after three 95 %.</source>
        <translation>La vitesse vers laquelle tendent les intermédiaires, et le temps pour l&apos;atteindre : 63 % après une constante, 95 % après trois.</translation>
    </message>
    <message>
        <source>v(t) = top speed × (1 − exp(−t ÷ τ)), fitted to the splits</source>
        <translation>v(t) = vitesse de pointe × (1 − exp(−t ÷ τ)), ajustée aux intermédiaires</translation>
    </message>
    <message>
        <source>Furusawa, Hill, Parkinson 1927; on splits Samozino et al. 2016, doi:10.1111/sms.12490.</source>
        <translation>Furusawa, Hill, Parkinson 1927 ; sur intermédiaires Samozino et al. 2016, doi:10.1111/sms.12490.</translation>
    </message>
    <message>
        <source>One standard error stands beside it. The model is no exact law.</source>
        <translation>Une erreur type est à côté. Le modèle n&apos;est pas une loi exacte.</translation>
    </message>
    <message>
        <source>Force and power of a sprint</source>
        <translation>Force et puissance d&apos;un sprint</translation>
    </message>
    <message>
        <source>Horizontal force and power from the speed curve, your mass and the drag of the air.</source>
        <translation>Force et puissance horizontales d&apos;après la courbe de vitesse, ta masse et la résistance de l&apos;air.</translation>
    </message>
    <message>
        <source>F = m × acceleration + k × (v − wind)²; P = F × v</source>
        <translation>F = m × accélération + k × (v − vent)² ; P = F × v</translation>
    </message>
    <message>
        <source>Samozino et al. 2016, doi:10.1111/sms.12490; equations from memory.</source>
        <translation>Samozino et al. 2016, doi:10.1111/sms.12490 ; équations de mémoire.</translation>
    </message>
    <message>
        <source>As sure as the curve; what was not typed (air, wind) is assumed and said.</source>
        <translation>Aussi fiable que la courbe ; ce qui n&apos;est pas saisi (air, vent) est supposé et signalé.</translation>
    </message>
    <message>
        <source>Flying speed</source>
        <translation>Vitesse lancée</translation>
    </message>
    <message>
        <source>Mean speed over a zone that is entered at full speed.</source>
        <translation>Vitesse moyenne sur une zone abordée à pleine vitesse.</translation>
    </message>
    <message>
        <source>zone ÷ time</source>
        <translation>zone ÷ temps</translation>
    </message>
    <message>
        <source>By hand a flying 20 m is 7 % off; gates and video are told beside it.</source>
        <translation>À la main, un 20 m lancé est faux de 7 % ; l&apos;erreur des cellules et de la vidéo est indiquée à côté.</translation>
    </message>
    <message>
        <source>Wind-aided</source>
        <translation>Vent favorable</translation>
    </message>
    <message>
        <source>More than 2.0 m/s of wind from behind in a competition: the time is no best.</source>
        <translation>Plus de 2,0 m/s de vent dans le dos en compétition : le temps ne compte pas comme record.</translation>
    </message>
    <message>
        <source>World Athletics&apos; technical rules; from memory.</source>
        <translation>Règles techniques de World Athletics ; de mémoire.</translation>
    </message>
    <message>
        <source>As the reading of the wind gauge.</source>
        <translation>Comme la lecture de l&apos;anémomètre.</translation>
    </message>
    <message>
        <source>Fast metres</source>
        <translation>Mètres rapides</translation>
    </message>
    <message>
        <source>Metres run at 90 and at 95 % of the best speed of the last 12 months, or above.</source>
        <translation>Mètres courus à 90 et à 95 % de la meilleure vitesse des 12 derniers mois, ou plus.</translation>
    </message>
    <message>
        <source>Common practice, no source; the shares are this project&apos;s.</source>
        <translation>Pratique courante, sans source ; les pourcentages sont de ce projet.</translation>
    </message>
    <message>
        <source>&quot;About&quot; stands where part of it is estimated from distance and time, or from effort.</source>
        <translation>« Environ » figure quand une part est estimée d&apos;après distance et temps, ou l&apos;effort.</translation>
    </message>
    <message>
        <source>Did it work?</source>
        <translation>Cela a-t-il marché ?</translation>
    </message>
    <message>
        <source>Whether the bar&apos;s quickness and the sprint times moved together beyond their trends. Never called cause.</source>
        <translation>Si la vivacité de la barre et les temps de sprint ont évolué ensemble au-delà de leurs tendances. Jamais appelé cause.</translation>
    </message>
    <message>
        <source>Spearman&apos;s rank correlation at five lags, against turned seasons</source>
        <translation>corrélation de rangs de Spearman à cinq décalages, face à des saisons tournées</translation>
    </message>
    <message>
        <source>Spearman 1904, Am J Psychol 15:72-101; the test is this project&apos;s.</source>
        <translation>Spearman 1904, Am J Psychol 15:72-101 ; le test est de ce projet.</translation>
    </message>
    <message>
        <source>Without any relation it speaks in about 3 of 100 seasons.</source>
        <translation>Sans aucun lien, il parle dans environ 3 saisons sur 100.</translation>
    </message>
    <message>
        <source>About 2 to 6 ms rms in simulated sets. A repetition with two peaks is no evidence. It is not a stance&apos;s force peak.</source>
        <translation>Environ 2 à 6 ms (moyenne quadratique) dans des séries simulées. Une répétition à deux pics ne compte pas comme preuve. Ce n&apos;est pas le pic de force d&apos;un appui.</translation>
    </message>
</context>
<context>
    <name>ImportLook</name>
    <message>
        <source>As it will be read</source>
        <translation>Voici ce qui sera lu</translation>
    </message>
    <message>
        <source>Athletes</source>
        <translation>Athlètes</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Exercices</translation>
    </message>
    <message>
        <source>Rows that cannot be read</source>
        <translation>Lignes illisibles</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Colonnes</translation>
    </message>
    <message>
        <source>Day of all rows, like %1</source>
        <translation>Date de toutes les lignes, p. ex. %1</translation>
    </message>
</context>
<context>
    <name>ImportPickSheet</name>
    <message>
        <source>The gate stands at, m</source>
        <translation>La cellule est à, m</translation>
    </message>
    <message>
        <source>Between 0 and 1000 m.</source>
        <translation>Entre 0 et 1000 m.</translation>
    </message>
    <message>
        <source>Take this distance</source>
        <translation>Prendre cette distance</translation>
    </message>
</context>
<context>
    <name>ImportSheet</name>
    <message>
        <source>Import sets</source>
        <translation>Importer des séries</translation>
    </message>
    <message>
        <source>Import runs</source>
        <translation>Importer des courses</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>De %1</translation>
    </message>
    <message>
        <source>Put the table as a CSV file into %1, then look again.</source>
        <translation>Mets le tableau en fichier CSV dans %1, puis regarde à nouveau.</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Regarder à nouveau</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Choisir un autre fichier</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
</context>
<context>
    <name>ImportWords</name>
    <message>
        <source>Not read</source>
        <translation>Non lu</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athlète</translation>
    </message>
    <message>
        <source>Athlete&apos;s identifier</source>
        <translation>Identifiant de l&apos;athlète</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Effort, 1 to 10</source>
        <translation>Effort, 1 à 10</translation>
    </message>
    <message>
        <source>Key of the row</source>
        <translation>Clé de la ligne</translation>
    </message>
    <message>
        <source>Number of the run or set</source>
        <translation>Numéro de la course ou série</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Intermédiaire</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distance</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Temps</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Vent</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>Chronométrage</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Départ</translation>
    </message>
    <message>
        <source>Run-in</source>
        <translation>Élan</translation>
    </message>
    <message>
        <source>Reaction</source>
        <translation>Réaction</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Surface</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Chaussures</translation>
    </message>
    <message>
        <source>Name of the test</source>
        <translation>Nom du test</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Température</translation>
    </message>
    <message>
        <source>Competition, yes or no</source>
        <translation>Compétition, oui ou non</translation>
    </message>
    <message>
        <source>Trial of a test day, yes or no</source>
        <translation>Essai d&apos;un jour de test, oui ou non</translation>
    </message>
    <message>
        <source>Contact time</source>
        <translation>Temps de contact</translation>
    </message>
    <message>
        <source>Step length</source>
        <translation>Longueur de foulée</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Exercice</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Répétitions</translation>
    </message>
    <message>
        <source>Time to peak velocity</source>
        <translation>Temps jusqu&apos;à la vitesse maximale</translation>
    </message>
    <message>
        <source>Mean velocity</source>
        <translation>Vitesse moyenne</translation>
    </message>
    <message>
        <source>Peak velocity</source>
        <translation>Vitesse maximale</translation>
    </message>
    <message>
        <source>Range of motion</source>
        <translation>Amplitude</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Côté</translation>
    </message>
    <message>
        <source>Rung</source>
        <translation>Échelon</translation>
    </message>
    <message>
        <source>Kind of set</source>
        <translation>Type de série</translation>
    </message>
    <message>
        <source>Height of the box</source>
        <translation>Hauteur de la caisse</translation>
    </message>
    <message>
        <source>Split at %1</source>
        <translation>Intermédiaire à %1</translation>
    </message>
    <message>
        <source>Split, distance not known</source>
        <translation>Intermédiaire, distance inconnue</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, en %2</translation>
    </message>
    <message>
        <source>Nothing to add is known in this file yet. Tap the columns below and say what they mean.</source>
        <translation>Rien à ajouter n&apos;est encore connu dans ce fichier. Touche les colonnes ci-dessous et dis ce qu&apos;elles veulent dire.</translation>
    </message>
    <message>
        <source>“%1” can be read in two ways. What is the decimal mark?</source>
        <translation>« %1 » se lit de deux façons. Quel est le séparateur décimal ?</translation>
    </message>
    <message>
        <source>“%1” can be read in two ways. What comes first?</source>
        <translation>« %1 » se lit de deux façons. Qu&apos;est-ce qui vient d&apos;abord ?</translation>
    </message>
    <message>
        <source>The file has no dates. On which day was it?</source>
        <translation>Le fichier n&apos;a pas de dates. Quel jour était-ce ?</translation>
    </message>
    <message>
        <source>At how many metres stands the gate of “%1”? Tap the column below.</source>
        <translation>À combien de mètres est la cellule de « %1 » ? Touche la colonne ci-dessous.</translation>
    </message>
    <message>
        <source>In which unit are the loads of “%1”?</source>
        <translation>En quelle unité sont les charges de « %1 » ?</translation>
    </message>
    <message>
        <source>Rows above the header, left out: %1.</source>
        <translation>Lignes au-dessus de l&apos;en-tête, laissées de côté : %1.</translation>
    </message>
    <message>
        <source>The file has no header: its first row is read like the others.</source>
        <translation>Le fichier n&apos;a pas d&apos;en-tête : sa première ligne se lit comme les autres.</translation>
    </message>
    <message>
        <source>The decimal mark is a comma, as in %1.</source>
        <translation>Le séparateur décimal est une virgule, comme dans %1.</translation>
    </message>
    <message>
        <source>Times are in milliseconds, by their size: %1.</source>
        <translation>Les temps sont en millisecondes, d&apos;après leur taille : %1.</translation>
    </message>
    <message>
        <source>The times do not rise (%1): each counts from the gate before.</source>
        <translation>Les temps n&apos;augmentent pas (%1) : chacun compte depuis la cellule d&apos;avant.</translation>
    </message>
    <message>
        <source>The times rise (%1): each counts from the start.</source>
        <translation>Les temps augmentent (%1) : chacun compte depuis le départ.</translation>
    </message>
    <message>
        <source>Several rows make one run.</source>
        <translation>Plusieurs lignes font une course.</translation>
    </message>
    <message>
        <source>The day comes before the month, as in %1.</source>
        <translation>Le jour vient avant le mois, comme dans %1.</translation>
    </message>
    <message>
        <source>The month comes before the day, as in %1.</source>
        <translation>Le mois vient avant le jour, comme dans %1.</translation>
    </message>
    <message>
        <source>More cells than the header has.</source>
        <translation>Plus de cases que l&apos;en-tête.</translation>
    </message>
    <message>
        <source>“%1” is not a number.</source>
        <translation>« %1 » n&apos;est pas un nombre.</translation>
    </message>
    <message>
        <source>“%1” cannot be. Check the number and the unit.</source>
        <translation>« %1 » est impossible. Vérifie le nombre et l&apos;unité.</translation>
    </message>
    <message>
        <source>The day is missing.</source>
        <translation>Le jour manque.</translation>
    </message>
    <message>
        <source>“%1” is not a day.</source>
        <translation>« %1 » n&apos;est pas une date.</translation>
    </message>
    <message>
        <source>“%1” has not come yet. Check the order of day and month.</source>
        <translation>« %1 » est une date à venir. Vérifie l&apos;ordre du jour et du mois.</translation>
    </message>
    <message>
        <source>“%1” is not a time of day.</source>
        <translation>« %1 » n&apos;est pas une heure.</translation>
    </message>
    <message>
        <source>The time is missing.</source>
        <translation>Le temps manque.</translation>
    </message>
    <message>
        <source>The time has no distance.</source>
        <translation>Le temps n&apos;a pas de distance.</translation>
    </message>
    <message>
        <source>The times do not rise with the distance.</source>
        <translation>Les temps n&apos;augmentent pas avec la distance.</translation>
    </message>
    <message>
        <source>That is faster than anyone has run. Check distance and time.</source>
        <translation>Personne n&apos;a couru si vite. Vérifie distance et temps.</translation>
    </message>
    <message>
        <source>A time before this one is missing.</source>
        <translation>Un temps manque avant celui-ci.</translation>
    </message>
    <message>
        <source>A split lies behind the end of the run.</source>
        <translation>Un intermédiaire est au-delà de l&apos;arrivée.</translation>
    </message>
    <message>
        <source>The split at the end says another time.</source>
        <translation>L&apos;intermédiaire d&apos;arrivée donne un autre temps.</translation>
    </message>
    <message>
        <source>The lift is missing.</source>
        <translation>L&apos;exercice manque.</translation>
    </message>
    <message>
        <source>The repetitions are missing.</source>
        <translation>Les répétitions manquent.</translation>
    </message>
</context>
<context>
    <name>JumpSheet</name>
    <message>
        <source>Add jumps</source>
        <translation>Ajouter des sauts</translation>
    </message>
    <message>
        <source>Kind of jump</source>
        <translation>Type de saut</translation>
    </message>
    <message>
        <source>Drop jump</source>
        <translation>Saut en contrebas</translation>
    </message>
    <message>
        <source>Counter-movement</source>
        <translation>Contre-mouvement</translation>
    </message>
    <message>
        <source>Squat jump</source>
        <translation>Sans contre-mouvement</translation>
    </message>
    <message>
        <source>Standing long</source>
        <translation>Longueur sans élan</translation>
    </message>
    <message>
        <source>Bounds</source>
        <translation>Bondissements</translation>
    </message>
    <message>
        <source>Box height, %1</source>
        <translation>Hauteur de caisse, %1</translation>
    </message>
    <message>
        <source>How many in a row</source>
        <translation>Combien à la suite</translation>
    </message>
    <message>
        <source>Contact time, ms</source>
        <translation>Temps de contact, ms</translation>
    </message>
    <message>
        <source>Flight time, ms (or the height below)</source>
        <translation>Temps de vol, ms (ou la hauteur dessous)</translation>
    </message>
    <message>
        <source>Height, %1</source>
        <translation>Hauteur, %1</translation>
    </message>
    <message>
        <source>Distance, m</source>
        <translation>Distance, m</translation>
    </message>
    <message>
        <source>Trials</source>
        <translation>Essais</translation>
    </message>
    <message>
        <source>Take the last trial off</source>
        <translation>Retirer le dernier essai</translation>
    </message>
    <message>
        <source>Add another trial</source>
        <translation>Ajouter un essai</translation>
    </message>
    <message>
        <source>Is it one of these?</source>
        <translation>Est-ce l&apos;un de ceux-ci ?</translation>
    </message>
    <message>
        <source>Trial of a test day</source>
        <translation>Essai d&apos;un jour de test</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Moins</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Surface, shoes, note</source>
        <translation>Surface, chaussures, note</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Surface</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Piste</translation>
    </message>
    <message>
        <source>Indoor</source>
        <translation>Salle</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>Herbe</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Chaussures</translation>
    </message>
    <message>
        <source>Spikes</source>
        <translation>Pointes</translation>
    </message>
    <message>
        <source>Flats</source>
        <translation>Baskets</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Non indiqué</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Save the jumps</source>
        <translation>Enregistrer les sauts</translation>
    </message>
    <message>
        <source>Day, like %1</source>
        <translation>Date, p. ex. %1</translation>
    </message>
</context>
<context>
    <name>LadderPage</name>
    <message>
        <source>Ladder</source>
        <translation>Échelle</translation>
    </message>
    <message>
        <source>Steps and their evidence</source>
        <translation>Étapes et leurs preuves</translation>
    </message>
    <message>
        <source>Plan a season</source>
        <translation>Planifier une saison</translation>
    </message>
    <message>
        <source>Go to Squad</source>
        <translation>Aller au Groupe</translation>
    </message>
    <message>
        <source>Change the season</source>
        <translation>Modifier la saison</translation>
    </message>
    <message>
        <source>Season report as PDF</source>
        <translation>Rapport de saison en PDF</translation>
    </message>
    <message>
        <source>All numbers as CSV tables</source>
        <translation>Tous les nombres en tableaux CSV</translation>
    </message>
    <message>
        <source>Hand out as a calendar</source>
        <translation>Exporter en calendrier</translation>
    </message>
    <message>
        <source>Why shorter ranges? Both sides</source>
        <translation>Pourquoi des amplitudes courtes ? Les deux côtés</translation>
    </message>
    <message>
        <source>Follow</source>
        <translation>Suivre</translation>
    </message>
    <message>
        <source>Decide otherwise</source>
        <translation>Décider autrement</translation>
    </message>
    <message>
        <source>Both sides of the evidence</source>
        <translation>Les deux côtés des preuves</translation>
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
        <translation>Changer %1</translation>
    </message>
    <message>
        <source>%1 one place up</source>
        <translation>Monter %1 d&apos;un rang</translation>
    </message>
</context>
<context>
    <name>LoadChartSheet</name>
    <message>
        <source>Loads by the chart</source>
        <translation>Charges selon le tableau</translation>
    </message>
    <message>
        <source>1RM, %1</source>
        <translation>1RM, %1</translation>
    </message>
    <message>
        <source>Type what you can lift once. A set of up to ten repetitions typed in tells it roughly.</source>
        <translation>Saisis ce que tu peux soulever une fois. Une série saisie de dix répétitions au plus le donne à peu près.</translation>
    </message>
    <message>
        <source>Source: NSCA training load chart. At 80 % of 1RM people differ by many repetitions, so the plan goes by how fast the bar moves, not by this.</source>
        <translation>Source : tableau de charges de la NSCA. À 80 % du 1RM, les gens diffèrent de bien des répétitions ; le plan suit donc la vitesse de la barre, pas ceci.</translation>
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
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>MapSheet</name>
    <message>
        <source>Take in a file</source>
        <translation>Charger un fichier</translation>
    </message>
    <message>
        <source>How it is read</source>
        <translation>Comment il est lu</translation>
    </message>
    <message>
        <source>A sensor map says what each byte means. It was chosen by itself; choose another only where the numbers look wrong.</source>
        <translation>Une description de capteur dit ce que veut dire chaque octet. Elle a été choisie automatiquement ; n&apos;en choisis une autre que si les nombres semblent faux.</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>De %1</translation>
    </message>
    <message>
        <source>Put the file of the sensor map (its name ends in .json) into %1, then look again.</source>
        <translation>Mets le fichier de la description (son nom finit par .json) dans %1, puis regarde à nouveau.</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Regarder à nouveau</translation>
    </message>
    <message>
        <source>Hand out this map as a file</source>
        <translation>Exporter cette description en fichier</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Retour à la liste</translation>
    </message>
</context>
<context>
    <name>MarkedLine</name>
    <message>
        <source>Caution: %1</source>
        <translation>Attention : %1</translation>
    </message>
</context>
<context>
    <name>NothingLeft</name>
    <message>
        <source>Clear the filters</source>
        <translation>Effacer les filtres</translation>
    </message>
</context>
<context>
    <name>NoticeBar</name>
    <message>
        <source>Close the message</source>
        <translation>Fermer le message</translation>
    </message>
</context>
<context>
    <name>NumberRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1 : %2, %3</translation>
    </message>
</context>
<context>
    <name>OtherSetSheet</name>
    <message>
        <source>Load, %1 (0 for body mass)</source>
        <translation>Charge, %1 (0 pour le poids du corps)</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Répétitions</translation>
    </message>
    <message>
        <source>Effort, 1 easy to 10 all out (optional)</source>
        <translation>Effort, 1 facile à 10 à fond (facultatif)</translation>
    </message>
    <message>
        <source>Save the set</source>
        <translation>Enregistrer la série</translation>
    </message>
</context>
<context>
    <name>OwnLadderSheet</name>
    <message>
        <source>A ladder of your own</source>
        <translation>Une échelle à toi</translation>
    </message>
    <message>
        <source>Change the ladder</source>
        <translation>Changer l&apos;échelle</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Rungs, longest range first</source>
        <translation>Échelons, le plus ample d&apos;abord</translation>
    </message>
    <message>
        <source>Add a rung</source>
        <translation>Ajouter un échelon</translation>
    </message>
    <message>
        <source>What kind of lift it is</source>
        <translation>Quelle sorte d&apos;exercice</translation>
    </message>
    <message>
        <source>Heavy: one such ladder steps in seven days</source>
        <translation>Lourde : une seule avance en sept jours</translation>
    </message>
    <message>
        <source>Left and right apart</source>
        <translation>Gauche et droite séparément</translation>
    </message>
    <message>
        <source>What it loads: pain there rests this ladder</source>
        <translation>Ce qu&apos;elle charge : une douleur là la met au repos</translation>
    </message>
    <message>
        <source>Ranges and times of your own rest on no source. The rules of loads, age and pain hold for them all the same.</source>
        <translation>Tes propres amplitudes et temps ne reposent sur aucune source. Les règles de charge, d&apos;âge et de douleur valent quand même.</translation>
    </message>
    <message>
        <source>Delete this ladder</source>
        <translation>Supprimer cette échelle</translation>
    </message>
    <message>
        <source>Put it into the season</source>
        <translation>La mettre dans la saison</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
</context>
<context>
    <name>PageFrame</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
</context>
<context>
    <name>PagesWords</name>
    <message>
        <source>week %1 of %2</source>
        <translation>semaine %1 sur %2</translation>
    </message>
    <message>
        <source>Sprints first, the lifts after the run.</source>
        <translation>Les sprints d&apos;abord, les exercices après la course.</translation>
    </message>
    <message>
        <source>No lifts today</source>
        <translation>Pas d&apos;exercices aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Today belongs to the track.</source>
        <translation>Aujourd&apos;hui est à la piste.</translation>
    </message>
    <message>
        <source>Rest is part of the plan. The next lifts stand on Ladder.</source>
        <translation>Le repos fait partie du plan. Les prochains exercices sont sur Échelle.</translation>
    </message>
    <message>
        <source>Go to Ladder</source>
        <translation>Aller à Échelle</translation>
    </message>
    <message>
        <source>No season yet</source>
        <translation>Pas encore de saison</translation>
    </message>
    <message>
        <source>Plan a season on Ladder: it starts from the main competition and counts backwards. From then on, each day&apos;s lifts, loads and sets stand here.</source>
        <translation>Planifie une saison sur Échelle : elle part de la compétition principale et compte à rebours. Dès lors, exercices, charges et séries de chaque jour sont ici.</translation>
    </message>
    <message>
        <source>Plan a season on Ladder</source>
        <translation>Planifier une saison sur Échelle</translation>
    </message>
    <message>
        <source>A season is planned backwards</source>
        <translation>Une saison se planifie à rebours</translation>
    </message>
    <message>
        <source>Say when the main competition is and which lifts you keep for the whole season. As it comes nearer, each lift goes down its ladder to a shorter range.</source>
        <translation>Dis quand est la compétition principale et quels exercices tu gardes toute la saison. À son approche, chaque exercice descend son échelle vers une amplitude plus courte.</translation>
    </message>
    <message>
        <source>Nobody trains here yet</source>
        <translation>Personne ne s&apos;entraîne encore ici</translation>
    </message>
    <message>
        <source>Add an athlete on Squad, then plan a season on Ladder.</source>
        <translation>Ajoute un athlète dans Groupe, puis planifie une saison sur Échelle.</translation>
    </message>
    <message>
        <source>Go to Squad</source>
        <translation>Aller au Groupe</translation>
    </message>
    <message>
        <source>No athlete, no season</source>
        <translation>Sans athlète, pas de saison</translation>
    </message>
    <message>
        <source>Add an athlete on Squad first.</source>
        <translation>Ajoute d&apos;abord un athlète dans Groupe.</translation>
    </message>
</context>
<context>
    <name>PlatesSheet</name>
    <message>
        <source>Plates on the bar</source>
        <translation>Disques sur la barre</translation>
    </message>
    <message>
        <source>Load: %1</source>
        <translation>Charge : %1</translation>
    </message>
    <message>
        <source>Take the last plates off</source>
        <translation>Retirer les derniers disques</translation>
    </message>
    <message>
        <source>A plate of %1 on each side</source>
        <translation>Un disque de %1 de chaque côté</translation>
    </message>
    <message>
        <source>Take all off</source>
        <translation>Tout retirer</translation>
    </message>
    <message>
        <source>This is on the bar</source>
        <translation>Voilà ce qui est sur la barre</translation>
    </message>
</context>
<context>
    <name>PoseTile</name>
    <message>
        <source>%1: taken</source>
        <translation>%1 : prise</translation>
    </message>
    <message>
        <source>%1: next</source>
        <translation>%1 : suivante</translation>
    </message>
    <message>
        <source>%1: open</source>
        <translation>%1 : à faire</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>prise</translation>
    </message>
    <message>
        <source>next</source>
        <translation>suivante</translation>
    </message>
    <message>
        <source>open</source>
        <translation>à faire</translation>
    </message>
</context>
<context>
    <name>RadioTroubleWords</name>
    <message>
        <source>Bluetooth is off. Switch it on: the sensor then connects by itself.</source>
        <translation>Le Bluetooth est éteint. Allume-le : le capteur se connecte alors seul.</translation>
    </message>
    <message>
        <source>No Bluetooth was found on this device. Switch it on in the system&apos;s settings, or plug a Bluetooth adapter in.</source>
        <translation>Aucun Bluetooth sur cet appareil. Allume-le dans les réglages du système, ou branche un adaptateur Bluetooth.</translation>
    </message>
    <message>
        <source>Fleetrung may not use Bluetooth. Allow it in the system&apos;s settings for Fleetrung; on older phones location must be on, too.</source>
        <translation>Fleetrung n&apos;est pas autorisé à utiliser le Bluetooth. Autorise-le pour Fleetrung dans les réglages du système ; sur d&apos;anciens téléphones, la localisation doit être active aussi.</translation>
    </message>
    <message>
        <source>%1 is not in reach. Switch it on and bring it near: it then connects by itself.</source>
        <translation>%1 n&apos;est pas à portée. Allume-le et approche-le : il se connecte alors seul.</translation>
    </message>
    <message>
        <source>%1 is near but did not let us in. Disconnect it from any other phone, or switch it off and on.</source>
        <translation>%1 est proche mais n&apos;accepte pas la connexion. Déconnecte-le d&apos;un autre téléphone, ou éteins-le et rallume-le.</translation>
    </message>
    <message>
        <source>The connection to %1 was lost and is being made again. Keep the phone within a few metres of it.</source>
        <translation>La connexion à %1 est perdue et se refait. Garde le téléphone à quelques mètres.</translation>
    </message>
    <message>
        <source>%1 answers, but it is not the kind of sensor it was saved as. Choose another description for it, or teach it anew.</source>
        <translation>%1 répond, mais ce n&apos;est pas le genre de capteur enregistré. Choisis-lui une autre description, ou refais l&apos;apprentissage.</translation>
    </message>
    <message>
        <source>%1 asks for pairing, and the pairing with this device does not work. Open the system&apos;s Bluetooth settings, forget (remove) %1 there, and connect again.</source>
        <translation>%1 demande un appairage, et l&apos;appairage avec cet appareil ne marche pas. Ouvre les réglages Bluetooth du système, oublie (retire) %1 et reconnecte.</translation>
    </message>
    <message>
        <source>%1 is connected but sends nothing; it is being asked again. If this stays, switch it off and on.</source>
        <translation>%1 est connecté mais n&apos;envoie rien ; on lui redemande. Si cela dure, éteins-le et rallume-le.</translation>
    </message>
    <message>
        <source>%1 sends data that its description does not fit. Choose another description for it, or teach it anew.</source>
        <translation>%1 envoie des données que sa description ne sait pas lire. Choisis-lui une autre description, ou refais l&apos;apprentissage.</translation>
    </message>
    <message>
        <source>%1 sends more than this connection may carry, and samples can be lost. Set a lower rate on the sensor if you can.</source>
        <translation>%1 envoie plus que cette connexion ne peut porter, et des échantillons peuvent se perdre. Règle une fréquence plus basse sur le capteur si tu peux.</translation>
    </message>
    <message>
        <source>The sensor</source>
        <translation>Le capteur</translation>
    </message>
</context>
<context>
    <name>ReportWords</name>
    <message>
        <source>SEASON REPORT</source>
        <translation>RAPPORT DE SAISON</translation>
    </message>
    <message>
        <source>Season report</source>
        <translation>Rapport de saison</translation>
    </message>
    <message>
        <source>no medical advice</source>
        <translation>pas un avis médical</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>page %1 sur %2</translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>page %1</translation>
    </message>
    <message>
        <source>born %1</source>
        <translation>né(e) en %1</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>jusqu&apos;au %1</translation>
    </message>
    <message>
        <source>weeks of the season</source>
        <translation>semaines de la saison</translation>
    </message>
    <message>
        <source>planned training days done</source>
        <translation>jours prévus faits</translation>
    </message>
    <message>
        <source>sessions in the log</source>
        <translation>séances au journal</translation>
    </message>
    <message>
        <source>repetitions in the log</source>
        <translation>répétitions au journal</translation>
    </message>
    <message>
        <source>days lost</source>
        <translation>jours perdus</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Ce qui s&apos;est passé</translation>
    </message>
    <message>
        <source>The season ran %1, from %2 to %3.</source>
        <translation>La saison a duré %1, du %2 au %3.</translation>
    </message>
    <message>
        <source>Week %1 of %2: the season began on %3 and is planned to %4.</source>
        <translation>Semaine %1 sur %2 : la saison a commencé le %3 et est prévue jusqu&apos;au %4.</translation>
    </message>
    <message>
        <source>%1 of %2 planned training days were done.</source>
        <translation>%1 jours prévus sur %2 ont été faits.</translation>
    </message>
    <message>
        <source>%1 of 1 planned training day was done.</source>
        <translation>%1 jour prévu sur 1 a été fait.</translation>
    </message>
    <message>
        <source>%1 days were lost: %2.</source>
        <translation>%1 jours ont été perdus : %2.</translation>
    </message>
    <message>
        <source>1 day was lost: %1.</source>
        <translation>1 jour a été perdu : %1.</translation>
    </message>
    <message>
        <source>%1 with %2 and %3 are in the log, all measured by a sensor.</source>
        <translation>Le journal contient %1 avec %2 et %3, toutes mesurées par capteur.</translation>
    </message>
    <message>
        <source>%1 with %2 and %3 are in the log, all typed in.</source>
        <translation>Le journal contient %1 avec %2 et %3, toutes saisies à la main.</translation>
    </message>
    <message>
        <source>%1 with %2 and %3 are in the log, %4 of them measured by a sensor.</source>
        <translation>Le journal contient %1 avec %2 et %3, dont %4 mesurées par capteur.</translation>
    </message>
    <message>
        <source>%1: from %2 to %3 in %4; on %5 since %6.</source>
        <translation>%1 : de %2 à %3 en %4 ; sur %5 depuis le %6.</translation>
    </message>
    <message>
        <source>%1: on %2 since %3.</source>
        <translation>%1 : sur %2 depuis le %3.</translation>
    </message>
    <message>
        <source>%1 became shorter on %2.</source>
        <translation>%1 : plus court sur %2.</translation>
    </message>
    <message>
        <source>%1 became longer on %2.</source>
        <translation>%1 : plus long sur %2.</translation>
    </message>
    <message>
        <source>No change of %1 beyond its day-to-day error on %2.</source>
        <translation>Pas de changement (%1) au-delà de l&apos;erreur quotidienne sur %2.</translation>
    </message>
    <message>
        <source>%1: %2; best %3 s on %4 (wind %5 m/s), best of the first day %6 s.</source>
        <translation>%1 : %2 ; meilleur %3 s le %4 (vent %5 m/s), meilleur du premier jour %6 s.</translation>
    </message>
    <message>
        <source>%1: %2; best %3 s on %4, best of the first day %5 s.</source>
        <translation>%1 : %2 ; meilleur %3 s le %4, meilleur du premier jour %5 s.</translation>
    </message>
    <message>
        <source>%1 decisions were taken (%2); %3 followed, %4 changed by the athlete; of those that are no hold, %5 still open.</source>
        <translation>%1 décisions ont été prises (%2) ; %3 suivies, %4 changées par l&apos;athlète ; parmi celles autres que « tenir », %5 restent ouvertes.</translation>
    </message>
    <message>
        <source>1 decision was taken (%1); %2 followed, %3 changed by the athlete; of those that are no hold, %4 still open.</source>
        <translation>1 décision a été prise (%1) ; %2 suivie, %3 changée par l&apos;athlète ; parmi celles autres que « tenir », %4 reste ouverte.</translation>
    </message>
    <message>
        <source>Pain of 3 or more out of 10 was noted on %1 (%2).</source>
        <translation>Une douleur de 3 ou plus sur 10 a été notée sur %1 (%2).</translation>
    </message>
    <message>
        <source>Pain of 3 or more out of 10 was noted on %1.</source>
        <translation>Une douleur de 3 ou plus sur 10 a été notée sur %1.</translation>
    </message>
    <message>
        <source>%1 (%2 to %3 ms, typical error %4 ms)</source>
        <translation>%1 (de %2 à %3 ms, erreur typique %4 ms)</translation>
    </message>
    <message>
        <source>%1, left</source>
        <translation>%1, gauche</translation>
    </message>
    <message>
        <source>%1, right</source>
        <translation>%1, droite</translation>
    </message>
    <message>
        <source>%1 sets</source>
        <translation>%1 séries</translation>
    </message>
    <message>
        <source>1 set</source>
        <translation>1 série</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1 répétitions</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1 répétition</translation>
    </message>
    <message>
        <source>%1 changes of rung</source>
        <translation>%1 changements d&apos;échelon</translation>
    </message>
    <message>
        <source>1 change of rung</source>
        <translation>1 changement d&apos;échelon</translation>
    </message>
    <message>
        <source>%1 runs</source>
        <translation>%1 courses</translation>
    </message>
    <message>
        <source>1 run</source>
        <translation>1 course</translation>
    </message>
    <message>
        <source>%1 hold</source>
        <translation>%1 × tenir</translation>
    </message>
    <message>
        <source>%1 step</source>
        <translation>%1 × avancer</translation>
    </message>
    <message>
        <source>%1 step back</source>
        <translation>%1 × reculer</translation>
    </message>
    <message>
        <source>%1 ease</source>
        <translation>%1 × alléger</translation>
    </message>
    <message>
        <source>%1 rest</source>
        <translation>%1 × repos</translation>
    </message>
    <message>
        <source>illness %1</source>
        <translation>maladie %1</translation>
    </message>
    <message>
        <source>travel %1</source>
        <translation>voyage %1</translation>
    </message>
    <message>
        <source>exams %1</source>
        <translation>examens %1</translation>
    </message>
    <message>
        <source>injury %1</source>
        <translation>blessure %1</translation>
    </message>
    <message>
        <source>no reason given %1</source>
        <translation>sans raison %1</translation>
    </message>
    <message>
        <source>Competitions</source>
        <translation>Compétitions</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Competition</source>
        <translation>Compétition</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Priorité</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>main</source>
        <translation>principale</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation>à venir</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>This report is no medical advice.</source>
        <translation>Ce rapport n&apos;est pas un avis médical.</translation>
    </message>
    <message>
        <source>Work with a licensed coach or clinician; local rules and facility codes come first.</source>
        <translation>Travaille avec un entraîneur ou un médecin diplômé ; les règles locales et celles de l&apos;établissement priment.</translation>
    </message>
    <message>
        <source>Pain, injury, pregnancy: clear it with a clinician before training on.</source>
        <translation>Douleur, blessure, grossesse : consulte un médecin avant de continuer l&apos;entraînement.</translation>
    </message>
    <message>
        <source>Under 18: with a guardian&apos;s consent and clearance.</source>
        <translation>Avant 18 ans : avec l&apos;accord du responsable légal et un feu vert médical.</translation>
    </message>
    <message>
        <source>Heavy lifts over a short range: safety bars set and a spotter there.</source>
        <translation>Exercices lourds à courte amplitude : barres de sécurité en place et un pareur.</translation>
    </message>
    <message>
        <source>Landings are limited: keep to the contacts planned for a session.</source>
        <translation>Les réceptions sont limitées : tiens-toi aux contacts prévus pour la séance.</translation>
    </message>
    <message>
        <source>Estimates of the one-repetition maximum are estimates.</source>
        <translation>Les estimations du maximum sur une répétition sont des estimations.</translation>
    </message>
    <message>
        <source>Target bands are starting values, for show: where a rung should lead, not a mark to be forced.</source>
        <translation>Les bandes cibles sont des valeurs de départ, pour information : où mène un échelon, pas une marque à forcer.</translation>
    </message>
    <message>
        <source>That strength over shorter ranges carries over better to sprinting is the working premise, with evidence on both sides.</source>
        <translation>Que la force à courte amplitude se transfère mieux au sprint est l&apos;hypothèse de travail, avec des preuves dans les deux sens.</translation>
    </message>
    <message>
        <source>Nothing here shows cause.</source>
        <translation>Rien ici ne montre une cause.</translation>
    </message>
    <message>
        <source>%1 ladder</source>
        <translation>Échelle %1</translation>
    </message>
    <message>
        <source>Rung</source>
        <translation>Échelon</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Prévu</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Suivi</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Séries</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Répétitions</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>poids du corps</translation>
    </message>
    <message>
        <source>%1 against the target band</source>
        <translation>%1 face à la bande cible</translation>
    </message>
    <message>
        <source>Within each rung</source>
        <translation>Sur chaque échelon</translation>
    </message>
    <message>
        <source>Entry: mean of the first three sessions; latest: mean of the last three; a change is called one from 1.35 typical errors on.</source>
        <translation>Entrée : moyenne des trois premières séances ; dernier : moyenne des trois dernières ; un changement compte dès 1,35 erreur typique.</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Séances</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Latest</source>
        <translation>Dernier</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Écart</translation>
    </message>
    <message>
        <source>Typical error</source>
        <translation>Erreur typique</translation>
    </message>
    <message>
        <source>Target band</source>
        <translation>Bande cible</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>quicker</source>
        <translation>plus rapide</translation>
    </message>
    <message>
        <source>slower</source>
        <translation>plus lent</translation>
    </message>
    <message>
        <source>no clear change</source>
        <translation>pas d&apos;écart net</translation>
    </message>
    <message>
        <source>%1: load and velocity</source>
        <translation>%1 : charge et vitesse</translation>
    </message>
    <message>
        <source>No line: %1.</source>
        <translation>Pas de droite : %1.</translation>
    </message>
    <message>
        <source>The fastest repetition at each load of %1 sessions on this rung, %2 points, a robust line.</source>
        <translation>La répétition la plus rapide à chaque charge de %1 séances sur cet échelon, %2 points, droite robuste.</translation>
    </message>
    <message>
        <source>The fastest repetition at each load of 1 session on this rung, %1 points, a robust line.</source>
        <translation>La répétition la plus rapide à chaque charge d&apos;une séance sur cet échelon, %1 points, droite robuste.</translation>
    </message>
    <message>
        <source>No velocity at 1RM is published for this lift: it points to no 1RM.</source>
        <translation>Aucune vitesse au 1RM n&apos;est publiée pour cet exercice : elle ne désigne aucun 1RM.</translation>
    </message>
    <message>
        <source>Estimated 1RM %1 (95 %: %2 to %3), where the line meets %4 m/s (%5).</source>
        <translation>1RM estimé %1 (95 % : %2 à %3), où la droite atteint %4 m/s (%5).</translation>
    </message>
    <message>
        <source>Estimated 1RM %1, where the line meets %2 m/s (%3).</source>
        <translation>1RM estimé %1, où la droite atteint %2 m/s (%3).</translation>
    </message>
    <message>
        <source>An estimate is an estimate.</source>
        <translation>Une estimation est une estimation.</translation>
    </message>
    <message>
        <source>Decisions and their reasons</source>
        <translation>Décisions et leurs raisons</translation>
    </message>
    <message>
        <source>Holds and rests in a row stand in one line, with the reason of the last; of a hold only what was not met is shown.</source>
        <translation>Les « tenir » et « repos » qui se suivent tiennent en une ligne, avec la raison du dernier ; d&apos;un « tenir », seul ce qui n&apos;est pas atteint est montré.</translation>
    </message>
    <message>
        <source>Every decision with all its numbers stands in the tables.</source>
        <translation>Chaque décision avec tous ses chiffres est dans les tableaux.</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Échelle</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Décision</translation>
    </message>
    <message>
        <source>Reason and evidence</source>
        <translation>Raison et preuve</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Réponse</translation>
    </message>
    <message>
        <source>Evidence: %1.</source>
        <translation>Preuve : %1.</translation>
    </message>
    <message>
        <source>%1: met</source>
        <translation>%1 : atteint</translation>
    </message>
    <message>
        <source>%1: not met</source>
        <translation>%1 : pas atteint</translation>
    </message>
    <message>
        <source>%1 followed, %2 open</source>
        <translation>%1 suivies, %2 ouvertes</translation>
    </message>
    <message>
        <source>followed</source>
        <translation>suivie</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouverte</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>changée</translation>
    </message>
    <message>
        <source>%1 (%2 times)</source>
        <translation>%1 (%2 fois)</translation>
    </message>
    <message>
        <source>Hold at %1</source>
        <translation>Tenir : %1</translation>
    </message>
    <message>
        <source>Ease at %1</source>
        <translation>Alléger : %1</translation>
    </message>
    <message>
        <source>Rest at %1</source>
        <translation>Repos : %1</translation>
    </message>
    <message>
        <source>Step, %1 to %2</source>
        <translation>Avancer, de %1 à %2</translation>
    </message>
    <message>
        <source>Step back, %1 to %2</source>
        <translation>Reculer, de %1 à %2</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Tenir</translation>
    </message>
    <message>
        <source>Ease</source>
        <translation>Alléger</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Repos</translation>
    </message>
    <message>
        <source>Sprint times</source>
        <translation>Temps de sprint</translation>
    </message>
    <message>
        <source>Only times of the same test are comparable; wind, surface and shoes stand beside each.</source>
        <translation>Seuls les temps d&apos;un même test se comparent ; vent, surface et chaussures figurent à côté.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Best</source>
        <translation>Meilleur</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Vent</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Surface</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Chaussures</translation>
    </message>
    <message>
        <source>Timing</source>
        <translation>Chronométrage</translation>
    </message>
    <message>
        <source>Run-in</source>
        <translation>Élan</translation>
    </message>
    <message>
        <source>Other times (wind, m/s)</source>
        <translation>Autres temps (vent, m/s)</translation>
    </message>
    <message>
        <source>%1, race</source>
        <translation>%1, compétition</translation>
    </message>
    <message>
        <source>flying %1 m</source>
        <translation>%1 m lancés</translation>
    </message>
    <message>
        <source>%1: speed by the splits</source>
        <translation>%1 : vitesse selon les intermédiaires</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Courses</translation>
    </message>
    <message>
        <source>Top speed, m/s</source>
        <translation>Vit. de pointe, m/s</translation>
    </message>
    <message>
        <source>Fit within, ms</source>
        <translation>Ajustement, ms</translation>
    </message>
    <message>
        <source>Power, W/kg</source>
        <translation>Puissance, W/kg</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Écarté</translation>
    </message>
    <message>
        <source>Speed over the way on %1, and how far each split lies from the curve</source>
        <translation>Vitesse selon la distance le %1, et l&apos;écart de chaque intermédiaire à la courbe</translation>
    </message>
    <message>
        <source>%1: no curve, %2</source>
        <translation>%1 : pas de courbe, %2</translation>
    </message>
    <message>
        <source>Without force and power: %1</source>
        <translation>Sans force ni puissance : %1</translation>
    </message>
    <message>
        <source>The run with the greatest top speed stands for its time.</source>
        <translation>La course à la plus grande vitesse de pointe représente sa date.</translation>
    </message>
    <message>
        <source>± is one standard error.</source>
        <translation>± est une erreur type.</translation>
    </message>
    <message>
        <source>F0 and power: greatest horizontal force and power for each kilogram, with the drag of the air.</source>
        <translation>F0 et puissance : force horizontale et puissance maximales par kilogramme, avec la résistance de l&apos;air.</translation>
    </message>
    <message>
        <source>A flying start gives none of these.</source>
        <translation>Un départ lancé ne donne rien de cela.</translation>
    </message>
    <message>
        <source>Track by week</source>
        <translation>Piste par semaine</translation>
    </message>
    <message>
        <source>Fast metres: metres at 90 and 95 % of the best speed of the 12 months before.</source>
        <translation>Mètres rapides : mètres à 90 et 95 % de la meilleure vitesse des 12 mois précédents.</translation>
    </message>
    <message>
        <source>A week above 1.3 times the mean of the four before it is said.</source>
        <translation>Une semaine au-delà de 1,3 fois la moyenne des quatre d&apos;avant est signalée.</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Semaine</translation>
    </message>
    <message>
        <source>week %1, %2</source>
        <translation>semaine %1, %2</translation>
    </message>
    <message>
        <source>week %1</source>
        <translation>semaine %1</translation>
    </message>
    <message>
        <source>Sprint days</source>
        <translation>Jours de sprint</translation>
    </message>
    <message>
        <source>Metres</source>
        <translation>Mètres</translation>
    </message>
    <message>
        <source>At 90 %</source>
        <translation>À 90 %</translation>
    </message>
    <message>
        <source>At 95 %</source>
        <translation>À 95 %</translation>
    </message>
    <message>
        <source>Resisted</source>
        <translation>Freiné</translation>
    </message>
    <message>
        <source>Hill</source>
        <translation>Côte</translation>
    </message>
    <message>
        <source>Contacts</source>
        <translation>Contacts</translation>
    </message>
    <message>
        <source>More than usual</source>
        <translation>Plus que d&apos;habitude</translation>
    </message>
    <message>
        <source>* Part of it is estimated: runs without splits, or work counted by its effort.</source>
        <translation>* En partie estimé : courses sans intermédiaires, ou travail compté par l&apos;effort.</translation>
    </message>
    <message>
        <source>Work on the track</source>
        <translation>Travail sur piste</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Effort</translation>
    </message>
    <message>
        <source>sled %1</source>
        <translation>traîneau %1</translation>
    </message>
    <message>
        <source>slope %1 %</source>
        <translation>pente %1 %</translation>
    </message>
    <message>
        <source>best %1 s</source>
        <translation>meilleur %1 s</translation>
    </message>
    <message>
        <source>best %1 s %2</source>
        <translation>meilleur %1 s %2</translation>
    </message>
    <message>
        <source>wind %1 m/s</source>
        <translation>vent %1 m/s</translation>
    </message>
    <message>
        <source>run-in %1 m</source>
        <translation>élan %1 m</translation>
    </message>
    <message>
        <source>sprints</source>
        <translation>sprints</translation>
    </message>
    <message>
        <source>flying</source>
        <translation>lancé</translation>
    </message>
    <message>
        <source>resisted</source>
        <translation>freiné</translation>
    </message>
    <message>
        <source>hill</source>
        <translation>côte</translation>
    </message>
    <message>
        <source>easy</source>
        <translation>facile</translation>
    </message>
    <message>
        <source>track</source>
        <translation>piste</translation>
    </message>
    <message>
        <source>indoor</source>
        <translation>salle</translation>
    </message>
    <message>
        <source>grass</source>
        <translation>herbe</translation>
    </message>
    <message>
        <source>spikes</source>
        <translation>pointes</translation>
    </message>
    <message>
        <source>flats</source>
        <translation>baskets</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>à la main</translation>
    </message>
    <message>
        <source>gates</source>
        <translation>cellules</translation>
    </message>
    <message>
        <source>video</source>
        <translation>vidéo</translation>
    </message>
    <message>
        <source>electronic</source>
        <translation>électronique</translation>
    </message>
    <message>
        <source>Jumps</source>
        <translation>Sauts</translation>
    </message>
    <message>
        <source>Jump</source>
        <translation>Saut</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Caisse</translation>
    </message>
    <message>
        <source>Contact, median</source>
        <translation>Contact, médiane</translation>
    </message>
    <message>
        <source>Best height or distance</source>
        <translation>Meilleure hauteur ou distance</translation>
    </message>
    <message>
        <source>Best reactive strength</source>
        <translation>Meilleure force réactive</translation>
    </message>
    <message>
        <source>Reactive strength: jump height over contact time.</source>
        <translation>Force réactive : hauteur du saut sur temps de contact.</translation>
    </message>
    <message>
        <source>drop jump</source>
        <translation>saut en contrebas</translation>
    </message>
    <message>
        <source>standing long jump</source>
        <translation>saut en longueur sans élan</translation>
    </message>
    <message>
        <source>standing triple jump</source>
        <translation>triple saut sans élan</translation>
    </message>
    <message>
        <source>counter-movement jump</source>
        <translation>saut avec contre-mouvement</translation>
    </message>
    <message>
        <source>%1 bounds</source>
        <translation>%1 bondissements</translation>
    </message>
    <message>
        <source>Did it work?</source>
        <translation>Cela a-t-il marché ?</translation>
    </message>
    <message>
        <source>Not judged: %1</source>
        <translation>Pas jugé : %1</translation>
    </message>
    <message>
        <source>The bar within each rung beside the sprint against the season&apos;s trend, week by week.</source>
        <translation>La barre sur chaque échelon à côté du sprint face à la tendance de la saison, semaine par semaine.</translation>
    </message>
    <message>
        <source>Times as they are would always go together: ranges grow shorter and summer comes.</source>
        <translation>Les temps bruts iraient toujours ensemble : l&apos;amplitude raccourcit et l&apos;été arrive.</translation>
    </message>
    <message>
        <source>Sprint</source>
        <translation>Sprint</translation>
    </message>
    <message>
        <source>Weeks with both</source>
        <translation>Semaines avec les deux</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>il faut</translation>
    </message>
    <message>
        <source>Rungs</source>
        <translation>Échelons</translation>
    </message>
    <message>
        <source>Rank correlation</source>
        <translation>Corrélation des rangs</translation>
    </message>
    <message>
        <source>95 %, for show</source>
        <translation>95 %, pour info</translation>
    </message>
    <message>
        <source>Chance reaches</source>
        <translation>Le hasard atteint</translation>
    </message>
    <message>
        <source>the same week</source>
        <translation>la même semaine</translation>
    </message>
    <message>
        <source>This is no proof of cause.</source>
        <translation>Ce n&apos;est pas une preuve de cause.</translation>
    </message>
    <message>
        <source>Planned against done</source>
        <translation>Prévu et fait</translation>
    </message>
    <message>
        <source>Phase</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>From – to</source>
        <translation>De – à</translation>
    </message>
    <message>
        <source>Days planned</source>
        <translation>Jours prévus</translation>
    </message>
    <message>
        <source>Days done</source>
        <translation>Jours faits</translation>
    </message>
    <message>
        <source>Sets planned</source>
        <translation>Séries prévues</translation>
    </message>
    <message>
        <source>Sets done</source>
        <translation>Séries faites</translation>
    </message>
    <message>
        <source>Days lost</source>
        <translation>Jours perdus</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>illness</source>
        <translation>maladie</translation>
    </message>
    <message>
        <source>travel</source>
        <translation>voyage</translation>
    </message>
    <message>
        <source>exams</source>
        <translation>examens</translation>
    </message>
    <message>
        <source>injury</source>
        <translation>blessure</translation>
    </message>
    <message>
        <source>Pain noted</source>
        <translation>Douleur notée</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Douleur</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1 m from blocks</source>
        <translation>%1 m en starting-blocks</translation>
    </message>
    <message>
        <source>%1 m standing</source>
        <translation>%1 m debout</translation>
    </message>
    <message>
        <source>%1 m falling</source>
        <translation>%1 m départ tombé</translation>
    </message>
    <message>
        <source>%1 m rolling</source>
        <translation>%1 m départ roulant</translation>
    </message>
    <message>
        <source>block</source>
        <translation>starting-blocks</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>debout</translation>
    </message>
    <message>
        <source>falling</source>
        <translation>tombé</translation>
    </message>
    <message>
        <source>rolling</source>
        <translation>roulant</translation>
    </message>
    <message>
        <source>race</source>
        <translation>course</translation>
    </message>
    <message>
        <source>%1 % more fast metres than the mean of the four weeks before</source>
        <translation>%1 % de mètres rapides de plus que la moyenne des quatre semaines d&apos;avant</translation>
    </message>
    <message>
        <source>%1 % more metres than the mean of the four weeks before</source>
        <translation>%1 % de mètres de plus que la moyenne des quatre semaines d&apos;avant</translation>
    </message>
    <message>
        <source>fast metres after four weeks without</source>
        <translation>mètres rapides après quatre semaines sans</translation>
    </message>
    <message>
        <source>metres after four weeks without</source>
        <translation>mètres après quatre semaines sans</translation>
    </message>
    <message>
        <source>lift at two loads at least 10 % apart; a third and a fourth steady the line</source>
        <translation>soulève à deux charges écartées d&apos;au moins 10 % ; une troisième et une quatrième affermissent la droite</translation>
    </message>
    <message>
        <source>Hold, %1 to %2</source>
        <translation>Tenir, de %1 à %2</translation>
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
        <translation>Records personnels</translation>
    </message>
    <message>
        <source>Best</source>
        <translation>Meilleur</translation>
    </message>
</context>
<context>
    <name>RunFitSheet</name>
    <message>
        <source>Touch a split to read it.</source>
        <translation>Touche un intermédiaire pour le lire.</translation>
    </message>
    <message>
        <source>Splits that were left out</source>
        <translation>Intermédiaires laissés de côté</translation>
    </message>
    <message>
        <source>Use them anyway</source>
        <translation>Les prendre quand même</translation>
    </message>
    <message>
        <source>Splits against the fit</source>
        <translation>Intermédiaires face à la courbe</translation>
    </message>
    <message>
        <source>Force and power</source>
        <translation>Force et puissance</translation>
    </message>
</context>
<context>
    <name>RunFormWords</name>
    <message>
        <source>That day has not come yet.</source>
        <translation>Ce jour n&apos;est pas encore venu.</translation>
    </message>
    <message>
        <source>The split at %1 says %2. Take one of them out.</source>
        <translation>L&apos;intermédiaire à %1 donne %2. Retire l&apos;un des deux.</translation>
    </message>
    <message>
        <source>It must be later than the last split.</source>
        <translation>Il doit venir après le dernier intermédiaire.</translation>
    </message>
    <message>
        <source>A split lies at %1.</source>
        <translation>Un intermédiaire est à %1.</translation>
    </message>
    <message>
        <source>That is faster than anyone has run. Check distance and time.</source>
        <translation>Personne n&apos;a couru si vite. Vérifie distance et temps.</translation>
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
        <translation>Supprimer %1, %2</translation>
    </message>
</context>
<context>
    <name>RunRowsWords</name>
    <message>
        <source>competition</source>
        <translation>compétition</translation>
    </message>
    <message>
        <source>test day</source>
        <translation>jour de test</translation>
    </message>
    <message>
        <source>wind %1</source>
        <translation>vent %1</translation>
    </message>
    <message>
        <source>wind-aided</source>
        <translation>vent favorable</translation>
    </message>
    <message>
        <source>best</source>
        <translation>meilleur</translation>
    </message>
    <message>
        <source>run-in %1</source>
        <translation>élan %1</translation>
    </message>
    <message>
        <source>%1 splits</source>
        <translation>%1 intermédiaires</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>à la main</translation>
    </message>
    <message>
        <source>run once</source>
        <translation>couru une fois</translation>
    </message>
    <message>
        <source>%1 runs</source>
        <translation>%1 courses</translation>
    </message>
    <message>
        <source>wind-aided %1 (%2)</source>
        <translation>vent favorable %1 (%2)</translation>
    </message>
</context>
<context>
    <name>RunSheet</name>
    <message>
        <source>Add a run</source>
        <translation>Ajouter une course</translation>
    </message>
    <message>
        <source>Zone, m</source>
        <translation>Zone, m</translation>
    </message>
    <message>
        <source>Distance, m</source>
        <translation>Distance, m</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Départ</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Blocs</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Debout</translation>
    </message>
    <message>
        <source>Falling</source>
        <translation>En déséquilibre</translation>
    </message>
    <message>
        <source>Rolling</source>
        <translation>En mouvement</translation>
    </message>
    <message>
        <source>Flying</source>
        <translation>Lancé</translation>
    </message>
    <message>
        <source>Run-in before the zone, m</source>
        <translation>Élan avant la zone, m</translation>
    </message>
    <message>
        <source>Splits</source>
        <translation>Intermédiaires</translation>
    </message>
    <message>
        <source>Time, s (if no split stands at the end)</source>
        <translation>Temps, s (sans intermédiaire à l&apos;arrivée)</translation>
    </message>
    <message>
        <source>Time, s</source>
        <translation>Temps, s</translation>
    </message>
    <message>
        <source>Wind, m/s, tail wind positive (optional)</source>
        <translation>Vent, m/s, positif dans le dos (facultatif)</translation>
    </message>
    <message>
        <source>+0,8 or -1.2</source>
        <translation>+0,8 ou -1.2</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>Chronométrage</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Manuel</translation>
    </message>
    <message>
        <source>Gates</source>
        <translation>Cellules</translation>
    </message>
    <message>
        <source>Video</source>
        <translation>Vidéo</translation>
    </message>
    <message>
        <source>Electronic</source>
        <translation>Électronique</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Surface</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Piste</translation>
    </message>
    <message>
        <source>Indoor</source>
        <translation>Salle</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>Herbe</translation>
    </message>
    <message>
        <source>Is it one of these?</source>
        <translation>Est-ce l&apos;un de ceux-ci ?</translation>
    </message>
    <message>
        <source>Trial of a test day</source>
        <translation>Essai d&apos;un jour de test</translation>
    </message>
    <message>
        <source>Competition</source>
        <translation>Compétition</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Moins</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Shoes, reaction, air, steps from video, note</source>
        <translation>Chaussures, réaction, air, foulées par vidéo, note</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Chaussures</translation>
    </message>
    <message>
        <source>Spikes</source>
        <translation>Pointes</translation>
    </message>
    <message>
        <source>Flats</source>
        <translation>Baskets</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Non indiqué</translation>
    </message>
    <message>
        <source>Reaction from the gun, s, where it was timed</source>
        <translation>Réaction au coup de feu, s, si mesurée</translation>
    </message>
    <message>
        <source>Start line to the beam that starts the clock, m; the splits count from the beam</source>
        <translation>De la ligne de départ à la cellule qui lance le chrono, m ; les intermédiaires comptent depuis la cellule</translation>
    </message>
    <message>
        <source>Air temperature, °C</source>
        <translation>Température de l&apos;air, °C</translation>
    </message>
    <message>
        <source>Height above the sea, m</source>
        <translation>Altitude, m</translation>
    </message>
    <message>
        <source>Ground contact near top speed, ms: from video at 240 pictures a second, ± 4 ms</source>
        <translation>Contact près de la vitesse de pointe, ms : vidéo à 240 images par seconde, ± 4 ms</translation>
    </message>
    <message>
        <source>Step length near top speed, %1, from video</source>
        <translation>Longueur de foulée près de la vitesse de pointe, %1, par vidéo</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Save the run</source>
        <translation>Enregistrer la course</translation>
    </message>
    <message>
        <source>Day, like %1</source>
        <translation>Date, p. ex. %1</translation>
    </message>
</context>
<context>
    <name>RungFormWords</name>
    <message>
        <source>This is no height of a box.</source>
        <translation>Ce n&apos;est pas une hauteur de caisse.</translation>
    </message>
    <message>
        <source>leads to %1</source>
        <translation>mène à %1</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>The longer range stands here.</source>
        <translation>Ici va la plus grande amplitude.</translation>
    </message>
    <message>
        <source>The later time stands here.</source>
        <translation>Ici va le temps le plus tardif.</translation>
    </message>
    <message>
        <source>It ends before it begins.</source>
        <translation>Il finit avant de commencer.</translation>
    </message>
</context>
<context>
    <name>RungSheet</name>
    <message>
        <source>A new rung</source>
        <translation>Un nouvel échelon</translation>
    </message>
    <message>
        <source>Change the rung</source>
        <translation>Changer l&apos;échelon</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Range from, %1</source>
        <translation>Amplitude de, %1</translation>
    </message>
    <message>
        <source>to, %1</source>
        <translation>à, %1</translation>
    </message>
    <message>
        <source>Should lead to, from ms</source>
        <translation>Doit mener à, de ms</translation>
    </message>
    <message>
        <source>to, ms</source>
        <translation>à, ms</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Séries</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Répétitions</translation>
    </message>
    <message>
        <source>Rest, seconds</source>
        <translation>Repos, secondes</translation>
    </message>
    <message>
        <source>Box, %1 (optional)</source>
        <translation>Caisse, %1 (facultatif)</translation>
    </message>
    <message>
        <source>Begins, at the earliest, in</source>
        <translation>Commence, au plus tôt, en</translation>
    </message>
    <message>
        <source>Is left, at the latest, at the end of</source>
        <translation>Se quitte, au plus tard, à la fin de</translation>
    </message>
    <message>
        <source>First load here, % of the last load on the rung before</source>
        <translation>Première charge ici, % de la dernière sur l&apos;échelon d&apos;avant</translation>
    </message>
    <message>
        <source>Probe load, % of what the rung allows (0 for body mass)</source>
        <translation>Charge témoin, % de ce que permet l&apos;échelon (0 : poids du corps)</translation>
    </message>
    <message>
        <source>How the bar moves: what the sensor looks for</source>
        <translation>Comment bouge la barre : ce que cherche le capteur</translation>
    </message>
    <message>
        <source>What it needs</source>
        <translation>Ce qu&apos;il faut</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Barre</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Cage</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Taquets</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Plots</translation>
    </message>
    <message>
        <source>Take this rung out</source>
        <translation>Retirer cet échelon</translation>
    </message>
    <message>
        <source>Some of it cannot be taken yet: look above.</source>
        <translation>Tout ne va pas encore : regarde plus haut.</translation>
    </message>
    <message>
        <source>Keep the rung</source>
        <translation>Garder l&apos;échelon</translation>
    </message>
</context>
<context>
    <name>SeasonChangesWords</name>
    <message>
        <source>1 day</source>
        <translation>1 jour</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1 : %2 à %3</translation>
    </message>
    <message>
        <source>, %1 longer</source>
        <translation>, %1 de plus</translation>
    </message>
    <message>
        <source>, %1 shorter</source>
        <translation>, %1 de moins</translation>
    </message>
    <message>
        <source>, new</source>
        <translation>, nouvelle</translation>
    </message>
    <message>
        <source>No more %1</source>
        <translation>Disparaît : %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3</source>
        <translation>%1 : %2 au lieu de %3</translation>
    </message>
    <message>
        <source>%1: %2, new</source>
        <translation>%1 : %2, nouveau</translation>
    </message>
    <message>
        <source>%1, %2: no longer planned</source>
        <translation>%1, %2 : n&apos;est plus prévu</translation>
    </message>
</context>
<context>
    <name>SeasonEditSheet</name>
    <message>
        <source>Change the season</source>
        <translation>Modifier la saison</translation>
    </message>
    <message>
        <source>Competitions</source>
        <translation>Compétitions</translation>
    </message>
    <message>
        <source>Add a competition</source>
        <translation>Ajouter une compétition</translation>
    </message>
    <message>
        <source>Travel, exams, illness, injury</source>
        <translation>Voyage, examens, maladie, blessure</translation>
    </message>
    <message>
        <source>Add days away</source>
        <translation>Ajouter des jours d&apos;absence</translation>
    </message>
    <message>
        <source>The week</source>
        <translation>La semaine</translation>
    </message>
    <message>
        <source>Days with lifts</source>
        <translation>Jours d&apos;exercices</translation>
    </message>
    <message>
        <source>Days with sprints</source>
        <translation>Jours de sprints</translation>
    </message>
    <message>
        <source>Length of a session with lifts, minutes</source>
        <translation>Durée d&apos;une séance d&apos;exercices, minutes</translation>
    </message>
    <message>
        <source>Keep this length</source>
        <translation>Garder cette durée</translation>
    </message>
    <message>
        <source>The weight room</source>
        <translation>La salle de musculation</translation>
    </message>
    <message>
        <source>What it has</source>
        <translation>Ce qu&apos;elle a</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Barre</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Cage</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Taquets</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Plots</translation>
    </message>
    <message>
        <source>Boxes</source>
        <translation>Caisses</translation>
    </message>
    <message>
        <source>A height that you do not have is never planned. It stays as you type it.</source>
        <translation>Une hauteur que tu n&apos;as pas n&apos;est jamais prévue. Elle reste telle que tu la saisis.</translation>
    </message>
    <message>
        <source>Remove the box of %1</source>
        <translation>Retirer la caisse de %1</translation>
    </message>
    <message>
        <source>Height of another box, %1</source>
        <translation>Hauteur d&apos;une autre caisse, %1</translation>
    </message>
    <message>
        <source>Add this box</source>
        <translation>Ajouter cette caisse</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Exercices</translation>
    </message>
    <message>
        <source>Ladders and other lifts</source>
        <translation>Échelles et autres exercices</translation>
    </message>
</context>
<context>
    <name>SeasonFormWords</name>
    <message>
        <source>&quot;%1&quot; is no height of a box.</source>
        <translation>« %1 » n&apos;est pas une hauteur de caisse.</translation>
    </message>
    <message>
        <source>Choose at least one day.</source>
        <translation>Choisis au moins un jour.</translation>
    </message>
    <message>
        <source>Choose at least one lift.</source>
        <translation>Choisis au moins un exercice.</translation>
    </message>
    <message>
        <source>The competition comes after the season&apos;s first day.</source>
        <translation>La compétition vient après le premier jour de la saison.</translation>
    </message>
</context>
<context>
    <name>SeasonLiftsSheet</name>
    <message>
        <source>Lifts of the season</source>
        <translation>Exercices de la saison</translation>
    </message>
    <message>
        <source>A ladder of your own</source>
        <translation>Une échelle à toi</translation>
    </message>
    <message>
        <source>Beside the ladders</source>
        <translation>À côté des échelles</translation>
    </message>
    <message>
        <source>Hip thrusts, hamstring work, upper body, throws: logged and counted as load, never stepped.</source>
        <translation>Hip thrusts, ischios, haut du corps, lancers : notés et comptés comme charge, sans échelons.</translation>
    </message>
    <message>
        <source>Add a lift beside the ladders</source>
        <translation>Ajouter un exercice hors échelles</translation>
    </message>
    <message>
        <source>Begin with a copy of</source>
        <translation>Commencer par une copie de</translation>
    </message>
    <message>
        <source>Everything in it can be changed: names, ranges, boxes, times, phases.</source>
        <translation>Tout s&apos;y change : noms, amplitudes, caisses, temps, phases.</translation>
    </message>
</context>
<context>
    <name>SeasonSheet</name>
    <message>
        <source>Plan a season</source>
        <translation>Planifier une saison</translation>
    </message>
    <message>
        <source>Main competition</source>
        <translation>Compétition principale</translation>
    </message>
    <message>
        <source>club championship</source>
        <translation>championnat du club</translation>
    </message>
    <message>
        <source>First day of the season</source>
        <translation>Premier jour de la saison</translation>
    </message>
    <message>
        <source>Days with lifts</source>
        <translation>Jours d&apos;exercices</translation>
    </message>
    <message>
        <source>Days with sprints</source>
        <translation>Jours de sprints</translation>
    </message>
    <message>
        <source>Lifts you keep for the whole season, a few</source>
        <translation>Exercices gardés toute la saison, peu</translation>
    </message>
    <message>
        <source>What the weight room has</source>
        <translation>Ce qu&apos;il y a dans la salle de musculation</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Barre</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Cage</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Taquets</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Plots</translation>
    </message>
    <message>
        <source>Heights of boxes, %1, with spaces between</source>
        <translation>Hauteurs des caisses, %1, séparées par des espaces</translation>
    </message>
    <message>
        <source>20 30 45</source>
        <translation>20 30 45</translation>
    </message>
    <message>
        <source>Lay out the season</source>
        <translation>Tracer la saison</translation>
    </message>
    <message>
        <source>Day of the main competition</source>
        <translation>Jour de la compétition principale</translation>
    </message>
</context>
<context>
    <name>SecondarySheet</name>
    <message>
        <source>A lift beside the ladders</source>
        <translation>Un exercice hors échelles</translation>
    </message>
    <message>
        <source>Change the lift</source>
        <translation>Changer l&apos;exercice</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>hip thrust</source>
        <translation>hip thrust</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Jours</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Séries</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Répétitions</translation>
    </message>
    <message>
        <source>What it loads: pain there rests it</source>
        <translation>Ce qu&apos;il charge : une douleur là le met au repos</translation>
    </message>
    <message>
        <source>Moves like</source>
        <translation>Bouge comme</translation>
    </message>
    <message>
        <source>Take it out of the plan</source>
        <translation>Le retirer du plan</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
</context>
<context>
    <name>Sensor</name>
    <message>
        <source>Bar sensor</source>
        <translation>Capteur de barre</translation>
    </message>
    <message>
        <source>Started with --no-radio: no sensor is looked for.</source>
        <translation>Lancé avec --no-radio : aucun capteur n&apos;est cherché.</translation>
    </message>
</context>
<context>
    <name>SensorPill</name>
    <message>
        <source>%1. %2 Show the sensors</source>
        <translation>%1. %2 Voir les capteurs</translation>
    </message>
</context>
<context>
    <name>SensorSheet</name>
    <message>
        <source>Try now</source>
        <translation>Essayer maintenant</translation>
    </message>
    <message>
        <source>Where it is worn</source>
        <translation>Où il se porte</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Save the name</source>
        <translation>Enregistrer le nom</translation>
    </message>
    <message>
        <source>Measure its six sides</source>
        <translation>Mesurer ses six faces</translation>
    </message>
    <message>
        <source>As soon as it streams.</source>
        <translation>Dès qu&apos;il transmet.</translation>
    </message>
    <message>
        <source>How it is read</source>
        <translation>Comment il est lu</translation>
    </message>
    <message>
        <source>Teach it anew</source>
        <translation>Refaire l&apos;apprentissage</translation>
    </message>
    <message>
        <source>Three minutes, where its numbers look wrong.</source>
        <translation>Trois minutes, si ses nombres semblent faux.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Forget this sensor</source>
        <translation>Oublier ce capteur</translation>
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
        <translation>Sur la barre</translation>
    </message>
    <message>
        <source>On the shoe</source>
        <translation>Sur la chaussure</translation>
    </message>
    <message>
        <source>At the waist</source>
        <translation>À la taille</translation>
    </message>
    <message>
        <source>Bar sensor</source>
        <translation>Capteur de barre</translation>
    </message>
    <message>
        <source>Shoe sensor</source>
        <translation>Capteur de chaussure</translation>
    </message>
    <message>
        <source>Waist sensor</source>
        <translation>Capteur de taille</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Barre</translation>
    </message>
    <message>
        <source>Shoe</source>
        <translation>Chaussure</translation>
    </message>
    <message>
        <source>Waist</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Not looked for</source>
        <translation>Pas cherché</translation>
    </message>
    <message>
        <source>Looking for it</source>
        <translation>Recherche</translation>
    </message>
    <message>
        <source>Connecting</source>
        <translation>Connexion</translation>
    </message>
    <message>
        <source>Streaming</source>
        <translation>Transmission</translation>
    </message>
    <message>
        <source>Lost, looking for it</source>
        <translation>Perdu, recherche en cours</translation>
    </message>
    <message>
        <source>Far away</source>
        <translation>Loin</translation>
    </message>
    <message>
        <source>Across the room</source>
        <translation>Au bout de la salle</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Proche</translation>
    </message>
    <message>
        <source>Very close</source>
        <translation>Très proche</translation>
    </message>
    <message>
        <source>Signal not told</source>
        <translation>Signal inconnu</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>à l&apos;instant</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>il y a %1 min</translation>
    </message>
    <message>
        <source>%1 h ago</source>
        <translation>il y a %1 h</translation>
    </message>
    <message>
        <source>%1 Hz</source>
        <translation>%1 Hz</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Fréquence</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>Lost on the way</source>
        <translation>Perdu en route</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>Lateness</source>
        <translation>Retard</translation>
    </message>
    <message>
        <source>Longest pause</source>
        <translation>Plus longue pause</translation>
    </message>
    <message>
        <source>Battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>Zeroed</source>
        <translation>Mise à zéro</translation>
    </message>
    <message>
        <source>within 10 min</source>
        <translation>en moins de 10 min</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>lay it still</source>
        <translation>pose-le immobile</translation>
    </message>
    <message>
        <source>Turning</source>
        <translation>Rotation</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>pas mesuré</translation>
    </message>
    <message>
        <source>wider ± values</source>
        <translation>valeurs ± plus larges</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>Unreadable</source>
        <translation>Illisibles</translation>
    </message>
    <message>
        <source>Times lost</source>
        <translation>Fois perdu</translation>
    </message>
    <message>
        <source>since it was found</source>
        <translation>depuis qu&apos;il a été trouvé</translation>
    </message>
    <message>
        <source>battery %1 %</source>
        <translation>batterie %1 %</translation>
    </message>
    <message>
        <source>%1 lost</source>
        <translation>%1 perdu</translation>
    </message>
</context>
<context>
    <name>SensorsCard</name>
    <message>
        <source>Sensors</source>
        <translation>Capteurs</translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation>Ajouter un capteur</translation>
    </message>
    <message>
        <source>Show the sensors</source>
        <translation>Voir les capteurs</translation>
    </message>
</context>
<context>
    <name>SensorsSheet</name>
    <message>
        <source>Sensors</source>
        <translation>Capteurs</translation>
    </message>
    <message>
        <source>No sensor yet</source>
        <translation>Pas encore de capteur</translation>
    </message>
    <message>
        <source>Any motion sensor that speaks Bluetooth Low Energy will do. Add it once; from then on it is found by itself.</source>
        <translation>Tout capteur de mouvement en Bluetooth Low Energy convient. Ajoute-le une fois ; ensuite il se trouve seul.</translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation>Ajouter un capteur</translation>
    </message>
</context>
<context>
    <name>SessionView</name>
    <message>
        <source>How are you today?</source>
        <translation>Comment vas-tu aujourd&apos;hui ?</translation>
    </message>
    <message>
        <source>Sleep, soreness, pain: the day is decided with it.</source>
        <translation>Sommeil, courbatures, douleur : la journée se décide avec.</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4, %5</source>
        <translation>%1, %2, %3, %4, %5</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Pourquoi ?</translation>
    </message>
    <message>
        <source>Why %1 today?</source>
        <translation>Pourquoi %1 aujourd&apos;hui ?</translation>
    </message>
    <message>
        <source>Other lifts</source>
        <translation>Autres exercices</translation>
    </message>
    <message>
        <source>Several athletes on this sensor</source>
        <translation>Plusieurs athlètes sur ce capteur</translation>
    </message>
</context>
<context>
    <name>SetActions</name>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Undo the last repetition</source>
        <translation>Annuler la dernière répétition</translation>
    </message>
    <message>
        <source>End set</source>
        <translation>Fin de série</translation>
    </message>
</context>
<context>
    <name>SetView</name>
    <message>
        <source>Last set</source>
        <translation>Dernière série</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>Témoin</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Échauffement</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>Entretien</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Gauche</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Droite</translation>
    </message>
    <message>
        <source>velocity loss</source>
        <translation>perte de vitesse</translation>
    </message>
    <message>
        <source>Type a set in</source>
        <translation>Saisir une série</translation>
    </message>
    <message>
        <source>Why this today?</source>
        <translation>Pourquoi ceci aujourd&apos;hui ?</translation>
    </message>
    <message>
        <source>Loads by the chart</source>
        <translation>Charges selon le tableau</translation>
    </message>
    <message>
        <source>Stands large</source>
        <translation>En grand</translation>
    </message>
</context>
<context>
    <name>SharerStrip</name>
    <message>
        <source>Who lifts next?</source>
        <translation>Qui soulève ensuite ?</translation>
    </message>
    <message>
        <source>Who lifts next? End this set first.</source>
        <translation>Qui soulève ensuite ? Termine d&apos;abord cette série.</translation>
    </message>
    <message>
        <source>%1 lifts now</source>
        <translation>%1 soulève maintenant</translation>
    </message>
    <message>
        <source>%1 lifts next</source>
        <translation>%1 soulève ensuite</translation>
    </message>
</context>
<context>
    <name>SharingSheet</name>
    <message>
        <source>Who shares this sensor?</source>
        <translation>Qui partage ce capteur ?</translation>
    </message>
    <message>
        <source>Picked by hand. They stand above the set; one tap changes who lifts next.</source>
        <translation>Choisis à la main. Ils sont au-dessus de la série ; un appui change de personne.</translation>
    </message>
    <message>
        <source>Those of the same rack and round, as Squad shares them out. Tap names to pick by hand.</source>
        <translation>Ceux de la même cage et du même tour, comme Groupe les répartit. Touche des noms pour choisir toi-même.</translation>
    </message>
    <message>
        <source>Back to those of the rack</source>
        <translation>Revenir à ceux de la cage</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
</context>
<context>
    <name>SplitSheet</name>
    <message>
        <source>Splits</source>
        <translation>Intermédiaires</translation>
    </message>
    <message>
        <source>Take the last split off: %1</source>
        <translation>Retirer le dernier intermédiaire : %1</translation>
    </message>
    <message>
        <source>Split at, m</source>
        <translation>Intermédiaire à, m</translation>
    </message>
    <message>
        <source>Time, s</source>
        <translation>Temps, s</translation>
    </message>
    <message>
        <source>Time: %1 s</source>
        <translation>Temps : %1 s</translation>
    </message>
    <message>
        <source>Decimal point</source>
        <translation>Séparateur décimal</translation>
    </message>
    <message>
        <source>Erase a digit</source>
        <translation>Effacer un chiffre</translation>
    </message>
    <message>
        <source>Add the split</source>
        <translation>Ajouter l&apos;intermédiaire</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
</context>
<context>
    <name>SpokenWords</name>
    <message>
        <source>week %1</source>
        <translation>semaine %1</translation>
    </message>
    <message>
        <source>week %1 to %2</source>
        <translation>semaine %1 à %2</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 de %2 à %3</translation>
    </message>
    <message>
        <source>Across: %1.</source>
        <translation>En abscisse : %1.</translation>
    </message>
    <message>
        <source>Up: %1.</source>
        <translation>En ordonnée : %1.</translation>
    </message>
    <message>
        <source>%1: %2 to %3.</source>
        <translation>%1 : %2 à %3.</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 dès %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1 : %2.</translation>
    </message>
    <message>
        <source>%1: lowest %2, highest %3.</source>
        <translation>%1 : minimum %2, maximum %3.</translation>
    </message>
    <message>
        <source>%1 (no evidence)</source>
        <translation>%1 (pas une preuve)</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1, 1 mark: %2.</source>
        <translation>%1, 1 point : %2.</translation>
    </message>
    <message>
        <source>%1, %2 marks: %3.</source>
        <translation>%1, %2 points : %3.</translation>
    </message>
    <message>
        <source>first %1; last %2; lowest %3, highest %4</source>
        <translation>premier %1 ; dernier %2 ; minimum %3, maximum %4</translation>
    </message>
    <message>
        <source>Now on %1.</source>
        <translation>Maintenant sur %1.</translation>
    </message>
    <message>
        <source>Latest: %1.</source>
        <translation>Dernier : %1.</translation>
    </message>
    <message>
        <source>Latest: %1, inside the target band.</source>
        <translation>Dernier : %1, dans la bande cible.</translation>
    </message>
    <message>
        <source>Latest: %1, outside the target band.</source>
        <translation>Dernier : %1, hors de la bande cible.</translation>
    </message>
    <message>
        <source>In %1: %2.</source>
        <translation>En %1 : %2.</translation>
    </message>
    <message>
        <source>Chosen: %1 in %2.</source>
        <translation>Choisi : %1 en %2.</translation>
    </message>
</context>
<context>
    <name>SprintTrendCard</name>
    <message>
        <source>Sprint times</source>
        <translation>Temps de sprint</translation>
    </message>
    <message>
        <source>Which runs count</source>
        <translation>Quelles courses comptent</translation>
    </message>
</context>
<context>
    <name>SquadPage</name>
    <message>
        <source>Squad</source>
        <translation>Groupe</translation>
    </message>
    <message>
        <source>Who trains here?</source>
        <translation>Qui s&apos;entraîne ici ?</translation>
    </message>
    <message>
        <source>Add yourself, or each athlete you coach. Lifts, sprints and decisions are kept for each athlete apart, on this device only.</source>
        <translation>Ajoute-toi, ou chaque athlète que tu entraînes. Exercices, sprints et décisions sont gardés à part pour chacun, sur cet appareil seulement.</translation>
    </message>
    <message>
        <source>Add an athlete</source>
        <translation>Ajouter un athlète</translation>
    </message>
    <message>
        <source>Look around with a demo squad</source>
        <translation>Faire le tour avec un groupe de démonstration</translation>
    </message>
    <message>
        <source>Look at the demo squad</source>
        <translation>Voir le groupe de démonstration</translation>
    </message>
    <message>
        <source>Archive</source>
        <translation>Archives</translation>
    </message>
    <message>
        <source>Import sets from a file</source>
        <translation>Importer des séries d&apos;un fichier</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>What to know before you lift heavy, or jump from a box.</source>
        <translation>Ce qu&apos;il faut savoir avant de soulever lourd ou de sauter d&apos;une caisse.</translation>
    </message>
    <message>
        <source>Read the cautions</source>
        <translation>Lire les précautions</translation>
    </message>
</context>
<context>
    <name>SquadParts</name>
    <message>
        <source>Athletes</source>
        <translation>Athlètes</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd&apos;hui</translation>
    </message>
    <message>
        <source>This device</source>
        <translation>Cet appareil</translation>
    </message>
</context>
<context>
    <name>SquadToday</name>
    <message>
        <source>Squad</source>
        <translation>Groupe</translation>
    </message>
    <message>
        <source>Training group</source>
        <translation>Groupe d&apos;entraînement</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Afficher</translation>
    </message>
    <message>
        <source>Who lifts what</source>
        <translation>Qui soulève quoi</translation>
    </message>
    <message>
        <source>Racks and rounds</source>
        <translation>Cages et tours</translation>
    </message>
    <message>
        <source>One rack less</source>
        <translation>Une cage de moins</translation>
    </message>
    <message>
        <source>One rack more</source>
        <translation>Une cage de plus</translation>
    </message>
    <message>
        <source>Nobody is due</source>
        <translation>Personne n&apos;est prévu</translation>
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
        <translation>Le premier échelon de cette partie de la saison.</translation>
    </message>
    <message>
        <source>%1 days on %2 come first.</source>
        <translation>%1 jours sur %2 viennent d&apos;abord.</translation>
    </message>
    <message>
        <source>Not before %1, which begins on %2.</source>
        <translation>Pas avant %1, qui commence le %2.</translation>
    </message>
    <message>
        <source>The rungs below it need the time that is left before the main competition.</source>
        <translation>Les échelons en dessous ont besoin du temps qui reste avant la compétition principale.</translation>
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
        <translation>Étapes de l&apos;échelle</translation>
    </message>
</context>
<context>
    <name>StopSign</name>
    <message>
        <source>Stop the set</source>
        <translation>Arrêter la série</translation>
    </message>
</context>
<context>
    <name>SureRow</name>
    <message>
        <source>%1: %2, %3. %4</source>
        <translation>%1 : %2, %3. %4</translation>
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
        <translation>Apprentissage : %1</translation>
    </message>
    <message>
        <source>Connecting. Keep it near.</source>
        <translation>Connexion. Garde-le près.</translation>
    </message>
    <message>
        <source>Learning</source>
        <translation>Apprentissage</translation>
    </message>
    <message>
        <source>Keep what was learned as</source>
        <translation>Garder ce qui est appris sous</translation>
    </message>
    <message>
        <source>So high</source>
        <translation>Cette hauteur</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Commencer</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>The step before again</source>
        <translation>Refaire l&apos;étape d&apos;avant</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Start over</source>
        <translation>Recommencer</translation>
    </message>
</context>
<context>
    <name>Tile</name>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1 : %2. %3</translation>
    </message>
</context>
<context>
    <name>TouchedPoint</name>
    <message>
        <source>Touch a point to see its session.</source>
        <translation>Touche un point pour voir sa séance.</translation>
    </message>
    <message>
        <source>The point before</source>
        <translation>Le point d&apos;avant</translation>
    </message>
    <message>
        <source>The next point</source>
        <translation>Le point suivant</translation>
    </message>
    <message>
        <source>Close the session</source>
        <translation>Fermer la séance</translation>
    </message>
    <message>
        <source>The session&apos;s sets</source>
        <translation>Les séries de la séance</translation>
    </message>
</context>
<context>
    <name>TrackPage</name>
    <message>
        <source>Track</source>
        <translation>Piste</translation>
    </message>
    <message>
        <source>Sprints</source>
        <translation>Sprints</translation>
    </message>
    <message>
        <source>Jumps</source>
        <translation>Sauts</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>Add a run</source>
        <translation>Ajouter une course</translation>
    </message>
    <message>
        <source>Add jumps</source>
        <translation>Ajouter des sauts</translation>
    </message>
    <message>
        <source>Add work</source>
        <translation>Ajouter du travail</translation>
    </message>
    <message>
        <source>Delete %1, %2</source>
        <translation>Supprimer %1, %2</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Voir les précédents</translation>
    </message>
    <message>
        <source>Import runs from a file</source>
        <translation>Importer des courses d&apos;un fichier</translation>
    </message>
    <message>
        <source>Go to Squad</source>
        <translation>Aller au Groupe</translation>
    </message>
</context>
<context>
    <name>TrackWords</name>
    <message>
        <source>blocks</source>
        <translation>blocs</translation>
    </message>
    <message>
        <source>standing start</source>
        <translation>départ debout</translation>
    </message>
    <message>
        <source>flying</source>
        <translation>lancé</translation>
    </message>
    <message>
        <source>falling start</source>
        <translation>départ en déséquilibre</translation>
    </message>
    <message>
        <source>rolling start</source>
        <translation>départ en mouvement</translation>
    </message>
    <message>
        <source>hand timed</source>
        <translation>à la main</translation>
    </message>
    <message>
        <source>gates</source>
        <translation>cellules</translation>
    </message>
    <message>
        <source>video</source>
        <translation>vidéo</translation>
    </message>
    <message>
        <source>electronic</source>
        <translation>électronique</translation>
    </message>
    <message>
        <source>track</source>
        <translation>piste</translation>
    </message>
    <message>
        <source>indoor</source>
        <translation>salle</translation>
    </message>
    <message>
        <source>grass</source>
        <translation>herbe</translation>
    </message>
    <message>
        <source>Sprints</source>
        <translation>Sprints</translation>
    </message>
    <message>
        <source>Flying sprints</source>
        <translation>Sprints lancés</translation>
    </message>
    <message>
        <source>Resisted sprints</source>
        <translation>Sprints freinés</translation>
    </message>
    <message>
        <source>Hill sprints</source>
        <translation>Sprints en côte</translation>
    </message>
    <message>
        <source>Easy runs</source>
        <translation>Courses faciles</translation>
    </message>
    <message>
        <source>Drop jump</source>
        <translation>Saut en contrebas</translation>
    </message>
    <message>
        <source>Counter-movement jump</source>
        <translation>Saut à contre-mouvement</translation>
    </message>
    <message>
        <source>Squat jump</source>
        <translation>Sans contre-mouvement</translation>
    </message>
    <message>
        <source>Standing long jump</source>
        <translation>Longueur sans élan</translation>
    </message>
    <message>
        <source>Long jump</source>
        <translation>Saut en longueur</translation>
    </message>
    <message>
        <source>Bounds</source>
        <translation>Bondissements</translation>
    </message>
    <message>
        <source>spikes</source>
        <translation>pointes</translation>
    </message>
    <message>
        <source>flats</source>
        <translation>baskets</translation>
    </message>
    <message>
        <source>Flying %1</source>
        <translation>%1 lancés</translation>
    </message>
    <message>
        <source>%1 from blocks</source>
        <translation>%1, départ en blocs</translation>
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
        <translation>Tendances</translation>
    </message>
    <message>
        <source>Nothing measured yet</source>
        <translation>Rien de mesuré encore</translation>
    </message>
    <message>
        <source>Each session begins with a probe set: three repetitions with full intent at the same load. From the third session on, this page shows whether you reach peak velocity sooner.</source>
        <translation>Chaque séance commence par une série témoin : trois répétitions à fond à la même charge. Dès la troisième séance, cette page montre si tu atteins plus tôt la vitesse maximale.</translation>
    </message>
</context>
<context>
    <name>TrendsWords</name>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>poids du corps</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Échauffement</translation>
    </message>
    <message>
        <source>Probe set</source>
        <translation>Série témoin</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>Entretien</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>hand timed</source>
        <translation>à la main</translation>
    </message>
    <message>
        <source> Note: %1</source>
        <translation> Note : %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source> × %1</source>
        <translation> × %1</translation>
    </message>
    <message>
        <source>fastest %1</source>
        <translation>plus rapide %1</translation>
    </message>
    <message>
        <source>loss %1</source>
        <translation>perte %1</translation>
    </message>
    <message>
        <source>effort %1</source>
        <translation>effort %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>depuis %1</translation>
    </message>
    <message>
        <source>contact %1</source>
        <translation>contact %1</translation>
    </message>
    <message>
        <source>flight %1</source>
        <translation>vol %1</translation>
    </message>
    <message>
        <source>RSI %1</source>
        <translation>RSI %1</translation>
    </message>
    <message>
        <source>Drop jump %1.</source>
        <translation>Saut en contrebas %1.</translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>wind %1 m/s</source>
        <translation>vent %1 m/s</translation>
    </message>
    <message>
        <source>run-in %1</source>
        <translation>élan %1</translation>
    </message>
    <message>
        <source>race</source>
        <translation>compétition</translation>
    </message>
</context>
<context>
    <name>TypedSetSheet</name>
    <message>
        <source>A set without a sensor</source>
        <translation>Une série sans capteur</translation>
    </message>
    <message>
        <source>Load and repetitions are enough. Velocity and time count only if you measured them.</source>
        <translation>Charge et répétitions suffisent. Vitesse et temps ne comptent que si tu les as mesurés.</translation>
    </message>
    <message>
        <source>Kind of set</source>
        <translation>Type de série</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>Témoin</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Échauffement</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>Entretien</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Charge, %1</translation>
    </message>
    <message>
        <source>By plates</source>
        <translation>Par disques</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Répétitions</translation>
    </message>
    <message>
        <source>%1, ms (if measured)</source>
        <translation>%1, ms (si mesuré)</translation>
    </message>
    <message>
        <source>Effort, 1 easy to 10 all out (tells 1RM)</source>
        <translation>Effort, 1 facile à 10 à fond (estime le 1RM)</translation>
    </message>
    <message>
        <source>Save the set</source>
        <translation>Enregistrer la série</translation>
    </message>
    <message>
        <source>%1, m/s (if measured)</source>
        <translation>%1, m/s (si mesurée)</translation>
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
        <translation>Par disques</translation>
    </message>
</context>
<context>
    <name>WellnessSheet</name>
    <message>
        <source>How are you today?</source>
        <translation>Comment vas-tu aujourd&apos;hui ?</translation>
    </message>
    <message>
        <source>Pain, 0 none to 10 the worst</source>
        <translation>Douleur, 0 aucune à 10 la pire</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>Où ?</translation>
    </message>
    <message>
        <source>Any of these?</source>
        <translation>Quelque chose de cela ?</translation>
    </message>
    <message>
        <source>Sharp pain</source>
        <translation>Douleur vive</translation>
    </message>
    <message>
        <source>Limping</source>
        <translation>Boiterie</translation>
    </message>
    <message>
        <source>New hamstring pain</source>
        <translation>Nouvelle douleur aux ischio-jambiers</translation>
    </message>
    <message>
        <source>No sprinting and no hinge today. See a clinician before you sprint or lift heavy again.</source>
        <translation>Ni sprint ni charnière de hanche aujourd&apos;hui. Consulte un médecin avant de sprinter ou de soulever lourd à nouveau.</translation>
    </message>
    <message>
        <source>Soreness, 0 none to 10 very sore</source>
        <translation>Courbatures, 0 aucune à 10 très fortes</translation>
    </message>
    <message>
        <source>Sleep, hours</source>
        <translation>Sommeil, heures</translation>
    </message>
    <message>
        <source>Body mass, %1 (optional)</source>
        <translation>Poids du corps, %1 (facultatif)</translation>
    </message>
    <message>
        <source>Your word counts before every rule</source>
        <translation>Ta parole passe avant toute règle</translation>
    </message>
    <message>
        <source>I do not want to lift today</source>
        <translation>Je ne veux pas soulever aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Keep this</source>
        <translation>Garder ceci</translation>
    </message>
</context>
<context>
    <name>WellnessWords</name>
    <message>
        <source>somewhere else</source>
        <translation>ailleurs</translation>
    </message>
    <message>
        <source>Say where it hurts.</source>
        <translation>Dis où cela fait mal.</translation>
    </message>
    <message>
        <source>does not want to lift</source>
        <translation>ne veut pas soulever</translation>
    </message>
    <message>
        <source>slept %1 h</source>
        <translation>dormi %1 h</translation>
    </message>
    <message>
        <source>soreness %1</source>
        <translation>courbatures %1</translation>
    </message>
    <message>
        <source>no pain</source>
        <translation>sans douleur</translation>
    </message>
    <message>
        <source>pain %1</source>
        <translation>douleur %1</translation>
    </message>
    <message>
        <source>pain %1, %2</source>
        <translation>douleur %1, %2</translation>
    </message>
    <message>
        <source>sharp pain</source>
        <translation>douleur vive</translation>
    </message>
    <message>
        <source>limping</source>
        <translation>boiterie</translation>
    </message>
    <message>
        <source>new hamstring pain</source>
        <translation>nouvelle douleur aux ischio-jambiers</translation>
    </message>
</context>
<context>
    <name>WhySheet</name>
    <message>
        <source>Why this today?</source>
        <translation>Pourquoi ceci aujourd&apos;hui ?</translation>
    </message>
</context>
<context>
    <name>WorkFormWords</name>
    <message>
        <source>That is faster than anyone has run. Check distance and time.</source>
        <translation>Personne n&apos;a couru si vite. Vérifie distance et temps.</translation>
    </message>
    <message>
        <source>That is slower than walking. Check distance and time.</source>
        <translation>C&apos;est plus lent que la marche. Vérifie distance et temps.</translation>
    </message>
    <message>
        <source>That day has not come yet.</source>
        <translation>Ce jour n&apos;est pas encore venu.</translation>
    </message>
</context>
<context>
    <name>WorkPart</name>
    <message>
        <source>Delete %1, %2</source>
        <translation>Supprimer %1, %2</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Voir les précédents</translation>
    </message>
    <message>
        <source>No work counted yet</source>
        <translation>Aucun travail compté encore</translation>
    </message>
    <message>
        <source>Sprints without a clock, runs behind a sled, up a hill or easy: how many of how many metres. The weeks then tell how many metres were run, and how many of them fast.</source>
        <translation>Sprints sans chrono, courses au traîneau, en côte ou faciles : combien, et de combien de mètres. Les semaines disent ensuite combien de mètres ont été courus, et combien d&apos;entre eux rapides.</translation>
    </message>
</context>
<context>
    <name>WorkSheet</name>
    <message>
        <source>Add work</source>
        <translation>Ajouter du travail</translation>
    </message>
    <message>
        <source>Kind of work</source>
        <translation>Type de travail</translation>
    </message>
    <message>
        <source>Sprints</source>
        <translation>Sprints</translation>
    </message>
    <message>
        <source>Flying</source>
        <translation>Lancé</translation>
    </message>
    <message>
        <source>Resisted</source>
        <translation>Freiné</translation>
    </message>
    <message>
        <source>Hill</source>
        <translation>Côte</translation>
    </message>
    <message>
        <source>Easy</source>
        <translation>Facile</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Courses</translation>
    </message>
    <message>
        <source>Zone of each, m</source>
        <translation>Zone de chacune, m</translation>
    </message>
    <message>
        <source>Metres of each</source>
        <translation>Mètres de chacune</translation>
    </message>
    <message>
        <source>Load on the sled, %1 (optional)</source>
        <translation>Charge sur le traîneau, %1 (facultatif)</translation>
    </message>
    <message>
        <source>Slope, % (optional)</source>
        <translation>Pente, % (facultatif)</translation>
    </message>
    <message>
        <source>Effort, 1 to 10. From 9 on untimed sprints count as fast metres</source>
        <translation>Effort, 1 à 10. Dès 9, les sprints sans chrono comptent en mètres rapides</translation>
    </message>
    <message>
        <source>Best time of one run, s (optional)</source>
        <translation>Meilleur temps d&apos;une course, s (facultatif)</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>Chronométrage</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Manuel</translation>
    </message>
    <message>
        <source>Gates</source>
        <translation>Cellules</translation>
    </message>
    <message>
        <source>Video</source>
        <translation>Vidéo</translation>
    </message>
    <message>
        <source>Electronic</source>
        <translation>Électronique</translation>
    </message>
    <message>
        <source>Rest between runs, minutes (optional)</source>
        <translation>Repos entre les courses, minutes (facultatif)</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Moins</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Surface, shoes, wind, note</source>
        <translation>Surface, chaussures, vent, note</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Surface</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Piste</translation>
    </message>
    <message>
        <source>Indoor</source>
        <translation>Salle</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>Herbe</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Chaussures</translation>
    </message>
    <message>
        <source>Spikes</source>
        <translation>Pointes</translation>
    </message>
    <message>
        <source>Flats</source>
        <translation>Baskets</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Non indiqué</translation>
    </message>
    <message>
        <source>Wind, m/s, tail wind positive (optional)</source>
        <translation>Vent, m/s, positif dans le dos (facultatif)</translation>
    </message>
    <message>
        <source>+0,8 or -1.2</source>
        <translation>+0,8 ou -1.2</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Save the work</source>
        <translation>Enregistrer le travail</translation>
    </message>
    <message>
        <source>Day, like %1</source>
        <translation>Date, p. ex. %1</translation>
    </message>
</context>
<context>
    <name>WorkWeeks</name>
    <message>
        <source>Metres by week</source>
        <translation>Mètres par semaine</translation>
    </message>
    <message>
        <source>Fast: at 90 % of best speed or above. A week is marked above 1.3 times the mean of the four weeks before it: a starting value of this program; the worth of such ratios is disputed.</source>
        <translation>Rapide : à 90 % de la meilleure vitesse ou plus. Une semaine est marquée au-dessus de 1,3 fois la moyenne des quatre d&apos;avant : une valeur de départ de ce programme ; la valeur de tels rapports est discutée.</translation>
    </message>
</context>
<context>
    <name>fleetrung::ui::PoseDrawing</name>
    <message>
        <source>Main side up</source>
        <translation>Face principale en haut</translation>
    </message>
    <message>
        <source>Main side down</source>
        <translation>Face principale en bas</translation>
    </message>
    <message>
        <source>On a long edge</source>
        <translation>Sur un long bord</translation>
    </message>
    <message>
        <source>On the other long edge</source>
        <translation>Sur l&apos;autre long bord</translation>
    </message>
    <message>
        <source>On a short end</source>
        <translation>Sur un petit bout</translation>
    </message>
    <message>
        <source>On the other short end</source>
        <translation>Sur l&apos;autre petit bout</translation>
    </message>
    <message>
        <source>Main side up, one turn to the left</source>
        <translation>Face principale en haut, un tour à gauche</translation>
    </message>
    <message>
        <source>On a long edge, one turn to the left</source>
        <translation>Sur un long bord, un tour à gauche</translation>
    </message>
    <message>
        <source>On a short end, one turn to the left</source>
        <translation>Sur un petit bout, un tour à gauche</translation>
    </message>
    <message>
        <source>Raised straight up</source>
        <translation>Levé tout droit</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::AppViewModel</name>
    <message>
        <source>Stored recording</source>
        <translation>Enregistrement gardé</translation>
    </message>
    <message>
        <source>The set is saved.</source>
        <translation>La série est enregistrée.</translation>
    </message>
    <message>
        <source>Kept. The day is decided anew.</source>
        <translation>Noté. La journée est décidée à nouveau.</translation>
    </message>
    <message>
        <source>The lift is lighter today.</source>
        <translation>L&apos;exercice est plus léger aujourd&apos;hui.</translation>
    </message>
    <message>
        <source>Kept: you keep the plan.</source>
        <translation>Noté : tu suis le plan.</translation>
    </message>
    <message>
        <source>The calendar is in %1</source>
        <translation>Le calendrier est dans %1</translation>
    </message>
    <message>
        <source>The demo squad is not made.</source>
        <translation>Le groupe de démonstration n&apos;est pas créé.</translation>
    </message>
    <message>
        <source>A set is under way. End it first.</source>
        <translation>Une série est en cours. Termine-la d&apos;abord.</translation>
    </message>
    <message>
        <source>Playing an invented squad&apos;s seasons: %1 %</source>
        <translation>Simulation des saisons d&apos;un groupe inventé : %1 %</translation>
    </message>
    <message>
        <source>Demo squad: everything here is invented.</source>
        <translation>Groupe de démonstration : tout ici est inventé.</translation>
    </message>
    <message>
        <source>The set is changed.</source>
        <translation>La série est modifiée.</translation>
    </message>
    <message>
        <source>The set is deleted.</source>
        <translation>La série est supprimée.</translation>
    </message>
    <message>
        <source>The repetition is struck out.</source>
        <translation>La répétition est rayée.</translation>
    </message>
    <message>
        <source>The repetition counts again.</source>
        <translation>La répétition compte à nouveau.</translation>
    </message>
    <message>
        <source>The repetition is evidence again.</source>
        <translation>La répétition compte à nouveau comme preuve.</translation>
    </message>
    <message>
        <source>The repetition is no evidence.</source>
        <translation>La répétition ne compte pas comme preuve.</translation>
    </message>
    <message>
        <source>The side is changed.</source>
        <translation>Le côté est modifié.</translation>
    </message>
    <message>
        <source>The repetition is added.</source>
        <translation>La répétition est ajoutée.</translation>
    </message>
    <message>
        <source>1 run is added.</source>
        <translation>1 course ajoutée.</translation>
    </message>
    <message>
        <source>1 set is added.</source>
        <translation>1 série ajoutée.</translation>
    </message>
    <message>
        <source>%1 runs are added.</source>
        <translation>%1 courses ajoutées.</translation>
    </message>
    <message>
        <source>%1 sets are added.</source>
        <translation>%1 séries ajoutées.</translation>
    </message>
    <message>
        <source>A set was cut off, and what it was is not known.</source>
        <translation>Une série a été coupée, et on ne sait pas ce qu&apos;elle était.</translation>
    </message>
    <message>
        <source>%1: the set was cut off too early to be read.</source>
        <translation>%1 : la série a été coupée trop tôt pour être lue.</translation>
    </message>
    <message>
        <source>1 repetition is kept</source>
        <translation>1 répétition est gardée</translation>
    </message>
    <message>
        <source>%1 repetitions are kept</source>
        <translation>%1 répétitions sont gardées</translation>
    </message>
    <message>
        <source>%1: the set was cut off. %2.</source>
        <translation>%1 : la série a été coupée. %2.</translation>
    </message>
    <message>
        <source>What was left of the set is dropped.</source>
        <translation>Le reste de la série est jeté.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>season, athlete</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The report is being written …</source>
        <translation>Le rapport s&apos;écrit …</translation>
    </message>
    <message>
        <source>The report is in %1</source>
        <translation>Le rapport est dans %1</translation>
    </message>
    <message>
        <source>The tables are being written …</source>
        <translation>Les tableaux s&apos;écrivent …</translation>
    </message>
    <message>
        <source>%1 tables in %2; data_dictionary.csv explains each column</source>
        <translation>%1 tableaux dans %2 ; data_dictionary.csv explique chaque colonne</translation>
    </message>
    <message>
        <source>%1 is forgotten.</source>
        <translation>%1 est oublié.</translation>
    </message>
    <message>
        <source>The sensor map is in %1</source>
        <translation>La description du capteur est dans %1</translation>
    </message>
    <message>
        <source>%1 can be chosen now.</source>
        <translation>On peut choisir %1 maintenant.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>The run is saved.</source>
        <translation>La course est enregistrée.</translation>
    </message>
    <message>
        <source>The run is deleted.</source>
        <translation>La course est supprimée.</translation>
    </message>
    <message>
        <source>The jump is deleted.</source>
        <translation>Le saut est supprimé.</translation>
    </message>
    <message>
        <source>The jump is saved.</source>
        <translation>Le saut est enregistré.</translation>
    </message>
    <message>
        <source>%1 jumps are saved.</source>
        <translation>%1 sauts sont enregistrés.</translation>
    </message>
    <message>
        <source>The work is saved.</source>
        <translation>Le travail est enregistré.</translation>
    </message>
    <message>
        <source>The work is deleted.</source>
        <translation>Le travail est supprimé.</translation>
    </message>
    <message>
        <source>%1 is saved.</source>
        <translation>%1 : enregistré.</translation>
    </message>
    <message>
        <source>%1 is in the archive, with all that was done.</source>
        <translation>%1 est dans les archives, avec tout ce qui a été fait.</translation>
    </message>
    <message>
        <source>%1 is back.</source>
        <translation>%1 est de retour.</translation>
    </message>
    <message>
        <source>A set is under way and stays with who began it. End it first.</source>
        <translation>Une série est en cours et reste à qui l&apos;a commencée. Termine-la d&apos;abord.</translation>
    </message>
    <message>
        <source>Kept: you follow this.</source>
        <translation>Noté : tu suis la décision.</translation>
    </message>
    <message>
        <source>Kept: you decided otherwise.</source>
        <translation>Noté : tu as décidé autrement.</translation>
    </message>
    <message>
        <source>The season is laid out.</source>
        <translation>La saison est tracée.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::BenchFeedback</name>
    <message>
        <source>Stop the set</source>
        <translation>Arrêter la série</translation>
    </message>
    <message>
        <source>no evidence</source>
        <translation>pas une preuve</translation>
    </message>
    <message>
        <source>%1, sooner</source>
        <translation>%1, plus tôt</translation>
    </message>
    <message>
        <source>%1, later</source>
        <translation>%1, plus tard</translation>
    </message>
    <message>
        <source>Sensor lost</source>
        <translation>Capteur perdu</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Commence</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::BenchViewModel</name>
    <message>
        <source>load to be found</source>
        <translation>charge à trouver</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>poids du corps</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 ladder, rung %2 of %3</source>
        <translation>Échelle %1, échelon %2 sur %3</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>cible %1</translation>
    </message>
    <message>
        <source>done, %1 sets</source>
        <translation>fait, %1 séries</translation>
    </message>
    <message>
        <source>%1 of %2 sets done</source>
        <translation>%1 séries sur %2 faites</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>pas commencé</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Banc</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1 répétition</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1 répétitions</translation>
    </message>
    <message>
        <source>Drop time</source>
        <translation>Temps de descente</translation>
    </message>
    <message>
        <source>Contact time</source>
        <translation>Temps de contact</translation>
    </message>
    <message>
        <source>Time to peak velocity</source>
        <translation>Temps jusqu&apos;à la vitesse maximale</translation>
    </message>
    <message>
        <source>ms from the quickest descent to rest</source>
        <translation>ms de la descente la plus rapide à l&apos;arrêt</translation>
    </message>
    <message>
        <source>ms to peak velocity</source>
        <translation>ms jusqu&apos;à la vitesse maximale</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>inside the band  %1</source>
        <translation>dans la bande  %1</translation>
    </message>
    <message>
        <source>%1 ms sooner than the band</source>
        <translation>%1 ms avant la bande</translation>
    </message>
    <message>
        <source>%1 ms later than the band</source>
        <translation>%1 ms après la bande</translation>
    </message>
    <message>
        <source>two peaks: no evidence</source>
        <translation>deux pics : pas une preuve</translation>
    </message>
    <message>
        <source>peak velocity</source>
        <translation>vitesse maximale</translation>
    </message>
    <message>
        <source>mean velocity</source>
        <translation>vitesse moyenne</translation>
    </message>
    <message>
        <source>range to peak</source>
        <translation>amplitude jusqu&apos;au pic</translation>
    </message>
    <message>
        <source>range</source>
        <translation>amplitude</translation>
    </message>
    <message>
        <source>rung %1</source>
        <translation>échelon %1</translation>
    </message>
    <message>
        <source>stop at %1</source>
        <translation>arrêt à %1</translation>
    </message>
    <message>
        <source>By the loss %1: a guess. The stop rests on the loss.</source>
        <translation>D&apos;après la perte, %1 : une estimation. L&apos;arrêt suit la perte.</translation>
    </message>
    <message>
        <source>Velocity has fallen by %1; this set ends at %2.</source>
        <translation>La vitesse a baissé de %1 ; cette série finit à %2.</translation>
    </message>
    <message>
        <source>Warm-up: %1</source>
        <translation>Échauffement : %1</translation>
    </message>
    <message>
        <source>Probe: %1, full intent</source>
        <translation>Témoin : %1, à fond</translation>
    </message>
    <message>
        <source>Work: %1 sets of %2</source>
        <translation>Travail : %1 séries de %2</translation>
    </message>
    <message>
        <source>rested</source>
        <translation>reposé</translation>
    </message>
    <message>
        <source>rest %1:%2</source>
        <translation>repos %1:%2</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>dernière %1</translation>
    </message>
    <message>
        <source>No sprinting today: pain forbids it.</source>
        <translation>Pas de sprint aujourd&apos;hui : la douleur l&apos;interdit.</translation>
    </message>
    <message>
        <source>%1 at a load to be found</source>
        <translation>%1 avec une charge à trouver</translation>
    </message>
    <message>
        <source>%1 at body mass</source>
        <translation>%1 au poids du corps</translation>
    </message>
    <message>
        <source>Primer: light and fast, no probe set</source>
        <translation>Activation : légère et rapide, sans série témoin</translation>
    </message>
    <message>
        <source>Box %1</source>
        <translation>Caisse %1</translation>
    </message>
    <message>
        <source>%1 contacts; at most %2 today</source>
        <translation>%1 contacts ; %2 au plus aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Maintenance: %1 × %2, %3</source>
        <translation>Entretien : %1 × %2, %3</translation>
    </message>
    <message>
        <source>Warm-up check</source>
        <translation>Contrôle d&apos;échauffement</translation>
    </message>
    <message>
        <source>Warm-up check: not enough to compare with</source>
        <translation>Contrôle d&apos;échauffement : pas assez pour comparer</translation>
    </message>
    <message>
        <source>Warm-up check: as usual</source>
        <translation>Contrôle d&apos;échauffement : comme d&apos;habitude</translation>
    </message>
    <message>
        <source>Warm-up check: slower than usual</source>
        <translation>Contrôle d&apos;échauffement : plus lent que d&apos;habitude</translation>
    </message>
    <message>
        <source>Warm-up check: less today</source>
        <translation>Contrôle d&apos;échauffement : moins aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Warm-up check: you keep the plan</source>
        <translation>Contrôle d&apos;échauffement : tu gardes le plan</translation>
    </message>
    <message>
        <source>Lift the last two warm-up loads with full intent, as warm-up sets: %1 and %2. Their velocity is then compared with your own at these loads. It can take load or sets off today, never put any on.</source>
        <translation>Soulève les deux dernières charges d&apos;échauffement à fond, en séries d&apos;échauffement : %1 et %2. Leur vitesse est alors comparée à la tienne à ces charges. Cela peut retirer de la charge ou des séries aujourd&apos;hui, jamais en ajouter.</translation>
    </message>
    <message>
        <source>%1 less load</source>
        <translation>%1 de charge en moins</translation>
    </message>
    <message>
        <source>one set less</source>
        <translation>une série de moins</translation>
    </message>
    <message>
        <source>%1 sets less</source>
        <translation>%1 séries de moins</translation>
    </message>
    <message>
        <source>%1 of the sets</source>
        <translation>%1 des séries</translation>
    </message>
    <message>
        <source>Proposed: %1. %2</source>
        <translation>Proposé : %1. %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Say why, in a few words.</source>
        <translation>Dis pourquoi, en quelques mots.</translation>
    </message>
    <message>
        <source>probe set</source>
        <translation>série témoin</translation>
    </message>
    <message>
        <source>warm-up</source>
        <translation>échauffement</translation>
    </message>
    <message>
        <source>maintenance set</source>
        <translation>série d&apos;entretien</translation>
    </message>
    <message>
        <source>set %1 of %2</source>
        <translation>série %1 sur %2</translation>
    </message>
    <message>
        <source>extra set %1</source>
        <translation>série en plus %1</translation>
    </message>
    <message>
        <source>%1 planned</source>
        <translation>%1 prévues</translation>
    </message>
    <message>
        <source>rung %1 of %2</source>
        <translation>échelon %1 sur %2</translation>
    </message>
    <message>
        <source>Load on the bar, %1</source>
        <translation>Charge sur la barre, %1</translation>
    </message>
    <message>
        <source>No sensor</source>
        <translation>Pas de capteur</translation>
    </message>
    <message>
        <source>%1 ready</source>
        <translation>%1 prêt</translation>
    </message>
    <message>
        <source>%1 streaming</source>
        <translation>%1 transmet</translation>
    </message>
    <message>
        <source>%1 lost. The set goes on when it is back.</source>
        <translation>%1 perdu. La série continue quand il revient.</translation>
    </message>
    <message>
        <source>%1 has ended</source>
        <translation>%1 est terminé</translation>
    </message>
    <message>
        <source>%1 Hz</source>
        <translation>%1 Hz</translation>
    </message>
    <message>
        <source>Not by the bar sensor</source>
        <translation>Pas avec le capteur de barre</translation>
    </message>
    <message>
        <source>Start the set</source>
        <translation>Commencer la série</translation>
    </message>
    <message>
        <source>Enter the load first</source>
        <translation>Saisis d&apos;abord la charge</translation>
    </message>
    <message>
        <source>Replay the last recording</source>
        <translation>Revoir le dernier enregistrement</translation>
    </message>
    <message>
        <source>No sensor to start</source>
        <translation>Pas de capteur pour commencer</translation>
    </message>
    <message>
        <source>Jumps go by contact and flight</source>
        <translation>Les sauts se notent par contact et vol</translation>
    </message>
    <message>
        <source>No sensor on the bar</source>
        <translation>Pas de capteur sur la barre</translation>
    </message>
    <message>
        <source>The sensor was lost</source>
        <translation>Le capteur est perdu</translation>
    </message>
    <message>
        <source>Waiting for the first repetition</source>
        <translation>En attente de la première répétition</translation>
    </message>
    <message>
        <source>Ready when you are</source>
        <translation>Prêt quand tu veux</translation>
    </message>
    <message>
        <source>Enter contact and flight of each jump under Track, Jumps. Type the set in here when it is done.</source>
        <translation>Saisis le contact et le vol de chaque saut dans Piste, Sauts. Saisis la série ici quand elle est faite.</translation>
    </message>
    <message>
        <source>Type the set in, or watch the last recording of this lift again. The plan works without a sensor, too.</source>
        <translation>Saisis la série, ou revois le dernier enregistrement de cet exercice. Le plan marche aussi sans capteur.</translation>
    </message>
    <message>
        <source>Type the set in when it is done: load and repetitions are enough. The plan works without a sensor, too.</source>
        <translation>Saisis la série quand elle est faite : charge et répétitions suffisent. Le plan marche aussi sans capteur.</translation>
    </message>
    <message>
        <source>It is looked for. Repetitions seen so far are kept.</source>
        <translation>On le cherche. Les répétitions vues sont gardées.</translation>
    </message>
    <message>
        <source>Stand still for a moment, then lift with full intent: the set begins by itself, and ends when the bar has rested for 15 s. Check the load first.</source>
        <translation>Reste immobile un instant, puis soulève à fond : la série commence seule et finit quand la barre est restée immobile 15 s. Vérifie d&apos;abord la charge.</translation>
    </message>
    <message>
        <source>Stand still for a moment, then lift with full intent. Each repetition is announced as it ends.</source>
        <translation>Reste immobile un instant, puis soulève à fond. Chaque répétition est annoncée à sa fin.</translation>
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
        <translation>Les faces ne s&apos;accordent pas. Recommence, et pose-le bien à plat chaque fois.</translation>
    </message>
    <message>
        <source>%1 of 6 sides</source>
        <translation>%1 faces sur 6</translation>
    </message>
    <message>
        <source>All six sides are measured.</source>
        <translation>Les six faces sont mesurées.</translation>
    </message>
    <message>
        <source>Lay it down on any side, and let go.</source>
        <translation>Pose-le sur une face, et lâche.</translation>
    </message>
    <message>
        <source>Hands off: it is being measured.</source>
        <translation>N&apos;y touche plus : mesure en cours.</translation>
    </message>
    <message>
        <source>Taken. Now another side.</source>
        <translation>C&apos;est pris. Une autre face maintenant.</translation>
    </message>
    <message>
        <source>This side is taken. Lay it on another.</source>
        <translation>Cette face est prise. Pose-le sur une autre.</translation>
    </message>
    <message>
        <source>It lies slanted: lay it flat.</source>
        <translation>Il penche : pose-le à plat.</translation>
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
        <translation>Pas jugé</translation>
    </message>
    <message>
        <source>Not enough yet</source>
        <translation>Pas encore assez</translation>
    </message>
    <message>
        <source>Not shown</source>
        <translation>Non démontré</translation>
    </message>
    <message>
        <source>They moved together</source>
        <translation>Ont évolué ensemble</translation>
    </message>
    <message>
        <source>For it to speak: begin each lift with its probe set, and time a sprint in each week, always in the same way: distance, run-in, start, timing, surface and shoes, wind within 1 m/s.</source>
        <translation>Pour qu&apos;il parle : commence chaque exercice par sa série témoin, et chronomètre un sprint chaque semaine, toujours pareil : distance, élan, départ, chronométrage, surface et chaussures, vent à 1 m/s près.</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>Chance alone gives as much in %1 of 100 turned seasons; up to %2 it counts as moved together.</source>
        <translation>Le hasard seul en donne autant dans %1 saisons tournées sur 100 ; jusqu&apos;à %2, on considère qu&apos;ils ont évolué ensemble.</translation>
    </message>
    <message>
        <source>Same week</source>
        <translation>Même semaine</translation>
    </message>
    <message>
        <source>1 week later</source>
        <translation>1 semaine plus tard</translation>
    </message>
    <message>
        <source>%1 weeks later</source>
        <translation>%1 semaines plus tard</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>weeks with both; rungs: %1, needed %2</source>
        <translation>semaines avec les deux ; échelons : %1, il en faut %2</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>%1 weeks with both, %2 rungs</source>
        <translation>%1 semaines avec les deux, %2 échelons</translation>
    </message>
    <message>
        <source>, chance reaches %1</source>
        <translation>, le hasard atteint %1</translation>
    </message>
    <message>
        <source>This is no proof of cause.</source>
        <translation>Ce n&apos;est pas une preuve de cause.</translation>
    </message>
    <message>
        <source>What is compared: how much quicker than that stay&apos;s own line the bar reached peak velocity, in the weeks of each stay on a rung; and how much better than the season&apos;s own line the sprints in the same conditions were, in the same week and one to four weeks later.

Why no plain correlation is shown: time to peak velocity falls because the plan shortens the range, and sprint times fall because summer comes. As they are, the two always go together, whether the lifts did anything or not. So both trends are taken out first.

How it is judged: the weeks of the bar are cut into three blocks, and each is turned round on itself in all combinations. Chance is the share of these turned seasons in which the strongest of all five lags is as strong as yours.

What it cannot see: in simulated seasons with a realistic relation it spoke in 6 of 100, with a very large one in 76. Not shown does not mean not there. And that two things move together does not say that one made the other: sleep, school or weather can move both.</source>
        <translation>Ce qu&apos;on compare : de combien la barre a atteint sa vitesse maximale plus tôt que la ligne propre de chaque séjour, dans les semaines de chaque séjour sur un échelon ; et de combien les sprints dans les mêmes conditions ont été meilleurs que la ligne propre de la saison, la même semaine et une à quatre semaines plus tard.

Pourquoi aucune corrélation simple : le temps jusqu&apos;à la vitesse maximale baisse parce que le plan raccourcit l&apos;amplitude, et les temps de sprint baissent parce que l&apos;été vient. Tels quels, les deux vont toujours ensemble, que les exercices aient agi ou non. On retire donc d&apos;abord les deux tendances.

Comment on juge : les semaines de la barre sont coupées en trois blocs, et chacun est tourné sur lui-même de toutes les façons. Le hasard est la part de ces saisons tournées où le plus fort des cinq décalages est aussi fort que le tien.

Ce que cela ne peut voir : dans des saisons simulées avec un lien réaliste, un lien a été signalé dans 6 sur 100 ; avec un lien très grand, dans 76. Non démontré ne veut pas dire absent. Et que deux choses évoluent ensemble ne dit pas que l&apos;une a causé l&apos;autre : sommeil, école ou météo peuvent agir sur les deux.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::DoneSetsViewModel</name>
    <message>
        <source>probe set</source>
        <translation>série témoin</translation>
    </message>
    <message>
        <source>warm-up</source>
        <translation>échauffement</translation>
    </message>
    <message>
        <source>maintenance set</source>
        <translation>série d&apos;entretien</translation>
    </message>
    <message>
        <source>work set</source>
        <translation>série de travail</translation>
    </message>
    <message>
        <source>1 set done today</source>
        <translation>1 série faite aujourd&apos;hui</translation>
    </message>
    <message>
        <source>%1 sets done today</source>
        <translation>%1 séries faites aujourd&apos;hui</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1 répétition</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1 répétitions</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>nothing measured</source>
        <translation>rien de mesuré</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>two peaks</source>
        <translation>deux pics</translation>
    </message>
    <message>
        <source>short of its range</source>
        <translation>amplitude trop courte</translation>
    </message>
    <message>
        <source>struck out</source>
        <translation>rayée</translation>
    </message>
    <message>
        <source>no evidence</source>
        <translation>pas une preuve</translation>
    </message>
    <message>
        <source>Repetition %1</source>
        <translation>Répétition %1</translation>
    </message>
    <message>
        <source>Measured. What you say here is kept beside the recording.</source>
        <translation>Mesurée. Ce que tu dis ici est gardé à côté de l&apos;enregistrement.</translation>
    </message>
    <message>
        <source>Typed in.</source>
        <translation>Saisie à la main.</translation>
    </message>
    <message>
        <source>Drop time</source>
        <translation>Temps de descente</translation>
    </message>
    <message>
        <source>Time to peak velocity</source>
        <translation>Temps jusqu&apos;à la vitesse maximale</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::FindSensorsViewModel</name>
    <message>
        <source>%1 of %2 shown: the others have another name.</source>
        <translation>%1 affichés sur %2 : les autres ont un autre nom.</translation>
    </message>
    <message>
        <source>Searching</source>
        <translation>Recherche</translation>
    </message>
    <message>
        <source>%1 found, still searching</source>
        <translation>%1 trouvés, la recherche continue</translation>
    </message>
    <message>
        <source>%1 found</source>
        <translation>%1 trouvés</translation>
    </message>
    <message>
        <source>Fits what it sends</source>
        <translation>Va avec ce qu&apos;il envoie</translation>
    </message>
    <message>
        <source>May fit</source>
        <translation>Pourrait aller</translation>
    </message>
    <message>
        <source>Does not fit what it offers</source>
        <translation>Ne va pas avec ce qu&apos;il offre</translation>
    </message>
    <message>
        <source>Connecting. Keep it near, lying still.</source>
        <translation>Connexion. Garde-le près et immobile.</translation>
    </message>
    <message>
        <source>It sends. Finding how to read it.</source>
        <translation>Il envoie. On cherche comment le lire.</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Lu comme : %1</translation>
    </message>
    <message>
        <source>It sends nothing by itself. Choose how it is read, if you know it; shake it awake and try again, if not.</source>
        <translation>Il n&apos;envoie rien de lui-même. Choisis comment le lire, si tu sais ; sinon secoue-le et réessaie.</translation>
    </message>
    <message>
        <source>It sends, but nothing here can read it yet. Teach it: three minutes, no tools.</source>
        <translation>Il envoie, mais rien ici ne sait encore le lire. Fais l&apos;apprentissage : trois minutes, sans outil.</translation>
    </message>
    <message>
        <source>Give it a name, such as &quot;Bar sensor&quot;.</source>
        <translation>Donne-lui un nom, comme « Capteur de barre ».</translation>
    </message>
    <message>
        <source>%1 letters are enough.</source>
        <translation>%1 lettres suffisent.</translation>
    </message>
    <message>
        <source>Another sensor has that name.</source>
        <translation>Un autre capteur a ce nom.</translation>
    </message>
    <message>
        <source>Choose first how it is read.</source>
        <translation>Choisis d&apos;abord comment le lire.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::Help</name>
    <message>
        <source>What is this: %1?</source>
        <translation>Qu&apos;est-ce que c&apos;est : %1 ?</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::ImportViewModel</name>
    <message>
        <source>Not in the squad: left out. Tap to choose.</source>
        <translation>Pas dans le groupe : laissé de côté. Touche pour choisir.</translation>
    </message>
    <message>
        <source>Will be added to the squad</source>
        <translation>Sera ajouté au groupe</translation>
    </message>
    <message>
        <source>Rows without a name</source>
        <translation>Lignes sans nom</translation>
    </message>
    <message>
        <source>Not known: left out. Tap to choose.</source>
        <translation>Inconnu : laissé de côté. Touche pour choisir.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Ligne %1</translation>
    </message>
    <message>
        <source>Line %1, %2</source>
        <translation>Ligne %1, %2</translation>
    </message>
    <message>
        <source>And %1 more</source>
        <translation>Et %1 de plus</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Séparateur décimal</translation>
    </message>
    <message>
        <source>Point, 1.85</source>
        <translation>Point, 1.85</translation>
    </message>
    <message>
        <source>Comma, 1,85</source>
        <translation>Virgule, 1,85</translation>
    </message>
    <message>
        <source>Days are written</source>
        <translation>Les jours s&apos;écrivent</translation>
    </message>
    <message>
        <source>Day, month</source>
        <translation>Jour, mois</translation>
    </message>
    <message>
        <source>Month, day</source>
        <translation>Mois, jour</translation>
    </message>
    <message>
        <source>Loads are in</source>
        <translation>Les charges sont en</translation>
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
        <translation>Une ligne est</translation>
    </message>
    <message>
        <source>A run</source>
        <translation>Une course</translation>
    </message>
    <message>
        <source>A split</source>
        <translation>Un intermédiaire</translation>
    </message>
    <message>
        <source>Times count</source>
        <translation>Les temps comptent</translation>
    </message>
    <message>
        <source>From the start</source>
        <translation>Depuis le départ</translation>
    </message>
    <message>
        <source>From the gate before</source>
        <translation>Depuis la cellule d&apos;avant</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Départ</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Blocs</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Debout</translation>
    </message>
    <message>
        <source>Falling</source>
        <translation>En déséquilibre</translation>
    </message>
    <message>
        <source>Rolling</source>
        <translation>En mouvement</translation>
    </message>
    <message>
        <source>Flying</source>
        <translation>Lancé</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>Chronométrage</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Manuel</translation>
    </message>
    <message>
        <source>Gates</source>
        <translation>Cellules</translation>
    </message>
    <message>
        <source>Video</source>
        <translation>Vidéo</translation>
    </message>
    <message>
        <source>Electronic</source>
        <translation>Électronique</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Laisser de côté</translation>
    </message>
    <message>
        <source>Add to the squad</source>
        <translation>Ajouter au groupe</translation>
    </message>
    <message>
        <source>Who is this?</source>
        <translation>Qui est-ce ?</translation>
    </message>
    <message>
        <source>Which lift is this?</source>
        <translation>Quel exercice est-ce ?</translation>
    </message>
    <message>
        <source>Stopped. Nothing was added.</source>
        <translation>Arrêté. Rien n&apos;a été ajouté.</translation>
    </message>
    <message>
        <source>Read as the last file of this kind was.</source>
        <translation>Lu comme le dernier fichier de ce genre.</translation>
    </message>
    <message>
        <source>1 is there already</source>
        <translation>1 est déjà là</translation>
    </message>
    <message>
        <source>%1 are there already</source>
        <translation>%1 sont déjà là</translation>
    </message>
    <message>
        <source>1 is left out</source>
        <translation>1 est laissée de côté</translation>
    </message>
    <message>
        <source>%1 are left out</source>
        <translation>%1 sont laissées de côté</translation>
    </message>
    <message>
        <source>1 bad row</source>
        <translation>1 ligne erronée</translation>
    </message>
    <message>
        <source>%1 bad rows</source>
        <translation>%1 lignes erronées</translation>
    </message>
    <message>
        <source>Counting</source>
        <translation>Comptage</translation>
    </message>
    <message>
        <source>Answer the question first</source>
        <translation>Réponds d&apos;abord à la question</translation>
    </message>
    <message>
        <source>Nothing to add</source>
        <translation>Rien à ajouter</translation>
    </message>
    <message>
        <source>Add 1 set</source>
        <translation>Ajouter 1 série</translation>
    </message>
    <message>
        <source>Add %1 sets</source>
        <translation>Ajouter %1 séries</translation>
    </message>
    <message>
        <source>Add 1 run</source>
        <translation>Ajouter 1 course</translation>
    </message>
    <message>
        <source>Add %1 runs</source>
        <translation>Ajouter %1 courses</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lecture</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>There is no such day. Type it like %1.</source>
        <translation>Cette date n&apos;existe pas. Écris-la comme %1.</translation>
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
        <translation>contact %1</translation>
    </message>
    <message>
        <source>flight %1</source>
        <translation>vol %1</translation>
    </message>
    <message>
        <source>Type the flight time, or the height.</source>
        <translation>Saisis le temps de vol, ou la hauteur.</translation>
    </message>
    <message>
        <source>That day has not come yet.</source>
        <translation>Ce jour n&apos;est pas encore venu.</translation>
    </message>
    <message>
        <source>Save these first.</source>
        <translation>Enregistre d&apos;abord ceux-ci.</translation>
    </message>
    <message>
        <source>Best %1, mean %2</source>
        <translation>Meilleur %1, moyenne %2</translation>
    </message>
    <message>
        <source>At most %1 contacts in a session and %2 in seven days. Under 18: at most %3, from at most %4. Heavier than %5: no box above %6.</source>
        <translation>Au plus %1 contacts par séance et %2 en sept jours. Moins de 18 ans : au plus %3, de %4 au plus. Au-delà de %5 : pas de caisse au-dessus de %6.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::LadderViewModel</name>
    <message>
        <source>planned for %1</source>
        <translation>prévu pour le %1</translation>
    </message>
    <message>
        <source>since %1, you stand here</source>
        <translation>depuis le %1, tu es ici</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 ladder</source>
        <translation>Échelle %1</translation>
    </message>
    <message>
        <source>week %1 of %2</source>
        <translation>semaine %1 sur %2</translation>
    </message>
    <message>
        <source>the main competition is over</source>
        <translation>la compétition principale est passée</translation>
    </message>
    <message>
        <source>the main competition is today</source>
        <translation>la compétition principale est aujourd&apos;hui</translation>
    </message>
    <message>
        <source>1 day to the main competition</source>
        <translation>1 jour avant la compétition principale</translation>
    </message>
    <message>
        <source>%1 days to the main competition</source>
        <translation>%1 jours avant la compétition principale</translation>
    </message>
    <message>
        <source>%1 weeks to the main competition</source>
        <translation>%1 semaines avant la compétition principale</translation>
    </message>
    <message>
        <source>Step to %1 today</source>
        <translation>Avancer à %1 aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Hold at %1 today</source>
        <translation>Tenir %1 aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Step back to %1 today</source>
        <translation>Reculer à %1 aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Ease %1 today</source>
        <translation>Alléger %1 aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Rest from %1 today</source>
        <translation>%1 : repos aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Next step: week %1, at the latest week %2</source>
        <translation>Prochaine étape : semaine %1, au plus tard semaine %2</translation>
    </message>
    <message>
        <source>Next step: week %1</source>
        <translation>Prochaine étape : semaine %1</translation>
    </message>
    <message>
        <source>Choose what you will do.</source>
        <translation>Choisis ce que tu vas faire.</translation>
    </message>
    <message>
        <source>Say why, in a few words.</source>
        <translation>Dis pourquoi, en quelques mots.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::LiftTrendViewModel</name>
    <message>
        <source>Both sides</source>
        <translation>Les deux côtés</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Gauche</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Droite</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1: %2 on %3, the first on this rung here.</source>
        <translation>%1 : %2 le %3, la première sur cet échelon ici.</translation>
    </message>
    <message>
        <source>%1: %2 on %3, from %4 on %5.</source>
        <translation>%1 : %2 le %3, depuis %4 le %5.</translation>
    </message>
    <message>
        <source>Nothing measured on this ladder since %1.</source>
        <translation>Rien de mesuré sur cette échelle depuis le %1.</translation>
    </message>
    <message>
        <source>Nothing measured of this side.</source>
        <translation>Rien de mesuré de ce côté.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::LoadVelocityViewModel</name>
    <message>
        <source>%1: load and velocity</source>
        <translation>%1 : charge et vitesse</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Gauche</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Droite</translation>
    </message>
    <message>
        <source>Both sides</source>
        <translation>Les deux côtés</translation>
    </message>
    <message>
        <source>Estimated 1RM %1</source>
        <translation>1RM estimé %1</translation>
    </message>
    <message>
        <source>Estimated 1RM %1 (95 %: %2 to %3)</source>
        <translation>1RM estimé %1 (95 % : %2 à %3)</translation>
    </message>
    <message>
        <source>From 1 session</source>
        <translation>D&apos;une séance</translation>
    </message>
    <message>
        <source>From %1 sessions</source>
        <translation>De %1 séances</translation>
    </message>
    <message>
        <source>%1 of this season on this rung, the fastest repetition at each load: %2 points.</source>
        <translation>%1 de cette saison sur cet échelon, la répétition la plus rapide à chaque charge : %2 points.</translation>
    </message>
    <message>
        <source>%1 No velocity at 1RM is published for this lift, so the line points to no 1RM.</source>
        <translation>%1 Aucune vitesse au 1RM n&apos;est publiée pour cet exercice ; la droite ne désigne donc aucun 1RM.</translation>
    </message>
    <message>
        <source>%1 1RM is where the line meets %2 (%3). An estimate is an estimate.</source>
        <translation>%1 Le 1RM est là où la droite atteint %2 (%3). Une estimation reste une estimation.</translation>
    </message>
    <message>
        <source>No line yet: %1.</source>
        <translation>Pas encore de droite : %1.</translation>
    </message>
    <message>
        <source>Nothing measured on this rung yet. With a sensor at the warm-up loads: %1.</source>
        <translation>Rien de mesuré encore sur cet échelon. Avec un capteur aux charges d&apos;échauffement : %1.</translation>
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
        <translation>Une échelle demande un échelon.</translation>
    </message>
    <message>
        <source>Training has been done on this rung. It stays.</source>
        <translation>On s&apos;est entraîné sur cet échelon. Il reste.</translation>
    </message>
    <message>
        <source>Give the ladder a name.</source>
        <translation>Donne un nom à l&apos;échelle.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::PlateEntry</name>
    <message>
        <source>The bar alone, %1.</source>
        <translation>La barre seule, %1.</translation>
    </message>
    <message>
        <source>Each side %1. Bar %2.</source>
        <translation>De chaque côté %1. Barre %2.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::Preferences</name>
    <message>
        <source>As the device</source>
        <translation>Comme l&apos;appareil</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::RunFitViewModel</name>
    <message>
        <source>competition</source>
        <translation>compétition</translation>
    </message>
    <message>
        <source>test day</source>
        <translation>jour de test</translation>
    </message>
    <message>
        <source>wind %1 m/s</source>
        <translation>vent %1 m/s</translation>
    </message>
    <message>
        <source>run-in %1</source>
        <translation>élan %1</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>%1 m above the sea</source>
        <translation>%1 m d&apos;altitude</translation>
    </message>
    <message>
        <source>Ground contact near top speed %1, ± 4 ms from video</source>
        <translation>Contact près de la vitesse de pointe %1, ± 4 ms par vidéo</translation>
    </message>
    <message>
        <source>Step length near top speed %1</source>
        <translation>Longueur de foulée près de la vitesse de pointe %1</translation>
    </message>
    <message>
        <source>Without splits a run has one time and no curve. Three to five splits, the first within 10 m and the last at 30 m or further, give top speed and acceleration.</source>
        <translation>Sans intermédiaires, une course a un temps et pas de courbe. Trois à cinq, le premier avant 10 m et le dernier à 30 m ou plus, donnent vitesse de pointe et accélération.</translation>
    </message>
    <message>
        <source>No answer was found. %1</source>
        <translation>Aucune réponse trouvée. %1</translation>
    </message>
    <message>
        <source>No fit. %1</source>
        <translation>Pas de courbe. %1</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>error not known</source>
        <translation>erreur inconnue</translation>
    </message>
    <message>
        <source>Top speed</source>
        <translation>Vitesse de pointe</translation>
    </message>
    <message>
        <source>Time constant τ: the shorter, the quicker it is reached</source>
        <translation>Constante de temps τ : plus elle est courte, plus vite elle est atteinte</translation>
    </message>
    <message>
        <source>Acceleration at the start</source>
        <translation>Accélération au départ</translation>
    </message>
    <message>
        <source>%1 m/s²</source>
        <translation>%1 m/s²</translation>
    </message>
    <message>
        <source>First movement after the clock began (fitted)</source>
        <translation>Premier mouvement après le début du chrono (ajusté)</translation>
    </message>
    <message>
        <source>Splits lie from the fit by</source>
        <translation>Les intermédiaires s&apos;écartent de la courbe de</translation>
    </message>
    <message>
        <source>root mean square</source>
        <translation>moyenne quadratique</translation>
    </message>
    <message>
        <source>Flying speed</source>
        <translation>Vitesse lancée</translation>
    </message>
    <message>
        <source>Of the best so far</source>
        <translation>Par rapport à la meilleure jusqu&apos;ici</translation>
    </message>
    <message>
        <source>this is the best</source>
        <translation>c&apos;est la meilleure</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 le %2</translation>
    </message>
    <message>
        <source>Greatest force F0</source>
        <translation>Force maximale F0</translation>
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
        <translation>Puissance maximale</translation>
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
        <translation>Vitesse à laquelle la force s&apos;annule, v0</translation>
    </message>
    <message>
        <source>Greatest share of force forwards</source>
        <translation>Plus grande part de force vers l&apos;avant</translation>
    </message>
    <message>
        <source>from 0.3 s on</source>
        <translation>dès 0,3 s</translation>
    </message>
    <message>
        <source>Its loss with speed (DRF)</source>
        <translation>Sa perte avec la vitesse (DRF)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>for each m/s</source>
        <translation>par m/s</translation>
    </message>
    <message>
        <source>Force and power are not available: a flying start shows no acceleration.</source>
        <translation>Force et puissance indisponibles : un départ lancé ne montre pas d&apos;accélération.</translation>
    </message>
    <message>
        <source>Force and power are not available: %1.</source>
        <translation>Force et puissance indisponibles : %1.</translation>
    </message>
    <message>
        <source>20 °C</source>
        <translation>20 °C</translation>
    </message>
    <message>
        <source>the height of the sea</source>
        <translation>le niveau de la mer</translation>
    </message>
    <message>
        <source>still air</source>
        <translation>air calme</translation>
    </message>
    <message>
        <source>For %1, from the fit and the drag of the air.</source>
        <translation>Pour %1, d&apos;après la courbe et la résistance de l&apos;air.</translation>
    </message>
    <message>
        <source> Not typed, and taken as: %1.</source>
        <translation> Non indiqué, supposé : %1.</translation>
    </message>
    <message>
        <source>The clock began with the gun, the reaction of %1 s is known.</source>
        <translation>Le chrono est parti au coup de feu, la réaction de %1 s est connue.</translation>
    </message>
    <message>
        <source>The clock is taken to begin with the first movement. If it began at a beam, type the way to it.</source>
        <translation>Le chrono est supposé partir au premier mouvement. S&apos;il part à une cellule, saisis la distance jusqu&apos;à elle.</translation>
    </message>
    <message>
        <source>The clock began at a beam %1 in front of the start.</source>
        <translation>Le chrono est parti à une cellule %1 devant le départ.</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>When the clock began is not known against the first movement, so it was fitted too.</source>
        <translation>On ne sait pas quand le chrono est parti par rapport au premier mouvement ; il a été ajusté aussi.</translation>
    </message>
    <message>
        <source>The best top speed so far from this start.</source>
        <translation>La meilleure vitesse de pointe jusqu&apos;ici de ce départ.</translation>
    </message>
    <message>
        <source>The first fit of this start: later ones are compared with it.</source>
        <translation>La première courbe de ce départ : les suivantes s&apos;y comparent.</translation>
    </message>
    <message>
        <source>Best top speed from this start: %1 on %2.</source>
        <translation>Meilleure vitesse de pointe de ce départ : %1 le %2.</translation>
    </message>
    <message>
        <source>the run before</source>
        <translation>la course d&apos;avant</translation>
    </message>
    <message>
        <source>the median of the last %1</source>
        <translation>la médiane des %1 dernières</translation>
    </message>
    <message>
        <source>%1 m/s against %2 (%3).</source>
        <translation>%1 m/s face à %2 (%3).</translation>
    </message>
    <message>
        <source>That is more than timing explains (%1). Days differ too: what lasts counts.</source>
        <translation>C&apos;est plus que le chronométrage n&apos;explique (%1). Les jours diffèrent aussi : ce qui dure compte.</translation>
    </message>
    <message>
        <source>Timing explains it (%1): no change is shown.</source>
        <translation>Le chronométrage l&apos;explique (%1) : aucun changement visible.</translation>
    </message>
    <message>
        <source>%1 to %2: %3 on average. At %4 s the split is %5 the curve.</source>
        <translation>%1 à %2 : %3 en moyenne. À %4 s, l&apos;intermédiaire est %5 la courbe.</translation>
    </message>
    <message>
        <source>%1 later than</source>
        <translation>%1 après</translation>
    </message>
    <message>
        <source>%1 sooner than</source>
        <translation>%1 avant</translation>
    </message>
    <message>
        <source>It is left out: %1.</source>
        <translation>Il est laissé de côté : %1.</translation>
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
        <translation>%1 échelons, de %2 à %3</translation>
    </message>
    <message>
        <source>rung %1 of %2: %3</source>
        <translation>échelon %1 sur %2 : %3</translation>
    </message>
    <message>
        <source>A session holds %1 of them; they take turns. A few that stay all season bring more than many.</source>
        <translation>Une séance en contient %1 ; elles alternent. Peu d&apos;échelles gardées toute la saison valent mieux que beaucoup.</translation>
    </message>
    <message>
        <source>A session holds %1 of them.</source>
        <translation>Une séance en contient %1.</translation>
    </message>
    <message>
        <source>%1 is out of the season. Its sets stay in the log.</source>
        <translation>%1 sort de la saison. Ses séries restent au journal.</translation>
    </message>
    <message>
        <source>%1 is in the season from today on.</source>
        <translation>%1 est dans la saison dès aujourd&apos;hui.</translation>
    </message>
    <message>
        <source>The order of the ladders is changed.</source>
        <translation>L&apos;ordre des échelles est changé.</translation>
    </message>
    <message>
        <source>%1, own</source>
        <translation>%1, perso</translation>
    </message>
    <message>
        <source>%1 is changed.</source>
        <translation>%1 : modifications enregistrées.</translation>
    </message>
    <message>
        <source>%1 is deleted. Its sets stay in the log.</source>
        <translation>%1 : supprimée. Ses séries restent au journal.</translation>
    </message>
    <message>
        <source>Choose at least one day.</source>
        <translation>Choisis au moins un jour.</translation>
    </message>
    <message>
        <source>%1 is added.</source>
        <translation>%1 : ajouté.</translation>
    </message>
    <message>
        <source>%1 is taken out of the plan.</source>
        <translation>%1 : retiré du plan.</translation>
    </message>
    <message>
        <source>Nothing the sensor knows</source>
        <translation>Rien que le capteur connaisse</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SeasonViewModel</name>
    <message>
        <source>Travel</source>
        <translation>Voyage</translation>
    </message>
    <message>
        <source>Exams</source>
        <translation>Examens</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>Maladie</translation>
    </message>
    <message>
        <source>Injury</source>
        <translation>Blessure</translation>
    </message>
    <message>
        <source>priority %1</source>
        <translation>priorité %1</translation>
    </message>
    <message>
        <source>main</source>
        <translation>principale</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd&apos;hui</translation>
    </message>
    <message>
        <source>in %1 days</source>
        <translation>dans %1 jours</translation>
    </message>
    <message>
        <source>in %1 weeks</source>
        <translation>dans %1 semaines</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1 to %2 · %3</source>
        <translation>%1 à %2 · %3</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 jour</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>A: volume falls over the two weeks before it, intensity stays.</source>
        <translation>A : le volume baisse dans les deux semaines d&apos;avant, l&apos;intensité reste.</translation>
    </message>
    <message>
        <source>B: a little less volume over the four days before it.</source>
        <translation>B : un peu moins de volume dans les quatre jours d&apos;avant.</translation>
    </message>
    <message>
        <source>C: trained through, with two lighter days before it.</source>
        <translation>C : on continue à s&apos;entraîner, avec deux jours plus légers avant.</translation>
    </message>
    <message>
        <source>Give it a name.</source>
        <translation>Donne-lui un nom.</translation>
    </message>
    <message>
        <source>Nothing else in the plan moves.</source>
        <translation>Rien d&apos;autre ne bouge dans le plan.</translation>
    </message>
    <message>
        <source>%1 is added.</source>
        <translation>%1 : ajoutée.</translation>
    </message>
    <message>
        <source>%1 is changed.</source>
        <translation>%1 : modifiée.</translation>
    </message>
    <message>
        <source>%1 is deleted.</source>
        <translation>%1 : supprimée.</translation>
    </message>
    <message>
        <source>No lifts on these days.</source>
        <translation>Pas d&apos;exercices ces jours-là.</translation>
    </message>
    <message>
        <source>Training goes on, with less of it.</source>
        <translation>L&apos;entraînement continue, avec moins.</translation>
    </message>
    <message>
        <source>No lifts. Come back only when you are well; the plan steps back after a long break.</source>
        <translation>Pas d&apos;exercices. Ne reviens que guéri ; après une longue pause, le plan recule.</translation>
    </message>
    <message>
        <source>Lifts that load the injured place rest. See a clinician; this is not medical advice.</source>
        <translation>Les exercices qui chargent l&apos;endroit blessé sont mis au repos. Consulte un médecin ; ceci n&apos;est pas un avis médical.</translation>
    </message>
    <message>
        <source>%1 is in the plan.</source>
        <translation>%1 : dans le plan.</translation>
    </message>
    <message>
        <source>%1 is taken out of the plan.</source>
        <translation>%1 : hors du plan.</translation>
    </message>
    <message>
        <source>Type the height of a box, in %1.</source>
        <translation>Saisis la hauteur d&apos;une caisse, en %1.</translation>
    </message>
    <message>
        <source>This box is there already.</source>
        <translation>Cette caisse est déjà là.</translation>
    </message>
    <message>
        <source>The box of %1 is added.</source>
        <translation>La caisse de %1 est ajoutée.</translation>
    </message>
    <message>
        <source>The box of %1 is gone.</source>
        <translation>La caisse de %1 est retirée.</translation>
    </message>
    <message>
        <source>The days with lifts are changed.</source>
        <translation>Les jours d&apos;exercices sont modifiés.</translation>
    </message>
    <message>
        <source>The days with sprints are changed.</source>
        <translation>Les jours de sprints sont modifiés.</translation>
    </message>
    <message>
        <source>What the weight room has is changed.</source>
        <translation>L&apos;équipement de la salle est modifié.</translation>
    </message>
    <message>
        <source>The length of a session is changed.</source>
        <translation>La durée d&apos;une séance est modifiée.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SensorDesk</name>
    <message>
        <source>The sensor is lost. It goes on when it is back.</source>
        <translation>Le capteur est perdu. Cela continue quand il revient.</translation>
    </message>
    <message>
        <source>It is called %1.</source>
        <translation>Il s&apos;appelle %1.</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Lu comme : %1</translation>
    </message>
    <message>
        <source>The six sides are saved.</source>
        <translation>Les six faces sont enregistrées.</translation>
    </message>
    <message>
        <source>%1 is saved. It is found by itself from now on.</source>
        <translation>%1 est enregistré. Il se trouve seul désormais.</translation>
    </message>
    <message>
        <source>%1 is kept.</source>
        <translation>%1 est gardé.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SensorsViewModel</name>
    <message>
        <source>Choose how it is read</source>
        <translation>Choisis comment il est lu</translation>
    </message>
    <message>
        <source>Ask again</source>
        <translation>Redemander</translation>
    </message>
    <message>
        <source>Try now</source>
        <translation>Essayer maintenant</translation>
    </message>
    <message>
        <source>None yet. One is added in two minutes, and found by itself from then on.</source>
        <translation>Aucun encore. On l&apos;ajoute en deux minutes, puis il se trouve seul.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Measured. Do it again after a fall, or each season.</source>
        <translation>Mesuré. Refais-le après une chute, ou chaque saison.</translation>
    </message>
    <message>
        <source>Not measured yet: two minutes, and speeds get truer.</source>
        <translation>Pas encore mesuré : deux minutes, et les vitesses sont plus justes.</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Fabricant</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modèle</translation>
    </message>
    <message>
        <source>Firmware</source>
        <translation>Micrologiciel</translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation>Matériel</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Numéro de série</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Adresse</translation>
    </message>
    <message>
        <source>Yours</source>
        <translation>À toi</translation>
    </message>
    <message>
        <source>Comes with the program</source>
        <translation>Vient avec le programme</translation>
    </message>
    <message>
        <source>Give it a name, such as &quot;Bar sensor&quot;.</source>
        <translation>Donne-lui un nom, comme « Capteur de barre ».</translation>
    </message>
    <message>
        <source>%1 letters are enough.</source>
        <translation>%1 lettres suffisent.</translation>
    </message>
    <message>
        <source>Another sensor has that name.</source>
        <translation>Un autre capteur a ce nom.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SplitEntry</name>
    <message>
        <source>A distance from the start line, up to 400 m.</source>
        <translation>Une distance depuis la ligne, jusqu&apos;à 400 m.</translation>
    </message>
    <message>
        <source>It must lie beyond the last split.</source>
        <translation>Elle doit être au-delà du dernier intermédiaire.</translation>
    </message>
    <message>
        <source>It lies beyond the run.</source>
        <translation>Elle est au-delà de la course.</translation>
    </message>
    <message>
        <source>Press the digits of the watch.</source>
        <translation>Appuie sur les chiffres du chrono.</translation>
    </message>
    <message>
        <source>It must be later than the last split.</source>
        <translation>Il doit venir après le dernier intermédiaire.</translation>
    </message>
    <message>
        <source>That is faster than 15 m/s. Check distance and time.</source>
        <translation>C&apos;est plus vite que 15 m/s. Vérifie distance et temps.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Counted from the start line, as the watch shows them.</source>
        <translation>Compté depuis la ligne, comme le chrono le montre.</translation>
    </message>
    <message>
        <source>None: with five, top speed and acceleration can be seen</source>
        <translation>Aucun : avec cinq, on voit vitesse de pointe et accélération</translation>
    </message>
    <message>
        <source>%1 splits, the last %2</source>
        <translation>%1 intermédiaires, le dernier %2</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SprintTrendViewModel</name>
    <message>
        <source>Without hand timing</source>
        <translation>Sans temps manuels</translation>
    </message>
    <message>
        <source>Wind ±2 m/s</source>
        <translation>Vent ±2 m/s</translation>
    </message>
    <message>
        <source>%1 (wind %2 m/s)</source>
        <translation>%1 (vent %2 m/s)</translation>
    </message>
    <message>
        <source>Best %1 on %2, latest %3 on %4.</source>
        <translation>Meilleur %1 le %2, dernier %3 le %4.</translation>
    </message>
    <message>
        <source>%1 of %2 runs are shown.</source>
        <translation>%1 courses sur %2 sont affichées.</translation>
    </message>
    <message>
        <source>%1 Outdoors a run without a wind reading is left out.</source>
        <translation>%1 Dehors, une course sans mesure de vent est laissée de côté.</translation>
    </message>
    <message>
        <source>No run of this test since %1.</source>
        <translation>Aucune course de ce test depuis le %1.</translation>
    </message>
    <message>
        <source>The filters leave out every run of this test.</source>
        <translation>Les filtres laissent de côté toutes les courses de ce test.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SquadDayViewModel</name>
    <message>
        <source>All</source>
        <translation>Tous</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Tour %1</translation>
    </message>
    <message>
        <source>No rack: %1</source>
        <translation>Sans cage : %1</translation>
    </message>
    <message>
        <source>Rack %1: %2</source>
        <translation>Cage %1 : %2</translation>
    </message>
    <message>
        <source>no lifts today</source>
        <translation>pas d&apos;exercices aujourd&apos;hui</translation>
    </message>
    <message>
        <source>1 athlete lifts today</source>
        <translation>1 athlète soulève aujourd&apos;hui</translation>
    </message>
    <message>
        <source>%1 athletes lift today</source>
        <translation>%1 athlètes soulèvent aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Nobody has lifts today. Each athlete&apos;s next session stands on Ladder.</source>
        <translation>Personne n&apos;a d&apos;exercices aujourd&apos;hui. La prochaine séance de chacun est sur Échelle.</translation>
    </message>
    <message>
        <source>The plans are being read.</source>
        <translation>Lecture des plans.</translation>
    </message>
    <message>
        <source>1 rack</source>
        <translation>1 cage</translation>
    </message>
    <message>
        <source>%1 racks</source>
        <translation>%1 cages</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SquadViewModel</name>
    <message>
        <source>%1 years</source>
        <translation>%1 ans</translation>
    </message>
    <message>
        <source>group %1</source>
        <translation>groupe %1</translation>
    </message>
    <message>
        <source>1 athlete</source>
        <translation>1 athlète</translation>
    </message>
    <message>
        <source>%1 athletes</source>
        <translation>%1 athlètes</translation>
    </message>
    <message>
        <source>Check the year.</source>
        <translation>Vérifie l&apos;année.</translation>
    </message>
    <message>
        <source>Under 18, a guardian&apos;s consent is needed first.</source>
        <translation>Moins de 18 ans : il faut d&apos;abord l&apos;accord d&apos;un responsable légal.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::StepViewModel</name>
    <message>
        <source>Step</source>
        <translation>Avancer</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Tenir</translation>
    </message>
    <message>
        <source>Step back</source>
        <translation>Reculer</translation>
    </message>
    <message>
        <source>Ease</source>
        <translation>Alléger</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Repos</translation>
    </message>
    <message>
        <source>You follow this.</source>
        <translation>Tu suis la décision.</translation>
    </message>
    <message>
        <source>You decided otherwise: %1. %2</source>
        <translation>Tu as décidé autrement : %1. %2</translation>
    </message>
    <message>
        <source> ± %1</source>
        <translation> ± %1</translation>
    </message>
    <message>
        <source>planned for %1, week %2</source>
        <translation>prévu pour le %1, semaine %2</translation>
    </message>
    <message>
        <source>since %1, week %2</source>
        <translation>depuis le %1, semaine %2</translation>
    </message>
    <message>
        <source>%1 to %2, from week %3</source>
        <translation>%1 à %2, depuis la semaine %3</translation>
    </message>
    <message>
        <source>Phase: %1</source>
        <translation>Phase : %1</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 jour</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>First planned for %1: %2 later</source>
        <translation>Prévu au départ pour le %1 : %2 plus tard</translation>
    </message>
    <message>
        <source>First planned for %1: %2 sooner</source>
        <translation>Prévu au départ pour le %1 : %2 plus tôt</translation>
    </message>
    <message>
        <source>Earliest: %1</source>
        <translation>Au plus tôt : %1</translation>
    </message>
    <message>
        <source>At the latest: %1</source>
        <translation>Au plus tard : %1</translation>
    </message>
    <message>
        <source>1 session of evidence</source>
        <translation>1 séance de preuves</translation>
    </message>
    <message>
        <source>%1 sessions of evidence</source>
        <translation>%1 séances de preuves</translation>
    </message>
    <message>
        <source>Probe load %1</source>
        <translation>Charge témoin %1</translation>
    </message>
    <message>
        <source>Probe load %1, later %2</source>
        <translation>Charge témoin %1, puis %2</translation>
    </message>
    <message>
        <source>The ladder began here</source>
        <translation>L&apos;échelle a commencé ici</translation>
    </message>
    <message>
        <source>The plan&apos;s first rung on this ladder: no evidence is needed to begin.</source>
        <translation>Le premier échelon du plan sur cette échelle : aucune preuve n&apos;est requise pour commencer.</translation>
    </message>
    <message>
        <source>The rungs before it come first; what it needs is known once you stand on the one before.</source>
        <translation>Les échelons d&apos;avant viennent d&apos;abord ; ce qu&apos;il demande se sait une fois sur celui d&apos;avant.</translation>
    </message>
    <message>
        <source>Nothing is measured on the rung before it yet. Each session&apos;s probe set counts.</source>
        <translation>Rien de mesuré encore sur l&apos;échelon d&apos;avant. La série témoin de chaque séance compte.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>No number is missing.</source>
        <translation>Aucun nombre ne manque.</translation>
    </message>
    <message>
        <source>Still missing: %1</source>
        <translation>Il manque encore : %1</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TeachViewModel</name>
    <message>
        <source>Acceleration</source>
        <translation>Accélération</translation>
    </message>
    <message>
        <source>Turning</source>
        <translation>Rotation</translation>
    </message>
    <message>
        <source>Counting of samples</source>
        <translation>Compteur d&apos;échantillons</translation>
    </message>
    <message>
        <source>Its own time</source>
        <translation>Son propre temps</translation>
    </message>
    <message>
        <source>Samples in a second</source>
        <translation>Échantillons par seconde</translation>
    </message>
    <message>
        <source>Form of its messages</source>
        <translation>Forme de ses messages</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sûr</translation>
    </message>
    <message>
        <source>fairly sure</source>
        <translation>assez sûr</translation>
    </message>
    <message>
        <source>not sure</source>
        <translation>pas sûr</translation>
    </message>
    <message>
        <source>Nothing came from the sensor. Shake it awake, then do this step again.</source>
        <translation>Rien n&apos;est venu du capteur. Secoue-le, puis refais cette étape.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>De %1 à %2.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Give it a name, to know it by later.</source>
        <translation>Donne-lui un nom, pour le reconnaître.</translation>
    </message>
    <message>
        <source>%1 letters are enough.</source>
        <translation>%1 lettres suffisent.</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Étape %1 sur %2</translation>
    </message>
    <message>
        <source>Lay it flat, main side up.</source>
        <translation>Pose-le à plat, face principale en haut.</translation>
    </message>
    <message>
        <source>Turn it over, main side down.</source>
        <translation>Retourne-le, face principale en bas.</translation>
    </message>
    <message>
        <source>Stand it on a long edge.</source>
        <translation>Mets-le sur un long bord.</translation>
    </message>
    <message>
        <source>Stand it on the other long edge.</source>
        <translation>Mets-le sur l&apos;autre long bord.</translation>
    </message>
    <message>
        <source>Stand it on a short end.</source>
        <translation>Mets-le sur un petit bout.</translation>
    </message>
    <message>
        <source>Stand it on the other short end.</source>
        <translation>Mets-le sur l&apos;autre petit bout.</translation>
    </message>
    <message>
        <source>Main side up: turn it once to the left.</source>
        <translation>Face principale en haut : tourne-le une fois à gauche.</translation>
    </message>
    <message>
        <source>On a long edge: turn it once to the left.</source>
        <translation>Sur un long bord : tourne-le une fois à gauche.</translation>
    </message>
    <message>
        <source>On a short end: turn it once to the left.</source>
        <translation>Sur un petit bout : tourne-le une fois à gauche.</translation>
    </message>
    <message>
        <source>Raise it straight up by %1, and hold it there.</source>
        <translation>Lève-le tout droit de %1, et tiens-le là.</translation>
    </message>
    <message>
        <source>Back down, then raise it by %1 once more.</source>
        <translation>Redescends-le, puis lève-le encore de %1.</translation>
    </message>
    <message>
        <source>The main side has the button or the lamp. It has neither? Pick a side and stay with it.</source>
        <translation>La face principale porte le bouton ou la lampe. Il n&apos;a ni l&apos;un ni l&apos;autre ? Choisis une face et garde-la.</translation>
    </message>
    <message>
        <source>Lean it on something if it will not stand. Then hands off.</source>
        <translation>Appuie-le contre quelque chose s&apos;il ne tient pas. Puis n&apos;y touche plus.</translation>
    </message>
    <message>
        <source>From the floor to the top of a box or bench. Start and end still.</source>
        <translation>Du sol au dessus d&apos;une caisse ou d&apos;un banc. Commence et finis immobile.</translation>
    </message>
    <message>
        <source>All the way round on the table, as the arrow shows. Start and end still.</source>
        <translation>Un tour complet sur la table, comme le montre la flèche. Commence et finis immobile.</translation>
    </message>
    <message>
        <source>How high will you raise it? (%1)</source>
        <translation>À quelle hauteur le lèveras-tu ? (%1)</translation>
    </message>
    <message>
        <source>Keep it still</source>
        <translation>Laisse-le immobile</translation>
    </message>
    <message>
        <source>Hold it still</source>
        <translation>Tiens-le immobile</translation>
    </message>
    <message>
        <source>Hold it still again</source>
        <translation>Tiens-le encore immobile</translation>
    </message>
    <message>
        <source>Now raise it</source>
        <translation>Lève-le maintenant</translation>
    </message>
    <message>
        <source>Now turn it once</source>
        <translation>Tourne-le une fois maintenant</translation>
    </message>
    <message>
        <source>It cannot be read yet</source>
        <translation>Il n&apos;est pas encore lisible</translation>
    </message>
    <message>
        <source>Learned</source>
        <translation>Appris</translation>
    </message>
    <message>
        <source>Learned, but check it</source>
        <translation>Appris, mais vérifie</translation>
    </message>
    <message>
        <source>%1 % sure of the whole. Lift once and look whether the height is right.</source>
        <translation>Sûr à %1 % dans l&apos;ensemble. Soulève une fois et regarde si la hauteur est juste.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TrackViewModel</name>
    <message>
        <source>All</source>
        <translation>Tous</translation>
    </message>
    <message>
        <source>box %1</source>
        <translation>caisse %1</translation>
    </message>
    <message>
        <source>test day</source>
        <translation>jour de test</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>number and kind of jumps</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>contact %1</source>
        <translation>contact %1</translation>
    </message>
    <message>
        <source>flight %1</source>
        <translation>vol %1</translation>
    </message>
    <message>
        <source>height %1</source>
        <translation>hauteur %1</translation>
    </message>
    <message>
        <source>jumps: %1</source>
        <translation>sauts : %1</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>dernière %1</translation>
    </message>
    <message>
        <source>Box %1</source>
        <translation>Caisse %1</translation>
    </message>
    <message>
        <source>RSI %1</source>
        <translation>RSI %1</translation>
    </message>
    <message>
        <source>Nobody to time yet</source>
        <translation>Personne à chronométrer encore</translation>
    </message>
    <message>
        <source>No jumps yet</source>
        <translation>Pas encore de sauts</translation>
    </message>
    <message>
        <source>No runs yet</source>
        <translation>Pas encore de courses</translation>
    </message>
    <message>
        <source>Add an athlete on Squad. Runs and jumps are kept for each athlete apart.</source>
        <translation>Ajoute un athlète dans Groupe. Courses et sauts sont gardés à part pour chacun.</translation>
    </message>
    <message>
        <source>Type in drop jumps with contact and flight time, or a standing long jump. On the same day, under the same conditions, they tell whether strength arrives in time.</source>
        <translation>Saisis des sauts en contrebas avec temps de contact et de vol, ou une longueur sans élan. Le même jour, dans les mêmes conditions, ils disent si la force arrive à temps.</translation>
    </message>
    <message>
        <source>The stopwatch says whether the plan works. Repeat the same test every three to four weeks: same zone, same run-in, same shoes, and write the wind beside it.</source>
        <translation>Le chronomètre dit si le plan marche. Répète le même test toutes les trois à quatre semaines : même zone, même élan, mêmes chaussures, et note le vent.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TrackWorkViewModel</name>
    <message>
        <source>best %1</source>
        <translation>meilleur %1</translation>
    </message>
    <message>
        <source>effort %1 of 10</source>
        <translation>effort %1 sur 10</translation>
    </message>
    <message>
        <source>sled %1</source>
        <translation>traîneau %1</translation>
    </message>
    <message>
        <source>slope %1 %</source>
        <translation>pente %1 %</translation>
    </message>
    <message>
        <source>rest %1 min</source>
        <translation>repos %1 min</translation>
    </message>
    <message>
        <source>wind %1</source>
        <translation>vent %1</translation>
    </message>
    <message>
        <source>fast: about %1 m</source>
        <translation>rapides : environ %1 m</translation>
    </message>
    <message>
        <source>fast: %1 m</source>
        <translation>rapides : %1 m</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>runs and metres of one</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>fast: about %1 m, of them %2 m at 95 %</source>
        <translation>rapides : environ %1 m, dont %2 m à 95 %</translation>
    </message>
    <message>
        <source>fast: %1 m, of them %2 m at 95 %</source>
        <translation>rapides : %1 m, dont %2 m à 95 %</translation>
    </message>
    <message>
        <source>resisted %1 m</source>
        <translation>freiné %1 m</translation>
    </message>
    <message>
        <source>hill %1 m</source>
        <translation>côte %1 m</translation>
    </message>
    <message>
        <source>contacts of jumps: %1</source>
        <translation>contacts de sauts : %1</translation>
    </message>
    <message>
        <source>%1 more fast metres than the mean of the four weeks before</source>
        <translation>%1 de mètres rapides en plus que la moyenne des quatre semaines d&apos;avant</translation>
    </message>
    <message>
        <source>%1 more metres than the mean of the four weeks before</source>
        <translation>%1 de mètres en plus que la moyenne des quatre semaines d&apos;avant</translation>
    </message>
    <message>
        <source>This week</source>
        <translation>Cette semaine</translation>
    </message>
    <message>
        <source>Week of %1</source>
        <translation>Semaine du %1</translation>
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
        <translation>Cette saison</translation>
    </message>
    <message>
        <source>Last %1 weeks</source>
        <translation>%1 dernières semaines</translation>
    </message>
    <message>
        <source>All seasons</source>
        <translation>Toutes les saisons</translation>
    </message>
    <message>
        <source>Weeks are counted from %1.</source>
        <translation>Les semaines comptent depuis le %1.</translation>
    </message>
</context>
</TS>
