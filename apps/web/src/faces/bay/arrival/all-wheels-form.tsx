import type { OrderState } from '@bayledger/ledger/state'
import { draftEntry } from '../../../features/ledger/draft-entry.ts'
import { ScanButton } from '../../../features/scanning/scan-button.tsx'
import { tellScan } from '../../../features/scanning/scan-notice.tsx'
import { type ScanTarget, scanFor } from '../../../features/scanning/scan-target.ts'
import { readingWords } from '../../../features/wheel-readings/reading-words.ts'
import { Button } from '../../../ui/button.tsx'
import { useScanTaker } from '../../../ui/scanner-keys.ts'
import { TextArea } from '../../../ui/text-field.tsx'
import { useDraft } from '../form/draft-store.ts'
import { StepScreen } from '../form/step-screen.tsx'
import { useRecord } from '../record/use-record.ts'
import { useDoor } from '../session/lock-store.ts'
import { allWheels, exampleText, wheelEntries } from './all-wheels.ts'
import type { Phase } from './wheels-asked.ts'
import './all-wheels.css'

type AllWheelsFormProps = {
  state: OrderState
  phase: Phase
  onDone: () => void
  /** Back to one sensor after the other; the text is kept. */
  onLeave: () => void
}

const target: ScanTarget = { wanted: 'wheels', listedParts: [] }

/** What a reader says of all wheels, pasted or scanned as one text, seen wheel by wheel and then recorded. */
export function AllWheelsForm({ state, phase, onDone, onLeave }: AllWheelsFormProps) {
  const draftKey = `${state.orderId}/all-wheels${phase === 'closing' ? '/closing' : ''}`
  const { recordAll, busy, problem } = useRecord(state.orderId)
  const { draft: text, change, discard } = useDraft(draftKey, '')
  const isOpen = useDoor() === 'open'
  const take = (scanned: string) => {
    const taken = scanFor(target, scanned)
    tellScan(taken.ok ? null : taken.says)
    if (taken.ok) change(taken.value)
  }
  useScanTaker({
    fits: (scanned) => isOpen && scanFor(target, scanned).ok,
    take,
    refuse: take,
  })
  const { readings, faults, missing } = allWheels(state, phase, text)
  const entries = wheelEntries(state, phase, readings)
  const wheels = entries.map(({ wheel }) => wheel).join(' ')
  const record = async () => {
    const drafts = entries.map((entry) => draftEntry(state.orderId, 'wheel.checked', entry))
    if (!(await recordAll(drafts, `${wheels} sensors`, { form: { key: draftKey, content: text } }))) return
    discard()
    onDone()
  }
  return (
    <StepScreen
      title="All sensors at once"
      beside={<Button onClick={onLeave}>One by one</Button>}
      how="Paste or scan what the reader says, one line a wheel. Look it over, then record it."
      problem={problem}
      takesFocus
      pad={
        <div className="all-wheels-pad">
          <div className="all-wheels-ways">
            {canPaste ? (
              <Button onClick={async () => change((await navigator.clipboard.readText()).trim())}>
                Paste
              </Button>
            ) : null}
            <ScanButton target={target} className="button button-plain" onScan={change} />
          </div>
          <Button
            look="wide"
            busy={busy}
            whyNot={entries.length === 0 ? 'Nothing was read yet that can be recorded.' : undefined}
            onClick={() => void record()}
          >
            {entries.length === 0 ? 'Record' : `Record ${wheels}`}
          </Button>
        </div>
      }
    >
      {text.trim() === '' ? null : (
        <div role="status" className="all-wheels-read">
          <dl>
            {readings.map((reading) => (
              <div key={reading.wheel}>
                <dt>{reading.wheel}</dt>
                <dd>{readingWords(reading)}</dd>
              </div>
            ))}
          </dl>
          {faults.length === 0 ? null : (
            <ul className="all-wheels-faults" aria-label="Not read">
              {faults.map((fault) => (
                <li key={fault}>{fault}</li>
              ))}
            </ul>
          )}
          {missing.length === 0 ? null : <p>Nothing read for {missing.join(', ')}: ask there one by one.</p>}
        </div>
      )}
      <TextArea
        label="Readings"
        hint={`As: ${exampleText(state, phase).split('\n')[0]}`}
        rows={5}
        spellCheck={false}
        className="exact"
        value={text}
        onChange={change}
      />
    </StepScreen>
  )
}

/** A browser gives the clipboard to pages from a secure address only. */
const canPaste = globalThis.navigator?.clipboard?.readText !== undefined
