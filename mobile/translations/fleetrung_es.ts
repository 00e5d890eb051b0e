<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>ArchiveSheet</name>
    <message>
        <source>Archive</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Everything they did is kept. An athlete who comes back goes on where they were.</source>
        <translation>Todo lo hecho se conserva. Quien vuelve sigue donde estaba.</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Recuperar</translation>
    </message>
    <message>
        <source>Bring back %1</source>
        <translation>Recuperar a %1</translation>
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
        <translation>se muestra en todas las páginas</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>Editar a %1</translation>
    </message>
</context>
<context>
    <name>AthleteSheet</name>
    <message>
        <source>Add an athlete</source>
        <translation>Añadir atleta</translation>
    </message>
    <message>
        <source>Edit the athlete</source>
        <translation>Editar atleta</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Born (year-month-day)</source>
        <translation>Nacimiento (año-mes-día)</translation>
    </message>
    <message>
        <source>2008-05-17</source>
        <translation>2008-05-17</translation>
    </message>
    <message>
        <source>Body mass, %1 (optional)</source>
        <translation>Peso corporal, %1 (opcional)</translation>
    </message>
    <message>
        <source>Stature, %1 (optional)</source>
        <translation>Estatura, %1 (opcional)</translation>
    </message>
    <message>
        <source>Years of regular lifting (optional)</source>
        <translation>Años de fuerza con regularidad (opcional)</translation>
    </message>
    <message>
        <source>Event (optional)</source>
        <translation>Prueba (opcional)</translation>
    </message>
    <message>
        <source>200 m, long jump</source>
        <translation>200 m, salto de longitud</translation>
    </message>
    <message>
        <source>Training group (optional)</source>
        <translation>Grupo de entrenamiento (opcional)</translation>
    </message>
    <message>
        <source>sprint 2</source>
        <translation>velocidad 2</translation>
    </message>
    <message>
        <source>Under 18: has a guardian agreed?</source>
        <translation>Menor de 18: ¿ha dado permiso un tutor?</translation>
    </message>
    <message>
        <source>No, or not needed</source>
        <translation>No, o no hace falta</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>Move to the archive</source>
        <translation>Llevar al archivo</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>BarWords</name>
    <message>
        <source>Lighter than the bar of %1: a lighter bar, or dumbbells.</source>
        <translation>Más ligero que la barra de %1: una barra más ligera o mancuernas.</translation>
    </message>
    <message>
        <source>The bar alone, %1.</source>
        <translation>La barra sola, %1.</translation>
    </message>
    <message>
        <source>Each side %1. Bar %2.</source>
        <translation>Cada lado %1. Barra %2.</translation>
    </message>
    <message>
        <source>Nearest with whole plates: %1. %2</source>
        <translation>Lo más cercano con discos enteros: %1. %2</translation>
    </message>
    <message>
        <source>More than ten possible repetitions say too little of 1RM.</source>
        <translation>Más de diez repeticiones posibles dicen poco del 1RM.</translation>
    </message>
    <message>
        <source>1RM %1.</source>
        <translation>1RM %1.</translation>
    </message>
    <message>
        <source>1RM about %1; by seven formulas %2 to %3.</source>
        <translation>1RM aprox. %1; según siete fórmulas, de %2 a %3.</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1 repetición</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1 repeticiones</translation>
    </message>
    <message>
        <source>%1 of 1RM</source>
        <translation>%1 del 1RM</translation>
    </message>
    <message>
        <source>many left</source>
        <translation>quedan muchas</translation>
    </message>
    <message>
        <source>about %1 left (%2 to %3)</source>
        <translation>quedan unas %1 (de %2 a %3)</translation>
    </message>
</context>
<context>
    <name>BestsSheet</name>
    <message>
        <source>Personal bests</source>
        <translation>Mejores marcas</translation>
    </message>
    <message>
        <source>More than 2.0 m/s of wind behind a competition makes its time wind-aided: it is no best. A time by hand is one only where there is no other.</source>
        <translation>Más de 2,0 m/s de viento a favor en competición: la marca no cuenta como mejor. Una marca a mano solo cuenta si no hay otra.</translation>
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
        <translation>Días fuera</translation>
    </message>
    <message>
        <source>Change the days away</source>
        <translation>Cambiar los días fuera</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>¿Por qué?</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>Viaje</translation>
    </message>
    <message>
        <source>Exams</source>
        <translation>Exámenes</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>Enfermedad</translation>
    </message>
    <message>
        <source>Injury</source>
        <translation>Lesión</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>¿Dónde?</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Primer día</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Último día</translation>
    </message>
    <message>
        <source>Take these days out of the plan</source>
        <translation>Quitar estos días del plan</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>BottomBar</name>
    <message>
        <source>Bench</source>
        <translation>Banco</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Escalera</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Pista</translation>
    </message>
    <message>
        <source>Trends</source>
        <translation>Tendencias</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Lugares</translation>
    </message>
</context>
<context>
    <name>BoxCard</name>
    <message>
        <source>Drop jumps by box</source>
        <translation>Saltos en caída por cajón</translation>
    </message>
    <message>
        <source>best reactive strength within the contact limit</source>
        <translation>mejor fuerza reactiva dentro del límite de contacto</translation>
    </message>
    <message>
        <source>Contact is longer than 250 ms: a lower box.</source>
        <translation>El contacto supera 250 ms: un cajón más bajo.</translation>
    </message>
    <message>
        <source>Medians of the last day on each box. Go up 10 cm while contact stays short, no heel strikes the ground and RSI does not fall. Heels are not kept with a typed jump: watch them.</source>
        <translation>Medianas del último día en cada cajón. Sube 10 cm mientras el contacto sea corto, ningún talón golpee el suelo y el RSI no baje. Los talones no se guardan con un salto escrito: obsérvalos.</translation>
    </message>
</context>
<context>
    <name>CalibrationSheet</name>
    <message>
        <source>Six sides</source>
        <translation>Seis lados</translation>
    </message>
    <message>
        <source>Lay it on each side, in any order, on something hard and level. Wait for the tick.</source>
        <translation>Apóyalo sobre cada lado, en cualquier orden, en algo duro y nivelado. Espera la marca.</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>how far gravity was off at worst</source>
        <translation>lo que más se desvió la gravedad</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>with the six sides measured</source>
        <translation>con los seis lados medidos</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Start over</source>
        <translation>Empezar de nuevo</translation>
    </message>
</context>
<context>
    <name>CautionsSheet</name>
    <message>
        <source>This is not medical advice. Work with a licensed coach or clinician; local rules and facility codes come first.</source>
        <translation>Esto no es consejo médico. Trabaja con un entrenador o médico titulado; las normas locales y del centro van primero.</translation>
    </message>
    <message>
        <source>Pain, an injury or pregnancy: ask a clinician before you train by this plan.</source>
        <translation>Dolor, lesión o embarazo: pregunta a un médico antes de entrenar con este plan.</translation>
    </message>
    <message>
        <source>Under 18: only with a guardian&apos;s consent and a clearance.</source>
        <translation>Menor de 18: solo con permiso de un tutor y visto bueno médico.</translation>
    </message>
    <message>
        <source>Heavy lifts over a short range carry more load than you are used to: safety bars set, and a spotter.</source>
        <translation>Los levantamientos pesados de recorrido corto llevan más carga de la que conoces: topes de seguridad y alguien que vigile.</translation>
    </message>
    <message>
        <source>Drop jumps: few contacts, days between, and none when you are sore.</source>
        <translation>Saltos en caída: pocos contactos, días entre medias y ninguno con agujetas.</translation>
    </message>
    <message>
        <source>An estimated one-repetition maximum is an estimate. Never load it to see whether it is right.</source>
        <translation>Un 1RM estimado es una estimación. Nunca lo cargues para ver si es verdad.</translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation>Antes de empezar</translation>
    </message>
    <message>
        <source>That shorter ranges carry over better to sprinting is the working premise of this program. There is evidence on both sides; your own stopwatch decides.</source>
        <translation>Que los recorridos cortos se pasen mejor a la carrera es la hipótesis de trabajo de este programa. Hay pruebas en ambos sentidos; decide tu cronómetro.</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Lo he leído</translation>
    </message>
</context>
<context>
    <name>CheckCard</name>
    <message>
        <source>Take it lighter today</source>
        <translation>Hoy más ligero</translation>
    </message>
    <message>
        <source>If not: why?</source>
        <translation>Si no: ¿por qué?</translation>
    </message>
    <message>
        <source>bar slipped in the warm-up</source>
        <translation>la barra resbaló al calentar</translation>
    </message>
    <message>
        <source>Keep the plan</source>
        <translation>Seguir el plan</translation>
    </message>
</context>
<context>
    <name>CompetitionSheet</name>
    <message>
        <source>A new competition</source>
        <translation>Una competición nueva</translation>
    </message>
    <message>
        <source>Change the competition</source>
        <translation>Cambiar la competición</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>club championship</source>
        <translation>campeonato del club</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Priority</source>
        <translation>Prioridad</translation>
    </message>
    <message>
        <source>The season is counted back from it</source>
        <translation>La temporada se cuenta hacia atrás desde ella</translation>
    </message>
    <message>
        <source>Main competition</source>
        <translation>Competición principal</translation>
    </message>
    <message>
        <source>Delete this competition</source>
        <translation>Borrar esta competición</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>ConsequencesCard</name>
    <message>
        <source>What this does to the plan</source>
        <translation>Qué hace esto con el plan</translation>
    </message>
</context>
<context>
    <name>CutOffCard</name>
    <message>
        <source>Keep</source>
        <translation>Conservar</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Descartar</translation>
    </message>
</context>
<context>
    <name>DayChooser</name>
    <message>
        <source>a week sooner</source>
        <translation>una semana antes</translation>
    </message>
    <message>
        <source>− week</source>
        <translation>− semana</translation>
    </message>
    <message>
        <source>a day sooner</source>
        <translation>un día antes</translation>
    </message>
    <message>
        <source>− day</source>
        <translation>− día</translation>
    </message>
    <message>
        <source>a day later</source>
        <translation>un día después</translation>
    </message>
    <message>
        <source>+ day</source>
        <translation>+ día</translation>
    </message>
    <message>
        <source>a week later</source>
        <translation>una semana después</translation>
    </message>
    <message>
        <source>+ week</source>
        <translation>+ semana</translation>
    </message>
    <message>
        <source>The month before</source>
        <translation>El mes anterior</translation>
    </message>
    <message>
        <source>The month after</source>
        <translation>El mes siguiente</translation>
    </message>
    <message>
        <source>%1, today</source>
        <translation>%1, hoy</translation>
    </message>
</context>
<context>
    <name>DecideSheet</name>
    <message>
        <source>Decide otherwise</source>
        <translation>Decidir otra cosa</translation>
    </message>
    <message>
        <source>Your decision counts. It is kept with the evidence and your reason, so that the season can be read later.</source>
        <translation>Cuenta tu decisión. Se guarda con las pruebas y tu motivo, para poder leer la temporada después.</translation>
    </message>
    <message>
        <source>What will you do?</source>
        <translation>¿Qué vas a hacer?</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>¿Por qué?</translation>
    </message>
    <message>
        <source>for example: knee is sore, competition moved</source>
        <translation>por ejemplo: duele la rodilla, se movió la competición</translation>
    </message>
    <message>
        <source>Keep this decision</source>
        <translation>Guardar esta decisión</translation>
    </message>
</context>
<context>
    <name>DemoStrip</name>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Cancel making the demo squad</source>
        <translation>Cancelar la creación del equipo de muestra</translation>
    </message>
    <message>
        <source>Leave the demo squad and remove it</source>
        <translation>Salir del equipo de muestra y quitarlo</translation>
    </message>
</context>
<context>
    <name>DeviceCard</name>
    <message>
        <source>This device</source>
        <translation>Este aparato</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Signo decimal</translation>
    </message>
    <message>
        <source>As the language</source>
        <translation>Como el idioma</translation>
    </message>
    <message>
        <source>Point, 1.85</source>
        <translation>Punto, 1.85</translation>
    </message>
    <message>
        <source>Comma, 1,85</source>
        <translation>Coma, 1,85</translation>
    </message>
    <message>
        <source>Weeks of the calendar begin on</source>
        <translation>Las semanas del calendario empiezan en</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>Lunes</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>Domingo</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Cargas</translation>
    </message>
    <message>
        <source>Kilograms</source>
        <translation>Kilogramos</translation>
    </message>
    <message>
        <source>Pounds</source>
        <translation>Libras</translation>
    </message>
    <message>
        <source>The bar</source>
        <translation>La barra</translation>
    </message>
    <message>
        <source>Ranges and boxes</source>
        <translation>Recorridos y cajones</translation>
    </message>
    <message>
        <source>Centimetres</source>
        <translation>Centímetros</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Pulgadas</translation>
    </message>
    <message>
        <source>Sound on Bench</source>
        <translation>Sonido en el banco</translation>
    </message>
    <message>
        <source>Silent</source>
        <translation>Silencio</translation>
    </message>
    <message>
        <source>Tones</source>
        <translation>Tonos</translation>
    </message>
    <message>
        <source>Voice</source>
        <translation>Voz</translation>
    </message>
    <message>
        <source>Shakes in the hand, where the device can</source>
        <translation>Vibra en la mano, si el aparato puede</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Sets begin when the bar moves, and end when it has rested for 15 s</source>
        <translation>Las series empiezan cuando la barra se mueve y acaban cuando descansa 15 s</translation>
    </message>
    <message>
        <source>Light or dark</source>
        <translation>Claro u oscuro</translation>
    </message>
    <message>
        <source>As the device</source>
        <translation>Como el aparato</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Tamaño del texto</translation>
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
        <translation>¿Ha funcionado?</translation>
    </message>
    <message>
        <source>How this is judged</source>
        <translation>Cómo se juzga</translation>
    </message>
</context>
<context>
    <name>DoneSetSheet</name>
    <message>
        <source>Load, %1</source>
        <translation>Carga, %1</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>Kind of set</source>
        <translation>Tipo de serie</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>Control</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Calentamiento</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>Mantenimiento</translation>
    </message>
    <message>
        <source>Effort, 1 easy to 10 all out (optional)</source>
        <translation>Esfuerzo, de 1 fácil a 10 máximo (opcional)</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Strike out</source>
        <translation>Tachar</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No evidence</source>
        <translation>No es prueba</translation>
    </message>
    <message>
        <source>Is evidence</source>
        <translation>Es prueba</translation>
    </message>
    <message>
        <source>Was left</source>
        <translation>Fue izquierda</translation>
    </message>
    <message>
        <source>Was right</source>
        <translation>Fue derecha</translation>
    </message>
    <message>
        <source>One repetition is missing</source>
        <translation>Falta una repetición</translation>
    </message>
    <message>
        <source>It is counted as done. Velocity and time only if you measured them otherwise.</source>
        <translation>Cuenta como hecha. Velocidad y tiempo solo si los mediste de otro modo.</translation>
    </message>
    <message>
        <source>Velocity, m/s (if measured)</source>
        <translation>Velocidad, m/s (si se midió)</translation>
    </message>
    <message>
        <source>%1, ms (if measured)</source>
        <translation>%1, ms (si se midió)</translation>
    </message>
    <message>
        <source>Add the repetition</source>
        <translation>Añadir la repetición</translation>
    </message>
    <message>
        <source>Delete this set</source>
        <translation>Borrar esta serie</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>DoneSetsSheet</name>
    <message>
        <source>Sets done today</source>
        <translation>Series hechas hoy</translation>
    </message>
    <message>
        <source>Nothing yet. Each set stands here once it is done, to be looked at and put right.</source>
        <translation>Nada todavía. Cada serie aparece aquí al acabar, para mirarla y corregirla.</translation>
    </message>
</context>
<context>
    <name>EvidenceRow</name>
    <message>
        <source>met</source>
        <translation>cumplido</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>no cumplido</translation>
    </message>
    <message>
        <source>for show</source>
        <translation>informativo</translation>
    </message>
    <message>
        <source>%1: %2, allowed %3, %4</source>
        <translation>%1: %2, permitido %3, %4</translation>
    </message>
</context>
<context>
    <name>FindSensorsSheet</name>
    <message>
        <source>Find a sensor</source>
        <translation>Buscar un sensor</translation>
    </message>
    <message>
        <source>Name it</source>
        <translation>Ponle nombre</translation>
    </message>
    <message>
        <source>Search again</source>
        <translation>Buscar otra vez</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Probar otra vez</translation>
    </message>
    <message>
        <source>Switch the sensor on.</source>
        <translation>Enciende el sensor.</translation>
    </message>
    <message>
        <source>Shake it: many sleep until they are moved.</source>
        <translation>Agítalo: muchos duermen hasta que se mueven.</translation>
    </message>
    <message>
        <source>Hold it near this phone.</source>
        <translation>Tenlo cerca de este teléfono.</translation>
    </message>
    <message>
        <source>Close other programs that use it.</source>
        <translation>Cierra otros programas que lo usen.</translation>
    </message>
    <message>
        <source>Part of its name</source>
        <translation>Parte de su nombre</translation>
    </message>
    <message>
        <source>Where it is worn</source>
        <translation>Dónde se lleva</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Stop searching</source>
        <translation>Dejar de buscar</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Teach it</source>
        <translation>Enseñar</translation>
    </message>
    <message>
        <source>Listen again</source>
        <translation>Escuchar otra vez</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Volver a la lista</translation>
    </message>
</context>
<context>
    <name>FormsWords</name>
    <message>
        <source>Type a number.</source>
        <translation>Escribe un número.</translation>
    </message>
    <message>
        <source>This is not a number. Digits, with a point or a comma.</source>
        <translation>Esto no es un número. Cifras, con punto o coma.</translation>
    </message>
    <message>
        <source>Between %1 and %2.</source>
        <translation>Entre %1 y %2.</translation>
    </message>
    <message>
        <source>A whole number.</source>
        <translation>Un número entero.</translation>
    </message>
    <message>
        <source>Type a day, like 2026-03-30.</source>
        <translation>Escribe un día, como 2026-03-30.</translation>
    </message>
    <message>
        <source>There is no such day. Year-month-day, like 2026-03-30.</source>
        <translation>Ese día no existe. Año-mes-día, como 2026-03-30.</translation>
    </message>
    <message>
        <source>This cannot stay empty.</source>
        <translation>Esto no puede quedar vacío.</translation>
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
        <translation>Sin nombre (%1)</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Guardado</translation>
    </message>
    <message>
        <source>Likely a motion sensor</source>
        <translation>Quizá un sensor de movimiento</translation>
    </message>
</context>
<context>
    <name>ImportLook</name>
    <message>
        <source>Day of all rows (year-month-day)</source>
        <translation>Día de todas las filas (año-mes-día)</translation>
    </message>
    <message>
        <source>2026-03-30</source>
        <translation>2026-03-30</translation>
    </message>
    <message>
        <source>As it will be read</source>
        <translation>Así se leerá</translation>
    </message>
    <message>
        <source>Athletes</source>
        <translation>Atletas</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Ejercicios</translation>
    </message>
    <message>
        <source>Rows that cannot be read</source>
        <translation>Filas que no se pueden leer</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Columnas</translation>
    </message>
</context>
<context>
    <name>ImportPickSheet</name>
    <message>
        <source>The gate stands at, m</source>
        <translation>La célula está a, m</translation>
    </message>
    <message>
        <source>Between 0 and 1000 m.</source>
        <translation>Entre 0 y 1000 m.</translation>
    </message>
    <message>
        <source>Take this distance</source>
        <translation>Tomar esta distancia</translation>
    </message>
</context>
<context>
    <name>ImportSheet</name>
    <message>
        <source>Import sets</source>
        <translation>Importar series</translation>
    </message>
    <message>
        <source>Import runs</source>
        <translation>Importar carreras</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>De %1</translation>
    </message>
    <message>
        <source>Put the table as a CSV file into %1, then look again.</source>
        <translation>Pon la tabla como archivo CSV en %1 y mira otra vez.</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Mirar otra vez</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Elegir otro archivo</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
</context>
<context>
    <name>ImportWords</name>
    <message>
        <source>Not read</source>
        <translation>No se lee</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Atleta</translation>
    </message>
    <message>
        <source>Athlete&apos;s identifier</source>
        <translation>Identificador del atleta</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Effort, 1 to 10</source>
        <translation>Esfuerzo, de 1 a 10</translation>
    </message>
    <message>
        <source>Key of the row</source>
        <translation>Clave de la fila</translation>
    </message>
    <message>
        <source>Number of the run or set</source>
        <translation>Número de la carrera o serie</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Parcial</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distancia</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Viento</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>Cronometrado con</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Salida</translation>
    </message>
    <message>
        <source>Run-in</source>
        <translation>Carrera previa</translation>
    </message>
    <message>
        <source>Reaction</source>
        <translation>Reacción</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Zapatillas</translation>
    </message>
    <message>
        <source>Name of the test</source>
        <translation>Nombre del test</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Competition, yes or no</source>
        <translation>Competición, sí o no</translation>
    </message>
    <message>
        <source>Trial of a test day, yes or no</source>
        <translation>Intento de un día de test, sí o no</translation>
    </message>
    <message>
        <source>Contact time</source>
        <translation>Tiempo de contacto</translation>
    </message>
    <message>
        <source>Step length</source>
        <translation>Longitud de zancada</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Ejercicio</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>Time to peak velocity</source>
        <translation>Tiempo hasta la velocidad máxima</translation>
    </message>
    <message>
        <source>Mean velocity</source>
        <translation>Velocidad media</translation>
    </message>
    <message>
        <source>Peak velocity</source>
        <translation>Velocidad máxima</translation>
    </message>
    <message>
        <source>Range of motion</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Rung</source>
        <translation>Peldaño</translation>
    </message>
    <message>
        <source>Kind of set</source>
        <translation>Tipo de serie</translation>
    </message>
    <message>
        <source>Height of the box</source>
        <translation>Altura del cajón</translation>
    </message>
    <message>
        <source>Split at %1</source>
        <translation>Parcial a %1</translation>
    </message>
    <message>
        <source>Split, distance not known</source>
        <translation>Parcial, distancia desconocida</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, en %2</translation>
    </message>
    <message>
        <source>Nothing to add is known in this file yet. Tap the columns below and say what they mean.</source>
        <translation>Aún no se conoce nada que añadir en este archivo. Toca las columnas de abajo y di qué significan.</translation>
    </message>
    <message>
        <source>“%1” can be read in two ways. What is the decimal mark?</source>
        <translation>«%1» se puede leer de dos modos. ¿Cuál es el signo decimal?</translation>
    </message>
    <message>
        <source>“%1” can be read in two ways. What comes first?</source>
        <translation>«%1» se puede leer de dos modos. ¿Qué va primero?</translation>
    </message>
    <message>
        <source>The file has no dates. On which day was it?</source>
        <translation>El archivo no tiene fechas. ¿Qué día fue?</translation>
    </message>
    <message>
        <source>At how many metres stands the gate of “%1”? Tap the column below.</source>
        <translation>¿A cuántos metros está la célula de «%1»? Toca la columna de abajo.</translation>
    </message>
    <message>
        <source>In which unit are the loads of “%1”?</source>
        <translation>¿En qué unidad están las cargas de «%1»?</translation>
    </message>
    <message>
        <source>Rows above the header, left out: %1.</source>
        <translation>Filas sobre el encabezado, omitidas: %1.</translation>
    </message>
    <message>
        <source>The file has no header: its first row is read like the others.</source>
        <translation>El archivo no tiene encabezado: la primera fila se lee como las demás.</translation>
    </message>
    <message>
        <source>The decimal mark is a comma, as in %1.</source>
        <translation>El signo decimal es una coma, como en %1.</translation>
    </message>
    <message>
        <source>Times are in milliseconds, by their size: %1.</source>
        <translation>Los tiempos están en milisegundos, por su tamaño: %1.</translation>
    </message>
    <message>
        <source>The times do not rise (%1): each counts from the gate before.</source>
        <translation>Los tiempos no suben (%1): cada uno cuenta desde la célula anterior.</translation>
    </message>
    <message>
        <source>The times rise (%1): each counts from the start.</source>
        <translation>Los tiempos suben (%1): cada uno cuenta desde la salida.</translation>
    </message>
    <message>
        <source>Several rows make one run.</source>
        <translation>Varias filas forman una carrera.</translation>
    </message>
    <message>
        <source>The day comes before the month, as in %1.</source>
        <translation>El día va antes que el mes, como en %1.</translation>
    </message>
    <message>
        <source>The month comes before the day, as in %1.</source>
        <translation>El mes va antes que el día, como en %1.</translation>
    </message>
    <message>
        <source>More cells than the header has.</source>
        <translation>Más celdas que el encabezado.</translation>
    </message>
    <message>
        <source>“%1” is not a number.</source>
        <translation>«%1» no es un número.</translation>
    </message>
    <message>
        <source>“%1” cannot be. Check the number and the unit.</source>
        <translation>«%1» no puede ser. Revisa el número y la unidad.</translation>
    </message>
    <message>
        <source>The day is missing.</source>
        <translation>Falta el día.</translation>
    </message>
    <message>
        <source>“%1” is not a day.</source>
        <translation>«%1» no es un día.</translation>
    </message>
    <message>
        <source>“%1” has not come yet. Check the order of day and month.</source>
        <translation>«%1» aún no ha llegado. Revisa el orden de día y mes.</translation>
    </message>
    <message>
        <source>“%1” is not a time of day.</source>
        <translation>«%1» no es una hora.</translation>
    </message>
    <message>
        <source>The time is missing.</source>
        <translation>Falta el tiempo.</translation>
    </message>
    <message>
        <source>The time has no distance.</source>
        <translation>El tiempo no tiene distancia.</translation>
    </message>
    <message>
        <source>The times do not rise with the distance.</source>
        <translation>Los tiempos no suben con la distancia.</translation>
    </message>
    <message>
        <source>That is faster than anyone has run. Check distance and time.</source>
        <translation>Nadie ha corrido tan rápido. Revisa distancia y tiempo.</translation>
    </message>
    <message>
        <source>A time before this one is missing.</source>
        <translation>Falta un tiempo antes de este.</translation>
    </message>
    <message>
        <source>A split lies behind the end of the run.</source>
        <translation>Un parcial está más allá del final de la carrera.</translation>
    </message>
    <message>
        <source>The split at the end says another time.</source>
        <translation>El parcial del final dice otro tiempo.</translation>
    </message>
    <message>
        <source>The lift is missing.</source>
        <translation>Falta el ejercicio.</translation>
    </message>
    <message>
        <source>The repetitions are missing.</source>
        <translation>Faltan las repeticiones.</translation>
    </message>
</context>
<context>
    <name>JumpSheet</name>
    <message>
        <source>Add jumps</source>
        <translation>Añadir saltos</translation>
    </message>
    <message>
        <source>Kind of jump</source>
        <translation>Tipo de salto</translation>
    </message>
    <message>
        <source>Drop jump</source>
        <translation>Salto en caída</translation>
    </message>
    <message>
        <source>Counter-movement</source>
        <translation>Contramovimiento</translation>
    </message>
    <message>
        <source>Squat jump</source>
        <translation>Sin contramovimiento</translation>
    </message>
    <message>
        <source>Standing long</source>
        <translation>Longitud sin carrera</translation>
    </message>
    <message>
        <source>Bounds</source>
        <translation>Multisaltos</translation>
    </message>
    <message>
        <source>Box height, %1</source>
        <translation>Altura del cajón, %1</translation>
    </message>
    <message>
        <source>How many in a row</source>
        <translation>Cuántos seguidos</translation>
    </message>
    <message>
        <source>Contact time, ms</source>
        <translation>Tiempo de contacto, ms</translation>
    </message>
    <message>
        <source>Flight time, ms (or the height below)</source>
        <translation>Tiempo de vuelo, ms (o abajo la altura)</translation>
    </message>
    <message>
        <source>Height, %1</source>
        <translation>Altura, %1</translation>
    </message>
    <message>
        <source>Distance, m</source>
        <translation>Distancia, m</translation>
    </message>
    <message>
        <source>Trials</source>
        <translation>Intentos</translation>
    </message>
    <message>
        <source>Take the last trial off</source>
        <translation>Quitar el último intento</translation>
    </message>
    <message>
        <source>Add another trial</source>
        <translation>Añadir otro intento</translation>
    </message>
    <message>
        <source>Is it one of these?</source>
        <translation>¿Es uno de estos?</translation>
    </message>
    <message>
        <source>Trial of a test day</source>
        <translation>Intento de un día de test</translation>
    </message>
    <message>
        <source>Day (year-month-day)</source>
        <translation>Día (año-mes-día)</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Surface, shoes, note</source>
        <translation>Superficie, zapatillas, nota</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Pista</translation>
    </message>
    <message>
        <source>Indoor</source>
        <translation>Pista cubierta</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>Hierba</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Zapatillas</translation>
    </message>
    <message>
        <source>Spikes</source>
        <translation>Clavos</translation>
    </message>
    <message>
        <source>Flats</source>
        <translation>Lisas</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Sin decir</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Save the jumps</source>
        <translation>Guardar los saltos</translation>
    </message>
</context>
<context>
    <name>LadderPage</name>
    <message>
        <source>Ladder</source>
        <translation>Escalera</translation>
    </message>
    <message>
        <source>Steps and their evidence</source>
        <translation>Pasos y sus pruebas</translation>
    </message>
    <message>
        <source>Plan a season</source>
        <translation>Planear una temporada</translation>
    </message>
    <message>
        <source>Go to Squad</source>
        <translation>Ir a Equipo</translation>
    </message>
    <message>
        <source>Change the season</source>
        <translation>Cambiar la temporada</translation>
    </message>
    <message>
        <source>Season report as PDF</source>
        <translation>Informe de temporada en PDF</translation>
    </message>
    <message>
        <source>All numbers as CSV tables</source>
        <translation>Todos los números en tablas CSV</translation>
    </message>
    <message>
        <source>Hand out as a calendar</source>
        <translation>Entregar como calendario</translation>
    </message>
    <message>
        <source>Why shorter ranges? Both sides</source>
        <translation>¿Por qué recorridos cortos? Las dos caras</translation>
    </message>
    <message>
        <source>Follow</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Decide otherwise</source>
        <translation>Decidir otra cosa</translation>
    </message>
    <message>
        <source>Both sides of the evidence</source>
        <translation>Las dos caras de las pruebas</translation>
    </message>
</context>
<context>
    <name>LoadChartSheet</name>
    <message>
        <source>Loads by the chart</source>
        <translation>Cargas según la tabla</translation>
    </message>
    <message>
        <source>1RM, %1</source>
        <translation>1RM, %1</translation>
    </message>
    <message>
        <source>Type what you can lift once. A set of up to ten repetitions typed in tells it roughly.</source>
        <translation>Escribe lo que puedes levantar una vez. Una serie escrita de hasta diez repeticiones lo dice por encima.</translation>
    </message>
    <message>
        <source>Source: NSCA training load chart. At 80 % of 1RM people differ by many repetitions, so the plan goes by how fast the bar moves, not by this.</source>
        <translation>Fuente: tabla de cargas de la NSCA. Al 80 % del 1RM las personas difieren en muchas repeticiones; por eso el plan mira la velocidad de la barra, no esto.</translation>
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
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>MapSheet</name>
    <message>
        <source>Take in a file</source>
        <translation>Tomar un archivo</translation>
    </message>
    <message>
        <source>How it is read</source>
        <translation>Cómo se lee</translation>
    </message>
    <message>
        <source>A sensor map says what each byte means. It was chosen by itself; choose another only where the numbers look wrong.</source>
        <translation>Una descripción de sensor dice qué significa cada byte. Se eligió sola; elige otra solo si los números parecen malos.</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>De %1</translation>
    </message>
    <message>
        <source>Put the file of the sensor map (its name ends in .json) into %1, then look again.</source>
        <translation>Pon el archivo de la descripción (su nombre acaba en .json) en %1 y mira otra vez.</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Mirar otra vez</translation>
    </message>
    <message>
        <source>Hand out this map as a file</source>
        <translation>Entregar esta descripción como archivo</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Volver a la lista</translation>
    </message>
</context>
<context>
    <name>MarkedLine</name>
    <message>
        <source>Caution: %1</source>
        <translation>Cuidado: %1</translation>
    </message>
</context>
<context>
    <name>NothingLeft</name>
    <message>
        <source>Clear the filters</source>
        <translation>Quitar los filtros</translation>
    </message>
</context>
<context>
    <name>NoticeBar</name>
    <message>
        <source>Close the message</source>
        <translation>Cerrar el mensaje</translation>
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
        <translation>Carga, %1 (0 si es peso corporal)</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>Effort, 1 easy to 10 all out (optional)</source>
        <translation>Esfuerzo, de 1 fácil a 10 máximo (opcional)</translation>
    </message>
    <message>
        <source>Save the set</source>
        <translation>Guardar la serie</translation>
    </message>
</context>
<context>
    <name>PageFrame</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
</context>
<context>
    <name>PagesWords</name>
    <message>
        <source>week %1 of %2</source>
        <translation>semana %1 de %2</translation>
    </message>
    <message>
        <source>Sprints first, the lifts after the run.</source>
        <translation>Primero las carreras; los ejercicios, después de correr.</translation>
    </message>
    <message>
        <source>No lifts today</source>
        <translation>Hoy sin ejercicios</translation>
    </message>
    <message>
        <source>Today belongs to the track.</source>
        <translation>Hoy es de la pista.</translation>
    </message>
    <message>
        <source>Rest is part of the plan. The next lifts stand on Ladder.</source>
        <translation>El descanso es parte del plan. Los próximos ejercicios están en Escalera.</translation>
    </message>
    <message>
        <source>Go to Ladder</source>
        <translation>Ir a Escalera</translation>
    </message>
    <message>
        <source>No season yet</source>
        <translation>Aún no hay temporada</translation>
    </message>
    <message>
        <source>Plan a season on Ladder: it starts from the main competition and counts backwards. From then on, each day&apos;s lifts, loads and sets stand here.</source>
        <translation>Planea una temporada en Escalera: parte de la competición principal y cuenta hacia atrás. Desde entonces, cada día están aquí los ejercicios, cargas y series.</translation>
    </message>
    <message>
        <source>Plan a season on Ladder</source>
        <translation>Planear una temporada en Escalera</translation>
    </message>
    <message>
        <source>A season is planned backwards</source>
        <translation>Una temporada se planea hacia atrás</translation>
    </message>
    <message>
        <source>Say when the main competition is and which lifts you keep for the whole season. As it comes nearer, each lift goes down its ladder to a shorter range.</source>
        <translation>Di cuándo es la competición principal y qué ejercicios mantienes toda la temporada. Al acercarse, cada ejercicio baja su escalera a un recorrido más corto.</translation>
    </message>
    <message>
        <source>Nobody trains here yet</source>
        <translation>Aún no entrena nadie aquí</translation>
    </message>
    <message>
        <source>Add an athlete on Squad, then plan a season on Ladder.</source>
        <translation>Añade un atleta en Equipo y planea una temporada en Escalera.</translation>
    </message>
    <message>
        <source>Go to Squad</source>
        <translation>Ir a Equipo</translation>
    </message>
    <message>
        <source>No athlete, no season</source>
        <translation>Sin atleta no hay temporada</translation>
    </message>
    <message>
        <source>Add an athlete on Squad first.</source>
        <translation>Añade antes un atleta en Equipo.</translation>
    </message>
</context>
<context>
    <name>PlatesSheet</name>
    <message>
        <source>Plates on the bar</source>
        <translation>Discos en la barra</translation>
    </message>
    <message>
        <source>Load: %1</source>
        <translation>Carga: %1</translation>
    </message>
    <message>
        <source>Take the last plates off</source>
        <translation>Quitar los últimos discos</translation>
    </message>
    <message>
        <source>A plate of %1 on each side</source>
        <translation>Un disco de %1 a cada lado</translation>
    </message>
    <message>
        <source>Take all off</source>
        <translation>Quitar todos</translation>
    </message>
    <message>
        <source>This is on the bar</source>
        <translation>Esto está en la barra</translation>
    </message>
</context>
<context>
    <name>PoseTile</name>
    <message>
        <source>%1: taken</source>
        <translation>%1: tomado</translation>
    </message>
    <message>
        <source>%1: next</source>
        <translation>%1: siguiente</translation>
    </message>
    <message>
        <source>%1: open</source>
        <translation>%1: pendiente</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>tomado</translation>
    </message>
    <message>
        <source>next</source>
        <translation>siguiente</translation>
    </message>
    <message>
        <source>open</source>
        <translation>pendiente</translation>
    </message>
</context>
<context>
    <name>RadioTroubleWords</name>
    <message>
        <source>Bluetooth is off. Switch it on: the sensor then connects by itself.</source>
        <translation>El Bluetooth está apagado. Enciéndelo: el sensor se conecta solo.</translation>
    </message>
    <message>
        <source>No Bluetooth was found on this device. Switch it on in the system&apos;s settings, or plug a Bluetooth adapter in.</source>
        <translation>No se encontró Bluetooth en este aparato. Enciéndelo en los ajustes del sistema o conecta un adaptador Bluetooth.</translation>
    </message>
    <message>
        <source>Fleetrung may not use Bluetooth. Allow it in the system&apos;s settings for Fleetrung; on older phones location must be on, too.</source>
        <translation>Fleetrung no puede usar Bluetooth. Permítelo en los ajustes del sistema para Fleetrung; en teléfonos antiguos la ubicación también debe estar activa.</translation>
    </message>
    <message>
        <source>%1 is not in reach. Switch it on and bring it near: it then connects by itself.</source>
        <translation>%1 no está al alcance. Enciéndelo y acércalo: se conecta solo.</translation>
    </message>
    <message>
        <source>%1 is near but did not let us in. Disconnect it from any other phone, or switch it off and on.</source>
        <translation>%1 está cerca pero no nos dejó entrar. Desconéctalo de otros teléfonos, o apágalo y enciéndelo.</translation>
    </message>
    <message>
        <source>The connection to %1 was lost and is being made again. Keep the phone within a few metres of it.</source>
        <translation>Se perdió la conexión con %1 y se está rehaciendo. Deja el teléfono a pocos metros.</translation>
    </message>
    <message>
        <source>%1 answers, but it is not the kind of sensor it was saved as. Choose another description for it, or teach it anew.</source>
        <translation>%1 responde, pero no es el tipo de sensor con que se guardó. Elige otra descripción o enséñalo de nuevo.</translation>
    </message>
    <message>
        <source>%1 asks for pairing, and the pairing with this device does not work. Open the system&apos;s Bluetooth settings, forget (remove) %1 there, and connect again.</source>
        <translation>%1 pide emparejarse, y el emparejamiento con este aparato no funciona. Abre los ajustes de Bluetooth del sistema, olvida (quita) %1 y conecta otra vez.</translation>
    </message>
    <message>
        <source>%1 is connected but sends nothing; it is being asked again. If this stays, switch it off and on.</source>
        <translation>%1 está conectado pero no envía nada; se le pregunta otra vez. Si sigue así, apágalo y enciéndelo.</translation>
    </message>
    <message>
        <source>%1 sends data that its description does not fit. Choose another description for it, or teach it anew.</source>
        <translation>%1 envía datos que su descripción no entiende. Elige otra descripción o enséñalo de nuevo.</translation>
    </message>
    <message>
        <source>%1 sends more than this connection may carry, and samples can be lost. Set a lower rate on the sensor if you can.</source>
        <translation>%1 envía más de lo que esta conexión puede llevar, y se pueden perder muestras. Pon una frecuencia menor en el sensor si puedes.</translation>
    </message>
    <message>
        <source>The sensor</source>
        <translation>El sensor</translation>
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
        <translation>Mejores marcas</translation>
    </message>
    <message>
        <source>Best</source>
        <translation>Mejor</translation>
    </message>
</context>
<context>
    <name>RunFitSheet</name>
    <message>
        <source>Touch a split to read it.</source>
        <translation>Toca un parcial para leerlo.</translation>
    </message>
    <message>
        <source>Splits that were left out</source>
        <translation>Parciales omitidos</translation>
    </message>
    <message>
        <source>Use them anyway</source>
        <translation>Usarlos de todos modos</translation>
    </message>
    <message>
        <source>Splits against the fit</source>
        <translation>Parciales frente a la curva</translation>
    </message>
    <message>
        <source>Force and power</source>
        <translation>Fuerza y potencia</translation>
    </message>
</context>
<context>
    <name>RunFormWords</name>
    <message>
        <source>That day has not come yet.</source>
        <translation>Ese día aún no ha llegado.</translation>
    </message>
    <message>
        <source>The split at %1 says %2. Take one of them out.</source>
        <translation>El parcial a %1 dice %2. Quita uno de los dos.</translation>
    </message>
    <message>
        <source>It must be later than the last split.</source>
        <translation>Debe ser posterior al último parcial.</translation>
    </message>
    <message>
        <source>A split lies at %1.</source>
        <translation>Hay un parcial a %1.</translation>
    </message>
    <message>
        <source>That is faster than anyone has run. Check distance and time.</source>
        <translation>Nadie ha corrido tan rápido. Revisa distancia y tiempo.</translation>
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
        <translation>Borrar %1, %2</translation>
    </message>
</context>
<context>
    <name>RunRowsWords</name>
    <message>
        <source>competition</source>
        <translation>competición</translation>
    </message>
    <message>
        <source>test day</source>
        <translation>día de test</translation>
    </message>
    <message>
        <source>wind %1</source>
        <translation>viento %1</translation>
    </message>
    <message>
        <source>wind-aided</source>
        <translation>con viento favorable</translation>
    </message>
    <message>
        <source>best</source>
        <translation>mejor</translation>
    </message>
    <message>
        <source>run-in %1</source>
        <translation>carrera previa %1</translation>
    </message>
    <message>
        <source>%1 splits</source>
        <translation>%1 parciales</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>a mano</translation>
    </message>
    <message>
        <source>run once</source>
        <translation>corrido una vez</translation>
    </message>
    <message>
        <source>%1 runs</source>
        <translation>%1 carreras</translation>
    </message>
    <message>
        <source>wind-aided %1 (%2)</source>
        <translation>con viento favorable %1 (%2)</translation>
    </message>
</context>
<context>
    <name>RunSheet</name>
    <message>
        <source>Add a run</source>
        <translation>Añadir una carrera</translation>
    </message>
    <message>
        <source>Zone, m</source>
        <translation>Zona, m</translation>
    </message>
    <message>
        <source>Distance, m</source>
        <translation>Distancia, m</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Salida</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Tacos</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>De pie</translation>
    </message>
    <message>
        <source>Falling</source>
        <translation>Cayendo</translation>
    </message>
    <message>
        <source>Rolling</source>
        <translation>En movimiento</translation>
    </message>
    <message>
        <source>Flying</source>
        <translation>Lanzada</translation>
    </message>
    <message>
        <source>Run-in before the zone, m</source>
        <translation>Carrera previa a la zona, m</translation>
    </message>
    <message>
        <source>Splits</source>
        <translation>Parciales</translation>
    </message>
    <message>
        <source>Time, s (if no split stands at the end)</source>
        <translation>Tiempo, s (si no hay parcial al final)</translation>
    </message>
    <message>
        <source>Time, s</source>
        <translation>Tiempo, s</translation>
    </message>
    <message>
        <source>Wind, m/s, tail wind positive (optional)</source>
        <translation>Viento, m/s, a favor positivo (opcional)</translation>
    </message>
    <message>
        <source>+0,8 or -1.2</source>
        <translation>+0,8 o -1.2</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>Cronometrado con</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Mano</translation>
    </message>
    <message>
        <source>Gates</source>
        <translation>Células</translation>
    </message>
    <message>
        <source>Video</source>
        <translation>Vídeo</translation>
    </message>
    <message>
        <source>Electronic</source>
        <translation>Electrónico</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Pista</translation>
    </message>
    <message>
        <source>Indoor</source>
        <translation>Pista cubierta</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>Hierba</translation>
    </message>
    <message>
        <source>Is it one of these?</source>
        <translation>¿Es uno de estos?</translation>
    </message>
    <message>
        <source>Trial of a test day</source>
        <translation>Intento de un día de test</translation>
    </message>
    <message>
        <source>Competition</source>
        <translation>Competición</translation>
    </message>
    <message>
        <source>Day (year-month-day)</source>
        <translation>Día (año-mes-día)</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Shoes, reaction, air, steps from video, note</source>
        <translation>Zapatillas, reacción, aire, zancadas por vídeo, nota</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Zapatillas</translation>
    </message>
    <message>
        <source>Spikes</source>
        <translation>Clavos</translation>
    </message>
    <message>
        <source>Flats</source>
        <translation>Lisas</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Sin decir</translation>
    </message>
    <message>
        <source>Reaction from the gun, s, where it was timed</source>
        <translation>Reacción al disparo, s, si se midió</translation>
    </message>
    <message>
        <source>Start line to the beam that starts the clock, m; the splits count from the beam</source>
        <translation>De la línea a la célula que arranca el reloj, m; los parciales cuentan desde la célula</translation>
    </message>
    <message>
        <source>Air temperature, °C</source>
        <translation>Temperatura del aire, °C</translation>
    </message>
    <message>
        <source>Height above the sea, m</source>
        <translation>Altura sobre el mar, m</translation>
    </message>
    <message>
        <source>Ground contact near top speed, ms: from video at 240 pictures a second, ± 4 ms</source>
        <translation>Contacto cerca de la velocidad punta, ms: vídeo de 240 imágenes por segundo, ± 4 ms</translation>
    </message>
    <message>
        <source>Step length near top speed, %1, from video</source>
        <translation>Longitud de zancada cerca de la velocidad punta, %1, por vídeo</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Save the run</source>
        <translation>Guardar la carrera</translation>
    </message>
</context>
<context>
    <name>SeasonChangesWords</name>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: de %2 a %3</translation>
    </message>
    <message>
        <source>, %1 longer</source>
        <translation>, %1 más larga</translation>
    </message>
    <message>
        <source>, %1 shorter</source>
        <translation>, %1 más corta</translation>
    </message>
    <message>
        <source>, new</source>
        <translation>, nueva</translation>
    </message>
    <message>
        <source>No more %1</source>
        <translation>Ya no hay %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3</source>
        <translation>%1: %2 en vez de %3</translation>
    </message>
    <message>
        <source>%1: %2, new</source>
        <translation>%1: %2, nuevo</translation>
    </message>
    <message>
        <source>%1, %2: no longer planned</source>
        <translation>%1, %2: ya no está previsto</translation>
    </message>
</context>
<context>
    <name>SeasonEditSheet</name>
    <message>
        <source>Change the season</source>
        <translation>Cambiar la temporada</translation>
    </message>
    <message>
        <source>Competitions</source>
        <translation>Competiciones</translation>
    </message>
    <message>
        <source>Add a competition</source>
        <translation>Añadir una competición</translation>
    </message>
    <message>
        <source>Travel, exams, illness, injury</source>
        <translation>Viaje, exámenes, enfermedad, lesión</translation>
    </message>
    <message>
        <source>Add days away</source>
        <translation>Añadir días fuera</translation>
    </message>
    <message>
        <source>The week</source>
        <translation>La semana</translation>
    </message>
    <message>
        <source>Days with lifts</source>
        <translation>Días con ejercicios</translation>
    </message>
    <message>
        <source>Days with sprints</source>
        <translation>Días con carreras</translation>
    </message>
    <message>
        <source>Length of a session with lifts, minutes</source>
        <translation>Duración de una sesión de ejercicios, minutos</translation>
    </message>
    <message>
        <source>Keep this length</source>
        <translation>Conservar esta duración</translation>
    </message>
    <message>
        <source>The weight room</source>
        <translation>La sala de fuerza</translation>
    </message>
    <message>
        <source>What it has</source>
        <translation>Lo que tiene</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Barra</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Jaula</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Topes</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Tacos</translation>
    </message>
    <message>
        <source>Boxes</source>
        <translation>Cajones</translation>
    </message>
    <message>
        <source>A height that you do not have is never planned. It stays as you type it.</source>
        <translation>Una altura que no tienes nunca se prevé. Queda como la escribes.</translation>
    </message>
    <message>
        <source>Remove the box of %1</source>
        <translation>Quitar el cajón de %1</translation>
    </message>
    <message>
        <source>Height of another box, %1</source>
        <translation>Altura de otro cajón, %1</translation>
    </message>
    <message>
        <source>Add this box</source>
        <translation>Añadir este cajón</translation>
    </message>
</context>
<context>
    <name>SeasonFormWords</name>
    <message>
        <source>&quot;%1&quot; is no height of a box.</source>
        <translation>«%1» no es una altura de cajón.</translation>
    </message>
    <message>
        <source>Choose at least one day.</source>
        <translation>Elige al menos un día.</translation>
    </message>
    <message>
        <source>Choose at least one lift.</source>
        <translation>Elige al menos un ejercicio.</translation>
    </message>
</context>
<context>
    <name>SeasonSheet</name>
    <message>
        <source>Plan a season</source>
        <translation>Planear una temporada</translation>
    </message>
    <message>
        <source>Main competition</source>
        <translation>Competición principal</translation>
    </message>
    <message>
        <source>club championship</source>
        <translation>campeonato del club</translation>
    </message>
    <message>
        <source>Day of the main competition (year-month-day)</source>
        <translation>Día de la competición principal (año-mes-día)</translation>
    </message>
    <message>
        <source>First day of the season</source>
        <translation>Primer día de la temporada</translation>
    </message>
    <message>
        <source>Days with lifts</source>
        <translation>Días con ejercicios</translation>
    </message>
    <message>
        <source>Days with sprints</source>
        <translation>Días con carreras</translation>
    </message>
    <message>
        <source>Lifts you keep for the whole season, a few</source>
        <translation>Ejercicios que mantienes toda la temporada, pocos</translation>
    </message>
    <message>
        <source>What the weight room has</source>
        <translation>Lo que tiene la sala de fuerza</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Barra</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Jaula</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Topes</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Tacos</translation>
    </message>
    <message>
        <source>Heights of boxes, %1, with spaces between</source>
        <translation>Alturas de los cajones, %1, separadas por espacios</translation>
    </message>
    <message>
        <source>20 30 45</source>
        <translation>20 30 45</translation>
    </message>
    <message>
        <source>Lay out the season</source>
        <translation>Trazar la temporada</translation>
    </message>
</context>
<context>
    <name>Sensor</name>
    <message>
        <source>Bar sensor</source>
        <translation>Sensor de barra</translation>
    </message>
    <message>
        <source>Started with --no-radio: no sensor is looked for.</source>
        <translation>Iniciado con --no-radio: no se busca ningún sensor.</translation>
    </message>
</context>
<context>
    <name>SensorPill</name>
    <message>
        <source>%1. %2 Show the sensors</source>
        <translation>%1. %2 Ver los sensores</translation>
    </message>
</context>
<context>
    <name>SensorSheet</name>
    <message>
        <source>Try now</source>
        <translation>Probar ahora</translation>
    </message>
    <message>
        <source>Where it is worn</source>
        <translation>Dónde se lleva</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Save the name</source>
        <translation>Guardar el nombre</translation>
    </message>
    <message>
        <source>Measure its six sides</source>
        <translation>Medir sus seis lados</translation>
    </message>
    <message>
        <source>As soon as it streams.</source>
        <translation>En cuanto envíe.</translation>
    </message>
    <message>
        <source>How it is read</source>
        <translation>Cómo se lee</translation>
    </message>
    <message>
        <source>Teach it anew</source>
        <translation>Enseñarlo de nuevo</translation>
    </message>
    <message>
        <source>Three minutes, where its numbers look wrong.</source>
        <translation>Tres minutos, si sus números parecen malos.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Forget this sensor</source>
        <translation>Olvidar este sensor</translation>
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
        <translation>En la barra</translation>
    </message>
    <message>
        <source>On the shoe</source>
        <translation>En la zapatilla</translation>
    </message>
    <message>
        <source>At the waist</source>
        <translation>En la cintura</translation>
    </message>
    <message>
        <source>Bar sensor</source>
        <translation>Sensor de barra</translation>
    </message>
    <message>
        <source>Shoe sensor</source>
        <translation>Sensor de zapatilla</translation>
    </message>
    <message>
        <source>Waist sensor</source>
        <translation>Sensor de cintura</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Barra</translation>
    </message>
    <message>
        <source>Shoe</source>
        <translation>Zapatilla</translation>
    </message>
    <message>
        <source>Waist</source>
        <translation>Cintura</translation>
    </message>
    <message>
        <source>Not looked for</source>
        <translation>No se busca</translation>
    </message>
    <message>
        <source>Looking for it</source>
        <translation>Se busca</translation>
    </message>
    <message>
        <source>Connecting</source>
        <translation>Conectando</translation>
    </message>
    <message>
        <source>Streaming</source>
        <translation>Enviando</translation>
    </message>
    <message>
        <source>Lost, looking for it</source>
        <translation>Perdido, se busca</translation>
    </message>
    <message>
        <source>Far away</source>
        <translation>Lejos</translation>
    </message>
    <message>
        <source>Across the room</source>
        <translation>Al otro lado de la sala</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerca</translation>
    </message>
    <message>
        <source>Very close</source>
        <translation>Muy cerca</translation>
    </message>
    <message>
        <source>Signal not told</source>
        <translation>Señal desconocida</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>ahora mismo</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>hace %1 min</translation>
    </message>
    <message>
        <source>%1 h ago</source>
        <translation>hace %1 h</translation>
    </message>
    <message>
        <source>%1 Hz</source>
        <translation>%1 Hz</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Frecuencia</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>Lost on the way</source>
        <translation>Perdido por el camino</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como mucho %1</translation>
    </message>
    <message>
        <source>Lateness</source>
        <translation>Retraso</translation>
    </message>
    <message>
        <source>Longest pause</source>
        <translation>Pausa más larga</translation>
    </message>
    <message>
        <source>Battery</source>
        <translation>Batería</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>sin decir</translation>
    </message>
    <message>
        <source>Zeroed</source>
        <translation>A cero</translation>
    </message>
    <message>
        <source>within 10 min</source>
        <translation>en menos de 10 min</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
    <message>
        <source>lay it still</source>
        <translation>déjalo quieto</translation>
    </message>
    <message>
        <source>Turning</source>
        <translation>Giro</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>sin medir</translation>
    </message>
    <message>
        <source>wider ± values</source>
        <translation>valores ± más anchos</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>Unreadable</source>
        <translation>Ilegible</translation>
    </message>
    <message>
        <source>Times lost</source>
        <translation>Veces perdido</translation>
    </message>
    <message>
        <source>since it was found</source>
        <translation>desde que se halló</translation>
    </message>
    <message>
        <source>battery %1 %</source>
        <translation>batería %1 %</translation>
    </message>
    <message>
        <source>%1 lost</source>
        <translation>%1 perdido</translation>
    </message>
</context>
<context>
    <name>SensorsCard</name>
    <message>
        <source>Sensors</source>
        <translation>Sensores</translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation>Añadir un sensor</translation>
    </message>
    <message>
        <source>Show the sensors</source>
        <translation>Ver los sensores</translation>
    </message>
</context>
<context>
    <name>SensorsSheet</name>
    <message>
        <source>Sensors</source>
        <translation>Sensores</translation>
    </message>
    <message>
        <source>No sensor yet</source>
        <translation>Aún sin sensor</translation>
    </message>
    <message>
        <source>Any motion sensor that speaks Bluetooth Low Energy will do. Add it once; from then on it is found by itself.</source>
        <translation>Sirve cualquier sensor de movimiento con Bluetooth Low Energy. Añádelo una vez; después se encuentra solo.</translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation>Añadir un sensor</translation>
    </message>
</context>
<context>
    <name>SessionView</name>
    <message>
        <source>How are you today?</source>
        <translation>¿Cómo estás hoy?</translation>
    </message>
    <message>
        <source>Sleep, soreness, pain: the day is decided with it.</source>
        <translation>Sueño, agujetas, dolor: con eso se decide el día.</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4, %5</source>
        <translation>%1, %2, %3, %4, %5</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>¿Por qué?</translation>
    </message>
    <message>
        <source>Why %1 today?</source>
        <translation>¿Por qué hoy %1?</translation>
    </message>
    <message>
        <source>Other lifts</source>
        <translation>Otros ejercicios</translation>
    </message>
    <message>
        <source>Several athletes on this sensor</source>
        <translation>Varios atletas con este sensor</translation>
    </message>
</context>
<context>
    <name>SetActions</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Undo the last repetition</source>
        <translation>Deshacer la última repetición</translation>
    </message>
    <message>
        <source>End set</source>
        <translation>Terminar serie</translation>
    </message>
</context>
<context>
    <name>SetView</name>
    <message>
        <source>Last set</source>
        <translation>Última serie</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>Control</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Calentamiento</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>Mantenimiento</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>velocity loss</source>
        <translation>pérdida de velocidad</translation>
    </message>
    <message>
        <source>Type a set in</source>
        <translation>Escribir una serie</translation>
    </message>
    <message>
        <source>Why this today?</source>
        <translation>¿Por qué esto hoy?</translation>
    </message>
    <message>
        <source>Loads by the chart</source>
        <translation>Cargas según la tabla</translation>
    </message>
</context>
<context>
    <name>SharerStrip</name>
    <message>
        <source>Who lifts next?</source>
        <translation>¿Quién levanta después?</translation>
    </message>
    <message>
        <source>Who lifts next? End this set first.</source>
        <translation>¿Quién levanta después? Termina antes esta serie.</translation>
    </message>
    <message>
        <source>%1 lifts now</source>
        <translation>Ahora levanta %1</translation>
    </message>
    <message>
        <source>%1 lifts next</source>
        <translation>Después levanta %1</translation>
    </message>
</context>
<context>
    <name>SharingSheet</name>
    <message>
        <source>Who shares this sensor?</source>
        <translation>¿Quién comparte este sensor?</translation>
    </message>
    <message>
        <source>Picked by hand. They stand above the set; one tap changes who lifts next.</source>
        <translation>Elegidos a mano. Están sobre la serie; un toque cambia a quién le toca.</translation>
    </message>
    <message>
        <source>Those of the same rack and round, as Squad shares them out. Tap names to pick by hand.</source>
        <translation>Los de la misma jaula y ronda, como los reparte Equipo. Toca nombres para elegir tú.</translation>
    </message>
    <message>
        <source>Back to those of the rack</source>
        <translation>Volver a los de la jaula</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>Cerca</translation>
    </message>
</context>
<context>
    <name>SplitSheet</name>
    <message>
        <source>Splits</source>
        <translation>Parciales</translation>
    </message>
    <message>
        <source>Take the last split off: %1</source>
        <translation>Quitar el último parcial: %1</translation>
    </message>
    <message>
        <source>Split at, m</source>
        <translation>Parcial a, m</translation>
    </message>
    <message>
        <source>Time, s</source>
        <translation>Tiempo, s</translation>
    </message>
    <message>
        <source>Time: %1 s</source>
        <translation>Tiempo: %1 s</translation>
    </message>
    <message>
        <source>Decimal point</source>
        <translation>Signo decimal</translation>
    </message>
    <message>
        <source>Erase a digit</source>
        <translation>Borrar una cifra</translation>
    </message>
    <message>
        <source>Add the split</source>
        <translation>Añadir el parcial</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
</context>
<context>
    <name>SprintTrendCard</name>
    <message>
        <source>Sprint times</source>
        <translation>Tiempos de carrera</translation>
    </message>
    <message>
        <source>Which runs count</source>
        <translation>Qué carreras cuentan</translation>
    </message>
</context>
<context>
    <name>SquadPage</name>
    <message>
        <source>Squad</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Who trains here?</source>
        <translation>¿Quién entrena aquí?</translation>
    </message>
    <message>
        <source>Add yourself, or each athlete you coach. Lifts, sprints and decisions are kept for each athlete apart, on this device only.</source>
        <translation>Añádete, o a cada atleta que entrenas. Ejercicios, carreras y decisiones se guardan por separado, solo en este aparato.</translation>
    </message>
    <message>
        <source>Add an athlete</source>
        <translation>Añadir atleta</translation>
    </message>
    <message>
        <source>Look around with a demo squad</source>
        <translation>Mirar con un equipo de muestra</translation>
    </message>
    <message>
        <source>Look at the demo squad</source>
        <translation>Ver el equipo de muestra</translation>
    </message>
    <message>
        <source>Archive</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Import sets from a file</source>
        <translation>Importar series de un archivo</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>What to know before you lift heavy, or jump from a box.</source>
        <translation>Qué saber antes de levantar pesado o saltar de un cajón.</translation>
    </message>
    <message>
        <source>Read the cautions</source>
        <translation>Leer las precauciones</translation>
    </message>
</context>
<context>
    <name>SquadParts</name>
    <message>
        <source>Athletes</source>
        <translation>Atletas</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>This device</source>
        <translation>Este aparato</translation>
    </message>
</context>
<context>
    <name>SquadToday</name>
    <message>
        <source>Squad</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Training group</source>
        <translation>Grupo de entrenamiento</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Who lifts what</source>
        <translation>Quién levanta qué</translation>
    </message>
    <message>
        <source>Racks and rounds</source>
        <translation>Jaulas y rondas</translation>
    </message>
    <message>
        <source>One rack less</source>
        <translation>Una jaula menos</translation>
    </message>
    <message>
        <source>One rack more</source>
        <translation>Una jaula más</translation>
    </message>
    <message>
        <source>Nobody is due</source>
        <translation>A nadie le toca</translation>
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
        <translation>El primer peldaño de esta parte de la temporada.</translation>
    </message>
    <message>
        <source>%1 days on %2 come first.</source>
        <translation>Antes van %1 días en %2.</translation>
    </message>
    <message>
        <source>Not before %1, which begins on %2.</source>
        <translation>No antes de %1, que empieza el %2.</translation>
    </message>
    <message>
        <source>The rungs below it need the time that is left before the main competition.</source>
        <translation>Los peldaños de abajo necesitan el tiempo que queda hasta la competición principal.</translation>
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
        <translation>Pasos de la escalera</translation>
    </message>
</context>
<context>
    <name>StopSign</name>
    <message>
        <source>Stop the set</source>
        <translation>Parar la serie</translation>
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
        <translation>Enseñar %1</translation>
    </message>
    <message>
        <source>Connecting. Keep it near.</source>
        <translation>Conectando. Tenlo cerca.</translation>
    </message>
    <message>
        <source>Learning</source>
        <translation>Aprendiendo</translation>
    </message>
    <message>
        <source>Keep what was learned as</source>
        <translation>Guardar lo aprendido como</translation>
    </message>
    <message>
        <source>So high</source>
        <translation>Así de alto</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Salida</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>The step before again</source>
        <translation>El paso anterior otra vez</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Start over</source>
        <translation>Empezar de nuevo</translation>
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
        <translation>Toca un punto para ver su sesión.</translation>
    </message>
    <message>
        <source>The point before</source>
        <translation>El punto anterior</translation>
    </message>
    <message>
        <source>The next point</source>
        <translation>El punto siguiente</translation>
    </message>
    <message>
        <source>Close the session</source>
        <translation>Cerrar la sesión</translation>
    </message>
    <message>
        <source>The session&apos;s sets</source>
        <translation>Las series de la sesión</translation>
    </message>
</context>
<context>
    <name>TrackPage</name>
    <message>
        <source>Track</source>
        <translation>Pista</translation>
    </message>
    <message>
        <source>Sprints</source>
        <translation>Carreras</translation>
    </message>
    <message>
        <source>Jumps</source>
        <translation>Saltos</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Add a run</source>
        <translation>Añadir una carrera</translation>
    </message>
    <message>
        <source>Add jumps</source>
        <translation>Añadir saltos</translation>
    </message>
    <message>
        <source>Add work</source>
        <translation>Añadir trabajo</translation>
    </message>
    <message>
        <source>Delete %1, %2</source>
        <translation>Borrar %1, %2</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Ver anteriores</translation>
    </message>
    <message>
        <source>Import runs from a file</source>
        <translation>Importar carreras de un archivo</translation>
    </message>
    <message>
        <source>Go to Squad</source>
        <translation>Ir a Equipo</translation>
    </message>
</context>
<context>
    <name>TrackWords</name>
    <message>
        <source>blocks</source>
        <translation>tacos</translation>
    </message>
    <message>
        <source>standing start</source>
        <translation>salida de pie</translation>
    </message>
    <message>
        <source>flying</source>
        <translation>lanzada</translation>
    </message>
    <message>
        <source>falling start</source>
        <translation>salida cayendo</translation>
    </message>
    <message>
        <source>rolling start</source>
        <translation>salida en movimiento</translation>
    </message>
    <message>
        <source>hand timed</source>
        <translation>a mano</translation>
    </message>
    <message>
        <source>gates</source>
        <translation>células</translation>
    </message>
    <message>
        <source>video</source>
        <translation>vídeo</translation>
    </message>
    <message>
        <source>electronic</source>
        <translation>electrónico</translation>
    </message>
    <message>
        <source>track</source>
        <translation>pista</translation>
    </message>
    <message>
        <source>indoor</source>
        <translation>cubierta</translation>
    </message>
    <message>
        <source>grass</source>
        <translation>hierba</translation>
    </message>
    <message>
        <source>Sprints</source>
        <translation>Carreras</translation>
    </message>
    <message>
        <source>Flying sprints</source>
        <translation>Carreras lanzadas</translation>
    </message>
    <message>
        <source>Resisted sprints</source>
        <translation>Carreras con arrastre</translation>
    </message>
    <message>
        <source>Hill sprints</source>
        <translation>Cuestas</translation>
    </message>
    <message>
        <source>Easy runs</source>
        <translation>Carreras suaves</translation>
    </message>
    <message>
        <source>Drop jump</source>
        <translation>Salto en caída</translation>
    </message>
    <message>
        <source>Counter-movement jump</source>
        <translation>Salto con contramovimiento</translation>
    </message>
    <message>
        <source>Squat jump</source>
        <translation>Sin contramovimiento</translation>
    </message>
    <message>
        <source>Standing long jump</source>
        <translation>Longitud sin carrera</translation>
    </message>
    <message>
        <source>Long jump</source>
        <translation>Salto de longitud</translation>
    </message>
    <message>
        <source>Bounds</source>
        <translation>Multisaltos</translation>
    </message>
    <message>
        <source>spikes</source>
        <translation>clavos</translation>
    </message>
    <message>
        <source>flats</source>
        <translation>lisas</translation>
    </message>
    <message>
        <source>Flying %1</source>
        <translation>%1 lanzados</translation>
    </message>
    <message>
        <source>%1 from blocks</source>
        <translation>%1 desde tacos</translation>
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
        <translation>Tendencias</translation>
    </message>
    <message>
        <source>Nothing measured yet</source>
        <translation>Nada medido aún</translation>
    </message>
    <message>
        <source>Each session begins with a probe set: three repetitions with full intent at the same load. From the third session on, this page shows whether you reach peak velocity sooner.</source>
        <translation>Cada sesión empieza con una serie de control: tres repeticiones a tope con la misma carga. Desde la tercera sesión, esta página muestra si llegas antes a la velocidad máxima.</translation>
    </message>
</context>
<context>
    <name>TrendsWords</name>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>peso corporal</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Calentamiento</translation>
    </message>
    <message>
        <source>Probe set</source>
        <translation>Serie de control</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>Mantenimiento</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>hand timed</source>
        <translation>a mano</translation>
    </message>
    <message>
        <source> Note: %1</source>
        <translation> Nota: %1</translation>
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
        <translation>más rápida %1</translation>
    </message>
    <message>
        <source>loss %1</source>
        <translation>pérdida %1</translation>
    </message>
    <message>
        <source>effort %1</source>
        <translation>esfuerzo %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>contact %1</source>
        <translation>contacto %1</translation>
    </message>
    <message>
        <source>flight %1</source>
        <translation>vuelo %1</translation>
    </message>
    <message>
        <source>RSI %1</source>
        <translation>RSI %1</translation>
    </message>
    <message>
        <source>Drop jump %1.</source>
        <translation>Salto en caída %1.</translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>wind %1 m/s</source>
        <translation>viento %1 m/s</translation>
    </message>
    <message>
        <source>run-in %1</source>
        <translation>carrera previa %1</translation>
    </message>
    <message>
        <source>race</source>
        <translation>competición</translation>
    </message>
</context>
<context>
    <name>TypedSetSheet</name>
    <message>
        <source>A set without a sensor</source>
        <translation>Una serie sin sensor</translation>
    </message>
    <message>
        <source>Load and repetitions are enough. Velocity and time count only if you measured them.</source>
        <translation>Bastan carga y repeticiones. Velocidad y tiempo solo cuentan si los mediste.</translation>
    </message>
    <message>
        <source>Kind of set</source>
        <translation>Tipo de serie</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>Control</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Calentamiento</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>Mantenimiento</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Carga, %1</translation>
    </message>
    <message>
        <source>By plates</source>
        <translation>Por discos</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>Mean velocity, m/s (if measured)</source>
        <translation>Velocidad media, m/s (si se midió)</translation>
    </message>
    <message>
        <source>%1, ms (if measured)</source>
        <translation>%1, ms (si se midió)</translation>
    </message>
    <message>
        <source>Effort, 1 easy to 10 all out (tells 1RM)</source>
        <translation>Esfuerzo, de 1 fácil a 10 máximo (dice el 1RM)</translation>
    </message>
    <message>
        <source>Save the set</source>
        <translation>Guardar la serie</translation>
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
        <translation>Por discos</translation>
    </message>
</context>
<context>
    <name>WellnessSheet</name>
    <message>
        <source>How are you today?</source>
        <translation>¿Cómo estás hoy?</translation>
    </message>
    <message>
        <source>Pain, 0 none to 10 the worst</source>
        <translation>Dolor, de 0 ninguno a 10 el peor</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>¿Dónde?</translation>
    </message>
    <message>
        <source>Any of these?</source>
        <translation>¿Algo de esto?</translation>
    </message>
    <message>
        <source>Sharp pain</source>
        <translation>Dolor agudo</translation>
    </message>
    <message>
        <source>Limping</source>
        <translation>Cojera</translation>
    </message>
    <message>
        <source>New hamstring pain</source>
        <translation>Dolor nuevo en los isquiotibiales</translation>
    </message>
    <message>
        <source>No sprinting and no hinge today. See a clinician before you sprint or lift heavy again.</source>
        <translation>Hoy sin velocidad ni bisagra de cadera. Ve al médico antes de volver a correr rápido o levantar pesado.</translation>
    </message>
    <message>
        <source>Soreness, 0 none to 10 very sore</source>
        <translation>Agujetas, de 0 ninguna a 10 muchas</translation>
    </message>
    <message>
        <source>Sleep, hours</source>
        <translation>Sueño, horas</translation>
    </message>
    <message>
        <source>Body mass, %1 (optional)</source>
        <translation>Peso corporal, %1 (opcional)</translation>
    </message>
    <message>
        <source>Your word counts before every rule</source>
        <translation>Tu palabra va antes que toda regla</translation>
    </message>
    <message>
        <source>I do not want to lift today</source>
        <translation>Hoy no quiero levantar</translation>
    </message>
    <message>
        <source>Keep this</source>
        <translation>Guardar esto</translation>
    </message>
</context>
<context>
    <name>WellnessWords</name>
    <message>
        <source>somewhere else</source>
        <translation>en otro lugar</translation>
    </message>
    <message>
        <source>Say where it hurts.</source>
        <translation>Di dónde duele.</translation>
    </message>
    <message>
        <source>does not want to lift</source>
        <translation>no quiere levantar</translation>
    </message>
    <message>
        <source>slept %1 h</source>
        <translation>durmió %1 h</translation>
    </message>
    <message>
        <source>soreness %1</source>
        <translation>agujetas %1</translation>
    </message>
    <message>
        <source>no pain</source>
        <translation>sin dolor</translation>
    </message>
    <message>
        <source>pain %1</source>
        <translation>dolor %1</translation>
    </message>
    <message>
        <source>pain %1, %2</source>
        <translation>dolor %1, %2</translation>
    </message>
    <message>
        <source>sharp pain</source>
        <translation>dolor agudo</translation>
    </message>
    <message>
        <source>limping</source>
        <translation>cojera</translation>
    </message>
    <message>
        <source>new hamstring pain</source>
        <translation>dolor nuevo en los isquiotibiales</translation>
    </message>
</context>
<context>
    <name>WhySheet</name>
    <message>
        <source>Why this today?</source>
        <translation>¿Por qué esto hoy?</translation>
    </message>
</context>
<context>
    <name>WorkFormWords</name>
    <message>
        <source>That is faster than anyone has run. Check distance and time.</source>
        <translation>Nadie ha corrido tan rápido. Revisa distancia y tiempo.</translation>
    </message>
    <message>
        <source>That is slower than walking. Check distance and time.</source>
        <translation>Es más lento que andar. Revisa distancia y tiempo.</translation>
    </message>
    <message>
        <source>That day has not come yet.</source>
        <translation>Ese día aún no ha llegado.</translation>
    </message>
</context>
<context>
    <name>WorkPart</name>
    <message>
        <source>Delete %1, %2</source>
        <translation>Borrar %1, %2</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Ver anteriores</translation>
    </message>
    <message>
        <source>No work counted yet</source>
        <translation>Aún sin trabajo contado</translation>
    </message>
    <message>
        <source>Sprints without a clock, runs behind a sled, up a hill or easy: how many of how many metres. The weeks then tell how many metres were run, and how many of them fast.</source>
        <translation>Carreras sin reloj, con trineo, en cuesta o suaves: cuántas de cuántos metros. Las semanas dicen luego cuántos metros se corrieron y cuántos rápidos.</translation>
    </message>
</context>
<context>
    <name>WorkSheet</name>
    <message>
        <source>Add work</source>
        <translation>Añadir trabajo</translation>
    </message>
    <message>
        <source>Kind of work</source>
        <translation>Tipo de trabajo</translation>
    </message>
    <message>
        <source>Sprints</source>
        <translation>Carreras</translation>
    </message>
    <message>
        <source>Flying</source>
        <translation>Lanzada</translation>
    </message>
    <message>
        <source>Resisted</source>
        <translation>Arrastre</translation>
    </message>
    <message>
        <source>Hill</source>
        <translation>Cuesta</translation>
    </message>
    <message>
        <source>Easy</source>
        <translation>Suave</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Carreras</translation>
    </message>
    <message>
        <source>Zone of each, m</source>
        <translation>Zona de cada una, m</translation>
    </message>
    <message>
        <source>Metres of each</source>
        <translation>Metros de cada una</translation>
    </message>
    <message>
        <source>Load on the sled, %1 (optional)</source>
        <translation>Carga en el trineo, %1 (opcional)</translation>
    </message>
    <message>
        <source>Slope, % (optional)</source>
        <translation>Pendiente, % (opcional)</translation>
    </message>
    <message>
        <source>Effort, 1 to 10. From 9 on untimed sprints count as fast metres</source>
        <translation>Esfuerzo, de 1 a 10. Desde 9, las carreras sin reloj cuentan como metros rápidos</translation>
    </message>
    <message>
        <source>Best time of one run, s (optional)</source>
        <translation>Mejor tiempo de una carrera, s (opcional)</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>Cronometrado con</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Mano</translation>
    </message>
    <message>
        <source>Gates</source>
        <translation>Células</translation>
    </message>
    <message>
        <source>Video</source>
        <translation>Vídeo</translation>
    </message>
    <message>
        <source>Electronic</source>
        <translation>Electrónico</translation>
    </message>
    <message>
        <source>Rest between runs, minutes (optional)</source>
        <translation>Descanso entre carreras, minutos (opcional)</translation>
    </message>
    <message>
        <source>Day (year-month-day)</source>
        <translation>Día (año-mes-día)</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Surface, shoes, wind, note</source>
        <translation>Superficie, zapatillas, viento, nota</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Pista</translation>
    </message>
    <message>
        <source>Indoor</source>
        <translation>Pista cubierta</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>Hierba</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>Zapatillas</translation>
    </message>
    <message>
        <source>Spikes</source>
        <translation>Clavos</translation>
    </message>
    <message>
        <source>Flats</source>
        <translation>Lisas</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Sin decir</translation>
    </message>
    <message>
        <source>Wind, m/s, tail wind positive (optional)</source>
        <translation>Viento, m/s, a favor positivo (opcional)</translation>
    </message>
    <message>
        <source>+0,8 or -1.2</source>
        <translation>+0,8 o -1.2</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Save the work</source>
        <translation>Guardar el trabajo</translation>
    </message>
</context>
<context>
    <name>WorkWeeks</name>
    <message>
        <source>Metres by week</source>
        <translation>Metros por semana</translation>
    </message>
    <message>
        <source>Fast: at 90 % of best speed or above. A week is marked above 1.3 times the mean of the four weeks before it: a starting value of this program; the worth of such ratios is disputed.</source>
        <translation>Rápido: al 90 % de la mejor velocidad o más. Una semana se marca por encima de 1,3 veces la media de las cuatro anteriores: un valor inicial de este programa; el valor de tales cocientes se discute.</translation>
    </message>
</context>
<context>
    <name>fleetrung::ui::PoseDrawing</name>
    <message>
        <source>Main side up</source>
        <translation>Lado principal arriba</translation>
    </message>
    <message>
        <source>Main side down</source>
        <translation>Lado principal abajo</translation>
    </message>
    <message>
        <source>On a long edge</source>
        <translation>Sobre un canto largo</translation>
    </message>
    <message>
        <source>On the other long edge</source>
        <translation>Sobre el otro canto largo</translation>
    </message>
    <message>
        <source>On a short end</source>
        <translation>Sobre un extremo corto</translation>
    </message>
    <message>
        <source>On the other short end</source>
        <translation>Sobre el otro extremo corto</translation>
    </message>
    <message>
        <source>Main side up, one turn to the left</source>
        <translation>Lado principal arriba, una vuelta a la izquierda</translation>
    </message>
    <message>
        <source>On a long edge, one turn to the left</source>
        <translation>Sobre un canto largo, una vuelta a la izquierda</translation>
    </message>
    <message>
        <source>On a short end, one turn to the left</source>
        <translation>Sobre un extremo corto, una vuelta a la izquierda</translation>
    </message>
    <message>
        <source>Raised straight up</source>
        <translation>Subido en vertical</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::AppViewModel</name>
    <message>
        <source>Stored recording</source>
        <translation>Grabación guardada</translation>
    </message>
    <message>
        <source>The set is saved.</source>
        <translation>La serie está guardada.</translation>
    </message>
    <message>
        <source>Kept. The day is decided anew.</source>
        <translation>Anotado. El día se decide de nuevo.</translation>
    </message>
    <message>
        <source>The lift is lighter today.</source>
        <translation>Hoy el ejercicio es más ligero.</translation>
    </message>
    <message>
        <source>Kept: you keep the plan.</source>
        <translation>Anotado: sigues el plan.</translation>
    </message>
    <message>
        <source>The calendar is in %1</source>
        <translation>El calendario está en %1</translation>
    </message>
    <message>
        <source>The demo squad is not made.</source>
        <translation>El equipo de muestra no se ha creado.</translation>
    </message>
    <message>
        <source>A set is under way. End it first.</source>
        <translation>Hay una serie en curso. Termínala primero.</translation>
    </message>
    <message>
        <source>Playing an invented squad&apos;s seasons: %1 %</source>
        <translation>Se juegan las temporadas de un equipo inventado: %1 %</translation>
    </message>
    <message>
        <source>Demo squad: everything here is invented.</source>
        <translation>Equipo de muestra: aquí todo es inventado.</translation>
    </message>
    <message>
        <source>The set is changed.</source>
        <translation>La serie ha cambiado.</translation>
    </message>
    <message>
        <source>The set is deleted.</source>
        <translation>La serie está borrada.</translation>
    </message>
    <message>
        <source>The repetition is struck out.</source>
        <translation>La repetición está tachada.</translation>
    </message>
    <message>
        <source>The repetition counts again.</source>
        <translation>La repetición vuelve a contar.</translation>
    </message>
    <message>
        <source>The repetition is evidence again.</source>
        <translation>La repetición vuelve a ser prueba.</translation>
    </message>
    <message>
        <source>The repetition is no evidence.</source>
        <translation>La repetición no es prueba.</translation>
    </message>
    <message>
        <source>The side is changed.</source>
        <translation>El lado ha cambiado.</translation>
    </message>
    <message>
        <source>The repetition is added.</source>
        <translation>La repetición está añadida.</translation>
    </message>
    <message>
        <source>1 run is added.</source>
        <translation>1 carrera añadida.</translation>
    </message>
    <message>
        <source>1 set is added.</source>
        <translation>1 serie añadida.</translation>
    </message>
    <message>
        <source>%1 runs are added.</source>
        <translation>%1 carreras añadidas.</translation>
    </message>
    <message>
        <source>%1 sets are added.</source>
        <translation>%1 series añadidas.</translation>
    </message>
    <message>
        <source>A set was cut off, and what it was is not known.</source>
        <translation>Una serie se cortó y no se sabe qué era.</translation>
    </message>
    <message>
        <source>%1: the set was cut off too early to be read.</source>
        <translation>%1: la serie se cortó demasiado pronto para leerla.</translation>
    </message>
    <message>
        <source>1 repetition is kept</source>
        <translation>1 repetición conservada</translation>
    </message>
    <message>
        <source>%1 repetitions are kept</source>
        <translation>%1 repeticiones conservadas</translation>
    </message>
    <message>
        <source>%1: the set was cut off. %2.</source>
        <translation>%1: la serie se cortó. %2.</translation>
    </message>
    <message>
        <source>What was left of the set is dropped.</source>
        <translation>Lo que quedaba de la serie se ha descartado.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>season, athlete</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The report is being written …</source>
        <translation>Se escribe el informe …</translation>
    </message>
    <message>
        <source>The report is in %1</source>
        <translation>El informe está en %1</translation>
    </message>
    <message>
        <source>The tables are being written …</source>
        <translation>Se escriben las tablas …</translation>
    </message>
    <message>
        <source>%1 tables in %2; data_dictionary.csv explains each column</source>
        <translation>%1 tablas en %2; data_dictionary.csv explica cada columna</translation>
    </message>
    <message>
        <source>%1 is forgotten.</source>
        <translation>%1 está olvidado.</translation>
    </message>
    <message>
        <source>The sensor map is in %1</source>
        <translation>La descripción del sensor está en %1</translation>
    </message>
    <message>
        <source>%1 can be chosen now.</source>
        <translation>Ya se puede elegir %1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The run is saved.</source>
        <translation>La carrera está guardada.</translation>
    </message>
    <message>
        <source>The run is deleted.</source>
        <translation>La carrera está borrada.</translation>
    </message>
    <message>
        <source>The jump is deleted.</source>
        <translation>El salto está borrado.</translation>
    </message>
    <message>
        <source>The jump is saved.</source>
        <translation>El salto está guardado.</translation>
    </message>
    <message>
        <source>%1 jumps are saved.</source>
        <translation>%1 saltos guardados.</translation>
    </message>
    <message>
        <source>The work is saved.</source>
        <translation>El trabajo está guardado.</translation>
    </message>
    <message>
        <source>The work is deleted.</source>
        <translation>El trabajo está borrado.</translation>
    </message>
    <message>
        <source>%1 is saved.</source>
        <translation>%1: guardado.</translation>
    </message>
    <message>
        <source>%1 is in the archive, with all that was done.</source>
        <translation>%1 está en el archivo, con todo lo hecho.</translation>
    </message>
    <message>
        <source>%1 is back.</source>
        <translation>%1 ha vuelto.</translation>
    </message>
    <message>
        <source>A set is under way and stays with who began it. End it first.</source>
        <translation>Hay una serie en curso y es de quien la empezó. Termínala primero.</translation>
    </message>
    <message>
        <source>Kept: you follow this.</source>
        <translation>Anotado: sigues esto.</translation>
    </message>
    <message>
        <source>Kept: you decided otherwise.</source>
        <translation>Anotado: decidiste otra cosa.</translation>
    </message>
    <message>
        <source>The season is laid out.</source>
        <translation>La temporada está trazada.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::BenchFeedback</name>
    <message>
        <source>Stop the set</source>
        <translation>Parar la serie</translation>
    </message>
    <message>
        <source>no evidence</source>
        <translation>no es prueba</translation>
    </message>
    <message>
        <source>%1, sooner</source>
        <translation>%1, antes</translation>
    </message>
    <message>
        <source>%1, later</source>
        <translation>%1, después</translation>
    </message>
    <message>
        <source>Sensor lost</source>
        <translation>Sensor perdido</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Empezar</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::BenchViewModel</name>
    <message>
        <source>load to be found</source>
        <translation>carga por encontrar</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>peso corporal</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 ladder, rung %2 of %3</source>
        <translation>Escalera %1, peldaño %2 de %3</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>objetivo %1</translation>
    </message>
    <message>
        <source>done, %1 sets</source>
        <translation>hecho, %1 series</translation>
    </message>
    <message>
        <source>%1 of %2 sets done</source>
        <translation>%1 de %2 series hechas</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>sin empezar</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Banco</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1 repetición</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1 repeticiones</translation>
    </message>
    <message>
        <source>Drop time</source>
        <translation>Tiempo de caída</translation>
    </message>
    <message>
        <source>Contact time</source>
        <translation>Tiempo de contacto</translation>
    </message>
    <message>
        <source>Time to peak velocity</source>
        <translation>Tiempo hasta la velocidad máxima</translation>
    </message>
    <message>
        <source>ms from the quickest descent to rest</source>
        <translation>ms desde el descenso más rápido hasta parar</translation>
    </message>
    <message>
        <source>ms to peak velocity</source>
        <translation>ms hasta la velocidad máxima</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>inside the band  %1</source>
        <translation>dentro de la banda  %1</translation>
    </message>
    <message>
        <source>%1 ms sooner than the band</source>
        <translation>%1 ms antes de la banda</translation>
    </message>
    <message>
        <source>%1 ms later than the band</source>
        <translation>%1 ms después de la banda</translation>
    </message>
    <message>
        <source>two peaks: no evidence</source>
        <translation>dos picos: no es prueba</translation>
    </message>
    <message>
        <source>peak velocity</source>
        <translation>velocidad máxima</translation>
    </message>
    <message>
        <source>mean velocity</source>
        <translation>velocidad media</translation>
    </message>
    <message>
        <source>range to peak</source>
        <translation>recorrido al pico</translation>
    </message>
    <message>
        <source>range</source>
        <translation>recorrido</translation>
    </message>
    <message>
        <source>rung %1</source>
        <translation>peldaño %1</translation>
    </message>
    <message>
        <source>stop at %1</source>
        <translation>parar en %1</translation>
    </message>
    <message>
        <source>By the loss %1: a guess. The stop rests on the loss.</source>
        <translation>Por la pérdida, %1: una estimación. La parada depende de la pérdida.</translation>
    </message>
    <message>
        <source>Velocity has fallen by %1; this set ends at %2.</source>
        <translation>La velocidad ha caído un %1; esta serie termina en %2.</translation>
    </message>
    <message>
        <source>Warm-up: %1</source>
        <translation>Calentamiento: %1</translation>
    </message>
    <message>
        <source>Probe: %1, full intent</source>
        <translation>Control: %1, a tope</translation>
    </message>
    <message>
        <source>Work: %1 sets of %2</source>
        <translation>Trabajo: %1 series de %2</translation>
    </message>
    <message>
        <source>rested</source>
        <translation>descansado</translation>
    </message>
    <message>
        <source>rest %1:%2</source>
        <translation>descanso %1:%2</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>última %1</translation>
    </message>
    <message>
        <source>No sprinting today: pain forbids it.</source>
        <translation>Hoy sin velocidad: el dolor lo impide.</translation>
    </message>
    <message>
        <source>%1 at a load to be found</source>
        <translation>%1 con una carga por encontrar</translation>
    </message>
    <message>
        <source>%1 at body mass</source>
        <translation>%1 con peso corporal</translation>
    </message>
    <message>
        <source>Primer: light and fast, no probe set</source>
        <translation>Activación: ligero y rápido, sin serie de control</translation>
    </message>
    <message>
        <source>Box %1</source>
        <translation>Cajón %1</translation>
    </message>
    <message>
        <source>%1 contacts; at most %2 today</source>
        <translation>%1 contactos; hoy %2 como máximo</translation>
    </message>
    <message>
        <source>Maintenance: %1 × %2, %3</source>
        <translation>Mantenimiento: %1 × %2, %3</translation>
    </message>
    <message>
        <source>Warm-up check</source>
        <translation>Prueba del calentamiento</translation>
    </message>
    <message>
        <source>Warm-up check: not enough to compare with</source>
        <translation>Prueba del calentamiento: poco para comparar</translation>
    </message>
    <message>
        <source>Warm-up check: as usual</source>
        <translation>Prueba del calentamiento: como siempre</translation>
    </message>
    <message>
        <source>Warm-up check: slower than usual</source>
        <translation>Prueba del calentamiento: más lento que siempre</translation>
    </message>
    <message>
        <source>Warm-up check: less today</source>
        <translation>Prueba del calentamiento: hoy menos</translation>
    </message>
    <message>
        <source>Warm-up check: you keep the plan</source>
        <translation>Prueba del calentamiento: sigues el plan</translation>
    </message>
    <message>
        <source>Lift the last two warm-up loads with full intent, as warm-up sets: %1 and %2. Their velocity is then compared with your own at these loads. It can take load or sets off today, never put any on.</source>
        <translation>Levanta las dos últimas cargas de calentamiento a tope, como series de calentamiento: %1 y %2. Su velocidad se compara con la tuya en esas cargas. Puede quitar carga o series hoy, nunca añadir.</translation>
    </message>
    <message>
        <source>%1 less load</source>
        <translation>%1 menos de carga</translation>
    </message>
    <message>
        <source>one set less</source>
        <translation>una serie menos</translation>
    </message>
    <message>
        <source>%1 sets less</source>
        <translation>%1 series menos</translation>
    </message>
    <message>
        <source>%1 of the sets</source>
        <translation>%1 de las series</translation>
    </message>
    <message>
        <source>Proposed: %1. %2</source>
        <translation>Propuesta: %1. %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Say why, in a few words.</source>
        <translation>Di por qué, en pocas palabras.</translation>
    </message>
    <message>
        <source>probe set</source>
        <translation>serie de control</translation>
    </message>
    <message>
        <source>warm-up</source>
        <translation>calentamiento</translation>
    </message>
    <message>
        <source>maintenance set</source>
        <translation>serie de mantenimiento</translation>
    </message>
    <message>
        <source>set %1 of %2</source>
        <translation>serie %1 de %2</translation>
    </message>
    <message>
        <source>extra set %1</source>
        <translation>serie extra %1</translation>
    </message>
    <message>
        <source>%1 planned</source>
        <translation>%1 previstas</translation>
    </message>
    <message>
        <source>rung %1 of %2</source>
        <translation>peldaño %1 de %2</translation>
    </message>
    <message>
        <source>Load on the bar, %1</source>
        <translation>Carga en la barra, %1</translation>
    </message>
    <message>
        <source>No sensor</source>
        <translation>Sin sensor</translation>
    </message>
    <message>
        <source>%1 ready</source>
        <translation>%1 listo</translation>
    </message>
    <message>
        <source>%1 streaming</source>
        <translation>%1 envía</translation>
    </message>
    <message>
        <source>%1 lost. The set goes on when it is back.</source>
        <translation>%1 perdido. La serie sigue cuando vuelva.</translation>
    </message>
    <message>
        <source>%1 has ended</source>
        <translation>%1 ha terminado</translation>
    </message>
    <message>
        <source>%1 Hz</source>
        <translation>%1 Hz</translation>
    </message>
    <message>
        <source>Not by the bar sensor</source>
        <translation>No con el sensor de la barra</translation>
    </message>
    <message>
        <source>Start the set</source>
        <translation>Empezar la serie</translation>
    </message>
    <message>
        <source>Enter the load first</source>
        <translation>Escribe antes la carga</translation>
    </message>
    <message>
        <source>Replay the last recording</source>
        <translation>Ver la última grabación</translation>
    </message>
    <message>
        <source>No sensor to start</source>
        <translation>Sin sensor para empezar</translation>
    </message>
    <message>
        <source>Jumps go by contact and flight</source>
        <translation>Los saltos van por contacto y vuelo</translation>
    </message>
    <message>
        <source>No sensor on the bar</source>
        <translation>Sin sensor en la barra</translation>
    </message>
    <message>
        <source>The sensor was lost</source>
        <translation>Se perdió el sensor</translation>
    </message>
    <message>
        <source>Waiting for the first repetition</source>
        <translation>Esperando la primera repetición</translation>
    </message>
    <message>
        <source>Ready when you are</source>
        <translation>Listo cuando quieras</translation>
    </message>
    <message>
        <source>Enter contact and flight of each jump under Track, Jumps. Type the set in here when it is done.</source>
        <translation>Escribe el contacto y el vuelo de cada salto en Pista, Saltos. Escribe aquí la serie cuando acabe.</translation>
    </message>
    <message>
        <source>Type the set in, or watch the last recording of this lift again. The plan works without a sensor, too.</source>
        <translation>Escribe la serie, o mira otra vez la última grabación de este ejercicio. El plan también funciona sin sensor.</translation>
    </message>
    <message>
        <source>Type the set in when it is done: load and repetitions are enough. The plan works without a sensor, too.</source>
        <translation>Escribe la serie cuando acabe: bastan carga y repeticiones. El plan también funciona sin sensor.</translation>
    </message>
    <message>
        <source>It is looked for. Repetitions seen so far are kept.</source>
        <translation>Se está buscando. Las repeticiones vistas se conservan.</translation>
    </message>
    <message>
        <source>Stand still for a moment, then lift with full intent: the set begins by itself, and ends when the bar has rested for 15 s. Check the load first.</source>
        <translation>Quédate quieto un momento y levanta a tope: la serie empieza sola y acaba cuando la barra descansa 15 s. Comprueba antes la carga.</translation>
    </message>
    <message>
        <source>Stand still for a moment, then lift with full intent. Each repetition is announced as it ends.</source>
        <translation>Quédate quieto un momento y levanta a tope. Cada repetición se anuncia al acabar.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::CalibrationViewModel</name>
    <message>
        <source>The sides do not fit together. Start over, and lay it quite flat each time.</source>
        <translation>Los lados no encajan. Empieza de nuevo y apóyalo bien plano cada vez.</translation>
    </message>
    <message>
        <source>%1 of 6 sides</source>
        <translation>%1 de 6 lados</translation>
    </message>
    <message>
        <source>All six sides are measured.</source>
        <translation>Los seis lados están medidos.</translation>
    </message>
    <message>
        <source>Lay it down on any side, and let go.</source>
        <translation>Apóyalo sobre un lado y suéltalo.</translation>
    </message>
    <message>
        <source>Hands off: it is being measured.</source>
        <translation>Sin manos: se está midiendo.</translation>
    </message>
    <message>
        <source>Taken. Now another side.</source>
        <translation>Tomado. Ahora otro lado.</translation>
    </message>
    <message>
        <source>This side is taken. Lay it on another.</source>
        <translation>Este lado ya está. Apóyalo sobre otro.</translation>
    </message>
    <message>
        <source>It lies slanted: lay it flat.</source>
        <translation>Está inclinado: apóyalo plano.</translation>
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
        <translation>Sin juzgar</translation>
    </message>
    <message>
        <source>Not enough yet</source>
        <translation>Aún no basta</translation>
    </message>
    <message>
        <source>Not shown</source>
        <translation>No se ve</translation>
    </message>
    <message>
        <source>They moved together</source>
        <translation>Fueron juntos</translation>
    </message>
    <message>
        <source>For it to speak: begin each lift with its probe set, and time a sprint in each week, always in the same way: distance, run-in, start, timing, surface and shoes, wind within 1 m/s.</source>
        <translation>Para que diga algo: empieza cada ejercicio con su serie de control y cronometra una carrera cada semana, siempre igual: distancia, carrera previa, salida, cronometraje, superficie y zapatillas, viento dentro de 1 m/s.</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>Chance alone gives as much in %1 of 100 turned seasons; up to %2 it counts as moved together.</source>
        <translation>El azar solo da tanto en %1 de cada 100 temporadas giradas; hasta %2 cuenta como que fueron juntos.</translation>
    </message>
    <message>
        <source>Same week</source>
        <translation>Misma semana</translation>
    </message>
    <message>
        <source>1 week later</source>
        <translation>1 semana después</translation>
    </message>
    <message>
        <source>%1 weeks later</source>
        <translation>%1 semanas después</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>weeks with both; rungs: %1, needed %2</source>
        <translation>semanas con ambos; peldaños: %1, hacen falta %2</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>%1 weeks with both, %2 rungs</source>
        <translation>%1 semanas con ambos, %2 peldaños</translation>
    </message>
    <message>
        <source>, chance reaches %1</source>
        <translation>, el azar llega a %1</translation>
    </message>
    <message>
        <source>This is no proof of cause.</source>
        <translation>Esto no prueba una causa.</translation>
    </message>
    <message>
        <source>What is compared: how much quicker than that stay&apos;s own line the bar reached peak velocity, in the weeks of each stay on a rung; and how much better than the season&apos;s own line the sprints in the same conditions were, in the same week and one to four weeks later.

Why no plain correlation is shown: time to peak velocity falls because the plan shortens the range, and sprint times fall because summer comes. As they are, the two always go together, whether the lifts did anything or not. So both trends are taken out first.

How it is judged: the weeks of the bar are cut into three blocks, and each is turned round on itself in all combinations. Chance is the share of these turned seasons in which the strongest of all five lags is as strong as yours.

What it cannot see: in simulated seasons with a realistic relation it spoke in 6 of 100, with a very large one in 76. Not shown does not mean not there. And that two things move together does not say that one made the other: sleep, school or weather can move both.</source>
        <translation>Qué se compara: cuánto antes que la línea propia de cada estancia llegó la barra a su velocidad máxima, en las semanas de cada estancia en un peldaño; y cuánto mejores que la línea propia de la temporada fueron las carreras en las mismas condiciones, en la misma semana y de una a cuatro semanas después.

Por qué no se muestra una correlación simple: el tiempo hasta la velocidad máxima baja porque el plan acorta el recorrido, y los tiempos de carrera bajan porque llega el verano. Tal cual, siempre van juntos, hicieran algo los ejercicios o no. Por eso se quitan antes las dos tendencias.

Cómo se juzga: las semanas de la barra se cortan en tres bloques y cada uno se gira sobre sí mismo en todas las combinaciones. El azar es la parte de esas temporadas giradas en que el desfase más fuerte de los cinco es tan fuerte como el tuyo.

Qué no puede ver: en temporadas simuladas con una relación realista habló en 6 de 100; con una muy grande, en 76. Que no se vea no quiere decir que no esté. Y que dos cosas vayan juntas no dice que una hiciera la otra: el sueño, la escuela o el tiempo pueden mover ambas.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::DoneSetsViewModel</name>
    <message>
        <source>probe set</source>
        <translation>serie de control</translation>
    </message>
    <message>
        <source>warm-up</source>
        <translation>calentamiento</translation>
    </message>
    <message>
        <source>maintenance set</source>
        <translation>serie de mantenimiento</translation>
    </message>
    <message>
        <source>work set</source>
        <translation>serie de trabajo</translation>
    </message>
    <message>
        <source>1 set done today</source>
        <translation>1 serie hecha hoy</translation>
    </message>
    <message>
        <source>%1 sets done today</source>
        <translation>%1 series hechas hoy</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1 repetición</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1 repeticiones</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>nothing measured</source>
        <translation>nada medido</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>two peaks</source>
        <translation>dos picos</translation>
    </message>
    <message>
        <source>short of its range</source>
        <translation>recorrido corto</translation>
    </message>
    <message>
        <source>struck out</source>
        <translation>tachada</translation>
    </message>
    <message>
        <source>no evidence</source>
        <translation>no es prueba</translation>
    </message>
    <message>
        <source>Repetition %1</source>
        <translation>Repetición %1</translation>
    </message>
    <message>
        <source>Measured. What you say here is kept beside the recording.</source>
        <translation>Medida. Lo que digas aquí se guarda junto a la grabación.</translation>
    </message>
    <message>
        <source>Typed in.</source>
        <translation>Escrita.</translation>
    </message>
    <message>
        <source>Drop time</source>
        <translation>Tiempo de caída</translation>
    </message>
    <message>
        <source>Time to peak velocity</source>
        <translation>Tiempo hasta la velocidad máxima</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::FindSensorsViewModel</name>
    <message>
        <source>%1 of %2 shown: the others have another name.</source>
        <translation>Se ven %1 de %2: los demás se llaman de otro modo.</translation>
    </message>
    <message>
        <source>Searching</source>
        <translation>Buscando</translation>
    </message>
    <message>
        <source>%1 found, still searching</source>
        <translation>%1 hallados, sigue la búsqueda</translation>
    </message>
    <message>
        <source>%1 found</source>
        <translation>%1 hallados</translation>
    </message>
    <message>
        <source>Fits what it sends</source>
        <translation>Encaja con lo que envía</translation>
    </message>
    <message>
        <source>May fit</source>
        <translation>Podría encajar</translation>
    </message>
    <message>
        <source>Does not fit what it offers</source>
        <translation>No encaja con lo que ofrece</translation>
    </message>
    <message>
        <source>Connecting. Keep it near, lying still.</source>
        <translation>Conectando. Tenlo cerca y quieto.</translation>
    </message>
    <message>
        <source>It sends. Finding how to read it.</source>
        <translation>Envía. Se busca cómo leerlo.</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Se lee como: %1</translation>
    </message>
    <message>
        <source>It sends nothing by itself. Choose how it is read, if you know it; shake it awake and try again, if not.</source>
        <translation>No envía nada por sí mismo. Elige cómo se lee, si lo sabes; si no, agítalo y prueba otra vez.</translation>
    </message>
    <message>
        <source>It sends, but nothing here can read it yet. Teach it: three minutes, no tools.</source>
        <translation>Envía, pero nada de aquí puede leerlo aún. Enséñalo: tres minutos, sin herramientas.</translation>
    </message>
    <message>
        <source>Give it a name, such as &quot;Bar sensor&quot;.</source>
        <translation>Ponle un nombre, como «Sensor de barra».</translation>
    </message>
    <message>
        <source>%1 letters are enough.</source>
        <translation>Bastan %1 letras.</translation>
    </message>
    <message>
        <source>Another sensor has that name.</source>
        <translation>Otro sensor tiene ese nombre.</translation>
    </message>
    <message>
        <source>Choose first how it is read.</source>
        <translation>Elige antes cómo se lee.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::ImportViewModel</name>
    <message>
        <source>Not in the squad: left out. Tap to choose.</source>
        <translation>No está en el equipo: se omite. Toca para elegir.</translation>
    </message>
    <message>
        <source>Will be added to the squad</source>
        <translation>Se añadirá al equipo</translation>
    </message>
    <message>
        <source>Rows without a name</source>
        <translation>Filas sin nombre</translation>
    </message>
    <message>
        <source>Not known: left out. Tap to choose.</source>
        <translation>Desconocido: se omite. Toca para elegir.</translation>
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
        <translation>Línea %1</translation>
    </message>
    <message>
        <source>Line %1, %2</source>
        <translation>Línea %1, %2</translation>
    </message>
    <message>
        <source>And %1 more</source>
        <translation>Y %1 más</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Signo decimal</translation>
    </message>
    <message>
        <source>Point, 1.85</source>
        <translation>Punto, 1.85</translation>
    </message>
    <message>
        <source>Comma, 1,85</source>
        <translation>Coma, 1,85</translation>
    </message>
    <message>
        <source>Days are written</source>
        <translation>Los días se escriben</translation>
    </message>
    <message>
        <source>Day, month</source>
        <translation>Día, mes</translation>
    </message>
    <message>
        <source>Month, day</source>
        <translation>Mes, día</translation>
    </message>
    <message>
        <source>Loads are in</source>
        <translation>Las cargas están en</translation>
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
        <translation>Una fila es</translation>
    </message>
    <message>
        <source>A run</source>
        <translation>Una carrera</translation>
    </message>
    <message>
        <source>A split</source>
        <translation>Un parcial</translation>
    </message>
    <message>
        <source>Times count</source>
        <translation>Los tiempos cuentan</translation>
    </message>
    <message>
        <source>From the start</source>
        <translation>Desde la salida</translation>
    </message>
    <message>
        <source>From the gate before</source>
        <translation>Desde la célula anterior</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Salida</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Tacos</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>De pie</translation>
    </message>
    <message>
        <source>Falling</source>
        <translation>Cayendo</translation>
    </message>
    <message>
        <source>Rolling</source>
        <translation>En movimiento</translation>
    </message>
    <message>
        <source>Flying</source>
        <translation>Lanzada</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>Cronometrado con</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Mano</translation>
    </message>
    <message>
        <source>Gates</source>
        <translation>Células</translation>
    </message>
    <message>
        <source>Video</source>
        <translation>Vídeo</translation>
    </message>
    <message>
        <source>Electronic</source>
        <translation>Electrónico</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Omitir</translation>
    </message>
    <message>
        <source>Add to the squad</source>
        <translation>Añadir al equipo</translation>
    </message>
    <message>
        <source>Who is this?</source>
        <translation>¿Quién es?</translation>
    </message>
    <message>
        <source>Which lift is this?</source>
        <translation>¿Qué ejercicio es?</translation>
    </message>
    <message>
        <source>Stopped. Nothing was added.</source>
        <translation>Parado. No se añadió nada.</translation>
    </message>
    <message>
        <source>There is no such day. Year-month-day, like 2026-03-30.</source>
        <translation>Ese día no existe. Año-mes-día, como 2026-03-30.</translation>
    </message>
    <message>
        <source>Read as the last file of this kind was.</source>
        <translation>Leído como el último archivo de este tipo.</translation>
    </message>
    <message>
        <source>1 is there already</source>
        <translation>1 ya está</translation>
    </message>
    <message>
        <source>%1 are there already</source>
        <translation>%1 ya están</translation>
    </message>
    <message>
        <source>1 is left out</source>
        <translation>1 se omite</translation>
    </message>
    <message>
        <source>%1 are left out</source>
        <translation>%1 se omiten</translation>
    </message>
    <message>
        <source>1 bad row</source>
        <translation>1 fila mala</translation>
    </message>
    <message>
        <source>%1 bad rows</source>
        <translation>%1 filas malas</translation>
    </message>
    <message>
        <source>Counting</source>
        <translation>Contando</translation>
    </message>
    <message>
        <source>Answer the question first</source>
        <translation>Responde antes a la pregunta</translation>
    </message>
    <message>
        <source>Nothing to add</source>
        <translation>Nada que añadir</translation>
    </message>
    <message>
        <source>Add 1 set</source>
        <translation>Añadir 1 serie</translation>
    </message>
    <message>
        <source>Add %1 sets</source>
        <translation>Añadir %1 series</translation>
    </message>
    <message>
        <source>Add 1 run</source>
        <translation>Añadir 1 carrera</translation>
    </message>
    <message>
        <source>Add %1 runs</source>
        <translation>Añadir %1 carreras</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Leyendo</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
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
        <translation>contacto %1</translation>
    </message>
    <message>
        <source>flight %1</source>
        <translation>vuelo %1</translation>
    </message>
    <message>
        <source>Type the flight time, or the height.</source>
        <translation>Escribe el tiempo de vuelo o la altura.</translation>
    </message>
    <message>
        <source>That day has not come yet.</source>
        <translation>Ese día aún no ha llegado.</translation>
    </message>
    <message>
        <source>Save these first.</source>
        <translation>Guarda antes estos.</translation>
    </message>
    <message>
        <source>Best %1, mean %2</source>
        <translation>Mejor %1, media %2</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::LadderViewModel</name>
    <message>
        <source>planned for %1</source>
        <translation>previsto para %1</translation>
    </message>
    <message>
        <source>since %1, you stand here</source>
        <translation>desde %1 estás aquí</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>%1 ladder</source>
        <translation>Escalera %1</translation>
    </message>
    <message>
        <source>week %1 of %2</source>
        <translation>semana %1 de %2</translation>
    </message>
    <message>
        <source>the main competition is over</source>
        <translation>la competición principal ya pasó</translation>
    </message>
    <message>
        <source>the main competition is today</source>
        <translation>la competición principal es hoy</translation>
    </message>
    <message>
        <source>1 day to the main competition</source>
        <translation>1 día hasta la competición principal</translation>
    </message>
    <message>
        <source>%1 days to the main competition</source>
        <translation>%1 días hasta la competición principal</translation>
    </message>
    <message>
        <source>%1 weeks to the main competition</source>
        <translation>%1 semanas hasta la competición principal</translation>
    </message>
    <message>
        <source>Step to %1 today</source>
        <translation>Hoy avanza a %1</translation>
    </message>
    <message>
        <source>Hold at %1 today</source>
        <translation>Hoy sigue en %1</translation>
    </message>
    <message>
        <source>Step back to %1 today</source>
        <translation>Hoy retrocede a %1</translation>
    </message>
    <message>
        <source>Ease %1 today</source>
        <translation>Hoy afloja %1</translation>
    </message>
    <message>
        <source>Rest from %1 today</source>
        <translation>Hoy descansa de %1</translation>
    </message>
    <message>
        <source>Next step: week %1, at the latest week %2</source>
        <translation>Próximo paso: semana %1, a más tardar semana %2</translation>
    </message>
    <message>
        <source>Next step: week %1</source>
        <translation>Próximo paso: semana %1</translation>
    </message>
    <message>
        <source>Choose what you will do.</source>
        <translation>Elige qué vas a hacer.</translation>
    </message>
    <message>
        <source>Say why, in a few words.</source>
        <translation>Di por qué, en pocas palabras.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::LiftTrendViewModel</name>
    <message>
        <source>Both sides</source>
        <translation>Ambos lados</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 on %3, the first on this rung here.</source>
        <translation>%1: %2 el %3, lo primero en este peldaño.</translation>
    </message>
    <message>
        <source>%1: %2 on %3, from %4 on %5.</source>
        <translation>%1: %2 el %3, desde %4 el %5.</translation>
    </message>
    <message>
        <source>Nothing measured on this ladder since %1.</source>
        <translation>Nada medido en esta escalera desde %1.</translation>
    </message>
    <message>
        <source>Nothing measured of this side.</source>
        <translation>Nada medido de este lado.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::LoadVelocityViewModel</name>
    <message>
        <source>%1: load and velocity</source>
        <translation>%1: carga y velocidad</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Both sides</source>
        <translation>Ambos lados</translation>
    </message>
    <message>
        <source>Estimated 1RM %1</source>
        <translation>1RM estimado %1</translation>
    </message>
    <message>
        <source>Estimated 1RM %1 (95 %: %2 to %3)</source>
        <translation>1RM estimado %1 (95 %: de %2 a %3)</translation>
    </message>
    <message>
        <source>From 1 session</source>
        <translation>De 1 sesión</translation>
    </message>
    <message>
        <source>From %1 sessions</source>
        <translation>De %1 sesiones</translation>
    </message>
    <message>
        <source>%1 of this season on this rung, the fastest repetition at each load: %2 points.</source>
        <translation>%1 de esta temporada en este peldaño, la repetición más rápida con cada carga: %2 puntos.</translation>
    </message>
    <message>
        <source>%1 No velocity at 1RM is published for this lift, so the line points to no 1RM.</source>
        <translation>%1 No hay velocidad al 1RM publicada para este ejercicio, así que la línea no señala un 1RM.</translation>
    </message>
    <message>
        <source>%1 1RM is where the line meets %2 (%3). An estimate is an estimate.</source>
        <translation>%1 El 1RM está donde la línea llega a %2 (%3). Una estimación es una estimación.</translation>
    </message>
    <message>
        <source>No line yet: %1.</source>
        <translation>Aún sin línea: %1.</translation>
    </message>
    <message>
        <source>Nothing measured on this rung yet. With a sensor at the warm-up loads: %1.</source>
        <translation>Nada medido aún en este peldaño. Con sensor en las cargas de calentamiento: %1.</translation>
    </message>
    <message>
        <source>%1, %2, %3.</source>
        <translation>%1, %2, %3.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::PlateEntry</name>
    <message>
        <source>The bar alone, %1.</source>
        <translation>La barra sola, %1.</translation>
    </message>
    <message>
        <source>Each side %1. Bar %2.</source>
        <translation>Cada lado %1. Barra %2.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::Preferences</name>
    <message>
        <source>As the device</source>
        <translation>Como el aparato</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::RunFitViewModel</name>
    <message>
        <source>competition</source>
        <translation>competición</translation>
    </message>
    <message>
        <source>test day</source>
        <translation>día de test</translation>
    </message>
    <message>
        <source>wind %1 m/s</source>
        <translation>viento %1 m/s</translation>
    </message>
    <message>
        <source>run-in %1</source>
        <translation>carrera previa %1</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>%1 m above the sea</source>
        <translation>%1 m sobre el mar</translation>
    </message>
    <message>
        <source>Ground contact near top speed %1, ± 4 ms from video</source>
        <translation>Contacto cerca de la velocidad punta %1, ± 4 ms por vídeo</translation>
    </message>
    <message>
        <source>Step length near top speed %1</source>
        <translation>Longitud de zancada cerca de la velocidad punta %1</translation>
    </message>
    <message>
        <source>Without splits a run has one time and no curve. Three to five splits, the first within 10 m and the last at 30 m or further, give top speed and acceleration.</source>
        <translation>Sin parciales una carrera tiene un tiempo y ninguna curva. De tres a cinco parciales, el primero antes de 10 m y el último a 30 m o más, dan velocidad punta y aceleración.</translation>
    </message>
    <message>
        <source>No answer was found. %1</source>
        <translation>No se encontró respuesta. %1</translation>
    </message>
    <message>
        <source>No fit. %1</source>
        <translation>Sin curva. %1</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>error not known</source>
        <translation>error desconocido</translation>
    </message>
    <message>
        <source>Top speed</source>
        <translation>Velocidad punta</translation>
    </message>
    <message>
        <source>Time constant τ: the shorter, the quicker it is reached</source>
        <translation>Constante de tiempo τ: cuanto menor, antes se alcanza</translation>
    </message>
    <message>
        <source>Acceleration at the start</source>
        <translation>Aceleración en la salida</translation>
    </message>
    <message>
        <source>%1 m/s²</source>
        <translation>%1 m/s²</translation>
    </message>
    <message>
        <source>First movement after the clock began (fitted)</source>
        <translation>Primer movimiento tras empezar el reloj (ajustado)</translation>
    </message>
    <message>
        <source>Splits lie from the fit by</source>
        <translation>Los parciales distan de la curva</translation>
    </message>
    <message>
        <source>root mean square</source>
        <translation>media cuadrática</translation>
    </message>
    <message>
        <source>Flying speed</source>
        <translation>Velocidad lanzada</translation>
    </message>
    <message>
        <source>Of the best so far</source>
        <translation>De lo mejor hasta ahora</translation>
    </message>
    <message>
        <source>this is the best</source>
        <translation>esto es lo mejor</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>Greatest force F0</source>
        <translation>Mayor fuerza F0</translation>
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
        <translation>Mayor potencia</translation>
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
        <translation>Velocidad en que acaba la fuerza, v0</translation>
    </message>
    <message>
        <source>Greatest share of force forwards</source>
        <translation>Mayor parte de fuerza hacia delante</translation>
    </message>
    <message>
        <source>from 0.3 s on</source>
        <translation>desde 0,3 s</translation>
    </message>
    <message>
        <source>Its loss with speed (DRF)</source>
        <translation>Su pérdida con la velocidad (DRF)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>for each m/s</source>
        <translation>por cada m/s</translation>
    </message>
    <message>
        <source>Force and power are not available: a flying start shows no acceleration.</source>
        <translation>Sin fuerza ni potencia: una salida lanzada no muestra aceleración.</translation>
    </message>
    <message>
        <source>Force and power are not available: %1.</source>
        <translation>Sin fuerza ni potencia: %1.</translation>
    </message>
    <message>
        <source>20 °C</source>
        <translation>20 °C</translation>
    </message>
    <message>
        <source>the height of the sea</source>
        <translation>la altura del mar</translation>
    </message>
    <message>
        <source>still air</source>
        <translation>aire en calma</translation>
    </message>
    <message>
        <source>For %1, from the fit and the drag of the air.</source>
        <translation>Para %1, según la curva y el freno del aire.</translation>
    </message>
    <message>
        <source> Not typed, and taken as: %1.</source>
        <translation> Sin escribir y supuesto: %1.</translation>
    </message>
    <message>
        <source>The clock began with the gun, the reaction of %1 s is known.</source>
        <translation>El reloj empezó con el disparo; la reacción de %1 s es conocida.</translation>
    </message>
    <message>
        <source>The clock is taken to begin with the first movement. If it began at a beam, type the way to it.</source>
        <translation>Se supone que el reloj empezó con el primer movimiento. Si empezó en una célula, escribe el camino hasta ella.</translation>
    </message>
    <message>
        <source>The clock began at a beam %1 in front of the start.</source>
        <translation>El reloj empezó en una célula %1 por delante de la salida.</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>When the clock began is not known against the first movement, so it was fitted too.</source>
        <translation>No se sabe cuándo empezó el reloj respecto al primer movimiento; también se ajustó.</translation>
    </message>
    <message>
        <source>The best top speed so far from this start.</source>
        <translation>La mejor velocidad punta hasta ahora desde esta salida.</translation>
    </message>
    <message>
        <source>The first fit of this start: later ones are compared with it.</source>
        <translation>La primera curva de esta salida: las siguientes se comparan con ella.</translation>
    </message>
    <message>
        <source>Best top speed from this start: %1 on %2.</source>
        <translation>Mejor velocidad punta desde esta salida: %1 el %2.</translation>
    </message>
    <message>
        <source>the run before</source>
        <translation>la carrera anterior</translation>
    </message>
    <message>
        <source>the median of the last %1</source>
        <translation>la mediana de las últimas %1</translation>
    </message>
    <message>
        <source>%1 m/s against %2 (%3).</source>
        <translation>%1 m/s frente a %2 (%3).</translation>
    </message>
    <message>
        <source>That is more than timing explains (%1). Days differ too: what lasts counts.</source>
        <translation>Es más de lo que explica el cronometraje (%1). Los días también varían: cuenta lo que dura.</translation>
    </message>
    <message>
        <source>Timing explains it (%1): no change is shown.</source>
        <translation>Lo explica el cronometraje (%1): no se ve cambio.</translation>
    </message>
    <message>
        <source>%1 to %2: %3 on average. At %4 s the split is %5 the curve.</source>
        <translation>%1 a %2: %3 de media. A los %4 s el parcial queda %5 la curva.</translation>
    </message>
    <message>
        <source>%1 later than</source>
        <translation>%1 después de</translation>
    </message>
    <message>
        <source>%1 sooner than</source>
        <translation>%1 antes de</translation>
    </message>
    <message>
        <source>It is left out: %1.</source>
        <translation>Se omite: %1.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SeasonViewModel</name>
    <message>
        <source>Travel</source>
        <translation>Viaje</translation>
    </message>
    <message>
        <source>Exams</source>
        <translation>Exámenes</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>Enfermedad</translation>
    </message>
    <message>
        <source>Injury</source>
        <translation>Lesión</translation>
    </message>
    <message>
        <source>priority %1</source>
        <translation>prioridad %1</translation>
    </message>
    <message>
        <source>main</source>
        <translation>principal</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>in %1 days</source>
        <translation>en %1 días</translation>
    </message>
    <message>
        <source>in %1 weeks</source>
        <translation>en %1 semanas</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 to %2 · %3</source>
        <translation>%1 a %2 · %3</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>A: volume falls over the two weeks before it, intensity stays.</source>
        <translation>A: el volumen baja las dos semanas antes; la intensidad sigue.</translation>
    </message>
    <message>
        <source>B: a little less volume over the four days before it.</source>
        <translation>B: algo menos de volumen los cuatro días antes.</translation>
    </message>
    <message>
        <source>C: trained through, with two lighter days before it.</source>
        <translation>C: se entrena sin parar, con dos días más ligeros antes.</translation>
    </message>
    <message>
        <source>Give it a name.</source>
        <translation>Ponle un nombre.</translation>
    </message>
    <message>
        <source>Nothing else in the plan moves.</source>
        <translation>No cambia nada más en el plan.</translation>
    </message>
    <message>
        <source>%1 is added.</source>
        <translation>%1: añadido.</translation>
    </message>
    <message>
        <source>%1 is changed.</source>
        <translation>%1: cambiado.</translation>
    </message>
    <message>
        <source>%1 is deleted.</source>
        <translation>%1: borrado.</translation>
    </message>
    <message>
        <source>No lifts on these days.</source>
        <translation>Sin ejercicios estos días.</translation>
    </message>
    <message>
        <source>Training goes on, with less of it.</source>
        <translation>Se sigue entrenando, con menos.</translation>
    </message>
    <message>
        <source>No lifts. Come back only when you are well; the plan steps back after a long break.</source>
        <translation>Sin ejercicios. Vuelve solo cuando estés bien; tras una pausa larga el plan retrocede.</translation>
    </message>
    <message>
        <source>Lifts that load the injured place rest. See a clinician; this is not medical advice.</source>
        <translation>Los ejercicios que cargan la zona lesionada descansan. Ve al médico; esto no es consejo médico.</translation>
    </message>
    <message>
        <source>%1 is in the plan.</source>
        <translation>%1 está en el plan.</translation>
    </message>
    <message>
        <source>%1 is taken out of the plan.</source>
        <translation>%1 está fuera del plan.</translation>
    </message>
    <message>
        <source>Type the height of a box, in %1.</source>
        <translation>Escribe la altura de un cajón, en %1.</translation>
    </message>
    <message>
        <source>This box is there already.</source>
        <translation>Ese cajón ya está.</translation>
    </message>
    <message>
        <source>The box of %1 is added.</source>
        <translation>El cajón de %1 está añadido.</translation>
    </message>
    <message>
        <source>The box of %1 is gone.</source>
        <translation>El cajón de %1 ya no está.</translation>
    </message>
    <message>
        <source>The days with lifts are changed.</source>
        <translation>Los días con ejercicios han cambiado.</translation>
    </message>
    <message>
        <source>The days with sprints are changed.</source>
        <translation>Los días con carreras han cambiado.</translation>
    </message>
    <message>
        <source>What the weight room has is changed.</source>
        <translation>Lo que tiene la sala ha cambiado.</translation>
    </message>
    <message>
        <source>The length of a session is changed.</source>
        <translation>La duración de la sesión ha cambiado.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SensorDesk</name>
    <message>
        <source>The sensor is lost. It goes on when it is back.</source>
        <translation>Se perdió el sensor. Sigue cuando vuelva.</translation>
    </message>
    <message>
        <source>It is called %1.</source>
        <translation>Se llama %1.</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Se lee como: %1</translation>
    </message>
    <message>
        <source>The six sides are saved.</source>
        <translation>Los seis lados están guardados.</translation>
    </message>
    <message>
        <source>%1 is saved. It is found by itself from now on.</source>
        <translation>%1 está guardado. Desde ahora se encuentra solo.</translation>
    </message>
    <message>
        <source>%1 is kept.</source>
        <translation>%1 se conserva.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SensorsViewModel</name>
    <message>
        <source>Choose how it is read</source>
        <translation>Elige cómo se lee</translation>
    </message>
    <message>
        <source>Ask again</source>
        <translation>Preguntar otra vez</translation>
    </message>
    <message>
        <source>Try now</source>
        <translation>Probar ahora</translation>
    </message>
    <message>
        <source>None yet. One is added in two minutes, and found by itself from then on.</source>
        <translation>Ninguno aún. Se añade en dos minutos y después se encuentra solo.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Measured. Do it again after a fall, or each season.</source>
        <translation>Medido. Repítelo tras una caída o cada temporada.</translation>
    </message>
    <message>
        <source>Not measured yet: two minutes, and speeds get truer.</source>
        <translation>Aún sin medir: dos minutos, y las velocidades son más exactas.</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Fabricante</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modelo</translation>
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
        <translation>Número de serie</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Yours</source>
        <translation>Tuya</translation>
    </message>
    <message>
        <source>Comes with the program</source>
        <translation>Viene con el programa</translation>
    </message>
    <message>
        <source>Give it a name, such as &quot;Bar sensor&quot;.</source>
        <translation>Ponle un nombre, como «Sensor de barra».</translation>
    </message>
    <message>
        <source>%1 letters are enough.</source>
        <translation>Bastan %1 letras.</translation>
    </message>
    <message>
        <source>Another sensor has that name.</source>
        <translation>Otro sensor tiene ese nombre.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SplitEntry</name>
    <message>
        <source>A distance from the start line, up to 400 m.</source>
        <translation>Una distancia desde la salida, hasta 400 m.</translation>
    </message>
    <message>
        <source>It must lie beyond the last split.</source>
        <translation>Debe estar más allá del último parcial.</translation>
    </message>
    <message>
        <source>It lies beyond the run.</source>
        <translation>Está más allá de la carrera.</translation>
    </message>
    <message>
        <source>Press the digits of the watch.</source>
        <translation>Pulsa las cifras del cronómetro.</translation>
    </message>
    <message>
        <source>It must be later than the last split.</source>
        <translation>Debe ser posterior al último parcial.</translation>
    </message>
    <message>
        <source>That is faster than 15 m/s. Check distance and time.</source>
        <translation>Es más rápido que 15 m/s. Revisa distancia y tiempo.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Counted from the start line, as the watch shows them.</source>
        <translation>Contado desde la salida, como lo muestra el cronómetro.</translation>
    </message>
    <message>
        <source>None: with five, top speed and acceleration can be seen</source>
        <translation>Ninguno: con cinco se ven velocidad punta y aceleración</translation>
    </message>
    <message>
        <source>%1 splits, the last %2</source>
        <translation>%1 parciales, el último %2</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SprintTrendViewModel</name>
    <message>
        <source>Without hand timing</source>
        <translation>Sin tiempos a mano</translation>
    </message>
    <message>
        <source>Wind ±2 m/s</source>
        <translation>Viento ±2 m/s</translation>
    </message>
    <message>
        <source>%1 (wind %2 m/s)</source>
        <translation>%1 (viento %2 m/s)</translation>
    </message>
    <message>
        <source>Best %1 on %2, latest %3 on %4.</source>
        <translation>Mejor %1 el %2, última %3 el %4.</translation>
    </message>
    <message>
        <source>%1 of %2 runs are shown.</source>
        <translation>Se ven %1 de %2 carreras.</translation>
    </message>
    <message>
        <source>%1 Outdoors a run without a wind reading is left out.</source>
        <translation>%1 Al aire libre se omite una carrera sin medida de viento.</translation>
    </message>
    <message>
        <source>No run of this test since %1.</source>
        <translation>Ninguna carrera de este test desde %1.</translation>
    </message>
    <message>
        <source>The filters leave out every run of this test.</source>
        <translation>Los filtros omiten todas las carreras de este test.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SquadDayViewModel</name>
    <message>
        <source>All</source>
        <translation>Todas</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Ronda %1</translation>
    </message>
    <message>
        <source>No rack: %1</source>
        <translation>Sin jaula: %1</translation>
    </message>
    <message>
        <source>Rack %1: %2</source>
        <translation>Jaula %1: %2</translation>
    </message>
    <message>
        <source>no lifts today</source>
        <translation>hoy sin ejercicios</translation>
    </message>
    <message>
        <source>1 athlete lifts today</source>
        <translation>1 atleta levanta hoy</translation>
    </message>
    <message>
        <source>%1 athletes lift today</source>
        <translation>%1 atletas levantan hoy</translation>
    </message>
    <message>
        <source>Nobody has lifts today. Each athlete&apos;s next session stands on Ladder.</source>
        <translation>Hoy nadie tiene ejercicios. La próxima sesión de cada uno está en Escalera.</translation>
    </message>
    <message>
        <source>The plans are being read.</source>
        <translation>Se leen los planes.</translation>
    </message>
    <message>
        <source>1 rack</source>
        <translation>1 jaula</translation>
    </message>
    <message>
        <source>%1 racks</source>
        <translation>%1 jaulas</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SquadViewModel</name>
    <message>
        <source>%1 years</source>
        <translation>%1 años</translation>
    </message>
    <message>
        <source>group %1</source>
        <translation>grupo %1</translation>
    </message>
    <message>
        <source>1 athlete</source>
        <translation>1 atleta</translation>
    </message>
    <message>
        <source>%1 athletes</source>
        <translation>%1 atletas</translation>
    </message>
    <message>
        <source>Check the year.</source>
        <translation>Revisa el año.</translation>
    </message>
    <message>
        <source>Under 18, a guardian&apos;s consent is needed first.</source>
        <translation>Menor de 18: antes hace falta el permiso de un tutor.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::StepViewModel</name>
    <message>
        <source>Step</source>
        <translation>Avanzar</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Mantener</translation>
    </message>
    <message>
        <source>Step back</source>
        <translation>Retroceder</translation>
    </message>
    <message>
        <source>Ease</source>
        <translation>Aflojar</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Descansar</translation>
    </message>
    <message>
        <source>You follow this.</source>
        <translation>Sigues esto.</translation>
    </message>
    <message>
        <source>You decided otherwise: %1. %2</source>
        <translation>Decidiste otra cosa: %1. %2</translation>
    </message>
    <message>
        <source> ± %1</source>
        <translation> ± %1</translation>
    </message>
    <message>
        <source>planned for %1, week %2</source>
        <translation>previsto para %1, semana %2</translation>
    </message>
    <message>
        <source>since %1, week %2</source>
        <translation>desde %1, semana %2</translation>
    </message>
    <message>
        <source>%1 to %2, from week %3</source>
        <translation>%1 a %2, desde la semana %3</translation>
    </message>
    <message>
        <source>Phase: %1</source>
        <translation>Fase: %1</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>First planned for %1: %2 later</source>
        <translation>Primero previsto para %1: %2 después</translation>
    </message>
    <message>
        <source>First planned for %1: %2 sooner</source>
        <translation>Primero previsto para %1: %2 antes</translation>
    </message>
    <message>
        <source>Earliest: %1</source>
        <translation>Como pronto: %1</translation>
    </message>
    <message>
        <source>At the latest: %1</source>
        <translation>Como tarde: %1</translation>
    </message>
    <message>
        <source>1 session of evidence</source>
        <translation>1 sesión con pruebas</translation>
    </message>
    <message>
        <source>%1 sessions of evidence</source>
        <translation>%1 sesiones con pruebas</translation>
    </message>
    <message>
        <source>Probe load %1</source>
        <translation>Carga de control %1</translation>
    </message>
    <message>
        <source>Probe load %1, later %2</source>
        <translation>Carga de control %1, luego %2</translation>
    </message>
    <message>
        <source>The ladder began here</source>
        <translation>Aquí empezó la escalera</translation>
    </message>
    <message>
        <source>The plan&apos;s first rung on this ladder: no evidence is needed to begin.</source>
        <translation>El primer peldaño del plan en esta escalera: para empezar no hacen falta pruebas.</translation>
    </message>
    <message>
        <source>The rungs before it come first; what it needs is known once you stand on the one before.</source>
        <translation>Antes van los peldaños anteriores; lo que necesita se sabe cuando estés en el anterior.</translation>
    </message>
    <message>
        <source>Nothing is measured on the rung before it yet. Each session&apos;s probe set counts.</source>
        <translation>Aún no hay nada medido en el peldaño anterior. Cuenta la serie de control de cada sesión.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>No number is missing.</source>
        <translation>No falta ningún número.</translation>
    </message>
    <message>
        <source>Still missing: %1</source>
        <translation>Aún falta: %1</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TeachViewModel</name>
    <message>
        <source>Acceleration</source>
        <translation>Aceleración</translation>
    </message>
    <message>
        <source>Turning</source>
        <translation>Giro</translation>
    </message>
    <message>
        <source>Counting of samples</source>
        <translation>Cuenta de muestras</translation>
    </message>
    <message>
        <source>Its own time</source>
        <translation>Su propio tiempo</translation>
    </message>
    <message>
        <source>Samples in a second</source>
        <translation>Muestras por segundo</translation>
    </message>
    <message>
        <source>Form of its messages</source>
        <translation>Forma de sus mensajes</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>seguro</translation>
    </message>
    <message>
        <source>fairly sure</source>
        <translation>bastante seguro</translation>
    </message>
    <message>
        <source>not sure</source>
        <translation>no seguro</translation>
    </message>
    <message>
        <source>Nothing came from the sensor. Shake it awake, then do this step again.</source>
        <translation>No llegó nada del sensor. Agítalo y repite este paso.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>De %1 a %2.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Give it a name, to know it by later.</source>
        <translation>Ponle un nombre para reconocerlo después.</translation>
    </message>
    <message>
        <source>%1 letters are enough.</source>
        <translation>Bastan %1 letras.</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Paso %1 de %2</translation>
    </message>
    <message>
        <source>Lay it flat, main side up.</source>
        <translation>Apóyalo plano, lado principal arriba.</translation>
    </message>
    <message>
        <source>Turn it over, main side down.</source>
        <translation>Dale la vuelta, lado principal abajo.</translation>
    </message>
    <message>
        <source>Stand it on a long edge.</source>
        <translation>Ponlo sobre un canto largo.</translation>
    </message>
    <message>
        <source>Stand it on the other long edge.</source>
        <translation>Ponlo sobre el otro canto largo.</translation>
    </message>
    <message>
        <source>Stand it on a short end.</source>
        <translation>Ponlo sobre un extremo corto.</translation>
    </message>
    <message>
        <source>Stand it on the other short end.</source>
        <translation>Ponlo sobre el otro extremo corto.</translation>
    </message>
    <message>
        <source>Main side up: turn it once to the left.</source>
        <translation>Lado principal arriba: gíralo una vez a la izquierda.</translation>
    </message>
    <message>
        <source>On a long edge: turn it once to the left.</source>
        <translation>Sobre un canto largo: gíralo una vez a la izquierda.</translation>
    </message>
    <message>
        <source>On a short end: turn it once to the left.</source>
        <translation>Sobre un extremo corto: gíralo una vez a la izquierda.</translation>
    </message>
    <message>
        <source>Raise it straight up by %1, and hold it there.</source>
        <translation>Súbelo en vertical %1 y sujétalo ahí.</translation>
    </message>
    <message>
        <source>Back down, then raise it by %1 once more.</source>
        <translation>Bájalo y súbelo %1 otra vez.</translation>
    </message>
    <message>
        <source>The main side has the button or the lamp. It has neither? Pick a side and stay with it.</source>
        <translation>El lado principal tiene el botón o la luz. ¿No tiene? Elige un lado y no cambies.</translation>
    </message>
    <message>
        <source>Lean it on something if it will not stand. Then hands off.</source>
        <translation>Apóyalo en algo si no se sostiene. Luego, sin manos.</translation>
    </message>
    <message>
        <source>From the floor to the top of a box or bench. Start and end still.</source>
        <translation>Del suelo a lo alto de un cajón o banco. Empieza y acaba quieto.</translation>
    </message>
    <message>
        <source>All the way round on the table, as the arrow shows. Start and end still.</source>
        <translation>Una vuelta entera sobre la mesa, como muestra la flecha. Empieza y acaba quieto.</translation>
    </message>
    <message>
        <source>How high will you raise it? (%1)</source>
        <translation>¿A qué altura lo subirás? (%1)</translation>
    </message>
    <message>
        <source>Keep it still</source>
        <translation>Déjalo quieto</translation>
    </message>
    <message>
        <source>Hold it still</source>
        <translation>Sujétalo quieto</translation>
    </message>
    <message>
        <source>Hold it still again</source>
        <translation>Sujétalo quieto otra vez</translation>
    </message>
    <message>
        <source>Now raise it</source>
        <translation>Ahora súbelo</translation>
    </message>
    <message>
        <source>Now turn it once</source>
        <translation>Ahora gíralo una vez</translation>
    </message>
    <message>
        <source>It cannot be read yet</source>
        <translation>Aún no se puede leer</translation>
    </message>
    <message>
        <source>Learned</source>
        <translation>Aprendido</translation>
    </message>
    <message>
        <source>Learned, but check it</source>
        <translation>Aprendido, pero compruébalo</translation>
    </message>
    <message>
        <source>%1 % sure of the whole. Lift once and look whether the height is right.</source>
        <translation>%1 % de seguridad en total. Levanta una vez y mira si la altura es buena.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TrackViewModel</name>
    <message>
        <source>All</source>
        <translation>Todas</translation>
    </message>
    <message>
        <source>box %1</source>
        <translation>cajón %1</translation>
    </message>
    <message>
        <source>test day</source>
        <translation>día de test</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>number and kind of jumps</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>contact %1</source>
        <translation>contacto %1</translation>
    </message>
    <message>
        <source>flight %1</source>
        <translation>vuelo %1</translation>
    </message>
    <message>
        <source>height %1</source>
        <translation>altura %1</translation>
    </message>
    <message>
        <source>jumps: %1</source>
        <translation>saltos: %1</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>última %1</translation>
    </message>
    <message>
        <source>Box %1</source>
        <translation>Cajón %1</translation>
    </message>
    <message>
        <source>RSI %1</source>
        <translation>RSI %1</translation>
    </message>
    <message>
        <source>Nobody to time yet</source>
        <translation>Aún nadie a quien cronometrar</translation>
    </message>
    <message>
        <source>No jumps yet</source>
        <translation>Aún sin saltos</translation>
    </message>
    <message>
        <source>No runs yet</source>
        <translation>Aún sin carreras</translation>
    </message>
    <message>
        <source>Add an athlete on Squad. Runs and jumps are kept for each athlete apart.</source>
        <translation>Añade un atleta en Equipo. Carreras y saltos se guardan por atleta.</translation>
    </message>
    <message>
        <source>Type in drop jumps with contact and flight time, or a standing long jump. On the same day, under the same conditions, they tell whether strength arrives in time.</source>
        <translation>Escribe saltos en caída con contacto y vuelo, o un salto de longitud sin carrera. El mismo día y en las mismas condiciones dicen si la fuerza llega a tiempo.</translation>
    </message>
    <message>
        <source>The stopwatch says whether the plan works. Repeat the same test every three to four weeks: same zone, same run-in, same shoes, and write the wind beside it.</source>
        <translation>El cronómetro dice si el plan funciona. Repite el mismo test cada tres o cuatro semanas: misma zona, misma carrera previa, mismas zapatillas, y anota el viento.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TrackWorkViewModel</name>
    <message>
        <source>best %1</source>
        <translation>mejor %1</translation>
    </message>
    <message>
        <source>effort %1 of 10</source>
        <translation>esfuerzo %1 de 10</translation>
    </message>
    <message>
        <source>sled %1</source>
        <translation>trineo %1</translation>
    </message>
    <message>
        <source>slope %1 %</source>
        <translation>pendiente %1 %</translation>
    </message>
    <message>
        <source>rest %1 min</source>
        <translation>descanso %1 min</translation>
    </message>
    <message>
        <source>wind %1</source>
        <translation>viento %1</translation>
    </message>
    <message>
        <source>fast: about %1 m</source>
        <translation>rápidos: unos %1 m</translation>
    </message>
    <message>
        <source>fast: %1 m</source>
        <translation>rápidos: %1 m</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>runs and metres of one</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>fast: about %1 m, of them %2 m at 95 %</source>
        <translation>rápidos: unos %1 m, de ellos %2 m al 95 %</translation>
    </message>
    <message>
        <source>fast: %1 m, of them %2 m at 95 %</source>
        <translation>rápidos: %1 m, de ellos %2 m al 95 %</translation>
    </message>
    <message>
        <source>resisted %1 m</source>
        <translation>arrastre %1 m</translation>
    </message>
    <message>
        <source>hill %1 m</source>
        <translation>cuesta %1 m</translation>
    </message>
    <message>
        <source>contacts of jumps: %1</source>
        <translation>contactos de saltos: %1</translation>
    </message>
    <message>
        <source>%1 more fast metres than the mean of the four weeks before</source>
        <translation>%1 más de metros rápidos que la media de las cuatro semanas anteriores</translation>
    </message>
    <message>
        <source>%1 more metres than the mean of the four weeks before</source>
        <translation>%1 más de metros que la media de las cuatro semanas anteriores</translation>
    </message>
    <message>
        <source>This week</source>
        <translation>Esta semana</translation>
    </message>
    <message>
        <source>Week of %1</source>
        <translation>Semana del %1</translation>
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
        <translation>Esta temporada</translation>
    </message>
    <message>
        <source>Last %1 weeks</source>
        <translation>Últimas %1 semanas</translation>
    </message>
    <message>
        <source>All seasons</source>
        <translation>Todas las temporadas</translation>
    </message>
    <message>
        <source>Weeks are counted from %1.</source>
        <translation>Las semanas cuentan desde %1.</translation>
    </message>
</context>
</TS>
