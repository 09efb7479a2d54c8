const MiB = 1024 * 1024;

/**
 * What a package may hold. Far beyond any quote workbook (100,000 rows of a dozen columns are about
 * 60 MiB of XML), small enough that a crafted file cannot exhaust memory or time.
 */
export const limits = {
  /** Bytes of the file itself. */
  file: 512 * MiB,
  /** Parts in the package. */
  entries: 20_000,
  /** Sheets that the workbook lists, of whatever kind. */
  sheets: 10_000,
  /** Bytes of one part once unpacked. */
  part: 384 * MiB,
  /** Bytes of all parts once unpacked, as declared by the file, whether read or not. */
  declared: 2048 * MiB,
  /** Bytes of all parts that are read, once unpacked. */
  read: 512 * MiB,
  /** Cells of all sheets. */
  cells: 8_000_000,
  /** Elements within each other. */
  depth: 200,
  /** Unpacked over packed size allowed beyond `ratioFrom` bytes; ordinary sheets stay under 60. */
  ratio: 250,
  ratioFrom: 16 * MiB,
};
