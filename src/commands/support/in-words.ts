/**
 * Does what a command is for. What the system refuses (a full disk, a folder that may not be written) and Ctrl+C at a
 * question end it with one sentence and code 2, not with a place in the program.
 * @param not what did not come of it: "No shop was made"
 */
export async function inWords(not: string, work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (reason) {
    console.error(`${not}: ${reason instanceof Error ? reason.message : String(reason)}`);
    process.exitCode = 2;
  }
}
