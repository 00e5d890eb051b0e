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
        <source>Body mass, %1 (optional)</source>
        <translation>Peso corporal, %1 (opcional)</translation>
    </message>
    <message>
        <source>Stature, %1 (optional)</source>
        <translation>Estatura, %1 (opcional)</translation>
    </message>
    <message>
        <source>Years of regular lifting (optional)</source>
        <translation>Años de entrenamiento de fuerza regular (opcional)</translation>
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
        <translation>sprint 2</translation>
    </message>
    <message>
        <source>Under 18: has a guardian agreed?</source>
        <translation>Menor de 18: ¿ha dado permiso un tutor legal?</translation>
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
        <translation>Archivar</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Born, like %1</source>
        <translation>Nacimiento, p. ej. %1</translation>
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
        <translation>Marcas personales</translation>
    </message>
    <message>
        <source>More than 2.0 m/s of wind behind a competition makes its time wind-aided: it is no best. A time by hand is one only where there is no other.</source>
        <translation>Más de 2,0 m/s de viento a favor en competición: la marca es con viento favorable y no cuenta como mejor marca. Una marca a mano solo cuenta si no hay otra.</translation>
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
        <translation>Secciones</translation>
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
        <translation>Medianas del último día en cada cajón. Sube 10 cm mientras el contacto siga corto, ningún talón golpee el suelo y el RSI no baje. Los talones no se registran en un salto introducido a mano: obsérvalos.</translation>
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
        <translation>Menor de 18: solo con permiso de un tutor legal y visto bueno médico.</translation>
    </message>
    <message>
        <source>Heavy lifts over a short range carry more load than you are used to: safety bars set, and a spotter.</source>
        <translation>Los ejercicios pesados de recorrido corto llevan más carga de la que sueles usar: topes de seguridad puestos y un ayudante que asista.</translation>
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
        <translation>Que los recorridos cortos se transfieran mejor al sprint es la hipótesis de trabajo de este programa. Hay pruebas en ambos sentidos; decide tu cronómetro.</translation>
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
        <translation>Efecto en el plan</translation>
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
        <translation>por ejemplo: duele la rodilla, competición cambiada de fecha</translation>
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
        <translation>Este dispositivo</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Separador decimal</translation>
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
        <translation>Sonido en Banco</translation>
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
        <translation>Vibra en la mano, si el dispositivo puede</translation>
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
        <translation>Las series empiezan cuando la barra se mueve y acaban cuando lleva 15 s parada</translation>
    </message>
    <message>
        <source>Light or dark</source>
        <translation>Claro u oscuro</translation>
    </message>
    <message>
        <source>As the device</source>
        <translation>Como el dispositivo</translation>
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
        <translation>Recuperar</translation>
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
    <name>EngineWords</name>
    <message>
        <source>Squat</source>
        <translation>Sentadilla</translation>
    </message>
    <message>
        <source>Step-up</source>
        <translation>Subida al cajón</translation>
    </message>
    <message>
        <source>Clean</source>
        <translation>Cargada</translation>
    </message>
    <message>
        <source>Hinge</source>
        <translation>Bisagra de cadera</translation>
    </message>
    <message>
        <source>Pull</source>
        <translation>Tirón</translation>
    </message>
    <message>
        <source>Drop jump</source>
        <translation>Salto en caída</translation>
    </message>
    <message>
        <source>Ankle</source>
        <translation>Tobillo</translation>
    </message>
    <message>
        <source>Full squat</source>
        <translation>Sentadilla completa</translation>
    </message>
    <message>
        <source>Parallel squat</source>
        <translation>Sentadilla paralela</translation>
    </message>
    <message>
        <source>Half squat</source>
        <translation>Media sentadilla</translation>
    </message>
    <message>
        <source>Quarter squat</source>
        <translation>Cuarto de sentadilla</translation>
    </message>
    <message>
        <source>Quarter squat from pins</source>
        <translation>Cuarto de sentadilla desde los topes</translation>
    </message>
    <message>
        <source>Short drop squat</source>
        <translation>Sentadilla con caída corta</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>Completa</translation>
    </message>
    <message>
        <source>Parallel</source>
        <translation>Paralela</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Media</translation>
    </message>
    <message>
        <source>Quarter</source>
        <translation>Cuarto</translation>
    </message>
    <message>
        <source>Quarter from pins</source>
        <translation>Cuarto desde los topes</translation>
    </message>
    <message>
        <source>Short drop</source>
        <translation>Caída corta</translation>
    </message>
    <message>
        <source>Step-up, %1</source>
        <translation>Subida al cajón, %1</translation>
    </message>
    <message>
        <source>Clean from the floor, caught low</source>
        <translation>Cargada desde el suelo, recepción baja</translation>
    </message>
    <message>
        <source>Power clean from the floor</source>
        <translation>Cargada de potencia desde el suelo</translation>
    </message>
    <message>
        <source>Power clean from blocks at the knee</source>
        <translation>Cargada de potencia desde tacos, a la rodilla</translation>
    </message>
    <message>
        <source>Power clean from the hang</source>
        <translation>Cargada de potencia colgante</translation>
    </message>
    <message>
        <source>Power clean from the hang, fast drop</source>
        <translation>Cargada de potencia colgante, bajada rápida</translation>
    </message>
    <message>
        <source>Romanian deadlift to mid-shin</source>
        <translation>Peso muerto rumano hasta media espinilla</translation>
    </message>
    <message>
        <source>Romanian deadlift to the knee</source>
        <translation>Peso muerto rumano hasta la rodilla</translation>
    </message>
    <message>
        <source>Quarter hinge</source>
        <translation>Cuarto de bisagra</translation>
    </message>
    <message>
        <source>Pull from the floor</source>
        <translation>Tirón desde el suelo</translation>
    </message>
    <message>
        <source>Pull from knee blocks</source>
        <translation>Tirón desde tacos, a la rodilla</translation>
    </message>
    <message>
        <source>Pull from mid-thigh blocks</source>
        <translation>Tirón desde tacos, a medio muslo</translation>
    </message>
    <message>
        <source>High pull from mid-thigh</source>
        <translation>Tirón alto desde medio muslo</translation>
    </message>
    <message>
        <source>Drop jump, %1, entry</source>
        <translation>Salto en caída, %1, inicio</translation>
    </message>
    <message>
        <source>Drop jump, %1, on the way up</source>
        <translation>Salto en caída, %1, subiendo</translation>
    </message>
    <message>
        <source>Drop jump, %1, on the way down</source>
        <translation>Salto en caída, %1, bajando</translation>
    </message>
    <message>
        <source>Drop jump, %1, quickest contact</source>
        <translation>Salto en caída, %1, contacto más corto</translation>
    </message>
    <message>
        <source>Drop jump, %1</source>
        <translation>Salto en caída, %1</translation>
    </message>
    <message>
        <source>Calf raise through full range</source>
        <translation>Elevación de talones completa</translation>
    </message>
    <message>
        <source>Calf raise, upper half</source>
        <translation>Elevación de talones, mitad alta</translation>
    </message>
    <message>
        <source>Loaded ankle hops</source>
        <translation>Saltitos de tobillo con carga</translation>
    </message>
    <message>
        <source>general preparation</source>
        <translation>preparación general</translation>
    </message>
    <message>
        <source>special preparation</source>
        <translation>preparación especial</translation>
    </message>
    <message>
        <source>pre-competition</source>
        <translation>precompetición</translation>
    </message>
    <message>
        <source>competition</source>
        <translation>competición</translation>
    </message>
    <message>
        <source>taper</source>
        <translation>puesta a punto</translation>
    </message>
    <message>
        <source>transition</source>
        <translation>transición</translation>
    </message>
    <message>
        <source>time to peak velocity</source>
        <translation>tiempo hasta la velocidad máxima</translation>
    </message>
    <message>
        <source>time to peak</source>
        <translation>tiempo hasta el pico</translation>
    </message>
    <message>
        <source>drop time</source>
        <translation>tiempo de caída</translation>
    </message>
    <message>
        <source>contact time</source>
        <translation>tiempo de contacto</translation>
    </message>
    <message>
        <source>sessions on this rung</source>
        <translation>sesiones en este peldaño</translation>
    </message>
    <message>
        <source>days on this rung</source>
        <translation>días en este peldaño</translation>
    </message>
    <message>
        <source>days past the latest date</source>
        <translation>días tras la fecha límite</translation>
    </message>
    <message>
        <source>days until the next rung&apos;s phase</source>
        <translation>días hasta la fase del siguiente peldaño</translation>
    </message>
    <message>
        <source>days away from this ladder</source>
        <translation>días sin esta escalera</translation>
    </message>
    <message>
        <source>days since a heavy ladder stepped</source>
        <translation>días desde que avanzó una escalera pesada</translation>
    </message>
    <message>
        <source>strength against the first four sessions</source>
        <translation>fuerza frente a las cuatro primeras sesiones</translation>
    </message>
    <message>
        <source>probe velocity against entry</source>
        <translation>velocidad de control frente al inicio</translation>
    </message>
    <message>
        <source>valid repetitions</source>
        <translation>repeticiones válidas</translation>
    </message>
    <message>
        <source>reactive strength index</source>
        <translation>índice de fuerza reactiva</translation>
    </message>
    <message>
        <source>sleep</source>
        <translation>sueño</translation>
    </message>
    <message>
        <source>pain</source>
        <translation>dolor</translation>
    </message>
    <message>
        <source>%1, gain since entry</source>
        <translation>%1, mejora desde el inicio</translation>
    </message>
    <message>
        <source>%1, last two sooner than the six before</source>
        <translation>%1, dos últimas antes que las seis previas</translation>
    </message>
    <message>
        <source>%1, later than before</source>
        <translation>%1, más tarde que antes</translation>
    </message>
    <message>
        <source>slower than usual at %1</source>
        <translation>más lento de lo habitual con %1</translation>
    </message>
    <message>
        <source>days to %1</source>
        <translation>días hasta %1</translation>
    </message>
    <message>
        <source>%1 sessions</source>
        <translation>%1 sesiones</translation>
    </message>
    <message>
        <source>%1 session</source>
        <translation>%1 sesión</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1 día</translation>
    </message>
    <message>
        <source>%1 of 10</source>
        <translation>%1 de 10</translation>
    </message>
    <message>
        <source>at least %1, counted as done: strength is up, speed is not</source>
        <translation>al menos %1, se da por hecho: sube la fuerza, no la velocidad</translation>
    </message>
    <message>
        <source>at least %1 to be seen, for show</source>
        <translation>visible desde %1, informativo</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como mucho %1</translation>
    </message>
    <message>
        <source>above %1, levelled off</source>
        <translation>más de %1, estancada</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>más de %1</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>más de %1</translation>
    </message>
    <message>
        <source>%1, for show</source>
        <translation>%1, informativo</translation>
    </message>
    <message>
        <source>On %1 time to peak came down from %2 to %3, more than it wanders by itself, and velocity held: go to %4.</source>
        <translation>En %1 el tiempo hasta el pico bajó de %2 a %3, más de lo que oscila por sí solo, y la velocidad se mantuvo: pasa a %4.</translation>
    </message>
    <message>
        <source>Stay on this box: %1.</source>
        <translation>Sigue en este cajón: %1.</translation>
    </message>
    <message>
        <source>Stay on %1: %2.</source>
        <translation>Sigue en %1: %2.</translation>
    </message>
    <message>
        <source>At the latest the next step comes after %1.</source>
        <translation>A más tardar, el próximo paso llega tras el %1.</translation>
    </message>
    <message>
        <source>%1 is the last rung: it is kept to the last competition.</source>
        <translation>%1 es el último peldaño: se mantiene hasta la última competición.</translation>
    </message>
    <message>
        <source>No session on this rung yet.</source>
        <translation>Aún no hay sesión en este peldaño.</translation>
    </message>
    <message>
        <source>Fewer than three sessions with a measured %1 on this rung.</source>
        <translation>Menos de tres sesiones con %1 medido en este peldaño.</translation>
    </message>
    <message>
        <source>The time for %1 ended on %2: go to %3.</source>
        <translation>El tiempo previsto para %1 acabó el %2: pasa a %3.</translation>
    </message>
    <message>
        <source>No gain is claimed.</source>
        <translation>No se afirma ninguna mejora.</translation>
    </message>
    <message>
        <source>Contact is quick and the reactive strength index holds: go to %1.</source>
        <translation>El contacto es breve y el índice de fuerza reactiva se mantiene: pasa a %1.</translation>
    </message>
    <message>
        <source>Stay here if heels strike.</source>
        <translation>Quédate aquí si los talones golpean el suelo.</translation>
    </message>
    <message>
        <source>The last two sessions came %1 later than the six before: %2 % less load.</source>
        <translation>En las dos últimas sesiones el tiempo fue %1 más largo que en las seis previas: %2 % menos de carga.</translation>
    </message>
    <message>
        <source>A very poor night: %1 % fewer sets, no step.</source>
        <translation>Una noche muy mala: %1 % menos de series, sin avanzar.</translation>
    </message>
    <message>
        <source>You chose not to lift today.</source>
        <translation>Elegiste no levantar hoy.</translation>
    </message>
    <message>
        <source>The rung waits.</source>
        <translation>El peldaño espera.</translation>
    </message>
    <message>
        <source>See a clinician before you go on.</source>
        <translation>Ve al médico antes de seguir.</translation>
    </message>
    <message>
        <source>Pain of %1 of 10 where this lift loads: it rests today, a lift that does not load that place may stand in.</source>
        <translation>Dolor de %1 de 10 donde carga este ejercicio: hoy descansa; puede sustituirlo otro que no cargue ahí.</translation>
    </message>
    <message>
        <source>This day lies outside the season.</source>
        <translation>Este día está fuera de la temporada.</translation>
    </message>
    <message>
        <source>Transition: active rest, no primary lifts.</source>
        <translation>Transición: descanso activo, sin ejercicios principales.</translation>
    </message>
    <message>
        <source>%1 is today: no lifting.</source>
        <translation>%1 es hoy: sin ejercicios de fuerza.</translation>
    </message>
    <message>
        <source>%1 is in %2: nothing heavy.</source>
        <translation>%1 es en %2: nada pesado.</translation>
    </message>
    <message>
        <source>A light, fast primer of at most %1 repetitions at %2 or less is allowed.</source>
        <translation>Se permite una activación ligera y rápida de hasta %1 repeticiones al %2 o menos.</translation>
    </message>
    <message>
        <source>The step to %1 is ready, but another heavy ladder stepped %2: it waits.</source>
        <translation>El paso a %1 está listo, pero otra escalera pesada avanzó %2: espera.</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
    <message>
        <source>%1 days ago</source>
        <translation>hace %1 días</translation>
    </message>
    <message>
        <source>%1 more session on this rung</source>
        <translation>%1 sesión más en este peldaño</translation>
    </message>
    <message>
        <source>%1 more sessions on this rung</source>
        <translation>%1 sesiones más en este peldaño</translation>
    </message>
    <message>
        <source>%1 more day on this rung</source>
        <translation>%1 día más en este peldaño</translation>
    </message>
    <message>
        <source>%1 more days on this rung</source>
        <translation>%1 días más en este peldaño</translation>
    </message>
    <message>
        <source>%1 until the phase in which %2 begins</source>
        <translation>%1 hasta la fase en que empieza %2</translation>
    </message>
    <message>
        <source>%1 is no sooner than at entry, and only %2 are more than it wanders by itself</source>
        <translation>%1 no es menor que al inicio; solo a partir de %2 supera lo que oscila por sí mismo</translation>
    </message>
    <message>
        <source>%1 is %2 sooner than at entry, and only %3 are more than it wanders by itself</source>
        <translation>%1 es %2 menor que al inicio; solo a partir de %3 supera lo que oscila por sí mismo</translation>
    </message>
    <message>
        <source>strength is down by %1 % on this rung; a maintenance set is added</source>
        <translation>la fuerza bajó un %1 % en este peldaño; se añade una serie de mantenimiento</translation>
    </message>
    <message>
        <source>only %1 % of the last repetitions kept the full range of this rung</source>
        <translation>solo el %1 % de las últimas repeticiones mantuvo el recorrido del peldaño</translation>
    </message>
    <message>
        <source>Find a load of effort 7 of 10 for %1 repetitions; about %2 of it is the probe load for the whole stay.</source>
        <translation>Busca una carga de esfuerzo 7 de 10 para %1 repeticiones; cerca del %2 es la carga de control para toda la estancia.</translation>
    </message>
    <message>
        <source>A low day: no heavy lifts without sprints before them.</source>
        <translation>Un día suave: sin ejercicios pesados si antes no hay sprints.</translation>
    </message>
    <message>
        <source>Fleetrung is no medical advice. Work with a licensed coach or clinician; local rules and the facility&apos;s codes come first. Do not train through pain, injury or illness; in pregnancy ask a clinician first.</source>
        <translation>Fleetrung no es consejo médico. Trabaja con un entrenador o médico titulado; las normas locales y del centro van primero. No entrenes con dolor, lesión o enfermedad; en el embarazo pregunta antes a un médico.</translation>
    </message>
    <message>
        <source>A guardian must have agreed and a clinician must have cleared you. Somebody qualified watches every session. Load grows by at most 10 %, on at most three days a week that do not follow each other.</source>
        <translation>Un tutor legal debe haber dado permiso y un médico el visto bueno. Alguien cualificado vigila cada sesión. La carga crece como mucho un 10 %, en tres días no seguidos por semana como máximo.</translation>
    </message>
    <message>
        <source>Use safety bars and a spotter. Technique comes before load: stop the set when it breaks.</source>
        <translation>Usa topes de seguridad y un ayudante. La técnica va antes que la carga: para la serie cuando falle.</translation>
    </message>
    <message>
        <source>A shorter range lets more weight on your back than you can hold lower down. Set the safety bars just below the lowest point, have a spotter, and stay within the load shown.</source>
        <translation>Un recorrido corto permite cargar en la espalda más peso del que aguantas más abajo. Pon los topes justo bajo el punto más bajo, ten un ayudante y no pases de la carga indicada.</translation>
    </message>
    <message>
        <source>Keep the back as it was at the start of the pull. Stop with any pain in the back.</source>
        <translation>Mantén la espalda como al inicio del tirón. Para con cualquier dolor de espalda.</translation>
    </message>
    <message>
        <source>Land on the front of the foot on a firm, even surface. Stop when heels strike or contact grows long. No more than the contacts shown, two or three days between.</source>
        <translation>Cae sobre el antepié en suelo firme y liso. Para cuando los talones golpeen el suelo o el contacto se alargue. No más de los contactos indicados, con dos o tres días entre medias.</translation>
    </message>
    <message>
        <source>Pain is a reason to stop, not a number to beat. With strong or sharp pain, limping, or new pain in the hamstring see a clinician before you sprint or lift again.</source>
        <translation>El dolor es un motivo para parar, no un número que batir. Con dolor fuerte o agudo, cojera o dolor nuevo en los isquiotibiales ve al médico antes de volver a esprintar o levantar.</translation>
    </message>
    <message>
        <source>A 1RM estimated from repetitions or velocity is an estimate. Do not put it on the bar untested.</source>
        <translation>Un 1RM estimado por repeticiones o velocidad es una estimación. No lo pongas en la barra sin haberlo comprobado.</translation>
    </message>
    <message>
        <source>That strength built through shorter ranges carries over better to sprinting is the working premise, with evidence on both sides (for: Rhea et al. 2016, Human Movement 17(1):43-49; against: Hartmann et al. 2012, J Strength Cond Res 26(12):3243-3261).</source>
        <translation>Que la fuerza de recorridos cortos se transfiera mejor al sprint es la hipótesis de trabajo, con pruebas en ambos sentidos (a favor: Rhea et al. 2016, Human Movement 17(1):43-49; en contra: Hartmann et al. 2012, J Strength Cond Res 26(12):3243-3261).</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source>main one</source>
        <translation>principal</translation>
    </message>
    <message>
        <source>probe set</source>
        <translation>serie de control</translation>
    </message>
    <message>
        <source>target band</source>
        <translation>banda objetivo</translation>
    </message>
    <message>
        <source>a run</source>
        <translation>una carrera</translation>
    </message>
    <message>
        <source>best of the day</source>
        <translation>mejor del día</translation>
    </message>
    <message>
        <source>no evidence</source>
        <translation>no es prueba</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>curva</translation>
    </message>
    <message>
        <source>top speed</source>
        <translation>velocidad punta</translation>
    </message>
    <message>
        <source>mean speed</source>
        <translation>velocidad media</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitido</translation>
    </message>
    <message>
        <source>a split</source>
        <translation>un parcial</translation>
    </message>
    <message>
        <source>usual error</source>
        <translation>error habitual</translation>
    </message>
    <message>
        <source>your line</source>
        <translation>tu recta</translation>
    </message>
    <message>
        <source>the line</source>
        <translation>la recta</translation>
    </message>
    <message>
        <source>fastest at a load</source>
        <translation>más rápida por carga</translation>
    </message>
    <message>
        <source>fastest repetition of a day</source>
        <translation>repetición más rápida del día</translation>
    </message>
    <message>
        <source>estimated 1RM</source>
        <translation>1RM estimado</translation>
    </message>
    <message>
        <source>chance reaches</source>
        <translation>el azar llega a</translation>
    </message>
    <message>
        <source>first steps</source>
        <translation>primeros pasos</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>week %1</source>
        <translation>semana %1</translation>
    </message>
    <message>
        <source>Above the line: later than fitted.</source>
        <translation>Sobre la línea: más tarde que la curva.</translation>
    </message>
    <message>
        <source>Above zero: quicker bar, quicker sprint that many weeks later. Whiskers: 95 %, for show.</source>
        <translation>Sobre cero: barra más rápida, sprint más rápido tantas semanas después. Bigotes: 95 %, informativo.</translation>
    </message>
    <message>
        <source>Each mark is a repetition, from concentric onset. Sprint contact times are for scale, not a goal.</source>
        <translation>Cada punto es una repetición, desde el inicio de la subida. Los tiempos de contacto del sprint son una escala, no una meta.</translation>
    </message>
    <message>
        <source>Each mark is a repetition, from concentric onset.</source>
        <translation>Cada punto es una repetición, desde el inicio de la subida.</translation>
    </message>
    <message>
        <source>Lower is faster. Beside the best of a day: wind in m/s, tail wind positive.</source>
        <translation>Más abajo es más rápido. Junto al mejor del día: viento en m/s, a favor positivo.</translation>
    </message>
    <message>
        <source>Lower is faster.</source>
        <translation>Más abajo es más rápido.</translation>
    </message>
    <message>
        <source>Times of different rungs are not to be compared: a shorter range is quicker anyway.</source>
        <translation>Los tiempos de peldaños distintos no se comparan: un recorrido corto ya es más rápido.</translation>
    </message>
    <message>
        <source>No fit.</source>
        <translation>Sin curva.</translation>
    </message>
    <message>
        <source>No measured loads yet.</source>
        <translation>Aún sin cargas medidas.</translation>
    </message>
    <message>
        <source>No probe sets yet.</source>
        <translation>Aún sin series de control.</translation>
    </message>
    <message>
        <source>No runs yet.</source>
        <translation>Aún sin carreras.</translation>
    </message>
    <message>
        <source>No weeks with both yet.</source>
        <translation>Aún sin semanas con ambos.</translation>
    </message>
    <message>
        <source>at least %1 to be seen</source>
        <translation>visible desde %1</translation>
    </message>
    <message>
        <source>Refused by the athlete</source>
        <translation>Rechazado por el atleta</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Dolor</translation>
    </message>
    <message>
        <source>Pain: another lift</source>
        <translation>Dolor: otro ejercicio</translation>
    </message>
    <message>
        <source>Outside the season</source>
        <translation>Fuera de temporada</translation>
    </message>
    <message>
        <source>Transition</source>
        <translation>Transición</translation>
    </message>
    <message>
        <source>Travel, exams, illness or injury</source>
        <translation>Viaje, exámenes, enfermedad o lesión</translation>
    </message>
    <message>
        <source>A new macrocycle</source>
        <translation>Un macrociclo nuevo</translation>
    </message>
    <message>
        <source>Layoff</source>
        <translation>Parón</translation>
    </message>
    <message>
        <source>Rest before a competition</source>
        <translation>Descanso antes de competir</translation>
    </message>
    <message>
        <source>Ease: later than before</source>
        <translation>Aflojar: más tarde que antes</translation>
    </message>
    <message>
        <source>Ease: a poor night</source>
        <translation>Aflojar: mala noche</translation>
    </message>
    <message>
        <source>Step by date</source>
        <translation>Avanzar por fecha</translation>
    </message>
    <message>
        <source>Up to the next box</source>
        <translation>Al siguiente cajón</translation>
    </message>
    <message>
        <source>Step for evidence</source>
        <translation>Avanzar por pruebas</translation>
    </message>
    <message>
        <source>Step by exposure, by choice</source>
        <translation>Avanzar por exposición, a elección</translation>
    </message>
    <message>
        <source>No response</source>
        <translation>Sin respuesta</translation>
    </message>
    <message>
        <source>One heavy step in seven days</source>
        <translation>Un paso pesado en siete días</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>ejercicio</translation>
    </message>
    <message>
        <source>rung</source>
        <translation>peldaño</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>series</translation>
    </message>
    <message>
        <source>probe</source>
        <translation>control</translation>
    </message>
    <message>
        <source>set stop</source>
        <translation>parada</translation>
    </message>
    <message>
        <source>contacts</source>
        <translation>contactos</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation>mantenimiento</translation>
    </message>
    <message>
        <source>%1 is the rung that the plan puts here, in %2.</source>
        <translation>%1 es el peldaño que el plan pone aquí, en %2.</translation>
    </message>
    <message>
        <source>No load is known on this ladder yet: find one of effort 7 of 10.</source>
        <translation>Aún no se conoce carga en esta escalera: busca una de esfuerzo 7 de 10.</translation>
    </message>
    <message>
        <source>From %1, down to what the plates make.</source>
        <translation>Según: %1; redondeada a la baja a lo que dan los discos.</translation>
    </message>
    <message>
        <source>the last work load, never more on a longer range</source>
        <translation>la última carga de trabajo, nunca más en un recorrido más largo</translation>
    </message>
    <message>
        <source>the last work load</source>
        <translation>la última carga de trabajo</translation>
    </message>
    <message>
        <source>%1 x the full squat&apos;s estimated maximum</source>
        <translation>%1 veces el máximo estimado de la sentadilla completa</translation>
    </message>
    <message>
        <source>%1 x the last load on the rung before</source>
        <translation>%1 veces la última carga del peldaño anterior</translation>
    </message>
    <message>
        <source>the load of effort 7 of 10</source>
        <translation>la carga de esfuerzo 7 de 10</translation>
    </message>
    <message>
        <source>at most %1 % more under 18</source>
        <translation>como mucho %1 % más con menos de 18</translation>
    </message>
    <message>
        <source>at most %1 % more in 28 days</source>
        <translation>como mucho %1 % más en 28 días</translation>
    </message>
    <message>
        <source>at most %1 % more in 7 days</source>
        <translation>como mucho %1 % más en 7 días</translation>
    </message>
    <message>
        <source>the load of %1</source>
        <translation>la carga del %1</translation>
    </message>
    <message>
        <source>First time on this rung: stop adding at effort 7 of 10, whatever the number says.</source>
        <translation>Primera vez en este peldaño: deja de añadir peso al llegar al esfuerzo 7 de 10, diga lo que diga el número.</translation>
    </message>
    <message>
        <source>%1 less today, by the decision.</source>
        <translation>Hoy %1 menos, por la decisión.</translation>
    </message>
    <message>
        <source>%1 sets of %2 are the rung&apos;s own; %3 and the competitions near leave %4 of that.</source>
        <translation>%1 series de %2 son las del peldaño; la fase (%3) y las competiciones cercanas dejan el %4.</translation>
    </message>
    <message>
        <source>%1 sets of %2 are the rung&apos;s own.</source>
        <translation>%1 series de %2 son las del peldaño.</translation>
    </message>
    <message>
        <source>The decision takes it down to %1.</source>
        <translation>La decisión lo baja al %1.</translation>
    </message>
    <message>
        <source>Three repetitions with full intent, at the same load for the whole stay on the rung: the only thing that counts as evidence.</source>
        <translation>Tres repeticiones a tope, con la misma carga en toda la estancia en el peldaño: lo único que cuenta como prueba.</translation>
    </message>
    <message>
        <source>Three jumps with full intent: the only thing that counts as evidence.</source>
        <translation>Tres saltos a tope: lo único que cuenta como prueba.</translation>
    </message>
    <message>
        <source>In %1 a set ends when velocity has fallen by %2 from its fastest repetition.</source>
        <translation>En %1 una serie acaba cuando la velocidad cae un %2 respecto a su repetición más rápida.</translation>
    </message>
    <message>
        <source>At most %1 drop-jump contacts today: our limits for a session and for seven days.</source>
        <translation>Hoy como mucho %1 contactos de salto en caída: nuestros límites por sesión y por siete días.</translation>
    </message>
    <message>
        <source>%1 was last lifted %2 days ago: two heavy sets keep its strength.</source>
        <translation>%1: última vez hace %2 días; dos series pesadas mantienen su fuerza.</translation>
    </message>
    <message>
        <source>%1 was last lifted %2 days ago, longer than it should be: two heavy sets keep its strength.</source>
        <translation>%1: última vez hace %2 días, más de lo debido; dos series pesadas mantienen su fuerza.</translation>
    </message>
    <message>
        <source>A heavy lift stands on a sprint day, after the run, so that low days stay low.</source>
        <translation>Un ejercicio pesado va en día de sprints, después de correr, para que los días suaves sigan siéndolo.</translation>
    </message>
    <message>
        <source>A lifting day of the week.</source>
        <translation>Un día de la semana con ejercicios.</translation>
    </message>
    <message>
        <source>A light, fast ladder: it may stand on any lifting day, before the heavy ones.</source>
        <translation>Una escalera ligera y rápida: puede ir cualquier día de ejercicios, antes de las pesadas.</translation>
    </message>
    <message>
        <source>%1 ladders share %2 places a session: it is this one&apos;s turn.</source>
        <translation>%1 escaleras comparten %2 plazas por sesión: le toca a esta.</translation>
    </message>
    <message>
        <source>%1 stands in for %2, which loads the place that hurts.</source>
        <translation>%1 sustituye a %2, que carga donde duele.</translation>
    </message>
    <message>
        <source>%1 rests: the contacts of these days are done, and drop jumps need %2 days between.</source>
        <translation>%1 descansa: los contactos de estos días están hechos, y los saltos en caída piden %2 días entre medias.</translation>
    </message>
    <message>
        <source>%1 rests: %2</source>
        <translation>%1 descansa: %2</translation>
    </message>
    <message>
        <source>A primer, light and fast, by choice. It is no evidence.</source>
        <translation>Una activación, ligera y rápida, a elección. No es prueba.</translation>
    </message>
    <message>
        <source>In the weeks when the bar was quicker within a rung, %1 were better than the season&apos;s trend %2: %3; %4.</source>
        <translation>En las semanas en que la barra fue más rápida dentro de un peldaño, los %1 fueron mejores que la tendencia de la temporada, %2: %3; %4.</translation>
    </message>
    <message>
        <source>It shows that they moved together, not that one caused the other.</source>
        <translation>Muestra que se movieron juntos, no que uno causara el otro.</translation>
    </message>
    <message>
        <source>Not shown: when the bar was quicker within a rung, %1 were not better than the season&apos;s trend by more than chance (at best %2: %3; %4).</source>
        <translation>No demostrado: cuando la barra fue más rápida dentro de un peldaño, los %1 no mejoraron la tendencia de la temporada más que por azar (lo mejor %2: %3; %4).</translation>
    </message>
    <message>
        <source>The strongest relation goes the other way: when the bar was quicker, times were slower %1 (%2).</source>
        <translation>La relación más fuerte va al revés: cuando la barra fue más rápida, los tiempos fueron peores, %1 (%2).</translation>
    </message>
    <message>
        <source>That is no proof that there is no relation.</source>
        <translation>Eso no prueba que no haya relación.</translation>
    </message>
    <message>
        <source>Not shown: beside their trends the bar or the sprint times did not vary.</source>
        <translation>No demostrado: aparte de sus tendencias, la barra o los tiempos de sprint no variaron.</translation>
    </message>
    <message>
        <source>Not enough: %1, on %2, all in the same conditions.</source>
        <translation>Faltan datos: %1, en %2, todos en las mismas condiciones.</translation>
    </message>
    <message>
        <source>Not enough: %1, all in the same conditions.</source>
        <translation>Faltan datos: %1, todos en las mismas condiciones.</translation>
    </message>
    <message>
        <source>Not enough: %1, on %2 (%3).</source>
        <translation>Faltan datos: %1, en %2 (%3).</translation>
    </message>
    <message>
        <source>Not enough: %1 (%2).</source>
        <translation>Faltan datos: %1 (%2).</translation>
    </message>
    <message>
        <source>Each counts in a further week, with the bar measured in that week and the four before.</source>
        <translation>Cada uno cuenta en otra semana, con la barra medida en ella y en las cuatro anteriores.</translation>
    </message>
    <message>
        <source>rank correlation %1 over %2 and %3</source>
        <translation>correlación de rangos %1 en %2 y %3</translation>
    </message>
    <message>
        <source>sprint times (each in its own conditions)</source>
        <translation>tiempos de sprint (cada uno en sus condiciones)</translation>
    </message>
    <message>
        <source>sprint times (%1)</source>
        <translation>tiempos de sprint (%1)</translation>
    </message>
    <message>
        <source>in the same week</source>
        <translation>en la misma semana</translation>
    </message>
    <message>
        <source>chance alone gives as much in %1 of 100 such seasons</source>
        <translation>el azar por sí solo da otro tanto en %1 de cada 100 temporadas así</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>%1 weeks later</source>
        <translation>%1 semanas después</translation>
    </message>
    <message>
        <source>%1 week later</source>
        <translation>%1 semana después</translation>
    </message>
    <message>
        <source>%1 weeks</source>
        <translation>%1 semanas</translation>
    </message>
    <message>
        <source>%1 week</source>
        <translation>%1 semana</translation>
    </message>
    <message>
        <source>%1 rungs</source>
        <translation>%1 peldaños</translation>
    </message>
    <message>
        <source>%1 rung</source>
        <translation>%1 peldaño</translation>
    </message>
    <message>
        <source>%1 more tests</source>
        <translation>%1 tests más</translation>
    </message>
    <message>
        <source>%1 more test</source>
        <translation>%1 test más</translation>
    </message>
    <message>
        <source>%1 more rungs</source>
        <translation>%1 peldaños más</translation>
    </message>
    <message>
        <source>%1 more rung</source>
        <translation>%1 peldaño más</translation>
    </message>
    <message>
        <source>That shorter ranges carry over better to sprinting is the working premise of the ladders, with evidence on both sides; one athlete&apos;s season does not settle it.</source>
        <translation>Que los recorridos más cortos se transfieran mejor al sprint es la hipótesis de trabajo de las escaleras, con pruebas en ambos sentidos; la temporada de un atleta no lo decide.</translation>
    </message>
    <message>
        <source>ankle</source>
        <translation>tobillo</translation>
    </message>
    <message>
        <source>back</source>
        <translation>espalda</translation>
    </message>
    <message>
        <source>calf</source>
        <translation>pantorrilla</translation>
    </message>
    <message>
        <source>elbow</source>
        <translation>codo</translation>
    </message>
    <message>
        <source>foot</source>
        <translation>pie</translation>
    </message>
    <message>
        <source>groin</source>
        <translation>ingle</translation>
    </message>
    <message>
        <source>hamstring</source>
        <translation>isquiotibiales</translation>
    </message>
    <message>
        <source>hip</source>
        <translation>cadera</translation>
    </message>
    <message>
        <source>knee</source>
        <translation>rodilla</translation>
    </message>
    <message>
        <source>neck</source>
        <translation>cuello</translation>
    </message>
    <message>
        <source>shin</source>
        <translation>espinilla</translation>
    </message>
    <message>
        <source>shoulder</source>
        <translation>hombro</translation>
    </message>
    <message>
        <source>thigh</source>
        <translation>muslo</translation>
    </message>
    <message>
        <source>wrist</source>
        <translation>muñeca</translation>
    </message>
    <message>
        <source>milliseconds</source>
        <translation>milisegundos</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>segundos</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>metros</translation>
    </message>
    <message>
        <source>metres per second</source>
        <translation>metros por segundo</translation>
    </message>
    <message>
        <source>metres a second</source>
        <translation>metros por segundo</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>kilogramos</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>libras</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>semanas</translation>
    </message>
    <message>
        <source>&quot;%1&quot; lies before the season has begun</source>
        <translation>«%1» cae antes del comienzo de la temporada</translation>
    </message>
    <message>
        <source>&quot;%1&quot; lies after the season&apos;s end</source>
        <translation>«%1» cae después del fin de la temporada</translation>
    </message>
    <message>
        <source>a season is at most %1 days long</source>
        <translation>una temporada dura como mucho %1 días</translation>
    </message>
    <message>
        <source>a season needs at least one competition</source>
        <translation>una temporada necesita al menos una competición</translation>
    </message>
    <message>
        <source>mark at least one competition with &quot;main&quot;: true</source>
        <translation>al menos una competición debe ser la principal (&quot;main&quot;: true)</translation>
    </message>
    <message>
        <source>name at least one day of the week with lifts</source>
        <translation>elige al menos un día de la semana con ejercicios</translation>
    </message>
    <message>
        <source>choose at least one ladder</source>
        <translation>elige al menos una escalera</translation>
    </message>
    <message>
        <source>no drop jumps under %1; leave this ladder out</source>
        <translation>sin saltos en caída antes de los %1 años; deja fuera esta escalera</translation>
    </message>
    <message>
        <source>under %1 no lifting is planned: children take part from about that age, when they can follow instructions</source>
        <translation>con menos de %1 años no se planifica fuerza: los niños participan desde más o menos esa edad, cuando pueden seguir instrucciones</translation>
    </message>
    <message>
        <source>under 18 a guardian must have agreed before a plan is made</source>
        <translation>con menos de 18 años un tutor legal debe consentir antes de hacer un plan</translation>
    </message>
    <message>
        <source>under 18 lifts stand on at most three days a week; choose fewer days</source>
        <translation>con menos de 18 años, como mucho tres días de fuerza por semana; elige menos días</translation>
    </message>
    <message>
        <source>under 18 lifting days must not follow each other; leave a day between</source>
        <translation>con menos de 18 años los días de fuerza no pueden ser seguidos; deja un día entre ellos</translation>
    </message>
    <message>
        <source>the block ends before it begins</source>
        <translation>los días acaban antes de empezar</translation>
    </message>
    <message>
        <source>the block must lie inside the season</source>
        <translation>los días deben caer dentro de la temporada</translation>
    </message>
    <message>
        <source>two blocks of the same kind share days; make one of them</source>
        <translation>dos periodos del mismo tipo comparten días; haz uno solo</translation>
    </message>
    <message>
        <source>%1 minutes hold %2 primary lifts; choose fewer, or say why in lifts_per_session_override</source>
        <translation>en %1 minutos caben %2 ejercicios principales; elige menos o di por qué en lifts_per_session_override</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a longer range than the rung above it; longest range first</source>
        <translation>«%1» tiene más recorrido que el peldaño de encima; primero el más largo</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has earlier phases than the rung above it</source>
        <translation>«%1» tiene fases anteriores a las del peldaño de encima</translation>
    </message>
    <message>
        <source>the latest phase must not come before the earliest</source>
        <translation>la última fase no puede ir antes de la primera</translation>
    </message>
    <message>
        <source>there is no such rung</source>
        <translation>no existe ese peldaño</translation>
    </message>
    <message>
        <source>the ladder must join inside the season</source>
        <translation>la escalera debe incorporarse dentro de la temporada</translation>
    </message>
    <message>
        <source>cannot be written: %1</source>
        <translation>no se puede escribir: %1</translation>
    </message>
    <message>
        <source>cannot be read: %1</source>
        <translation>no se puede leer: %1</translation>
    </message>
    <message>
        <source>the report cannot be written here (%1); choose another folder</source>
        <translation>el informe no se puede escribir aquí (%1); elige otra carpeta</translation>
    </message>
    <message>
        <source>the report could not be finished (%1); free some space or choose another folder</source>
        <translation>el informe no se pudo terminar (%1); libera espacio o elige otra carpeta</translation>
    </message>
    <message>
        <source>the report could not be set; nothing was written</source>
        <translation>el informe no se pudo componer; no se escribió nada</translation>
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
    <name>ExplainSheet</name>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>How sure: %1</source>
        <translation>Fiabilidad: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
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
        <translation>Iniciar el aprendizaje</translation>
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
        <source>This cannot stay empty.</source>
        <translation>Esto no puede quedar vacío.</translation>
    </message>
    <message>
        <source>Type a day, like %1.</source>
        <translation>Escribe una fecha, como %1.</translation>
    </message>
    <message>
        <source>There is no such day. Type it like %1.</source>
        <translation>Esa fecha no existe. Escríbela como %1.</translation>
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
    <name>HelpWords</name>
    <message>
        <source>Time to peak velocity</source>
        <translation>Tiempo hasta la velocidad máxima</translation>
    </message>
    <message>
        <source>From the instant the bar begins to rise to the instant it is fastest. The season&apos;s evidence: on one rung, at one load, it should come sooner.</source>
        <translation>Desde que la barra empieza a subir hasta que va más rápida. La prueba de la temporada: en un peldaño, con una carga, debe llegar antes.</translation>
    </message>
    <message>
        <source>instant of peak velocity − instant of concentric start</source>
        <translation>instante de la velocidad máxima − inicio de la subida</translation>
    </message>
    <message>
        <source>Common practice, no source.</source>
        <translation>Práctica común, sin fuente.</translation>
    </message>
    <message>
        <source>Target band and contact times</source>
        <translation>Banda objetivo y tiempos de contacto</translation>
    </message>
    <message>
        <source>The band is where time to peak velocity usually lies on this rung. The pale bands are contact times of a sprint, for scale and no goal.</source>
        <translation>La banda es donde suele estar el tiempo en este peldaño. Las bandas pálidas son tiempos de contacto de un sprint, como escala y no como meta.</translation>
    </message>
    <message>
        <source>A starting value of this project, later your own values.</source>
        <translation>Un valor inicial de este proyecto, luego los tuyos.</translation>
    </message>
    <message>
        <source>A guide: your own line on the rung counts.</source>
        <translation>Una guía: cuenta tu propia línea en el peldaño.</translation>
    </message>
    <message>
        <source>Mean velocity</source>
        <translation>Velocidad media</translation>
    </message>
    <message>
        <source>How fast the bar rose on average, from its start to its end.</source>
        <translation>Lo rápido que subió la barra de media, de principio a fin.</translation>
    </message>
    <message>
        <source>way of the concentric phase ÷ its duration</source>
        <translation>recorrido de la subida ÷ su duración</translation>
    </message>
    <message>
        <source>About 4 mm/s rms in simulated sets; a day&apos;s value wanders by about 0.04 m/s.</source>
        <translation>Unos 4 mm/s en series simuladas; el valor de un día oscila unos 0,04 m/s.</translation>
    </message>
    <message>
        <source>Peak velocity</source>
        <translation>Velocidad máxima</translation>
    </message>
    <message>
        <source>The greatest speed of the bar on its way up. Told for lifts that throw or catch.</source>
        <translation>La mayor velocidad de la barra al subir. Para ejercicios con lanzamiento o recepción.</translation>
    </message>
    <message>
        <source>About 7 mm/s rms in simulated sets; against cameras 24 mm/s.</source>
        <translation>Unos 7 mm/s en series simuladas; frente a cámaras, 24 mm/s.</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>The vertical way of the bar. A rung of the ladder asks for its own range; a repetition well below the set&apos;s median is flagged as partial.</source>
        <translation>El camino vertical de la barra. Cada peldaño pide el suyo; una repetición muy por debajo de la mediana de la serie se marca como parcial.</translation>
    </message>
    <message>
        <source>About 3 mm in simulated sets, 15 mm against cameras.</source>
        <translation>Unos 3 mm en series simuladas, 15 mm frente a cámaras.</translation>
    </message>
    <message>
        <source>Velocity loss</source>
        <translation>Pérdida de velocidad</translation>
    </message>
    <message>
        <source>How much slower the last repetition was than the fastest of the set. The set ends at the loss that the phase allows, however many repetitions that are.</source>
        <translation>Cuánto más lenta fue la última repetición que la más rápida de la serie. La serie acaba con la pérdida que permite la fase, sean las repeticiones que sean.</translation>
    </message>
    <message>
        <source>1 − last mean velocity ÷ fastest mean velocity</source>
        <translation>1 − última ÷ mayor velocidad media</translation>
    </message>
    <message>
        <source>Common practice, no source; the limits are starting values of this project.</source>
        <translation>Práctica común, sin fuente; los límites son valores iniciales de este proyecto.</translation>
    </message>
    <message>
        <source>Two repetitions of the same effort differ by a few hundredths of a metre per second.</source>
        <translation>Dos repeticiones con la misma intención difieren en unas centésimas de metro por segundo.</translation>
    </message>
    <message>
        <source>Repetitions left</source>
        <translation>Repeticiones que quedan</translation>
    </message>
    <message>
        <source>A guess from the loss of velocity: how many more could have been done.</source>
        <translation>Una estimación por la pérdida de velocidad: cuántas más se habrían podido hacer.</translation>
    </message>
    <message>
        <source>left = done × (1 ÷ share − 1), share = loss ÷ loss at half ÷ 2</source>
        <translation>quedan = hechas × (1 ÷ parte − 1), parte = pérdida ÷ pérdida a la mitad ÷ 2</translation>
    </message>
    <message>
        <source>Starting values of this project; with five sets of your own, yours.</source>
        <translation>Valores iniciales de este proyecto; con cinco series tuyas, los tuyos.</translation>
    </message>
    <message>
        <source>Wide: the range is shown. The stop of a set never rests on it.</source>
        <translation>Baja: se muestra el margen. La parada de una serie nunca depende de esto.</translation>
    </message>
    <message>
        <source>What a decision rests on</source>
        <translation>En qué se basa una decisión</translation>
    </message>
    <message>
        <source>Step, hold, step back, ease or rest: each line is one test with its value and what is allowed. A step needs sessions and days on the rung, a time to peak that came down by more than it wanders, and velocity and strength that held.</source>
        <translation>Avanzar, mantener, retroceder, aflojar o descansar: cada línea es una comprobación con su valor y lo permitido. Para avanzar hacen falta sesiones y días en el peldaño, un tiempo que bajó más de lo que oscila, y velocidad y fuerza que se mantuvieron.</translation>
    </message>
    <message>
        <source>Rules of this project, each with its origin in the program&apos;s rules.</source>
        <translation>Reglas de este proyecto, cada una con su origen en las reglas del programa.</translation>
    </message>
    <message>
        <source>A rule is no proof. Your answer is kept with it, and counts.</source>
        <translation>Una regla no demuestra nada. Tu respuesta se guarda con ella y cuenta.</translation>
    </message>
    <message>
        <source>Typical error</source>
        <translation>Error típico</translation>
    </message>
    <message>
        <source>How far a session&apos;s value wanders by itself, from one session to the next. A change counts only beyond it.</source>
        <translation>Cuánto oscila por sí solo el valor de una sesión a otra. Un cambio solo cuenta si lo supera.</translation>
    </message>
    <message>
        <source>standard deviation of differences of successive sessions ÷ √2</source>
        <translation>desviación típica de las diferencias de sesiones seguidas ÷ √2</translation>
    </message>
    <message>
        <source>Hopkins, Measures of reliability in sports medicine and science, Sports Med 2000.</source>
        <translation>Hopkins, Measures of reliability in sports medicine and science, Sports Med 2000.</translation>
    </message>
    <message>
        <source>It begins with a prior and becomes yours with the sessions.</source>
        <translation>Empieza con un valor previo y se vuelve tuyo con las sesiones.</translation>
    </message>
    <message>
        <source>A trend over the season</source>
        <translation>Una tendencia en la temporada</translation>
    </message>
    <message>
        <source>Each point is a session&apos;s probe set. Only points on the same rung are to be compared: a shorter range is quicker anyway.</source>
        <translation>Cada punto es la serie de control de una sesión. Solo se comparan puntos del mismo peldaño: un recorrido corto ya es más rápido.</translation>
    </message>
    <message>
        <source>Lines are Theil-Sen lines (Theil 1950, Sen 1968): one bad day does not move them.</source>
        <translation>Las líneas son de Theil-Sen (Theil 1950, Sen 1968): un mal día no las mueve.</translation>
    </message>
    <message>
        <source>Look at several weeks, never at one point.</source>
        <translation>Mira varias semanas, nunca un punto.</translation>
    </message>
    <message>
        <source>Load and velocity</source>
        <translation>Carga y velocidad</translation>
    </message>
    <message>
        <source>Heavier is slower, nearly along a line that is your own on each lift and rung.</source>
        <translation>Más pesado es más lento, casi en una recta que es tuya en cada ejercicio y peldaño.</translation>
    </message>
    <message>
        <source>velocity = a + b × load, least squares and robust</source>
        <translation>velocidad = a + b × carga, mínimos cuadrados y robusta</translation>
    </message>
    <message>
        <source>Two loads far apart and a third between make it steady.</source>
        <translation>Dos cargas muy distintas y una tercera entre ellas la hacen firme.</translation>
    </message>
    <message>
        <source>Estimated 1RM</source>
        <translation>1RM estimado</translation>
    </message>
    <message>
        <source>The load at which the line meets the velocity that is published for one repetition at most. Never load it to see whether it is right.</source>
        <translation>La carga en que la recta llega a la velocidad publicada para una sola repetición. Nunca la cargues para ver si es verdad.</translation>
    </message>
    <message>
        <source>load where the line meets the velocity at 1RM; interval after Fieller</source>
        <translation>carga en que la recta llega a la velocidad al 1RM; intervalo de Fieller</translation>
    </message>
    <message>
        <source>Velocities at 1RM: published for a few lifts, named beside the number.</source>
        <translation>Velocidades al 1RM: publicadas para pocos ejercicios, nombradas junto al número.</translation>
    </message>
    <message>
        <source>Its 95 % interval is shown; people also differ in the velocity itself.</source>
        <translation>Se muestra su intervalo del 95 %; las personas también difieren en esa velocidad.</translation>
    </message>
    <message>
        <source>Warm-up check</source>
        <translation>Prueba del calentamiento</translation>
    </message>
    <message>
        <source>The velocity at two warm-up loads against your own at these loads. It can take load or sets off today, never put any on.</source>
        <translation>La velocidad en dos cargas de calentamiento frente a la tuya en ellas. Puede quitar carga o series hoy, nunca añadir.</translation>
    </message>
    <message>
        <source>A rule of this project.</source>
        <translation>Una regla de este proyecto.</translation>
    </message>
    <message>
        <source>A loss counts where both loads are slower by more than the typical error.</source>
        <translation>Una pérdida cuenta si en ambas cargas la velocidad baja más que el error típico.</translation>
    </message>
    <message>
        <source>Contact and flight</source>
        <translation>Contacto y vuelo</translation>
    </message>
    <message>
        <source>How long the foot is on the ground, and how long in the air after it. Contacts up to 250 ms count as fast.</source>
        <translation>Cuánto está el pie en el suelo y cuánto en el aire después. Hasta 250 ms el contacto es rápido.</translation>
    </message>
    <message>
        <source>Schmidtbleicher 1992, in Komi (ed), Strength and Power in Sport; from memory.</source>
        <translation>Schmidtbleicher 1992, en Komi (ed.), Strength and Power in Sport; de memoria.</translation>
    </message>
    <message>
        <source>From video of 240 pictures a second ± 4 ms.</source>
        <translation>De vídeo a 240 imágenes por segundo ± 4 ms.</translation>
    </message>
    <message>
        <source>Jump height</source>
        <translation>Altura del salto</translation>
    </message>
    <message>
        <source>How high the body rose, from how long it flew.</source>
        <translation>Cuánto subió el cuerpo, según el tiempo de vuelo.</translation>
    </message>
    <message>
        <source>height = g × flight² ÷ 8</source>
        <translation>altura = g × vuelo² ÷ 8</translation>
    </message>
    <message>
        <source>Bosco, Luhtanen, Komi 1983, Eur J Appl Physiol 50:273-282; from memory.</source>
        <translation>Bosco, Luhtanen, Komi 1983, Eur J Appl Physiol 50:273-282; de memoria.</translation>
    </message>
    <message>
        <source>It holds where the body lands as it took off: bent knees make it too high.</source>
        <translation>Vale si el cuerpo cae como despegó: con las rodillas dobladas la altura sale de más.</translation>
    </message>
    <message>
        <source>Reactive strength index, RSI</source>
        <translation>Índice de fuerza reactiva, RSI</translation>
    </message>
    <message>
        <source>Height for the time on the ground: high and quick together.</source>
        <translation>Altura por el tiempo en el suelo: alto y rápido a la vez.</translation>
    </message>
    <message>
        <source>RSI = height ÷ contact time</source>
        <translation>RSI = altura ÷ tiempo de contacto</translation>
    </message>
    <message>
        <source>Healy, Kenny, Harrison 2017, doi:10.1123/ijspp.2017-0511.</source>
        <translation>Healy, Kenny, Harrison 2017, doi:10.1123/ijspp.2017-0511.</translation>
    </message>
    <message>
        <source>A day&apos;s value wanders by about 7 %.</source>
        <translation>El valor de un día oscila un 7 %.</translation>
    </message>
    <message>
        <source>Top speed and time constant</source>
        <translation>Velocidad punta y constante de tiempo</translation>
    </message>
    <message>
        <source>The speed that the splits point to, and how soon it is reached: after one time constant 63 % of it, after three 95 %.</source>
        <translation>La velocidad a la que apuntan los parciales y lo pronto que se alcanza: tras una constante el 63 %, tras tres el 95 %.</translation>
    </message>
    <message>
        <source>v(t) = top speed × (1 − exp(−t ÷ τ)), fitted to the splits</source>
        <translation>v(t) = velocidad punta × (1 − exp(−t ÷ τ)), ajustada a los parciales</translation>
    </message>
    <message>
        <source>Furusawa, Hill, Parkinson 1927; on splits Samozino et al. 2016, doi:10.1111/sms.12490.</source>
        <translation>Furusawa, Hill, Parkinson 1927; con parciales Samozino et al. 2016, doi:10.1111/sms.12490.</translation>
    </message>
    <message>
        <source>One standard error stands beside it. The model is no exact law.</source>
        <translation>Al lado está un error estándar. El modelo no es una ley exacta.</translation>
    </message>
    <message>
        <source>Force and power of a sprint</source>
        <translation>Fuerza y potencia de un sprint</translation>
    </message>
    <message>
        <source>Horizontal force and power from the speed curve, your mass and the drag of the air.</source>
        <translation>Fuerza y potencia horizontales según la curva de velocidad, tu masa y la resistencia del aire.</translation>
    </message>
    <message>
        <source>F = m × acceleration + k × (v − wind)²; P = F × v</source>
        <translation>F = m × aceleración + k × (v − viento)²; P = F × v</translation>
    </message>
    <message>
        <source>Samozino et al. 2016, doi:10.1111/sms.12490; equations from memory.</source>
        <translation>Samozino et al. 2016, doi:10.1111/sms.12490; ecuaciones de memoria.</translation>
    </message>
    <message>
        <source>As sure as the curve; what was not typed (air, wind) is assumed and said.</source>
        <translation>Tan fiable como la curva; lo no indicado (aire, viento) se supone y se avisa.</translation>
    </message>
    <message>
        <source>Flying speed</source>
        <translation>Velocidad lanzada</translation>
    </message>
    <message>
        <source>Mean speed over a zone that is entered at full speed.</source>
        <translation>Velocidad media en una zona a la que se entra a tope.</translation>
    </message>
    <message>
        <source>zone ÷ time</source>
        <translation>zona ÷ tiempo</translation>
    </message>
    <message>
        <source>By hand a flying 20 m is 7 % off; gates and video are told beside it.</source>
        <translation>A mano, 20 m lanzados tienen un error del 7 %; el de células y vídeo se indica al lado.</translation>
    </message>
    <message>
        <source>Wind-aided</source>
        <translation>Con viento favorable</translation>
    </message>
    <message>
        <source>More than 2.0 m/s of wind from behind in a competition: the time is no best.</source>
        <translation>Más de 2,0 m/s de viento a favor en competición: el tiempo no cuenta como mejor marca.</translation>
    </message>
    <message>
        <source>World Athletics&apos; technical rules; from memory.</source>
        <translation>Reglamento técnico de World Athletics; de memoria.</translation>
    </message>
    <message>
        <source>As the reading of the wind gauge.</source>
        <translation>Como la lectura del anemómetro.</translation>
    </message>
    <message>
        <source>Fast metres</source>
        <translation>Metros rápidos</translation>
    </message>
    <message>
        <source>Metres run at 90 and at 95 % of the best speed of the last 12 months, or above.</source>
        <translation>Metros corridos al 90 y al 95 % de la mejor velocidad de los últimos 12 meses, o más.</translation>
    </message>
    <message>
        <source>Common practice, no source; the shares are this project&apos;s.</source>
        <translation>Práctica común, sin fuente; los porcentajes son de este proyecto.</translation>
    </message>
    <message>
        <source>&quot;About&quot; stands where part of it is estimated from distance and time, or from effort.</source>
        <translation>«Unos» figura si una parte se estima por distancia y tiempo o por el esfuerzo.</translation>
    </message>
    <message>
        <source>Did it work?</source>
        <translation>¿Ha funcionado?</translation>
    </message>
    <message>
        <source>Whether the bar&apos;s quickness and the sprint times moved together beyond their trends. Never called cause.</source>
        <translation>Si la rapidez de la barra y los tiempos de sprint se movieron juntos más allá de sus tendencias. Nunca se llama causa.</translation>
    </message>
    <message>
        <source>Spearman&apos;s rank correlation at five lags, against turned seasons</source>
        <translation>correlación de rangos de Spearman con cinco desfases, frente a temporadas giradas</translation>
    </message>
    <message>
        <source>Spearman 1904, Am J Psychol 15:72-101; the test is this project&apos;s.</source>
        <translation>Spearman 1904, Am J Psychol 15:72-101; el test es de este proyecto.</translation>
    </message>
    <message>
        <source>Without any relation it speaks in about 3 of 100 seasons.</source>
        <translation>Sin relación alguna habla en unas 3 de cada 100 temporadas.</translation>
    </message>
    <message>
        <source>About 2 to 6 ms rms in simulated sets. A repetition with two peaks is no evidence. It is not a stance&apos;s force peak.</source>
        <translation>Unos 2 a 6 ms (media cuadrática) en series simuladas. Una repetición con dos picos no es prueba. No es el pico de fuerza de un apoyo.</translation>
    </message>
</context>
<context>
    <name>ImportLook</name>
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
    <message>
        <source>Day of all rows, like %1</source>
        <translation>Fecha de todas las filas, p. ej. %1</translation>
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
        <translation>Cronometraje</translation>
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
        <translation>«%1» se puede leer de dos modos. ¿Cuál es el separador decimal?</translation>
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
        <translation>El separador decimal es una coma, como en %1.</translation>
    </message>
    <message>
        <source>Times are in milliseconds, by their size: %1.</source>
        <translation>Los tiempos están en milisegundos, por su tamaño: %1.</translation>
    </message>
    <message>
        <source>The times do not rise (%1): each counts from the gate before.</source>
        <translation>Los tiempos no aumentan (%1): cada uno cuenta desde la célula anterior.</translation>
    </message>
    <message>
        <source>The times rise (%1): each counts from the start.</source>
        <translation>Los tiempos aumentan (%1): cada uno cuenta desde la salida.</translation>
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
        <translation>«%1» no es posible. Revisa el número y la unidad.</translation>
    </message>
    <message>
        <source>The day is missing.</source>
        <translation>Falta el día.</translation>
    </message>
    <message>
        <source>“%1” is not a day.</source>
        <translation>«%1» no es una fecha.</translation>
    </message>
    <message>
        <source>“%1” has not come yet. Check the order of day and month.</source>
        <translation>«%1» es una fecha futura. Revisa el orden de día y mes.</translation>
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
        <translation>Los tiempos no aumentan con la distancia.</translation>
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
        <translation>El parcial del final da otro tiempo.</translation>
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
        <translation>Sin clavos</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Sin indicar</translation>
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
    <message>
        <source>Day, like %1</source>
        <translation>Fecha, p. ej. %1</translation>
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
        <translation>Exportar como calendario</translation>
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
    <name>LadderRow</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Cambiar %1</translation>
    </message>
    <message>
        <source>%1 one place up</source>
        <translation>Subir %1 un puesto</translation>
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
        <translation>Escribe lo que puedes levantar una vez. Una serie de hasta diez repeticiones introducida a mano lo da aproximadamente.</translation>
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
        <translation>Cargar un archivo</translation>
    </message>
    <message>
        <source>How it is read</source>
        <translation>Cómo se lee</translation>
    </message>
    <message>
        <source>A sensor map says what each byte means. It was chosen by itself; choose another only where the numbers look wrong.</source>
        <translation>Una descripción de sensor dice qué significa cada byte. Se eligió sola; elige otra solo si los números parecen erróneos.</translation>
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
        <translation>Exportar esta descripción como archivo</translation>
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
    <name>OwnLadderSheet</name>
    <message>
        <source>A ladder of your own</source>
        <translation>Una escalera propia</translation>
    </message>
    <message>
        <source>Change the ladder</source>
        <translation>Cambiar la escalera</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Rungs, longest range first</source>
        <translation>Peldaños, primero el más largo</translation>
    </message>
    <message>
        <source>Add a rung</source>
        <translation>Añadir un peldaño</translation>
    </message>
    <message>
        <source>What kind of lift it is</source>
        <translation>Qué tipo de ejercicio es</translation>
    </message>
    <message>
        <source>Heavy: one such ladder steps in seven days</source>
        <translation>Pesada: una así avanza cada siete días</translation>
    </message>
    <message>
        <source>Left and right apart</source>
        <translation>Izquierda y derecha por separado</translation>
    </message>
    <message>
        <source>What it loads: pain there rests this ladder</source>
        <translation>Qué carga: con dolor ahí, descansa</translation>
    </message>
    <message>
        <source>Ranges and times of your own rest on no source. The rules of loads, age and pain hold for them all the same.</source>
        <translation>Los recorridos y tiempos propios no tienen fuente. Las reglas de carga, edad y dolor valen igual.</translation>
    </message>
    <message>
        <source>Delete this ladder</source>
        <translation>Borrar esta escalera</translation>
    </message>
    <message>
        <source>Put it into the season</source>
        <translation>Ponerla en la temporada</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
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
        <translation>Primero los sprints; los ejercicios, después de correr.</translation>
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
        <translation>%1: medido</translation>
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
        <translation>medido</translation>
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
        <translation>No se encontró Bluetooth en este dispositivo. Enciéndelo en los ajustes del sistema o conecta un adaptador Bluetooth.</translation>
    </message>
    <message>
        <source>Fleetrung may not use Bluetooth. Allow it in the system&apos;s settings for Fleetrung; on older phones location must be on, too.</source>
        <translation>Fleetrung no tiene permiso para usar Bluetooth. Permítelo en los ajustes del sistema para Fleetrung; en teléfonos antiguos la ubicación también debe estar activa.</translation>
    </message>
    <message>
        <source>%1 is not in reach. Switch it on and bring it near: it then connects by itself.</source>
        <translation>%1 no está al alcance. Enciéndelo y acércalo: se conecta solo.</translation>
    </message>
    <message>
        <source>%1 is near but did not let us in. Disconnect it from any other phone, or switch it off and on.</source>
        <translation>%1 está cerca pero no aceptó la conexión. Desconéctalo de otros teléfonos, o apágalo y enciéndelo.</translation>
    </message>
    <message>
        <source>The connection to %1 was lost and is being made again. Keep the phone within a few metres of it.</source>
        <translation>Se perdió la conexión con %1 y se está rehaciendo. Deja el teléfono a pocos metros.</translation>
    </message>
    <message>
        <source>%1 answers, but it is not the kind of sensor it was saved as. Choose another description for it, or teach it anew.</source>
        <translation>%1 responde, pero no es el tipo de sensor con que se guardó. Elige otra descripción o repite el aprendizaje.</translation>
    </message>
    <message>
        <source>%1 asks for pairing, and the pairing with this device does not work. Open the system&apos;s Bluetooth settings, forget (remove) %1 there, and connect again.</source>
        <translation>%1 pide emparejarse, y el emparejamiento con este dispositivo no funciona. Abre los ajustes de Bluetooth del sistema, olvida (quita) %1 y conecta otra vez.</translation>
    </message>
    <message>
        <source>%1 is connected but sends nothing; it is being asked again. If this stays, switch it off and on.</source>
        <translation>%1 está conectado pero no envía nada; se le pregunta otra vez. Si sigue así, apágalo y enciéndelo.</translation>
    </message>
    <message>
        <source>%1 sends data that its description does not fit. Choose another description for it, or teach it anew.</source>
        <translation>%1 envía datos que no encajan con su descripción. Elige otra descripción o repite el aprendizaje.</translation>
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
    <name>ReportWords</name>
    <message>
        <source>SEASON REPORT</source>
        <translation>INFORME DE TEMPORADA</translation>
    </message>
    <message>
        <source>Season report</source>
        <translation>Informe de temporada</translation>
    </message>
    <message>
        <source>no medical advice</source>
        <translation>no es consejo médico</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>página %1</translation>
    </message>
    <message>
        <source>born %1</source>
        <translation>nacimiento %1</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>weeks of the season</source>
        <translation>semanas de la temporada</translation>
    </message>
    <message>
        <source>planned training days done</source>
        <translation>días planificados hechos</translation>
    </message>
    <message>
        <source>sessions in the log</source>
        <translation>sesiones en el registro</translation>
    </message>
    <message>
        <source>repetitions in the log</source>
        <translation>repeticiones en el registro</translation>
    </message>
    <message>
        <source>days lost</source>
        <translation>días perdidos</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Qué pasó</translation>
    </message>
    <message>
        <source>The season ran %1, from %2 to %3.</source>
        <translation>La temporada duró %1, del %2 al %3.</translation>
    </message>
    <message>
        <source>Week %1 of %2: the season began on %3 and is planned to %4.</source>
        <translation>Semana %1 de %2: la temporada empezó el %3 y está planificada hasta el %4.</translation>
    </message>
    <message>
        <source>%1 of %2 planned training days were done.</source>
        <translation>Se hicieron %1 de %2 días planificados.</translation>
    </message>
    <message>
        <source>%1 of 1 planned training day was done.</source>
        <translation>Se hizo %1 de 1 día planificado.</translation>
    </message>
    <message>
        <source>%1 days were lost: %2.</source>
        <translation>Se perdieron %1 días: %2.</translation>
    </message>
    <message>
        <source>1 day was lost: %1.</source>
        <translation>Se perdió 1 día: %1.</translation>
    </message>
    <message>
        <source>%1 with %2 and %3 are in the log, all measured by a sensor.</source>
        <translation>En el registro hay %1 con %2 y %3, todas medidas con sensor.</translation>
    </message>
    <message>
        <source>%1 with %2 and %3 are in the log, all typed in.</source>
        <translation>En el registro hay %1 con %2 y %3, todas introducidas a mano.</translation>
    </message>
    <message>
        <source>%1 with %2 and %3 are in the log, %4 of them measured by a sensor.</source>
        <translation>En el registro hay %1 con %2 y %3, %4 de ellas medidas con sensor.</translation>
    </message>
    <message>
        <source>%1: from %2 to %3 in %4; on %5 since %6.</source>
        <translation>%1: de %2 a %3 con %4; en %5 desde el %6.</translation>
    </message>
    <message>
        <source>%1: on %2 since %3.</source>
        <translation>%1: en %2 desde el %3.</translation>
    </message>
    <message>
        <source>%1 became shorter on %2.</source>
        <translation>%1: más corto en %2.</translation>
    </message>
    <message>
        <source>%1 became longer on %2.</source>
        <translation>%1: más largo en %2.</translation>
    </message>
    <message>
        <source>No change of %1 beyond its day-to-day error on %2.</source>
        <translation>Sin cambio de %1 mayor que su error diario en %2.</translation>
    </message>
    <message>
        <source>%1: %2; best %3 s on %4 (wind %5 m/s), best of the first day %6 s.</source>
        <translation>%1: %2; mejor %3 s el %4 (viento %5 m/s), mejor del primer día %6 s.</translation>
    </message>
    <message>
        <source>%1: %2; best %3 s on %4, best of the first day %5 s.</source>
        <translation>%1: %2; mejor %3 s el %4, mejor del primer día %5 s.</translation>
    </message>
    <message>
        <source>%1 decisions were taken (%2); %3 followed, %4 changed by the athlete; of those that are no hold, %5 still open.</source>
        <translation>Se tomaron %1 decisiones (%2); %3 seguidas, %4 cambiadas por el atleta; de las que no son «mantener», %5 siguen abiertas.</translation>
    </message>
    <message>
        <source>1 decision was taken (%1); %2 followed, %3 changed by the athlete; of those that are no hold, %4 still open.</source>
        <translation>Se tomó 1 decisión (%1); %2 seguidas, %3 cambiadas por el atleta; de las que no son «mantener», %4 siguen abiertas.</translation>
    </message>
    <message>
        <source>Pain of 3 or more out of 10 was noted on %1 (%2).</source>
        <translation>Se anotó dolor de 3 o más sobre 10 en %1 (%2).</translation>
    </message>
    <message>
        <source>Pain of 3 or more out of 10 was noted on %1.</source>
        <translation>Se anotó dolor de 3 o más sobre 10 en %1.</translation>
    </message>
    <message>
        <source>%1 (%2 to %3 ms, typical error %4 ms)</source>
        <translation>%1 (de %2 a %3 ms, error típico %4 ms)</translation>
    </message>
    <message>
        <source>%1, left</source>
        <translation>%1, izquierda</translation>
    </message>
    <message>
        <source>%1, right</source>
        <translation>%1, derecha</translation>
    </message>
    <message>
        <source>%1 sets</source>
        <translation>%1 series</translation>
    </message>
    <message>
        <source>1 set</source>
        <translation>1 serie</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1 repeticiones</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1 repetición</translation>
    </message>
    <message>
        <source>%1 changes of rung</source>
        <translation>%1 cambios de peldaño</translation>
    </message>
    <message>
        <source>1 change of rung</source>
        <translation>1 cambio de peldaño</translation>
    </message>
    <message>
        <source>%1 runs</source>
        <translation>%1 carreras</translation>
    </message>
    <message>
        <source>1 run</source>
        <translation>1 carrera</translation>
    </message>
    <message>
        <source>%1 hold</source>
        <translation>%1 × mantener</translation>
    </message>
    <message>
        <source>%1 step</source>
        <translation>%1 × avanzar</translation>
    </message>
    <message>
        <source>%1 step back</source>
        <translation>%1 × retroceder</translation>
    </message>
    <message>
        <source>%1 ease</source>
        <translation>%1 × aflojar</translation>
    </message>
    <message>
        <source>%1 rest</source>
        <translation>%1 × descansar</translation>
    </message>
    <message>
        <source>illness %1</source>
        <translation>enfermedad %1</translation>
    </message>
    <message>
        <source>travel %1</source>
        <translation>viaje %1</translation>
    </message>
    <message>
        <source>exams %1</source>
        <translation>exámenes %1</translation>
    </message>
    <message>
        <source>injury %1</source>
        <translation>lesión %1</translation>
    </message>
    <message>
        <source>no reason given %1</source>
        <translation>sin motivo %1</translation>
    </message>
    <message>
        <source>Competitions</source>
        <translation>Competiciones</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Competition</source>
        <translation>Competición</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Prioridad</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>main</source>
        <translation>principal</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation>por venir</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>This report is no medical advice.</source>
        <translation>Este informe no es consejo médico.</translation>
    </message>
    <message>
        <source>Work with a licensed coach or clinician; local rules and facility codes come first.</source>
        <translation>Trabaja con un entrenador o médico titulado; las normas locales y del centro van primero.</translation>
    </message>
    <message>
        <source>Pain, injury, pregnancy: clear it with a clinician before training on.</source>
        <translation>Dolor, lesión, embarazo: consúltalo con un médico antes de seguir entrenando.</translation>
    </message>
    <message>
        <source>Under 18: with a guardian&apos;s consent and clearance.</source>
        <translation>Menores de 18: con permiso de un tutor legal y visto bueno médico.</translation>
    </message>
    <message>
        <source>Heavy lifts over a short range: safety bars set and a spotter there.</source>
        <translation>Ejercicios pesados de recorrido corto: topes de seguridad puestos y un ayudante.</translation>
    </message>
    <message>
        <source>Landings are limited: keep to the contacts planned for a session.</source>
        <translation>Los aterrizajes están limitados: respeta los contactos previstos para la sesión.</translation>
    </message>
    <message>
        <source>Estimates of the one-repetition maximum are estimates.</source>
        <translation>Las estimaciones de la repetición máxima son estimaciones.</translation>
    </message>
    <message>
        <source>Target bands are starting values, for show: where a rung should lead, not a mark to be forced.</source>
        <translation>Las bandas objetivo son valores iniciales, orientativos: adónde debe llevar un peldaño, no una marca que forzar.</translation>
    </message>
    <message>
        <source>That strength over shorter ranges carries over better to sprinting is the working premise, with evidence on both sides.</source>
        <translation>Que la fuerza en recorridos más cortos se transfiera mejor al sprint es la hipótesis de trabajo, con pruebas en ambos sentidos.</translation>
    </message>
    <message>
        <source>Nothing here shows cause.</source>
        <translation>Nada aquí demuestra una causa.</translation>
    </message>
    <message>
        <source>%1 ladder</source>
        <translation>Escalera %1</translation>
    </message>
    <message>
        <source>Rung</source>
        <translation>Peldaño</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Previsto</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Series</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>peso corporal</translation>
    </message>
    <message>
        <source>%1 against the target band</source>
        <translation>%1 frente a la banda objetivo</translation>
    </message>
    <message>
        <source>Within each rung</source>
        <translation>Dentro de cada peldaño</translation>
    </message>
    <message>
        <source>Entry: mean of the first three sessions; latest: mean of the last three; a change is called one from 1.35 typical errors on.</source>
        <translation>Inicio: media de las tres primeras sesiones; último: media de las tres últimas; se llama cambio desde 1,35 errores típicos.</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sesiones</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Latest</source>
        <translation>Último</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Typical error</source>
        <translation>Error típico</translation>
    </message>
    <message>
        <source>Target band</source>
        <translation>Banda objetivo</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>quicker</source>
        <translation>más rápido</translation>
    </message>
    <message>
        <source>slower</source>
        <translation>más lento</translation>
    </message>
    <message>
        <source>no clear change</source>
        <translation>sin cambio claro</translation>
    </message>
    <message>
        <source>%1: load and velocity</source>
        <translation>%1: carga y velocidad</translation>
    </message>
    <message>
        <source>No line: %1.</source>
        <translation>Sin recta: %1.</translation>
    </message>
    <message>
        <source>The fastest repetition at each load of %1 sessions on this rung, %2 points, a robust line.</source>
        <translation>La repetición más rápida de cada carga en %1 sesiones de este peldaño, %2 puntos, recta robusta.</translation>
    </message>
    <message>
        <source>The fastest repetition at each load of 1 session on this rung, %1 points, a robust line.</source>
        <translation>La repetición más rápida de cada carga en 1 sesión de este peldaño, %1 puntos, recta robusta.</translation>
    </message>
    <message>
        <source>No velocity at 1RM is published for this lift: it points to no 1RM.</source>
        <translation>No hay velocidad al 1RM publicada para este ejercicio: no señala ningún 1RM.</translation>
    </message>
    <message>
        <source>Estimated 1RM %1 (95 %: %2 to %3), where the line meets %4 m/s (%5).</source>
        <translation>1RM estimado %1 (95 %: de %2 a %3), donde la recta llega a %4 m/s (%5).</translation>
    </message>
    <message>
        <source>Estimated 1RM %1, where the line meets %2 m/s (%3).</source>
        <translation>1RM estimado %1, donde la recta llega a %2 m/s (%3).</translation>
    </message>
    <message>
        <source>An estimate is an estimate.</source>
        <translation>Una estimación es una estimación.</translation>
    </message>
    <message>
        <source>Decisions and their reasons</source>
        <translation>Decisiones y sus motivos</translation>
    </message>
    <message>
        <source>Holds and rests in a row stand in one line, with the reason of the last; of a hold only what was not met is shown.</source>
        <translation>Los «mantener» y «descansar» seguidos ocupan una sola línea, con el motivo del último; de un «mantener» solo se muestra lo no cumplido.</translation>
    </message>
    <message>
        <source>Every decision with all its numbers stands in the tables.</source>
        <translation>Cada decisión con todos sus números está en las tablas.</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Escalera</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Decisión</translation>
    </message>
    <message>
        <source>Reason and evidence</source>
        <translation>Motivo y prueba</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>Evidence: %1.</source>
        <translation>Prueba: %1.</translation>
    </message>
    <message>
        <source>%1: met</source>
        <translation>%1: cumplido</translation>
    </message>
    <message>
        <source>%1: not met</source>
        <translation>%1: no cumplido</translation>
    </message>
    <message>
        <source>%1 followed, %2 open</source>
        <translation>%1 seguidas, %2 abiertas</translation>
    </message>
    <message>
        <source>followed</source>
        <translation>seguida</translation>
    </message>
    <message>
        <source>open</source>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiada</translation>
    </message>
    <message>
        <source>%1 (%2 times)</source>
        <translation>%1 (%2 veces)</translation>
    </message>
    <message>
        <source>Hold at %1</source>
        <translation>Mantener: %1</translation>
    </message>
    <message>
        <source>Ease at %1</source>
        <translation>Aflojar: %1</translation>
    </message>
    <message>
        <source>Rest at %1</source>
        <translation>Descansar: %1</translation>
    </message>
    <message>
        <source>Step, %1 to %2</source>
        <translation>Avanzar, de %1 a %2</translation>
    </message>
    <message>
        <source>Step back, %1 to %2</source>
        <translation>Retroceder, de %1 a %2</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Mantener</translation>
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
        <source>Sprint times</source>
        <translation>Tiempos de sprint</translation>
    </message>
    <message>
        <source>Only times of the same test are comparable; wind, surface and shoes stand beside each.</source>
        <translation>Solo se comparan tiempos del mismo test; viento, superficie y zapatillas constan al lado.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Best</source>
        <translation>Mejor</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Viento</translation>
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
        <source>Timing</source>
        <translation>Cronometraje</translation>
    </message>
    <message>
        <source>Run-in</source>
        <translation>Carrera previa</translation>
    </message>
    <message>
        <source>Other times (wind, m/s)</source>
        <translation>Otros tiempos (viento, m/s)</translation>
    </message>
    <message>
        <source>%1, race</source>
        <translation>%1, competición</translation>
    </message>
    <message>
        <source>flying %1 m</source>
        <translation>%1 m lanzados</translation>
    </message>
    <message>
        <source>%1: speed by the splits</source>
        <translation>%1: velocidad según los parciales</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Carreras</translation>
    </message>
    <message>
        <source>Top speed, m/s</source>
        <translation>Vel. punta, m/s</translation>
    </message>
    <message>
        <source>Fit within, ms</source>
        <translation>Ajuste, ms</translation>
    </message>
    <message>
        <source>Power, W/kg</source>
        <translation>Potencia, W/kg</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Excluido</translation>
    </message>
    <message>
        <source>Speed over the way on %1, and how far each split lies from the curve</source>
        <translation>Velocidad según la distancia el %1, y cuánto se aparta cada parcial de la curva</translation>
    </message>
    <message>
        <source>%1: no curve, %2</source>
        <translation>%1: sin curva, %2</translation>
    </message>
    <message>
        <source>Without force and power: %1</source>
        <translation>Sin fuerza ni potencia: %1</translation>
    </message>
    <message>
        <source>The run with the greatest top speed stands for its time.</source>
        <translation>La carrera con la mayor velocidad punta representa su fecha.</translation>
    </message>
    <message>
        <source>± is one standard error.</source>
        <translation>± es un error estándar.</translation>
    </message>
    <message>
        <source>F0 and power: greatest horizontal force and power for each kilogram, with the drag of the air.</source>
        <translation>F0 y potencia: fuerza horizontal y potencia máximas por kilogramo, con la resistencia del aire.</translation>
    </message>
    <message>
        <source>A flying start gives none of these.</source>
        <translation>Una salida lanzada no da nada de esto.</translation>
    </message>
    <message>
        <source>Track by week</source>
        <translation>Pista por semanas</translation>
    </message>
    <message>
        <source>Fast metres: metres at 90 and 95 % of the best speed of the 12 months before.</source>
        <translation>Metros rápidos: metros al 90 y 95 % de la mejor velocidad de los 12 meses anteriores.</translation>
    </message>
    <message>
        <source>A week above 1.3 times the mean of the four before it is said.</source>
        <translation>Se señala una semana de más de 1,3 veces la media de las cuatro anteriores.</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Semana</translation>
    </message>
    <message>
        <source>week %1, %2</source>
        <translation>semana %1, %2</translation>
    </message>
    <message>
        <source>week %1</source>
        <translation>semana %1</translation>
    </message>
    <message>
        <source>Sprint days</source>
        <translation>Días de sprint</translation>
    </message>
    <message>
        <source>Metres</source>
        <translation>Metros</translation>
    </message>
    <message>
        <source>At 90 %</source>
        <translation>Al 90 %</translation>
    </message>
    <message>
        <source>At 95 %</source>
        <translation>Al 95 %</translation>
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
        <source>Contacts</source>
        <translation>Contactos</translation>
    </message>
    <message>
        <source>More than usual</source>
        <translation>Más de lo habitual</translation>
    </message>
    <message>
        <source>* Part of it is estimated: runs without splits, or work counted by its effort.</source>
        <translation>* Parte es estimada: carreras sin parciales, o trabajo contado por su esfuerzo.</translation>
    </message>
    <message>
        <source>Work on the track</source>
        <translation>Trabajo en la pista</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Esfuerzo</translation>
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
        <source>best %1 s</source>
        <translation>mejor %1 s</translation>
    </message>
    <message>
        <source>best %1 s %2</source>
        <translation>mejor %1 s %2</translation>
    </message>
    <message>
        <source>wind %1 m/s</source>
        <translation>viento %1 m/s</translation>
    </message>
    <message>
        <source>run-in %1 m</source>
        <translation>carrera previa %1 m</translation>
    </message>
    <message>
        <source>sprints</source>
        <translation>sprints</translation>
    </message>
    <message>
        <source>flying</source>
        <translation>lanzada</translation>
    </message>
    <message>
        <source>resisted</source>
        <translation>arrastre</translation>
    </message>
    <message>
        <source>hill</source>
        <translation>cuesta</translation>
    </message>
    <message>
        <source>easy</source>
        <translation>suave</translation>
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
        <source>spikes</source>
        <translation>clavos</translation>
    </message>
    <message>
        <source>flats</source>
        <translation>sin clavos</translation>
    </message>
    <message>
        <source>hand</source>
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
        <source>Jumps</source>
        <translation>Saltos</translation>
    </message>
    <message>
        <source>Jump</source>
        <translation>Salto</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Cajón</translation>
    </message>
    <message>
        <source>Contact, median</source>
        <translation>Contacto, mediana</translation>
    </message>
    <message>
        <source>Best height or distance</source>
        <translation>Mejor altura o distancia</translation>
    </message>
    <message>
        <source>Best reactive strength</source>
        <translation>Mejor fuerza reactiva</translation>
    </message>
    <message>
        <source>Reactive strength: jump height over contact time.</source>
        <translation>Fuerza reactiva: altura del salto entre tiempo de contacto.</translation>
    </message>
    <message>
        <source>drop jump</source>
        <translation>salto en caída</translation>
    </message>
    <message>
        <source>standing long jump</source>
        <translation>salto de longitud sin carrera</translation>
    </message>
    <message>
        <source>standing triple jump</source>
        <translation>triple salto sin carrera</translation>
    </message>
    <message>
        <source>counter-movement jump</source>
        <translation>salto con contramovimiento</translation>
    </message>
    <message>
        <source>%1 bounds</source>
        <translation>%1 multisaltos</translation>
    </message>
    <message>
        <source>Did it work?</source>
        <translation>¿Ha funcionado?</translation>
    </message>
    <message>
        <source>Not judged: %1</source>
        <translation>Sin juzgar: %1</translation>
    </message>
    <message>
        <source>The bar within each rung beside the sprint against the season&apos;s trend, week by week.</source>
        <translation>La barra dentro de cada peldaño junto al sprint frente a la tendencia de la temporada, semana a semana.</translation>
    </message>
    <message>
        <source>Times as they are would always go together: ranges grow shorter and summer comes.</source>
        <translation>Los tiempos tal cual irían siempre juntos: el recorrido se acorta y llega el verano.</translation>
    </message>
    <message>
        <source>Sprint</source>
        <translation>Sprint</translation>
    </message>
    <message>
        <source>Weeks with both</source>
        <translation>Semanas con ambos</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>hace falta</translation>
    </message>
    <message>
        <source>Rungs</source>
        <translation>Peldaños</translation>
    </message>
    <message>
        <source>Rank correlation</source>
        <translation>Correlación de rangos</translation>
    </message>
    <message>
        <source>95 %, for show</source>
        <translation>95 %, orientativo</translation>
    </message>
    <message>
        <source>Chance reaches</source>
        <translation>El azar llega a</translation>
    </message>
    <message>
        <source>the same week</source>
        <translation>la misma semana</translation>
    </message>
    <message>
        <source>This is no proof of cause.</source>
        <translation>Esto no prueba una causa.</translation>
    </message>
    <message>
        <source>Planned against done</source>
        <translation>Previsto y hecho</translation>
    </message>
    <message>
        <source>Phase</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>From – to</source>
        <translation>Desde – hasta</translation>
    </message>
    <message>
        <source>Days planned</source>
        <translation>Días previstos</translation>
    </message>
    <message>
        <source>Days done</source>
        <translation>Días hechos</translation>
    </message>
    <message>
        <source>Sets planned</source>
        <translation>Series previstas</translation>
    </message>
    <message>
        <source>Sets done</source>
        <translation>Series hechas</translation>
    </message>
    <message>
        <source>Days lost</source>
        <translation>Días perdidos</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>illness</source>
        <translation>enfermedad</translation>
    </message>
    <message>
        <source>travel</source>
        <translation>viaje</translation>
    </message>
    <message>
        <source>exams</source>
        <translation>exámenes</translation>
    </message>
    <message>
        <source>injury</source>
        <translation>lesión</translation>
    </message>
    <message>
        <source>Pain noted</source>
        <translation>Dolor anotado</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Dolor</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 m from blocks</source>
        <translation>%1 m desde tacos</translation>
    </message>
    <message>
        <source>%1 m standing</source>
        <translation>%1 m de pie</translation>
    </message>
    <message>
        <source>%1 m falling</source>
        <translation>%1 m desde caída</translation>
    </message>
    <message>
        <source>%1 m rolling</source>
        <translation>%1 m en movimiento</translation>
    </message>
    <message>
        <source>block</source>
        <translation>tacos</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>de pie</translation>
    </message>
    <message>
        <source>falling</source>
        <translation>caída</translation>
    </message>
    <message>
        <source>rolling</source>
        <translation>en movimiento</translation>
    </message>
    <message>
        <source>race</source>
        <translation>competición</translation>
    </message>
    <message>
        <source>%1 % more fast metres than the mean of the four weeks before</source>
        <translation>%1 % más metros rápidos que la media de las cuatro semanas anteriores</translation>
    </message>
    <message>
        <source>%1 % more metres than the mean of the four weeks before</source>
        <translation>%1 % más metros que la media de las cuatro semanas anteriores</translation>
    </message>
    <message>
        <source>fast metres after four weeks without</source>
        <translation>metros rápidos tras cuatro semanas sin ellos</translation>
    </message>
    <message>
        <source>metres after four weeks without</source>
        <translation>metros tras cuatro semanas sin ellos</translation>
    </message>
    <message>
        <source>lift at two loads at least 10 % apart; a third and a fourth steady the line</source>
        <translation>levanta con dos cargas separadas al menos un 10 %; una tercera y una cuarta afirman la recta</translation>
    </message>
    <message>
        <source>Hold, %1 to %2</source>
        <translation>Mantener, de %1 a %2</translation>
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
        <translation>Marcas personales</translation>
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
        <translation>El parcial a %1 da %2. Quita uno de los dos.</translation>
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
        <translation>En caída</translation>
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
        <translation>Cronometraje</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Manual</translation>
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
        <translation>Sin clavos</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Sin indicar</translation>
    </message>
    <message>
        <source>Reaction from the gun, s, where it was timed</source>
        <translation>Reacción al disparo, s, si se midió</translation>
    </message>
    <message>
        <source>Start line to the beam that starts the clock, m; the splits count from the beam</source>
        <translation>De la línea de salida a la célula que arranca el reloj, m; los parciales cuentan desde la célula</translation>
    </message>
    <message>
        <source>Air temperature, °C</source>
        <translation>Temperatura del aire, °C</translation>
    </message>
    <message>
        <source>Height above the sea, m</source>
        <translation>Altitud, m</translation>
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
    <message>
        <source>Day, like %1</source>
        <translation>Fecha, p. ej. %1</translation>
    </message>
</context>
<context>
    <name>RungFormWords</name>
    <message>
        <source>This is no height of a box.</source>
        <translation>Esa no es la altura de un cajón.</translation>
    </message>
    <message>
        <source>leads to %1</source>
        <translation>lleva a %1</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>The longer range stands here.</source>
        <translation>Aquí va el recorrido más largo.</translation>
    </message>
    <message>
        <source>The later time stands here.</source>
        <translation>Aquí va el tiempo más tardío.</translation>
    </message>
    <message>
        <source>It ends before it begins.</source>
        <translation>Acaba antes de empezar.</translation>
    </message>
</context>
<context>
    <name>RungSheet</name>
    <message>
        <source>A new rung</source>
        <translation>Un peldaño nuevo</translation>
    </message>
    <message>
        <source>Change the rung</source>
        <translation>Cambiar el peldaño</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Range from, %1</source>
        <translation>Recorrido desde, %1</translation>
    </message>
    <message>
        <source>to, %1</source>
        <translation>hasta, %1</translation>
    </message>
    <message>
        <source>Should lead to, from ms</source>
        <translation>Debe llevar a, desde ms</translation>
    </message>
    <message>
        <source>to, ms</source>
        <translation>hasta, ms</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Series</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>Rest, seconds</source>
        <translation>Descanso, segundos</translation>
    </message>
    <message>
        <source>Box, %1 (optional)</source>
        <translation>Cajón, %1 (opcional)</translation>
    </message>
    <message>
        <source>Begins, at the earliest, in</source>
        <translation>Empieza, como pronto, en</translation>
    </message>
    <message>
        <source>Is left, at the latest, at the end of</source>
        <translation>Se deja, como tarde, al final de</translation>
    </message>
    <message>
        <source>First load here, % of the last load on the rung before</source>
        <translation>Primera carga aquí, % de la última del peldaño anterior</translation>
    </message>
    <message>
        <source>Probe load, % of what the rung allows (0 for body mass)</source>
        <translation>Carga de control, % de lo que permite el peldaño (0: peso corporal)</translation>
    </message>
    <message>
        <source>How the bar moves: what the sensor looks for</source>
        <translation>Cómo se mueve la barra: qué busca el sensor</translation>
    </message>
    <message>
        <source>What it needs</source>
        <translation>Qué necesita</translation>
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
        <source>Take this rung out</source>
        <translation>Quitar este peldaño</translation>
    </message>
    <message>
        <source>Some of it cannot be taken yet: look above.</source>
        <translation>Algo aún no vale: mira arriba.</translation>
    </message>
    <message>
        <source>Keep the rung</source>
        <translation>Guardar el peldaño</translation>
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
        <translation>Días con sprints</translation>
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
        <translation>Nunca se prevé una altura que no tienes. Queda como la escribes.</translation>
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
    <message>
        <source>Lifts</source>
        <translation>Ejercicios</translation>
    </message>
    <message>
        <source>Ladders and other lifts</source>
        <translation>Escaleras y otros ejercicios</translation>
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
    <message>
        <source>The competition comes after the season&apos;s first day.</source>
        <translation>La competición va después del primer día de la temporada.</translation>
    </message>
</context>
<context>
    <name>SeasonLiftsSheet</name>
    <message>
        <source>Lifts of the season</source>
        <translation>Ejercicios de la temporada</translation>
    </message>
    <message>
        <source>A ladder of your own</source>
        <translation>Una escalera propia</translation>
    </message>
    <message>
        <source>Beside the ladders</source>
        <translation>Junto a las escaleras</translation>
    </message>
    <message>
        <source>Hip thrusts, hamstring work, upper body, throws: logged and counted as load, never stepped.</source>
        <translation>Empujes de cadera, isquios, tren superior, lanzamientos: se anotan y cuentan como carga, sin peldaños.</translation>
    </message>
    <message>
        <source>Add a lift beside the ladders</source>
        <translation>Añadir un ejercicio aparte</translation>
    </message>
    <message>
        <source>Begin with a copy of</source>
        <translation>Empezar con una copia de</translation>
    </message>
    <message>
        <source>Everything in it can be changed: names, ranges, boxes, times, phases.</source>
        <translation>Todo se puede cambiar: nombres, recorridos, cajones, tiempos, fases.</translation>
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
        <source>First day of the season</source>
        <translation>Primer día de la temporada</translation>
    </message>
    <message>
        <source>Days with lifts</source>
        <translation>Días con ejercicios</translation>
    </message>
    <message>
        <source>Days with sprints</source>
        <translation>Días con sprints</translation>
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
    <message>
        <source>Day of the main competition</source>
        <translation>Día de la competición principal</translation>
    </message>
</context>
<context>
    <name>SecondarySheet</name>
    <message>
        <source>A lift beside the ladders</source>
        <translation>Un ejercicio aparte de las escaleras</translation>
    </message>
    <message>
        <source>Change the lift</source>
        <translation>Cambiar el ejercicio</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>hip thrust</source>
        <translation>empuje de cadera</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Series</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>What it loads: pain there rests it</source>
        <translation>Qué carga: con dolor ahí, descansa</translation>
    </message>
    <message>
        <source>Moves like</source>
        <translation>Se mueve como</translation>
    </message>
    <message>
        <source>Take it out of the plan</source>
        <translation>Quitarlo del plan</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
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
        <translation>En cuanto transmita.</translation>
    </message>
    <message>
        <source>How it is read</source>
        <translation>Cómo se lee</translation>
    </message>
    <message>
        <source>Teach it anew</source>
        <translation>Repetir el aprendizaje</translation>
    </message>
    <message>
        <source>Three minutes, where its numbers look wrong.</source>
        <translation>Tres minutos, si sus números parecen erróneos.</translation>
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
        <translation>Buscando</translation>
    </message>
    <message>
        <source>Connecting</source>
        <translation>Conectando</translation>
    </message>
    <message>
        <source>Streaming</source>
        <translation>Transmitiendo</translation>
    </message>
    <message>
        <source>Lost, looking for it</source>
        <translation>Perdido, buscando</translation>
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
        <translation>sin dato</translation>
    </message>
    <message>
        <source>Zeroed</source>
        <translation>Puesta a cero</translation>
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
        <translation>Ilegibles</translation>
    </message>
    <message>
        <source>Times lost</source>
        <translation>Veces perdido</translation>
    </message>
    <message>
        <source>since it was found</source>
        <translation>desde que se encontró</translation>
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
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Undo the last repetition</source>
        <translation>Deshacer la última repetición</translation>
    </message>
    <message>
        <source>End set</source>
        <translation>Fin de serie</translation>
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
    <message>
        <source>Stands large</source>
        <translation>En grande</translation>
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
        <translation>Cerrar</translation>
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
        <translation>Separador decimal</translation>
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
    <name>SpokenWords</name>
    <message>
        <source>week %1</source>
        <translation>semana %1</translation>
    </message>
    <message>
        <source>week %1 to %2</source>
        <translation>semana %1 a %2</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 de %2 a %3</translation>
    </message>
    <message>
        <source>Across: %1.</source>
        <translation>En horizontal: %1.</translation>
    </message>
    <message>
        <source>Up: %1.</source>
        <translation>En vertical: %1.</translation>
    </message>
    <message>
        <source>%1: %2 to %3.</source>
        <translation>%1: %2 a %3.</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 desde %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: lowest %2, highest %3.</source>
        <translation>%1: mínimo %2, máximo %3.</translation>
    </message>
    <message>
        <source>%1 (no evidence)</source>
        <translation>%1 (no es prueba)</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1, 1 mark: %2.</source>
        <translation>%1, 1 punto: %2.</translation>
    </message>
    <message>
        <source>%1, %2 marks: %3.</source>
        <translation>%1, %2 puntos: %3.</translation>
    </message>
    <message>
        <source>first %1; last %2; lowest %3, highest %4</source>
        <translation>primero %1; último %2; mínimo %3, máximo %4</translation>
    </message>
    <message>
        <source>Now on %1.</source>
        <translation>Ahora en %1.</translation>
    </message>
    <message>
        <source>Latest: %1.</source>
        <translation>Último: %1.</translation>
    </message>
    <message>
        <source>Latest: %1, inside the target band.</source>
        <translation>Último: %1, dentro de la banda objetivo.</translation>
    </message>
    <message>
        <source>Latest: %1, outside the target band.</source>
        <translation>Último: %1, fuera de la banda objetivo.</translation>
    </message>
    <message>
        <source>In %1: %2.</source>
        <translation>En %1: %2.</translation>
    </message>
    <message>
        <source>Chosen: %1 in %2.</source>
        <translation>Elegido: %1 en %2.</translation>
    </message>
</context>
<context>
    <name>SprintTrendCard</name>
    <message>
        <source>Sprint times</source>
        <translation>Tiempos de sprint</translation>
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
        <translation>Añádete, o a cada atleta que entrenas. Ejercicios, sprints y decisiones se guardan por separado, solo en este dispositivo.</translation>
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
        <translation>Este dispositivo</translation>
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
        <translation>Aprendizaje: %1</translation>
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
        <translation>Esta altura</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Empezar</translation>
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
        <translation>Sprints</translation>
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
        <translation>salida en caída</translation>
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
        <translation>Sprints</translation>
    </message>
    <message>
        <source>Flying sprints</source>
        <translation>Sprints lanzados</translation>
    </message>
    <message>
        <source>Resisted sprints</source>
        <translation>Sprints con arrastre</translation>
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
        <translation>sin clavos</translation>
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
        <source>%1, ms (if measured)</source>
        <translation>%1, ms (si se midió)</translation>
    </message>
    <message>
        <source>Effort, 1 easy to 10 all out (tells 1RM)</source>
        <translation>Esfuerzo, de 1 fácil a 10 máximo (estima el 1RM)</translation>
    </message>
    <message>
        <source>Save the set</source>
        <translation>Guardar la serie</translation>
    </message>
    <message>
        <source>%1, m/s (if measured)</source>
        <translation>%1, m/s (si se midió)</translation>
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
        <translation>Hoy sin sprints ni bisagra de cadera. Ve al médico antes de volver a esprintar o levantar pesado.</translation>
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
        <translation>Sprints sin reloj, carreras con trineo, en cuesta o suaves: cuántas y de cuántos metros. Las semanas dicen luego cuántos metros se corrieron y cuántos de ellos rápidos.</translation>
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
        <translation>Sprints</translation>
    </message>
    <message>
        <source>Flying</source>
        <translation>Lanzados</translation>
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
        <translation>Esfuerzo, de 1 a 10. Desde 9, los sprints sin reloj cuentan como metros rápidos</translation>
    </message>
    <message>
        <source>Best time of one run, s (optional)</source>
        <translation>Mejor tiempo de una carrera, s (opcional)</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>Cronometraje</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Manual</translation>
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
        <translation>Sin clavos</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Sin indicar</translation>
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
    <message>
        <source>Day, like %1</source>
        <translation>Fecha, p. ej. %1</translation>
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
        <translation>Simulando las temporadas de un equipo inventado: %1 %</translation>
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
        <translation>Anotado: sigues la decisión.</translation>
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
        <translation>Empieza</translation>
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
        <translation>parar al %1</translation>
    </message>
    <message>
        <source>By the loss %1: a guess. The stop rests on the loss.</source>
        <translation>Por la pérdida, %1: una estimación. La parada depende de la pérdida.</translation>
    </message>
    <message>
        <source>Velocity has fallen by %1; this set ends at %2.</source>
        <translation>La velocidad ha caído un %1; esta serie termina al llegar al %2.</translation>
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
        <translation>Hoy sin sprints: el dolor lo impide.</translation>
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
        <translation>Activación: ligera y rápida, sin serie de control</translation>
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
        <translation>Prueba del calentamiento: faltan datos para comparar</translation>
    </message>
    <message>
        <source>Warm-up check: as usual</source>
        <translation>Prueba del calentamiento: como siempre</translation>
    </message>
    <message>
        <source>Warm-up check: slower than usual</source>
        <translation>Prueba del calentamiento: más lento de lo habitual</translation>
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
        <translation>%1 transmite</translation>
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
        <translation>Quédate quieto un momento y levanta a tope: la serie empieza sola y acaba cuando la barra lleva 15 s parada. Comprueba antes la carga.</translation>
    </message>
    <message>
        <source>Stand still for a moment, then lift with full intent. Each repetition is announced as it ends.</source>
        <translation>Quédate quieto un momento y levanta a tope. Cada repetición se anuncia al acabar.</translation>
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
        <translation>Medido. Ahora otro lado.</translation>
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
        <translation>No demostrado</translation>
    </message>
    <message>
        <source>They moved together</source>
        <translation>Se movieron juntos</translation>
    </message>
    <message>
        <source>For it to speak: begin each lift with its probe set, and time a sprint in each week, always in the same way: distance, run-in, start, timing, surface and shoes, wind within 1 m/s.</source>
        <translation>Para que diga algo: empieza cada ejercicio con su serie de control y cronometra un sprint cada semana, siempre igual: distancia, carrera previa, salida, cronometraje, superficie y zapatillas, viento dentro de 1 m/s.</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>Chance alone gives as much in %1 of 100 turned seasons; up to %2 it counts as moved together.</source>
        <translation>El azar por sí solo da otro tanto en %1 de cada 100 temporadas giradas; hasta %2 cuenta como que se movieron juntos.</translation>
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
        <translation>Qué se compara: cuánto antes que la línea propia de cada estancia llegó la barra a su velocidad máxima, en las semanas de cada estancia en un peldaño; y cuánto mejores que la línea propia de la temporada fueron los sprints en las mismas condiciones, en la misma semana y de una a cuatro semanas después.

Por qué no se muestra una correlación simple: el tiempo hasta la velocidad máxima baja porque el plan acorta el recorrido, y los tiempos de sprint bajan porque llega el verano. Tal cual, siempre se mueven juntos, hicieran algo los ejercicios o no. Por eso se quitan antes las dos tendencias.

Cómo se juzga: las semanas de la barra se cortan en tres bloques y cada uno se gira sobre sí mismo en todas las combinaciones. El azar es la parte de esas temporadas giradas en que el desfase más fuerte de los cinco es tan fuerte como el tuyo.

Qué no puede ver: en temporadas simuladas con una relación realista habló en 6 de 100; con una muy grande, en 76. Que no se demuestre no quiere decir que no exista. Y que dos cosas se muevan juntas no dice que una hiciera la otra: el sueño, la escuela o el tiempo pueden mover ambas.</translation>
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
        <translation>Medida. Lo que indiques aquí se guarda junto a la grabación.</translation>
    </message>
    <message>
        <source>Typed in.</source>
        <translation>Introducida a mano.</translation>
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
        <translation>%1 encontrados, sigue la búsqueda</translation>
    </message>
    <message>
        <source>%1 found</source>
        <translation>%1 encontrados</translation>
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
        <translation>Envía, pero nada de aquí puede leerlo aún. Haz el aprendizaje: tres minutos, sin herramientas.</translation>
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
    <name>fleetrung::views::Help</name>
    <message>
        <source>What is this: %1?</source>
        <translation>¿Qué es esto: %1?</translation>
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
        <translation>Separador decimal</translation>
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
        <translation>En caída</translation>
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
        <translation>Cronometraje</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Manual</translation>
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
        <translation>1 fila errónea</translation>
    </message>
    <message>
        <source>%1 bad rows</source>
        <translation>%1 filas erróneas</translation>
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
    <message>
        <source>There is no such day. Type it like %1.</source>
        <translation>Esa fecha no existe. Escríbela como %1.</translation>
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
    <message>
        <source>At most %1 contacts in a session and %2 in seven days. Under 18: at most %3, from at most %4. Heavier than %5: no box above %6.</source>
        <translation>Como mucho %1 contactos por sesión y %2 en siete días. Menores de 18: como mucho %3, desde %4 como mucho. Con más de %5: ningún cajón de más de %6.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::LadderViewModel</name>
    <message>
        <source>planned for %1</source>
        <translation>previsto para el %1</translation>
    </message>
    <message>
        <source>since %1, you stand here</source>
        <translation>desde el %1 estás aquí</translation>
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
        <translation>Nada medido en esta escalera desde el %1.</translation>
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
        <translation>%1 No hay velocidad al 1RM publicada para este ejercicio, así que la recta no señala ningún 1RM.</translation>
    </message>
    <message>
        <source>%1 1RM is where the line meets %2 (%3). An estimate is an estimate.</source>
        <translation>%1 El 1RM está donde la recta llega a %2 (%3). Una estimación es una estimación.</translation>
    </message>
    <message>
        <source>No line yet: %1.</source>
        <translation>Aún sin recta: %1.</translation>
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
    <name>fleetrung::views::OwnLadderViewModel</name>
    <message>
        <source>A ladder needs a rung.</source>
        <translation>Una escalera necesita un peldaño.</translation>
    </message>
    <message>
        <source>Training has been done on this rung. It stays.</source>
        <translation>En este peldaño ya se ha entrenado. Se queda.</translation>
    </message>
    <message>
        <source>Give the ladder a name.</source>
        <translation>Ponle un nombre a la escalera.</translation>
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
        <translation>Como el dispositivo</translation>
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
        <translation>%1 m sobre el nivel del mar</translation>
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
        <translation>Respecto a la mejor hasta ahora</translation>
    </message>
    <message>
        <source>this is the best</source>
        <translation>esta es la mejor</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>Greatest force F0</source>
        <translation>Fuerza máxima F0</translation>
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
        <translation>Potencia máxima</translation>
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
        <translation>Velocidad a la que la fuerza se anula, v0</translation>
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
        <translation>el nivel del mar</translation>
    </message>
    <message>
        <source>still air</source>
        <translation>aire en calma</translation>
    </message>
    <message>
        <source>For %1, from the fit and the drag of the air.</source>
        <translation>Para %1, según la curva y la resistencia del aire.</translation>
    </message>
    <message>
        <source> Not typed, and taken as: %1.</source>
        <translation> No indicado; se supone: %1.</translation>
    </message>
    <message>
        <source>The clock began with the gun, the reaction of %1 s is known.</source>
        <translation>El reloj empezó con el disparo; la reacción de %1 s es conocida.</translation>
    </message>
    <message>
        <source>The clock is taken to begin with the first movement. If it began at a beam, type the way to it.</source>
        <translation>Se supone que el reloj empezó con el primer movimiento. Si empezó en una célula, escribe la distancia hasta ella.</translation>
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
    <name>fleetrung::views::SeasonLiftsViewModel</name>
    <message>
        <source>%1 × %2 · %3</source>
        <translation>%1 × %2 · %3</translation>
    </message>
    <message>
        <source>%1 rungs, from %2 to %3</source>
        <translation>%1 peldaños, de %2 a %3</translation>
    </message>
    <message>
        <source>rung %1 of %2: %3</source>
        <translation>peldaño %1 de %2: %3</translation>
    </message>
    <message>
        <source>A session holds %1 of them; they take turns. A few that stay all season bring more than many.</source>
        <translation>En una sesión caben %1; se turnan. Pocas que duren toda la temporada dan más que muchas.</translation>
    </message>
    <message>
        <source>A session holds %1 of them.</source>
        <translation>En una sesión caben %1.</translation>
    </message>
    <message>
        <source>%1 is out of the season. Its sets stay in the log.</source>
        <translation>%1 sale de la temporada. Sus series quedan en el registro.</translation>
    </message>
    <message>
        <source>%1 is in the season from today on.</source>
        <translation>%1 está en la temporada desde hoy.</translation>
    </message>
    <message>
        <source>The order of the ladders is changed.</source>
        <translation>El orden de las escaleras ha cambiado.</translation>
    </message>
    <message>
        <source>%1, own</source>
        <translation>%1, propia</translation>
    </message>
    <message>
        <source>%1 is changed.</source>
        <translation>%1: cambios guardados.</translation>
    </message>
    <message>
        <source>%1 is deleted. Its sets stay in the log.</source>
        <translation>%1: borrada. Sus series quedan en el registro.</translation>
    </message>
    <message>
        <source>Choose at least one day.</source>
        <translation>Elige al menos un día.</translation>
    </message>
    <message>
        <source>%1 is added.</source>
        <translation>%1: añadido.</translation>
    </message>
    <message>
        <source>%1 is taken out of the plan.</source>
        <translation>%1: fuera del plan.</translation>
    </message>
    <message>
        <source>Nothing the sensor knows</source>
        <translation>Nada que el sensor conozca</translation>
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
        <translation>A: el volumen baja en las dos semanas anteriores; la intensidad se mantiene.</translation>
    </message>
    <message>
        <source>B: a little less volume over the four days before it.</source>
        <translation>B: algo menos de volumen en los cuatro días anteriores.</translation>
    </message>
    <message>
        <source>C: trained through, with two lighter days before it.</source>
        <translation>C: se compite sin parar de entrenar, con dos días más ligeros antes.</translation>
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
        <translation>%1: añadida.</translation>
    </message>
    <message>
        <source>%1 is changed.</source>
        <translation>%1: cambiada.</translation>
    </message>
    <message>
        <source>%1 is deleted.</source>
        <translation>%1: borrada.</translation>
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
        <translation>%1: en el plan.</translation>
    </message>
    <message>
        <source>%1 is taken out of the plan.</source>
        <translation>%1: fuera del plan.</translation>
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
        <translation>Los días con sprints han cambiado.</translation>
    </message>
    <message>
        <source>What the weight room has is changed.</source>
        <translation>El equipamiento de la sala ha cambiado.</translation>
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
        <translation>Mejor %1 el %2, último %3 el %4.</translation>
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
        <translation>Ninguna carrera de este test desde el %1.</translation>
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
        <translation>Todos</translation>
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
        <translation>Leyendo los planes.</translation>
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
        <translation>Menor de 18: antes hace falta el permiso de un tutor legal.</translation>
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
        <translation>Sigues la decisión.</translation>
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
        <translation>previsto para el %1, semana %2</translation>
    </message>
    <message>
        <source>since %1, week %2</source>
        <translation>desde el %1, semana %2</translation>
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
        <translation>Al principio previsto para el %1: %2 más tarde</translation>
    </message>
    <message>
        <source>First planned for %1: %2 sooner</source>
        <translation>Al principio previsto para el %1: %2 antes</translation>
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
        <translation>Contador de muestras</translation>
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
        <translation>%1 % de certeza en conjunto. Levanta una vez y mira si la altura es correcta.</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TrackViewModel</name>
    <message>
        <source>All</source>
        <translation>Todos</translation>
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
        <translation>Introduce saltos en caída con tiempos de contacto y de vuelo, o un salto de longitud sin carrera. El mismo día y en las mismas condiciones dicen si la fuerza llega a tiempo.</translation>
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
        <translation>Las semanas cuentan desde el %1.</translation>
    </message>
</context>
</TS>
