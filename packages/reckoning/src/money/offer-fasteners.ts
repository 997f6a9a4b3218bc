import { customerCaution } from '../cautions/customer-cautions.ts'
import { inReadingOrder, type RoadPosition, roadPositions, type WheelPosition } from '../wheels.ts'
import type { OfferedBundle, OfferOf } from './offer.ts'
import { fastenerLines } from './price-lines.ts'

/**
 * Damaged studs, nuts or bolts of each wheel renewed, where this shop has a price for them.
 *
 * @source This program's own rule.
 */
export const fastenerBundles = ({ diagnosis, prices }: OfferOf): OfferedBundle[] => {
  const findings = diagnosis.findings.filter(({ offers }) => offers.includes('fastener-repair'))
  return inReadingOrder(findings.flatMap(({ wheels }) => wheels))
    .filter(isOnAHub)
    .flatMap((wheel): OfferedBundle[] => {
      const lines = fastenerLines(prices, wheel)
      return lines.length === 0
        ? []
        : [
            {
              bundleKey: `fastener.${wheel}`,
              title: 'fastener',
              findings: [...new Set(findings.map(({ code }) => code))],
              safety: true,
              cautions: [customerCaution('CT-13')],
              alternativeTo: null,
              works: [{ kind: 'repair-fastener', wheel }],
              lines,
            },
          ]
    })
}

const isOnAHub = (wheel: WheelPosition): wheel is RoadPosition =>
  (roadPositions as readonly WheelPosition[]).includes(wheel)
