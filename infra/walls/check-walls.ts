/** The walls stand: nothing in the tree crosses one, and a planted crossing of each one is seen. */
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import { cruise, type ICruiseOptions, type ICruiseResult, type IViolation } from 'dependency-cruiser';
import { PLANTED, TARGETS } from './planted.ts';

const ruleSet = createRequire(import.meta.url)('./dependency-cruiser.cjs');
const OPTIONS: ICruiseOptions = {
  ruleSet,
  validate: true,
  tsPreCompilationDeps: true,
  doNotFollow: { path: 'node_modules' },
  enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['types', 'import', 'node', 'default'] },
};

/** What is wrong, in words; empty when the walls stand. */
export async function checkWalls(root: string): Promise<string[]> {
  const tree = await read(root, ['packages', 'apps', 'seed', 'tests', 'infra']);
  const empty = tree.summary.totalCruised === 0 ? ['no module was read: the check says nothing'] : [];
  return [...empty, ...tree.summary.violations.map(words), ...(await checkPlanted(root))];
}

async function checkPlanted(root: string): Promise<string[]> {
  await mkdir(path.join(root, '.cache'), { recursive: true });
  const place = await mkdtemp(path.join(root, '.cache', 'planted-'));
  try {
    for (const file of TARGETS) await plant(place, file, 'export {};\n');
    for (const { file, text } of PLANTED) await plant(place, file, text);
    const { violations } = (await read(place, ['packages', 'apps', 'seed'])).summary;
    return [...missed(violations), ...neverPlanted()];
  } finally {
    await rm(place, { recursive: true, force: true });
  }
}

function missed(violations: readonly IViolation[]): string[] {
  const seen = new Set(violations.map(({ rule, from }) => `${rule.name} ${from}`));
  return PLANTED.filter(({ wall, file }) => !seen.has(`${wall} ${file}`)).map(
    ({ wall, file }) => `${wall} did not see the forbidden import planted in ${file}`,
  );
}

/** A wall added without a planted crossing would be trusted untried. */
function neverPlanted(): string[] {
  const planted = new Set(PLANTED.map(({ wall }) => wall));
  const names: string[] = ruleSet.forbidden.map(({ name }: { name: string }) => name);
  return names.filter((name) => !planted.has(name)).map((name) => `${name} has no planted crossing in planted.ts`);
}

async function plant(place: string, file: string, text: string): Promise<void> {
  await mkdir(path.dirname(path.join(place, file)), { recursive: true });
  await writeFile(path.join(place, file), text);
}

async function read(baseDir: string, folders: string[]): Promise<ICruiseResult> {
  const { output } = await cruise(folders, { ...OPTIONS, baseDir });
  if (typeof output === 'string') throw new Error(output);
  return output;
}

const words = ({ rule, from, to }: IViolation): string => `${rule.name}: ${from} imports ${to}`;
