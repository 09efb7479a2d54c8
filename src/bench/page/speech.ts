import type { GridVoice } from './grid.js';

/** The page's lines of news and of trouble, and its questions. All of it is text, never markup. */
export class Speech implements GridVoice {
  constructor(
    private readonly news: HTMLElement,
    private readonly trouble: HTMLElement,
    private readonly question: HTMLDialogElement,
  ) {
    this.part('.dismiss', trouble).addEventListener('click', () => this.say(''));
  }

  say(text: string): void {
    this.news.textContent = text;
    delete this.news.dataset['of'];
    this.trouble.hidden = true;
  }

  /** A line on the selected cell, which goes when another cell is selected; other news stay till then. */
  ofCell(text: string): void {
    if (text === '' && this.news.dataset['of'] !== 'cell') return;
    this.news.textContent = text;
    this.news.dataset['of'] = 'cell';
  }

  /** News that hold until the workbook is changed: that it is saved. */
  untilChanged(text: string): void {
    this.say(text);
    this.news.dataset['of'] = 'saved';
  }

  /** The workbook was changed. */
  changed(): void {
    if (this.news.dataset['of'] === 'saved') this.say('');
  }

  complain(text: string, then?: () => void): void {
    this.part('.text', this.trouble).textContent = text;
    this.trouble.hidden = false;
    then?.();
  }

  /** Asks; the buttons say what a yes and a no come to. */
  ask(text: string, yes: () => void, no?: () => void, [agree, refuse] = ['Yes', 'No']): void {
    this.part('.text', this.question).textContent = text;
    this.part('[value=yes]', this.question).textContent = agree;
    this.part('[value=no]', this.question).textContent = refuse;
    this.question.returnValue = '';
    this.question.addEventListener('close', () => (this.question.returnValue === 'yes' ? yes() : no?.()), {
      once: true,
    });
    this.question.showModal();
  }

  confirm(text: string, buttons: [agree: string, refuse: string]): Promise<boolean> {
    return new Promise((resolve) =>
      this.ask(
        text,
        () => resolve(true),
        () => resolve(false),
        buttons,
      ),
    );
  }

  private part(selector: string, inside: HTMLElement): HTMLElement {
    return inside.querySelector(selector) as HTMLElement;
  }
}
