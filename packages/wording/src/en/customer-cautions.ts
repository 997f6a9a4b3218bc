import type { CustomerCautionsWording } from '../customer-cautions.ts'

/** Plain words of our own, each sentence of 25 words or fewer; the vehicle maker's manual governs. */
export const customerCautions: CustomerCautionsWording = {
  'CT-01': {
    1: 'Until this is repaired, your vehicle will not warn you of a low tire. Check all pressures by hand every week.',
    2: 'Until this is repaired, your car will not warn you of a low tire. Check the air in all tires with a gauge every week.',
  },
  'CT-02': {
    1: 'This wheel will have no sensor. The warning light stays on, and your vehicle cannot warn you of a low tire there.',
  },
  'CT-03': {
    1: 'Worn or old tires grip poorly in rain and can fail without notice. Slow down on wet roads and have them replaced soon.',
  },
  'CT-04': {
    1: 'This tire can fail suddenly. Please do not drive on it. If you do, you do so against our advice.',
  },
  'CT-05': {
    1: 'The other sensors are as old as the one that failed. Their batteries may end soon, each with another visit.',
  },
  'CT-06': {
    1: 'Wheel fasteners can settle after a wheel was off. Come back after 50 to 100 miles, or as the maker says; the check is free.',
    2: 'Wheel fasteners can settle and loosen after a wheel was off. Come back after 50 to 100 miles, or as the maker says; the check is free.',
  },
  'CT-07': {
    1: 'The repair is not proven yet. Drive 20 minutes at normal road speed. If the light comes on, call us before the next trip.',
    2: 'Drive 20 minutes at normal road speed, to be sure that the repair works. If the light comes on, call us before the next trip.',
  },
  'CT-08': {
    1: 'Sealant from a can is a get-home measure. Its gas can burn, it can spoil the sensor, and the tire still needs a repair inside.',
    2: 'Sealant from a can only helps you get home. Its gas can burn, it can ruin the sensor, and the tire still needs a repair inside.',
    3: 'Sealant from a can only helps you get home. Its gas can burn, it can ruin the sensor, and the tire still needs a repair inside.',
  },
  'CT-09': {
    1: 'These wheels are not the original ones. Seat, size or shielding may keep sensors from working; the wheel maker answers for fit.',
    2: 'These wheels are not the original ones. Their shape, size or metal can keep sensors from working. Their maker, not we, is responsible for the fit.',
    3: 'These wheels are not the original ones. Their shape, size or metal can keep sensors from working. Their maker, not we, is responsible for the fit.',
  },
  'CT-10': {
    1: 'Your tires were set while warm and may read above the door label until they cool. Do not let air out.',
  },
  'CT-11': {
    1: 'We have not found the cause yet. The light may hide a low tire: check all pressures by hand every week.',
    2: 'We have not found the cause yet. The light may hide a low tire: check the air in all tires with a gauge every week.',
  },
  'CT-12': {
    1: 'We do not warrant this part. If it fails, finding that out and replacing it is charged again.',
    2: 'We give no warranty on this part. If it fails, you pay again to find that out and to replace it.',
    3: 'We give no warranty on this part. If it fails, you pay again to find that out and to replace it.',
  },
  'CT-13': {
    1: 'This wheel is not held safely and can come off. Please do not drive. If you do, you do so against our advice.',
  },
  'CT-14': {
    1: 'A tire that was driven low can be damaged inside and fail suddenly. Please do not drive on it before it was inspected.',
    2: 'A tire that was driven low can be damaged inside and fail suddenly. Please do not drive on it before it was inspected.',
  },
  'CT-15': {
    1: 'A temporary spare has limits of speed and distance on its sidewall. Obey them, and have the wheel repaired soon.',
    2: 'A temporary spare has limits of speed and distance on its sidewall. Obey them, and have the wheel repaired soon.',
  },
  'CT-16': {
    1: 'This tire keeps losing air. Filling is not a repair. Gauge it before every trip; driven low, it can fail suddenly.',
    2: 'This tire keeps losing air. Adding air is not a repair. Check it with a gauge before every trip: driven low, it can fail suddenly.',
    3: 'This tire keeps losing air. Adding air is not a repair. Check it with a gauge before every trip: driven low, it can fail suddenly.',
  },
  'CT-17': {
    1: 'This valve stem can let go without warning and empty the tire at once. Gauge the tire often and have the stem replaced soon.',
    2: 'This valve stem can fail without warning and empty the tire at once. Check the tire with a gauge often and have the stem replaced soon.',
    3: 'This valve stem can fail without warning and empty the tire at once. Check the tire with a gauge often and have the stem replaced soon.',
  },
  'CT-18': {
    1: 'This valve stem can fail without warning and empty the tire at once. Please do not drive on it. If you do, you do so against our advice.',
  },
}
