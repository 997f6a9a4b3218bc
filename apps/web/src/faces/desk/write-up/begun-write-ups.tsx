import type { WriteUpDraft } from '@bayledger/contract/write-up-drafts'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { clockTimeOrDay } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { useShopClock } from '../shop-clock.ts'
import { draftsQuery, draftTitle, formOf, throwAway } from './keep-draft.ts'

type BegunProps = { readonly except: string; readonly onGoOn: (draftId: string) => void }

/** Write-ups that somebody began at any desk and did not open. */
export function BegunWriteUps({ except, onGoOn }: BegunProps) {
  const drafts = useQuery(draftsQuery)
  const client = useQueryClient()
  const clock = useShopClock()
  const away = useMutation({
    mutationFn: throwAway,
    onSuccess: () => client.invalidateQueries({ queryKey: draftsQuery.queryKey }),
  })
  const others = (drafts.data?.drafts ?? []).filter(({ draftId }) => draftId !== except)
  if (others.length === 0) return null
  return (
    <Section title="Begun and not opened">
      {away.isError ? <ProblemNotice problem={problemText(away.error)} /> : null}
      <ul className="matches">
        {others.map((draft) => {
          const title = titleOf(draft)
          const when = clockTimeOrDay(draft.updatedAt, new Date().toISOString(), clock)
          return (
            <li key={draft.draftId} className="row">
              <Button onClick={() => onGoOn(draft.draftId)}>
                Go on with {title} · {draft.by}, {when}
              </Button>
              <Button
                aria-label={`Throw away ${title}`}
                busy={away.isPending && away.variables === draft.draftId}
                onClick={() => away.mutate(draft.draftId)}
              >
                Throw away
              </Button>
            </li>
          )
        })}
      </ul>
    </Section>
  )
}

const titleOf = (draft: WriteUpDraft): string => {
  const form = formOf(draft)
  return form === null ? 'one of an earlier program' : draftTitle(form)
}
