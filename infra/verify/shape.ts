/** The shape of the code: what no linter looks at. Each fault names its file and line. */
import type { SourceFile } from './files.ts';

const MOST_LINES = 300;
const TOP_LEVEL =
  /^(README[.]md|DEVELOPERS[.]md|package[.]json|tsconfig[.]json|package-lock[.]json|[.][^/]+|(apps|packages|infra|tests|seed|docs|[.][^/]+)\/.*)$/;
const CODE = /[.](ts|tsx|cjs|mjs|css|sql|sh)$/;
const SCRIPT = /[.]tsx?$/;
const TEST = /[.]test[.]tsx?$/;
/** Written by a program from something else that is reviewed instead. */
const GENERATED = /([.]gen[.]ts|\/generated\/.*|^packages\/db\/schema[.]sql|^packages\/client\/openapi[.]json)$/;
const LOCKFILE = /^package-lock[.]json$/;

type Rule = {
  readonly where: (name: string) => boolean;
  readonly forbidden: RegExp;
  readonly because: string;
};

const isScript = (name: string): boolean => SCRIPT.test(name);
const isTest = (name: string): boolean => TEST.test(name);
const within = (places: RegExp) => (name: string) => places.test(name) && isScript(name) && !isTest(name);

const RULES: readonly Rule[] = [
  { where: isTest, forbidden: /[.]only\(/, because: 'a test that runs alone hides the others' },
  { where: isTest, forbidden: /[.](skip|todo|fails)\(/, because: 'a test is run or removed (skipIf with a reason)' },
  { where: isScript, forbidden: /@ts-(ignore|nocheck)/, because: 'the type-checker is not to be silenced' },
  {
    where: isScript,
    forbidden: /biome[-]ignore.*(noExplicitAny|noDefaultExport)/,
    because: 'no exception to this rule',
  },
  {
    where: (name) => CODE.test(name),
    forbidden: /\b(TO(?:)DO|FIX(?:)ME|XX(?:)X)\b/,
    because: 'do it, or write it down where work is planned',
  },
  {
    where: within(/^(packages\/(domain|contract|db|actions)|apps\/(api|scheduler|dashboard)|seed)\/src\//),
    forbidden: /process[.]env/,
    because: 'only the host reads the environment',
  },
  {
    where: within(/^packages\/(domain|actions)\/src\//),
    forbidden: /Date[.]now\(|new Date\(\)|performance[.]now\(/,
    because: 'the day and the instant are arguments',
  },
  {
    where: (name) => !LOCKFILE.test(name),
    forbidden: /(^|[\s'"`(=:])\/(work|home|Users)\/[a-z]/,
    because: "a path of somebody's machine",
  },
  {
    where: () => true,
    forbidden: /https?:\/\/[^/\s]*(registry|artifact|nexus|verdaccio|mirror)[^/\s]*\//i,
    because: 'the address of a registry',
  },
];

/** What is out of shape, in words; empty when nothing is. */
export function checkShape(files: readonly SourceFile[]): string[] {
  return files.flatMap((file) => [
    ...misplaced(file),
    ...tooLong(file),
    ...RULES.flatMap((rule) => broken(rule, file)),
  ]);
}

function misplaced({ name }: SourceFile): string[] {
  return TOP_LEVEL.test(name) ? [] : [`${name}: the top level holds nothing else`];
}

function tooLong({ name, text }: SourceFile): string[] {
  const lines = text.split('\n').length - 1;
  const counts = CODE.test(name) && !GENERATED.test(name) && lines > MOST_LINES;
  return counts ? [`${name}: ${lines} lines, ${MOST_LINES} at most`] : [];
}

function broken({ where, forbidden, because }: Rule, { name, text }: SourceFile): string[] {
  if (!where(name)) return [];
  return text.split('\n').flatMap((line, index) => (forbidden.test(line) ? [`${name}:${index + 1}: ${because}`] : []));
}
