/** A still whose run takes long: the page opens at once all the same, says how long it takes, and stops when told. */
import { expect, inject, test } from 'vitest';
import { readScenario } from '../../sim/index.ts';
import { onBench } from './bench-page.ts';
import { openPage } from './open-page.ts';

/** Three days in steps of a third of a second: more than ten seconds on a fast machine. */
function costlyStill() {
  const read = readScenario({
    name: 'Three days',
    heat: { ratedPower_W: 200 },
    run: { duration_s: 259_200 },
    advanced: { step_s: 0.3, recordEvery_s: 600, segments: 120 },
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.scenario;
}

test('a kept still whose run takes long does not hold up the page, and its run can be stopped and begun again', async () => {
  const { page } = await openPage('favicon.svg');
  await page.evaluate(
    (scenario) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('limbeck');
        opening.onupgradeneeded = () => opening.result.createObjectStore('work');
        opening.onerror = () => reject(new Error('no storage'));
        opening.onsuccess = () => {
          const change = opening.result.transaction('work', 'readwrite');
          const kept = { time_s: 0, speed: 60, units: 'metric', theme: 'light', foldedCharts: [] };
          change.objectStore('work').put({ ...kept, scenario, hintsDismissed: true, keysOn: true }, 'bench');
          change.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    costlyStill(),
  );
  await page.goto(inject('appAddress'));
  const { lead, timeMark } = onBench(page);
  await lead.waitFor();
  expect(await page.locator('h1').textContent()).toBe('Three days');
  const line = page.getByRole('region', { name: 'The run that is being worked out' });
  await line.getByText(/About .* to go/).waitFor();
  expect(await line.getByText('a run in coarser steps stands here').count()).toBe(1);
  const share = () => line.getByRole('progressbar').evaluate((bar) => (bar as HTMLProgressElement).value);
  const before = await share();
  await expect.poll(share).toBeGreaterThan(before);

  // The page is of use in the meantime.
  await timeMark.fill('7200');
  expect(await timeMark.inputValue()).toBe('7200');
  expect(await page.locator('.verdict[aria-busy="true"]').count()).toBe(1);

  await line.getByRole('button', { name: 'Stop' }).click();
  await line.getByText('You stopped the run').waitFor();
  await page.getByText('These numbers are of coarser steps.').waitFor();
  expect(await page.getByRole('button', { name: 'Undo the change' }).count()).toBe(0);
  await line.getByRole('button', { name: 'Work it out' }).click();
  await line.getByText(/About .* to go/).waitFor();
});
