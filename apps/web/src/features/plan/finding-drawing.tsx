import type { Diagnosis, Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { Evidence } from '@bayledger/reckoning/evidence/evidence'
import { findingWheels } from './finding-wheels.ts'
import { PlanDrawing } from './plan-drawing.tsx'

type FindingDrawingProps = { finding: Finding; diagnosis: Diagnosis; evidence: Evidence; word: string }

/** Where on the vehicle a finding is, with the figures at its wheels. */
export function FindingDrawing({ finding, diagnosis, evidence, word }: FindingDrawingProps) {
  const isCause = diagnosis.primary === finding.code
  return (
    <figure className="plan-finding">
      <PlanDrawing wheels={findingWheels(finding, evidence, { word, isCause })} />
      {finding.wheels.length === 0 ? (
        <figcaption>It concerns the vehicle as a whole, no single wheel.</figcaption>
      ) : null}
    </figure>
  )
}
