import sharp from 'sharp';
import { expect, test } from 'vitest';
import { randomOf } from '../random.ts';
import { photographOf } from './develop.ts';

test('pictures drawn all at once are all drawn, and drawings sent in stay shut out afterwards', async () => {
  const scenes = ['hose', 'elbow', 'wire', 'blisters', 'inlet', 'gauge'] as const;
  const shots = scenes.flatMap((scene) => [1, 2, 3, 4].map((level) => ({ scene, level, mended: level > 2 })));

  const pictures = await Promise.all(shots.map((shot) => photographOf(shot, 2026, randomOf(shot.scene))));
  for (const picture of pictures) expect(picture.subarray(0, 2).toString('hex')).toBe('ffd8');
  await expect(sharp(Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>')).metadata()).rejects.toThrow();
});
