/** The shop's mark: what may be one, and the pictures of it that devices ask for. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { shopFolder } from '../../schemas/places.ts';

const mostBytes = 200_000;
const leastPixels = 192;

/** What is wrong with the file, or nothing: found and wanted. */
export function markProblem(name: string, bytes: Uint8Array): { got: string; allowed: string } | undefined {
  if (bytes.length > mostBytes)
    return {
      got: `${Math.ceil(bytes.length / 1000)} kB`,
      allowed: `at most ${mostBytes / 1000} kB: every page shows it`,
    };
  if (name.endsWith('.png')) {
    const file = Buffer.from(bytes);
    if (file.subarray(1, 4).toString('latin1') !== 'PNG' || file.length < 24)
      return {
        got: `${name}, which is no PNG picture`,
        allowed: 'a picture saved as .png, or a drawing saved as .svg',
      };
    const [width, height] = [file.readUInt32BE(16), file.readUInt32BE(20)];
    return Math.min(width, height) < leastPixels
      ? { got: `${width} x ${height} pixels`, allowed: `at least ${leastPixels} each way, better 512` }
      : undefined;
  }
  const text = Buffer.from(bytes).toString('utf8');
  if (!/<svg\b/.test(text)) return { got: `${name}, which is no SVG drawing`, allowed: 'a drawing saved as .svg' };
  if (!/<svg\b[^>]*\bviewBox=/.test(text))
    return {
      got: `${name} without a viewBox`,
      allowed: 'a viewBox in its first tag, so that it can be drawn at any size',
    };
  if (/<script\b|\son\w+\s*=|<foreignObject\b/i.test(text))
    return { got: `${name}, which holds a script or a page`, allowed: 'a drawing alone: shapes, no script' };
  if (/(?:href|src)\s*=\s*["']\s*(?!#|data:)|url\(\s*["']?(?!#|data:)/i.test(text))
    return { got: `${name}, which loads something from elsewhere`, allowed: 'a drawing that holds all it shows' };
  if (/<text\b/.test(text))
    return {
      got: `${name} with letters as text`,
      allowed: 'letters turned into outlines: no two machines have the same faces',
    };
  return undefined;
}

/** The drawing as it goes out: the shop's, or the almanac's own. A PNG is put into a drawing, so that there is one name. */
export async function markDrawing(projectFolder: string, mark: string | undefined): Promise<string> {
  const own = mark === undefined ? undefined : join(projectFolder, shopFolder, mark);
  if (own === undefined || !existsSync(own)) return readFileSync(join(projectFolder, 'public/mark.svg'), 'utf8');
  if (own.endsWith('.svg')) return readFileSync(own, 'utf8');
  const { default: sharp } = await import('sharp');
  const { data, info } = await sharp(own)
    .resize(512, 512, { fit: 'inside', withoutEnlargement: true })
    .png({ palette: true })
    .toBuffer({ resolveWithObject: true });
  const size = `width="${info.width}" height="${info.height}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${info.width} ${info.height}"><image ${size} href="data:image/png;base64,${data.toString('base64')}"/></svg>`;
}

/** Every file of the site that shows the mark, by name. */
export async function markFiles(
  projectFolder: string,
  mark: string | undefined,
  ground: string,
): Promise<ReadonlyMap<string, Buffer>> {
  const drawing = Buffer.from(await markDrawing(projectFolder, mark));
  const { default: sharp } = await import('sharp');
  // A shop's own mark stands on the page's ground with a rim, since devices cut icons round; ours is drawn to the edge.
  const draw = async (size: number) => {
    const rim = mark === undefined ? 0 : Math.round(size * 0.1);
    const inner = size - 2 * rim;
    const picture = await sharp(drawing, { density: 72 * 8, limitInputPixels: 40_000_000 })
      .resize(inner, inner, { fit: 'contain', background: ground })
      .toBuffer();
    return sharp(picture)
      .extend({ top: rim, bottom: rim, left: rim, right: rim, background: ground })
      .flatten({ background: ground })
      .png({ compressionLevel: 9, palette: true })
      .toBuffer();
  };
  return new Map([
    ['mark.svg', drawing],
    ['mark-192.png', await draw(192)],
    ['mark-512.png', await draw(512)],
    ['apple-touch-icon.png', await draw(180)],
  ]);
}
