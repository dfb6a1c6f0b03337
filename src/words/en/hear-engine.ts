/** Hearing the speed of a running engine. The short part stands on the page; the rest is fetched with what listens. */
export const engineEar = {
  open: 'Hear it with the microphone',
  missing: 'The part that listens could not be loaded. Nothing is lost: read a tachometer and type the figure.',
} as const;
