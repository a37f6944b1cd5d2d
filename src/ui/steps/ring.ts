let context: AudioContext | null = null;

/** Makes sound possible: a browser gives it only in answer to a press. Where there is none, timers ring without it. */
export function allowSound(): void {
  if (typeof AudioContext !== 'function') return;
  context ??= new AudioContext();
  void context.resume().catch(() => undefined);
}

/** Three short tones, loud and soft in turn. */
const loudness = [0, 1, 1, 0, 0, 1, 1, 0, 0, 1, 1, 0].map((on) => on && 0.4);
const seconds = 1.2;
const pitch = 880;

/** Rings once, where a press has allowed it. */
export function ring(): void {
  if (context === null || context.state !== 'running') return;
  const tone = new OscillatorNode(context, { frequency: pitch });
  const volume = new GainNode(context, { gain: 0 });
  volume.gain.setValueCurveAtTime(loudness, context.currentTime, seconds);
  tone.connect(volume).connect(context.destination);
  tone.start();
  // The curve ends in silence; the tone behind it is let go a moment later.
  setTimeout(() => {
    tone.stop();
    tone.disconnect();
    volume.disconnect();
  }, 2000);
}
