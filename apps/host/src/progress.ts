/** Says what is being done while it is done: a silent minute looks like a crash. */

export type Progress = { step<T>(words: string, work: () => Promise<T>): Promise<T>; say(line: string): void };

export function progressOn(out: NodeJS.WriteStream): Progress {
  const say = (line: string) => void out.write(`${line}\n`);
  return {
    say,
    async step(words, work) {
      const started = performance.now();
      say(`${words} …`);
      const result = await work();
      say(`  done in ${((performance.now() - started) / 1000).toFixed(1)} s`);
      return result;
    },
  };
}
