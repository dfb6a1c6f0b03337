/** A server for writing starts beside a file that is not in order, and shows it once it is. */
import type { Loader, LoaderContext } from 'astro/loaders';
import { expect, it } from 'vitest';
import { passingOver } from '../../src/steps/writing/passing-over.ts';

/** A loader as Astro's own: reads each file, has its fields checked, keeps it. */
const reads = (texts: Record<string, string>): Loader => ({
  name: 'texts',
  load: async (context) => {
    for (const [id, title] of Object.entries(texts))
      context.store.set({ id, data: await context.parseData({ id, data: { title } }) });
  },
});

it('passes over a file whose fields are not in order, keeps the others, and takes it once it is mended', async () => {
  const kept = new Map<string, unknown>();
  const context = {
    parseData: ({ data }: { data: { title: string } }) =>
      data.title === '' ? Promise.reject(new Error('title: Required')) : Promise.resolve(data),
    store: { set: ({ id, data }: { id: string; data: unknown }) => Boolean(kept.set(id, data)) },
  } as unknown as LoaderContext;
  const load = async (texts: Record<string, string>) => {
    const loader = passingOver(reads(texts));
    if (typeof loader.load === 'function') await loader.load(context);
  };
  await load({ belt: 'The belt', cord: '' });
  expect([...kept]).toEqual([['belt', { title: 'The belt' }]]);
  await load({ cord: 'The cord' });
  expect(kept.get('cord')).toEqual({ title: 'The cord' });
  // What stood before stands while somebody is in the middle of a change.
  await load({ cord: '' });
  expect(kept.get('cord')).toEqual({ title: 'The cord' });
});
