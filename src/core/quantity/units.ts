/**
 * Every unit the almanac understands, by the dimension it measures.
 * `si` is how many SI units one of it is (exact where a definition exists:
 * NIST SP 811 appendix B); `zero` shifts scales whose zero is not SI zero.
 * `math` is the same unit written for mathjs, so that tests can check us.
 */
export const dimensions = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  mass: 'kg',
  'linear-mass': 'kg/m',
  density: 'kg/m3',
  time: 's',
  speed: 'm/s',
  acceleration: 'm/s2',
  'area-rate': 'm2/s',
  rotation: '1/s',
  frequency: 'Hz',
  force: 'N',
  torque: 'N·m',
  pressure: 'Pa',
  power: 'W',
  energy: 'J',
  inertia: 'kg·m2',
  stiffness: 'N/m',
  'bending-stiffness': 'N·m2',
  angle: 'rad',
  temperature: 'K',
  'temperature-difference': 'K (difference)',
  expansion: '1/K',
  viscosity: 'm2/s',
  flow: 'm3/s',
  'mass-flow': 'kg/s',
  'air-change': '1/s (air changes)',
  emission: 'kg/J',
  'heat-transfer': 'W/(m2·K)',
  'specific-heat': 'J/(kg·K)',
  ratio: '1',
} as const;

export type Dimension = keyof typeof dimensions;

export interface Unit {
  readonly dimension: Dimension;
  readonly si: number;
  readonly zero?: number;
  readonly math: string;
  /** Other spellings a person may type. An exact match is preferred; without one, case does not count. */
  readonly also?: readonly string[];
  /** Decimals shown when a value does not say otherwise. */
  readonly decimals?: number;
}

const inch = 0.0254;
const foot = 0.3048;
const pound = 0.45359237;
const gravity = 9.80665;
const lbf = pound * gravity;
const gallon = 231 * inch ** 3;

// prettier-ignore
export const units = {
  mm: { dimension: 'length', si: 1e-3, math: 'mm', also: ['millimetre', 'millimeter', 'millimetres', 'millimeters', 'milímetro', 'milímetros'] },
  cm: { dimension: 'length', si: 1e-2, math: 'cm' },
  m: { dimension: 'length', si: 1, math: 'm', also: ['metre', 'meter', 'metres', 'meters'] },
  'µm': { dimension: 'length', si: 1e-6, math: 'um', also: ['um', 'μm', 'micron', 'microns', 'micrometre'], decimals: 1 },
  in: { dimension: 'length', si: inch, math: 'inch', also: ['inch', 'inches', '"', '″', '”', "''", 'pulgada', 'pulgadas', 'ins'] },
  thou: { dimension: 'length', si: inch / 1000, math: 'mil', also: ['mil', 'mils'], decimals: 2 },
  ft: { dimension: 'length', si: foot, math: 'ft', also: ['foot', 'feet', 'pie', 'pies', "'", '′', '’'] },
  mm2: { dimension: 'area', si: 1e-6, math: 'mm^2', also: ['mm²', 'mm^2'] },
  m2: { dimension: 'area', si: 1, math: 'm^2', also: ['m²', 'm^2'] },
  in2: { dimension: 'area', si: inch ** 2, math: 'inch^2', also: ['in²', 'sq in', 'in^2'] },
  ft2: { dimension: 'area', si: foot ** 2, math: 'ft^2', also: ['ft²', 'sq ft', 'ft^2'] },
  L: { dimension: 'volume', si: 1e-3, math: 'L', also: ['l', 'litre', 'liter', 'litres', 'liters', 'litro', 'litros', 'ltr', 'ltrs', 'lt', 'lts'] },
  mL: { dimension: 'volume', si: 1e-6, math: 'mL', also: ['ml', 'cc'] },
  cm3: { dimension: 'volume', si: 1e-6, math: 'cm^3', also: ['cm³', 'cm^3', 'ccm'], decimals: 1 },
  in3: { dimension: 'volume', si: inch ** 3, math: 'inch^3', also: ['in³', 'in^3', 'cu in'], decimals: 2 },
  m3: { dimension: 'volume', si: 1, math: 'm^3', also: ['m³', 'm^3'] },
  ft3: { dimension: 'volume', si: foot ** 3, math: 'ft^3', also: ['ft³', 'cu ft', 'ft^3', 'cubic feet'], decimals: 0 },
  gal: { dimension: 'volume', si: gallon, math: 'gallon', also: ['gallon', 'gallons', 'US gal', 'galón', 'galones', 'gals', 'US gals'] },
  qt: { dimension: 'volume', si: gallon / 4, math: '231/4*inch^3', also: ['quart', 'quarts', 'US qt', 'cuarto', 'cuartos', 'qts'], decimals: 2 },
  pt: { dimension: 'volume', si: gallon / 8, math: '231/8*inch^3', also: ['pint', 'pints', 'US pt', 'pinta', 'pintas', 'pts'], decimals: 2 },
  'fl oz': { dimension: 'volume', si: gallon / 128, math: '231/128*inch^3', also: ['fl. oz', 'floz', 'US fl oz', 'fluid ounce', 'fluid ounces', 'oz', 'ounce', 'ounces', 'onza', 'onzas'], decimals: 1 },
  kg: { dimension: 'mass', si: 1, math: 'kg', also: ['kgs', 'kilo', 'kilos'] },
  g: { dimension: 'mass', si: 1e-3, math: 'g', also: ['gram', 'grams', 'gramo', 'gramos'] },
  lb: { dimension: 'mass', si: pound, math: 'lbm', also: ['lbm', 'lbs', 'libra', 'libras'] },
  oz: { dimension: 'mass', si: pound / 16, math: 'lbm/16', also: ['ounce', 'ounces', 'onza', 'onzas'], decimals: 1 },
  'kg/m': { dimension: 'linear-mass', si: 1, math: 'kg/m' },
  'g/m': { dimension: 'linear-mass', si: 1e-3, math: 'g/m' },
  'lb/ft': { dimension: 'linear-mass', si: pound / foot, math: 'lbm/ft' },
  'kg/m3': { dimension: 'density', si: 1, math: 'kg/m^3', also: ['kg/m³'] },
  'mg/m3': { dimension: 'density', si: 1e-6, math: 'mg/m^3', also: ['mg/m³'] },
  'µg/m3': { dimension: 'density', si: 1e-9, math: 'ug/m^3', also: ['µg/m³', 'ug/m3', 'ug/m³', 'μg/m3', 'μg/m³'], decimals: 0 },
  s: { dimension: 'time', si: 1, math: 's', also: ['sec', 'second', 'seconds', 'secs', 'seg', 'segundo', 'segundos'] },
  min: { dimension: 'time', si: 60, math: 'minute', also: ['minute', 'minutes', 'minuto', 'minutos', 'mins'] },
  h: { dimension: 'time', si: 3600, math: 'hour', also: ['hr', 'hrs', 'hour', 'hours', 'hora', 'horas'] },
  day: { dimension: 'time', si: 86400, math: 'day', also: ['days', 'd', 'día', 'días'] },
  year: { dimension: 'time', si: 31557600, math: 'year', also: ['years', 'yr', 'a', 'año', 'años'] },
  'm/s': { dimension: 'speed', si: 1, math: 'm/s', decimals: 1 },
  'km/h': { dimension: 'speed', si: 1 / 3.6, math: 'km/hour', also: ['kph'] },
  'ft/min': { dimension: 'speed', si: foot / 60, math: 'ft/minute', also: ['fpm', 'sfpm', 'sfm'], decimals: 0 },
  'm/min': { dimension: 'speed', si: 1 / 60, math: 'm/minute', decimals: 2 },
  'm/s2': { dimension: 'acceleration', si: 1, math: 'm/s^2', also: ['m/s²', 'm/s^2'], decimals: 1 },
  'm2/h': { dimension: 'area-rate', si: 1 / 3600, math: 'm^2/hour', also: ['m²/h', 'm2/hr', 'm^2/h'], decimals: 2 },
  'in·ft/min': { dimension: 'area-rate', si: (inch * foot) / 60, math: 'inch*ft/minute', also: ['in-ft/min', 'in ft/min', 'inch-feet/min'], decimals: 2 },
  'ft/s': { dimension: 'speed', si: foot, math: 'ft/s' },
  rpm: { dimension: 'rotation', si: 1 / 60, math: '1/minute', also: ['r/min', '1/min', 'rev/min', 'min-1', 'min⁻¹', 'RPM', '/min', 'r.p.m'], decimals: 0 },
  '1/s': { dimension: 'rotation', si: 1, math: '1/s', also: ['rev/s', 'rps'] },
  Hz: { dimension: 'frequency', si: 1, math: 'Hz', also: ['hz', 'hertz'], decimals: 1 },
  N: { dimension: 'force', si: 1, math: 'N', also: ['newton', 'newtons'], decimals: 1 },
  kN: { dimension: 'force', si: 1e3, math: 'kN', decimals: 2 },
  lbf: { dimension: 'force', si: lbf, math: 'lbf', also: ['lb', 'lbs', 'pound-force'], decimals: 1 },
  kgf: { dimension: 'force', si: gravity, math: 'kgf', also: ['kp', 'kg'] },
  'N·m': { dimension: 'torque', si: 1, math: 'N*m', also: ['Nm', 'N m', 'N*m', 'N.m', 'newton-metre'] },
  'lbf·ft': { dimension: 'torque', si: lbf * foot, math: 'lbf*ft', also: ['lbf ft', 'ft lbf', 'lb ft', 'ft lb', 'ft-lb', 'lb-ft', 'lbf*ft', 'ft·lbf', 'ft lbs', 'ft-lbs', 'ft.lb', 'ft.lbs', 'ftlb', 'ftlbs', 'lb.ft', 'lbft', 'lb-fts', 'foot-pound', 'foot-pounds', 'foot pounds'] },
  'lbf·in': { dimension: 'torque', si: lbf * inch, math: 'lbf*inch', also: ['lbf in', 'in lbf', 'lb in', 'in lb', 'in-lb', 'lb-in', 'lbf*in', 'in lbs', 'in-lbs', 'in.lb', 'in.lbs', 'inlb', 'inlbs', 'inch-pound', 'inch-pounds', 'inch pounds'] },
  Pa: { dimension: 'pressure', si: 1, math: 'Pa' },
  kPa: { dimension: 'pressure', si: 1e3, math: 'kPa' },
  MPa: { dimension: 'pressure', si: 1e6, math: 'MPa', also: ['N/mm2', 'N/mm²'] },
  GPa: { dimension: 'pressure', si: 1e9, math: 'GPa' },
  bar: { dimension: 'pressure', si: 1e5, math: 'bar', also: ['bars', 'bares'] },
  psi: { dimension: 'pressure', si: lbf / inch ** 2, math: 'lbf/inch^2', also: ['lbf/in2', 'lbf/in²', 'psig', 'lb/in2', 'lb/in²', 'p.s.i', 'lb', 'lbs', 'pound', 'pounds', '#'] },
  // The conventional inch of mercury: 25.4 mm at 13 595.1 kg/m3 (NIST SP 811, appendix B.8).
  inHg: { dimension: 'pressure', si: inch * 13595.1 * gravity, math: '345.31554*9.80665*Pa', also: ['in Hg', 'inch Hg', '"Hg', '" Hg', 'inches of mercury'], decimals: 1 },
  // Barometers and gauges of other countries: the millibar, and the millimeter of mercury as the inch above.
  hPa: { dimension: 'pressure', si: 100, math: 'hPa', also: ['mbar', 'mb', 'millibar', 'millibars'], decimals: 0 },
  mmHg: { dimension: 'pressure', si: 13.5951 * gravity, math: '13.5951*9.80665*Pa', also: ['mm Hg'], decimals: 0 },
  atm: { dimension: 'pressure', si: 101325, math: 'atm', also: ['atmosphere', 'atmospheres'] },
  'kgf/cm2': { dimension: 'pressure', si: gravity * 1e4, math: 'kgf/cm^2', also: ['kgf/cm²', 'kg/cm2', 'kg/cm²', 'kg/cm^2', 'kp/cm2'], decimals: 1 },
  ksi: { dimension: 'pressure', si: (1000 * lbf) / inch ** 2, math: '1000*lbf/inch^2' },
  W: { dimension: 'power', si: 1, math: 'W' },
  kW: { dimension: 'power', si: 1e3, math: 'kW', decimals: 2 },
  hp: { dimension: 'power', si: 550 * foot * lbf, math: 'hp', also: ['HP', 'bhp', 'horsepower'], decimals: 2 },
  PS: { dimension: 'power', si: 75 * gravity, math: '75*kgf*m/s', also: ['CV', 'cv'] },
  J: { dimension: 'energy', si: 1, math: 'J', decimals: 0 },
  kJ: { dimension: 'energy', si: 1e3, math: 'kJ' },
  'ft·lbf': { dimension: 'energy', si: lbf * foot, math: 'lbf*ft', also: ['ft lbf', 'ft-lb', 'ft lb'], decimals: 0 },
  'kg·m2': { dimension: 'inertia', si: 1, math: 'kg*m^2', also: ['kg·m²', 'kg m2', 'kgm2'] },
  'N/mm': { dimension: 'stiffness', si: 1e3, math: 'N/mm' },
  'N/m': { dimension: 'stiffness', si: 1, math: 'N/m' },
  'lbf/in': { dimension: 'stiffness', si: lbf / inch, math: 'lbf/inch', also: ['lb/in'] },
  'N·m2': { dimension: 'bending-stiffness', si: 1, math: 'N*m^2', also: ['N·m²', 'Nm2'] },
  'lbf·in2': { dimension: 'bending-stiffness', si: lbf * inch ** 2, math: 'lbf*inch^2', also: ['lbf·in²', 'lbf in2'] },
  rad: { dimension: 'angle', si: 1, math: 'rad' },
  '°': { dimension: 'angle', si: Math.PI / 180, math: 'deg', also: ['deg', 'degree', 'degrees'], decimals: 1 },
  '°C': { dimension: 'temperature', si: 1, zero: 273.15, math: 'degC', also: ['C', 'degC', 'º C', 'ºC', '° C', 'deg C', 'degrees C', 'celsius', 'grados C'], decimals: 0 },
  '°F': { dimension: 'temperature', si: 5 / 9, zero: 459.67 * (5 / 9), math: 'degF', also: ['F', 'degF', 'ºF', '° F', 'deg F', 'degrees F', 'fahrenheit', 'grados F'], decimals: 0 },
  K: { dimension: 'temperature', si: 1, zero: 0, math: 'K', also: ['kelvin'] },
  'K diff': { dimension: 'temperature-difference', si: 1, math: 'K', also: ['K', 'C°', 'kelvin'], decimals: 0 },
  '°C diff': { dimension: 'temperature-difference', si: 1, math: 'K', also: ['°C', 'C', 'degC', 'ºC'], decimals: 0 },
  '°F diff': { dimension: 'temperature-difference', si: 5 / 9, math: 'degR', also: ['°F', 'F', 'degF', 'ºF', 'R'], decimals: 0 },
  'µm/(m·K)': { dimension: 'expansion', si: 1e-6, math: 'um/(m*K)', also: ['um/m/K', 'µm/m/K', 'µm/m·K', '1e-6/K', '10^-6/K', 'ppm/K'], decimals: 1 },
  'µin/(in·°F)': { dimension: 'expansion', si: 1.8e-6, math: '1e-6/degR', also: ['uin/in/F', '1e-6/F'], decimals: 1 },
  '1/K': { dimension: 'expansion', si: 1, math: '1/K' },
  'mm2/s': { dimension: 'viscosity', si: 1e-6, math: 'mm^2/s', also: ['cSt', 'mm²/s'] },
  'L/min': { dimension: 'flow', si: 1e-3 / 60, math: 'L/minute', also: ['l/min', 'lpm'], decimals: 2 },
  'gal/min': { dimension: 'flow', si: gallon / 60, math: 'gallon/minute', also: ['gpm'], decimals: 2 },
  'm3/h': { dimension: 'flow', si: 1 / 3600, math: 'm^3/hour', also: ['m³/h', 'm3/hr', 'm^3/h'], decimals: 1 },
  'ft3/min': { dimension: 'flow', si: foot ** 3 / 60, math: 'ft^3/minute', also: ['ft³/min', 'cfm', 'CFM'], decimals: 2 },
  'g/h': { dimension: 'mass-flow', si: 1e-3 / 3600, math: 'g/hour', also: ['g/hr'], decimals: 0 },
  '1/h': { dimension: 'air-change', si: 1 / 3600, math: '1/hour', also: ['/h', 'ach', 'ACH', 'per hour'], decimals: 1 },
  'g/kWh': { dimension: 'emission', si: 1e-3 / 3.6e6, math: 'g/(kW*hour)', also: ['g/kW·h', 'g/kW-h', 'g/(kW·h)'], decimals: 0 },
  'W/(m2·K)': { dimension: 'heat-transfer', si: 1, math: 'W/(m^2*K)', also: ['W/m2K'] },
  'J/(kg·K)': { dimension: 'specific-heat', si: 1, math: 'J/(kg*K)', also: ['J/kgK'] },
  '%': { dimension: 'ratio', si: 0.01, math: '0.01', also: ['percent', 'per cent'] },
  ppm: { dimension: 'ratio', si: 1e-6, math: '1e-6', also: ['parts per million'], decimals: 0 },
  '1': { dimension: 'ratio', si: 1, math: '1' },
} as const satisfies Record<string, Unit>;

export type UnitKey = keyof typeof units;

/** The unit's facts, widened so that optional parts can be read. */
export function unitOf(key: UnitKey): Unit {
  return units[key];
}

/** A number in `unit`, given in SI. Temperatures shift their zero; differences do not (they have units of their own). */
export function fromUnit(value: number, key: UnitKey): number {
  const unit = unitOf(key);
  return value * unit.si + (unit.zero ?? 0);
}

/** An SI number, given in `unit`. */
export function toUnit(si: number, key: UnitKey): number {
  const unit = unitOf(key);
  return (si - (unit.zero ?? 0)) / unit.si;
}

/** How a unit is written for people: "K diff" and "°C diff" lose the word that tells them apart in code. */
export function unitLabel(key: UnitKey): string {
  if (key === '1') return '';
  if (key === '1/h') return '/h';
  return key
    .replace(' diff', '')
    .replace('2', '²')
    .replace(/(?<=[mn]|ft)3/, '³');
}
