import type { CellLook } from './styles';

/** Collects how the cells of a sheet look, in the engine's form: numbered styles and formats by cell. */
export function sheetLook(shared: { styles: Record<string, unknown>; formats: Record<string, string> }) {
  const styles: Record<string, number> = {};
  const formats: Record<string, number> = {};
  return {
    add(address: string, look: CellLook, format: string | undefined): void {
      const style = engineStyle(look);
      if (Object.keys(style).length > 0) styles[address] = numberOf(style, shared.styles);
      if (format !== undefined) formats[address] = numberOf(format, shared.formats);
    },
    zones: () => ({ styles, formats }),
  };
}

function engineStyle({ bold, italic, textColor, fillColor, fontSize, wrap, align }: CellLook): object {
  return {
    ...(bold && { bold }),
    ...(italic && { italic }),
    ...(textColor && { textColor }),
    ...(fillColor && { fillColor }),
    ...(fontSize && { fontSize }),
    ...(wrap && { wrapping: 'wrap' }),
    ...(align && { align }),
  };
}

/** The number of an item among the shared ones, a new one where it is new. */
function numberOf<Item>(item: Item, shared: Record<string, Item>): number {
  const text = JSON.stringify(item);
  const known = Object.entries(shared).find(([, one]) => JSON.stringify(one) === text);
  if (known) return Number(known[0]);
  const number = Object.keys(shared).length + 1;
  shared[number] = item;
  return number;
}
