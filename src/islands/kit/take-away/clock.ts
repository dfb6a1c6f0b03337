/** The device's clock as text. Only called after the page has come alive: the server's day is not the reader's. */

/** Today where the reader is, YYYY-MM-DD. */
export function today(now = new Date()): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** This moment in universal time, YYYYMMDDTHHMMSSZ, as calendar files want it. */
export function calendarStamp(now = new Date()): string {
  return now.toISOString().replace(/\.\d+/, '').replace(/[-:]/g, '');
}
