/** Three short tones. A browser lets a page sound only after a tap, which is when a bell is made. */
export interface Bell {
  ring(): void;
  stop(): void;
}

/** In hertz: one that a hiss of leaf does not cover. */
const pitch = 880;

export function startBell(): Bell {
  const audio = new AudioContext();
  void audio.resume();
  return {
    ring() {
      void audio.resume();
      for (const after of [0, 0.35, 0.7]) tone(audio, audio.currentTime + after);
    },
    stop: () => void audio.close(),
  };
}

function tone(audio: AudioContext, at: number): void {
  const source = audio.createOscillator();
  const volume = audio.createGain();
  source.frequency.value = pitch;
  volume.gain.setValueAtTime(0, at);
  volume.gain.linearRampToValueAtTime(0.6, at + 0.02);
  volume.gain.setValueAtTime(0.6, at + 0.2);
  volume.gain.linearRampToValueAtTime(0, at + 0.25);
  source.connect(volume).connect(audio.destination);
  source.start(at);
  source.stop(at + 0.25);
}
