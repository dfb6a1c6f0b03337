/** Signal words of ANSI Z535, and how a source was seen. Small on their own: calculators carry them too. */
export const level = { danger: 'Danger', warning: 'Warning', caution: 'Caution', notice: 'Notice' };

export const how = {
  read: 'read in the source',
  quoted: 'read where another work quotes it',
  memory: 'from memory, unchecked',
  'common-practice': 'common practice, no source',
  arithmetic: 'arithmetic',
};
