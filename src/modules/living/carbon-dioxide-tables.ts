import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

/** Who breathes: sex and age in years, as in the published table. */
export const breathers = {
  'male under 1': 'mean body mass 8.0 kg',
  'male 1 to under 3': 'mean body mass 12.8 kg',
  'male 3 to under 6': 'mean body mass 18.8 kg',
  'male 6 to under 11': 'mean body mass 31.9 kg',
  'male 11 to under 16': 'mean body mass 57.6 kg',
  'male 16 to under 21': 'mean body mass 77.3 kg',
  'male 21 to under 30': 'mean body mass 84.9 kg',
  'male 30 to under 40': 'mean body mass 87.0 kg',
  'male 40 to under 50': 'mean body mass 90.5 kg',
  'male 50 to under 60': 'mean body mass 89.5 kg',
  'male 60 to under 70': 'mean body mass 89.5 kg',
  'male 70 to under 80': 'mean body mass 83.9 kg',
  'male 80 and over': 'mean body mass 76.1 kg',
  'female under 1': 'mean body mass 7.7 kg',
  'female 1 to under 3': 'mean body mass 12.3 kg',
  'female 3 to under 6': 'mean body mass 18.3 kg',
  'female 6 to under 11': 'mean body mass 31.7 kg',
  'female 11 to under 16': 'mean body mass 55.9 kg',
  'female 16 to under 21': 'mean body mass 65.9 kg',
  'female 21 to under 30': 'mean body mass 71.9 kg',
  'female 30 to under 40': 'mean body mass 74.8 kg',
  'female 40 to under 50': 'mean body mass 77.1 kg',
  'female 50 to under 60': 'mean body mass 77.5 kg',
  'female 60 to under 70': 'mean body mass 76.8 kg',
  'female 70 to under 80': 'mean body mass 70.8 kg',
  'female 80 and over': 'mean body mass 64.1 kg',
} as const

const who: Axis = { kind: 'words', says: 'sex and age in years', keys: Object.keys(breathers) }
const status = 'looked up in two copies that agree cell by cell'

/** Carbon dioxide breathed out by one person, L/s at 273 K and 101 kPa, by who it is and by activity in met. */
export const carbonDioxideGeneration = table(
  {
    title: 'Carbon dioxide generation of one person at 273 K and 101 kPa',
    source: cite('persily-2017', 'Table 4'),
    status,
    unit: 'L/(s*person)',
    row: who,
    column: {
      kind: 'numbers',
      says: 'activity in met',
      keys: ['1.0', '1.2', '1.4', '1.6', '2.0', '3.0', '4.0'],
      unit: '',
      between: 'linear',
    },
  },
  `
  0.0009  0.0011  0.0013  0.0014  0.0018  0.0027  0.0036
  0.0015  0.0018  0.0021  0.0024  0.0030  0.0044  0.0059
  0.0019  0.0023  0.0026  0.0030  0.0038  0.0057  0.0075
  0.0025  0.0030  0.0035  0.0040  0.0050  0.0075  0.0100
  0.0034  0.0041  0.0048  0.0054  0.0068  0.0102  0.0136
  0.0037  0.0045  0.0053  0.0060  0.0075  0.0113  0.0150
  0.0039  0.0048  0.0056  0.0064  0.0080  0.0120  0.0160
  0.0037  0.0046  0.0053  0.0061  0.0076  0.0114  0.0152
  0.0038  0.0046  0.0054  0.0062  0.0077  0.0116  0.0155
  0.0038  0.0046  0.0054  0.0062  0.0077  0.0116  0.0154
  0.0033  0.0040  0.0046  0.0053  0.0066  0.0099  0.0133
  0.0031  0.0038  0.0045  0.0051  0.0064  0.0095  0.0127
  0.0030  0.0036  0.0042  0.0048  0.0060  0.0090  0.0120
  0.0008  0.0010  0.0012  0.0014  0.0017  0.0025  0.0034
  0.0014  0.0017  0.0020  0.0022  0.0028  0.0042  0.0056
  0.0017  0.0021  0.0024  0.0028  0.0035  0.0052  0.0070
  0.0023  0.0027  0.0032  0.0037  0.0046  0.0069  0.0092
  0.0029  0.0035  0.0041  0.0047  0.0058  0.0088  0.0117
  0.0029  0.0036  0.0042  0.0047  0.0059  0.0089  0.0119
  0.0031  0.0038  0.0044  0.0050  0.0063  0.0094  0.0126
  0.0029  0.0035  0.0041  0.0047  0.0059  0.0088  0.0118
  0.0029  0.0036  0.0042  0.0048  0.0060  0.0090  0.0119
  0.0030  0.0036  0.0042  0.0048  0.0060  0.0090  0.0120
  0.0027  0.0033  0.0038  0.0044  0.0055  0.0082  0.0110
  0.0026  0.0032  0.0037  0.0042  0.0053  0.0079  0.0106
  0.0025  0.0030  0.0035  0.0040  0.0050  0.0075  0.0101
  `,
)

/** Basal metabolic rate of one person, MJ/day, by who it is. */
export const basalRate = table(
  {
    title: 'Basal metabolic rate of one person',
    source: cite('persily-2017', 'Table 4'),
    status,
    unit: 'MJ/(day*person)',
    row: who,
  },
  `
  1.86
  3.05
  3.90
  5.14
  7.02
  7.77
  8.24
  7.83
  8.00
  7.95
  6.84
  6.57
  6.19
  1.75
  2.88
  3.59
  4.73
  6.03
  6.12
  6.49
  6.08
  6.16
  6.17
  5.67
  5.45
  5.19
  `,
)
