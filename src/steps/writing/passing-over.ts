/**
 * While somebody writes, a file whose fields are not in order is passed over: its page is missing, or stands as it was,
 * until it is mended, and the content check says why. Without this a server would not start beside such a file.
 */
import type { Loader } from 'astro/loaders';

export function passingOver(loader: Loader): Loader {
  return {
    ...loader,
    load: (context) => {
      const passedOver = new WeakSet<object>();
      return loader.load({
        ...context,
        parseData: async (entry) => {
          try {
            return await context.parseData(entry);
          } catch {
            const nothing = {} as typeof entry.data;
            passedOver.add(nothing);
            return nothing;
          }
        },
        store: {
          ...context.store,
          set: (entry) => (passedOver.has(entry.data) ? false : context.store.set(entry)),
        },
      });
    },
  };
}
