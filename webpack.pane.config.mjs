// The pane as it is shipped: a shell, and each place in a file of its own that is loaded when it is opened.
import path from 'node:path';
import { sourceNames, sourceRules } from './scripts/webpack/sourceRules.mjs';

const root = import.meta.dirname;

/**
 * @param {{ entry?: Record<string, string>, output?: string, mode?: 'production' | 'development', chunkNames?: string }} options
 */
export function paneConfig({ entry, output, mode = 'production', chunkNames = '[name].js' } = {}) {
  return {
    mode,
    name: 'pane',
    target: ['web', 'es2022'],
    devtool: false,
    performance: { hints: false },
    entry: entry ?? { pane: path.join(root, 'src/taskpane/host.ts') },
    output: {
      path: output ?? path.join(root, 'out/pane'),
      filename: '[name].js',
      chunkFilename: chunkNames,
      publicPath: 'auto',
      clean: true,
    },
    resolve: sourceNames,
    module: { rules: sourceRules },
    // Names of chunks that have none of their own would tell the folders of the machine that built them.
    optimization: { chunkIds: 'deterministic' },
    stats: 'errors-warnings',
  };
}

export default paneConfig();
