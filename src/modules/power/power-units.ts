/** Units that the modules of this wing show their results in. Electricity has the same units in both systems. */
export const wattHours = { SI: 'Wh', US: 'Wh' }
export const ampereHours = { SI: 'Ah', US: 'Ah' }
export const watts = { SI: 'W', US: 'W' }
export const amperes = { SI: 'A', US: 'A' }
export const volts = { SI: 'V', US: 'V' }
export const hours = { SI: 'hr', US: 'hr' }
export const days = { SI: 'day', US: 'day' }
export const percent = { SI: 'percent', US: 'percent' }
export const thermometer = { SI: 'degC', US: 'degF' }
