/**
 * Runs `work` over all items, at most `limit` at a time, and gives the results in their order.
 *
 * @throws the first error, once no work is under way any more: a caller that gives up may take away
 * what the work reads
 */
export async function inParallel<Item, Result>(
  items: readonly Item[],
  limit: number,
  work: (item: Item) => Promise<Result>,
): Promise<Result[]> {
  const results: Result[] = [];
  const errors: unknown[] = [];
  const queue = items.entries();
  const worker = async () => {
    for (const [index, item] of queue) {
      if (errors.length > 0) return;
      try {
        results[index] = await work(item);
      } catch (error) {
        errors.push(error);
      }
    }
  };
  await Promise.all(Array.from({ length: Math.min(limit, items.length) }, worker));
  if (errors.length > 0) throw errors[0];
  return results;
}
