import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import {
  beltLength,
  centreForLength,
  crossedLength,
  freeSpan,
  pulleys,
  shortestLength,
  textbookCentre,
  textbookLength,
  wrapSmall,
} from './geometry.ts';
import { grooveSize, pitchFromOutside, ribbedFace } from './pulley-size.ts';
import { isRibbed, ribSections, vSections } from './sections.ts';
import { centre, diameters, long } from './block-fields.ts';

const angle = ['°', '°'] as const;
const named = <T extends string>(values: readonly T[]) => values.map((value) => ({ value, label: value }));

export const geometryBlocks = {
  'belt-length': block({
    what: 'exact and textbook length, wraps and free span from two pulleys and their distance',
    source: 'shigley-belts',
    fields: defineFields([...diameters, centre]),
    gives: {
      length: { label: 'Exact length, open belt', units: long },
      textbook: { label: 'Textbook length, open belt', units: long },
      crossed: { label: 'Textbook length, crossed belt', units: long },
      wrapSmall: { label: 'Wrap on the small pulley', units: angle },
      wrapLarge: { label: 'Wrap on the large pulley', units: angle },
      span: { label: 'Free span', units: long },
    },
    run: (i) => {
      const p = pulleys(i.small, i.large);
      if (p.large - p.small > 2 * i.centre)
        return { problem: { field: 'centre', code: 'pulleys-touch', data: { least: (p.large + p.small) / 2 } } };
      const wrap = wrapSmall(p, i.centre);
      return {
        length: beltLength(p, i.centre),
        textbook: textbookLength(p, i.centre),
        crossed: crossedLength(p, i.centre),
        wrapSmall: wrap,
        wrapLarge: 2 * Math.PI - wrap,
        span: freeSpan(p, i.centre),
      };
    },
  }),
  wrap: block({
    what: 'wrap from how much the pulleys differ against their distance',
    source: 'machinery-handbook-arc',
    fields: defineFields([{ key: 'difference', label: '(D − d) / C', kind: 'number', min: 0, max: 2 }]),
    gives: { wrap: { label: 'Wrap on the small pulley', units: angle } },
    run: (i) => ({ wrap: Math.PI - 2 * Math.asin(i.difference / 2) }),
  }),
  'centre-from-length': block({
    what: 'center distance for a belt length, exact and by the textbook',
    source: 'wentzell-design',
    fields: defineFields([
      ...diameters,
      {
        key: 'length',
        label: 'Belt length',
        kind: 'quantity',
        dimension: 'length',
        units: ['mm', 'in'],
        min: 0,
        above: true,
      },
    ]),
    gives: {
      centre: { label: 'Center distance', units: long },
      textbook: { label: 'Textbook center distance', units: long },
      wrapSmall: { label: 'Wrap on the small pulley', units: angle },
    },
    run: (i) => {
      const p = pulleys(i.small, i.large);
      const exact = centreForLength(p, i.length);
      if (exact === undefined)
        return { problem: { field: 'length', code: 'belt-too-short', data: { least: shortestLength(p) } } };
      return { centre: exact, textbook: textbookCentre(p, i.length), wrapSmall: wrapSmall(p, exact) };
    },
  }),
  span: block({
    what: 'free span between two pulleys',
    source: 'geometry',
    fields: defineFields([...diameters, centre]),
    gives: { span: { label: 'Free span', units: long } },
    run: (i) => ({ span: freeSpan(pulleys(i.small, i.large), i.centre) }),
  }),
  'groove-geometry': block({
    what: 'outside and root diameter, width and groove angle of a V pulley',
    source: 'din-2211-grooves',
    fields: defineFields([
      { key: 'section', label: 'Section', kind: 'choice', options: named(vSections) },
      {
        key: 'pitch',
        label: 'Pitch diameter',
        kind: 'quantity',
        dimension: 'length',
        units: ['mm', 'in'],
        min: 0,
        above: true,
      },
      { key: 'grooves', label: 'Grooves', kind: 'count', default: 1, min: 1 },
    ]),
    gives: {
      outside: { label: 'Outside diameter', units: long },
      root: { label: 'Root diameter', units: long },
      face: { label: 'Width', units: long },
      angle: { label: 'Groove angle', units: angle },
    },
    run: (i) => ({ ...grooveSize(i.section, i.pitch, i.grooves) }),
  }),
  'ribbed-face': block({
    what: 'least width of a ribbed pulley',
    source: 'iso-9982',
    fields: defineFields([
      { key: 'section', label: 'Section', kind: 'choice', options: named(ribSections) },
      { key: 'ribs', label: 'Ribs', kind: 'count', min: 1 },
    ]),
    gives: { face: { label: 'Width', units: long } },
    run: (i) => ({ face: ribbedFace(i.section, i.ribs) }),
  }),
  'pitch-diameter': block({
    what: 'pitch (datum or effective) diameter from the outside diameter',
    source: 'din-2211-grooves',
    fields: defineFields([
      { key: 'section', label: 'Section', kind: 'choice', options: named([...vSections, ...ribSections]) },
      {
        key: 'outside',
        label: 'Outside diameter',
        kind: 'quantity',
        dimension: 'length',
        units: ['mm', 'in'],
        min: 0,
        above: true,
      },
    ]),
    gives: { pitch: { label: 'Pitch diameter', units: long }, standard: { label: 'From' } },
    run: (i) => ({
      pitch: pitchFromOutside(i.section, i.outside),
      standard: isRibbed(i.section) ? 'ISO 9982' : 'DIN 2211',
    }),
  }),
};
