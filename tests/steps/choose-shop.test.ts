/** Which shop the commands are about, also while a server for writing shows one. The shops are made up. */
import { existsSync, mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { spawnSync } from 'node:child_process';
import { chooseShop } from '../../src/steps/support/choose-shop.ts';
import { noteRunning, runningServer } from '../../src/steps/support/running-server.ts';
import { usesFolder } from '../../src/steps/support/shop-in-use.ts';

const place = realpathSync(mkdtempSync(join(tmpdir(), 'almanac-choose-')));
const project = join(place, 'almanac');
const link = join(project, 'content/chosen-shop');
beforeAll(() => {
  mkdirSync(join(project, 'content'), { recursive: true });
  for (const shop of ['mine', 'other']) {
    mkdirSync(join(place, shop));
    writeFileSync(join(place, shop, 'shop.yaml'), `name: ${shop}\n`);
  }
});
let forget = () => undefined as void;
afterEach(() => forget());
afterAll(() => rmSync(place, { recursive: true }));

/** As if a server ran in another process: this one's parent lives as long as the test. */
const shows = (shop: string) => {
  chooseShop(project, join(place, shop));
  const running = { pid: process.ppid, address: 'http://localhost:4321/', shop, folder: link };
  forget = noteRunning(project, running);
};

it('makes the link to the shop, moves it to another, and takes it away for the demo', () => {
  chooseShop(project, join(place, 'mine'));
  expect(realpathSync(link)).toBe(join(place, 'mine'));
  chooseShop(project, join(place, 'other'));
  expect(realpathSync(link)).toBe(join(place, 'other'));
  chooseShop(project, '');
  expect(existsSync(link)).toBe(false);
});

it('leaves the link of a running server alone: a command without SHOP passes it by, one for another shop is refused', () => {
  shows('mine');
  chooseShop(project, '');
  chooseShop(project, join(place, 'mine'));
  expect(() => chooseShop(project, join(place, 'other'))).toThrow(/"npm run dev" runs already, for mine: http/);
  expect(realpathSync(link)).toBe(join(place, 'mine'));
});

it('leaves the link alone while another command is at work on its shop', () => {
  chooseShop(project, join(place, 'mine'));
  mkdirSync(join(project, usesFolder), { recursive: true });
  const note = join(project, usesFolder, `${process.ppid}.json`);
  writeFileSync(note, JSON.stringify({ pid: process.ppid, shop: '../mine' }));
  forget = () => rmSync(note, { force: true });
  chooseShop(project, '');
  chooseShop(project, join(place, 'mine'));
  expect(() => chooseShop(project, join(place, 'other'))).toThrow(/^Another command is at work on \.\.\/mine; wait/);
  expect(realpathSync(link)).toBe(join(place, 'mine'));
  // One that was stopped hard is no longer at work.
  rmSync(note);
  const ended = spawnSync(process.execPath, ['-e', '']).pid;
  writeFileSync(join(project, usesFolder, `${ended}.json`), JSON.stringify({ pid: ended, shop: '../mine' }));
  chooseShop(project, join(place, 'other'));
  expect(realpathSync(link)).toBe(join(place, 'other'));
});

it('a command notes that it is at work, and takes its note away when it ends', () => {
  const program = `import { chooseShop } from './src/steps/support/choose-shop.ts';
    import { readdirSync } from 'node:fs';
    chooseShop(process.argv[1], process.argv[2]);
    console.log(readdirSync(process.argv[1] + '/${usesFolder}').includes(process.pid + '.json'), process.pid);`;
  const args = ['--input-type=module', '-e', program, project, join(place, 'other')];
  const [noted, pid] = spawnSync(process.execPath, args, { encoding: 'utf8' }).stdout.trim().split(' ');
  expect(noted).toBe('true');
  expect(existsSync(join(project, usesFolder, `${pid}.json`))).toBe(false);
});

it('deletes no files that stand where the link should', () => {
  chooseShop(project, '');
  mkdirSync(link);
  writeFileSync(join(link, 'page.mdx'), 'written');
  expect(() => chooseShop(project, '')).toThrow(/content\/chosen-shop is a folder of its own, with files in it/);
  expect(existsSync(join(link, 'page.mdx'))).toBe(true);
  rmSync(link, { recursive: true });
});

it('takes no notice of a server that ended without a word', () => {
  shows('mine');
  const ended = spawnSync(process.execPath, ['-e', '']).pid;
  noteRunning(project, { pid: ended, address: 'http://localhost:4321/', shop: 'mine', folder: link });
  expect(runningServer(project)).toBeUndefined();
  chooseShop(project, join(place, 'other'));
  expect(realpathSync(link)).toBe(join(place, 'other'));
});

it.each([
  ['nowhere', /holds no shop\.yaml\. "npm run shop:new -- .*nowhere" makes a shop there\.$/],
  ['mine/shop.yaml', /names the folder, not the file: SHOP=.*mine$/],
])('says in one sentence that %s is no shop', (folder, words) => {
  expect(() => chooseShop(project, join(place, folder))).toThrow(words);
});

it('reaches whoever typed the command as that sentence, without a place in the program', () => {
  const env = { ...process.env, SHOP: join(place, 'nowhere') };
  const ran = spawnSync(process.execPath, ['src/commands/content.ts'], { env, encoding: 'utf8' });
  expect(ran.status).toBe(2);
  expect(ran.stderr.trim().split('\n')).toEqual([expect.stringMatching(/^SHOP names .* makes a shop there\.$/)]);
});
