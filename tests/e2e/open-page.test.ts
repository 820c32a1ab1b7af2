import { afterAll, describe, expect, test } from 'vitest';
import { openPage } from './open-page.ts';

test('a line on the console, an uncaught error and a missing file are each reported as a problem', async () => {
  const { page, problems } = await openPage();
  await page.evaluate(async () => {
    console.log('left over from debugging');
    setTimeout(() => {
      throw new Error('nobody caught this');
    });
    await fetch('./no-such-file.json', { headers: { accept: 'application/json' } });
  });
  await expect.poll(() => problems.join('\n')).toContain('nobody caught this');
  const reported = problems.splice(0).join('\n');
  expect(reported).toContain('console log: left over from debugging');
  expect(reported).toMatch(/answer 404: .*no-such-file\.json/);
});

test('a request to another host is refused by the content policy and reported as a problem', async () => {
  const { page, problems } = await openPage();
  const outcome = await page.evaluate(() =>
    fetch('http://other.example/').then(
      () => 'answered',
      () => 'refused',
    ),
  );
  expect(outcome).toBe('refused');
  await expect.poll(() => problems.splice(0).join('\n')).toMatch(/Content Security Policy/);
});

test('a script written into the page does not run', async () => {
  const { page, problems } = await openPage();
  const ran = await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'document.title = "taken over"';
    document.head.append(script);
    return document.title === 'taken over';
  });
  expect(ran).toBe(false);
  await expect.poll(() => problems.splice(0).join('\n')).toMatch(/Content Security Policy/);
});

test('a picture fetched from another host is reported even where it fails', async () => {
  const { page, problems } = await openPage();
  await page.goto('about:blank');
  await page.setContent('<img src="http://other.example/pixel.png" alt="">');
  await expect.poll(() => problems.join('\n')).toContain('request to another host: http://other.example/pixel.png');
  problems.splice(0);
});

describe('a problem that nobody took out', () => {
  let everythingElseHeld = false;
  afterAll(() => expect(everythingElseHeld).toBe(true));

  test.fails('fails the test that opened the page', async () => {
    const { page, problems } = await openPage();
    await page.evaluate(() => console.log('left over'));
    await expect.poll(() => problems).toEqual(['console log: left over']);
    everythingElseHeld = true;
  });
});
