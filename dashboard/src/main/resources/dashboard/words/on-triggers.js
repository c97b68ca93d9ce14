// The technician's words for what judges the edges, and for other guards.
export const onTriggers = {
  "trigger.title": ["Triggers", "Disparadores"],
  "trigger.how": [
    "What makes each mark, and which edges it leaves aside. Other values hold for what is " +
      "stamped from then on; what was judged keeps the rule that judged it.",
    "Qué hace cada marca y qué flancos deja de lado. Otros valores rigen para lo que se " +
      "marque desde entonces; lo juzgado conserva la regla que lo juzgó.",
  ],
  "trigger.none": ["No trigger has a sensor.", "Ningún disparador tiene sensor."],
  "trigger.checkpoint": ["checkpoint {point}", "control {point}"],
  "trigger.of": ["{sensors}, version {version}", "{sensors}, versión {version}"],
  "trigger.no-guard": ["No length of time is in force.", "No rige ninguna duración."],
  "trigger.adjust": ["Adjust", "Ajustar"],
  "trigger.adjust-of": ["Adjust: {station}, {point}", "Ajustar: {station}, {point}"],
  "trigger.taken": [
    "Not now: someone is here or on the way.",
    "Ahora no: hay alguien aquí o de camino.",
  ],
  "trigger.why": ["Why, in words", "Por qué, con palabras"],
  "trigger.adjust-now": ["Adjust from now on", "Ajustar desde ahora"],
  "trigger.adjusted": [
    "Adjusted: version {version} judges from now on.",
    "Ajustado: desde ahora juzga la versión {version}.",
  ],
  "trigger.in-ms": ["{guard}, in ms", "{guard}, en ms"],
  "trigger.in-force": ["In force: {length}.", "Rige: {length}."],
  "trigger.not-used": ["Not used now.", "Ahora sin usar."],
  "trigger.from-none": [
    "From 0 (not used) to {most}.",
    "De 0 (sin usar) a {most}.",
  ],
  "trigger.above-none": ["More than 0, at most {most}.", "Más de 0, como mucho {most}."],
  "trigger.between": ["From {least} to {most}.", "De {least} a {most}."],
  "trigger.no-time": [
    "{guard}: type milliseconds, as 1500 or 0.5.",
    "{guard}: escriba milisegundos, como 1500 o 0.5.",
  ],
  "trigger.beyond": ["{guard}: outside its limits. {limits}", "{guard}: fuera de sus límites. {limits}"],
  "trigger.as-before": [
    "Every value is the one in force. Change one, or go back.",
    "Todos los valores son los que rigen. Cambie uno o vuelva.",
  ],
  "rejudge.try": ["Try on today's runs", "Probar con lo de hoy"],
  "rejudge.try-of": ["Try on today's runs: {station}, {point}", "Probar con lo de hoy: {station}, {point}"],
  "rejudge.how": [
    "Every run at this station today is judged anew from its own edges: by the values that judged " +
      "it then, and by these. This changes nothing.",
    "Cada paso de hoy por esta estación se juzga de nuevo por sus propios flancos: con los valores " +
      "que lo juzgaron y con estos. Esto no cambia nada.",
  ],
  "rejudge.show": ["Show what would change", "Mostrar qué cambiaría"],
  "rejudge.no-answer": [
    "No answer from the gateway. Ask again.",
    "La central no responde. Pregunte de nuevo.",
  ],
  "rejudge.sum": [
    "{judged} judged anew: {unchanged} as before, {changed} otherwise.",
    "{judged} juzgados de nuevo: {unchanged} como antes, {changed} distintos.",
  ],
  "rejudge.not-applied": [
    "Nothing was applied. A split changes only by a ruling of those who may: choose a reading, give " +
      "the time by hand, or void it, each with its reason.",
    "No se aplicó nada. Un parcial solo cambia por decisión de quien puede: elegir una lectura, dar " +
      "el tiempo a mano o anularlo, siempre con su motivo.",
  ],
  "rejudge.number": ["No.", "N.º"],
  "rejudge.before": ["then", "antes"],
  "rejudge.after": ["with these", "con estos"],
  "rejudge.moved": ["difference", "diferencia"],
  "rejudge.run": ["{number}, run {run}", "{number}, intento {run}"],
  "rejudge.none": ["no split", "sin parcial"],
  "rejudge.start": ["start {by}", "salida {by}"],
  "rejudge.finish": ["finish {by}", "llegada {by}"],
  "rejudge.split": ["split {by}", "parcial {by}"],
  "rejudge.stands": ["{state}, {split}", "{state}, {split}"],
  "rejudge.now": ["Stands now: {stands}.", "Vale ahora: {stands}."],
  "rejudge.because": ["With these: {why}.", "Con estos: {why}."],
  "rejudge.silent": ["Of these nothing can be said:", "De estos no se puede decir nada:"],
  "rejudge-label.clean": ["clean", "limpio"],
  "rejudge-label.provisional": ["provisional", "provisional"],
  "rejudge-label.ambiguous": ["ambiguous", "dudoso"],
  "rejudge-label.look": ["to look at", "por mirar"],
  "rejudge-why.under-way": ["still under way", "aún en curso"],
  "rejudge-why.ended": ["ended before its time", "terminado antes de tiempo"],
  "rejudge-why.edges-lost": [
    "a sensor rattled, and not all edges were kept",
    "un sensor vibró y no se guardaron todos los flancos",
  ],
  "rejudge-why.came-too-late": [
    "edges came, or may have come, too late for it",
    "llegaron, o pudieron llegar, flancos demasiado tarde",
  ],
  "rejudge-why.not-over": [
    "the station was ready again before these values had passed",
    "la estación volvió a estar lista antes de pasar estos valores",
  ],
  "guard.lockout": ["lock-out after a passage", "bloqueo tras un paso"],
  "guard.staysFor": ["stays for", "permanece"],
  "guard.clearFor": ["clear for", "libre durante"],
  "guard.stoodFor": ["stood for", "de pie durante"],
  "guard.minBlock": ["shortest block that counts", "tapado más corto que cuenta"],
  "guard.mergeGap": ["gap that joins blocks", "hueco que une tapados"],
  "guard.within": ["both within", "ambos en"],
  "guard.spacing": ["apart from the one before", "separación del anterior"],
};
