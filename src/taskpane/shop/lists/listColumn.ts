/** A column of one of the shop's lists, as its form asks for it. */
export interface ListColumn {
  heading: string;
  hint?: string;
  /** The words it may hold, where they are few. */
  choices?: readonly string[];
}
