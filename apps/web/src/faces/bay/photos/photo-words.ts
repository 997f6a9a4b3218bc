/** What the bay says of photos. */
export const photoWords = {
  take: 'Photo',
  /** Of a step that asks for one. */
  asked: 'Take the photo',
  another: (count: number) => `Photo · ${count}`,
  notSent: (count: number) => `Photos not yet sent: ${count}`,
  says: 'photo',
  ofOrder: (count: number) => `Photos (${count})`,
  title: 'Photos',
  back: 'Back to the step',
  none: 'No photo of this order yet.',
  withForm: (count: number) => (count === 1 ? '1 photo goes with it' : `${count} photos go with it`),
  remove: 'Remove the last photo',
  read: 'I have read it',
  notTaken: 'A photo was not taken.',
} as const

/** Of a photo that the tablet keeps and can neither read nor hand in. */
export const photoUnread = {
  title: 'This tablet cannot read it any more.',
  detail: 'It was out of the server’s reach for too long. The report says that the photo was not received.',
} as const

/** Why a file from the camera is not recorded, with what to do. */
export const photoFaults = {
  'too-large': {
    title: 'The photo is larger than 40 MB.',
    detail: 'Nothing was recorded. Set the camera to fewer pixels and take it again.',
  },
  unreadable: {
    title: 'This file is not a photo that the tablet can read.',
    detail: 'Nothing was recorded. Take it again with the camera.',
  },
  'too-many-pixels': {
    title: 'The photo has more than 100 million pixels.',
    detail: 'Nothing was recorded. Set the camera to fewer pixels and take it again.',
  },
  full: {
    title: 'This tablet has no room for the photo.',
    detail:
      'Nothing was recorded. Make room on the tablet, or bring it to the network so that it can send what waits.',
  },
} as const
export type PhotoFault = keyof typeof photoFaults
