import { CannotCompute } from './values.js';

/** Steps of work for one formula: reading a cell, comparing two values. About a second at most. */
const mostOfFormula = 50_000_000;
/** Steps for a workbook whatever it holds, and those for each of its cells. */
const leastOfBook = 30_000_000;
const perCell = 15_000;

/**
 * What calculating may take, counted and not timed, so that a file comes out the same on every machine: a formula that
 * asks for more keeps its value, and so do those that come when a workbook has used up all it may.
 */
export class Work {
  private ofFormula = mostOfFormula;
  private ofBook: number;

  constructor(cells: number) {
    this.ofBook = leastOfBook + perCell * cells;
  }

  /** The steps that were taken. */
  spent = 0;

  /** Starts the count of a formula. */
  begin(): void {
    this.ofFormula = mostOfFormula;
  }

  spend(steps: number): void {
    if (!(steps <= this.ofFormula))
      throw new CannotCompute('It takes more work than is done here for one formula.');
    if (!(steps <= this.ofBook))
      throw new CannotCompute('The formulas take more work than is done here for one workbook.');
    this.spent += steps;
    this.ofFormula -= steps;
    this.ofBook -= steps;
  }
}
