/** A square code in a page's markup as pixels, for a decoder. */

/** Pixels to a square of the code; a decoder wants a few. */
const scale = 4;

export function pixelsOf(svg: string): { readonly pixels: Uint8ClampedArray; readonly width: number } {
  const [, size = '0', path = ''] = /viewBox="0 0 (\d+) \d+"[^>]*>\s*<path d="([^"]+)"/.exec(svg) ?? [];
  const width = Number(size) * scale;
  const pixels = new Uint8ClampedArray(width * width * 4).fill(255);
  for (const [, x, y] of path.matchAll(/M(\d+) (\d+)h1v1h-1z/g))
    for (let row = 0; row < scale; row++)
      for (let column = 0; column < scale; column++) {
        const at = ((Number(y) * scale + row) * width + Number(x) * scale + column) * 4;
        pixels.fill(0, at, at + 3);
      }
  return { pixels, width };
}
