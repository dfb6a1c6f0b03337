/** As root, as in a container, Chromium needs its sandbox off. */
export function asRoot(): string[] {
  return process.getuid?.() === 0 ? ['--no-sandbox'] : [];
}
