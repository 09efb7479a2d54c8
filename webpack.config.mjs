// Three bundles: the classic script the spreadsheet host loads, the planner's worker, and the headless command for Node.
import path from 'node:path';
import webpack from 'webpack';
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
  /^(?:node:|@odoo\/|fflate$|highs$)/.test(request) ? done(null, `module ${request}`) : done();

/** The solver looks for its file beside its own script, which here is part of the worker's. */
const solverBesidePage = {
  test: /[\\/]highs[\\/]build[\\/]highs\.mjs$/,
  loader: 'esbuild-loader',
  options: { target: 'es2022', define: { 'import.meta.url': 'self.location.href' } },
};

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
    name: 'planner',
    target: ['webworker', 'es2022'],
    entry: { planner: path.join(root, 'src/planner/worker.ts') },
    module: { rules: [...sourceRules, solverBesidePage] },
    // The solver's package also runs in Node, by modules that a browser does not have.
    plugins: [new webpack.IgnorePlugin({ resourceRegExp: /^node:/ })],
    output: { path: output, filename: '[name].js', iife: true },
  },
  {
    ...common,
    name: 'headless',
    target: 'node20',
    entry: {
      headless: path.join(root, 'src/headless/index.ts'),
      // What one formula needs is a quarter of the whole, and begins sooner.
      calc: path.join(root, 'src/headless/command/calc.ts'),
      metadata: path.join(root, 'src/functions/metadata/index.ts'),
      planner: path.join(root, 'src/headless/planner/plannerThread.ts'),
      batch: path.join(root, 'src/headless/batch/batchThread.ts'),
    },
    experiments: { outputModule: true },
    externals: [externalPackages],
    externalsType: 'module',
    optimization: { minimize: false },
    output: { path: output, filename: '[name].mjs', library: { type: 'module' }, module: true },
  },
];
