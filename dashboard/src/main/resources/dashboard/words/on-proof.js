// The technician's words for the proof run.
export const onProof = {
  "proof.title": ["Proof run", "Recorrido de prueba"],
  "proof.how": [
    "Walk the course before a candidate does. Press here at each start, checkpoint and " +
      "finish the moment you are there. Meanwhile nobody is released and nobody is timed.",
    "Haga el recorrido antes que un aspirante. Pulse aquí en cada salida, control y llegada " +
      "en cuanto esté allí. Entretanto no hay salidas ni se cronometra a nadie.",
  ],
  "proof.what": ["What to prove", "Qué probar"],
  "proof.course": ["Whole course", "Todo el recorrido"],
  "proof.begin": ["Begin proof run", "Empezar la prueba"],
  "proof.missing": [
    "The plan asks for a proof run signed by two: releases wait for it.",
    "El plan pide una prueba firmada por dos: las salidas la esperan.",
  ],
  "proof.asked-fault": [
    "{station}: an equipment fault was called. Prove this station.",
    "{station}: se anotó una falla del equipo. Pruebe esta estación.",
  ],
  "proof.asked-unit": [
    "{station}: a unit started anew or is another one. Prove this station.",
    "{station}: una unidad se reinició o es otra. Pruebe esta estación.",
  ],
  "proof.asked-trigger": [
    "{station}: a trigger was adjusted. Prove this station.",
    "{station}: se ajustó un disparador. Pruebe esta estación.",
  ],
  "proof.under-way": [
    "Under way for {time}: {what}, begun by {person}",
    "En curso desde hace {time}: {what}, la inició {person}",
  ],
  "proof.count": ["{seen} of {points} points seen", "{seen} de {points} puntos vistos"],
  "proof.press": [
    "Of several presses of a start or a finish the last one counts. Pressing a start again " +
      "begins its station anew.",
    "De varias pulsaciones de una salida o llegada cuenta la última. Pulsar otra vez una " +
      "salida empieza su estación de nuevo.",
  ],
  "proof.signal": ["Sound the start signal", "Dar la señal de salida"],
  "proof.seen": ["seen", "visto"],
  "proof.missing-point": ["missing", "falta"],
  "proof.apart": ["apart", "no coincide"],
  "proof.lacks-both": ["no sensor, no press", "ni sensor ni pulsación"],
  "proof.lacks-sensor": ["no sensor", "sin sensor"],
  "proof.lacks-press": ["no press", "sin pulsación"],
  "proof.lacks-time": ["the press has no time", "la pulsación no tiene hora"],
  "proof.apart-by": ["sensor − hand {apart}", "sensor − mano {apart}"],
  "proof.tap": ["Now", "Ahora"],
  "proof.tap-of": ["Now: {station}, {point}", "Ahora: {station}, {point}"],
  "proof.signed-by": [
    "Signed by {person}. Another person signs on another device.",
    "Firmó {person}. Otra persona firma en otro aparato.",
  ],
  "proof.sign": ["Sign", "Firmar"],
  "proof.give-up": ["Give up", "Abandonar"],
  "proof.not-clean": [
    "{seen} of {points} points were seen. It can be signed only with a reason.",
    "Se vieron {seen} de {points} puntos. Solo se puede firmar con un motivo.",
  ],
  "proof.why": ["Why it stands all the same", "Por qué vale de todos modos"],
  "proof.done": ["Signed.", "Firmado."],
  "proof.given-up": ["The proof run was given up.", "Se abandonó la prueba."],
  "proof.signed": ["Signed today", "Firmadas hoy"],
  "proof.none": ["None yet.", "Aún ninguna."],
  "proof.record": [
    "{what}: {seen} of {points} points seen",
    "{what}: {seen} de {points} puntos vistos",
  ],
  "proof.record-by": [
    "{time} ago, by {first} and {second}; largest sensor − hand {apart}",
    "hace {time}, por {first} y {second}; mayor sensor − mano {apart}",
  ],
};
