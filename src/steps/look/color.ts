/**
 * A shop's one color, made ready for the two grounds: by light it stands as it is; for the dark it is lightened, its hue
 * kept. Contrast after WCAG 2.2, "relative luminance" and "contrast ratio"; hue and lightness in Oklab (Björn Ottosson,
 * "A perceptual color space for image processing", 2020).
 */

type Three = readonly [number, number, number];

export interface Tones {
  readonly action: string;
  /** What is written on it. */
  readonly on: string;
  /** A ground that points something out. */
  readonly wash: string;
}

/** Lightness of what can be pressed in the dark, and the most color it bears there. */
const darkLightness = 0.8;
const darkChroma = 0.11;

/** @param color "#0a5866" @param grounds the page's ground by light and in the dark */
export function tonesOf(color: string, grounds: { light: string; dark: string }): { light: Tones; dark: Tones } {
  const dark = darkened(color);
  return {
    light: { action: color.toLowerCase(), on: '#ffffff', wash: mixed(grounds.light, color, 0.1) },
    dark: { action: dark, on: '#0b1416', wash: mixed(grounds.dark, dark, 0.17) },
  };
}

/** Contrast of two colors, 1 to 21. */
export function contrast(one: string, other: string): number {
  const [less = 0, more = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (more + 0.05) / (less + 0.05);
}

/** How far two colors look apart: 0 the same, 1 black and white. */
export function apart(one: string, other: string): number {
  const [a, b] = [oklab(one), oklab(other)];
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

function darkened(color: string): string {
  const [, a, b] = oklab(color);
  const chroma = Math.hypot(a, b);
  // Where a screen cannot show so much color at this lightness, a little less of it.
  for (let wanted = Math.min(chroma, darkChroma); wanted > 0.005; wanted -= 0.005) {
    const rgb = linearOf([darkLightness, (a / chroma) * wanted, (b / chroma) * wanted]);
    if (rgb.every((part) => part >= 0 && part <= 1)) return hex(rgb);
  }
  return hex(linearOf([darkLightness, 0, 0]));
}

/** A color a share of the way from the ground. */
export function mixed(ground: string, color: string, share: number): string {
  const [one, other] = [bytes(ground), bytes(color)];
  return `#${one.map((part, i) => two(Math.round(part + ((other[i] ?? 0) - part) * share))).join('')}`;
}

const two = (byte: number) => byte.toString(16).padStart(2, '0');

function bytes(color: string): Three {
  const part = (at: number) => Number.parseInt(color.slice(at, at + 2), 16);
  return [part(1), part(3), part(5)];
}

function linear(color: string): Three {
  const one = (byte: number) => {
    const share = byte / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  const [r, g, b] = bytes(color);
  return [one(r), one(g), one(b)];
}

function hex(rgb: Three): string {
  const one = (part: number) => {
    const share = part <= 0.0031308 ? part * 12.92 : 1.055 * part ** (1 / 2.4) - 0.055;
    return two(Math.round(Math.min(1, Math.max(0, share)) * 255));
  };
  return `#${rgb.map(one).join('')}`;
}

function luminance(color: string): number {
  const [r, g, b] = linear(color);
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function oklab(color: string): Three {
  const [r, g, b] = linear(color);
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}

function linearOf([lightness, a, b]: Three): Three {
  const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
  return [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ];
}
