import { describe, expect, it } from 'vitest';
import { checkShape } from './shape.ts';

/** Joined here, so that this file does not hold what it plants. */
const PLANTED: [name: string, text: string, because: string][] = [
  ['packages/db/src/pool.test.ts', ['it', 'only(1)'].join('.'), 'runs alone'],
  ['packages/db/src/pool.test.ts', ['it', 'skip(1)'].join('.'), 'run or removed'],
  ['packages/db/src/pool.ts', ['//', '@ts', 'ignore'].join('-'), 'not to be silenced'],
  ['packages/db/src/pool.ts', `// ${['TO', 'DO'].join('')} later`, 'do it, or write it down'],
  ['packages/db/src/pool.ts', `const url = ${['process', 'env'].join('.')}.URL;`, 'only the host'],
  ['packages/domain/src/day.ts', `const now = ${['Date', 'now()'].join('.')};`, 'are arguments'],
  ['packages/actions/src/add.ts', `const now = ${['new', 'Date()'].join(' ')};`, 'are arguments'],
  ['README.md', `see ${['', 'home', 'ann', 'garboard'].join('/')}`, "somebody's machine"],
  ['package-lock.json', ['https:', '', 'registry.example.org', 'zod.tgz'].join('/'), 'address of a registry'],
  ['stray.txt', '', 'top level'],
  ['packages/db/src/long.ts', 'x\n'.repeat(300), '301 lines'],
];

describe('checkShape', () => {
  it.each(PLANTED)('sees what is planted in %s', (name, text, because) => {
    const faults = checkShape([{ name, text: `${text}\n` }]);

    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(because);
    expect(faults[0]).toContain(name);
  });

  it('names the line', () => {
    const text = `one\ntwo\nexport const url = ${['process', 'env'].join('.')}.URL;\n`;

    expect(checkShape([{ name: 'packages/db/src/pool.ts', text }])[0]).toContain('packages/db/src/pool.ts:3:');
  });

  it('lets the host read the environment, the API know the time, and a test be skipped for a reason', () => {
    const files = [
      { name: 'apps/host/src/main.ts', text: `start(${['process', 'env'].join('.')});\n` },
      { name: 'apps/api/src/app.ts', text: `const now = ${['new', 'Date()'].join(' ')};\n` },
      { name: 'packages/db/src/pool.test.ts', text: 'it.skipIf(noSetpriv)(1);\n' },
      { name: 'packages/db/schema.sql', text: 'x\n'.repeat(400) },
    ];

    expect(checkShape(files)).toEqual([]);
  });
});
