import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { schedule } from '../../src/schemas/intervals.ts';

const folder = 'content/knowledge/intervals';
const files = readdirSync(folder).filter((f) => f.endsWith('.yaml'));
const schedules = files.map((f) => ({ file: f, data: schedule.parse(parse(readFileSync(`${folder}/${f}`, 'utf8'))) }));

describe('service schedules', () => {
  it('cover hand-held and walk-behind saws', () => {
    expect(files).toEqual(expect.arrayContaining(['hand-held.yaml', 'walk-behind.yaml']));
  });

  it.each(schedules)('$file names only sources the almanac has', ({ data }) => {
    const missing = data.rows.map((r) => r.source).filter((s) => !existsSync(`content/knowledge/sources/${s}.yaml`));
    expect(missing).toEqual([]);
  });

  it.each(schedules)('$file leads only to pages that exist', ({ data }) => {
    const missing = data.rows
      .flatMap((r) => r.see ?? [])
      .filter((see) => !existsSync(`content/knowledge${see.slice(0, -1)}.mdx`));
    expect(missing).toEqual([]);
  });

  it('refuse a row that does not say how often', () => {
    expect(
      schedule.safeParse({
        title: 'Some saw',
        kinds: ['floor-saw'],
        rows: [{ part: 'Belt', do: 'Check tension', source: 'common-practice' }],
      }).success,
    ).toBe(false);
  });

  it("give the army manuals' hours as printed", () => {
    const rows = schedules.find((s) => s.file === 'army-small-engines.yaml')?.data.rows ?? [];
    const hours = (part: string) =>
      rows.find((r) => r.part === part && r.source === 'army-tm-service-intervals')?.hours;
    // TM 10-4320-315-24: fins 125 h, V-belts 250 h, valves 500 h, fuel filter 1000 h, wheel bearings 3000 h. TM 9-4940-421-14: oil and filter 100 h.
    expect(
      ['Cooling fins', 'V-belts', 'Valves', 'Fuel filter', 'Wheel bearings', 'Oil and oil filter'].map(hours),
    ).toEqual([125, 250, 500, 1000, 3000, 100]);
  });
});
