import type { PublishedCase } from '../module.ts'

const limits = {
  required_factor: '100',
  dose_limit: '1 Sv',
  published_factor: 'marked shelter',
  published_dose: 'life saving',
}

/** Sums of paths worked apart, and a reference dose. */
export const protectionSummaryCases: readonly PublishedCase[] = [
  {
    id: 'PS-1',
    source: 'Worked by hand: paths of 1/1000, 1/400 and 1/5000',
    status: 'computed',
    says: 'three paths together',
    inputs: { ...limits, paths: [{ factor: '1000' }, { factor: '400' }, { factor: '5000' }], dose_outside: '10 Sv' },
    answers: { P: '270.270' },
  },
  {
    id: 'PS-2',
    source: 'Law of fallout decay: 10 Sv/h at 1 h, from 1 to 336 h behind a factor of 100, worked by hand',
    status: 'computed',
    says: 'dose of two weeks inside',
    inputs: { ...limits, paths: [{ factor: '100' }], dose_outside: '5 * (10 Sv) * (1 - 336^(-0.2))' },
    answers: { D_in: '0.343792 Sv' },
    tolerance: { relative: 1e-5 },
  },
  {
    id: 'PS-3',
    source:
      'US Environmental Protection Agency, EPA-400-R-92-001, Table 2-2, in pages that quote it: 25 rem to save life',
    status: 'looked up',
    says: 'reference dose of one who saves life',
    inputs: { ...limits, paths: [{ factor: '100' }], dose_outside: '10 Sv' },
    answers: { D_pub: '25 rem' },
  },
]
