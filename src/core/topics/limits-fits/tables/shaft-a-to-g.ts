/**
 * Shaft fundamental deviations a to g: how far the upper limit lies below the nominal size.
 * Source: iso-286-1, Table 2. `null` where the standard defines none; a and b are not defined up to 1 mm.
 * Above 500 mm only d, e, f and g are left, and the intermediate steps share a row.
 */
export const lettersAToG = ['a', 'b', 'c', 'cd', 'd', 'e', 'ef', 'f', 'fg', 'g'] as const;

/** [size up to and including, mm; then -es for each letter, µm]. */
export const shaftAToG: readonly (readonly (number | null)[])[] = [
  [3, 270, 140, 60, 34, 20, 14, 10, 6, 4, 2],
  [6, 270, 140, 70, 46, 30, 20, 14, 10, 6, 4],
  [10, 280, 150, 80, 56, 40, 25, 18, 13, 8, 5],
  [14, 290, 150, 95, 70, 50, 32, 23, 16, 10, 6],
  [18, 290, 150, 95, 70, 50, 32, 23, 16, 10, 6],
  [24, 300, 160, 110, 85, 65, 40, 28, 20, 12, 7],
  [30, 300, 160, 110, 85, 65, 40, 28, 20, 12, 7],
  [40, 310, 170, 120, 100, 80, 50, 35, 25, 15, 9],
  [50, 320, 180, 130, 100, 80, 50, 35, 25, 15, 9],
  [65, 340, 190, 140, null, 100, 60, null, 30, null, 10],
  [80, 360, 200, 150, null, 100, 60, null, 30, null, 10],
  [100, 380, 220, 170, null, 120, 72, null, 36, null, 12],
  [120, 410, 240, 180, null, 120, 72, null, 36, null, 12],
  [140, 460, 260, 200, null, 145, 85, null, 43, null, 14],
  [160, 520, 280, 210, null, 145, 85, null, 43, null, 14],
  [180, 580, 310, 230, null, 145, 85, null, 43, null, 14],
  [200, 660, 340, 240, null, 170, 100, null, 50, null, 15],
  [225, 740, 380, 260, null, 170, 100, null, 50, null, 15],
  [250, 820, 420, 280, null, 170, 100, null, 50, null, 15],
  [280, 920, 480, 300, null, 190, 110, null, 56, null, 17],
  [315, 1050, 540, 330, null, 190, 110, null, 56, null, 17],
  [355, 1200, 600, 360, null, 210, 125, null, 62, null, 18],
  [400, 1350, 680, 400, null, 210, 125, null, 62, null, 18],
  [450, 1500, 760, 440, null, 230, 135, null, 68, null, 20],
  [500, 1650, 840, 480, null, 230, 135, null, 68, null, 20],
  [630, null, null, null, null, 260, 145, null, 76, null, 22],
  [800, null, null, null, null, 290, 160, null, 80, null, 24],
  [1000, null, null, null, null, 320, 170, null, 86, null, 26],
  [1250, null, null, null, null, 350, 195, null, 98, null, 28],
  [1600, null, null, null, null, 390, 220, null, 110, null, 30],
  [2000, null, null, null, null, 430, 240, null, 120, null, 32],
  [2500, null, null, null, null, 480, 260, null, 130, null, 34],
  [3150, null, null, null, null, 520, 290, null, 145, null, 38],
];
