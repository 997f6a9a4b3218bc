import { nothingOnRecord } from '@bayledger/ledger/questions/history-of'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, it } from 'vitest'
import { asLead, comebackUntil } from '../../../../../../packages/ledger/test-support/comeback.ts'
import { wordsOf } from '../../../../../../packages/ledger/test-support/seeded-ids.ts'
import { ComebackScreen } from './comeback-screen.tsx'

const shown = (state: ReturnType<ReturnType<typeof comebackUntil>['state']>, history = nothingOnRecord) =>
  renderToStaticMarkup(
    <ComebackScreen
      order={{ state, history, personalText: () => 'The nuts were loose.' }}
      onBack={() => undefined}
    />,
  )

it('shows the technician why the vehicle came back, with the note of whoever recorded it, and what we did before', () => {
  const pen = comebackUntil('confirmed')
  expect(shown(pen.state())).toContain('Not recorded yet.')
  pen.write('comeback.judged', { cause: 'workmanship', words: wordsOf('why') }, asLead)
  const html = shown(pen.state(), { ...nothingOnRecord, ourWorkOn: ['RR'] })
  expect(html).toContain('Our work: The nuts were loose.')
  expect(html).toMatch(/right rear<\/dt><dd>we worked on it/)
})

it('says so where the records hold nothing', () => {
  expect(shown(comebackUntil('confirmed').state())).toContain('no reading and no work on a wheel')
})
