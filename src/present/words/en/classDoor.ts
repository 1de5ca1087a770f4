/** The ways in and out of what a class needs, said on pages that everybody opens. */
export const classDoor = {
  title: 'For instructors',
  notice: (label: string) => `Assignment: ${label}`,
  unnamed: 'no label',
  openFile: 'Open an assignment file',
  fixed: (how: string) => `Your instructor asks for: ${how}.`,
  back: 'Back to the assignment',
  toReport: 'Back to the report',
  reading: (who: string) => `${who}, read only`,
  nobody: 'no code',
};
