// What stands on the safety officer's page alone.
export const onWatch = {
  "watch.unknown-was": ["unknown (was {was})", "se ignora (era {was})"],
  "watch.index": [
    "Heat index {index}\u00a0°F, up to {more}\u00a0°F more by the instruments' tolerance",
    "Índice de calor {index}\u00a0°F, hasta {more}\u00a0°F más por la tolerancia de los instrumentos",
  ],
  "watch.wbgt": [
    "WBGT {wbgt}\u00a0°C, between {low} and {high}\u00a0°C",
    "WBGT {wbgt}\u00a0°C, entre {low} y {high}\u00a0°C",
  ],
  "watch.air-now": [
    "Air {air}\u00a0°C, humidity {humid}\u00a0%,",
    "Aire {air}\u00a0°C, humedad {humid}\u00a0%,",
  ],
  "watch.age": ["{age}\u00a0min old.", "hace {age}\u00a0min."],
  "watch.method": ["WBGT by: {method}.", "WBGT según: {method}."],
  "watch.by": ["Read by hand: {by}.", "Medido a mano: {by}."],
  "watch.ageing": ["The next reading is due.", "Toca la siguiente lectura."],
  "watch.unknown": [
    "The reading is too old: the level is unknown. Read by hand, or look at the sensor.",
    "La lectura es demasiado vieja: se ignora el nivel. Mida a mano o revise el sensor.",
  ],
  "watch.silent": [
    "No reading for an hour: no new releases until there is one.",
    "Sin lectura en una hora: no hay nuevas salidas hasta que haya una.",
  ],
  "watch.to-be-confirmed": [
    "It rose steeply: a second reading within five minutes confirms it.",
    "Subió de golpe: una segunda lectura en cinco minutos lo confirma.",
  ],
  "watch.hand-reading-asked": [
    "It rose steeply and nothing confirmed it: take a reading by hand.",
    "Subió de golpe y nada lo confirmó: mida a mano.",
  ],
  "watch.dew-point": [
    "The dew point is higher than air can hardly be: look at the humidity sensor.",
    "El punto de rocío es casi imposible: revise el sensor de humedad.",
  ],
  "watch.stuck": [
    "Ten times the very same values: the sensor is likely stuck.",
    "Diez veces los mismos valores: el sensor parece bloqueado.",
  ],
  "watch.in-the-sun": [
    "The sensor is likely in the sun: shade it.",
    "El sensor parece estar al sol: póngalo a la sombra.",
  ],
  "watch.lightning-over": [
    "Thunder or lightning: no new releases for {minutes} min more, longer with each.",
    "Truenos o rayos: sin nuevas salidas {minutes} min más, y más con cada uno.",
  ],
  "watch.reason-heat-index": [
    "Level {level}: heat index {value} °F, bound {bound} °F",
    "Nivel {level}: índice de calor {value} °F, límite {bound} °F",
  ],
  "watch.reason-wbgt": [
    "Level {level}: WBGT {value} °C, bound {bound} °C",
    "Nivel {level}: WBGT {value} °C, límite {bound} °C",
  ],
  "watch.reason-wind-chill": [
    "Level {level}: wind chill {value} °F, bound {bound} °F",
    "Nivel {level}: sensación térmica {value} °F, límite {bound} °F",
  ],
  "watch.reason-gust-at-climbs": [
    "Level {level} at climbs: gust {value} m/s, bound {bound} m/s",
    "Nivel {level} en las subidas: racha {value} m/s, límite {bound} m/s",
  ],
  "watch.reason-gust-over-plate": [
    "Level {level}: gust {value} m/s, over the aerial's plate of {bound} m/s",
    "Nivel {level}: racha {value} m/s, sobre la placa de la escalera de {bound} m/s",
  ],
  "watch.reason-lightning": [
    "Level {level}: thunder or lightning",
    "Nivel {level}: truenos o rayos",
  ],
  "watch.likely": [
    "By the trend {level} is likely about {at}. Advice only.",
    "Según la tendencia, {level} es probable hacia las {at}. Solo es un consejo.",
  ],
  "watch.acknowledge": ["I have seen this", "Lo he visto"],
  "watch.seen-by": ["Seen by {person}.", "Visto por {person}."],
  "watch.defer": [
    "This advises. Local codes, medical direction and the people present decide: watch people.",
    "Esto aconseja. Deciden las normas locales, la dirección médica y los presentes: mire a la gente.",
  ],
  "watch.signed": ["Bounds {version}, signed by {by}.", "Límites {version}, firmados por {by}."],
  "watch.unsigned": [
    "Bounds {version}: the plan names nobody who signed them.",
    "Límites {version}: el plan no nombra a nadie que los firmara.",
  ],
  "watch.no-turnout": [
    "What turnout gear adds is not set: the medical director enters it.",
    "Falta lo que añade el traje: lo indica la dirección médica.",
  ],
  "watch.no-plate": [
    "The aerial's wind limit is not set: it stands on its plate.",
    "Falta el límite de viento de la escalera: está en su placa.",
  ],
  "watch.tell": ["What you see", "Lo que ve"],
  "watch.lightning": ["Thunder or lightning", "Truenos o rayos"],
  "watch.lightning-title": ["Thunder heard or lightning seen?", "¿Oyó truenos o vio rayos?"],
  "watch.lightning-what": [
    "No new releases for 30 minutes after the last one. It stops nobody: use stop for those outside.",
    "Sin nuevas salidas hasta 30 minutos después del último. No detiene a nadie: use el alto para quienes están fuera.",
  ],
  "watch.lightning-do": ["Hold releases", "Parar salidas"],
  "watch.hand": ["Reading by hand", "Lectura a mano"],
  "watch.hand-title": ["A reading by hand, now", "Una lectura a mano, ahora"],
  "watch.air": ["Air, °C", "Aire, °C"],
  "watch.humid": ["Relative humidity, %", "Humedad relativa, %"],
  "watch.globe": ["Black globe, °C (if you have one)", "Globo negro, °C (si lo hay)"],
  "watch.tool": ["Instrument", "Instrumento"],
  "watch.hand-wrong": [
    "Air and humidity as numbers, and the instrument's name.",
    "Aire y humedad en números, y el nombre del instrumento.",
  ],
  "watch.hand-do": ["Write it down", "Anotar"],
  "watch.gust": ["Gust at the climb", "Racha en la subida"],
  "watch.gust-title": ["The strongest gust where people climb", "La racha más fuerte donde se sube"],
  "watch.gust-value": ["Gust, m/s", "Racha, m/s"],
  "watch.gust-wrong": ["A gust in m/s, as 7.5.", "Una racha en m/s, como 7,5."],
  "watch.moving": ["Out now", "Fuera ahora"],
  "watch.moving-asked": [
    "A team is away. For each: let finish, or stop.",
    "Falta un equipo. Para cada uno: deje terminar o detenga.",
  ],
  "watch.let-finish": ["Let finish", "Dejar terminar"],
  "watch.stop-one": ["Stop", "Detener"],
  "watch.stop-sent": [
    "Number {number} is stopped on record. Say so by voice or radio.",
    "El número {number} consta como detenido. Dígalo de voz o por radio.",
  ],
  "watch.stop-unsent": [
    "NOT SENT. Stop number {number} by whistle, voice or radio now.",
    "NO ENVIADO. Detenga al número {number} con silbato, voz o radio ya.",
  ],
  "watch.exposure": ["{minutes} min of the last hour", "{minutes} min de la última hora"],
  "watch.day": ["The day so far", "El día hasta ahora"],
  "watch.newest": ["newest", "última"],
  "watch.plot": [
    "Heat index, above it its upper end. Levels from: {bounds}. WBGT may raise a level.",
    "Índice de calor; encima, su extremo superior. Niveles desde: {bounds}. El WBGT puede subirlos.",
  ],
  "plot.ago-minutes": ["{minutes} min before", "{minutes} min antes"],
  "watch.emergency": ["Emergency", "Emergencia"],
  "watch.emergency-signs": [
    "Confusion, collapse or odd speech: stop, call, cool first, transport second.",
    "Confusión, desplome o habla rara: alto, llamar, enfriar primero, trasladar después.",
  ],
  "watch.emergency-do": [
    "Medical direction and local protocol go before anything written here.",
    "La dirección médica y el protocolo local van antes que lo escrito aquí.",
  ],
};
