/** Today where this machine stands, as YYYY-MM-DD. For commands and checks alone: nothing that is built asks for it. */
export function localDay(now = new Date()): string {
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}
