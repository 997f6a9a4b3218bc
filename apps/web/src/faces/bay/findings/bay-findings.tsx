import type { Diagnosis } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { Evidence } from '@bayledger/reckoning/evidence/evidence'
import { FindingsList } from '../../../features/findings/findings-list.tsx'
import { NotChecked } from '../../../features/findings/not-checked.tsx'
import { FindingDrawing } from '../../../features/plan/finding-drawing.tsx'
import './findings.css'

type BayFindingsProps = { diagnosis: Diagnosis; evidence: Evidence; isOver: boolean }

/** What the readings say, each with the evidence that makes it, on the drawing of the vehicle. */
export function BayFindings({ diagnosis, evidence, isOver }: BayFindingsProps) {
  return (
    <div className="findings">
      <FindingsList
        diagnosis={diagnosis}
        sentenceOf={null}
        drawing={(finding, word) => (
          <FindingDrawing finding={finding} diagnosis={diagnosis} evidence={evidence} word={word} />
        )}
      />
      <NotChecked unchecked={diagnosis.unchecked} notPossible={evidence.notPossible} isOver={isOver} />
    </div>
  )
}
