/** What is said about the copy kept on the device. */
export const notice = {
  saving: (done: number, total: number) => `Saving this site on your device: ${done} of ${total} files.`,
  saved: 'Saved on this device. It now works without a signal.',
  cutShort: 'Not all of the site could be saved. The next visit goes on from here.',
  newer: 'A newer edition is ready.',
  show: 'Show it now',
  elsewhere: 'This page is from an earlier edition.',
  reload: 'Reload',
  close: 'Close',
};
