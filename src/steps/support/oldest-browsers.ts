/**
 * The oldest browsers the site is made for, early 2023: phones that stopped at iOS 16 among them. Newer syntax in styles
 * is turned into what these read; scripts keep to the same age (classic.ts), and nothing turns newer calls into older.
 * Firefox before 121 reads the site, without what hangs on `:has`.
 */
export const oldestBrowsers = ['chrome111', 'edge111', 'firefox114', 'safari16.4', 'ios16.4'];
