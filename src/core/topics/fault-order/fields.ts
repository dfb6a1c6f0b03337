import { defineFields } from '../../contract/field.ts';

const share = { kind: 'quantity', dimension: 'ratio', units: ['%', '%'], min: 0, max: 100 } as const;
const minutes = { kind: 'number', min: 0, above: true, max: 10000 } as const;
const name = { kind: 'text', maxLength: 80 } as const;

const answers = [
  { value: 'open', label: 'Not done yet' },
  { value: 'shows', label: 'Shows a fault' },
  { value: 'clear', label: 'Shows none' },
] as const;

const suspects = [
  { key: 'name', label: 'Suspect', ...name },
  { key: 'likelihood', label: 'How likely', ...share },
  { key: 'fixMinutes', label: 'Minutes to put right', kind: 'number', default: 0, min: 0, max: 100000 },
] as const;

const checks = [
  { key: 'name', label: 'Check', ...name },
  { key: 'suspect', label: 'Tells about', ...name },
  { key: 'minutes', label: 'Minutes', ...minutes },
  { key: 'cost', label: 'Money it uses up', kind: 'money', default: 0, min: 0, max: 1e6 },
  { key: 'ifFaulty', label: 'Shows a fault when there is one', ...share, default: 100 },
  { key: 'ifSound', label: 'Shows one when there is none', ...share, default: 0 },
  { key: 'stripDown', label: 'Needs the strip-down', ...name, optional: true },
  { key: 'answer', label: 'Answer', kind: 'choice', default: 'open', options: answers },
] as const;

const stripDowns = [
  { key: 'name', label: 'Strip-down', ...name },
  { key: 'minutes', label: 'Minutes', ...minutes },
] as const;

/** The default complaint: a cut-off saw that is hard to start. Likelihoods and minutes are common practice, no source. */
export const fields = defineFields([
  {
    key: 'suspects',
    label: 'Suspects',
    kind: 'rows',
    columns: suspects,
    minRows: 1,
    maxRows: 30,
    default: [
      { name: 'Belt or blade drags the engine', likelihood: 20, fixMinutes: 30 },
      { name: 'Stale fuel', likelihood: 25, fixMinutes: 15 },
      { name: 'Plug fouled', likelihood: 20, fixMinutes: 5 },
      { name: 'Filter blocked', likelihood: 15, fixMinutes: 10 },
      { name: 'Cylinder worn by dust', likelihood: 15, fixMinutes: 180 },
    ],
  },
  {
    key: 'checks',
    label: 'Checks',
    kind: 'rows',
    columns: checks,
    minRows: 1,
    maxRows: 40,
    help: 'A check that tells about several suspects stands here once for each of them, under the same name.',
    default: [
      {
        name: 'Pull the cord and watch the blade',
        suspect: 'Belt or blade drags the engine',
        minutes: 2,
        ifFaulty: 85,
        ifSound: 4,
      },
      {
        name: 'Pull the cord with the belt off',
        suspect: 'Belt or blade drags the engine',
        minutes: 3,
        ifFaulty: 97,
        ifSound: 2,
        stripDown: 'Belt cover',
      },
      { name: 'Fresh fuel', suspect: 'Stale fuel', minutes: 10, ifFaulty: 90, ifSound: 5 },
      { name: 'Look at the plug', suspect: 'Plug fouled', minutes: 5, ifFaulty: 90, ifSound: 5 },
      { name: 'Look at the filter', suspect: 'Filter blocked', minutes: 3, ifFaulty: 95, ifSound: 3 },
      { name: 'Look in the cylinder', suspect: 'Cylinder worn by dust', minutes: 8, ifFaulty: 93, ifSound: 3 },
    ],
  },
  {
    key: 'stripDowns',
    label: 'Strip-downs several checks share',
    kind: 'rows',
    columns: stripDowns,
    minRows: 0,
    maxRows: 20,
    default: [{ name: 'Belt cover', minutes: 8 }],
    help: 'Paid once, by the first check that needs it.',
  },
  {
    key: 'complete',
    label: 'It can only be one of these',
    kind: 'yes-no',
    default: false,
    more: true,
    usual: 'A list is seldom complete.',
    help: 'No: what is missing to 100 % stays with something else.',
  },
  {
    key: 'confirmLast',
    label: 'Check the last suspect too',
    kind: 'yes-no',
    default: true,
    more: true,
    usual: 'A part is looked at before it is ordered.',
    help: 'No: once all others are cleared, the last one counts as found.',
  },
  {
    key: 'sure',
    label: 'Likely enough to put right and try',
    ...share,
    default: 80,
    min: 50,
    more: true,
    usual: 'Four in five is enough to try the repair.',
    help: 'A suspect this likely counts as found.',
  },
  {
    key: 'fallbackMinutes',
    label: 'Minutes lost if none of them is found',
    kind: 'number',
    default: 60,
    min: 0,
    max: 100000,
    more: true,
    usual: 'An hour for a full strip-down.',
    help: 'The way out: a full strip-down, or sending the machine away. It is also taken early, when the checks cost more than they are worth. 0: there is none.',
  },
  {
    key: 'labourRate',
    label: 'Labor rate for an hour',
    kind: 'money',
    default: 75,
    min: 0.01,
    max: 1e6,
    more: true,
    usual: 'The shop’s own rate fills it; it counts only where a check uses up money.',
    help: 'Turns the money of a check into minutes.',
  },
]);
