// Sentences the gateway says in English only, because they stand in the journal or come from its
// inside. Left out here means shown in English: better than not at all.
const SENTENCES = {
  "No sign of life yet today.": "Hoy aún sin señal de vida.",
  "Up.": "Activa.",
  "No sign of life for over 6 s. Look at its power and Wi-Fi.":
    "Sin señal de vida desde hace más de 6 s. Revise su corriente y su Wi-Fi.",
  "Off line. Times at its station are taken by hand until it is back.":
    "Sin línea. Los tiempos de su estación se toman a mano hasta que vuelva.",
  "An impossible climate reading was refused.":
    "Se rechazó una lectura de clima imposible.",
  "The same edge number came twice with different content.":
    "El mismo número de flanco llegó dos veces con contenido distinto.",
  "Its clock was never compared; its edges are only journalled.":
    "Su reloj nunca se comparó; sus flancos solo se anotan.",
  "The start signal was not answered. Look at the horn, or start by word and tap.":
    "La señal de salida no tuvo respuesta. Revise la bocina, o dé la salida de viva voz y toque.",
  ["Its clock jumped without a restart. Marks beside the jump cover both sides of it." +
    " If it happens again, change the unit."]:
    "Su reloj saltó sin reinicio. Las marcas junto al salto cubren ambos lados. Si se repite, cambie la unidad.",
  "The gateway's clock was interrupted during this run.":
    "El reloj de la central se interrumpió durante este recorrido.",
  "The disk is full: nothing new is kept until there is room on it.":
    "El disco está lleno: no se guarda nada nuevo hasta que haya sitio.",
  "Restarted after a stop. The coordinator resumes releases.":
    "Reanudado tras un alto. Coordinación reanuda las salidas.",
};

const PATTERNS = [
  [
    /^(.+) \((\S+)\) is not at rest though nobody is meant to be there\.(.*)$/,
    "$1 ($2) no está en reposo aunque nadie debería estar allí.$3",
  ],
  [
    /^(.+) \((\S+)\) is stuck: so for longer than the plan thinks possible\.(.*)$/,
    "$1 ($2) está atascado: así más tiempo del que el plan cree posible.$3",
  ],
  [
    /^(.+) \((\S+)\) was never seen today, though candidates went through\.(.*)$/,
    "$1 ($2) no se vio hoy, aunque pasaron candidatos.$3",
  ],
  [
    /^The restart is bridged by field units that ran on: .*$/,
    "Las unidades de campo que siguieron contando salvan el reinicio: los tiempos que lo cruzan se conocen" +
      " de nuevo, con un intervalo más ancho.",
  ],
  [
    /^Field units contradict each other about how long the gateway was away: .*$/,
    "Las unidades de campo se contradicen sobre cuánto faltó la central: no se da ningún tiempo que cruce el" +
      " reinicio. Use tiempos a mano y revise sus relojes.",
  ],
  [
    /^The wall clock was set back by (\d+ m?s)\. No measured time changes\.$/,
    "El reloj de pared se atrasó $1. Ningún tiempo medido cambia.",
  ],
  [
    /^The wall clock was set forward by (\d+ m?s)\. No measured time changes\.$/,
    "El reloj de pared se adelantó $1. Ningún tiempo medido cambia.",
  ],
  [
    /^Its clock is known to (\S+) ms only, the plan allows (\S+) ms\. .*$/,
    "Su reloj se conoce solo con $1 ms; el plan permite $2 ms. Acerque la unidad al punto de acceso, o" +
      " espere los próximos intercambios; hasta entonces las marcas llevan el intervalo ancho.",
  ],
  [
    /^The rules failed at entry (\d+)\. .*$/,
    "Las reglas fallaron en la entrada $1. Todo se guarda, pero esta imagen no avanza. Siga a mano y" +
      " llame al técnico de cronometraje.",
  ],
  [
    /^The disk fails: nothing new is kept\. Look at it now\. \((.*)\)$/,
    "El disco falla: no se guarda nada nuevo. Revíselo ahora. ($1)",
  ],
  [
    /^The broker at (\S+) is not there: (.*)$/,
    "El intermediario en $1 no está: $2",
  ],
  [
    /^The link to the broker at (\S+) ended: (.*)$/,
    "El enlace con el intermediario en $1 terminó: $2",
  ],
  [
    /^The broker at (\S+) has not been reached yet\.$/,
    "Aún no se alcanza el intermediario en $1.",
  ],
  [
    /^The pins of this board, field unit (\S+), cannot be used; .*$/,
    "Los pines de esta placa, unidad de campo $1, no se pueden usar; lo demás sigue.",
  ],
];

/** Why a calibration ended, as the alarm says it. */
const ENDED = {
  "The unit restarted.": "La unidad se reinició.",
  "The unit is at another access point.": "La unidad está en otro punto de acceso.",
  "The unit speaks another version of the contract.": "La unidad habla otra versión del contrato.",
  "The gateway's clock was interrupted.": "El reloj de la central se interrumpió.",
};
for (const [english, spanish] of Object.entries(ENDED)) {
  PATTERNS.push([
    new RegExp(`^Calibration of (\\S+), (\\S+) ended\\. ${english.replaceAll(".", "\\.")}$`),
    `La calibración de $1, $2 terminó. ${spanish}`,
  ]);
}

/** The sentence in Spanish, or null. Whom and where it is about, as in "fu-08: …" or "17 drag: …", is kept. */
export function inSpanish(sentence) {
  const [, place = "", words] = /^((?:\d+ ?)?(?:[a-z][a-z0-9-]*)?: )?(.*)$/s.exec(sentence);
  if (Object.hasOwn(SENTENCES, words)) return place + SENTENCES[words];
  const found = PATTERNS.find(([pattern]) => pattern.test(words));
  return found ? place + words.replace(...found) : null;
}
