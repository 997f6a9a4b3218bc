import {
  type ErasureReason,
  erasePerson,
  type IdentityCheck,
  previewErasure,
} from '@bayledger/contract/erasures'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { call } from '../../../lib/api-client.ts'
import { clockTimeOrDay } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ChoiceGroup } from '../../../ui/choice-group.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { useShopClock } from '../shop-clock.ts'
import { erasureReasons, goesLines, identityChecks, obstacleWords, staysLines } from './erasure-words.ts'

/** For an owner: what would be erased of this person, and the erasure itself. */
export function ErasurePart({ customerId }: { customerId: string }) {
  const [isOpen, setOpen] = useState(false)
  const preview = useQuery({
    queryKey: ['customer', customerId, 'erasure'],
    queryFn: ({ signal }) => call(previewErasure, { params: { customerId }, signal }),
    staleTime: 0,
  })
  const clock = useShopClock()
  const now = new Date().toISOString()
  const found = preview.data
  return (
    <Section title="Erase this person’s data">
      <div className="stack">
        {preview.isError ? (
          <ProblemNotice problem={problemText(preview.error)} onRetry={() => void preview.refetch()} />
        ) : null}
        {found === undefined ? (
          <StatusLine>{preview.isError ? null : 'Counting what is kept of this person.'}</StatusLine>
        ) : found.erasedAt !== null ? (
          <p role="status">
            {`This person’s data were erased ${clockTimeOrDay(found.erasedAt, now, clock)}. If they come again, make a new card.`}
          </p>
        ) : (
          <>
            <Listed words="This goes, for good:" lines={goesLines(found.goes)} />
            <Listed words="This stays:" lines={staysLines(found.stays, now, clock)} />
            {found.obstacles.length > 0 ? (
              <Listed words="It cannot be erased yet:" lines={found.obstacles.map(obstacleWords)} />
            ) : isOpen ? (
              <Confirm customerId={customerId} />
            ) : (
              <div className="row">
                <Button onClick={() => setOpen(true)}>Erase this person’s data</Button>
              </div>
            )}
          </>
        )}
      </div>
    </Section>
  )
}

function Listed({ words, lines }: { words: string; lines: readonly string[] }) {
  return (
    <div>
      <p>{words}</p>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  )
}

function Confirm({ customerId }: { customerId: string }) {
  const client = useQueryClient()
  const [reason, setReason] = useState<ErasureReason | null>(null)
  const [identity, setIdentity] = useState<IdentityCheck | null>(null)
  const erase = useMutation({
    mutationFn: (body: { reason: ErasureReason; identity: IdentityCheck }) =>
      call(erasePerson, { params: { customerId }, body }),
    onSettled: () => client.invalidateQueries(),
  })
  const body = reason === null || identity === null ? null : { reason, identity }
  return (
    <div className="stack">
      <ChoiceGroup label="Why" options={erasureReasons} value={reason} onChange={setReason} flow="column" />
      <ChoiceGroup
        label="How you made sure who asks"
        options={identityChecks}
        value={identity}
        onChange={setIdentity}
        flow="column"
      />
      {erase.isError ? <ProblemNotice problem={problemText(erase.error)} /> : null}
      <div className="row">
        <Button
          busy={erase.isPending}
          whyNot={body === null ? 'Choose both first.' : undefined}
          onClick={() => body && erase.mutate(body)}
        >
          Erase for good
        </Button>
      </div>
    </div>
  )
}
