/** Those who wait for their next turn, the first of them first. */
const waiting: (() => void)[] = [];
let channel: MessageChannel | undefined;

/**
 * Lets everything else in the runtime have its turn. A message comes back at once where a timer takes four milliseconds,
 * or a second while the pane is hidden.
 */
export function giveWay(): Promise<void> {
  return new Promise((resolve) => {
    if (typeof MessageChannel === 'undefined') return void setTimeout(resolve);
    channel ??= opened();
    waiting.push(resolve);
    channel.port2.postMessage(null);
  });
}

function opened(): MessageChannel {
  const made = new MessageChannel();
  made.port1.onmessage = () => waiting.shift()?.();
  return made;
}
