/** The part of Pagefind's browser code that the engine uses; the build puts the real thing in its place. */
declare module 'almanac:pagefind' {
  interface SubResult {
    readonly title: string;
    readonly url: string;
    readonly excerpt: string;
    readonly anchor?: { readonly id: string };
    readonly weighted_locations: readonly { readonly balanced_score: number }[];
  }
  interface Fragment {
    readonly sub_results: readonly SubResult[];
    readonly raw_url?: string;
    readonly url: string;
    readonly excerpt: string;
    readonly content: string;
    readonly meta: Readonly<Record<string, string>>;
    readonly filters: Readonly<Record<string, readonly string[]>>;
  }
  interface Instance {
    search(
      words: string,
      options?: { filters?: Record<string, unknown> },
    ): Promise<{ results: readonly { readonly id: string; data(): Promise<Fragment> }[] }>;
    filters(): Promise<unknown>;
  }
  export function createInstance(options: {
    basePath: string;
    baseUrl: string;
    noWorker: boolean;
    excerptLength?: number;
  }): Instance;
}
