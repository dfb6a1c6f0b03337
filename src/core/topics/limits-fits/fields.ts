import { defineFields } from '../../contract/field.ts';

/**
 * A zone's name: letters and a grade; a whole fit such as H7/k6 is let through, to be taken apart or refused in words.
 * Whether the standard defines it is looked up, not matched.
 */
export const zonePattern = {
  pattern: '[A-Za-z]{1,2}\\s*\\d{1,2}(?:[\\s/-]*[A-Za-z]{1,2}\\s*\\d{1,2})?',
  patternSays: 'letters and a grade, like H7 for a hole or k6 for a shaft',
  maxLength: 16,
} as const;

export const sizeField = {
  key: 'size',
  label: 'Nominal size',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
  above: true,
  // Past the end of the tables the topic itself says so; this parts 19,996 mm from 19996 mm.
  max: 10000,
  limitFrom: 'iso-286-1: the tables end at 3150 mm',
} as const;

export const fields = defineFields([
  { ...sizeField, help: 'The size on the drawing, before any tolerance.' },
  {
    key: 'zone',
    label: 'Tolerance zone',
    kind: 'text',
    ...zonePattern,
    help: 'Capital letter for a hole (H7), small letter for a shaft (k6). A whole fit, like H7/k6, is read as hole and shaft.',
  },
  {
    key: 'mate',
    label: 'Zone of the other part',
    kind: 'text',
    ...zonePattern,
    optional: true,
    help: 'Leave empty for the limits of one part. With it, the clearance or interference of the pair is given.',
  },
  {
    key: 'halves',
    label: 'Halves of js7 to js11',
    kind: 'choice',
    default: 'exact',
    usual: 'the present standard',
    more: true,
    options: [
      { value: 'exact', label: 'As they come, like 10.5 µm' },
      { value: 'rounded', label: 'Rounded down to whole micrometers, the older custom' },
    ],
  },
]);
