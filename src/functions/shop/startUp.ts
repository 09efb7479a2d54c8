import { InputError, sentenceInCell } from '../../core/inputError.js';
import { readShop, type Shop, type ShopTables } from '../../core/shop/readShop.js';
import { unreadToolText } from '../../core/shop/readTools.js';
import type { Recalculation, StartUpProblem, StartUpState } from '../../core/shop/startUpState.js';
import type { ReadShopTables } from './coldStart.js';
import { isEditing } from './retry.js';

/** Why the workbook's shop could not be read, in one sentence. */
export class StartUpFailure extends Error {
  constructor(
    readonly problem: StartUpProblem,
    message: string,
    options?: ErrorOptions,
  ) {
    super(message, options);
    this.name = 'StartUpFailure';
  }
}

/** Keeps what the last reading of the workbook's shop came to, and tells of it. */
export class StartUp {
  private current: StartUpState = { state: 'reading' };
  private asked: Recalculation | undefined;
  private readonly listeners = new Set<() => void>();

  constructor(
    private readonly read: ReadShopTables,
    private readonly calculate: () => Promise<Recalculation> = () => Promise.resolve('refused'),
  ) {}

  get state(): StartUpState {
    return this.current;
  }

  /** Whether the host was asked to calculate again what ended without its shop; undefined where nothing did. */
  get recalculation(): Recalculation | undefined {
    return this.asked;
  }

  /** Tells of every change until stopped. */
  readonly listen = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  readonly recalculate = async (): Promise<void> => {
    this.asked = await this.calculate();
    this.tell();
  };

  private tell(): void {
    for (const listener of this.listeners) listener();
  }

  /** Reads, and remembers the outcome; fails as the reading fails. */
  readonly readTables = async (): Promise<ShopTables> => {
    try {
      const tables = await this.read();
      this.current = stateOf(readShop(tables));
      return tables;
    } catch (error) {
      this.current = isEditing(error)
        ? { state: 'editing' }
        : { state: problemOf(error), messages: [messageOf(error)] };
      throw error;
    } finally {
      this.tell();
    }
  };
}

function stateOf(shop: Shop): StartUpState {
  const messages = [
    ...shop.presses.flatMap(({ values, problem }) => [
      ...(problem === undefined ? [] : [sentenceInCell(problem)]),
      ...Object.values(values).flatMap((value) =>
        value.state === 'bad' ? sentenceInCell(value.failure) : [],
      ),
    ]),
    ...Object.values(shop.settings.bad).map(sentenceInCell),
    ...(shop.tools?.problems ?? []).map(unreadToolText),
    ...shop.ownGrades.flatMap(({ problem }) => (problem ? sentenceInCell(problem) : [])),
  ];
  const { stamp } = shop;
  return messages.length === 0 ? { state: 'ok', stamp } : { state: 'incomplete', stamp, messages };
}

function problemOf(error: unknown): StartUpProblem {
  if (error instanceof StartUpFailure) return error.problem;
  if (!(error instanceof InputError)) return 'not read';
  return error.failure.argument === 'ShopStamp' ? 'no SHOP formula' : 'data unreadable';
}

function messageOf(error: unknown): string {
  return error instanceof StartUpFailure || error instanceof InputError
    ? error.message
    : 'The workbook could not be read: enter the cell ShopStamp again (F2, then Enter).';
}
