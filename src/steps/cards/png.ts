/** A picture of few colors as PNG (W3C Recommendation, third edition): four bits a pixel, one palette, no filter. */
import { crc32, deflateSync } from 'node:zlib';

/** @param pixels one palette place (0 to 15) a byte, row by row @param palette up to sixteen colors, "#rrggbb" */
export function png(pixels: Uint8Array, width: number, palette: readonly string[]): Buffer {
  const height = pixels.length / width;
  const raw = Buffer.alloc((Math.ceil(width / 2) + 1) * height);
  let at = 0;
  for (let y = 0; y < height; y += 1) {
    at += 1;
    const end = (y + 1) * width;
    // Two pixels a byte; the last of an odd row stands alone.
    for (let x = y * width; x < end; x += 2)
      raw[at++] = ((pixels[x] ?? 0) << 4) | (x + 1 < end ? (pixels[x + 1] ?? 0) : 0);
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([4, 3, 0, 0, 0], 8);
  const colors = Buffer.from(palette.map((color) => color.slice(1)).join(''), 'hex');
  return Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    chunk('IHDR', head),
    chunk('PLTE', colors),
    chunk('IDAT', deflateSync(raw, { level: 4 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(name: string, body: Buffer): Buffer {
  const inside = Buffer.concat([Buffer.from(name, 'latin1'), body]);
  const around = Buffer.alloc(8);
  around.writeUInt32BE(body.length, 0);
  around.writeUInt32BE(crc32(inside), 4);
  return Buffer.concat([around.subarray(0, 4), inside, around.subarray(4)]);
}
