import type { ReportWording } from '../../report/report.ts'
import { reportAnswers } from './answers.ts'
import { reportArrival } from './arrival.ts'
import { reportCells } from './cells.ts'
import { reportDone } from './done.ts'
import { reportFindings } from './findings.ts'
import { reportFound } from './found.ts'
import { reportGenuine } from './genuine.ts'
import { reportMoney } from './money.ts'
import { reportOwnWords } from './own-words.ts'
import { reportPageOne } from './page-one.ts'
import { reportPaper } from './paper.ts'
import { reportPeople } from './people.ts'
import { reportPhotos } from './photos.ts'
import { reportPressures } from './pressures.ts'
import { reportProof } from './proof.ts'
import { reportReadings } from './readings.ts'
import { seen } from './seen.ts'
import { reportTorque } from './torque.ts'
import { reportWork } from './work.ts'

export const report: ReportWording = {
  answers: reportAnswers,
  arrival: reportArrival,
  cells: reportCells,
  done: reportDone,
  findings: reportFindings,
  found: reportFound,
  genuine: reportGenuine,
  money: reportMoney,
  ownWords: reportOwnWords,
  pageOne: reportPageOne,
  paper: reportPaper,
  people: reportPeople,
  photos: reportPhotos,
  pressures: reportPressures,
  proof: reportProof,
  readings: reportReadings,
  seen,
  torque: reportTorque,
  work: reportWork,
}
