/** A sound as a file that Chromium plays in place of a microphone: one channel, 16 bits. */
export function waveFile(samples: ArrayLike<number>, rate: number): Buffer {
  const file = Buffer.alloc(44 + samples.length * 2);
  file.write('RIFF', 0);
  file.writeUInt32LE(36 + samples.length * 2, 4);
  file.write('WAVEfmt ', 8);
  file.writeUInt32LE(16, 16);
  file.writeUInt16LE(1, 20);
  file.writeUInt16LE(1, 22);
  file.writeUInt32LE(rate, 24);
  file.writeUInt32LE(rate * 2, 28);
  file.writeUInt16LE(2, 32);
  file.writeUInt16LE(16, 34);
  file.write('data', 36);
  file.writeUInt32LE(samples.length * 2, 40);
  for (let i = 0; i < samples.length; i += 1)
    file.writeInt16LE(Math.max(-32768, Math.min(32767, Math.round(32767 * (samples[i] ?? 0)))), 44 + i * 2);
  return file;
}

/** What Chromium is started with to hear that file. */
export function hearing(file: string): string[] {
  return [
    '--use-fake-device-for-media-stream',
    '--use-fake-ui-for-media-stream',
    `--use-file-for-fake-audio-capture=${file}`,
  ];
}
