import type { OpenSession } from '@bayledger/contract/sessions'
import { type Clock, clockTimeOrDay } from '../../../lib/format.ts'

/** A session in one line: where, since when, used when, from which network address. */
export const sessionLine = (
  { kind, device, isThisOne, startedAt, lastUsedAt, address }: OpenSession,
  now: string,
  clock: Clock,
): string =>
  [
    isThisOne ? 'This browser' : kind === 'desk' ? 'At a desk' : `On the tablet ${device ?? ''}`.trim(),
    `since ${clockTimeOrDay(startedAt, now, clock)}`,
    `used ${clockTimeOrDay(lastUsedAt, now, clock)}`,
    ...(address === null ? [] : [`from ${address}`]),
  ].join(' · ')
