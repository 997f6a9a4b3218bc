import type { FigureRead } from '../../report/torque.ts'
import { figureWorthWords } from '../figure-worth.ts'
import { reportCells } from './cells.ts'

/** "manual del fabricante, page 5 (verificado por una segunda persona); confirmado en este vehículo: …" */
export const sourceWords = ({ read, confirmed, worth }: FigureRead): string =>
  `${read === null ? reportCells.notRecorded : `${read.kind}, ${read.reference}`} (${figureWorthWords[worth]})${confirmed === null ? '' : `; confirmado en este vehículo: ${confirmed}`}`
