/** The port to serve on, as PORT names it; looked at before anything is built. */

export type Port = { readonly port: number } | { readonly problem: string };

export function readPort(typed: string | undefined): Port {
  if (typed === undefined || typed.trim() === '') return { port: 4321 };
  const port = /^\d{1,6}$/.test(typed.trim()) ? Number(typed) : Number.NaN;
  return port <= 65_535
    ? { port }
    : { problem: `PORT is "${typed}". Give a whole number from 0 to 65535; 0 takes any free port.` };
}
