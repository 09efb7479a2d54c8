/** The line that says how far long work is, with the button that stops it and lets it go on. */
export class Progress {
  private readonly bar: HTMLProgressElement;
  private readonly text: HTMLElement;
  private readonly button: HTMLButtonElement;
  private stop: (() => void) | undefined;
  private waits: (() => void)[] = [];
  private held = false;
  private left = 0;

  constructor(private readonly line: HTMLElement) {
    this.bar = line.querySelector('progress') as HTMLProgressElement;
    this.text = line.querySelector('.text') as HTMLElement;
    this.button = line.querySelector('button') as HTMLButtonElement;
    this.button.addEventListener('click', () => this.pressed());
  }

  /** Says how far work is that is held, not ended, by its button. */
  tell(doing: string, { done, total }: { done: number; total: number }): void {
    this.show();
    this.bar.max = total;
    this.bar.value = done;
    this.text.textContent = `${doing}: ${done.toLocaleString('en')} of ${total.toLocaleString('en')}`;
    this.left = total - done;
  }

  /** Says what goes on that has no steps to count, and how it is ended. */
  tellOf(doing: string, stop: () => void): void {
    this.show(stop);
    this.bar.removeAttribute('value');
    this.text.textContent = doing;
  }

  private show(stop?: () => void): void {
    this.stop = stop;
    this.line.hidden = false;
  }

  /** Waits while the work is held. */
  gate(): Promise<void> {
    return this.held ? new Promise((resolve) => this.waits.push(resolve)) : Promise.resolve();
  }

  goOn(): void {
    this.held = false;
    this.button.textContent = 'Stop';
    for (const resolve of this.waits.splice(0)) resolve();
  }

  end(): void {
    this.goOn();
    this.line.hidden = true;
  }

  private hold(): void {
    this.held = true;
    this.text.textContent = `Stopped: ${rest(this.left)} not checked yet`;
    this.button.textContent = 'Go on';
  }

  private pressed(): void {
    if (this.stop) this.stop();
    else if (this.held) this.goOn();
    else this.hold();
  }
}

const rest = (formulas: number): string =>
  formulas === 1 ? '1 formula is' : `${formulas.toLocaleString('en')} formulas are`;
