import type { XmlElement } from './xml/element.js';

/**
 * Requests that a program calculates everything when it opens the file. For files that hold a value which is no longer
 * right, and for no other: a program without our functions would put an error in place of every value.
 */
export function requestFullCalculation(workbook: XmlElement): void {
  workbook.made('calcPr').set({ fullCalcOnLoad: 1 });
}
