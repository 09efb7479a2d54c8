import { sentenceInCell } from '../inputError.js';
import type { Grade } from '../material/grade.js';
import type { Press } from '../press/press.js';
import { nameKey, type Cells } from './table.js';
import type { LengthUnit } from '../quantity/units.js';
import { type CostSettings, defaultCostSettings } from './costSettings.js';
import { contentHash } from './hash.js';
import { readGrades, type OwnGrade } from './readGrades.js';
import { readPresses } from './readPresses.js';
import { readSettings, type SettingsRead } from './settings.js';
import { readTools, type Tool, type ToolsRead, unreadToolText } from './readTools.js';
import { rulesEdition, stampText } from './stamp.js';

/*
 * The shop's tables, read: presses, tools, grades and settings, with the stamp that stands for them in
 * formulas.
 */

/** The shop's tables as they come from the sheet, each with its headings. */
export interface ShopTables {
  presses: Cells;
  tools?: Cells | undefined;
  grades?: Cells | undefined;
  settings?: Cells | undefined;
}

/** Everything a result may depend on besides its own arguments. */
export interface Shop {
  unit: LengthUnit;
  presses: readonly Press[];
  /** Undefined where the shop keeps no list of tools: tools are then not checked. */
  tools?: ToolsRead | undefined;
  ownGrades: readonly OwnGrade[];
  /** The own grades that can be used. */
  grades: readonly Grade[];
  settings: SettingsRead;
  /** Rows of the tables that no rule reads, kept and named. */
  unknownRows: readonly string[];
  /** Why a setting, a grade or a tool could not be read. */
  unreadable: readonly string[];
  /** Presses with a cell that cannot be read. */
  incomplete: readonly string[];
  stamp: string;
  hash: string;
}

/**
 * Reads, validates and normalizes the shop's tables, and gives them their stamp: units, number of presses,
 * the edition of the rules and a hash of the normalized content. Equal content gives an equal stamp
 * whatever the order of rows, the spelling of fractions or the spacing of names.
 */
export function readShop(tables: ShopTables): Shop {
  const settings = readSettings(tables.settings);
  const { unit } = settings;
  const { presses, unknownRows } = readPresses(tables.presses, unit);
  const tools = readTools(tables.tools, unit);
  const ownGrades = readGrades(tables.grades, unit);
  const hash = contentHash(canonical({ settings, presses, tools, ownGrades }));
  const incomplete = presses.filter(isIncomplete).map((press) => press.name);
  const unknown = [...unknownRows, ...settings.unknownRows];
  const unreadable = [
    ...Object.values(settings.bad).map(sentenceInCell),
    ...ownGrades.flatMap((own) => (own.problem ? sentenceInCell(own.problem) : [])),
    ...(tools?.problems ?? []).map(unreadToolText),
  ];
  return {
    unit,
    presses,
    tools,
    ownGrades,
    grades: ownGrades.flatMap((own) => own.grade ?? []),
    settings,
    unknownRows: unknown,
    unreadable,
    incomplete,
    hash,
    stamp: stampText({
      unit,
      pressCount: presses.length,
      incomplete,
      unreadable: unreadable.length,
      unknownRows: unknown.length,
      hash,
    }),
  };
}

function isIncomplete(press: Press): boolean {
  return press.problem !== undefined || Object.values(press.values).some((value) => value.state === 'bad');
}

interface Content {
  settings: SettingsRead;
  presses: Press[];
  tools: ToolsRead | undefined;
  ownGrades: OwnGrade[];
}

function canonical({ settings, presses, tools, ownGrades }: Content): string {
  const sorted = <Item>(items: readonly Item[]) => items.map((item) => JSON.stringify(item)).sort();
  return JSON.stringify([
    rulesEdition,
    settings.unit,
    Object.entries(settings.settings).filter(isOwnOrOfChecks).sort(byKey),
    Object.entries(settings.bad).sort(byKey),
    presses.map(({ name, values, problem }) => [nameKey(name), problem ?? '', knownValues(values)]),
    tools ? [sorted(tools.tools.map(asMeant)), sorted(tools.problems.map(unreadToolText))] : null,
    sorted(ownGrades),
  ]);
}

/** A setting of time or price that is as it comes says nothing of the shop. */
function isOwnOrOfChecks([key, value]: [string, unknown]): boolean {
  if (!(key in defaultCostSettings)) return true;
  return JSON.stringify(value) !== JSON.stringify(defaultCostSettings[key as keyof CostSettings]);
}

/** How a size is spelled makes no difference. */
function asMeant({ press, kind, size, count, bodyMm, bodyProblem, holder, heightMm, heightProblem }: Tool) {
  return { kind, size, count, press, bodyMm, bodyProblem, holder, heightMm, heightProblem };
}

/** A blank cell and a missing row mean the same, so neither is part of the content. */
function knownValues(values: Press['values']) {
  return Object.entries(values)
    .filter(([, value]) => value.state !== 'unknown')
    .sort(byKey);
}

function byKey([a]: [string, unknown], [b]: [string, unknown]): number {
  return a < b ? -1 : 1;
}
