import type { PrintFailure } from '../sheets/pdf/index.ts'
import type { IssueOptions } from './issue-options.ts'
import type { KeptRecord } from './kept-record.ts'
import type { PackageFiles } from './package-files.ts'
import type { PrintJob } from './print-pdf.ts'
import type { OldSide } from './since-revision.ts'

/** A package that is to be issued. */
export interface IssueJob extends PrintJob {
  readonly files: PackageFiles
  readonly options: IssueOptions
  readonly kept?: KeptRecord
  readonly old?: OldSide
}

/** What was written, and why there is no PDF where one was wanted. */
export interface Written {
  readonly html: string
  readonly pdf?: string
  readonly pages?: number
  readonly lines: number
  readonly closing: number
  readonly failure?: PrintFailure
}

export const outHelp = 'Name another folder with `--out FOLDER`'
