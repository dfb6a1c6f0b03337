/** A saw of one's own: typed in, refused where it cannot be, kept, carried as a file, and filled into a calculator. */
import { expect, test } from 'vitest';
import { savedText, wakeCalculator, watchedPage } from './support/browser.ts';
import { openedSite } from './support/opened-site.ts';

const site = openedSite();

test('is kept on the device, saved and read back, and fills the boxes of a calculator', async () => {
  const { page, context, troubles } = await watchedPage(site.browser);
  const list = page.locator('.saws-list');
  const kept = list.locator('b', { hasText: 'Old red floor saw' });
  const press = (name: string | RegExp) => page.getByRole('button', { name }).click();
  await page.goto(`${site.serving.address}own-saws.html`);
  await page.locator('.saws[data-live=yes]').waitFor();

  await page.fill('#saw-name', 'Old red floor saw');
  await page.fill('#saw-bladeDiameter', '9 m');
  await press('Keep this saw');
  expect(await page.locator('#saw-bladeDiameter').getAttribute('aria-invalid')).toBe('true');
  await page.fill('#saw-bladeDiameter', '20 in');
  await press('Keep this saw');
  await kept.waitFor();

  // A second one half described: neither a look at the first nor a reload takes it.
  await page.fill('#saw-name', 'Yard 2');
  await press(/^Change/);
  await expect.poll(() => page.inputValue('#saw-name')).toBe('Old red floor saw');
  await press('Undo');
  await expect.poll(() => page.inputValue('#saw-name')).toBe('Yard 2');
  await page.reload();
  await kept.waitFor();
  await expect.poll(() => page.inputValue('#saw-name')).toBe('Yard 2');
  const [download] = await Promise.all([page.waitForEvent('download'), press('Save as a file')]);
  const text = await savedText(download);
  await press(/^Delete/);
  await kept.waitFor({ state: 'detached' });
  await page.setInputFiles('.saws input[type=file]', {
    name: 'saws.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await kept.waitFor();

  await page.goto(`${site.serving.address}calculators/blade-speed.html`);
  await wakeCalculator(page);
  await page.getByLabel('Saw on the bench').selectOption({ label: 'Old red floor saw' });
  // 20 in on the plate, in the unit of the box.
  await expect.poll(() => page.inputValue('#blade-speed-diameter')).toBe('508');
  expect(troubles).toEqual([]);
  await context.close();
});
