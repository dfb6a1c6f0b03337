import { defineFields } from '../../contract/field.ts';
import { datePattern } from '../../calendar/index.ts';

const hours = { kind: 'quantity', dimension: 'time', units: ['h', 'h'], min: 0, max: 100000 } as const;
const day = { kind: 'text', pattern: datePattern, patternSays: 'a day written YYYY-MM-DD, like 2026-03-14', maxLength: 10 } as const;
const factor = { kind: 'number', min: 0, above: true, max: 1, more: true, group: 'What the duty does' } as const;
const wears = { field: 'replace', is: [true] } as const;

const dust = [
  { value: 'clean', label: 'Clean' },
  { value: 'dusty', label: 'Dusty' },
  { value: 'heavy', label: 'Heavy dust or dry slurry' },
] as const;

const tasks = [
  { key: 'machine', label: 'Machine', kind: 'text', maxLength: 60 },
  { key: 'task', label: 'What is done', kind: 'text', maxLength: 80 },
  { key: 'base', label: 'Interval on clean work', ...hours, above: true, optional: true, help: 'From the machine’s manual. Leave empty if it goes by the calendar alone.' },
  { key: 'limit', label: 'At the latest after', kind: 'quantity', dimension: 'time', units: ['day', 'day'], min: 0, above: true, max: 3650, optional: true, help: 'A calendar limit is not shortened by dust.' },
  { key: 'dust', label: 'Dust', kind: 'choice', default: 'clean', options: dust },
  { key: 'water', label: 'Cuts wet', kind: 'yes-no', default: false },
  { key: 'load', label: 'Heavy load', kind: 'yes-no', default: false },
  { key: 'perDay', label: 'Hours run in a working day', kind: 'quantity', dimension: 'time', units: ['h', 'h'], default: 2, min: 0, above: true, max: 24 },
  { key: 'daysPerWeek', label: 'Working days a week', kind: 'number', default: 5, min: 0, above: true, max: 7 },
  { key: 'last', label: 'Last done on', ...day, optional: true, help: 'The start day, if empty.' },
  { key: 'since', label: 'Hours run since', ...hours, default: 0 },
] as const;

const records = [
  { key: 'hours', label: 'Hours run', kind: 'quantity', dimension: 'time', units: ['h', 'h'], min: 0, above: true, max: 100000 },
  { key: 'failed', label: 'It had failed', kind: 'yes-no', default: true, help: 'No: it was still good, or came out for another reason.' },
] as const;

export const fields = defineFields([
  { key: 'start', label: 'The list starts on', ...day, help: 'Today, as a rule.' },
  { key: 'tasks', label: 'Machines and services', kind: 'rows', columns: tasks, minRows: 1, maxRows: 200, default: [{ machine: 'Cut-off saw 1', task: 'Check the belt, clean its grooves', base: 10, dust: 'dusty' }], help: 'One row for each service of each machine.' },

  { key: 'dustyFactor', label: 'Dusty: hours times', ...factor, default: 0.5, help: 'An assumption. Published tables say "more often in dust" and give no figure: fit it from your own job sheets.' },
  { key: 'heavyFactor', label: 'Heavy dust or dry slurry: hours times', ...factor, default: 0.25, help: 'An assumption, as above.' },
  { key: 'waterFactor', label: 'Cuts wet: hours times', ...factor, default: 0.7, help: 'An assumption. A relubrication guide gives 0.5 to 0.7 for normal and 0.2 to 0.5 for heavy dirt or water.' },
  { key: 'loadFactor', label: 'Heavy load: hours times', ...factor, default: 0.7, help: 'An assumption.' },
  { key: 'least', label: 'Never shorter than this share of the interval', kind: 'quantity', dimension: 'ratio', units: ['%', '%'], default: 20, min: 0, max: 100, more: true, group: 'What the duty does' },

  { key: 'replace', label: 'Is a part to be replaced by the clock?', kind: 'yes-no', default: false, more: true, group: 'A part whose life you know' },
  { key: 'lifeFrom', label: 'Its life is known from', kind: 'choice', default: 'typed', more: true, group: 'A part whose life you know', when: wears, options: [{ value: 'typed', label: 'Weibull shape and scale' }, { value: 'records', label: 'Our own records' }] },
  { key: 'shape', label: 'Weibull shape', kind: 'number', default: 2.5, min: 0.2, max: 20, more: true, group: 'A part whose life you know', when: { field: 'lifeFrom', is: ['typed'] }, help: '1: fails by chance. 1 to 4: wears. Above 4: wears out all at about the same age.' },
  { key: 'scale', label: 'Hours by which 63 % have failed, on clean work', ...hours, above: true, default: 400, more: true, group: 'A part whose life you know', when: { field: 'lifeFrom', is: ['typed'] } },
  { key: 'records', label: 'Hours of parts from the job sheets', kind: 'rows', columns: records, minRows: 3, maxRows: 500, more: true, group: 'A part whose life you know', when: { field: 'lifeFrom', is: ['records'] }, help: 'From the same duty as the machine it is for: the dust factor is not applied to them again.' },
  { key: 'planned', label: 'Changing it in time costs', kind: 'money', default: 60, min: 0, above: true, max: 1e6, more: true, group: 'A part whose life you know', when: wears },
  { key: 'failure', label: 'A failure costs', kind: 'money', default: 300, min: 0, above: true, max: 1e6, more: true, group: 'A part whose life you know', when: wears, help: 'Part, labor, stop on site and what it takes with it.' },
  { key: 'partDust', label: 'Dust where this part works', kind: 'choice', default: 'clean', options: dust, more: true, group: 'A part whose life you know', when: { field: 'lifeFrom', is: ['typed'] } },
]);
