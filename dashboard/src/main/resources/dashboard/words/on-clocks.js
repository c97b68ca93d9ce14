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
    "Its counter jumped without a restart: {faults} times, last {ago} ago. Marks beside a jump cover both" +
      " sides of it. If it happens again, change the unit.",
    "Su contador saltó sin reinicio: {faults} veces, la última hace {ago}. Las marcas junto a un salto cubren" +
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
  "bench.loss": ["exchanges lost", "intercambios perdidos"],
  "bench.lost": ["{lost} of {asked}", "{lost} de {asked}"],
};
