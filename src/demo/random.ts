/** A number from 0 to 2³²−1 that depends on every character of `text` (FNV-1a). */
export function hashText(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  }
  return hash >>> 0;
}

/** A stream of chance numbers from 0 to 1, the same for the same seed (mulberry32). */
export type Chance = () => number;

export function makeChance(seed: string): Chance {
  let state = hashText(seed);
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** The next chance number, from `low` to `high`. */
export function between(chance: Chance, low: number, high: number): number {
  return low + (high - low) * chance();
}

/** One of `choices`, by chance; throws where there are none. */
export function pick<T>(chance: Chance, choices: readonly T[]): T {
  const choice = choices[Math.floor(chance() * choices.length)];
  if (choice === undefined) throw new Error("Nothing to pick from.");
  return choice;
}
