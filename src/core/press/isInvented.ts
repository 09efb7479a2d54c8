import { type Press, pressValue } from './press.js';

/** Whether the numbers of a press are invented, as its own row says: nothing that comes of them is to be quoted. */
export function isInvented(press: Press): boolean {
  const value = pressValue(press, 'invented');
  return value.state === 'value' && value.value === 1;
}
