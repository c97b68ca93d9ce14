// What the proctor's page says of presses that wait, of what it does not know without the gateway,
// and of presses that were refused while nobody looked.
export const onGap = {
  "gap.name": ["Link to the gateway", "Enlace con la central"],
  "gap.kept": [
    "Kept on this tablet; sent when the link is back.",
    "Guardado en esta tableta; se envía al volver el enlace.",
  ],
  "gap.none-waits": [
    "You go on by the last picture. Nothing waits to be sent.",
    "Sigue con la última imagen. Nada espera envío.",
  ],
  "gap.waits-one": ["1 press waits since {since}.", "1 toque espera desde las {since}."],
  "gap.waits": [
    "{count} presses wait since {since}.",
    "{count} toques esperan desde las {since}.",
  ],
  "gap.unknown": [
    "Not known here: sensors, holds and stops by others, ready stations.",
    "Aquí no se sabe: sensores, pausas y altos de otros, estaciones listas.",
  ],
  "gap.clock-not-compared": [
    "Clock not compared yet: taps have no time.",
    "Reloj sin comparar: toques sin hora.",
  ],
  "gap.not-durable": [
    "This browser keeps nothing: presses that wait are lost with the page.",
    "Este navegador no guarda nada: los toques en espera se pierden con la página.",
  ],
  "gap.full": [
    "NOT TAKEN: {max} presses wait already. Write it on paper.",
    "NO ANOTADO: ya esperan {max} toques. Escríbalo en papel.",
  ],
  "gap.through": [
    "By your presses the course is done.",
    "Según sus toques, el recorrido ha terminado.",
  ],
  "gap.gone": ["By your press the candidate withdrew.", "Según su toque, el candidato se retiró."],
  "gap.through-how": [
    "Splits and result show when the link is back. Stay with the candidate.",
    "Parciales y resultado aparecen al volver el enlace. Quédese con el candidato.",
  ],
  "gap.start-by-voice": ["give it by voice, tap as it begins", "déla de voz, toque al empezar"],
  "gap.finish": ["tap as it ends; start not known", "toque al terminar; salida desconocida"],

  "gap.refused-one": ["1 of your presses was not taken. Look.", "1 de sus toques no se aceptó. Mire."],
  "gap.refused": [
    "{count} of your presses were not taken. Look.",
    "{count} de sus toques no se aceptaron. Mire.",
  ],
  "gap.refused-title": ["Not taken: both sides", "No aceptado: ambos lados"],
  "gap.mine": ["What you pressed", "Lo que usted pulsó"],
  "gap.stands": ["What stands", "Lo que vale"],
  "gap.ruled-by": ["{what}, by {person}, {role}, {at}", "{what}, por {person}, {role}, {at}"],
  "gap.number": ["number {number}", "número {number}"],
  "gap.at": ["at {at} by this tablet", "a las {at} según esta tableta"],
  "gap.undated": [
    "No time for {count}: this page was opened anew before its clock was compared.",
    "Sin hora para {count}: la página se abrió de nuevo antes de comparar su reloj.",
  ],
  "gap.split-now": ["Now: {state}, {time}.", "Ahora: {state}, {time}."],
  "gap.noted": ["I have taken note", "He tomado nota"],

  "did.tap": ["{thing}, {station}", "{thing}, {station}"],
  "did.tap-start": ["Start tap, {station}", "Toque de salida, {station}"],
  "did.tap-finish": ["Finish tap, {station}", "Toque de meta, {station}"],
  "did.call-warning": ["Warning: {thing}, {station}", "Aviso: {thing}, {station}"],
  "did.call-fault": ["Fault: {thing}, {station}", "Falta: {thing}, {station}"],
  "did.confirm": ["Split confirmed, {station}", "Parcial confirmado, {station}"],
  "did.choose-reading": ["Reading chosen, {station}", "Lectura elegida, {station}"],
  "did.void-split": ["Split made void, {station}", "Parcial anulado, {station}"],
  "did.hand-time": ["Hand time, {station}", "Tiempo manual, {station}"],
  "did.strike": ["Passage struck, {station}", "Paso tachado, {station}"],
  "did.assign": ["Passage assigned, {station}", "Paso asignado, {station}"],
  "did.add-mark": ["Mark added, {station}", "Marca añadida, {station}"],
  "did.withdraw-ruling": ["Ruling taken back, {station}", "Decisión retirada, {station}"],
  "did.equipment-fault": ["Equipment fault, {station}", "Fallo del equipo, {station}"],
  "did.hold-candidate": ["Candidate on hold", "Candidato en pausa"],
  "did.resume-candidate": ["Candidate goes on", "El candidato sigue"],
  "did.withdraw": ["Candidate withdraws", "El candidato se retira"],
  "did.tell": ["Result told", "Resultado comunicado"],
  "did.note": ["Note", "Nota"],

  "installed.asked": [
    "Being made ready to open without the gateway …",
    "Preparando la página para abrir sin la central …",
  ],
  "installed.ready": [
    "This page also opens without the gateway.",
    "Esta página también abre sin la central.",
  ],
  "installed.insecure": [
    "This page is served unencrypted: it does not open without the gateway. Do not reload it in a gap.",
    "Esta página se sirve sin cifrar: no abre sin la central. No la recargue sin enlace.",
  ],
  "installed.failed": [
    "This page could not be kept: it does not open without the gateway.",
    "No se pudo guardar la página: no abre sin la central.",
  ],
  "installed.newer": [
    "A newer page is there; it opens by itself when nobody is with you.",
    "Hay una página más nueva; abre sola cuando no tenga candidato.",
  ],
};
