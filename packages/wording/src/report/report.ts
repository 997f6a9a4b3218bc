import type { ReportAnswersWording } from './answers.ts'
import type { ReportArrivalWording } from './arrival.ts'
import type { ReportCellsWording } from './cells.ts'
import type { ReportDoneWording } from './done.ts'
import type { ReportFindingsWording } from './findings.ts'
import type { ReportFoundWording } from './found.ts'
import type { ReportGenuineWording } from './genuine.ts'
import type { ReportMoneyWording } from './money.ts'
import type { ReportOwnWordsWording } from './own-words.ts'
import type { ReportPageOneWording } from './page-one.ts'
import type { ReportPaperWording } from './paper.ts'
import type { ReportPeopleWording } from './people.ts'
import type { ReportPhotosWording } from './photos.ts'
import type { ReportPressuresWording } from './pressures.ts'
import type { ReportProofWording } from './proof.ts'
import type { ReportReadingsWording } from './readings.ts'
import type { SeenWording } from './seen.ts'
import type { ReportTorqueWording } from './torque.ts'
import type { ReportWorkWording } from './work.ts'

/**
 * What a report says beside what other subjects say, section by section. `packages/report` decides what is said, and
 * formats numbers, moments and sums; this says how.
 */
export type ReportWording = {
  readonly answers: ReportAnswersWording
  readonly arrival: ReportArrivalWording
  readonly cells: ReportCellsWording
  readonly done: ReportDoneWording
  readonly findings: ReportFindingsWording
  readonly found: ReportFoundWording
  readonly genuine: ReportGenuineWording
  readonly money: ReportMoneyWording
  readonly ownWords: ReportOwnWordsWording
  readonly pageOne: ReportPageOneWording
  readonly paper: ReportPaperWording
  readonly people: ReportPeopleWording
  readonly photos: ReportPhotosWording
  readonly pressures: ReportPressuresWording
  readonly proof: ReportProofWording
  readonly readings: ReportReadingsWording
  readonly seen: SeenWording
  readonly torque: ReportTorqueWording
  readonly work: ReportWorkWording
}
