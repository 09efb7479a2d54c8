import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type DOMWindow, JSDOM } from 'jsdom';
import { type Area, cellAddress } from '../../../src/workbook/area.js';
import { BookModel } from './bookModel.js';
import { type HostEffects, workbookObject } from './hostObjects.js';
import { type RequestBody, RequestRunner, type ResponseBody } from './requests.js';

const file = createRequire(import.meta.url).resolve('@microsoft/office-js/dist/excel-win32-16.01.js');
const library = readFileSync(file, 'utf8');

/** Message types of the channel between the library and its host. */
const response = 2;
const entries = 3;
const eventCategory = 65536;
const eventNumbers: Record<string, number> = {
  DataChanged: 10,
  Added: 13,
  SelectionChanged: 14,
  Deleted: 15,
  Calculated: 16,
};

interface Bridge {
  sendMessageToHost(text: string): void;
  onMessageFromHost?(text: string): void;
}

/** The page with the library: loaded once, then served by one host after the other. */
class Page {
  readonly bridge: Bridge = { sendMessageToHost: (text) => this.host?.receive(text) };
  readonly window: DOMWindow;
  host: OfficeHost | undefined;

  constructor() {
    this.window = new JSDOM('<!doctype html>', {
      url: 'https://localhost/',
      runScripts: 'outside-only',
    }).window;
    Object.assign(this.window, { _richApiNativeBridge: this.bridge });
    this.window.eval(library);
  }

  /** Listeners of the last host may not hear the next. */
  serve(host: OfficeHost): void {
    this.host = host;
    this.window.eval('OfficeExtension.GenericEventRegistration.s_genericEventRegistrations = {}');
    Object.assign(globalThis, { Excel: (this.window as unknown as { Excel: typeof Excel }).Excel });
  }
}

let page: Page | undefined;

/**
 * The platform's own script library over a double of its host: the proxy objects, their load and sync rules
 * and their errors are the real ones, the workbook behind them is a model.
 */
export class OfficeHost {
  readonly book = new BookModel();
  /** Requests that did something; requests that only give objects back are not waited for. */
  requests = 0;
  /** The most bytes the host takes or gives in one message. */
  limit = 5_000_000;
  /** Some hosts send an add-in no events for what it writes itself. */
  tellsOwnWrites = true;
  /** A cell is being edited. */
  editing = false;
  /** Called before a request is carried out: what somebody else does at that moment. */
  before: (() => void) | undefined;
  private readonly runner: RequestRunner;
  private readonly registered = new Map<string, number>();
  private waiting: [event: string, message: object][] = [];

  constructor() {
    const effects: HostEffects = {
      changed: (area, changeType) =>
        this.ofOwn('DataChanged', {
          ...this.place(area),
          changeType,
          source: 'Local',
          triggerSource: 'ThisLocalAddin',
        }),
      selectionChanged: (area) => this.later('SelectionChanged', this.place(area)),
      sheetsChanged: (kind, worksheetId) =>
        this.ofOwn(kind === 'added' ? 'Added' : 'Deleted', { worksheetId, source: 'Local' }),
      registered: (event, on) =>
        this.registered.set(event, (this.registered.get(event) ?? 0) + (on ? 1 : -1)),
    };
    this.runner = new RequestRunner(workbookObject(this.book, effects));
    page ??= new Page();
    page.serve(this);
  }

  get keptObjects(): number {
    return this.runner.keptObjects;
  }

  /** Events somebody listens to. */
  get listenedTo(): string[] {
    return [...this.registered].flatMap(([event, count]) => (count > 0 ? event : []));
  }

  /** Somebody edits cells. */
  async edit(
    area: Area,
    input: string | number,
    author: 'here' | 'elsewhere',
    changeType = 'RangeEdited',
  ): Promise<void> {
    this.book.sheet(area.sheet).enter(area.row, area.column, input);
    this.later('DataChanged', {
      ...this.place(area),
      changeType,
      source: author === 'here' ? 'Local' : 'Remote',
      triggerSource: 'Unknown',
    });
    await this.tell();
  }

  async calculate(area: Area): Promise<void> {
    this.later('Calculated', this.place(area));
    await this.tell();
  }

  async select(area: Area): Promise<void> {
    this.book.selected = [area];
    this.later('SelectionChanged', this.place(area));
    await this.tell();
  }

  private place(area: Area): { worksheetId: string; address: string } {
    return { worksheetId: this.book.sheet(area.sheet).id, address: cellAddress(area) };
  }

  private ofOwn(event: string, message: object): void {
    if (this.tellsOwnWrites) this.later(event, message);
  }

  private later(event: string, message: object): void {
    this.waiting.push([event, message]);
  }

  private async tell(): Promise<void> {
    for (const [event, message] of this.waiting.splice(0)) {
      if (!this.listenedTo.includes(event)) continue;
      const entry = {
        messageCategory: eventCategory,
        messageType: eventNumbers[event],
        targetId: 'Workbook',
        message: JSON.stringify(message),
      };
      this.send({ type: entries, message: { entries: [entry] } });
    }
    // Handlers run as promises and may ask the workbook.
    for (let turn = 0; turn < 5; turn += 1) await new Promise((resolve) => setTimeout(resolve, 0));
  }

  receive(text: string): void {
    const { id, message } = JSON.parse(text) as { id: number; message: { body: RequestBody } };
    const { body } = message;
    const givesBackOnly =
      body.Actions.every(({ ActionType, Name }) => ActionType === 1 || Name === '_RemoveReference') &&
      body.Actions.some(({ Name }) => Name === '_RemoveReference');
    if (!givesBackOnly) this.requests += 1;
    setTimeout(() => {
      if (page?.host !== this) return;
      if (!givesBackOnly) this.before?.();
      this.send({ id, type: response, message: this.answer(text) });
      void this.tell();
    }, 0);
  }

  /** What the host answers to a message of the library. */
  answer(text: string): object {
    const { body } = (JSON.parse(text) as { message: { body: RequestBody } }).message;
    if (Buffer.byteLength(text) > this.limit) return refused('RequestPayloadSizeLimitExceeded');
    if (this.editing) return refused('InvalidOperationInCellEditMode');
    let done: ResponseBody;
    try {
      done = this.runner.run(body);
    } catch (error) {
      // What the double lacks must fail the test that asks for it, at once and by name.
      return refused(`the double fails: ${(error as Error).message}`);
    }
    const tooLarge = Buffer.byteLength(JSON.stringify(done)) > this.limit;
    return tooLarge
      ? refused('ResponsePayloadSizeLimitExceeded')
      : { statusCode: 200, headers: {}, body: done };
  }

  private send(message: object): void {
    page?.bridge.onMessageFromHost?.(JSON.stringify(message));
  }
}

function refused(code: string): object {
  return { statusCode: 400, headers: {}, body: { error: { code, message: 'The text of the host.' } } };
}
