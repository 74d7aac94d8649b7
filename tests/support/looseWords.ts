import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'svelte/compiler';
import ts from 'typescript';

/** Attributes that are read out or shown. */
const SPOKEN =
  /^(label|aria-label|aria-description|aria-roledescription|aria-valuetext|title|alt|placeholder|hint|about|note|name|text|heading|summary|caption|legend|unit)$/;

/** Two words one after the other, the second in small letters: a piece of a sentence. */
const SENTENCE = /[A-Za-z][a-z]*,? [a-z]{2,}/;
/** Any word of three letters; symbols of units and names of fields are shorter or have no vowel. */
const WORD = /[A-Za-z]*[a-z]{2}[A-Za-z]*/;

interface Node {
  type: string;
  start: number;
  [key: string]: unknown;
}

/**
 * Words that stand in source files instead of in the language files: letters in the markup of
 * components, spoken attributes, and sentences in their scripts and in modules. Messages of
 * `new Error` are for programmers and stay.
 *
 * @returns lines such as `src/app/parts/Figure.svelte:93: Data`
 */
export function looseWords(folder: string, except: readonly RegExp[] = []): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((file) => join(folder, file))
    .filter((file) => /\.(svelte|ts)$/.test(file) && !file.endsWith('.d.ts'))
    .sort()
    .flatMap((file) => {
      const source = readFileSync(file, 'utf8');
      const found = file.endsWith('.svelte') ? inComponent(source) : inScript(source, 0);
      return found
        .filter(([, words]) => !except.some((known) => known.test(words)))
        .map(([at, words]) => {
          const line = source.slice(0, at).split('\n').length;
          return `${file}:${line}: ${words.trim().replace(/\s+/g, ' ').slice(0, 80)}`;
        });
    });
}

type Found = [at: number, words: string][];

function inComponent(source: string): Found {
  const tree = parse(source, { modern: true });
  const scripts = [tree.instance, tree.module].flatMap((script) => {
    if (!script) return [];
    const { start, end } = script.content as unknown as { start: number; end: number };
    return inScript(source.slice(start, end), start);
  });
  return [...scripts, ...inMarkup(tree.fragment as unknown as Node, source)];
}

function inMarkup(node: Node, source: string): Found {
  if (node.type === 'Text') {
    const data = String(node.data);
    return WORD.test(data) ? [[node.start, data]] : [];
  }
  if (node.type === 'Attribute') return inAttribute(node, source);
  if (/^(ExpressionTag|RenderTag|ConstTag|IfBlock|EachBlock)$/.test(node.type)) {
    return [...inExpression(node, source), ...inside(node, source)];
  }
  return inside(node, source);
}

/** Parts of a node that are markup; expressions are read by `inExpression`. */
function inside(node: Node, source: string): Found {
  return [
    'fragment',
    'nodes',
    'attributes',
    'body',
    'consequent',
    'alternate',
    'fallback',
    'pending',
    'then',
    'catch',
  ]
    .map((key) => node[key])
    .flatMap((part) => (Array.isArray(part) ? part : [part]))
    .filter((part): part is Node => typeof part === 'object' && part !== null && 'type' in part)
    .flatMap((part) => inMarkup(part, source));
}

function inAttribute(node: Node, source: string): Found {
  const { name, value } = node as unknown as { name: string; value: Node | Node[] | true };
  if (value === true) return [];
  const parts = Array.isArray(value) ? value : [value];
  return parts.flatMap((part): Found => {
    if (part.type !== 'Text') return inExpression(part, source);
    const data = String(part.data);
    // In small letters it is the name a form field is sent by.
    if (name === 'name' && !/^[A-Z]/.test(data)) return [];
    return SPOKEN.test(name) && WORD.test(data) ? [[part.start, data]] : [];
  });
}

/** Text shown by an expression may be a single word. */
function inExpression(node: Node, source: string): Found {
  const expression = (node.expression ?? node.test ?? node.declaration) as
    { start: number; end: number } | undefined;
  if (!expression) return [];
  return inScript(source.slice(expression.start, expression.end), expression.start);
}

function inScript(source: string, offset: number): Found {
  const file = ts.createSourceFile('x.ts', source, ts.ScriptTarget.ES2022, true);
  const found: Found = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || isError(node)) return;
    const words = lettersOf(node);
    if (words !== undefined && (SENTENCE.test(words) || isSpokenWord(node, words)))
      found.push([offset + node.getStart(), words]);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

function isError(node: ts.Node): boolean {
  return ts.isNewExpression(node) && /^\w*Error$/.test(node.expression.getText());
}

/** A single word given a name that is shown: `label: 'Light'`. */
function isSpokenWord(node: ts.Node, words: string): boolean {
  const { parent } = node;
  return (
    ts.isPropertyAssignment(parent) &&
    parent.initializer === node &&
    SPOKEN.test(parent.name.getText()) &&
    /^[A-Z][a-z]{2}/.test(words)
  );
}

function lettersOf(node: ts.Node): string | undefined {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
  if (!ts.isTemplateExpression(node)) return undefined;
  return [node.head.text, ...node.templateSpans.map((span) => span.literal.text)].join('{}');
}
