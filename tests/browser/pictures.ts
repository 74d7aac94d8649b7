// Takes the pictures of the README from the running app: npm run build && npm run pictures.
import { fileURLToPath } from 'node:url';
import { openApp } from './app.ts';

const folder = fileURLToPath(new URL('../../static/docs/', import.meta.url));

const pictures = [
  { name: 'openings.png', path: '/#openings', wait: 'Facade ring' },
  { name: 'year.png', path: '/#year', wait: 'Facades and openings' },
];

for (const { name, path, wait } of pictures) {
  const app = await openApp({ width: 1440, height: 1000, path });
  await app.page.getByRole('heading', { name: wait }).first().waitFor();
  // Charts draw once their series have come from the engine.
  await app.page.waitForTimeout(2500);
  await app.page.screenshot({ path: `${folder}${name}` });
  await app.close();
  console.log(`static/docs/${name}`);
}
