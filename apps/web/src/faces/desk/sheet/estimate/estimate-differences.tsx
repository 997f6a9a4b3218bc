import type { PricedBundle, PricedEstimate } from '@bayledger/reckoning/estimate'
import { type BundleChange, estimateChanges } from '@bayledger/reckoning/money/estimate-changes'
import { english } from '@bayledger/wording/en/english'
import { lineWords } from '@bayledger/wording/estimate-lines'
import { shownTitle } from '@bayledger/wording/shown-estimate'
import { money } from '../../../../lib/format.ts'

type EstimateDifferencesProps = {
  before: PricedEstimate
  after: PricedEstimate
}

/** What a version changes against the one before, bundle by bundle and line by line. */
export function EstimateDifferences({ before, after }: EstimateDifferencesProps) {
  const { revision } = before
  const changes = estimateChanges(before.bundles, after.bundles)
  const [was, is] = [before.money.totals.totalCents, after.money.totals.totalCents]
  const exemption = after.money.exemption ?? ''
  const exempted = exemption !== (before.money.exemption ?? '')
  const titleOf = (key: string) => {
    const bundle = [...after.bundles, ...before.bundles].find(({ bundleKey }) => bundleKey === key)
    return bundle === undefined ? '' : titled(bundle)
  }
  return (
    <section aria-label={`Against version ${revision}`}>
      <h3>Against version {revision}</h3>
      {changes.length === 0 && was === is && !exempted ? <p>Nothing changes.</p> : null}
      <ul>
        {changes.map((change) => (
          <li key={change.bundle.bundleKey}>
            {changeWords(change)}
            {change.inPlaceOf === null ? '' : placeWords(change.inPlaceOf, titleOf)}
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
        {exempted ? (
          <li>
            {exemption === '' ? 'Sales tax is charged' : `Exempt from sales tax, certificate ${exemption}`}
          </li>
        ) : null}
        {was === is ? null : (
          <li>
            In all: {money(was)} → {money(is)} with tax
          </li>
        )}
      </ul>
    </section>
  )
}

const titled = (bundle: PricedBundle): string => shownTitle(english, bundle, bundle.money)

const placeWords = (
  { before, after }: NonNullable<BundleChange['inPlaceOf']>,
  titleOf: (key: string) => string,
): string =>
  after === null ? `, no longer in place of ${titleOf(before ?? '')}` : `, now in place of ${titleOf(after)}`

const changeWords = ({ change, bundle, beforeCents, afterCents }: BundleChange): string => {
  const title = titled(bundle)
  switch (change) {
    case 'added':
      return `New: ${title}, ${money(afterCents)} with tax`
    case 'removed':
      return `Left out: ${title}, ${money(beforeCents)} with tax`
    case 'changed':
      return beforeCents === afterCents
        ? title
        : `${title}: ${money(beforeCents)} → ${money(afterCents)} with tax`
  }
}
