/** PostgreSQL in a container, where an engine answers. */

import { type Engine, findEngine } from './container-engine.ts';
import type { RunningServer } from './running-server.ts';

/** Made by infra/images/build-local-postgres.sh where no registry of images can be reached. */
const LOCAL_IMAGE = 'garboard-postgres:local';
const PUBLIC_IMAGE = 'postgres:18-alpine';

/** `null` when there is no engine, or (said aloud) when it cannot start the image. */
export async function startContainer(): Promise<RunningServer | null> {
  const engine = await findEngine();
  if (!engine) return null;
  const image = await chooseImage(engine);
  try {
    return await start(image);
  } catch (error) {
    console.log(`A container engine answers, but ${image} did not start: ${(error as Error).message}`);
    return null;
  }
}

async function chooseImage(engine: Engine): Promise<string> {
  const named = process.env.TEST_POSTGRES_IMAGE;
  if (named) return named;
  return (await engine.hasImage(LOCAL_IMAGE)) ? LOCAL_IMAGE : PUBLIC_IMAGE;
}

async function start(image: string): Promise<RunningServer> {
  // The helper that sweeps up after a killed run is an image too; where ours is local, it cannot be had.
  if (image === LOCAL_IMAGE) process.env.TESTCONTAINERS_RYUK_DISABLED ??= 'true';
  const { PostgreSqlContainer } = await import('@testcontainers/postgresql');
  const container = await new PostgreSqlContainer(image)
    .withTmpFs({ '/var/lib/postgresql': 'rw' })
    .withCommand(['postgres', '-c', 'fsync=off', '-c', 'synchronous_commit=off', '-c', 'full_page_writes=off'])
    .withStartupTimeout(60_000)
    .start();
  return {
    words: `a container of ${image}`,
    url: container.getConnectionUri(),
    stop: async () => void (await container.stop()),
  };
}
