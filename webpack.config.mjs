// Two bundles: the classic script the spreadsheet host loads, and the headless command for Node.
import path from 'node:path';
import { sourceNames, sourceRules } from './scripts/webpack/sourceRules.mjs';

const root = import.meta.dirname;
const output = process.env.TONROW_DIST ?? path.join(root, 'dist');
const common = {
  mode: 'production',
  devtool: false,
  performance: { hints: false },
  resolve: sourceNames,
  module: { rules: sourceRules },
  stats: 'errors-warnings',
};

/** Every package except the ones webpack must inline stays an import from node_modules. */
const externalPackages = ({ request }, done) =>
  /^(?:node:|@odoo\/|fflate$)/.test(request) ? done(null, `module ${request}`) : done();

export default [
  {
    ...common,
    name: 'functions',
    target: ['web', 'es2020'],
    entry: { functions: path.join(root, 'src/functions/index.ts') },
    output: { path: output, filename: '[name].js', iife: true },
  },
  {
    ...common,
    name: 'headless',
    target: 'node20',
    entry: {
      headless: path.join(root, 'src/headless/index.ts'),
      metadata: path.join(root, 'src/functions/metadata/index.ts'),
    },
    experiments: { outputModule: true },
    externals: [externalPackages],
    externalsType: 'module',
    optimization: { minimize: false },
    output: { path: output, filename: '[name].mjs', library: { type: 'module' }, module: true },
  },
];
