/** What somebody types after a shop was made. */

/** @param here the shop's folder as seen from where the command was typed */
export function nextSteps(here: string, platform: NodeJS.Platform): string {
  const choose =
    platform === 'win32'
      ? `set SHOP=${here}              (in PowerShell: $env:SHOP = "${here}")`
      : `export SHOP=${/^[\w./+-]+$/.test(here) ? here : `'${here.replaceAll("'", String.raw`'\''`)}'`}`;
  return `Made ${here}: shop.yaml, machines/ and pages/.
Next, here in the almanac's folder:
  ${choose}
                              says whose shop every command is about, until this window is closed
  npm run new                 writes the beginnings of a page
  npm run dev                 shows it while you write
  npm start                   builds the whole site`;
}
