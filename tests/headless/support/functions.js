// Sample functions that stand in for a built bundle: one classic script, associated synchronously.
(() => {
  const bad = (message) => new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, message);
  const number = (value, name) => {
    if (typeof value === 'number') return value;
    throw bad(`${name}: '${value}' is not a number.`);
  };
  CustomFunctions.associate('DOUBLE', (value) => 2 * number(value, 'Value'));
  CustomFunctions.associate(
    'ADDUP',
    (a, b, c) => number(a, 'A') + number(b ?? 0, 'B') + (c === null ? 0 : 100),
  );
  CustomFunctions.associate('TALL', (count, start) =>
    Array.from({ length: number(count, 'Count') }, (_, i) => [(start ?? 1) + i, `row ${i + 1}`]),
  );
  CustomFunctions.associate('TOTAL', (range) =>
    range.flat().reduce((sum, value) => sum + (typeof value === 'number' ? value : 0), 0),
  );
  CustomFunctions.associate('KINDS', (range) =>
    range
      .flat()
      .map((value) => (value === null ? 'null' : value?.type === 'Error' ? value.basicValue : typeof value))
      .join(' '),
  );
  CustomFunctions.associate('LATER', (value) => Promise.resolve().then(() => 10 * number(value, 'Value')));
  CustomFunctions.associate('MISSING', () => {
    throw new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, 'There is no such press.');
  });
  CustomFunctions.associate('BROKEN', () => NaN);
  CustomFunctions.associate('CRASHES', () => {
    throw new TypeError('a fault');
  });
})();
