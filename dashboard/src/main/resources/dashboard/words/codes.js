// Words for the gateway's closed lists: refusals, reasons, outcomes. A test compares the keys with
// the lists themselves.
export const codes = {
  "refusal.unknown-device": [
    "This device is not enrolled. Ask the coordinator for a code.",
    "Este equipo no está registrado. Pida un código a coordinación.",
  ],
  "refusal.exchange-unknown": [
    "No clock question with this id is open.",
    "No hay ninguna pregunta de reloj con esta identificación.",
  ],
  "refusal.exchange-used": [
    "This clock question was answered already.",
    "Esta pregunta de reloj ya se respondió.",
  ],
  "refusal.exchange-not-yours": [
    "This clock question was put to another device.",
    "Esta pregunta de reloj era para otro equipo.",
  ],
  "refusal.exchange-late": [
    "This answer to a clock question took too long to say anything.",
    "Esta respuesta de reloj tardó demasiado para servir.",
  ],
  "refusal.not-your-role": ["This role may not do that.", "Este rol no puede hacer eso."],
  "refusal.words-too-long": ["At most 500 characters.", "Como máximo 500 caracteres."],
  "refusal.no-plan": ["No exam plan is loaded.", "No hay plan de examen cargado."],
  "refusal.unknown-number": [
    "No candidate has this number today.",
    "Ningún candidato tiene hoy este número.",
  ],
  "refusal.unknown-station": ["The plan has no such station.", "El plan no tiene esa estación."],
  "refusal.unknown-point": [
    "This station has no such start, checkpoint or finish.",
    "Esta estación no tiene esa salida, control o meta.",
  ],
  "refusal.unknown-criterion": [
    "This station has no such criterion.",
    "Esta estación no tiene ese criterio.",
  ],
  "refusal.advice-only": [
    "This is advice. It is never held against anyone.",
    "Esto es un consejo. No se tiene en cuenta contra nadie.",
  ],
  "refusal.no-such-proctor": [
    "No proctor's tablet has this id.",
    "Ninguna tableta de evaluador tiene esta identificación.",
  ],
  "refusal.unknown-unit": ["The plan has no such field unit.", "El plan no tiene esa unidad."],
  "refusal.not-your-candidate": [
    "Another proctor is with this candidate.",
    "Otro evaluador está con este candidato.",
  ],
  "refusal.stopped": [
    "The course is stopped. Only the safety officer restarts it.",
    "El recorrido está detenido. Solo seguridad lo reanuda.",
  ],
  "refusal.course-held": ["New releases are on hold.", "Las salidas están en pausa."],
  "refusal.not-next": ["Another candidate is next.", "Otro candidato es el siguiente."],
  "refusal.station-not-ready": [
    "The first station is not ready.",
    "La primera estación no está lista.",
  ],
  "refusal.station-held": [
    "A station is held: a sensor is in trouble. Mend it, or go on by hand.",
    "Una estación está retenida: falla un sensor. Arréglelo o siga a mano.",
  ],
  "refusal.station-not-held": [
    "No sensor's trouble holds this station.",
    "Ningún sensor retiene esta estación.",
  ],
  "refusal.proctor-busy": [
    "This proctor is with another candidate.",
    "Este evaluador está con otro candidato.",
  ],
  "refusal.interval-not-over": [
    "The release interval is not over yet.",
    "El intervalo de salida no ha terminado.",
  ],
  "refusal.not-released": [
    "This candidate has not been released.",
    "Este candidato no tiene salida.",
  ],
  "refusal.already-started": [
    "This candidate's clock runs already.",
    "El reloj de este candidato ya corre.",
  ],
  "refusal.not-on-course": [
    "This candidate is not on the course.",
    "Este candidato no está en el recorrido.",
  ],
  "refusal.clock-starts-here": [
    "The clock started at this station: only the whole course can be run again.",
    "El reloj empezó en esta estación: solo se puede repetir todo el recorrido.",
  ],
  "refusal.no-such-split": [
    "There is no such split to rule on.",
    "No hay tal parcial por decidir.",
  ],
  "refusal.no-such-edge": [
    "No turn at a station holds this edge.",
    "Ningún turno en una estación contiene este flanco.",
  ],
  "refusal.passage-elsewhere": [
    "The sensor that saw this passage is none of that point's.",
    "El sensor que vio este paso no es de ese punto.",
  ],
  "refusal.no-such-ruling": [
    "There is no such ruling to take back.",
    "No existe esa decisión que retirar.",
  ],
  "refusal.already-ruled": [
    "Someone has ruled on this already.",
    "Alguien ya decidió sobre esto.",
  ],
  "refusal.out-of-date": [
    "This has changed since it was on your screen. Look again.",
    "Esto ha cambiado desde que lo vio. Mire de nuevo.",
  ],
  "refusal.no-words": ["Say why, in words.", "Diga por qué, con palabras."],
  "refusal.guards-impossible": [
    "These values are outside their limits, or mean nothing with this trigger.",
    "Estos valores están fuera de sus límites o no significan nada con este disparador.",
  ],
  "refusal.station-taken": [
    "Someone is at this station, or on the way to it. Wait until they are through.",
    "Hay alguien en esta estación o de camino a ella. Espere a que termine.",
  ],
  "refusal.no-hand-marks": [
    "There are no taps to take; give the time in full.",
    "No hay toques que tomar; indique el tiempo completo.",
  ],
  "refusal.time-not-plausible": [
    "This time is not possible here.",
    "Este tiempo no es posible aquí.",
  ],
  "refusal.not-in-use": [
    "This station is not waiting to be made ready.",
    "Esta estación no espera ser repuesta.",
  ],
  "refusal.not-home": [
    "A home contact is still open: something is not back in its place.",
    "Un contacto de reposo sigue abierto: algo no está en su sitio.",
  ],
  "refusal.already-held": ["This is on hold already.", "Esto ya está en pausa."],
  "refusal.not-held": ["This is not on hold.", "Esto no está en pausa."],
  "refusal.hold-ends-at-start": [
    "This hold ends when the candidate starts the station again.",
    "Esta pausa acaba cuando el aspirante empieza de nuevo la estación.",
  ],
  "refusal.not-stopped": ["The course is not stopped.", "El recorrido no está detenido."],
  "refusal.stop-button-pressed": [
    "A wired stop button is pressed, or its cable is cut. Go and look.",
    "Un botón de parada está pulsado, o su cable está cortado. Vaya a ver.",
  ],
  "refusal.not-done": ["There is no result to tell yet.", "Aún no hay resultado que comunicar."],
  "refusal.already-told": [
    "The result was told already.",
    "El resultado ya se comunicó.",
  ],
  "refusal.unknown-item": [
    "The plan's start-of-day checklist has no such item.",
    "La lista del inicio del día no tiene ese punto.",
  ],
  "refusal.checklist-open": [
    "The start-of-day checklist has open items: no releases until they are signed.",
    "La lista del inicio del día tiene puntos abiertos: no hay salidas hasta que se firmen.",
  ],
  "refusal.already-signed": [
    "This item of the checklist is signed already.",
    "Este punto de la lista ya está firmado.",
  ],
  "refusal.not-signed": [
    "This item of the checklist is open already.",
    "Este punto de la lista ya está abierto.",
  ],
  "refusal.team-away": [
    "A team that stands by was called away: no new releases until it is back.",
    "Un equipo de guardia se fue por una llamada: no hay salidas hasta que vuelva.",
  ],
  "refusal.already-away": [
    "This team was called away already.",
    "Este equipo ya se fue por una llamada.",
  ],
  "refusal.not-away": ["This team is here already.", "Este equipo ya está aquí."],
  "refusal.heat-holds": [
    "The heat watch is at a level that holds new releases.",
    "La vigilancia del calor está en un nivel sin nuevas salidas.",
  ],
  "refusal.heat-unknown": [
    "The heat level is unknown: acknowledge it, or read by hand.",
    "Se ignora el nivel de calor: acuse recibo o mida a mano.",
  ],
  "refusal.heat-silent": [
    "No heat reading for an hour: no new releases until there is one.",
    "Sin lectura de calor en una hora: no hay salidas hasta que haya una.",
  ],
  "refusal.surface-holds": [
    "What was noted of the ground or the weather holds a station.",
    "Lo anotado del suelo o del tiempo retiene una estación.",
  ],
  "refusal.reading-impossible": [
    "This reading cannot be. Look at the instrument.",
    "Esta lectura no puede ser. Revise el instrumento.",
  ],
  "refusal.already-done": ["This attempt is over.", "Este intento ha terminado."],
  "refusal.not-over": ["This attempt is not over yet.", "Este intento aún no ha terminado."],
  "refusal.unknown-sensor": [
    "This field unit has no such sensor to trip.",
    "Esta unidad no tiene ese sensor para accionar.",
  ],
  "refusal.same-unit": [
    "Choose sensors of two different field units.",
    "Elija sensores de dos unidades distintas.",
  ],
  "refusal.unit-not-ready": [
    "One of these units is not up, or its clock was never compared.",
    "Una de estas unidades no está activa o su reloj nunca se comparó.",
  ],
  "refusal.station-awaits": [
    "Someone is at a station of these units, or has still to come by one.",
    "Alguien está en una estación de estas unidades o aún debe pasar por una.",
  ],
  "refusal.calibrated-in-a-ring": [
    "The first of these is itself calibrated by the second. Swap them.",
    "La primera ya está calibrada por la segunda. Intercámbielas.",
  ],
  "refusal.already-calibrating": [
    "A calibration is under way already.",
    "Ya hay una calibración en curso.",
  ],
  "refusal.not-calibrating": [
    "No calibration is under way.",
    "No hay ninguna calibración en curso.",
  ],
  "refusal.unit-changed": [
    "One of the units is not as it was when this calibration began. Begin again.",
    "Una de las unidades ya no está como al empezar esta calibración. Empiece de nuevo.",
  ],
  "refusal.too-few-trips": [
    "Too few trips count so far: at least 20 are needed.",
    "Aún cuentan pocos accionamientos: hacen falta al menos 20.",
  ],
  "refusal.too-scattered": [
    "The differences scatter too much. Trip both at the very same moment.",
    "Las diferencias varían demasiado. Accione ambos en el mismo instante.",
  ],
  "refusal.still-unsettled": [
    "The clocks' estimates have not settled. Wait some minutes, or trip on.",
    "Las estimaciones aún no se asientan. Espere unos minutos o siga accionando.",
  ],
  "refusal.limits-exclude": [
    "The guaranteed limits do not allow this. Choose the better known unit first.",
    "Los límites garantizados no lo permiten. Elija primero la unidad mejor conocida.",
  ],
  "refusal.proof-run-under-way": [
    "A proof run is under way. Sign it, or give it up.",
    "Hay un recorrido de prueba en curso. Fírmelo o abandónelo.",
  ],
  "refusal.proof-run-missing": [
    "The plan asks for a proof run signed by two before anyone is released.",
    "El plan pide un recorrido de prueba firmado por dos antes de dar salidas.",
  ],
  "refusal.proof-run-not-clear": [
    "Someone is on the course, at this station or on the way. Wait until they are through.",
    "Hay alguien en el recorrido, en esta estación o de camino. Espere a que termine.",
  ],
  "refusal.not-proving": [
    "No proof run of this station is under way.",
    "No hay ningún recorrido de prueba de esta estación en curso.",
  ],
  "refusal.signed-by-you": [
    "Another person signs on another device: you, or this device, signed already.",
    "Firma otra persona en otro aparato: usted, o este aparato, ya firmó.",
  ],
  "refusal.already-enrolled": [
    "This code was used already. Ask the coordinator for another.",
    "Este código ya se usó. Pida otro a coordinación.",
  ],
  "refusal.unknown-code": [
    "This code is not known. Ask the coordinator for another.",
    "Este código no se conoce. Pida otro a coordinación.",
  ],

  "refusal.malformed": ["This request cannot be read.", "Esta petición no se puede leer."],
  "refusal.name-missing": ["Who are you? Enter your name.", "¿Quién es usted? Escriba su nombre."],
  "refusal.name-too-long": [
    "At most 60 characters for the name.",
    "Como máximo 60 caracteres para el nombre.",
  ],
  "refusal.not-public": [
    "This is not public. Ask the coordinator for a code.",
    "Esto no es público. Pida un código a coordinación.",
  ],
  "refusal.wrong-origin": [
    "This request came from another site's page.",
    "Esta petición vino de la página de otro sitio.",
  ],
  "refusal.not-found": [
    "There is nothing at this address.",
    "No hay nada en esta dirección.",
  ],
  "refusal.method-not-here": [
    "This address cannot be used in this way.",
    "Esta dirección no se puede usar así.",
  ],
  "refusal.too-large": ["At most 16 KiB.", "Como máximo 16 KiB."],
  "refusal.not-json": [
    "Send JSON, as application/json.",
    "Envíe JSON, como application/json.",
  ],
  "refusal.wrong-host": [
    "The gateway does not go by this name. Use its number address.",
    "La central no atiende por este nombre. Use su dirección numérica.",
  ],
  "refusal.too-many-tries": [
    "Too many wrong tries. Wait a minute.",
    "Demasiados intentos fallidos. Espere un minuto.",
  ],
  "refusal.trouble-inside": [
    "Something went wrong in the gateway. Nothing was decided by it.",
    "Algo falló en la central. No se decidió nada.",
  ],
  "refusal.busy": ["The gateway is busy. Try again.", "La central está ocupada. Repita."],
  "refusal.no-answer": [
    "The gateway has not answered in time. Do it again.",
    "La central no respondió a tiempo. Repita.",
  ],
  "refusal.too-many-streams": [
    "Too many screens are connected. Close one and try again.",
    "Hay demasiadas pantallas conectadas. Cierre una y repita.",
  ],
  "refusal.journal-trouble": [
    "The journal cannot be written.",
    "No se puede escribir el diario.",
  ],
  "refusal.only-collected": [
    "The rules have failed: this is kept, but nothing follows. Go on by hand.",
    "Las reglas fallaron: esto se guarda, pero nada sigue. Continúe a mano.",
  ],

  "reason.sensor-failed": ["sensor failed", "falló el sensor"],
  "reason.sensor-tripped-by-other": [
    "someone or something else tripped the sensor",
    "otra persona o cosa activó el sensor",
  ],
  "reason.required-act-not-done": [
    "a required act was not done",
    "no se hizo un acto obligatorio",
  ],
  "reason.station-not-ready": ["station not ready", "estación no lista"],
  "reason.equipment-fault": ["equipment fault", "fallo del equipo"],
  "reason.weather": ["weather", "tiempo atmosférico"],
  "reason.medical": ["medical", "médico"],
  "reason.staffing": ["staffing", "falta de personal"],
  "reason.course-blocked": ["course blocked", "recorrido bloqueado"],
  "reason.other": ["other", "otro"],

  "outcome.passed": ["passed", "aprobado"],
  "outcome.failed-time": ["failed: time", "no aprobado: tiempo"],
  "outcome.failed-criterion": ["failed: criterion", "no aprobado: criterio"],
  "outcome.undecided": ["undecided: for review", "sin decidir: a revisión"],
  "outcome.withdrawn": ["withdrawn", "retirado"],
  "outcome.medical-stop": ["medical stop", "alto médico"],
  "outcome.safety-stop": ["safety stop", "alto de seguridad"],
  "outcome.disqualified": ["disqualified: conduct", "descalificado: conducta"],
  "outcome.void-re-run": ["void, re-run", "anulado, se repite"],
  "outcome.no-show": ["did not come", "no vino"],
  "outcome.not-admitted": ["not admitted", "no admitido"],
  "outcome.deferred": ["deferred", "aplazado"],
};
