/** An order in which every node comes after what it reads, and the nodes that read themselves in a circle. */
export interface CalculationOrder {
  /** The nodes of a circle follow each other. */
  order: Int32Array;
  /** The number of its circle; 0 where a node is in none. */
  circular: Int32Array;
}

/** Orders a graph by Tarjan's strongly connected components, without recursion. */
export function calculationOrder(reads: readonly (readonly number[])[]): CalculationOrder {
  const count = reads.length;
  const order = new Int32Array(count);
  const circular = new Int32Array(count);
  const number = new Int32Array(count);
  const low = new Int32Array(count);
  const open = new Uint8Array(count);
  const next = new Int32Array(count);
  const component: number[] = [];
  const path: number[] = [];
  let ordered = 0;
  let visited = 0;
  let circles = 0;

  const enter = (node: number) => {
    number[node] = low[node] = ++visited;
    open[node] = 1;
    component.push(node);
    path.push(node);
  };
  const leave = (node: number) => {
    path.pop();
    const parent = path.at(-1);
    if (parent !== undefined) low[parent] = Math.min(low[parent] as number, low[node] as number);
    if (low[node] !== number[node]) return;
    const from = component.lastIndexOf(node);
    const members = component.splice(from);
    const isCircle = members.length > 1 || (reads[node] as number[]).includes(node);
    if (isCircle) circles++;
    for (const member of members) {
      open[member] = 0;
      order[ordered++] = member;
      if (isCircle) circular[member] = circles;
    }
  };

  for (let root = 0; root < count; root++) {
    if (number[root]) continue;
    enter(root);
    while (path.length > 0) {
      const node = path.at(-1) as number;
      const edges = reads[node] as number[];
      const at = next[node] as number;
      if (at === edges.length) {
        leave(node);
        continue;
      }
      next[node] = at + 1;
      const target = edges[at] as number;
      if (!number[target]) enter(target);
      else if (open[target]) low[node] = Math.min(low[node] as number, number[target] as number);
    }
  }
  return { order, circular };
}
