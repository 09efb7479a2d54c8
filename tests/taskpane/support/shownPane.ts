import { vi } from 'vitest';
import { mountPane } from '../../../src/taskpane/index.js';
import type { Workbook } from '../../../src/workbook/port.js';
import { fakeTime, letPass } from './fakeTime.js';

/** Real time, which a place takes to load on a busy machine; what never comes is told after it. */
const patienceMs = 30_000;

/** The pane in a page without a browser, and what a user does with it. */
export class ShownPane {
  private readonly element = document.body.appendChild(document.createElement('div'));
  private readonly unmount: () => void;

  constructor(workbook: Workbook) {
    // The page has no modal dialogs of its own.
    HTMLDialogElement.prototype.showModal ??= function (this: HTMLDialogElement) {
      this.open = true;
    };
    HTMLDialogElement.prototype.close ??= function (this: HTMLDialogElement) {
      this.open = false;
    };
    fakeTime();
    this.unmount = mountPane(this.element, workbook);
  }

  close(): void {
    this.unmount();
    vi.useRealTimers();
    document.body.replaceChildren();
  }

  /** All the text that is shown, dialogs included. */
  get text(): string {
    return document.body.textContent ?? '';
  }

  /** Waits until something is so, and answers with it; what is missing is said with the text shown. */
  async until<Found>(what: string, look: () => Found | undefined | null | false): Promise<Found> {
    const end = Date.now() + patienceMs;
    for (;;) {
      const found = look();
      if (found) return found;
      if (Date.now() > end) throw new Error(`not shown: ${what}. Shown: ${this.text.slice(0, 2000)}`);
      await letPass(10);
    }
  }

  async says(text: string): Promise<void> {
    await this.until(text, () => this.text.includes(text));
  }

  async saysNoMore(text: string): Promise<void> {
    await this.until(`no more: ${text}`, () => !this.text.includes(text));
  }

  /** A button, tab or link by its name. */
  button(name: string | RegExp): Promise<HTMLElement> {
    const fits = (element: Element) => matches(nameOf(element), name);
    return this.until(`button ${String(name)}`, () =>
      [...document.querySelectorAll<HTMLElement>('button, [role=tab], a')].find(fits),
    );
  }

  hasButton(name: string | RegExp): boolean {
    return [...document.querySelectorAll('button, [role=tab]')].some((element) =>
      matches(nameOf(element), name),
    );
  }

  async click(name: string | RegExp): Promise<void> {
    const button = await this.until(`enabled button ${String(name)}`, () => {
      const all = [...document.querySelectorAll<HTMLButtonElement>('button, [role=tab]')];
      return all.find((each) => matches(nameOf(each), name) && !each.disabled);
    });
    button.click();
  }

  /** An input or list of choices by its label. */
  field(label: string | RegExp): Promise<HTMLInputElement | HTMLSelectElement> {
    return this.until(`field ${String(label)}`, () =>
      [...document.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select')].find((element) =>
        matches(element.getAttribute('aria-label') ?? element.labels?.[0]?.textContent ?? '', label),
      ),
    );
  }

  async fill(label: string | RegExp, value: string): Promise<void> {
    const field = await this.field(label);
    const prototype =
      field instanceof HTMLSelectElement ? HTMLSelectElement.prototype : HTMLInputElement.prototype;
    Object.getOwnPropertyDescriptor(prototype, 'value')?.set?.call(field, value);
    field.dispatchEvent(
      new Event(field instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }),
    );
  }
}

function nameOf(element: Element): string {
  return element.getAttribute('aria-label') ?? element.textContent ?? '';
}

function matches(text: string, name: string | RegExp): boolean {
  return typeof name === 'string' ? text.trim() === name : name.test(text);
}
