/** What the planner may spend, counted in what it does and not in time, so that the same input gives the same plan. */
export interface Work {
  /** About microseconds of a usual machine. */
  spent: number;
  add: (amount: number) => void;
  /** Whether the clock, which is only a safety net, says to end. */
  isStopped: () => boolean;
  /** Whether to end, by the clock or because all is spent. */
  isOver: () => boolean;
}

/** Nodes of a knapsack search. */
export const nodeWork = 0.15;
/** Cells of a table of fills. */
export const cellWork = 0.002;
/** An iteration of a linear program, by rows and columns. */
export const iterationWork = 0.02;

export function countWork(isStopped: () => boolean, most: number): Work {
  return {
    spent: 0,
    add(amount) {
      this.spent += amount;
    },
    isStopped,
    isOver() {
      return this.spent > most || isStopped();
    },
  };
}
