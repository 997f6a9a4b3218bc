import { lookFee } from '@bayledger/ledger/questions/money'
import type { EventKind } from '@bayledger/reckoning/evidence/evidence-schema'
import { fields } from '@bayledger/wording/en/fields'
import { lights } from '@bayledger/wording/en/lights'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { Link } from 'react-router'
import { orderMoney } from '../../../features/ledger/order-money.ts'
import { moneyWords } from '../../../lib/money-words.ts'
import { deskOrderPath } from '../../../lib/paths.ts'
import { FoldingSection } from '../../../ui/folding-section.tsx'
import { Line, Lines } from '../../../ui/section.tsx'
import { gaveWords } from '../who-decides.ts'
import { agoWords, askedEvents } from '../write-up/events.ts'
import type { OrderPart } from './order-part.ts'
import { settledComplaint } from './settled.ts'
import { WriteComplaint } from './write-complaint.tsx'
import './complaint-part.css'

/** The complaint in the customer's words, and what was agreed before the inspection. */
export function ComplaintPart({ order }: OrderPart) {
  const { complaint, authority } = order.state
  if (complaint === null) return <WriteComplaint order={order} />
  const happened = complaint.events.filter((event) => event.happened !== false)
  return (
    <FoldingSection title="Complaint" id="complaint" settled={settledComplaint(order)}>
      <blockquote className="complaint-words">“{order.personalText(complaint.words)}”</blockquote>
      <Lines>
        {order.state.opened?.comebackOf ? (
          <Line name="Comeback of">
            <Link to={deskOrderPath(order.state.opened.comebackOf)}>the earlier order</Link>
          </Line>
        ) : null}
        <Line name="Warning light, as reported">
          {complaint.reportedLight === null ? 'not known' : lights.does[complaint.reportedLight]}
        </Line>
        <Line name="Lately">
          {happened.length === 0
            ? complaint.events.length === 0
              ? 'not asked'
              : 'nothing of what was asked'
            : happened
                .map(({ kind, wheel, daysAgo }) =>
                  [
                    labelOf(kind),
                    wheel ? wheelNames[wheel] : null,
                    daysAgo == null ? null : agoWords(daysAgo),
                  ]
                    .filter((part) => part !== null)
                    .join(', '),
                )
                .join(' · ')}
        </Line>
        <Line name="Consent">
          {authority.look === null
            ? 'not given yet'
            : `to inspect${authority.drive === null ? '' : ' and to drive'}, ${authority.look.channel === 'in-person' ? 'in person' : `by ${authority.look.channel}`}, given by ${gaveWords(authority.look.by.relation, order.personalText(authority.look.by.name))}; inspection fee ${moneyWords(lookFee(orderMoney(order), authority.look.money)?.lookFeeCents)}`}
        </Line>
      </Lines>
    </FoldingSection>
  )
}

const labelOf = (kind: EventKind): string =>
  askedEvents.find((event) => event.kind === kind)?.label ?? fields.events[kind]
