import type { Source } from './source.ts'

/** The sources that modules of several wings cite. */
export const sharedSources = {
  timoshenko: {
    short: 'Timoshenko',
    entry:
      'Timoshenko, S. P. and Woinowsky-Krieger, S. (1959). Theory of plates and shells, 2nd ed. McGraw-Hill, New York.',
  },
  statics: { short: 'statics', entry: 'Equilibrium and geometry; no source is needed beyond the line itself.' },
  practice: {
    short: 'common practice',
    entry: 'Common practice, without a published source that we could name; the reviewer judges it.',
  },
} as const satisfies Record<string, Source>
