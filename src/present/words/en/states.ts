/** What is said when something is not as it should be: each says what to do. */
export const states = {
  unkept: 'This device does not keep the run. Save it as a file before you leave.',
  unkeptAll: 'This device will not keep your runs. Save each one as a file before you leave it.',
  save: 'Save a file',
  link: 'This link names a job that is not here. Pick one from the list.',
  levels: (n: number): string =>
    n === 1 ? 'One job cannot be read. The others work.' : `${n} jobs cannot be read. The others work.`,
  mend: 'Mend the file, or get it once more from where it came.',
  line: (n: number) => `line ${n}`,
  more: (n: number): string => (n === 1 ? 'and one more thing' : `and ${n} more things`),
  elsewhere: 'This run is open in another tab. Go on there, or close that tab and press again.',
  stopped: {
    rules: (job: string) =>
      `Your last run of “${job}” was made under older rules. It is kept, but it cannot go on. Start the job again.`,
    changed: (job: string) =>
      `The job “${job}” has changed since your last run. The run is kept, but it cannot go on. Start the job again.`,
    gone: (job: string) =>
      `The job of your last run, “${job}”, is not here now. The run is kept. Pick a job from the list.`,
    unreadable: (job: string) => `Your last run of “${job}” cannot be read. Start the job again.`,
  },
};
