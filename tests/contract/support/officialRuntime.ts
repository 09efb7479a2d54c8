import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { type DOMWindow, JSDOM } from 'jsdom';
import { root } from '../../../scripts/ensure.mjs';
import { plannerThreads } from '../../../src/headless/planner/plannerThreads.js';

const runtimeFile = createRequire(import.meta.url).resolve(
  '@microsoft/office-js/dist/custom-functions-runtime.js',
);
const runtimeScript = readFileSync(runtimeFile, 'utf8');

/** What the host is told about a call: a value, or an error with the sentence it shows. */
export type Outcome =
  | { value: unknown; error?: undefined }
  | { error: { code: string; message: string }; value?: undefined };

export interface Invocation {
  id: string;
  /** One entry for each parameter of the metadata, as the host sends them over the wire. */
  parameters: unknown[];
}

/** Bits of an invocation's flags. */
export const allowsErrors = 4;
export const carriesDataTypes = 8;
export const isCancelable = 1;

/** The runtime's internal numbers of the two errors that show a message. */
const errorCodes: Record<number, string> = { 1: '#N/A', 7: '#VALUE!' };
const invocationMessage = { messageCategory: 1, messageType: 1000 };
const cancellationMessage = { messageCategory: 1, messageType: 1001 };
const entries = 3;
const response = 2;

interface HostWindow extends DOMWindow {
  CustomFunctions: { _association: { mappings: Record<string, unknown> } };
  _richApiNativeBridge: NativeBridge;
}

/** The channel between the runtime and its host: messages as JSON text, both ways. */
interface NativeBridge {
  sendMessageToHost(text: string): void;
  /** Set by the runtime. */
  onMessageFromHost?(text: string): void;
}

/** The spreadsheet host's own custom-functions runtime in a page of its own, with the built bundle loaded. */
export class OfficialRuntime {
  readonly window: HostWindow;
  private readonly waiting = new Map<number, (outcome: Outcome) => void>();
  private nextId = 0;

  constructor(bundle: string, prepare: (window: DOMWindow) => void = () => undefined) {
    const page = '<!doctype html><title>functions</title><script src="custom-functions-runtime.js"></script>';
    const dom = new JSDOM(page, { url: 'https://localhost/', runScripts: 'outside-only' });
    this.window = dom.window as unknown as HostWindow;
    this.window._richApiNativeBridge = { sendMessageToHost: (text) => this.receive(text) };
    this.window.eval(runtimeScript);
    // The page of this test has no workers; the planner is the built one all the same.
    Object.assign(this.window, { tonrowOpenPlanner: plannerThreads(path.join(root, 'dist')) });
    prepare(this.window);
    this.window.eval(bundle);
  }

  /** The ids associated so far. */
  get associated(): string[] {
    return Object.keys(this.window.CustomFunctions._association.mappings);
  }

  async call(id: string, parameters: unknown[], flags = allowsErrors): Promise<Outcome> {
    const [outcome] = await this.callAll([{ id, parameters }], flags);
    if (!outcome) throw new Error(`${id} did not answer`);
    return outcome;
  }

  /** Sends all calls in one message, as a host does when it recalculates; answers in their order. */
  callAll(calls: readonly Invocation[], flags = allowsErrors): Promise<Outcome[]> {
    const messages: unknown[] = [];
    const outcomes = calls.map(({ id, parameters }) => {
      const number = this.nextId++;
      messages.push({ ...invocationMessage, message: [number, id, parameters, null, flags, null] });
      return new Promise<Outcome>((resolve) => this.waiting.set(number, resolve));
    });
    this.send({ type: entries, message: { entries: messages } });
    return Promise.all(outcomes);
  }

  /** Cancels calls that are not answered, as a host does when a formula changes; they get no answer. */
  cancelAll(): void {
    const entriesOf = [...this.waiting.keys()].map((invocationId) => ({
      ...cancellationMessage,
      message: { invocationId },
    }));
    this.waiting.clear();
    this.send({ type: entries, message: { entries: entriesOf } });
  }

  close(): void {
    this.window.close();
  }

  private send(message: unknown): void {
    this.window._richApiNativeBridge.onMessageFromHost?.(JSON.stringify(message));
  }

  /** Results come as requests of the runtime to its host, each of which waits to be answered. */
  private receive(text: string): void {
    const { id, message } = JSON.parse(text) as { id: number; message?: { body?: { Actions?: Action[] } } };
    const actions = message?.body?.Actions ?? [];
    for (const action of actions) {
      for (const result of action.ArgumentInfo?.Arguments?.[0] ?? []) this.settle(result);
    }
    const results = actions.map((action) => ({ ActionId: action.Id, Value: null }));
    const answer = { statusCode: 200, headers: {}, body: { Results: results } };
    setTimeout(() => this.send({ id, type: response, flags: 0, message: answer }), 0);
  }

  private settle([number, succeeded, value, code]: ResultRow): void {
    const settle = this.waiting.get(number);
    this.waiting.delete(number);
    if (succeeded) settle?.({ value });
    else
      settle?.({ error: { code: errorCodes[code ?? -1] ?? `runtime code ${code}`, message: String(value) } });
  }
}

type ResultRow = [id: number, succeeded: boolean, value: unknown, code?: number];

interface Action {
  Id: number;
  ArgumentInfo?: { Arguments?: ResultRow[][] };
}
