import { describe, expect, test } from 'vitest';
import { openPage } from './open-page.ts';
import {
  choiceOf,
  choose,
  downloaded,
  enter,
  onBench,
  openBench,
  openFile,
  press,
  seconds,
  typedValue,
} from './bench-page.ts';

describe('work on the bench', () => {
  test('is there again after a reload: still, time mark, units, look and folded charts', async () => {
    const { page, lead, timeMark } = await openBench();
    await enter(typedValue(page, 'Coil'), '2.35 m');
    await choose(page, 'Units', 'US');
    await choose(page, 'Theme', 'dark');
    await page.getByRole('button', { name: /^Heat in the bed/ }).click();
    await page.locator('h1').click();
    await page.keyboard.press('Home');
    await page.keyboard.press('Shift+ArrowRight');
    await expect.poll(() => lead.textContent()).toMatch(/of its \d+\sft \d+\sin,/);
    const told = await lead.textContent();
    await page.waitForTimeout(900);
    await page.reload();
    await onBench(page).lead.waitFor();
    expect(await lead.textContent()).toBe(told);
    expect(await seconds(timeMark)).toBe(60);
    expect(await page.locator('html').getAttribute('data-theme')).toBe('dark');
    expect(await (await choiceOf(page, 'Units')).inputValue()).toBe('us');
    expect(await page.getByRole('button', { name: /^Heat in the bed/ }).getAttribute('aria-expanded')).toBe('false');
    expect(await page.getByRole('button', { name: 'Play', exact: true }).count()).toBe(1);
  });

  test('is saved as a file and opened again elsewhere', async () => {
    const first = await openBench();
    const coil = typedValue(first.page, 'Coil');
    await enter(coil, '2.35 m');
    await expect.poll(() => coil.inputValue()).toBe('2.35');
    const saved = await downloaded(first.page, () => press(first.page, 'Files', /^Save this/));
    expect(saved.name).toBe('gentle-lavender.json');
    const scenario = JSON.parse(saved.text) as { condenser: { length_m: number } };
    expect(scenario.condenser.length_m).toBe(2.35);

    const second = await openBench();
    await openFile(second.page, saved.name, saved.text.replace('Gentle lavender', 'Brought along'));
    await expect.poll(() => second.page.locator('h1').textContent()).toBe('Brought along');
    expect(await typedValue(second.page, 'Coil').inputValue()).toBe('2.35');
  });

  test('is passed on as a link, which puts it on another bench as a visitor and can be undone there', async () => {
    const first = await openBench();
    const coil = typedValue(first.page, 'Coil');
    await enter(coil, '2.35 m');
    await expect.poll(() => coil.inputValue()).toBe('2.35');
    await press(first.page, 'Files', /^Share/);
    const field = first.page.getByRole('textbox', { name: 'Link to this still' });
    await expect.poll(() => field.inputValue()).toContain('#still=3.');
    const link = await field.inputValue();

    const second = await openPage(new URL(link).hash);
    const { lead } = onBench(second.page);
    await second.page.getByText('This still came from a link').waitFor();
    expect(await typedValue(second.page, 'Coil').inputValue()).toBe('2.35');
    expect(new URL(second.page.url()).hash).toBe('#bench');
    const told = await lead.textContent();
    await second.page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => lead.textContent()).not.toBe(told);
    expect(await typedValue(second.page, 'Coil').inputValue()).toBe('1.5');
  });

  test('is as it was when a link is damaged, pasted into an open page', async () => {
    const { page, lead } = await openBench();
    const before = await lead.textContent();
    await page.evaluate(() => (location.hash = '#still=1.abcdefghijk'));
    await page.getByText('The link was not opened, and your work is as it was.').waitFor();
    expect(await lead.textContent()).toBe(before);
    expect(await page.getByRole('button', { name: 'Undo' }).getAttribute('aria-disabled')).toBe('true');
  });

  test('gives the table of the run, a named column each', async () => {
    const { page } = await openBench();
    const { name, text } = await downloaded(page, () => press(page, 'Files', /^Save SI table/));
    expect(name).toBe('gentle-lavender-si.csv');
    const lines = text.trimEnd().split('\n');
    expect(lines[0]).toMatch(/^time_s,heatSetting,sourcePower_W,/);
    expect(lines.length).toBeGreaterThan(500);
    expect(lines[1]?.split(',').every((cell) => Number.isFinite(Number(cell)))).toBe(true);

    await choose(page, 'Units', 'US');
    const shown = await downloaded(page, () => press(page, 'Files', /^Save table/));
    expect(shown.name).toBe('gentle-lavender.csv');
    expect(shown.text.split('\n')[0]).toContain('temperature of the distillate at the outlet (°F)');
  });

  test('is as it was when a file holds something else, and the reason is told', async () => {
    const { page, lead } = await openBench();
    const before = await lead.textContent();
    const notice = page.getByRole('status').filter({ hasText: 'your work is as it was' });
    const odd: readonly (readonly [string, RegExp])[] = [
      ['hello', /not JSON/],
      ['{"type":"FeatureCollection","features":[]}', /type/],
      ['{"pot":{"diameter_m":-3}}', /Pot diameter: −3000\smm is not possible; allowed is 50–1500\smm/],
      ['[1,2,3]', /JSON object/],
      ['{"charge":{"release":{"readyShare":{"hydrocarbon":"many"}}}}', /hydrocarbon/],
    ];
    for (const [text, reason] of odd) {
      await openFile(page, 'odd.json', text);
      await expect.poll(() => notice.textContent()).toMatch(reason);
      expect(await lead.textContent()).toBe(before);
      expect(await page.locator('h1').textContent()).toBe('Gentle lavender');
      await notice.getByRole('button', { name: 'Put away' }).click();
      await notice.waitFor({ state: 'detached' });
    }
  });

  test('that was kept but cannot be read gives way to the example, says so, and stays kept', async () => {
    const { page } = await openBench();
    await page.waitForTimeout(200);
    const broken = { pot: 'broken' };
    await page.evaluate(
      (scenario) =>
        new Promise<void>((resolve, reject) => {
          const opening = indexedDB.open('limbeck-kept');
          opening.onerror = () => reject(new Error('no storage'));
          opening.onsuccess = () => {
            const change = opening.result.transaction('entries', 'readwrite');
            const value = { scenario, units: 'us' };
            change.objectStore('entries').put({ version: 1, changed_ms: Date.now(), value }, 'bench');
            change.oncomplete = () => {
              opening.result.close();
              resolve();
            };
          };
        }),
      broken,
    );
    await page.goto('about:blank');
    await page.goBack();
    await page.getByText('can’t be read by this version').waitFor();
    const saved = await downloaded(page, () => page.getByRole('button', { name: 'Save it as a file' }).click());
    expect(JSON.parse(saved.text)).toEqual(broken);
    expect(await page.locator('h1').textContent()).toBe('Gentle lavender');
    expect(await (await choiceOf(page, 'Units')).inputValue()).toBe('us');
    await enter(typedValue(page, 'Coil'), '2 ft');
    const entries = () =>
      page.evaluate(
        () =>
          new Promise<readonly unknown[]>((resolve) => {
            const opening = indexedDB.open('limbeck-kept');
            opening.onsuccess = () => {
              const all = opening.result.transaction('entries').objectStore('entries').getAll();
              all.onsuccess = () => {
                opening.result.close();
                resolve(all.result as unknown[]);
              };
            };
          }),
      );
    const kept = (scenario: unknown) =>
      expect.objectContaining({ value: expect.objectContaining({ scenario }) as unknown }) as unknown;
    await expect.poll(entries).toContainEqual(kept(expect.objectContaining({ name: 'Gentle lavender' })));
    expect(await entries()).toContainEqual(kept(broken));
    await press(page, 'Files', 'My stills');
    await page
      .getByRole('list', { name: 'Can’t be read by this version' })
      .getByText('A still without a name', { exact: true })
      .waitFor();
  });

  test('says when this browser keeps nothing, and offers a file instead', async () => {
    const { page } = await openBench();
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await enter(typedValue(page, 'Coil'), '2 m');
    const notice = page.getByRole('status').filter({ hasText: 'could not keep your work' });
    await notice.waitFor();
    const saved = await downloaded(page, () => notice.getByRole('button', { name: 'Save the scenario' }).click());
    expect(JSON.parse(saved.text)).toMatchObject({ condenser: { length_m: 2 } });
  });
});
