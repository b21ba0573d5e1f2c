/** Every path of the repository and every npm script that the documentation names exists. */
import { existsSync, globSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { SourceFile } from './files.ts';

const DOCUMENT = /^(README[.]md|DEVELOPERS[.]md|docs\/.*[.]md)$/;
const CODE_SPAN = /```[^\n]*\n([\s\S]*?)```|`([^`\n]+)`/g;
const LINK = /\]\(([^)\s]+)\)/g;
const REPOSITORY_PATH = /^(?:apps|packages|infra|tests|seed|docs|[.]ci)\/\S*$|^(?:README|DEVELOPERS)[.]md$/;
const NPM_SCRIPT = /npm run (?:--silent |-s )*([a-z][\w:-]*)/g;
/** `packages/<name>/…` speaks of a form of path, not of one file. */
const PLACEHOLDER = /[<>{}…]/;

/** What is cited and does not exist, in words. */
export function checkDocsPaths(root: string, files: readonly SourceFile[]): string[] {
  const scripts = new Set(Object.keys(JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8')).scripts));
  return files.filter(({ name }) => DOCUMENT.test(name)).flatMap((document) => checkDocument(root, document, scripts));
}

function checkDocument(root: string, { name, text }: SourceFile, scripts: ReadonlySet<string>): string[] {
  const paths = [...citedPaths(text), ...linkedPaths(name, text)].filter((cited) => !exists(root, cited));
  const missing = [...text.matchAll(NPM_SCRIPT)]
    .map(([, script]) => script ?? '')
    .filter((script) => !scripts.has(script));
  return [
    ...paths.map((cited) => `${name}: there is no ${cited}`),
    ...missing.map((script) => `${name}: there is no script "${script}"`),
  ];
}

function citedPaths(text: string): string[] {
  return [...text.matchAll(CODE_SPAN)]
    .flatMap(([, block, span]) => (block ?? span ?? '').split(/[\s"'(),;]+/))
    .map((word) => word.replace(/^[.]\/(?=\w)/, '').replace(/(:\d+(-\d+)?|[.:])$/, ''))
    .filter((word) => REPOSITORY_PATH.test(word) && !PLACEHOLDER.test(word));
}

function linkedPaths(document: string, text: string): string[] {
  return [...text.replaceAll(CODE_SPAN, '').matchAll(LINK)]
    .map(([, target]) => target ?? '')
    .filter((target) => !/^([a-z]+:|#|\/)/.test(target))
    .map((target) => path.posix.join(path.posix.dirname(document), target.replace(/#.*$/, '')));
}

function exists(root: string, cited: string): boolean {
  return cited.includes('*') ? globSync(cited, { cwd: root }).length > 0 : existsSync(path.join(root, cited));
}
