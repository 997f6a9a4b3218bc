import { uncheckedLines } from '@bayledger/reckoning/catalog/field-words'
import type { Diagnosis } from '@bayledger/reckoning/diagnosis/diagnosis'
import { SeverityMark } from '../../../features/findings/severity-mark.tsx'
import { Figure } from '../../../ui/figure.tsx'
import { findingTitle, inWeightOrder, reasonWords, severityOf, severityWordOf } from './finding-words.ts'
import './findings.css'

/** Findings by weight, each with the evidence that makes it; what was not checked stands at the end, named. */
export function FindingsList({ diagnosis }: { diagnosis: Diagnosis }) {
  return (
    <div className="findings">
      {inWeightOrder(diagnosis.findings).map((finding) => {
        const word = severityWordOf(finding)
        const [first, ...others] = finding.because
        return (
          <SeverityMark
            key={`${finding.code} ${finding.wheels.join(' ')}`}
            severity={severityOf(finding)}
            {...(word === undefined ? {} : { word })}
          >
            <p className="finding-title">{findingTitle(finding)}</p>
            {first === undefined ? null : (
              <p>
                {typeof first.value === 'number' ? (
                  <>
                    <Figure value={first.value} unit={first.unit ?? ''} size="large" />{' '}
                  </>
                ) : null}
                {reasonWords(finding, first)}
              </p>
            )}
            {finding.kind === 'stop' || finding.kind === 'cause'
              ? others
                  .slice(0, 2)
                  .map((reason) => <p key={reason.field + reason.says}>{reasonWords(finding, reason)}</p>)
              : null}
            <p>
              <strong>Next: {finding.next}</strong>
            </p>
          </SeverityMark>
        )
      })}
      {diagnosis.contradictions.map(({ code, says, do: action }) => (
        <SeverityMark key={code} severity="not-checked" word="These two cannot both be so">
          <p>{says}</p>
          <p>
            <strong>{action}</strong>
          </p>
        </SeverityMark>
      ))}
      {diagnosis.unchecked.length === 0 ? null : (
        <SeverityMark severity="not-checked" word={`Not checked: ${diagnosis.unchecked.length}`}>
          {uncheckedLines(diagnosis.unchecked).map((line) => (
            <p key={line} className="findings-unchecked">
              {line}
            </p>
          ))}
        </SeverityMark>
      )}
    </div>
  )
}
