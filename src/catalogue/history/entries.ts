/** From the versions of a record to what changed on each day. */

/** A version of a record: what it held from a day on. */
export interface RecordVersion {
  readonly day: string;
  /** A name for what it held: the same for the same text. */
  readonly blob: string;
  /** What it was made from: none where it was new, several where branches came together. */
  readonly before: readonly string[];
}

/** What changed on one day. */
export interface HistoryEntry<Change> {
  readonly day: string;
  readonly changes: readonly Change[];
  /** How many more changes there were that day than are told. */
  readonly more: number;
}

/** So many days are told, the newest, and so many changes of each. */
const [mostDays, mostChanges] = [30, 12];

/** A record's story: its days, and how many earlier ones are not told. */
export interface RecordStory<Change> {
  readonly entries: readonly HistoryEntry<Change>[];
  readonly earlier: number;
}

/** From one version to another of the same day that rests on it. */
interface Stretch {
  readonly day: string;
  readonly from: string | null;
  readonly to: string;
  readonly isMerge: boolean;
}

/**
 * Tells the story of a record, the oldest day first. Versions of one day are told as one. Where branches
 * came together only what none of them had told before is told.
 *
 * @param versions in the order of their days
 * @param compare told what a record held before and after, null where it was new
 * @param beside what else happened, day by day
 */
export function tellStory<Change>(
  versions: readonly RecordVersion[],
  compare: (from: string | null, to: string) => readonly Change[],
  beside: readonly { readonly day: string; readonly change: Change }[] = [],
): RecordStory<Change> {
  const told = new Set<string>();
  const byDay = new Map<string, Change[]>();
  const put = (day: string, changes: readonly Change[], isMerge: boolean) => {
    const fresh = changes.filter((change) => !(isMerge && told.has(JSON.stringify(change))));
    for (const change of fresh) told.add(JSON.stringify(change));
    if (fresh.length > 0) byDay.set(day, [...(byDay.get(day) ?? []), ...fresh]);
  };
  for (const { day, from, to, isMerge } of stretchesOf(versions))
    put(day, compare(from, to), isMerge);
  for (const { day, change } of beside) put(day, [change], false);
  const days = [...byDay].sort(([a], [b]) => (a < b ? -1 : 1));
  const entries = days.slice(-mostDays).map(([day, changes]) => ({
    day,
    changes: changes.slice(0, mostChanges),
    more: Math.max(0, changes.length - mostChanges),
  }));
  return { entries, earlier: days.length - entries.length };
}

/** Versions that rest on each other and are of one day are one stretch. */
function stretchesOf(versions: readonly RecordVersion[]): readonly Stretch[] {
  const stretches: Stretch[] = [];
  for (const { day, blob, before } of versions) {
    const [from = null] = before;
    const last = stretches.at(-1);
    const goesOn = last?.day === day && last.to === from && !last.isMerge && before.length === 1;
    if (goesOn) stretches[stretches.length - 1] = { ...last, to: blob };
    else stretches.push({ day, from, to: blob, isMerge: before.length > 1 });
  }
  return stretches.filter(({ from, to }) => from !== to);
}
