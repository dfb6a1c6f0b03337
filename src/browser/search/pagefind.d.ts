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
    /** Only where a search has read it. */
    readonly sub_results?: readonly SubResult[];
    readonly excerpt?: string;
    readonly anchors: readonly { readonly id: string; readonly text: string }[];
    readonly meta: Readonly<Record<string, string>>;
  }
  interface Instance {
    search(words: string): Promise<{
      results: readonly { readonly id: string; readonly score: number; readonly data: () => Promise<Fragment> }[];
    }>;
    preload(words: string): Promise<unknown>;
  }
  export function createInstance(options: {
    basePath: string;
    baseUrl: string;
    noWorker: boolean;
    excerptLength?: number;
  }): Instance;
}
