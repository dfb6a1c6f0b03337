/** One slip at a time in content that is otherwise right: each is told, with its line, in words. */
import { cp, mkdir, readFile, rename, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { problemsAfter, problemsOf } from './good-content.ts';

const job = 'knowledge/jobs/wash-down.mdx';
const shop = 'shop/shop.yaml';
/** The good job ends in line 16. */
const below = (text: string) => (good: string) => `${good}\n${text}\n`;
const field = (name: string, value: string) => (good: string) =>
  good.replace(new RegExp(`^${name}: .*$`, 'm'), `${name}: ${value}`);

describe('text that is no plain article', () => {
  it.each([
    ['<hazard id="kickback" />', /:18 <hazard>: a component in small letters \| <Hazard \.\.\. \/>/],
    ['<script>alert(1)</script>', /:18 <script>: an HTML tag/],
    ['<meta http-equiv="refresh" content="0;url=https://example.org/" />', /:18 <meta>: an HTML tag/],
    ['<iframe src="https://example.org/"></iframe>', /:18 <iframe>: an HTML tag/],
    ['<form action="/x"></form>', /:18 <form>: an HTML tag/],
    ['<br onclick="x()" />', /:18 <br>: the attribute onclick \| no attributes/],
    ['<Hazard id="kickback" level="notice" />', /:18 <Hazard>: the attribute level \| id\./],
    ['<Hazard id={process.env.HOME} />', /:18 <Hazard id>: \{process\.env\.HOME\} \| figures and quoted text only/],
    ['<Hazard {...everything} />', /:18 <Hazard>: \{.*\} \| attributes written out one by one/],
    ['<BothUnits mm="abc" />', /:18 <BothUnits mm>: "abc" \| a number, like mm=\{25\.4\}/],
    ['<BothUnits />', /:18 <BothUnits mm>: nothing \| a number/],
  ])('%s', async (text, words) => {
    expect((await problemsAfter(job, below(text))).join('\n')).toMatch(words);
  });

  it.each([
    ['<Hazard id=“kickback” />', /:18 text: .* \| straight "quotes"/],
    ['<Hazard id=kickback />', /:18 text: .* \| straight "quotes"/],
    ['<Hazard id="kickback">', /:18 text: .* \| a component that ends with "\/>"/],
    ['<!-- ask Ana -->', /:18 text: .* \| a remark nobody reads on the page between \{\/\*/],
    ['See <https://example.org/>.', /:18 text: .* \| words for the link: \[/],
    ['<img src="./belt.jpg">', /:18 text: .* \| a picture beside the article: !\[/],
    ['A gap of <5 mm.', /:18 text: .* \| no bare "<" before a figure/],
    ['[Half](#50%) of it.', /:18 link: #50% \| a heading of that page/],
    ['![A belt](./belt.jpg)', /:18 picture: \.\/belt\.jpg \| a file that exists; \S+ does not\.$/m],
  ])('%s says what to write instead', async (text, words) => {
    expect((await problemsAfter(job, below(text))).join('\n')).toMatch(words);
  });

  it('may hold a line break and a small figure', async () => {
    expect(
      await problemsAfter(job, below('CO<sub>2</sub> is not CO.<br />Do not mix them up. <BothUnits mm={25.4} />')),
    ).toEqual([]);
  });
});

describe('fields that YAML reads otherwise than they were meant', () => {
  it.each([
    ['title', 'Wash the saw down #2', /:2 YAML: .* \| text that holds a # in "quotes"/],
    ['title', '“Wash the saw down”', /:2 YAML: .* \| straight "quotes", or none/],
    ['title', '«Wash the saw down»', /:2 YAML: .* \| straight "quotes", or none/],
  ])('%s: %s', async (name, value, words) => {
    expect((await problemsAfter(job, field(name, value))).join('\n')).toMatch(words);
  });

  it.each(['Wash it down # the yard', '"Wash it down #2"', '"“Wash” it down"', 'Say “wash” or “rinse”'])(
    'title: %s is taken',
    async (value) => {
      expect(await problemsAfter(job, field('title', value))).toEqual([]);
    },
  );

  it('names the fields that exist where a strange one stands below another', async () => {
    const machine = 'shop/machines/saw-one.yaml';
    const spoiled = (good: string) => `${good}\nfacts:\n  engineSped: 9100 rpm\n`;
    expect((await problemsAfter(machine, spoiled)).join('\n')).toMatch(
      /facts\.engineSped: .* \| one of the fields stroke, .*Did you mean engineSpeed\?/,
    );
  });

  it.each(['https://example.org/a b/', 'https://example.org/?shop=1', 'https://example.org/#shop'])(
    'site: %s is no address of a folder',
    async (address) => {
      expect((await problemsAfter(shop, field('site', address))).join('\n')).toMatch(/ site: .*an address of a folder/);
    },
  );
});

it('a link to a draft is told as one, not as a page that is nowhere', async () => {
  const problems = await problemsOf(async (folder) => {
    const jobs = join(folder, 'content/knowledge/jobs');
    const good = await readFile(join(jobs, 'wash-down.mdx'), 'utf8');
    await writeFile(join(jobs, 'dry-off.mdx'), good.replace('title: Wash down', 'title: Dry off\ndraft: true'));
    await writeFile(join(jobs, 'wash-down.mdx'), `${good}\n[then dry it](/jobs/dry-off/)\n`);
  });
  expect(problems).toEqual([
    'jobs/wash-down.mdx:18 link: /jobs/dry-off/ | a page that is published; this one is still a draft',
  ]);
});

describe('files that are not there themselves', () => {
  it('an article or a folder behind a link is told, not passed over', async () => {
    const problems = await problemsOf(async (folder) => {
      const jobs = join(folder, 'content/knowledge/jobs');
      await rename(join(jobs, 'wash-down.mdx'), join(folder, 'elsewhere.mdx'));
      await symlink(join(folder, 'elsewhere.mdx'), join(jobs, 'wash-down.mdx'));
      await symlink(folder, join(folder, 'content/shop/more'));
    });
    expect(problems).toContain('jobs/wash-down.mdx:1 file: a link to a file or folder | the file itself: copy it here');
    expect(problems.join('\n')).toMatch(/shop\/more:1 file: a link/);
  });
});

describe('figures handed to a calculator', () => {
  it.each([
    ["{{ enginePulley: '50 kg' }}", /:18 <Calculator preset>: "50 kg" \| Engine pulley.*/],
    ["{{ enginPulley: '50 mm' }}", /:18 <Calculator preset>: the field enginPulley .*Did you mean enginePulley\?/],
    [
      '{{ enginePulley: size }}',
      /:18 <Calculator preset>: \{\{ enginePulley: size \}\} \| figures and quoted text only/,
    ],
    ["{['50 mm']}", /:18 <Calculator preset>: .* \| \{\{ field: 'figure'/],
  ])('%s', async (preset, words) => {
    const problems = await problemsAfter(job, below(`<Calculator topic="blade-speed" preset=${preset} />`));
    expect(problems.join('\n')).toMatch(words);
  });

  it('may leave boxes for the reader', async () => {
    const text = `<Calculator topic="blade-speed" compact preset={{ enginePulley: '50 mm', engine: 9100 }} />`;
    expect(await problemsAfter(job, below(text))).toEqual([]);
  });
});

describe('links and pictures', () => {
  it.each([
    ['[a](javascript:alert(1))', /:18 link: javascript:.* \| an address on this site/],
    ['[a](file:///etc/passwd)', /:18 link: file:/],
    ['[a](data:text/html,x)', /:18 link: data:/],
    ['[a](/guides/cutting-wet/#nowhere)', /:18 link: .*#nowhere \| a heading of that page/],
    ['[a](#rince)', /:18 link: #rince \| a heading of that page\. Did you mean rinse\?/],
    ['See [the cord][nope].', /:18 link: \[the cord\]\[nope\] \| the address in round brackets/],
    ['![](/belt.png)', /:18 picture: \/belt\.png \| words in the square brackets/],
    ['![A belt](/belt.png)', /:18 picture: \/belt\.png \| a file that exists; public\/belt\.png does not/],
    ['![A belt](https://example.org/belt.png)', /:18 picture: .* \| a file of this project/],
  ])('%s', async (text, words) => {
    expect((await problemsAfter(job, below(text))).join('\n')).toMatch(words);
  });

  it('may lead to a heading of the page itself or of another', async () => {
    expect(
      await problemsAfter(job, below('[up](#rinse), [there](/jobs/wash-down/#rinse), [mail](mailto:a@b.example)')),
    ).toEqual([]);
  });

  it('may show a picture of public/', async () => {
    const problems = await problemsOf(async (folder) => {
      await mkdir(join(folder, 'public'));
      await writeFile(join(folder, 'public/belt.png'), '');
      await cp(join(folder, 'content', job), join(folder, 'content/knowledge/jobs/other.mdx'));
      const text =
        '---\ntitle: Another\nsummary: A job with a picture in its text.\nreader: mechanic\nreviewed: 2026-01-05\ntime: 5 minutes\ntools: [Eyes]\nsources: [shop-practice]\n---\n\n![A belt](/belt.png)\n';
      await writeFile(join(folder, 'content/knowledge/jobs/other.mdx'), text);
    });
    expect(problems).toEqual([]);
  });
});

describe('headings', () => {
  it.each([
    ['# Again', /:18 heading: # Again \| "## \.\.\."/],
    ['#### Deep', /:18 heading: #### Deep \| at most ###/],
    ['## Rinse', /:18 heading: Rinse \| a heading of its own/],
  ])('%s', async (text, words) => {
    expect((await problemsAfter(job, below(text))).join('\n')).toMatch(words);
  });
});

describe('days and blanks', () => {
  it.each(['', 'true', '2026', '2026-02-30', '12.3.26', '01/02/2026'])('reviewed: %s is no day', async (value) => {
    expect((await problemsAfter(job, field('reviewed', value))).join('\n')).toMatch(
      /jobs\/wash-down\.mdx:5 reviewed: /,
    );
  });

  it('no review lies after today, the day itself counts', async () => {
    expect(await problemsAfter(job, field('reviewed', '2026-06-29'))).toEqual([]);
    expect(await problemsAfter(job, field('reviewed', '2026-06-30'))).toEqual([]);
    expect(await problemsAfter(job, field('reviewed', '2026-07-01'))).toEqual([
      'jobs/wash-down.mdx:5 reviewed: 2026-07-01 | a day that has been; today is 2026-06-30',
    ]);
  });

  it('spaces are no title and no tool', async () => {
    expect((await problemsAfter(job, field('title', '"    "'))).join('\n')).toMatch(/:2 title: .*spaces not counted/);
    expect((await problemsAfter(job, field('tools', '[""]'))).join('\n')).toMatch(/tools\.0: "" \| at least 1 letter/);
  });
});

describe('files that editors spoil', () => {
  it('a mark before the text and blank lines above it are no mistake', async () => {
    expect(await problemsAfter(job, (good) => `\uFEFF${good}`)).toEqual([]);
    expect(await problemsAfter(job, (good) => `\n\n${good}`)).toEqual([]);
    expect(await problemsAfter(job, (good) => good.replaceAll('\n', '\r\n'))).toEqual([]);
  });

  it('lines are counted from the top of the file all the same', async () => {
    expect((await problemsAfter(job, (good) => `\n\n${field('reader', 'mecanic')(good)}`)).join()).toMatch(/:6 reader/);
  });

  it.each([
    [
      'another encoding',
      (good: string) => Buffer.from(good.replace('rinse', 'rincé'), 'latin1'),
      /:3 the file: a letter in another encoding/,
    ],
    ['UTF-16', (good: string) => Buffer.from(`\uFEFF${good}`, 'utf16le'), /:1 the file: text saved as UTF-16/],
    ['a sign no text holds', (good: string) => good.replace('Wash', 'Wa\0sh'), /:2 the file: .*NUL/],
    ['no front matter', () => 'Just words.\n', /:1 the file: Just words\. \| "---" in the first line/],
  ])('%s', async (_, change, words) => {
    const problems = await problemsAfter(job, change);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(words);
  });

  it('a word with a star is told and does not end the run', async () => {
    const problems = await problemsAfter(job, field('time', '*soon'));
    expect(problems).toEqual([
      'jobs/wash-down.mdx:6 YAML: time: *soon | text that starts with a sign in "quotes": "*soon"',
    ]);
  });

  it('one mistake is told once', async () => {
    const problems = await problemsAfter(job, (good) => good.replace('time:', 'title: Twice\ntime:'));
    expect(problems).toEqual(['jobs/wash-down.mdx:6 YAML: title: Twice | each field once']);
  });
});

describe('names of files', () => {
  const named = (file: string) =>
    problemsOf(async (folder) => {
      await cp(join(folder, 'content', job), join(folder, 'content', file));
      await rm(join(folder, 'content', job));
    });
  it.each([
    ['knowledge/jobs/wash-down.md', /file name: \.md \| a file ending in \.mdx/],
    ['knowledge/jobs/wash-down.MDX', /file name: \.MDX \| a file ending in \.mdx/],
    ['knowledge/jobs/wash-down', /file name: no ending \| a file ending in \.mdx/],
    ['knowledge/jobs/index.mdx', /file name: index \| a name of its own/],
    [
      'wash-down.mdx',
      /content\/wash-down\.mdx|wash-down\.mdx:1 file name: .* \| a file below content\/knowledge or content\/shop/,
    ],
  ])('%s', async (file, words) => {
    expect((await named(file)).join('\n')).toMatch(words);
  });

  it('a guide needs its Spanish twin while the shop speaks Spanish', async () => {
    const without = (folder: string) => rm(join(folder, 'content/knowledge/guides/es/cutting-wet.mdx'));
    expect((await problemsOf(without)).join('\n')).toMatch(
      /guides\/cutting-wet\.mdx:1 file name: a guide without a Spanish twin/,
    );
  });
});

describe('the shop', () => {
  it.each([
    ['currency', 'QQQ', /:13 currency: "QQQ" \| a currency that exists/],
    ['labourRate', '0', /:14 labourRate: 0 \| more than 0/],
    ['labourRate', '1e9', /:14 labourRate: 1000000000 \| at most 1000000/],
    ['languages', '[es]', /languages: \["es"\] \| en among them/],
    ['languages', '[en, en]', /languages: .* \| each language once/],
    ['site', 'ftp://almanac.example/', /site: .* \| an address that begins with https/],
    ['phone', '"   "', /phone: .* \| at least 3 letters/],
  ])('%s: %s', async (name, value, words) => {
    expect((await problemsAfter(shop, field(name, value))).join('\n')).toMatch(words);
  });
});

describe('other words for a page', () => {
  const aliases = (list: string) => (text: string) => text.replace(/^reviewed: /m, `aliases: [${list}]\nreviewed: `);
  const guide = 'knowledge/guides/cutting-wet.mdx';

  it('lead to one page, whatever the accents, plurals and capitals', async () => {
    const problems = await problemsOf(async (folder) => {
      for (const [file, list] of [
        [guide, 'Blocked nozzle'],
        [job, 'wash, blocked nozzles'],
      ] as const) {
        const path = join(folder, 'content', file);
        await writeFile(path, aliases(list)(await readFile(path, 'utf8')));
      }
    });
    expect(problems).toEqual([
      expect.stringMatching(
        /^jobs\/wash-down\.mdx:\d+ aliases: "blocked nozzles" \| a phrase of its own; .*cutting-wet/,
      ),
    ]);
  });

  it('stand once on their page', async () => {
    expect((await problemsAfter(job, aliases('no water, No water'))).join('\n')).toMatch(
      /aliases: "No water" \| each word once/,
    );
  });

  it('may be the same in two languages', async () => {
    const problems = await problemsOf(async (folder) => {
      for (const file of [guide, 'knowledge/guides/es/cutting-wet.mdx']) {
        const path = join(folder, 'content', file);
        await writeFile(path, aliases('pH')(await readFile(path, 'utf8')));
      }
    });
    expect(problems).toEqual([]);
  });
});
