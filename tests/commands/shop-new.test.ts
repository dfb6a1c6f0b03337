/** A shop of one's own, made by the command. The shop is made up. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, sep } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { wrongFolder } from '../../src/commands/shop-new/folder.ts';
import { nextSteps } from '../../src/commands/shop-new/next-steps.ts';
import { shop } from '../../src/schemas/shop.ts';

const place = mkdtempSync(join(tmpdir(), 'almanac-shop-'));
afterAll(() => rmSync(place, { recursive: true }));

const given = {
  name: 'Ribera: saws & more',
  address: 'Calle 4; Puebla Nueva',
  phone: '600000000',
  hours: 'Monday to Friday, 8 to 17',
  currency: 'eur',
  rate: '42.50',
  tax: '21 %',
  languages: 'en, es',
};

function make(folder: string, change: Partial<typeof given> = {}) {
  const flags = Object.entries({ ...given, ...change }).flatMap(([flag, text]) => [`--${flag}`, text]);
  const ran = spawnSync(process.execPath, ['src/commands/shop-new.ts', join(place, folder), ...flags], {
    encoding: 'utf8',
  });
  return { code: ran.status, said: ran.stdout + ran.stderr };
}

describe('npm run shop:new', () => {
  it('writes a shop.yaml that the almanac takes, with what was answered', () => {
    expect(make('one')).toMatchObject({ code: 0 });
    const text = readFileSync(join(place, 'one/shop.yaml'), 'utf8');
    expect(shop.parse(parse(text))).toMatchObject({
      name: 'Ribera: saws & more',
      invented: false,
      address: ['Calle 4', 'Puebla Nueva'],
      phone: '600000000',
      currency: 'EUR',
      labourRate: 42.5,
      tax: { parts: 21, labour: 21 },
      languages: ['en', 'es'],
    });
    // Each field is explained where it stands, also those that wait behind a #.
    for (const key of Object.keys(shop.shape)) expect(text).toMatch(new RegExp(`#[^\\n]*\\n(?:# )?${key}:`));
  });

  it('writes optional fields that the almanac takes once their # is gone', () => {
    const text = readFileSync(join(place, 'one/shop.yaml'), 'utf8');
    const [needed = '', optional = ''] = text.split('What follows may stay as it is.');
    const fields = optional
      .split('\n')
      .slice(1)
      .map((line) => (/^# (?= *[a-zA-Z]+:| *- )/.test(line) ? line.slice(2) : ''))
      .join('\n');
    const read = shop.parse({ ...(parse(needed) as object), ...(parse(fields) as object) });
    expect(Object.keys(read).sort()).toEqual(Object.keys(shop.shape).sort());
  });

  it('takes a rate in a currency with three digits behind the point', () => {
    expect(make('kwd', { currency: 'KWD', rate: '12.345' })).toMatchObject({ code: 0 });
    expect(parse(readFileSync(join(place, 'kwd/shop.yaml'), 'utf8'))).toMatchObject({ labourRate: 12.345 });
  });

  it('says in one line when the system makes no such folder', () => {
    const { code, said } = make('n'.repeat(300));
    expect(code).toBe(2);
    expect(said).toMatch(/^No shop was made: ENAMETOOLONG[^\n]*\n$/);
  });

  it('leaves a shop that is there alone', () => {
    const before = readFileSync(join(place, 'one/shop.yaml'), 'utf8');
    const again = make('one', { name: 'Another' });
    expect(again.code).toBe(2);
    expect(again.said).toContain('holds a shop already');
    expect(readFileSync(join(place, 'one/shop.yaml'), 'utf8')).toBe(before);
  });

  it.each([
    [{ rate: '42,50' }, /--rate "42,50": write a point for the comma/],
    [{ rate: '0' }, /--rate "0": a number alone, from 0\.01/],
    [{ rate: '25.000' }, /--rate "25\.000": EUR has 2 digits behind the point, and thousands stand without one/],
    [{ currency: 'CLP', rate: '25.5' }, /--rate "25\.5": CLP has no digits behind the point/],
    [{ tax: '51' }, /--tax "51": a number alone, from 0 to 50/],
    [{ currency: 'EUO' }, /--currency "EUO": three letters of a currency/],
    [{ languages: 'es' }, /--languages "es": en, alone or before es, like en,es/],
    [{ name: ' ' }, /--name this cannot be left empty/],
    [{ name: 'A' }, /--name "A": at least 2 letters/],
    [{ phone: '1' }, /--phone "1": at least 3 letters/],
    [{ rate: '' }, /--rate "": a number alone/],
  ])('says what is wrong with %j', (change, words) => {
    const made = make('two', change);
    expect(made.code).toBe(2);
    expect(made.said).toMatch(words);
  });

  it.each<[string, RegExp]>([
    ['.', /almanac's own folder or in it/],
    ['content/mine', /almanac's own folder or in it/],
    [join(place, 'one/shop.yaml/shop'), /shop\.yaml is a file; a shop needs a folder/],
    ['~/shop', /name the folder in full/],
    ['content/shop', /holds a shop already/],
    ...(sep === '/'
      ? ([[String.raw`..\shops\mine`, /parted by "\/" here, like \.\.\/shops\/mine/]] satisfies [string, RegExp][])
      : []),
  ])('makes none in %s', (folder, words) => {
    expect(wrongFolder(folder, process.cwd())).toMatch(words);
  });

  it('may stand in a folder that holds something else, or that is not there yet', () => {
    expect(wrongFolder(place, process.cwd())).toBeUndefined();
    expect(wrongFolder(join(place, 'deep/in/it'), process.cwd())).toBeUndefined();
  });

  it('says how a terminal keeps the shop in mind, also with a blank in its name', () => {
    expect(nextSteps('../my-shop', 'linux')).toContain('export SHOP=../my-shop\n');
    expect(nextSteps("../Ada's shop", 'darwin')).toContain(String.raw`export SHOP='../Ada'\''s shop'`);
    expect(nextSteps(String.raw`..\my-shop`, 'win32')).toContain(String.raw`set SHOP=..\my-shop `);
  });
});
