import type { OpenWorker } from '../batch/batchThreads.js';

/** Where a command writes and which functions it uses; tests give their own. */
export interface CommandSetting {
  out: (text: string) => void;
  err: (text: string) => void;
  /** Shows what is going on in one line, where a person watches. */
  progress?: ((text: string) => void) | undefined;
  /** The folder of the built functions. */
  folder?: string;
  /** Works on the files of a batch; in threads where not said. */
  openWorker?: OpenWorker;
  /** What stands on standard input; undefined when nothing waits there. */
  input: () => Promise<string | undefined>;
}

export const standard: CommandSetting = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  progress: process.stderr.isTTY ? (text) => void process.stderr.write(`\r\u001B[K${text}`) : undefined,
  input: async () => {
    if (process.stdin.isTTY) return undefined;
    const chunks: Buffer[] = [];
    for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
    return Buffer.concat(chunks).toString('utf8');
  },
};

/** What is wrong with a call's options, in one sentence. */
export function wrongCall(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  const option = /'([^' ]+)/.exec(message)?.[1] ?? '';
  if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') return `There is no option ${option}.`;
  if (code === 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE') return `The option ${option} is not used that way.`;
  throw error;
}
