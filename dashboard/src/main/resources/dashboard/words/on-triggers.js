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
  "guard.lockout": ["lock-out after a passage", "bloqueo tras un paso"],
  "guard.staysFor": ["stays for", "permanece"],
  "guard.clearFor": ["clear for", "libre durante"],
  "guard.stoodFor": ["stood for", "de pie durante"],
  "guard.minBlock": ["shortest block that counts", "tapado más corto que cuenta"],
  "guard.mergeGap": ["gap that joins blocks", "hueco que une tapados"],
  "guard.within": ["both within", "ambos en"],
  "guard.spacing": ["apart from the one before", "separación del anterior"],
};
