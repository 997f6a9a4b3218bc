import type { CheckedFile, ReportsWording } from '../reports.ts'

const checked = (file: CheckedFile): string => {
  switch (file.verdict) {
    case 'genuine':
      return file.supersededBy === null
        ? `Genuine: this is report ${file.number}, byte for byte as this shop sealed it.`
        : `Genuine: this is report ${file.number} as this shop sealed it. A newer one, ${file.supersededBy}, replaces it.`
    case 'changed':
      return `Changed: this file says it is report ${file.number}, and it is not what this shop sealed. Ask the shop for the original.`
    case 'unknown':
      return 'Unknown: this shop has sealed no such file. Check that it is the report itself, not a scan or a print of it.'
  }
}

export const reports: ReportsWording = {
  checked,
  sealReason: 'Sealed by the shop when the order was finished',
}
