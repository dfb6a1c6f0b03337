/** Listening to a plucked belt. */
export const listen = {
  listen: 'Listen to the belt',
  stop: 'Stop listening',
  use: (hz: string) => `Use ${hz} Hz`,
  promise: 'This device listens only while you see this. Nothing is recorded and nothing is sent.',
  asking: 'Allow the microphone when the browser asks.',
  how: 'Engine off and cold, plug lead off. Hold the microphone a hand’s width from the middle of the span and pluck.',
  waiting: 'Listening. Pluck the span.',
  last: 'Last plucks',
  sure: { clear: 'clear', fair: 'not sure: pluck harder, or get closer', poor: 'no clear note' },
  agree: 'The plucks agree.',
  differ: 'The plucks differ. Pluck again until three agree; a note twice as high is the first overtone.',
  refused: {
    'no-microphone-here':
      'This browser gives no microphone to this page. It needs an address that begins with https, and some browsers refuse pages opened from a folder. Read the note with a sound-frequency app and type it in the box.',
    'not-allowed':
      'The microphone was not allowed. Nothing is lost: read the note with a sound-frequency app and type it in the box.',
    'none-found': 'This device has no microphone. Read the note with a phone and type it in the box.',
    'in-use':
      'The microphone did not open; another program may hold it. Read the note with a phone and type it in the box.',
  },
} as const;
