/** A name cut to the room there is, at about 6.8 units a letter; the whole name stands in the table beside. */
export function fitText(text: string, width: number): string {
  const most = Math.max(3, Math.floor(width / 6.8));
  return text.length <= most ? text : `${text.slice(0, most - 1).trimEnd()}…`;
}
