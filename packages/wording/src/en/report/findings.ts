import type { ReportFindingsWording } from '../../report/findings.ts'
import { observations } from '../observations.ts'
import { reportCells } from './cells.ts'
import { reportFound } from './found.ts'

const cameBack = 'This vehicle came back after work that we did.'

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
  comeback: {
    cause: (cause) => `${cameBack} Why: ${cause}`,
    causes: {
      workmanship: 'our work was not right, or was not finished.',
      'part-failed': 'a part that we put in does not work any more.',
      'new-damage': 'something happened to it after that visit.',
      'not-found': 'we did not find a cause.',
    },
    notRecorded: `${cameBack} Why is not recorded.`,
  },
  named: (title, confidence) => `${title}. ${confidence}.`,
  next: (action) => `Next: ${action}`,
  unchecked: 'Not checked in this visit; the findings do not rest on these:',
  notPossible: (field, why) => `${field}: ${why}`,
  values: { ...observations, yes: 'yes', no: 'no', 'not-checked': reportCells.notChecked },
  units: { months: 'months', years: 'years' },
}
