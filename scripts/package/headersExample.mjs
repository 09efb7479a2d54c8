const policyOf = (page) => /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(page)?.[1];

/** The policy of the pane's page. */
export function panePolicy(files) {
  const policy = policyOf(files.get('taskpane.html').toString('utf8'));
  if (policy === undefined) throw new Error('taskpane.html has no content policy.');
  return policy;
}

/** Response headers for the folder, in the widespread form of a path and its headers; to be adapted to the host. */
export function headersExample(files, hashedNames, address) {
  const { pathname } = new URL(address);
  const at = (name) => `${pathname.replace(/\/$/, '')}/${name}`;
  const block = (name, headers) => [at(name), ...headers.map((header) => `  ${header}`)].join('\n');
  return [
    '# Response headers for this folder; write them the way your host wants them.',
    '# Later blocks win. Do not add X-Frame-Options: the web host shows the pane in a frame.',
    block('*', [
      `Content-Security-Policy: ${panePolicy(files)}`,
      'X-Content-Type-Options: nosniff',
      'Referrer-Policy: no-referrer',
      'Cache-Control: no-cache',
    ]),
    '# Icons must be allowed to be kept: a host shows generic ones in place of icons with no-cache or no-store.',
    block('icons/*', ['Cache-Control: public, max-age=86400']),
    '# The web host reads this file from its own address.',
    block('functions.json', ['Access-Control-Allow-Origin: *']),
    '# Names that hold a hash of their content never change.',
    ...hashedNames.map((name) => block(name, ['Cache-Control: public, max-age=31536000, immutable'])),
    '',
  ].join('\n');
}
