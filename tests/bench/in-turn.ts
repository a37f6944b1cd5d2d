import { loadavg } from 'node:os';
import { bench } from 'vitest';

/** The middle of some figures; of two middle ones the upper. */
export function median(figures: readonly number[]): number {
  return figures.toSorted((a, b) => a - b)[Math.floor(figures.length / 2)] ?? Number.NaN;
}

/**
 * The median time of each contender, ms, over a fixed count of rounds. They take turns, so that whatever else the
 * machine does falls on all of them.
 */
export function timeInTurn<K extends string>(
  contenders: Readonly<Record<K, (round: number) => void>>,
  { warmUps, rounds }: { readonly warmUps: number; readonly rounds: number },
): (name: K) => number {
  const times = new Map<string, number[]>();
  for (let round = -warmUps; round < rounds; round += 1) {
    for (const name in contenders) {
      const start = performance.now();
      contenders[name](round + warmUps);
      const took = performance.now() - start;
      if (round >= 0) times.set(name, [...(times.get(name) ?? []), took]);
    }
  }
  return (name) => median(times.get(name) ?? []);
}

/** A report made once: the rounds are counted in it, so the runner must add none of its own. */
export function report(name: string, make: () => string | Promise<string>): void {
  const once = { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 };
  bench(
    name,
    async () => {
      const load = loadavg()[0] ?? Number.NaN;
      console.log(`${await make()} (load ${load.toFixed(1)})`);
    },
    once,
  );
}
