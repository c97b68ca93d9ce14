// The technician's words for comparing two units' clocks by occurrences both saw.
export const onCalibration = {
  "calibration.title": ["Calibration", "Calibración"],
  "calibration.why": [
    "A clock compared by radio can be a millisecond or two wrong without anybody seeing " +
      "it. Two units that see the same instant again and again show by how much.",
    "Un reloj comparado por radio puede errar un milisegundo o dos sin que nadie lo vea. " +
      "Dos unidades que ven el mismo instante muchas veces muestran cuánto.",
  ],
  "calibration.how": [
    "Wire one contact to both inputs, or lay one plate over both mats. Trip it at least " +
      "{count} times, 5 s or more apart. Meanwhile these two sensors time nobody.",
    "Conecte un contacto a ambas entradas, o ponga una placa sobre ambas alfombras. " +
      "Acciónelo al menos {count} veces, con 5 s o más entre ellas. Entretanto estos dos " +
      "sensores no cronometran a nadie.",
  ],
  "calibration.reference": ["Reference sensor", "Sensor de referencia"],
  "calibration.other": ["Sensor to calibrate", "Sensor por calibrar"],
  "calibration.choose": ["Choose one", "Elija uno"],
  "calibration.sensor": ["{unit}/{number} {name}", "{unit}/{number} {name}"],
  "calibration.begin": ["Begin calibration", "Empezar calibración"],
  "calibration.choose-two": [
    "Choose sensors of two different units.",
    "Elija sensores de dos unidades distintas.",
  ],
  "calibration.under-way": [
    "Under way: {other} against {reference}",
    "En curso: {other} frente a {reference}",
  ],
  "calibration.count": ["{kept} of {needed} trips count", "cuentan {kept} de {needed}"],
  "calibration.seen": [
    "{reference} was tripped {first} times, {other} {second} times.",
    "{reference} se accionó {first} veces; {other}, {second} veces.",
  ],
  "calibration.none-yet": [
    "No trip was seen by both yet. Trip them now.",
    "Aún ninguno visto por ambos. Acciónelos ahora.",
  ],
  "calibration.median": ["median difference", "diferencia mediana"],
  "calibration.spread": ["spread of one trip", "dispersión de uno"],
  "calibration.uncertainty": ["median known to ±", "mediana conocida a ±"],
  "calibration.ms": ["{value} ms", "{value} ms"],
  "calibration.differences": [
    "Each trip, {other} after {reference}",
    "Cada uno, {other} tras {reference}",
  ],
  "calibration.outlier": ["rejected: far from the others", "rechazado: lejos de los demás"],
  "calibration.impossible": [
    "rejected: not the same instant",
    "rechazado: no fue el mismo instante",
  ],
  "calibration.accept": ["Accept", "Aceptar"],
  "calibration.give-up": ["Give up", "Abandonar"],
  "calibration.accepted": [
    "From now on {unit} is corrected.",
    "Desde ahora {unit} se corrige.",
  ],
  "calibration.given-up": ["Given up. Nothing changes.", "Abandonada. Nada cambia."],
  "calibration.may-accept": [
    "This can be accepted.",
    "Se puede aceptar.",
  ],
  "objection.too-few": [
    "Too few trips count so far.",
    "Aún cuentan pocos.",
  ],
  "objection.too-scattered": [
    "The trips scatter too much: were both sensors tripped at the very same moment?",
    "Varían demasiado: ¿se accionaron ambos en el mismo instante?",
  ],
  "objection.unsettled": [
    "The clocks' estimates have not settled. Wait some minutes, or trip on.",
    "Las estimaciones aún no se asientan. Espere unos minutos o siga accionando.",
  ],
  "objection.contradicted": [
    "The guaranteed limits do not allow this correction. Give up, and choose the better " +
      "known unit as the reference.",
    "Los límites garantizados no permiten esta corrección. Abandone y elija como " +
      "referencia la unidad mejor conocida.",
  ],
  "objection.boot": [
    "{unit} restarted meanwhile. Give up and begin again.",
    "{unit} se reinició entretanto. Abandone y empiece de nuevo.",
  ],
  "objection.access-point": [
    "{unit} went to another access point meanwhile. Give up and begin again.",
    "{unit} cambió de punto de acceso entretanto. Abandone y empiece de nuevo.",
  ],
  "objection.contract": [
    "{unit} speaks another version of the contract now. Give up and begin again.",
    "{unit} habla ahora otra versión del contrato. Abandone y empiece de nuevo.",
  ],
  "calibration.standing": ["In force", "En vigor"],
  "calibration.none": ["No unit is calibrated.", "Ninguna unidad está calibrada."],
  "calibration.one": ["{other} against {reference}", "{other} frente a {reference}"],
  "calibration.correction": ["estimates moved by", "estimaciones movidas"],
  "calibration.root": ["measured against", "medida frente a"],
  "calibration.declared": ["declared, one stamp", "declarado, una marca"],
  "calibration.trips": ["trips", "accionamientos"],
  "calibration.trips-of": [
    "{kept} counted, {rejected} rejected",
    "{kept} cuentan, {rejected} rechazados",
  ],
  "calibration.since": ["for", "desde hace"],
  "calibration.assumes": [
    "The guaranteed interval stays as it is and decides. The declared one beside it " +
      "assumes that messages take as long each way as they did while calibrating.",
    "El intervalo garantizado no cambia y es el que decide. El declarado, a su lado, " +
      "supone que los mensajes tardan en cada sentido lo mismo que al calibrar.",
  ],
  "calibration.ended": ["No longer in force", "Ya no en vigor"],
  "calibration.ended-when": ["{time} ago", "hace {time}"],
  "ended.boot": [
    "{unit} restarted. Calibrate again.",
    "{unit} se reinició. Calibre de nuevo.",
  ],
  "ended.access-point": [
    "{unit} is at another access point. Calibrate again.",
    "{unit} está en otro punto de acceso. Calibre de nuevo.",
  ],
  "ended.contract": [
    "{unit} speaks another version of the contract. Calibrate again.",
    "{unit} habla otra versión del contrato. Calibre de nuevo.",
  ],
  "ended.time-line": [
    "The gateway's clock was interrupted. Calibrate again.",
    "El reloj de la central se interrumpió. Calibre de nuevo.",
  ],
  "ended.replaced": ["A newer one took its place.", "Otra más nueva la sustituyó."],
};
