/**
 * Materials of shafts, rings and housings, with where each figure comes from.
 * Strengths are of common tempers and only tell a safe stress from a doubtful one.
 */
export interface Material {
  readonly label: string;
  /** Young's modulus [Pa] and Poisson's ratio [1]. */
  readonly E: number;
  readonly nu: number;
  readonly elasticSource: string;
  /** Linear expansion [1/K]. */
  readonly alpha: number;
  readonly alphaSource: string;
  /** Density [kg/m3] and specific heat [J/(kg·K)]; from memory. */
  readonly density: number;
  readonly heat: number;
  /** Yield strength, for iron the tensile strength [Pa]; from memory. */
  readonly strength: number;
  /** Aluminum and magnesium: soft, and growing more than a steel ring when warm. */
  readonly light: boolean;
}

const shigley = 'shigley-a5';
const callister = 'callister-expansion';
const memory = 'materials-memory';

function material(
  label: string,
  E: number,
  nu: number,
  elasticSource: string,
  alpha: number,
  alphaSource: string,
  rest: readonly [number, number, number],
  light = false,
): Material {
  return {
    label,
    E: E * 1e9,
    nu,
    elasticSource,
    alpha: alpha * 1e-6,
    alphaSource,
    density: rest[0],
    heat: rest[1],
    strength: rest[2] * 1e6,
    light,
  };
}

// prettier-ignore
export const materials = {
  'carbon-steel': material('Carbon steel', 207, 0.292, shigley, 11.7, callister, [7850, 486, 300]),
  'alloy-steel': material('Alloy steel, hardened and tempered', 207, 0.292, shigley, 12.3, callister, [7850, 477, 650]),
  'bearing-steel': material('Bearing steel', 208, 0.3, memory, 12.5, 'bearing-steel-expansion', [7830, 475, 2000]),
  'grey-iron': material('Gray cast iron', 100, 0.211, shigley, 11.4, callister, [7150, 540, 150]),
  'ductile-iron': material('Ductile iron', 169, 0.29, memory, 11.2, callister, [7100, 544, 276]),
  'aluminium-cast': material('Aluminum, sand or mold cast', 72.4, 0.33, memory, 21.5, callister, [2690, 963, 165], true),
  'aluminium-die-cast': material('Aluminum, die cast', 71, 0.33, 'light-metal-table', 21.8, memory, [2740, 963, 160], true),
  'aluminium-wrought': material('Aluminum, machined from bar', 71.7, 0.333, shigley, 23.6, callister, [2700, 896, 270], true),
  magnesium: material('Magnesium, die cast', 44.8, 0.35, shigley, 26, callister, [1810, 1050, 150], true),
} as const satisfies Record<string, Material>;

export type MaterialKey = keyof typeof materials;

/** Expansion, stiffness and density of a material, each with its source. */
export function materialOf(key: MaterialKey): Material {
  return materials[key];
}

function option<K extends MaterialKey>(value: K) {
  return { value, label: materials[value].label };
}

export const housingMaterials = [
  option('aluminium-die-cast'),
  option('aluminium-cast'),
  option('aluminium-wrought'),
  option('magnesium'),
  option('grey-iron'),
  option('ductile-iron'),
  option('carbon-steel'),
] as const;
export const shaftMaterials = [
  option('carbon-steel'),
  option('alloy-steel'),
  option('bearing-steel'),
  option('ductile-iron'),
  option('aluminium-wrought'),
] as const;
export const allMaterials = [...housingMaterials, option('alloy-steel'), option('bearing-steel')] as const;
