/** Opens the microphone and hands over stretches of sound. Nothing is kept, stored or sent: each stretch is read and forgotten. */
export type Refused = 'no-microphone-here' | 'not-allowed' | 'none-found' | 'in-use';

export interface Microphone {
  /** Samples each second. */
  readonly rate: number;
  /** The newest stretch of sound; the same array is filled again at every call. */
  readonly read: () => Float32Array;
  readonly close: () => void;
}

/** 0.34 s at the usual 48 kHz: seven turns of the lowest belt, and a pluck still sounds all through it. */
export const shortStretch = 16384;
/** Twice that, for a slow engine that fires every second turn. */
export const longStretch = 32768;

/** Browsers clean up speech; that cleaning takes a pluck for noise and removes it. */
const raw: MediaTrackConstraints = { echoCancellation: false, noiseSuppression: false, autoGainControl: false };

export async function openMicrophone(stretch: number): Promise<Microphone | Refused> {
  // Missing on plain http, and in some browsers for pages opened from a folder.
  if (typeof AudioContext === 'undefined' || !navigator.mediaDevices?.getUserMedia) return 'no-microphone-here';
  let stream: MediaStream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({ audio: raw, video: false });
  } catch (reason) {
    return refusal(reason);
  }
  try {
    return await attach(stream, stretch);
  } catch {
    stopTracks(stream);
    return 'in-use';
  }
}

async function attach(stream: MediaStream, stretch: number): Promise<Microphone> {
  const context = new AudioContext();
  // Phones start a context asleep even after a press.
  if (context.state === 'suspended') await context.resume();
  const ear = context.createAnalyser();
  ear.fftSize = stretch;
  // Not joined to the loudspeaker: it would howl.
  context.createMediaStreamSource(stream).connect(ear);
  const samples = new Float32Array(stretch);
  return {
    rate: context.sampleRate,
    read: () => {
      ear.getFloatTimeDomainData(samples);
      return samples;
    },
    close: () => {
      stopTracks(stream);
      void context.close();
    },
  };
}

function stopTracks(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}

function refusal(reason: unknown): Refused {
  const name = reason instanceof DOMException ? reason.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'not-allowed';
  return name === 'NotFoundError' || name === 'OverconstrainedError' ? 'none-found' : 'in-use';
}
