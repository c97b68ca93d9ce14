// Sounds and vibration as answers to a press. Browsers keep sound locked until a tap, so it is
// "off" until someone arms it; nothing important is told by sound alone.
let audio = null;

const TUNES = {
  taken: [[880, 0.08]],
  kept: [[660, 0.08], [440, 0.12]],
  refused: [[220, 0.16], [180, 0.24]],
  alarm: [[700, 0.2], [500, 0.2], [700, 0.2], [500, 0.2]],
};
const SHAKES = {
  taken: [60],
  kept: [60, 60, 60],
  refused: [120, 80, 120],
  alarm: [300, 100, 300, 100, 300],
};

export function isArmed() {
  return audio?.state === "running";
}

/** Must be called from within a tap. */
export async function arm() {
  try {
    audio ??= new AudioContext();
    await audio.resume();
    play("taken");
  } catch {
    audio = null;
  }
}

export function play(name) {
  navigator.vibrate?.(SHAKES[name]);
  if (!isArmed()) return;
  let at = audio.currentTime;
  for (const [hertz, seconds] of TUNES[name]) {
    tone(hertz, at, seconds);
    at += seconds;
  }
}

function tone(hertz, at, seconds) {
  const source = audio.createOscillator();
  const loudness = audio.createGain();
  source.type = "square";
  source.frequency.value = hertz;
  // A short ramp at both ends keeps the loudspeaker from clicking.
  loudness.gain.setValueAtTime(0, at);
  loudness.gain.linearRampToValueAtTime(0.25, at + 0.01);
  loudness.gain.linearRampToValueAtTime(0, at + seconds);
  source.connect(loudness).connect(audio.destination);
  source.start(at);
  source.stop(at + seconds);
}
