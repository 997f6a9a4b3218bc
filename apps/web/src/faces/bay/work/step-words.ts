import type { Kind } from '@bayledger/ledger/registry'
import { workCautionByNumber } from '@bayledger/reckoning/cautions/work-cautions'
import type { Step } from '@bayledger/reckoning/step'
import { wheelNames } from '@bayledger/reckoning/wheels'

/** "Take the wheel off: right rear" */
export const stepTitle = ({ does, wheel }: Step): string =>
  wheel === null ? does : `${does}: ${wheelNames[wheel]}`

export const cautionWords = ({ caution }: Step): string | null =>
  caution === null ? null : (workCautionByNumber(caution)?.words ?? null)

/** The short name of a step's entry in the undo button: "RR part". */
export const undoWords = (kind: Kind, { wheel }: Step): string =>
  [wheel, kind.replace('.', ' ')].filter((part) => part !== null).join(' ')
