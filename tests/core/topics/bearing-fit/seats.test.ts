/**
 * Seats as a mechanic meets them, and each verdict just below, at and just above its limit. Limits of the zones are those
 * ISO 286-1 prints (25 k5: +11/+2; 47 H7: +25/0; 47 N7: -8/-33; 52 N7: -9/-39; 52 H7: +30/0; 10 j5: +4/-2; 110 m5: +28/+13),
 * rings those of ISO 492 (25 bore: 0/-10; 52 outside: 0/-13).
 */
import { describe, expect, it } from 'vitest';
import { compute, fields, words } from '../../../../src/core/topics/bearing-fit/index.ts';
import { sayer } from '../../../../src/core/contract/messages.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf, type Answer } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

function answer(raw: RawInputs): Answer {
  const read = readInputs(fields, raw);
  const result = read.ok ? compute(read.inputs) : undefined;
  if (!result?.ok) throw new Error(`Refused: ${JSON.stringify(result ?? read)}`);
  return result;
}

function seat(kind: 'shaft' | 'housing', size: number, zone: string, rows: readonly (readonly number[])[], more = {}) {
  const readings = rows.map(([across, quarter]) => ({ across, quarter: quarter ?? across }));
  return answer({ seat: kind, size, zone, basis: 'readings', readings, ...more });
}

const verdictIn = (a: Answer, key: string) => {
  const found = a.values.find((v) => v.key === key);
  return found?.kind === 'verdict' ? found : undefined;
};
const code = (a: Answer, key = 'seatVerdict') => verdictIn(a, key)?.code;
const says = (a: Answer, key = 'seatVerdict') => {
  const v = verdictIn(a, key);
  return v && words.verdicts[v.code]?.(v.data ?? {}, sayer({}));
};
const shaft25 = (mm: number, more = {}) => seat('shaft', 25, 'k5', [[mm, mm]], more);
const bore52 = (mm: number, more = {}) => seat('housing', 52, 'N7', [[mm, mm]], { turning: 'outer', ...more });

describe('a seat is judged by every reading', () => {
  it('an uneven shaft is never good: 25 k5 with 25.016 and 24.998', () => {
    const a = seat('shaft', 25, 'k5', [[25.016, 24.998]]);
    expect(code(a)).toBe('seat-uneven');
    expect(verdictIn(a, 'seatVerdict')?.level).toBe('stop');
    expect(code(a, 'needs')).toBe('needs-shaft');
    // 24.998 is 4 under 25.002, 25.016 is 5 over 25.011.
    expect(says(a)).toMatch(/4\.0\u00a0µm too loose at one place, 5\.0\u00a0µm too tight/);
  });

  it.each([
    [
      'the two rows with a ring measured at 51.990',
      [
        [52.01, 51.98],
        [51.99, 51.97],
      ],
      { ring: 51.99 },
      'seat-loose',
    ],
    ['52.010 and 51.980', [[52.01, 51.98]], {}, 'seat-loose'],
    ['51.990 and 51.970, within N7 but 20 apart', [[51.99, 51.97]], {}, 'seat-crooked'],
  ])('an uneven 52 N7 bore is never good: %s', (_name, rows, more, expected) => {
    const a = seat('housing', 52, 'N7', rows, { turning: 'outer', ...more });
    expect(code(a)).toBe(expected);
    expect(verdictIn(a, 'seatVerdict')?.level).not.toBe('good');
    expect(code(a, 'form')).toBe('form-uneven');
    expect(code(a, 'needs')).toBeDefined();
    expect(a.values.some((v) => v.key === 'warmVerdict' || v.key === 'warmTemperature')).toBe(false);
    expect(a.cautions).toEqual([]);
  });

  it('a seat outside its zone with a right fit is told in those words', () => {
    const a = seat('shaft', 25, 'k5', [[24.999, 24.999]], { ring: 24.99, gauge: 1 });
    expect(code(a)).toBe('seat-fit-right');
    expect(says(a)).toMatch(/^The fit is right: 9\.0\u00a0µm of interference/);
    expect(says(a)).toMatch(/not within k5/);
  });
});

describe('the zone given and the zone the table recommends', () => {
  const rows = [[47.004, 47.008]];
  const aluminum = { material: 'aluminium-die-cast' };

  it('47.004 to 47.008 in aluminum is not condemned by a zone nobody needs', () => {
    expect(code(seat('housing', 47, 'N7', rows, aluminum))).toBe('seat-other-zone');
    expect(says(seat('housing', 47, 'N7', rows, aluminum))).toMatch(/right for H7/);
    expect(says(seat('housing', 47, 'N7', rows, aluminum))).not.toMatch(/do not fit/i);
    expect(code(seat('housing', 47, 'H7', rows, aluminum))).toBe('seat-good');
    expect(code(seat('housing', 47, '', rows, aluminum))).toBe('seat-good');
    // Where the load does turn against the outer ring the table wants N7 too, and 16 µm past it is loose.
    const turns = seat('housing', 47, '', rows, { ...aluminum, turning: 'outer' });
    expect(code(turns)).toBe('seat-loose');
    expect(valueOf(turns, 'advisedZone', 'text').value).toBe('N7');
  });

  it('46.98, 46.99, 47.00, 47.00: refused as out of round, and no word on warming it', () => {
    const a = seat(
      'housing',
      47,
      'N7',
      [
        [46.98, 46.99],
        [47, 47],
      ],
      aluminum,
    );
    expect(code(a)).toBe('seat-loose');
    expect(code(a, 'needs')).toBe('needs-light-housing');
    expect(code(a, 'form')).toBe('form-at-limit');
    expect(code(a, 'seatAdvised')).toBe('advised-missed');
    expect(a.values.some((v) => v.key.startsWith('warmT') || v.key === 'warmVerdict')).toBe(false);
    expect(a.cautions).toEqual([]);
  });

  it('a seat good for the drawing is told where the table differs', () => {
    const a = seat('housing', 52, 'N7', [[51.975, 51.976]]);
    expect(code(a)).toBe('seat-good');
    expect(code(a, 'seatAdvised')).toBe('advised-missed');
    expect(says(a, 'seatAdvised')).toMatch(/25\.0\u00a0µm too tight/);
    expect(code(seat('housing', 52, 'J7', [[52.005, 52.006]]), 'seatAdvised')).toBe('advised-met');
  });

  it('no zone is asked for before one is offered', () => {
    const a = answer({ seat: 'shaft', size: 25 });
    expect(valueOf(a, 'seatZone', 'text').value).toBe('k5');
    expect(a.values.some((v) => v.key === 'choice')).toBe(false);
  });

  it('takes the half of a whole fit that is meant', () => {
    expect(valueOf(answer({ seat: 'housing', size: 52, zone: 'N7/h6' }), 'seatZone', 'text').value).toBe('N7');
    expect(valueOf(answer({ seat: 'shaft', size: 25, zone: 'H7/k05' }), 'seatZone', 'text').value).toBe('k5');
  });
});

describe('the band of the gauge', () => {
  it.each([
    // 25 k5 is 25.002 to 25.011; the gauge reads to within 3 µm.
    [24.9989, 'seat-slack'],
    [24.999, 'seat-at-limit'],
    [25.0019, 'seat-at-limit'],
    [25.002, 'seat-near-limit'],
    [25.0049, 'seat-near-limit'],
    [25.005, 'seat-good'],
    [25.008, 'seat-good'],
    [25.0081, 'seat-near-limit'],
    [25.011, 'seat-near-limit'],
    [25.0111, 'seat-at-limit'],
    [25.014, 'seat-at-limit'],
    [25.0141, 'seat-tight'],
  ])('a shaft of %s mm: %s', (mm, expected) => {
    expect(code(shaft25(mm))).toBe(expected);
  });

  it.each([
    // 52 N7 is 51.961 to 51.991.
    [51.9579, 'seat-tight'],
    [51.958, 'seat-at-limit'],
    [51.961, 'seat-near-limit'],
    [51.964, 'seat-good'],
    [51.988, 'seat-good'],
    [51.991, 'seat-near-limit'],
    [51.9911, 'seat-at-limit'],
    [51.994, 'seat-at-limit'],
    [51.9941, 'seat-loose'],
  ])('a bore of %s mm: %s', (mm, expected) => {
    expect(code(bore52(mm))).toBe(expected);
  });

  it('half a micrometer past a limit is never a refusal', () => {
    const a = shaft25(25.0115);
    expect(verdictIn(a, 'seatVerdict')?.level).toBe('caution');
    expect(says(a)).toMatch(/measure again/i);
  });

  it('a coarse gauge is told: more than a quarter of the zone', () => {
    const told = (gauge: number) => code(bore52(51.976, { gauge }), 'gaugeVerdict');
    expect([told(7.4), told(7.5), told(7.6)]).toEqual([undefined, undefined, 'gauge-coarse']);
  });

  it('loose below the middle of what the ring may be, slack from there on', () => {
    // Ring 24.990 to 25.000, middle 24.995.
    expect([24.9949, 24.995, 24.9951].map((mm) => code(shaft25(mm)))).toEqual([
      'seat-loose',
      'seat-slack',
      'seat-slack',
    ]);
  });

  it('with the ring measured the fit is held to what zone and class allow', () => {
    // 25 k5 and a Normal ring: 2 to 21 µm. A ring of 24.985 (bored too small) takes the shaft over it from 25.006.
    const at = (mm: number) => code(shaft25(mm, { ring: 24.985 }));
    expect([25.003, 25.0031, 25.006, 25.0061, 25.009, 25.0091].map(at)).toEqual([
      'seat-good',
      'seat-near-limit',
      'seat-near-limit',
      'seat-at-limit',
      'seat-at-limit',
      'seat-tight',
    ]);
  });
});

describe('the shape of a seat', () => {
  it.each([
    // Half of 9 µm is 4.5; a difference within 3 µm over it may be the gauge.
    [4.4, 'form-even'],
    [4.5, 'form-even'],
    [4.6, 'form-at-limit'],
    [7.5, 'form-at-limit'],
    [7.6, 'form-uneven'],
  ])('25 k5 out of round by %s µm: %s', (um, expected) => {
    expect(code(seat('shaft', 25, 'k5', [[25.0025, 25.0025 + um / 1000]]), 'form')).toBe(expected);
  });

  it('taper is held to the same', () => {
    const tapered = (um: number) =>
      code(seat('shaft', 25, 'k5', [[25.0025], [25.0025 + um / 1000]], { gauge: 0 }), 'form');
    expect([4.4, 4.5, 4.6].map(tapered)).toEqual(['form-even', 'form-even', 'form-uneven']);
  });
});

describe('the zone chosen against the zone advised', () => {
  const choice = (raw: RawInputs) => code(answer(raw), 'choice');

  it('within 3 µm in the mean they hold alike', () => {
    // Means from the limits ISO 286-1 prints: 25 k6 +15/+2 is 8.5, k5 +11/+2 is 6.5, j6 +9/-4 is 2.5, m5 +17/+8 is 12.5.
    expect(choice({ seat: 'shaft', size: 25, zone: 'k6' })).toBe('zone-as-advised');
    expect(choice({ seat: 'shaft', size: 25, zone: 'j6' })).toBe('zone-looser');
    expect(choice({ seat: 'shaft', size: 25, zone: 'm5' })).toBe('zone-tighter');
    // 16 h5 0/-8 is -4, advised for a light load; js5 is +4/-4, mean 0: 4 µm tighter. j5 +5/-3 is 1.
    expect(choice({ seat: 'shaft', size: 16, zone: 'js5', load: 'light' })).toBe('zone-tighter');
    // 100 H6 is +22/0, mean 11; H7 +35/0, mean 17.5.
    expect(choice({ seat: 'housing', size: 100, zone: 'H6' })).toBe('zone-tighter');
    // 8 H6 is +9/0, mean 4.5; H7 +15/0, mean 7.5: exactly 3 apart.
    expect(choice({ seat: 'housing', size: 8, zone: 'H6' })).toBe('zone-as-advised');
    // 16 H6 is +11/0, mean 5.5; H7 +18/0, mean 9: 3.5 apart.
    expect(choice({ seat: 'housing', size: 16, zone: 'H6' })).toBe('zone-tighter');
    // 16 h6 0/-11 is -5.5, against h5 -4: 1.5. g5 is -6/-14, mean -10.
    expect(choice({ seat: 'shaft', size: 16, zone: 'h6', load: 'light' })).toBe('zone-as-advised');
  });
});

describe('what stands beside a measured seat', () => {
  it('the kind of fit and the hold left when warm are those of the readings', () => {
    const worn = bore52(52.02, { turning: 'inner', zone: '', material: 'aluminium-cast' });
    // Ring 51.987 to 52.000 in 52.020: clearance of 20 to 33; 50 K take 52 mm x (21.5 - 12.5)e-6 x 50 = 23.4 more.
    expect(code(worn, 'fitKind')).toBe('measured-clearance');
    const warm = valueOf(worn, 'warmInterference', 'quantity');
    expect(warm.high).toBeCloseTo(-43.4e-6, 9);
    expect(warm.low).toBeCloseTo(-56.4e-6, 9);
    expect(warm.label).toMatch(/as measured/);
    expect(code(shaft25(24.999), 'fitKind')).toBe('measured-transition');
    expect(code(shaft25(25.006), 'fitKind')).toBe('measured-interference');
  });

  it('warns of a heated housing at a housing and of a heated bearing at a shaft', () => {
    const hazards = (a: Answer) => a.cautions.map((c) => c.hazard);
    expect(hazards(shaft25(25.006))).toContain('heating-bearings');
    expect(hazards(shaft25(25.006))).not.toContain('heating-housings');
    expect(hazards(bore52(51.976))).toContain('heating-housings');
    expect(hazards(bore52(51.976))).not.toContain('heating-bearings');
  });

  it('every refused seat says what it needs', () => {
    expect(code(shaft25(24.98), 'needs')).toBe('needs-shaft');
    expect(code(shaft25(25.02), 'needs')).toBe('needs-less-shaft');
    expect(code(bore52(51.95), 'needs')).toBe('needs-wider-housing');
    expect(code(bore52(52.02, { material: 'magnesium' }), 'needs')).toBe('needs-light-housing');
    expect(code(bore52(52.02, { material: 'ductile-iron' }), 'needs')).toBe('needs-iron-housing');
    expect(code(seat('shaft', 110, 'm5', [[110.014, 110.027]]), 'needs')).toBe('needs-truing-shaft');
    expect(code(seat('housing', 52, 'N7', [[51.965, 51.988]]), 'needs')).toBe('needs-truing-housing');
  });
});

describe('other limits', () => {
  const far = (mm: number, size: number) => {
    const read = readInputs(fields, {
      seat: 'shaft',
      size,
      basis: 'readings',
      readings: [{ across: mm, quarter: size }],
    });
    const result = read.ok ? compute(read.inputs) : undefined;
    return result?.ok === false;
  };

  it('a reading half a millimeter and a fiftieth of the size away is no reading of this seat', () => {
    expect([25.99, 26, 26.01].map((mm) => far(mm, 25))).toEqual([false, false, true]);
    expect([102.49, 102.5, 102.51].map((mm) => far(mm, 100))).toEqual([false, false, true]);
    expect([23.99, 24].map((mm) => far(mm, 25))).toEqual([true, false]);
  });

  it('the zone that keeps its hold when warm is the first that does', () => {
    // Ring 0/-13. Means at 52 mm: H7 +30/0 is -21.5, K7 +9/-21 is -0.5, M7 0/-30 is 8.5, P7 -21/-51 is 29.5.
    // Cast aluminum (21.5) on steel (12.5) loses 52 mm x 9e-6 for each degree: 21 µm at 44.872, 51 µm at 108.974.
    const at = (lost: number) => ({
      seat: 'housing',
      size: 52,
      material: 'aluminium-cast',
      runningRise: lost / (52e3 * 9e-6),
    });
    const zone = (lost: number) => {
      const a = answer(at(lost));
      return code(a, 'light') === 'light-housing' ? valueOf(a, 'warmZone', 'text').value : code(a, 'light');
    };
    expect([20.9, 21, 21.1].map(zone)).toEqual(['K7', 'K7', 'M7']);
    expect([50.9, 51, 51.1].map(zone)).toEqual(['P7', 'P7', 'light-housing-none']);
    expect([zone(0), zone(0.1)]).toEqual([undefined, 'J7']);
    expect(code(answer({ ...at(21), material: 'grey-iron' }), 'light')).toBeUndefined();
  });

  it('a split housing is told of a tight zone only', () => {
    const split = (turning: string, load: string) =>
      code(answer({ seat: 'housing', size: 52, housing: 'split', turning, load }), 'split');
    // ABMA 7: J7, K7, M7 for a load that changes direction, N7 where it turns against the outer ring.
    expect(split('unclear', 'light')).toBeUndefined();
    expect(split('unclear', 'normal')).toBe('split-and-tight');
    expect(split('unclear', 'heavy')).toBe('split-and-tight');
    expect(split('outer', 'normal')).toBe('split-and-tight');
    expect(split('inner', 'normal')).toBeUndefined();
    // The zone of the drawing counts as well, whatever the table says.
    const given = (zone: string) =>
      code(answer({ seat: 'housing', size: 52, housing: 'split', turning: 'inner', zone }), 'split');
    expect(['H7', 'J7', 'K7', 'P7'].map(given)).toEqual([undefined, undefined, 'split-and-tight', 'split-and-tight']);
  });
});

describe('far from the demo machine', () => {
  it('a small bearing: 10 mm shaft, j5', () => {
    expect(code(seat('shaft', 10, '', [[10.001, 10.001]]))).toBe('seat-good');
    expect(code(seat('shaft', 10, '', [[9.99, 9.991]]))).toBe('seat-loose');
  });

  it('a large one: 110 mm shaft under a heavy load, m5', () => {
    const a = seat('shaft', 110, '', [[110.02, 110.021]], { load: 'heavy' });
    expect(valueOf(a, 'seatZone', 'text').value).toBe('m5');
    expect(code(a)).toBe('seat-good');
  });

  it('an inch shaft is read in inches', () => {
    const at = (inches: string) =>
      code(
        answer({
          seat: 'shaft',
          size: '1 in',
          zone: 'k5',
          basis: 'readings',
          readings: [{ across: inches, quarter: inches }],
        }),
      );
    // k5 from 18 to 30 mm is +11/+2 µm: 1.00008 to 1.00043 in.
    expect(at('1.00026 in')).toBe('seat-good');
    expect(at('0.9995 in')).toBe('seat-loose');
    expect(at('1.001 in')).toBe('seat-tight');
  });
});
