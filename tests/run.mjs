// Runs every check of the project in order and closes with one line that counts them.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureChromium } from './browser/chromium.mjs';

const results = mkdtempSync(join(tmpdir(), 'shadewright-'));
let passed = 0;
let failed = 0;
let skipped = 0;

function step(name, command, args) {
  console.log(`\n== ${name}`);
  const run = spawnSync(command, args, { stdio: 'inherit', env: process.env });
  return run.status === 0;
}

function check(name, args) {
  const ok = step(name, 'npx', args);
  if (ok) passed++;
  else failed++;
  return ok;
}

function tests(name) {
  const file = join(results, `${name}.json`);
  const ok = step(`${name} tests`, 'npx', [
    'vitest',
    'run',
    '--project',
    name,
    '--reporter=dot',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ]);
  if (!existsSync(file)) {
    failed++;
    return;
  }
  const report = JSON.parse(readFileSync(file, 'utf8'));
  passed += report.numPassedTests;
  failed += report.numFailedTests;
  skipped += report.numPendingTests + report.numTodoTests;
  // A file that cannot be loaded fails the run without failing a test.
  if (!ok && report.numFailedTests === 0) failed++;
}

check('format', ['prettier', '--check', '--log-level', 'warn', '.']);
check('lint', ['eslint', '.']);
check('imports', ['depcruise', 'lib', 'src', '--config', '.dependency-cruiser.cjs']);
check('types', ['tsc', '-p', 'tsconfig.json']);
check('types of lib without a browser', ['tsc', '-p', 'tsconfig.lib.json']);
check('types of components', [
  'svelte-check',
  '--tsconfig',
  './tsconfig.json',
  '--fail-on-warnings',
]);
tests('unit');
if (check('build', ['vite', 'build', '--logLevel', 'warn'])) {
  const browser = ensureChromium();
  if (browser.path) {
    process.env.CHROMIUM = browser.path;
    tests('browser');
  } else {
    console.error(browser.message);
    failed++;
  }
}

rmSync(results, { recursive: true, force: true });
console.log(`\n${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`);
process.exit(failed ? 1 : 0);
