import {
  type AgreedChoice,
  AskedChannel,
  listMessageChoices,
  type MessageChoice,
  putMessageChoice,
} from '@bayledger/contract/messages'
import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { call } from '../../../lib/api-client.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { CheckGroup } from '../../../ui/choice-group.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { useShopClock } from '../shop-clock.ts'
import { askedWords, purposes } from './asked-words.ts'

const channels = {
  email: 'May be e-mailed about',
  text: 'May be texted about',
  call: 'May be called about',
} as const

export const choicesQuery = (customerId: string) =>
  queryOptions({
    queryKey: ['customer', customerId, 'choices'],
    queryFn: ({ signal }) => call(listMessageChoices, { params: { customerId }, signal }),
    staleTime: 0,
  })

/** What the customer agrees to; each change is kept at once with who asked and when, and so is that all stays as it is. */
export function ChoiceFields({ customerId }: { customerId: string }) {
  const client = useQueryClient()
  const clock = useShopClock()
  const choices = useQuery(choicesQuery(customerId))
  const choose = useMutation({
    mutationFn: async (said: readonly MessageChoice[]) => {
      for (const body of said) await call(putMessageChoice, { params: { customerId }, body })
    },
    onSettled: () => client.invalidateQueries({ queryKey: choicesQuery(customerId).queryKey }),
  })
  const known = choices.data?.choices ?? []
  return (
    <div className="stack">
      {choices.isError ? <ProblemNotice problem={problemText(choices.error)} /> : null}
      {choose.isError ? <ProblemNotice problem={problemText(choose.error)} /> : null}
      {choices.data === undefined
        ? null
        : AskedChannel.options.map((channel) => {
            const values = known
              .filter((one) => one.channel === channel && one.allowed)
              .map(({ purpose }) => purpose)
            return (
              <CheckGroup
                key={channel}
                label={channels[channel]}
                options={purposes}
                values={values}
                onChange={(next) =>
                  choose.mutate(
                    purposes
                      .filter(({ value }) => next.includes(value) !== values.includes(value))
                      .map(({ value }) => ({ channel, purpose: value, allowed: next.includes(value) })),
                  )
                }
              />
            )
          })}
      {choices.data === undefined ? null : (
        <div className="row">
          <p role="status">{askedWords(known, new Date().toISOString(), clock).at(-1)}</p>
          <Button busy={choose.isPending} onClick={() => choose.mutate(known.map(said))}>
            I asked: it is as shown
          </Button>
        </div>
      )}
    </div>
  )
}

const said = ({ channel, purpose, allowed }: AgreedChoice): MessageChoice => ({ channel, purpose, allowed })
