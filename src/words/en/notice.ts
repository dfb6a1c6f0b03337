/** What is said about the copy kept on the device. */
export const notice = {
  saving: 'Saving this site on your device: {done} of {total} files.',
  kept: '{pages} pages kept on this device. They work without a signal.',
  cutShort: 'Not all of the site could be saved. The next visit goes on from here.',
  altered: 'The host of this site changes its pages on their way, so they are not kept on this device.',
  noRoom:
    'This device has no room for the whole site, so it does not work without a signal. Free some room and come back.',
  noRoomForNewer:
    'A newer edition is out, but this device has no room for it. The earlier one stays. Free some room and come back.',
  newer: 'A newer edition is ready.',
  show: 'Show it now',
  elsewhere: 'This page is from an earlier edition.',
  reload: 'Reload',
};
