import { SeverityMark } from './severity-mark.tsx'

type OwnFindingProps = { who: string; ownFinding: string; reason: string }

/** A technician's own finding, shown before the computed findings, which stay. */
export function OwnFinding({ who, ownFinding, reason }: OwnFindingProps) {
  return (
    <SeverityMark severity="also-found" word={`${who} finds otherwise`}>
      <p>
        <strong>{ownFinding}</strong>
      </p>
      <p>Reason: {reason}</p>
      <p>What the rules find from the readings stays below.</p>
    </SeverityMark>
  )
}
