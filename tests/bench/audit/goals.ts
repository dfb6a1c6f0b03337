/** The pages audited, one of each kind and the heaviest, with the speed each must reach. */
export interface Goal {
  readonly page: string;
  /** Out of a hundred. */
  readonly speed: number;
}

export const goals: readonly Goal[] = [
  { page: 'index.html', speed: 99 },
  { page: 'es.html', speed: 99 },
  { page: 'guides/before-you-start-a-cut-off-saw.html', speed: 99 },
  { page: 'es/guides/before-you-start-a-cut-off-saw.html', speed: 99 },
  { page: 'trouble/will-not-start.html', speed: 99 },
  { page: 'es/trouble/will-not-start.html', speed: 99 },
  { page: 'check/hand-held.html', speed: 99 },
  { page: 'point/cut-off-saw.html', speed: 99 },
  { page: 'faults/hard-to-start.html', speed: 99 },
  { page: 'calculators/belt-tension.html', speed: 99 },
  { page: 'calculators/bearing-fit.html', speed: 99 },
  { page: 'calculators/repair-worth.html', speed: 99 },
  { page: 'jobs/blade-shaft-bearings.html', speed: 97 },
  { page: 'job-sheet.html', speed: 99 },
  { page: 'search.html', speed: 99 },
];
