import { engineStyle, type CellLook } from './cellLook.js';

/** Styles, borders and formats in the engine's form, numbered; shared by all sheets. */
export class SharedLooks {
  readonly styles: Record<string, object> = {};
  readonly borders: Record<string, object> = {};
  readonly formats: Record<string, string> = {};
  private readonly numbers = new Map<string, number>();

  /** The number of an item among those of its kind, a new one where it is new. */
  numberOf(kind: 'styles' | 'borders' | 'formats', item: object | string): number {
    const key = kind + JSON.stringify(item);
    const known = this.numbers.get(key);
    if (known !== undefined) return known;
    const list: Record<string, object | string> = this[kind];
    const number = Object.keys(list).length + 1;
    list[number] = item;
    this.numbers.set(key, number);
    return number;
  }
}

/** Collects how the cells of a sheet look, in the engine's form: numbered styles, borders and formats by cell. */
export function sheetLook(shared: SharedLooks) {
  const styles: Record<string, number> = {};
  const borders: Record<string, number> = {};
  const formats: Record<string, number> = {};
  return {
    add(address: string, fileStyle: number, look: CellLook, format: string | undefined): void {
      const style = engineStyle(look, fileStyle);
      if (Object.keys(style).length > 0) styles[address] = shared.numberOf('styles', style);
      if (look.borders) borders[address] = shared.numberOf('borders', look.borders);
      if (format !== undefined) formats[address] = shared.numberOf('formats', format);
    },
    zones: () => ({ styles, borders, formats }),
  };
}
