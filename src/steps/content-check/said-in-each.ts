/** Records that customers read say everything in each language the shop speaks; which one is missing where is told. */
import { shopFile } from '../../schemas/places.ts';
import { nameOf, others, type Other } from '../../words/lang.ts';
import { languagesBy } from '../support/shop-says.ts';
import type { ContentFile } from './content-file.ts';
import type { Problem } from './problem.ts';

/** The languages other than English in the shop's list; none while that cannot be read. */
export function otherLanguagesOf(files: readonly ContentFile[]): readonly Other[] {
  const spoken = languagesBy(files.find((f) => f.path === shopFile)?.yaml.data);
  return others.filter((lang) => spoken.has(lang));
}

type Path = readonly (string | number)[];

const isMap = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const each = (list: unknown, at: Path): [Path, unknown][] =>
  Array.isArray(list) ? list.map((one: unknown, i) => [[...at, i], one]) : [];

/** Of each kind of record, the places that say something to a customer. */
const speaking: Readonly<Record<string, (data: Readonly<Record<string, unknown>>) => [Path, unknown][]>> = {
  hazards: (data) => [[[], data]],
  trouble: (data) => [[[], data]],
  parts: (data) => [[[], data], ...each(data['parts'], ['parts'])],
  checks: (data) => [
    [[], data],
    ...each(data['groups'], ['groups']).flatMap(([at, group]): [Path, unknown][] => [
      [at, group],
      ...each(isMap(group) ? group['checks'] : [], [...at, 'checks']),
    ]),
  ],
};

export function saidInEach(files: readonly ContentFile[]): Problem[] {
  const spoken = otherLanguagesOf(files);
  return files.flatMap((file) => {
    const { data } = file.yaml;
    if (file.place === '' || !isMap(data)) return [];
    return (speaking[file.folder]?.(data) ?? []).flatMap(([at, said]) =>
      spoken
        .filter((lang) => isMap(said) && said[lang] === undefined)
        .map((lang) => ({
          file: file.path,
          line: file.yaml.lineOf(at),
          field: [...at, lang].join('.'),
          got: 'nothing',
          allowed: `the same in ${nameOf(lang)}, or languages without ${lang} in ${shopFile}`,
        })),
    );
  });
}
