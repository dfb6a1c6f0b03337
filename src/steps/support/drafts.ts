/** "draft: true" in an article's front matter: shown while writing, never published. */
export function isDraft(text: string): boolean {
  const head = /^\s*---[ \t]*\r?\n([\s\S]*?)^---[ \t]*$/m.exec(text)?.[1];
  return head !== undefined && /^draft:[ \t]*true[ \t]*(?:#.*)?\r?$/m.test(head);
}
