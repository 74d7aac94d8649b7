/**
 * Moves places along a line as little as needed so that neighbours stand at least `gap` apart and
 * all stay between `low` and `high`; keeps their order. Where there is no room for all, they stand
 * evenly between the ends.
 */
export function spread(
  places: readonly number[],
  gap: number,
  low = -Infinity,
  high = Infinity,
): number[] {
  const order = places.map((_, i) => i).sort((a, b) => places[a] - places[b] || a - b);
  const needed = gap * (places.length - 1);
  const room = high - low;
  const result = new Array<number>(places.length);
  if (needed > room) {
    order.forEach((i, k) => (result[i] = low + (room * k) / (places.length - 1)));
    return result;
  }
  for (const { from, members } of clusters(order, places, gap, low, high)) {
    members.forEach((i, k) => (result[i] = from + k * gap));
  }
  return result;
}

interface Cluster {
  /** Place of the first member. */
  from: number;
  members: number[];
}

/** Joins places nearer than the gap into runs that stand about the mean of their wishes. */
function clusters(
  order: readonly number[],
  places: readonly number[],
  gap: number,
  low: number,
  high: number,
): Cluster[] {
  const placed = (members: number[]): Cluster => {
    const wish = members.reduce((sum, i, k) => sum + places[i] - k * gap, 0) / members.length;
    const last = high - gap * (members.length - 1);
    return { from: Math.min(last, Math.max(low, wish)), members };
  };
  const runs: Cluster[] = [];
  for (const i of order) {
    let run = placed([i]);
    for (let before = runs.at(-1); before && end(before, gap) > run.from; before = runs.at(-1)) {
      runs.pop();
      run = placed([...before.members, ...run.members]);
    }
    runs.push(run);
  }
  return runs;
}

/** Nearest place after a run. */
const end = ({ from, members }: Cluster, gap: number) => from + gap * members.length - 1e-9;
