/** Sums to do before a day's cutting, and the calculator each leads to. */
export const daySums = {
  head: 'Work it out before you cut',
  sums: [
    { topic: 'dust-control', name: 'Dust: which water and which mask' },
    { topic: 'water-supply', name: 'Water: how much to bring, and the slurry' },
    { topic: 'noise-dose', name: 'Noise: how many minutes are left' },
    { topic: 'hand-arm-vibration', name: 'Shaking hands: how many minutes are left' },
    { topic: 'fume-room', name: 'Fumes: why no engine runs indoors' },
  ],
};
