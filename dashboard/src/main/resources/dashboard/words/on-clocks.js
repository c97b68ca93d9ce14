// What the bench says of a unit's clock: one sentence for each trouble the gateway names, and what
// to do about it.
export const onClocks = {
  "clock-trouble.no-bound-yet": [
    "No bound yet: its clock has not been compared since it started. Its edges wait for the first exchange.",
    "Aún sin límites: su reloj no se ha comparado desde que arrancó. Sus flancos esperan el primer intercambio.",
  ],
  "clock-trouble.edges-wait": [
    "Edges without a place in time yet, waiting for the first exchange: {waiting}.",
    "Flancos aún sin lugar en el tiempo, a la espera del primer intercambio: {waiting}.",
  ],
  "clock-trouble.bound-too-wide": [
    "Its clock is known to {width} ms only, which is wider than the plan allows. Bring the unit nearer to the" +
      " access point, or wait for the next exchanges; until then marks carry the wide interval.",
    "Su reloj se conoce solo con {width} ms, más de lo que permite el plan. Acerque la unidad al punto de" +
      " acceso, o espere los próximos intercambios; hasta entonces las marcas llevan el intervalo ancho.",
  ],
  "clock-trouble.rate-too-far": [
    "Its clock runs {rate} ppm off, as no sound crystal does: change the unit. Its intervals allow for it.",
    "Su reloj se desvía {rate} ppm, como ningún cristal sano: cambie la unidad. Sus intervalos lo tienen en cuenta.",
  ],
  "clock-trouble.jumped": [
    "Its counter jumped without a restart. Jumps: {faults}, the last {ago} ago. Marks beside a jump cover both" +
      " sides of it. If it happens again, change the unit.",
    "Su contador saltó sin reinicio. Saltos: {faults}, el último hace {ago}. Las marcas junto a un salto cubren" +
      " ambos lados. Si se repite, cambie la unidad.",
  ],
  "clock-trouble.not-answering": [
    "It is up, but has not answered for {age}. Look at its Wi-Fi, or restart it.",
    "Está activa, pero no responde desde hace {age}. Revise su Wi-Fi o reiníciela.",
  ],
  "clock-trouble.many-lost": [
    "Many questions stay unanswered: {lost} of the last {asked}. Bring the unit nearer to the access point.",
    "Muchas preguntas quedan sin respuesta: {lost} de las últimas {asked}. Acerque la unidad al punto de acceso.",
  ],
  "clock-trouble.backwards": [
    "Answers whose ticks ran backwards, not used: {backwards}. If it goes on, restart the unit.",
    "Respuestas con el contador hacia atrás, sin usar: {backwards}. Si sigue, reinicie la unidad.",
  ],
  "clock-trouble.impossible": [
    "Answers no clock can give, received before they were sent, not used: {impossible}.",
    "Respuestas imposibles, recibidas antes de enviarse, sin usar: {impossible}.",
  ],
  "clock-trouble.answered-twice": [
    "Questions answered a second time; only the first answer counts: {again}.",
    "Preguntas respondidas por segunda vez; solo cuenta la primera respuesta: {again}.",
  ],
  "clock-trouble.unasked": [
    "Answers to questions nobody asked, not used: {unknown}.",
    "Respuestas a preguntas que nadie hizo, sin usar: {unknown}.",
  ],
  "clock-trouble.late": [
    "Answers that took longer than 2 s, not used: {late}.",
    "Respuestas que tardaron más de 2 s, sin usar: {late}.",
  ],
  "clock-trouble.other-boot": [
    "Answers from another start of the unit than the present one: {otherBoot}. They say nothing of its present clock.",
    "Respuestas de otro arranque de la unidad: {otherBoot}. No dicen nada de su reloj actual.",
  ],
  "bench.clocks-to-look-at": ["Clocks to look at:", "Relojes por revisar:"],
  "bench.loss": ["exchanges lost", "intercambios perdidos"],
  "bench.lost": ["{lost} of {asked}", "{lost} de {asked}"],
  "plot.open": ["Show the clock of {unit}", "Mostrar el reloj de {unit}"],
  "plot.close": ["Close the clock of {unit}", "Cerrar el reloj de {unit}"],
  "plot.asking": ["Asking for the picture …", "Pidiendo la imagen …"],
  "plot.failed": [
    "The picture could not be had; it is asked for again.",
    "No se pudo obtener la imagen; se pide de nuevo.",
  ],
  "plot.nothing": [
    "Nothing to draw yet: no exchange, so no bound.",
    "Aún nada que dibujar: sin intercambios no hay límites.",
  ],
  "plot.drawn": ["Drawn {age} ago.", "Dibujado hace {age}."],
  "plot.legs": ["Legs around the fitted clock", "Tramos en torno al reloj ajustado"],
  "plot.up": ["unit to gateway", "de la unidad a la pasarela"],
  "plot.down": ["gateway to unit", "de la pasarela a la unidad"],
  "plot.band": ["the clock's limits", "límites del reloj"],
  "plot.ago": ["{seconds} s ago", "hace {seconds} s"],
  "plot.now": ["now", "ahora"],
  "plot.says": [
    "{count} exchanges. A stamp made now lies within {lower} to {upper} ms of the fitted clock. The quickest" +
      " message to the unit lies {down} ms from it, the quickest from the unit {up} ms.",
    "{count} intercambios. Una marca de ahora cae entre {lower} y {upper} ms del reloj ajustado. El mensaje más" +
      " rápido hacia la unidad está a {down} ms de él; el más rápido desde ella, a {up} ms.",
  ],
  "plot.no-legs": [
    "No exchange in this span. A stamp made now lies within {lower} to {upper} ms of the fitted clock.",
    "Sin intercambios en este lapso. Una marca de ahora cae entre {lower} y {upper} ms del reloj ajustado.",
  ],
  "plot.beyond": [
    "Messages delayed beyond the picture, drawn at its edge: {count}.",
    "Mensajes con más retraso del que cabe, dibujados en el borde: {count}.",
  ],
  "plot.steadiness": ["Allan deviation", "Desviación de Allan"],
  "plot.steadiness-how": [
    "How far the rate differs from one span to the next, by the span in seconds. It falls while the network" +
      " is the noise, and stops falling where the crystal itself wanders.",
    "Cuánto difiere la marcha de un lapso al siguiente, según el lapso en segundos. Baja mientras el ruido es" +
      " de la red, y deja de bajar donde varía el propio cristal.",
  ],
  "plot.not-steady-yet": [
    "Allan deviation: from about four minutes of exchanges on.",
    "Desviación de Allan: a partir de unos cuatro minutos de intercambios.",
  ],
  "plot.over": ["span", "lapso"],
  "plot.deviation": ["deviation", "desviación"],
  "plot.table": ["The {count} exchanges as a table", "Los {count} intercambios en una tabla"],
  "plot.age": ["age", "edad"],
  "plot.down-short": ["to the unit", "hacia la unidad"],
  "plot.up-short": ["from the unit", "desde la unidad"],
};
