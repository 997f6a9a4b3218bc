import { getOwnerCode, makeOwnerCode } from '@bayledger/contract/owner-code'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { call } from '../../../lib/api-client.ts'
import type { Clock } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { useShopClock } from '../shop-clock.ts'
import '../print/print-sheet.css'

const queryKey = ['own-owner-code']

/** The code on paper with which an owner sets another password; shown once, to be printed. */
export function OwnerCodePart({ signInName }: { signInName: string }) {
  const client = useQueryClient()
  const clock = useShopClock()
  const found = useQuery({ queryKey, queryFn: ({ signal }) => call(getOwnerCode, { signal }) })
  const making = useMutation({
    mutationFn: () => call(makeOwnerCode, {}),
    onSettled: () => client.invalidateQueries({ queryKey }),
  })
  const problem = found.error ?? making.error
  const madeAt = found.data?.madeAt
  return (
    <Section title="Printed code, if you lose your password">
      {problem === null ? null : <ProblemNotice problem={problemText(problem)} />}
      {making.data === undefined ? (
        <>
          <p>
            {madeAt === undefined
              ? null
              : madeAt === null
                ? 'There is none. '
                : `There is one, made ${dateOf(madeAt, clock)}. Another one takes its place. `}
            With it you set a new password at the sign-in page, once. Keep the paper where you keep the shop’s
            contracts: whoever holds it can sign in as you.
          </p>
          <div className="row">
            <Button busy={making.isPending} onClick={() => making.mutate()}>
              Make a printed code
            </Button>
          </div>
        </>
      ) : (
        <div className="stack">
          <StatusLine>
            Print this code now. It is not shown again, and any code before it has ended.
          </StatusLine>
          <div className="print-sheet">
            <p>
              Sign-in name: <span className="exact">{signInName}</span>
            </p>
            <p>
              Code: <span className="exact">{making.data.code}</span>
            </p>
            <p>
              Made {dateOf(making.data.madeAt, clock)}. At {location.origin}/desk choose “I lost my password
              and have a printed code”. It sets a new password, once.
            </p>
          </div>
          <div className="row">
            <Button look="main" onClick={() => window.print()}>
              Print it
            </Button>
            <Button onClick={() => making.reset()}>I have it on paper</Button>
          </div>
        </div>
      )}
    </Section>
  )
}

/** With its year: paper is kept for long. */
const dateOf = (instant: string, { timeZone }: Clock): string =>
  new Date(instant).toLocaleDateString('en-US', { timeZone, dateStyle: 'long' })
