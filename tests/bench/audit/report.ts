/** What is read from a report of the auditing program. */
export interface Report {
  readonly audits: Readonly<Record<string, Audit>>;
  readonly categories: Readonly<Record<string, Category>>;
}

interface Audit {
  readonly title: string;
  readonly score: number | null;
  readonly scoreDisplayMode: string;
  readonly numericValue?: number;
  readonly displayValue?: string;
  readonly details?: { readonly items?: readonly unknown[] };
}

interface Category {
  readonly score: number | null;
  readonly auditRefs: readonly { readonly id: string; readonly weight: number }[];
}

/** Parts of one where nothing else is said. */
export interface Figures {
  readonly speed: number;
  readonly accessible: number;
  readonly practice: number;
  readonly found: number;
  /** First and largest paint, and how long the page could not answer [ms]. */
  readonly firstPaint: number;
  readonly largestPaint: number;
  readonly blocked: number;
  readonly shift: number;
}

export function figuresOf({ audits, categories }: Report): Figures {
  const score = (name: string) => categories[name]?.score ?? 0;
  const figure = (name: string) => audits[name]?.numericValue ?? NaN;
  return {
    speed: score('performance'),
    accessible: score('accessibility'),
    practice: score('best-practices'),
    found: score('seo'),
    firstPaint: figure('first-contentful-paint'),
    largestPaint: figure('largest-contentful-paint'),
    blocked: figure('total-blocking-time'),
    shift: figure('cumulative-layout-shift'),
  };
}

/** What a category counts against the page, and what the program could not do. */
export function complaintsOf({ audits, categories }: Report): string[] {
  return Object.entries(categories).flatMap(([name, { auditRefs }]) =>
    auditRefs.flatMap(({ id, weight }) => {
      const audit = audits[id];
      if (!audit || (audit.score ?? 1) >= 0.9 || (name === 'performance' && weight === 0)) return [];
      const items = JSON.stringify(audit.details?.items ?? []).slice(0, 300);
      return [`${name}, ${id} ${audit.displayValue ?? ''} ${name === 'performance' ? '' : items}`];
    }),
  );
}
