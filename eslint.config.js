import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

export default ts.config(
  { ignores: ['dist/', 'out/', 'node_modules/'] },
  js.configs.recommended,
  ...ts.configs.strict,
  ...ts.configs.stylistic,
  ...svelte.configs.recommended,
  { languageOptions: { globals: { ...globals.browser, ...globals.node } } },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: {
      parserOptions: { extraFileExtensions: ['.svelte'], parser: ts.parser, svelteConfig },
    },
  },
  {
    rules: {
      'no-undef': 'off', // TypeScript does this, with the types at hand
      eqeqeq: 'error',
      'prefer-const': 'error',
      'no-console': 'error',
      '@typescript-eslint/no-non-null-assertion': 'off', // typed-array and Map look-ups that are known to hit
      '@typescript-eslint/consistent-type-definitions': 'off',
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', ignoreRestSiblings: true },
      ],
      'svelte/prefer-svelte-reactivity': 'off', // look-ups beside the state are no state
    },
  },
  {
    files: ['**/*.svelte'],
    rules: {
      'prefer-const': 'off', // Svelte's own rule knows `let { ... } = $props()`
      'svelte/prefer-const': ['error', { excludedRunes: ['$props', '$derived'] }],
    },
  },
  {
    files: ['lib/**/*.ts'],
    languageOptions: { globals: {} },
    rules: {
      'no-restricted-globals': ['error', 'window', 'document', 'process', 'localStorage', 'fetch'],
      'no-restricted-imports': [
        'error',
        { patterns: ['node:*', 'fs', 'path', 'svelte', 'svelte/*', 'd3', 'd3-*'] },
      ],
    },
  },
  { files: ['src/cli/**', 'tests/**'], rules: { 'no-console': 'off' } },
);
