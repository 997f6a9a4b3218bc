import type { ReportFindingsWording } from '../../report/findings.ts'
import { observations } from '../observations.ts'
import { reportCells } from './cells.ts'
import { reportFound } from './found.ts'

export const reportFindings: ReportFindingsWording = {
  title: 'Findings',
  notIssued: reportFound.notIssued,
  computed: (ruleSet, confirmation) =>
    `Computed by rule set ${ruleSet} from what was recorded on arrival. ${confirmation}`,
  confirmation: {
    open: 'Not yet confirmed by a technician.',
    agrees: (who) => `Confirmed by ${who}.`,
    differs: (who, finding, reason) => `${who} does not agree and finds: ${finding}. Reason: ${reason}`,
  },
  named: (title, confidence) => `${title}. ${confidence}.`,
  next: (action) => `Next: ${action}`,
  unchecked: 'Not checked in this visit; the findings do not rest on these:',
  notPossible: (field, why) => `${field}: ${why}`,
  values: { ...observations, yes: 'yes', no: 'no', 'not-checked': reportCells.notChecked },
}
