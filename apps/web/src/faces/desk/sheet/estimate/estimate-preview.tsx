import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { PricedEstimate } from '@bayledger/reckoning/estimate'
import { isAdded } from '@bayledger/reckoning/money/added-bundles'
import { chargedTwice, type DoneOnce } from '@bayledger/reckoning/money/charged-twice'
import type { OfferedBundle } from '@bayledger/reckoning/money/offer'
import { bundleReason } from '@bayledger/wording/bundles'
import { english } from '@bayledger/wording/en/english'
import { shownTitle } from '@bayledger/wording/shown-estimate'
import { wheelList } from '@bayledger/wording/wheels'
import { useRef } from 'react'
import { money } from '../../../../lib/format.ts'
import { Button } from '../../../../ui/button.tsx'
import { SelectField } from '../../../../ui/select-field.tsx'
import { BundleTable } from './bundle-table.tsx'

const onceWords: Readonly<Record<DoneOnce, string>> = {
  'tire-off': 'taking the tire off',
  'stem-parts': 'the stem’s parts',
  learning: 'what the vehicle has to learn',
}

type EstimatePreviewProps = {
  estimate: PricedEstimate
  findings: readonly Finding[]
  added: readonly OfferedBundle[]
  onChange: (added: readonly OfferedBundle[]) => void
}

/** The version as the customer will read it, line by line. What was added can be taken out or offered as one of several. */
export function EstimatePreview({ estimate, findings, added, onChange }: EstimatePreviewProps) {
  const region = useRef<HTMLElement>(null)
  const titleOf = (key: string) => {
    const bundle = estimate.bundles.find(({ bundleKey }) => bundleKey === key)
    return bundle === undefined ? '' : shownTitle(english, bundle, bundle.money)
  }
  const counterparts = (own: string) =>
    estimate.bundles.filter(
      ({ bundleKey, alternativeTo, works }) =>
        bundleKey !== own && alternativeTo === null && works[0]?.kind !== 'look',
    )
  return (
    <section ref={region} tabIndex={-1} aria-label="As the customer reads it" className="stack">
      <h3>As the customer reads it</h3>
      {chargedTwice(estimate.bundles).map((twice) => (
        <p key={twice.what}>
          <strong>Charged more than once:</strong> {onceWords[twice.what]}
          {twice.wheels.length === 0 ? '' : `, ${wheelList(english.wheels, twice.wheels)}`}, in{' '}
          {twice.bundleKeys.map(titleOf).join(' and in ')}. If the customer says Yes to both, it is done once.
          Leave a wheel or a job out, or take a line off by a discount.
        </p>
      ))}
      {estimate.bundles.map((bundle) => (
        <article key={bundle.bundleKey} className="bundle-sheet">
          <header className="estimate-total">
            <h4>
              {shownTitle(english, bundle, bundle.money)}
              {bundle.alternativeTo === null ? '' : ` (in place of: ${titleOf(bundle.alternativeTo)})`}
            </h4>
            <strong>{money(bundle.money.totals.totalCents)}</strong>
          </header>
          <p className="quiet">{bundleReason(english, bundle, findings)}</p>
          <BundleTable
            lines={bundle.money.lines}
            covers={bundle.covers}
            taxCents={bundle.money.totals.taxCents}
          />
          {isAdded(bundle) ? (
            <div className="row">
              {added.some(({ alternativeTo }) => alternativeTo === bundle.bundleKey) ? null : (
                <SelectField
                  label={`In place of something else: ${titleOf(bundle.bundleKey)}`}
                  options={[
                    { value: '', label: 'no: it is on its own' },
                    ...counterparts(bundle.bundleKey).map(({ bundleKey }) => ({
                      value: bundleKey,
                      label: `in place of: ${titleOf(bundleKey)}`,
                    })),
                  ]}
                  value={bundle.alternativeTo ?? ''}
                  onChange={(value) =>
                    onChange(
                      added.map((one) =>
                        one.bundleKey === bundle.bundleKey
                          ? { ...one, alternativeTo: value === '' ? null : value }
                          : one,
                      ),
                    )
                  }
                />
              )}
              <Button
                aria-label={`Take out: ${titleOf(bundle.bundleKey)}`}
                onClick={() => {
                  onChange(added.filter(({ bundleKey }) => bundleKey !== bundle.bundleKey))
                  // The button goes with what it takes out.
                  region.current?.focus()
                }}
              >
                Take out
              </Button>
            </div>
          ) : null}
        </article>
      ))}
    </section>
  )
}
