import { columnLetters } from '../../src/sheet/address.js';
import type { Random } from './random.js';

/*
 * Small parts lists with formulas of ours, and what people do to a list: rows put in, sorted and deleted, headings renamed,
 * cells typed over.
 */

export const typedHeadings = ['Mark', 'Hole', 'Thickness'];

/** A formula as it reads in a row of a list. */
type OwnFormula = (row: number, list: PartsList) => string;

export interface ListRow {
  typed: (string | number | undefined)[];
  formulas: readonly OwnFormula[];
  shown: readonly string[];
}

interface Column {
  kind: 'typed' | 'own' | 'native';
  /** Which of its kind. */
  at: number;
  heading: string;
}

export interface PartsList {
  isTable: boolean;
  /** Rows above the headings: a title, or nothing. */
  above: string[];
  columns: Column[];
  rows: ListRow[];
  /** A formula in a row of its own, below the list. */
  below: { text: string; shown: string } | undefined;
}

const holes = ['9/16', '11/16', '13/16', 0.75, 1];

/** The letters of a typed column: formulas follow the column, not its heading. */
const lettersOf = (list: PartsList, typed: number) =>
  columnLetters(list.columns.findIndex(({ kind, at }) => kind === 'typed' && at === typed));

const call = (name: string, args: string) => `_xldudf_TONROW_${name}(${args})`;

/** Formulas that name their row by address or by the table, what does not move, or nothing. */
function ownFormulas(random: Random, isTable: boolean): OwnFormula {
  const inRow: OwnFormula = (row, list) =>
    call('PUNCHFORCE', `${lettersOf(list, 1)}${row},${lettersOf(list, 2)}${row},"A36"`);
  const inTable: OwnFormula = () => call('HOLEMIN', 'Parts[[#This Row],[Thickness]],"A36"');
  const constant: OwnFormula = () => call('HOLEMIN', '0.25,"A36"');
  const fixed: OwnFormula = (_, list) => call('HOLEMIN', `$${lettersOf(list, 2)}$2,"A36"`);
  return random.pick([inRow, inRow, isTable ? inTable : inRow, constant, fixed]);
}

function newRow(random: Random, mark: string, formulas: readonly OwnFormula[], shown: string): ListRow {
  return {
    typed: [
      random.chance(0.95) ? mark : undefined,
      random.chance(0.9) ? random.pick(holes) : undefined,
      random.pick([0.25, 0.375]),
    ],
    formulas,
    shown: formulas.map((_, at) => `${shown} ${at}`),
  };
}

/** A list as somebody makes it; now and then a row stands in it twice. */
export function newList(random: Random): PartsList {
  const isTable = random.chance(0.6);
  const own = Array.from({ length: 1 + random.below(2) }, () => ownFormulas(random, isTable));
  const columns: Column[] = [
    ...typedHeadings.map((heading, at): Column => ({ kind: 'typed', at, heading })),
    ...own.map((_, at): Column => ({ kind: 'own', at, heading: `Check ${at + 1}` })),
    ...(random.chance(0.3) ? [{ kind: 'native', at: 0, heading: 'Letters' } satisfies Column] : []),
  ];
  const rows = Array.from({ length: 1 + random.below(7) }, (_, at) => {
    const special = random.chance(0.1) ? own.map(() => ownFormulas(random, isTable)) : own;
    return newRow(random, `P${at + 1}`, special, `of part ${at + 1}`);
  });
  const twice = rows[0];
  if (twice && random.chance(0.25)) rows.splice(random.below(rows.length + 1), 0, { ...twice });
  return {
    isTable,
    above: random.pick([[], ['Catwalk'], ['Catwalk', ''], ['', '']]),
    columns: random.chance(0.3) ? [...columns.slice(0, 1), ...columns.slice(1).reverse()] : columns,
    rows,
    below: random.chance(0.3) ? { text: call('HOLEMIN', '0.5,"A36"'), shown: 'of all' } : undefined,
  };
}

type Edit = (list: PartsList, random: Random) => string;

const edits: readonly Edit[] = [
  ({ rows }, random) => {
    const at = random.below(rows.length + 1);
    rows.splice(at, 0, newRow(random, `N${random.below(1e6)}`, [], ''));
    return `a row put in at ${at + 1}`;
  },
  ({ rows }, random) => {
    if (rows.length < 2) return 'nothing deleted';
    const at = random.below(rows.length);
    rows.splice(at, 1);
    return `row ${at + 1} deleted`;
  },
  ({ rows }, random) => {
    const keys = new Map(rows.map((row) => [row, random.next()]));
    rows.sort((a, b) => (keys.get(a) ?? 0) - (keys.get(b) ?? 0));
    return 'sorted';
  },
  ({ columns }, random) => {
    const column = random.pick(columns);
    const was = column.heading;
    column.heading = `${was} new`;
    return `heading ${was} renamed`;
  },
  ({ rows }, random) => {
    const row = random.pick(rows);
    const at = random.below(row.typed.length);
    row.typed = row.typed.map((typed, each) => (each === at ? `T${random.below(1e6)}` : typed));
    return `typed over the ${typedHeadings[at] ?? ''} of a row`;
  },
  (list, random) => {
    list.above = [...list.above, random.pick(['', 'Handrail'])];
    return 'a row put in above the headings';
  },
];

/** A list after some of what people do to it; the formulas it has are those that go with their rows. */
export function editedList(random: Random, before: PartsList): { list: PartsList; edits: string[] } {
  const list: PartsList = {
    ...before,
    columns: before.columns.map((column) => ({ ...column })),
    rows: before.rows.map((row) => ({ ...row })),
  };
  return { list, edits: random.times(4, () => random.pick(edits)(list, random)) };
}
