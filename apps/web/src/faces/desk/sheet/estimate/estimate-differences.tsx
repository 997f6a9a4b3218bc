import type { PricedBundle } from '@bayledger/reckoning/estimate'
import { type BundleChange, estimateChanges } from '@bayledger/reckoning/money/estimate-changes'
import { english } from '@bayledger/wording/en/english'
import { lineWords } from '@bayledger/wording/estimate-lines'
import { shownTitle } from '@bayledger/wording/shown-estimate'
import { money } from '../../../../lib/format.ts'

type EstimateDifferencesProps = {
  /** The number of the version that these are differences to. */
  revision: number
  before: readonly PricedBundle[]
  after: readonly PricedBundle[]
}

/** What a version changes against the one before, bundle by bundle and line by line. */
export function EstimateDifferences({ revision, before, after }: EstimateDifferencesProps) {
  const changes = estimateChanges(before, after)
  return (
    <section aria-label={`Against version ${revision}`}>
      <h3>Against version {revision}</h3>
      {changes.length === 0 ? <p>Nothing changes.</p> : null}
      <ul>
        {changes.map((change) => (
          <li key={change.bundle.bundleKey}>
            {changeWords(change)}
            {change.change === 'changed' ? (
              <ul>
                {change.lines.map(({ line, beforeCents, afterCents }) => (
                  <li key={line.lineKey}>
                    {lineWords(english.estimateLines, line)}:{' '}
                    {beforeCents === null ? 'new' : money(beforeCents)} →{' '}
                    {afterCents === null ? 'left out' : money(afterCents)}
                  </li>
                ))}
              </ul>
            ) : null}
          </li>
        ))}
      </ul>
    </section>
  )
}

const changeWords = ({ change, bundle, beforeCents, afterCents }: BundleChange): string => {
  const title = shownTitle(english, bundle, bundle.money)
  switch (change) {
    case 'added':
      return `New: ${title}, ${money(afterCents)} with tax`
    case 'removed':
      return `Left out: ${title}, ${money(beforeCents)} with tax`
    case 'changed':
      return `${title}: ${money(beforeCents)} → ${money(afterCents)} with tax`
  }
}
