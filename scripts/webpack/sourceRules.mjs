// How every bundle turns sources into scripts.
export const sourceRules = [
  { test: /\.tsx?$/, loader: 'esbuild-loader', options: { target: 'es2022', jsx: 'automatic' } },
];

/** Sources import by the names the built files would have. */
export const sourceNames = {
  extensions: ['.ts', '.tsx', '.mjs', '.js'],
  extensionAlias: { '.js': ['.ts', '.tsx', '.js'] },
};
