// How every bundle turns sources into scripts.
import path from 'node:path';

const constants = /unitFactors\.ts$/;

export const sourceRules = [
  {
    test: /\.tsx?$/,
    exclude: constants,
    loader: 'esbuild-loader',
    options: { target: 'es2022', jsx: 'automatic' },
  },
  { test: constants, loader: path.join(import.meta.dirname, 'constantsLoader.mjs') },
];

/** Sources import by the names the built files would have. */
export const sourceNames = {
  extensions: ['.ts', '.tsx', '.mjs', '.js'],
  extensionAlias: { '.js': ['.ts', '.tsx', '.js'] },
};
