declare module 'vin-validator' {
  export const validate: (vin: string) => boolean
}
