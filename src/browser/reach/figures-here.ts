/**
 * Whether the device holds something a form must show before anybody touches it. Only looks at texts as they lie, so
 * that a page at rest carries neither the records' code nor the calculator's; a form woken for nothing does no harm.
 */
const ofFigures = (id: string): RegExp =>
  new RegExp(`^almanac/ticket/[^/]*/figures/${encodeURIComponent(id)}(?:%20.*)?$`);

/** @param id of the form, "blade-speed" @param system units its figures are written in, if it can switch */
export function figuresHere(id: string, system: string | undefined): boolean {
  return linked(id) || onDevice(id, system);
}

function linked(id: string): boolean {
  const query = new URLSearchParams(location.search);
  return (query.get('calc') ?? id) === id && [...query.keys()].some((key) => key.startsWith('f.'));
}

function onDevice(id: string, system: string | undefined): boolean {
  try {
    const units = localStorage.getItem('almanac-units');
    if (units !== null && system !== undefined && units !== system) return true;
    const bench = sessionStorage.getItem('almanac-bench') ?? localStorage.getItem('almanac/device/bench/') ?? '';
    if (/"machine":"[^"]/.test(bench)) return true;
    const key = ofFigures(id);
    for (let i = 0; i < localStorage.length; i += 1) if (key.test(localStorage.key(i) ?? '')) return true;
    return false;
  } catch {
    // Storage shut off: nothing was kept.
    return false;
  }
}
