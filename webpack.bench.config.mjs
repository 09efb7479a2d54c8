// The bench page: grid and pane in one script, styles inside it; the functions stay the script the add-in ships.
import path from 'node:path';
import { sourceNames, sourceRules } from './scripts/webpack/sourceRules.mjs';

const root = import.meta.dirname;

export default {
  name: 'bench',
  mode: 'production',
  target: ['web', 'es2022'],
  devtool: false,
  performance: { hints: false },
  entry: { bench: path.join(root, 'src/bench/page/index.ts') },
  output: {
    path: process.env.TONROW_BENCH ?? path.join(root, 'out', 'page'),
    filename: '[name].js',
    chunkFilename: '[name].[contenthash:8].js',
    publicPath: '',
    assetModuleFilename: 'assets/[name][ext]',
  },
  resolve: sourceNames,
  module: {
    rules: [
      ...sourceRules,
      { test: /\.css$/, use: ['style-loader', 'css-loader'] },
      { resourceQuery: /raw/, type: 'asset/source' },
      { test: /\.(?:eot|svg|ttf|woff2?)$/, type: 'asset/resource' },
      { test: /\.wasm$/, type: 'asset/resource' },
    ],
  },
  stats: 'errors-warnings',
};
