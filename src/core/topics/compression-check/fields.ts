import { defineFields } from '../../contract/field.ts';

const slips = 'catches slips of the decimal point';

export const fields = defineFields([
  { key: 'reading', label: 'Gauge, highest of three', kind: 'quantity', dimension: 'pressure', units: ['bar', 'psi'], default: 9, min: 0, max: 60, limitFrom: slips, help: 'Throttle wide open, five or six full pulls, until the needle stops climbing.' },
  { key: 'healthy', label: 'Healthy reading at sea level', kind: 'quantity', dimension: 'pressure', units: ['bar', 'psi'], default: 10, min: 2, max: 60, limitFrom: slips, help: 'From the manual, or from a saw you know is good. 10 bar (145 psi) is common practice for a small two-stroke.' },
  { key: 'height', label: 'Height above sea level', kind: 'quantity', dimension: 'length', units: ['m', 'ft'], default: 0, min: -430, max: 6000, limitFrom: 'lowest road to highest town' },
  { key: 'barometer', label: 'Barometer here, not reduced to sea level', kind: 'quantity', dimension: 'pressure', units: ['kPa', 'psi'], min: 40, max: 110, optional: true, more: true, limitFrom: slips, help: 'Instead of the height. Weather stations report a figure reduced to sea level: do not use that one.' },
  { key: 'first', label: 'Gauge after the first pull', kind: 'quantity', dimension: 'pressure', units: ['bar', 'psi'], min: 0, max: 60, optional: true, more: true, limitFrom: slips, group: 'Which part leaks' },
  { key: 'oiled', label: 'Gauge with a teaspoon of oil in the cylinder', kind: 'quantity', dimension: 'pressure', units: ['bar', 'psi'], min: 0, max: 80, optional: true, more: true, limitFrom: slips, group: 'Which part leaks' },
]);
