import { inOrderOfReading } from '@bayledger/ledger/questions/severity'
import type { Diagnosis, Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import { confidence } from '@bayledger/wording/en/confidence'
import { contradictions as contradictionsWording } from '@bayledger/wording/en/contradictions'
import { fields } from '@bayledger/wording/en/fields'
import { findingActions } from '@bayledger/wording/en/finding-actions'
import { reasons } from '@bayledger/wording/en/reasons'
import { severities } from '@bayledger/wording/en/severities'
import { wheels } from '@bayledger/wording/en/wheels'
import { fieldWords } from '@bayledger/wording/fields'
import { reasonWords } from '@bayledger/wording/reasons'
import { nextAction, wordedContradiction } from '@bayledger/wording/worded-diagnosis'
import type { ReactNode } from 'react'
import { Figure } from '../../ui/figure.tsx'
import {
  figureText,
  headlineOf,
  holdWords,
  proofOf,
  reasonTitle,
  shapeOf,
  unitWords,
  valueWords,
  wordOf,
} from './finding-words.ts'
import { SeverityMark } from './severity-mark.tsx'
import './findings-list.css'

const words = { contradictions: contradictionsWording, fields, findingActions, reasons, wheels }

type FindingsListProps = {
  diagnosis: Diagnosis
  /** The vehicle with the wheels that a finding concerns marked by its word. */
  drawing: (finding: Finding, word: string) => ReactNode
  /** The customer's sentence, where someone talks to the customer; `null` elsewhere. */
  sentenceOf: ((finding: Finding) => string) | null
}

/**
 * Findings in the order of reading: stops, the cause with its figure, also found, ask first, for information; then
 * what contradicts what. Each opens to its evidence.
 */
export function FindingsList({ diagnosis, drawing, sentenceOf }: FindingsListProps) {
  const { primary, findings, contradictions } = diagnosis
  return (
    <>
      {inOrderOfReading(findings, primary).map((finding) => (
        <FindingMark
          key={finding.code}
          finding={finding}
          primary={primary}
          drawing={drawing}
          sentence={sentenceOf === null ? null : sentenceOf(finding)}
        />
      ))}
      {contradictions
        .map((one) => wordedContradiction(words, one))
        .map(({ code, says, do: action }) => (
          <SeverityMark key={code} severity="also-found" word={severities.contradiction}>
            <p>{says}</p>
            <p>
              <strong>{action}</strong>
            </p>
          </SeverityMark>
        ))}
    </>
  )
}

type FindingMarkProps = {
  finding: Finding
  primary: string | null
  drawing: FindingsListProps['drawing']
  sentence: string | null
}

function FindingMark({ finding, primary, drawing, sentence }: FindingMarkProps) {
  const word = wordOf(finding, primary)
  const proof = proofOf(finding)
  const [first] = finding.because
  return (
    <SeverityMark severity={shapeOf(finding, primary)} word={word}>
      <details className="finding">
        <summary className="finding-summary">
          <span className="for-screen-readers">{word}: </span>
          <span className="finding-title">{headlineOf(finding)}</span>{' '}
          <span className="finding-proof">
            {proof !== null && typeof proof.value === 'number' ? (
              <>
                <Figure
                  value={figureText(proof.value, proof.unit)}
                  unit={unitWords(proof.unit)}
                  size="large"
                />{' '}
                {fieldWords(words, proof.field)}: {reasonWords(words, proof)}
              </>
            ) : (
              first && reasonWords(words, first)
            )}
          </span>
        </summary>
        <FindingEvidence finding={finding} drawing={drawing(finding, word)} />
      </details>
      {sentence === null ? null : <p>{sentence}</p>}
      <p>
        <strong>Next: {nextAction(words, finding)}</strong>
      </p>
    </SeverityMark>
  )
}

/** What a finding rests on, at the wheels and in a list, how sure it is, and what it keeps shut. */
function FindingEvidence({ finding, drawing }: { finding: Finding; drawing: ReactNode }) {
  const { word, means } = confidence[finding.confidence]
  return (
    <div className="finding-evidence">
      {drawing}
      <div>
        <ul className="finding-reasons">
          {finding.because.map((reason) => (
            <li key={`${reason.field} ${reason.code}`}>
              {reasonTitle(reason)}: {valueWords(reason)}; {reasonWords(words, reason)}
            </li>
          ))}
        </ul>
        <p>
          <strong>{word}.</strong> {means}
        </p>
        {finding.holds.length === 0 ? null : (
          <p>
            <strong>Until this is settled:</strong> {finding.holds.map((hold) => holdWords[hold]).join('; ')}.
          </p>
        )}
      </div>
    </div>
  )
}
