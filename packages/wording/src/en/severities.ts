import type { SeveritiesWording } from '../severities.ts'

export const severities: SeveritiesWording = {
  'do-not-drive': 'Do not drive',
  'do-not-open-the-tire': 'Do not open the tire',
  'repair-before-release': 'Repair before release',
  cause: 'Cause',
  'also-found': 'Also found',
  unexplained: 'Not explained yet',
  'not-checked': 'Not checked',
  'for-information': 'For information',
  contradiction: 'These cannot both be so',
  'could-not-be-checked': 'Could not be checked',
  'good-as-measured': 'Good as measured',
}
