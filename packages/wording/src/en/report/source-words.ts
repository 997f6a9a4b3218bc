import type { FigureRead } from '../../report/torque.ts'
import { confirmedWords, figureWorthWords } from '../figure-worth.ts'
import { reportCells } from './cells.ts'

/** "maker manual, page 5 (verified by a second person); confirmed on this vehicle: door label" */
export const sourceWords = ({ read, confirmed, worth }: FigureRead): string =>
  `${read === null ? reportCells.notRecorded : `${read.kind}, ${read.reference}`} (${figureWorthWords[worth]})${confirmed === null ? '' : `; ${confirmedWords(confirmed)}`}`
