// One rule set for the whole project, and the layer rule: who may import whom.
import officeAddins from 'eslint-plugin-office-addins';
import regexp from 'eslint-plugin-regexp';
import tseslint from 'typescript-eslint';

const outside = {
  functions: '**/functions/**',
  planner: '**/planner/**',
  workbook: '**/workbook/**',
  taskpane: '**/taskpane/**',
  drawing: '**/drawing/**',
  print: '**/print/**',
  xlsx: '**/xlsx/**',
  headless: '**/headless/**',
  bench: '**/bench/**',
};
const platform = ['node:*', '@odoo/*', 'fflate', '@microsoft/*'];

/** A layer may import its own files and those of `allowed`; everything else is an error. */
function layer(folder, allowed, packages = platform) {
  const forbidden = Object.entries(outside)
    .filter(([name]) => name !== folder && !allowed.includes(name))
    .map(([, pattern]) => pattern);
  const core = folder === 'core' || allowed.includes('core') ? [] : ['**/core/**'];
  // The page at the top of the layers may import from all of them: there is nothing to forbid.
  if (forbidden.length + core.length + packages.length === 0) return {};
  return {
    files: [`src/${folder}/**/*.ts`, `src/${folder}/**/*.tsx`],
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            {
              group: [...forbidden, ...core],
              message: `src/${folder} may not import from there (see DEVELOPERS.md, layers).`,
            },
            ...(packages.length
              ? [
                  {
                    group: packages,
                    message: `src/${folder} stays free of this package (see DEVELOPERS.md, layers).`,
                  },
                ]
              : []),
          ],
        },
      ],
    },
  };
}

const wholeNames = {
  selector: String.raw`:matches(ImportDeclaration, ExportNamedDeclaration, ExportAllDeclaration, ImportExpression)[source.value=/^\.(?!.*\.(js|mjs|json|css|svg|html|txt|xml)(\?raw)?$)/]`,
  message: 'Files are imported by their whole name, as built: ./name.js.',
};

export default tseslint.config(
  { ignores: ['node_modules/', 'dist/', 'out/', 'coverage/'] },
  ...tseslint.configs.recommended,
  regexp.configs['flat/recommended'],
  {
    files: ['src/**/*.ts', 'src/**/*.tsx'],
    plugins: { 'office-addins': officeAddins },
    rules: {
      ...officeAddins.configs.recommended.rules,
      'max-lines': ['error', { max: 250, skipBlankLines: true, skipComments: true }],
    },
  },
  {
    files: ['src/core/**/*.ts'],
    rules: {
      'no-restricted-globals': [
        'error',
        'window',
        'document',
        'Office',
        'Excel',
        'CustomFunctions',
        'process',
        'console',
        'setTimeout',
        'fetch',
        'performance',
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'core is pure: no random.' },
        { object: 'Date', property: 'now', message: 'core is pure: no clock.' },
      ],
      '@typescript-eslint/no-explicit-any': 'error',
    },
  },
  {
    files: ['src/**/*.ts', 'src/**/*.tsx', 'tests/**/*.ts'],
    rules: {
      'no-restricted-syntax': ['error', wholeNames],
    },
  },
  {
    // An array of 100,000 entries does not fit on the stack as arguments.
    files: ['src/xlsx/**/*.ts', 'src/sheet/**/*.ts', 'src/headless/**/*.ts'],
    rules: {
      'no-restricted-syntax': [
        'error',
        wholeNames,
        {
          selector:
            'CallExpression[callee.property.name=/^(?:push|unshift|splice|concat|min|max|fromCharCode|fromCodePoint)$/] > SpreadElement',
          message: 'No list is spread into arguments: it may be long. Use a loop or reduce.',
        },
        {
          selector: 'CallExpression[callee.property.name="apply"][arguments.1.type!="ArrayExpression"]',
          message: 'No list is given as arguments: it may be long.',
        },
      ],
    },
  },
  {
    // What is put together of slices of a sheet is as long as the sheet. Lists of one row in core are short.
    files: [
      'src/taskpane/**/*.ts',
      'src/taskpane/**/*.tsx',
      'src/workbook/**/*.ts',
      'src/functions/**/*.ts',
      'src/bench/**/*.ts',
      'src/bench/**/*.tsx',
      'src/core/stock/list/**/*.ts',
      'src/core/stock/sheet/**/*.ts',
    ],
    rules: {
      'no-restricted-syntax': [
        'error',
        wholeNames,
        {
          selector: 'CallExpression[callee.property.name=/^(?:push|concat)$/] > SpreadElement',
          message: 'No list is spread into arguments: it may be long. Use a loop.',
        },
      ],
    },
  },
  layer('core', []),
  layer('sheet', []),
  layer('planner', ['core']),
  layer('functions', ['core', 'planner']),
  layer('workbook', ['core']),
  layer('drawing', ['core']),
  layer('print', ['core', 'drawing']),
  layer('taskpane', ['core', 'planner', 'workbook', 'xlsx', 'drawing', 'print']),
  layer('xlsx', [], ['@odoo/*', '@microsoft/*']),
  layer('headless', ['functions', 'planner', 'xlsx', 'print'], []),
  layer(
    'bench',
    ['core', 'functions', 'planner', 'workbook', 'taskpane', 'xlsx', 'headless', 'drawing', 'print'],
    [],
  ),
);
