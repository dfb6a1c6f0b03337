/** What the kinds of machine are called. */
export const machineKinds = {
  'cut-off-saw': 'Cut-off saws',
  'twin-blade-saw': 'Twin-blade deep-cut saws',
  'floor-saw': 'Floor saws',
  'ring-saw': 'Ring saws',
  other: 'Other machines',
};
