/** What whoever writes begins with: a guide's headings, and in each what belongs there; a shop's words. */
export const newGuide = {
  summary: 'One sentence that says what this page is for: write it before you publish.',
  sections: [
    ['Before you start', '1. What must be off, cold or out of the way.'],
    ['Step by step', '1. One step a line, the verb first.'],
    ['Stop and bring it in when', '- What you see, hear or smell.'],
  ] as readonly (readonly [heading: string, inside: string])[],
};

/** Examples in a new shop.yaml. */
export const newShop = {
  line: 'Small engines, repaired',
  hours: 'Monday to Friday, 8 to 17',
};
