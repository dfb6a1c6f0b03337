/** What every row of a table of exposure limits says: where, how much, over what time, by which law, of which day. */
export interface LimitRow {
  readonly key: string;
  readonly place: string;
  readonly law: string;
  /** Day or edition of the law as it was seen. */
  readonly date: string;
  /** Source id; its file says how the figure was seen. */
  readonly source: string;
  /** Time the limit is an average over. */
  readonly average: string;
  readonly note?: string;
}
