import type { EstimateLine } from '@bayledger/reckoning/estimate'
import type { LineCover } from '@bayledger/reckoning/money/line-cover'
import { english } from '@bayledger/wording/en/english'
import { lineWords } from '@bayledger/wording/estimate-lines'
import { coverSentence } from '@bayledger/wording/line-covers'
import { money } from '../../../../lib/format.ts'
import '../estimate-part.css'

type BundleTableProps = {
  lines: readonly EstimateLine[]
  /** On a comeback: what the warranty says of the lines. */
  covers: readonly LineCover[] | undefined
  taxCents: number
}

/** A bundle line by line, with its tax. */
export function BundleTable({ lines, covers, taxCents }: BundleTableProps) {
  return (
    <table className="bundle-table">
      <thead className="for-screen-readers">
        <tr>
          <th scope="col">Line</th>
          <th scope="col">Quantity</th>
          <th scope="col">Amount</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <tr key={line.lineKey}>
            <td>
              {lineWords(english.estimateLines, line)}
              <CoverNote sentence={coverSentence(english.lineCovers, line, covers)} />
            </td>
            <td>
              {(line.quantityHundredths / 100).toString()}
              {line.priceCode === 'labor' ? ' h' : ''}
            </td>
            <td>{money(line.amountCents)}</td>
          </tr>
        ))}
        <tr>
          <td>Tax</td>
          <td />
          <td>{money(taxCents)}</td>
        </tr>
      </tbody>
    </table>
  )
}

function CoverNote({ sentence }: { sentence: string | null }) {
  return sentence === null ? null : <p className="quiet">{sentence}</p>
}
