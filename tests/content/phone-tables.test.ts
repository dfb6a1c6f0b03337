/** The rule by which an article's table is laid out on a phone, on tables of three kinds. */
import { expect, test } from 'vitest';
import { columnsOf, forPhone } from '../../src/lib/table-rows.ts';

const table = (head: string[], ...rows: string[][]) =>
  `<thead><tr>${head.map((h) => `<th>${h}</th>`).join('')}</tr></thead><tbody>${rows
    .map((row) => `<tr>${row.map((c) => `<td>${c}</td>`).join('')}</tr>`)
    .join('')}</tbody>`;

test('words in three columns become blocks, each cell under the name of its column', () => {
  const { form, html } = forPhone(
    table(['you see', 'it may be', 'do'], ['blade turns at idle', 'the clutch does not let go', 'stop <a>call</a>']),
  );
  expect(form).toBe('blocks');
  expect(html).toContain('<th scope="row">blade turns at idle</th>');
  expect(html).toContain('<td data-of="it may be">the clutch does not let go</td>');
  expect(html).toContain('<td data-of="do">stop <a>call</a></td>');
});

test('many figures under long heads move sideways; few short ones stay', () => {
  const long = ['saw', 'outdoors, up to 4 h', 'outdoors, over 4 h', 'indoors, up to 4 h'];
  expect(forPhone(table(long, ['hand-held', '10', '10', '20'])).form).toBe('sideways');
  expect(forPhone(table(['fuel', '50:1', '40:1', '25:1'], ['1 L', '20 mL', '25 mL', '40 mL'])).form).toBe('as it is');
});

test('figures beside a sentence become blocks, a row head of its own stays the head', () => {
  const row =
    '<tr><th scope="row">full-face mask</th><td>50</td><td></td><td>29 CFR 1910.134, read where another quotes it</td></tr>';
  const { form, html } = forPhone(
    `<thead><tr><th>mask</th><th>factor</th><th>up to</th><th>where it stands</th></tr></thead><tbody>${row}</tbody>`,
  );
  expect(form).toBe('blocks');
  expect(html).toContain('<th scope="row">full-face mask</th><td data-of="factor">50</td><td data-of="up to"></td>');
});

test('two columns stay as they are', () => {
  const two = table(['mark', 'must be'], ['bore', 'the size of the shaft, slides on by hand without play']);
  expect(forPhone(two)).toEqual({ form: 'as it is', html: two });
});

test('a table is told from the others of its page by its columns', () => {
  expect(columnsOf(table(['material', 'silica &amp; <b>quartz</b>', ''], ['tile', '30', '']))).toBe(
    'material, silica & quartz',
  );
  expect(columnsOf('<tbody><tr><td>no head</td></tr></tbody>')).toBe('');
});
