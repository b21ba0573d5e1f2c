import fc from 'fast-check';
import { expect, it } from 'vitest';
import { repeatedNames } from './repeated-names.ts';

it.each([
  ['at the top', '{"a":1,"b":2,"a":3}', ['/a']],
  ['in a list', '{"facts":[{},{"on":"2024","on":"2025"}]}', ['/facts/1/on']],
  ['written differently', '{"on":1,"\\u006fn":2}', ['/on']],
  ['that has to be escaped', '{"a/b~":1,"a/b~":2}', ['/a~1b~0']],
  ['three times', '{"a":1,"a":2,"a":3}', ['/a']],
  ['that is empty', '{"":1,"":2}', ['/']],
  ['in two places', '[{"a":1,"a":{"b":[],"b":[]}}]', ['/0/a', '/0/a/b']],
])('finds a name %s', (_, json, expected) => {
  expect(repeatedNames(json)).toEqual(expected);
});

it.each([
  ['the same name in two objects', '[{"a":1},{"a":{"a":1}}]'],
  ['a text that looks like a name', '{"a":"\\"a\\":1,","b":["a","a"],"c":"a"}'],
  ['a text that ends in a backslash', '{"a":"\\\\","b":"\\\\","c":"a"}'],
  ['no object', '"a"'],
])('is not misled by %s', (_, json) => {
  expect(repeatedNames(json)).toEqual([]);
});

it('finds nothing in what JSON.stringify writes, and every name that is written again', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue(), { minKeys: 1 }), fc.jsonValue(), (object, again) => {
      const json = JSON.stringify(object);
      const [name = ''] = Object.keys(JSON.parse(json));
      const twice = `${json.slice(0, -1)},${JSON.stringify(name)}:${JSON.stringify(again)}}`;
      expect(repeatedNames(json)).toEqual([]);
      expect(repeatedNames(twice)).toHaveLength(1);
    }),
    { seed: 8259, numRuns: 300 },
  );
});
