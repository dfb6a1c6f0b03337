import { describe, expect, it } from 'vitest';
import { topics } from '../../src/core/registry.ts';
import { formulaMarkup, formulaTex } from '../../src/lib/formula-markup.ts';

const bare = (markup: string) => markup.replace(/<[^>]*>/g, '').replace(/[\s\u2061]/g, '');

describe.each(Object.entries(topics))('%s', (_, topic) => {
  it('every formula can be set, without a style the page forbids', () => {
    for (const f of topic.formulas) {
      const markup = formulaMarkup(f.expression);
      expect(markup, f.id).toMatch(/^<math /);
      expect(markup, f.id).not.toMatch(/ style=| class=/);
    }
  });
});

it('Greek letters are Greek and a mark below stays below', () => {
  expect(bare(formulaMarkup('theta_s = pi * D'))).toBe('θs=π⋅D');
  expect(formulaMarkup('theta_s = 2 * x')).toMatch(/<msub>/);
});

it('brackets that matter stay and brackets that a fraction bar replaces go', () => {
  expect(formulaTex('x = (a + b) / 2')).not.toContain('\\left(');
  expect(formulaTex('x = (a + b) * 2')).toContain('\\left(');
});
