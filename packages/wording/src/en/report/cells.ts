import type { ReportCellsWording } from '../../report/cells.ts'
import { counted } from './counted.ts'

const timed = { relearn: 'it took', light: 'watched for' } as const

export const reportCells: ReportCellsWording = {
  notChecked: 'not checked',
  notRecorded: 'not recorded',
  couldNotBeChecked: 'could not be checked',
  notNumbered: 'not numbered',
  erased: 'erased on request',
  noneExpected: 'none expected',
  noneSeen: 'none seen',
  silent: (tries) => `silent, ${counted(tries, 'try', 'tries')}`,
  twoClocks: (written, received) => `${written} by the device, received ${received}`,
  authors: {
    staff: 'staff, name not on file',
    customer: 'the customer',
    system: 'computed by Bayledger',
  },
  took: (what, duration, slept) =>
    `; ${timed[what]} ${duration} by the tablet’s clock${slept ? ', which slept or was started anew meanwhile' : ''}`,
}
