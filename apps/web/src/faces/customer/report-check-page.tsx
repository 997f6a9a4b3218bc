import {
  checkReport,
  listSigningKeys,
  type ReportCheck,
  type ShopSigningKeys,
} from '@bayledger/contract/reports'
import type { CheckedFile } from '@bayledger/wording/reports'
import { useEffect, useState } from 'react'
import { call } from '../../lib/api-client.ts'
import { ProblemNotice } from '../../ui/problem-notice.tsx'
import { StatusLine } from '../../ui/sentence.tsx'
import { customerProblem } from './customer-problem.ts'
import { LanguageSwitch } from './language-switch.tsx'
import { useSpoken } from './spoken.tsx'
import './customer.css'

/** Anyone can have a report checked: the file is compared with what the shop sealed. */
export function ReportCheckPage() {
  const { words, speak } = useSpoken()
  const { reportCheck: says, reports } = words
  const [check, setCheck] = useState<ReportCheck | null>(null)
  const [problem, setProblem] = useState<unknown>(null)
  const [busy, setBusy] = useState(false)

  const examine = async (file: File | undefined) => {
    if (file === undefined) return
    setBusy(true)
    setCheck(null)
    setProblem(null)
    try {
      setCheck(
        await call(checkReport, { body: new Blob([await file.arrayBuffer()], { type: 'application/pdf' }) }),
      )
    } catch (thrown) {
      setProblem(thrown)
    } finally {
      setBusy(false)
    }
  }

  return (
    <main className="customer">
      <LanguageSwitch onChoose={speak} />
      <h1>{says.title}</h1>
      <p>{says.what}</p>
      <label
        className="check-drop"
        onDragOver={(event) => event.preventDefault()}
        onDrop={(event) => {
          event.preventDefault()
          void examine(event.dataTransfer?.files[0])
        }}
      >
        <span>{says.choose}</span>
        <input
          type="file"
          accept="application/pdf"
          onChange={(event) => void examine(event.currentTarget.files?.[0])}
        />
      </label>
      <StatusLine>{busy ? says.checking : ''}</StatusLine>
      {problem === null ? null : <ProblemNotice problem={customerProblem(words, problem)} />}
      {check === null ? null : (
        <div role="status" className="check-verdict">
          <h2>{says.verdicts[check.verdict]}</h2>
          <p>{reports.checked(checkedFile(check))}</p>
          {check.stamp === null ? null : <TimeStamp stamp={check.stamp} number={check.number ?? ''} />}
          {check.supersededBy === null ? null : <p>{says.superseded(check.supersededBy)}</p>}
        </div>
      )}
      <SigningKeys />
    </main>
  )
}

type TimeStampProps = { readonly stamp: NonNullable<ReportCheck['stamp']>; readonly number: string }

/** Who confirmed when the report existed; a confirmation that is not in the file can be kept beside it. */
function TimeStamp({ stamp: { where, verdict, authority, at, token }, number }: TimeStampProps) {
  const { words } = useSpoken()
  const moment =
    at === null
      ? ''
      : new Intl.DateTimeFormat(words.locale, { dateStyle: 'long', timeStyle: 'long' }).format(new Date(at))
  return (
    <>
      <p>{words.reportCheck.stamp({ where, verdict, authority: authority ?? '', moment })}</p>
      {token === null ? null : (
        <p>
          <a download={`${number}.tst`} href={`data:application/octet-stream;base64,${token}`}>
            {words.reportCheck.saveStamp}
          </a>
        </p>
      )}
    </>
  )
}

/** The fingerprints that reports print, so that a signature in the shop's name can be told from the shop's own. */
function SigningKeys() {
  const { words } = useSpoken()
  const dayOf = (instant: string) =>
    new Intl.DateTimeFormat(words.locale, { dateStyle: 'long' }).format(new Date(instant))
  const says = words.reportCheck
  const [shops, setShops] = useState<readonly ShopSigningKeys[]>([])
  useEffect(() => {
    // Whoever cannot read the list still checks a file, which says if the server is out of reach.
    call(listSigningKeys, {}).then(
      (found) => setShops(found.shops),
      () => undefined,
    )
  }, [])
  return shops.length === 0 ? null : (
    <section aria-labelledby="signing-keys">
      <h2 id="signing-keys">{says.keys}</h2>
      <p>{says.keysAre}</p>
      {shops.map(({ shop, keys }) => (
        <ul key={shop} aria-label={shop}>
          {keys.map(({ fingerprint, since }) => (
            <li key={fingerprint}>
              {says.keySince(shop, dayOf(since))} <code>{fingerprint.replace(/.{8}(?=.)/g, '$& ')}</code>
            </li>
          ))}
        </ul>
      ))}
    </section>
  )
}

/** The verdict as the words take it; a report that is known has a number. */
const checkedFile = ({ verdict, number, supersededBy }: ReportCheck): CheckedFile =>
  verdict === 'unknown' ? { verdict } : { verdict, number: number ?? '', supersededBy }
